import type { Pose } from '../../core/site/pose';
import type { Model } from '../../present/model/solidsOf';
import type { Solid } from '../../present/model/solid';

/** What has not moved to the eye is kept the same object, so that whatever was drawn of it can be taken over. */

/** Parts of an inch that positions are drawn to; ours: a thirtieth of a pixel in the largest picture. */
const parts = 256;

const rounded = (value: unknown): unknown => {
  if (typeof value === 'number') return Math.round(value * parts) / parts;
  if (Array.isArray(value)) return value.map(rounded);
  if (value === null || typeof value !== 'object') return value;
  return Object.fromEntries(Object.entries(value).map(([key, part]) => [key, rounded(part)]));
};

/** Every nail moves the whole frame by less than can be drawn: positions to the parts of an inch that can. */
export const seenPose = (pose: Pose): Pose => {
  const known = seen.get(pose) ?? (rounded(pose) as Pose);
  seen.set(pose, known);
  return known;
};
const seen = new WeakMap<Pose, Pose>();

/** Whether two pieces of plain data say the same. */
export const sameData = (a: unknown, b: unknown): boolean => {
  if (Object.is(a, b)) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  if (Array.isArray(a))
    return Array.isArray(b) && a.length === b.length && a.every((value, i) => sameData(value, b[i]));
  const keys = Object.keys(a);
  return (
    keys.length === Object.keys(b).length &&
    keys.every((key) => sameData((a as Named)[key], (b as Named)[key]))
  );
};
type Named = Readonly<Record<string, unknown>>;

const sameList = <T>(a: readonly T[], b: readonly T[]): boolean =>
  a.length === b.length && a.every((value, i) => value === b[i]);

/** The bodies, each the same object as before where it is the same body; the same list where all are. */
export const steadySolids = (before: readonly Solid[], fresh: readonly Solid[]): readonly Solid[] => {
  const known = new Map<string, Solid[]>();
  for (const solid of before) {
    const named = known.get(solid.id);
    if (named) named.push(solid);
    else known.set(solid.id, [solid]);
  }
  const steady = fresh.map((solid) => {
    const named = known.get(solid.id);
    const i = named?.findIndex((one) => sameData(one, solid)) ?? -1;
    return (i >= 0 && named?.splice(i, 1)[0]) || solid;
  });
  return sameList(before, steady) ? before : steady;
};

export const steadyModel = (before: Model | undefined, fresh: Model): Model => {
  if (!before) return fresh;
  const solids = steadySolids(before.solids, fresh.solids);
  const rest = sameData(before.strokes, fresh.strokes) && sameData(before.loose, fresh.loose);
  return rest && solids === before.solids ? before : { ...fresh, solids };
};
