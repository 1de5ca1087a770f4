import type { Part, Score } from './score';

/** What each part comes to for the competent: the mean, and how far single runs stray from it (standard deviation). */
export type Norm = Partial<Readonly<Record<Part, { readonly mean: number; readonly sd: number }>>>;

/** A part that hardly strays at all would be named for a trifle. Ours. */
const leastSpread = 0.02;

/**
 * The part that fell furthest under the competent, told by how far their own runs stray in it: luck moves some parts more
 * than others. Undefined where no part fell under them.
 */
export const weakestPart = (parts: Score['parts'], norm: Norm): Part | undefined => {
  const drops = (Object.entries(norm) as [Part, { readonly mean: number; readonly sd: number }][])
    .filter(([part]) => parts[part] !== undefined)
    .map(([part, { mean, sd }]) => ({ part, drop: (mean - (parts[part] ?? 0)) / Math.max(sd, leastSpread) }));
  return drops.reduce<(typeof drops)[number] | undefined>(
    (most, one) => (one.drop > (most?.drop ?? 0) ? one : most),
    undefined,
  )?.part;
};
