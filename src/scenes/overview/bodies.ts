import { add, cross, lengthOf, scale, sub, unit, type Vec3 } from '../../core/geometry/vector';
import type { Corner3, MeshTriangle } from '../ink/mesh';

/** Rounded bodies for people and tools: balls, and tapered limbs with round ends. Inches. */

export type Basis = readonly [Vec3, Vec3, Vec3];
const upright: Basis = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];

export type Ball = {
  readonly at: Vec3;
  readonly radii: Vec3;
  readonly basis?: Basis;
  /** Part of it from the top, 1 the whole ball. */
  readonly upTo?: number;
  readonly fine?: readonly [number, number];
};

const turned = (basis: Basis, q: Vec3): Vec3 =>
  add(add(scale(basis[0], q[0]), scale(basis[1], q[1])), scale(basis[2], q[2]));

const norm = (v: Vec3): Vec3 => unit(v) ?? [0, 0, 1];

export const ball = ({
  at,
  radii,
  basis = upright,
  upTo = 1,
  fine = [11, 7],
}: Ball): readonly MeshTriangle[] => {
  const [around, down] = fine;
  const point = (u: number, v: number): Corner3 => {
    const a = (u / around) * Math.PI * 2;
    const b = (v / down) * upTo * Math.PI;
    const l: Vec3 = [Math.sin(b) * Math.cos(a), Math.sin(b) * Math.sin(a), Math.cos(b)];
    return {
      p: add(at, turned(basis, [l[0] * radii[0], l[1] * radii[1], l[2] * radii[2]])),
      n: norm(turned(basis, [l[0] / radii[0], l[1] / radii[1], l[2] / radii[2]])),
    };
  };
  return Array.from({ length: around * down }, (_, k) => {
    const [u, v] = [k % around, Math.floor(k / around)];
    const [a, b, c, d] = [point(u, v), point(u + 1, v), point(u + 1, v + 1), point(u, v + 1)];
    return [[a, b, c] as const, [a, c, d] as const];
  }).flat();
};

export type Limb = {
  readonly from: Vec3;
  readonly to: Vec3;
  readonly radii: readonly [number, number];
  readonly sides?: number;
};

export const limb = ({ from, to, radii, sides = 10 }: Limb): readonly MeshTriangle[] => {
  const along = norm(sub(to, from));
  const x = norm(cross(along, Math.abs(along[2]) < 0.9 ? [0, 0, 1] : [1, 0, 0]));
  const y = cross(along, x);
  const lean = (radii[0] - radii[1]) / Math.max(lengthOf(sub(to, from)), 0.01);
  const point = (i: number, end: 0 | 1): Corner3 => {
    const t = (i / sides) * Math.PI * 2;
    const d = add(scale(x, Math.cos(t)), scale(y, Math.sin(t)));
    return { p: add(end ? to : from, scale(d, radii[end])), n: norm(add(d, scale(along, lean))) };
  };
  const tube = Array.from({ length: sides }, (_, i) => {
    const [p, q, r, s] = [point(i, 0), point(i + 1, 0), point(i + 1, 1), point(i, 1)];
    return [[p, q, r] as const, [p, r, s] as const];
  }).flat();
  const cap = (at: Vec3, r: number): readonly MeshTriangle[] =>
    ball({ at, radii: [r, r, r], fine: [sides, 4] });
  return [...tube, ...cap(from, radii[0]), ...cap(to, radii[1])];
};
