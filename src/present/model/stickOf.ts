import { add, dot, scale, sub, type Vec3 } from '../../core/geometry/vector';
import type { Solid } from './solid';

/** The box round a solid along its own grain: what hands take hold of, and what bodies keep out of. Inches. */
export type Bulk = {
  readonly id: string;
  readonly middle: Vec3;
  /** Along the grain, across the wide face, through the thickness. */
  readonly axes: readonly [Vec3, Vec3, Vec3];
  readonly halves: Vec3;
  /** The box round it along the building's axes. */
  readonly box: { readonly low: Vec3; readonly high: Vec3 };
};

const kept = new WeakMap<Solid, Bulk>();

/** Asked more than once of the same solid, it is reckoned once. */
export const bulkOf = (solid: Solid): Bulk => {
  const known = kept.get(solid);
  if (known) return known;
  const bulk = bulkAround(solid);
  kept.set(solid, bulk);
  return bulk;
};

const bulkAround = ({ id, faces, frame }: Solid): Bulk => {
  const axes = [frame.along, frame.across, frame.through] as const;
  const low = [Infinity, Infinity, Infinity];
  const high = [-Infinity, -Infinity, -Infinity];
  for (const { points } of faces.slice(0, 2))
    for (const point of points) {
      const p = sub(point, frame.origin);
      axes.forEach((axis, i) => {
        const v = dot(p, axis);
        low[i] = Math.min(low[i] ?? v, v);
        high[i] = Math.max(high[i] ?? v, v);
      });
    }
  const part = (i: 0 | 1 | 2, k: number): number => ((high[i] ?? 0) + k * (low[i] ?? 0)) / 2;
  const middle = axes.reduce((at, axis, i) => add(at, scale(axis, part(i as 0 | 1 | 2, 1))), frame.origin);
  const halves: Vec3 = [part(0, -1), part(1, -1), part(2, -1)];
  const out = ([0, 1, 2] as const).map((k) =>
    axes.reduce((sum, axis, i) => sum + Math.abs(axis[k]) * (halves[i] as number), 0),
  ) as unknown as Vec3;
  return { id, middle, axes, halves, box: { low: sub(middle, out), high: add(middle, out) } };
};

/** How far a point is from a bulk; 0 inside. */
export const apart = ({ middle, axes, halves }: Bulk, p: Vec3): number => {
  const [x, y, z] = [p[0] - middle[0], p[1] - middle[1], p[2] - middle[2]];
  let sum = 0;
  for (let i = 0; i < 3; i++) {
    const axis = axes[i] as Vec3;
    const over = Math.abs(x * axis[0] + y * axis[1] + z * axis[2]) - (halves[i] as number);
    if (over > 0) sum += over * over;
  }
  return Math.sqrt(sum);
};

/** A point of its axis, 0 at the end that is lower or nearer A, 1 at the other, brought out to the face one comes from. */
export const gripOn = (bulk: Bulk, t: number, from: Vec3): Vec3 => {
  const [along, across, through] = bulk.axes;
  const lead = along[2] > 0.2 || along[2] < -0.2 ? along[2] : along[0] + along[1];
  const at = add(bulk.middle, scale(along, Math.sign(lead || 1) * (2 * t - 1) * bulk.halves[0]));
  const sides = [across, through].map((axis, i) => {
    const push = dot(from, axis);
    return { axis, push, far: (bulk.halves[i + 1] as number) / Math.max(Math.abs(push), 1e-6) };
  });
  const first = [...sides].sort((a, b) => a.far - b.far)[0];
  if (!first || first.far > 1e5) return at;
  return add(at, scale(first.axis, Math.sign(first.push) * first.far * Math.abs(first.push)));
};
