import type { Vec2 } from '../../core/geometry/vector';
import type { Triangle } from './solid';

type Indexed = { readonly outline: readonly Vec2[]; readonly order: readonly number[] };

const at = (outline: readonly Vec2[], i: number): Vec2 => outline[i] as Vec2;
const turn = (a: Vec2, b: Vec2, c: Vec2): number =>
  (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);

/** Twice the signed area of an outline: positive when it runs counterclockwise. */
export const doubleArea = (outline: readonly Vec2[]): number =>
  outline.reduce((sum, a, i) => {
    const b = at(outline, (i + 1) % outline.length);
    return sum + a[0] * b[1] - b[0] * a[1];
  }, 0);

/** Cuts a simple outline, notches and all, into triangles by taking off one ear after another. */
export const earClip = (outline: readonly Vec2[]): readonly Triangle[] => {
  const forward = outline.map((_, i) => i);
  let order = doubleArea(outline) < 0 ? forward.reverse() : forward;
  const triangles: Triangle[] = [];
  while (order.length > 3) {
    const ear = order.findIndex((_, i) => isEar({ outline, order }, i));
    if (ear < 0) break;
    triangles.push(cornerAt(order, ear));
    order = order.filter((_, i) => i !== ear);
  }
  if (order.length === 3) triangles.push([order[0] as number, order[1] as number, order[2] as number]);
  return triangles;
};

const cornerAt = (order: readonly number[], i: number): Triangle => {
  const n = order.length;
  return [order[(i + n - 1) % n] as number, order[i] as number, order[(i + 1) % n] as number];
};

/** Below this a corner is straight, square inches; ours. */
const flat = 1e-9;

const isEar = ({ outline, order }: Indexed, i: number): boolean => {
  const [p, q, r] = cornerAt(order, i);
  const [a, b, c] = [at(outline, p), at(outline, q), at(outline, r)];
  if (turn(a, b, c) <= flat) return false;
  return order.every((k) => {
    if (k === p || k === q || k === r) return true;
    const o = at(outline, k);
    return turn(a, b, o) < -flat || turn(b, c, o) < -flat || turn(c, a, o) < -flat;
  });
};
