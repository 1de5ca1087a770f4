import type { Vec3 } from '../../core/geometry/vector';
import { apart, type Bulk } from '../../present/model/stickOf';
import { bonesOf, type Posture } from './figure';

/** How deep a body is in something that stands, or in somebody else. Inches. */

/** A point along the bones with the radius of the flesh round it: what must not be inside of anything. */
export type Flesh = { readonly at: Vec3; readonly r: number };

/** What a body has to keep out of. */
export type Obstacles = {
  readonly bulks: readonly Bulk[];
  /** Points of others that are there already. */
  readonly others: readonly Vec3[];
  /** Nobody of those who are clear comes under this: the line of a hung load. */
  readonly load?: { readonly y: number } | undefined;
};

/** So far from the other's bones, inches, begins what is theirs. */
const otherThick = 4;
/** Half as wide as the strip under a hung load that is kept free, and what being there counts for. Inches; ours. */
const loadStrip = 3;

const shares = [0.08, 0.36, 0.64, 0.92] as const;

const along = (a: Vec3, b: Vec3, { r, into }: { r: number; into: Flesh[] }): void => {
  for (const t of shares)
    into.push({ at: [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t, a[2] + (b[2] - a[2]) * t], r });
};

export const fleshOf = (posture: Posture): readonly Flesh[] => {
  const { pelvis, chest, head, legs, arms } = bonesOf(posture);
  const into: Flesh[] = [{ at: head, r: 4.6 }];
  along(pelvis, chest, { r: 5, into });
  for (const { from, joint, end } of [legs.left, legs.right]) {
    along(from, joint, { r: 3.2, into });
    along(joint, end, { r: 2.3, into });
  }
  for (const { from, joint } of [arms.left, arms.right]) along(from, joint, { r: 2.1, into });
  return into;
};

type Box = { readonly low: Vec3; readonly high: Vec3 };

/** The box round the middles of some points, with their largest radius. */
const boxOf = (points: readonly Vec3[], r: number): Box => {
  let [x0, y0, z0, x1, y1, z1] = [Infinity, Infinity, Infinity, -Infinity, -Infinity, -Infinity];
  for (const [x, y, z] of points) {
    if (x < x0) x0 = x;
    if (x > x1) x1 = x;
    if (y < y0) y0 = y;
    if (y > y1) y1 = y;
    if (z < z0) z0 = z;
    if (z > z1) z1 = z;
  }
  return { low: [x0 - r, y0 - r, z0 - r], high: [x1 + r, y1 + r, z1 + r] };
};

const apartBoxes = (a: Box, b: Box): boolean =>
  a.low[0] > b.high[0] ||
  a.high[0] < b.low[0] ||
  a.low[1] > b.high[1] ||
  a.high[1] < b.low[1] ||
  a.low[2] > b.high[2] ||
  a.high[2] < b.low[2];

const thickest = 5;

/** The sum of how deep each part of a body is in something; stops counting past `enough`. */
export const depthIn = (obstacles: Obstacles, posture: Posture, enough: number): number => {
  const flesh = fleshOf(posture);
  const middles = flesh.map(({ at }) => at);
  const box = boxOf(middles, thickest);
  let sum = 0;
  for (const bulk of obstacles.bulks) {
    if (apartBoxes(bulk.box, box)) continue;
    for (const { at, r } of flesh) {
      const gap = apart(bulk, at);
      if (gap < r) sum += r - gap;
    }
    if (sum > enough) return sum;
  }
  const { others, load } = obstacles;
  if (others.length > 0 && !apartBoxes(boxOf(others, otherThick), box)) sum += depthInOthers(others, flesh);
  if (load) for (const [, y] of middles) if (Math.abs(y - load.y) < loadStrip) sum += loadStrip;
  return sum;
};

const depthInOthers = (others: readonly Vec3[], flesh: readonly Flesh[]): number => {
  let sum = 0;
  for (const { at, r } of flesh)
    for (const other of others) {
      const [x, y, z] = [at[0] - other[0], at[1] - other[1], at[2] - other[2]];
      const far = x * x + y * y + z * z;
      const near = r + otherThick;
      if (far < near * near) sum += near - Math.sqrt(far);
    }
  return sum;
};
