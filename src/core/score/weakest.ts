import type { Part, Score } from './score';
import { partWeights } from './scored';

/** What each part comes to for the competent, on the average. */
export type Norm = Partial<Readonly<Record<Part, number>>>;

/** The part that costs most against the competent: its drop from their mean, in points of the total. */
export const weakestPart = (parts: Score['parts'], norm: Norm): Part | undefined => {
  const drops = (Object.entries(norm) as [Part, number][])
    .filter(([part]) => parts[part] !== undefined)
    .map(([part, usual]) => ({ part, points: 100 * partWeights[part] * (usual - (parts[part] ?? 0)) }));
  return drops.reduce<(typeof drops)[number] | undefined>(
    (most, one) => (one.points > (most?.points ?? 0) ? one : most),
    undefined,
  )?.part;
};
