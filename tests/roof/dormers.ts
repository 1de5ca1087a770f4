import type { FiguredDormer, FiguredRoof } from '../../src/core/roof/figured';
import { roofOf, type Changes } from './roofs';

/** A 24 by 30 ft gable at 12 in 12 of 2×8, with a dormer of 12 ft in the middle of the street side. */
export const steep = {
  slope: { rise: 12, run: 12 },
  length: 360,
  ridge: { thickness: 1.5, depth: 11.25 },
  plate: { width: 3.5 },
  seat: 3.5,
} as const;
export const shed = {
  kind: 'shed',
  side: 'street',
  at: 180,
  width: 144,
  front: 24,
  wall: 84,
  slope: { rise: 4, run: 12 },
  overhang: 8,
} as const;
/** The same without a slope of its own. */
export const { slope: _, ...toRidge } = shed;

export const withDormer = (dormer: Changes = {}, changes: Changes = {}): FiguredRoof =>
  roofOf({ ...steep, ...changes, dormers: [{ ...shed, ...dormer }] });
export const dormerIn = ({ dormers }: FiguredRoof): FiguredDormer => {
  if (!dormers?.[0]) throw new Error('no dormer');
  return dormers[0];
};
export const commonOf = ({ commonRafters }: FiguredRoof, id: string) =>
  commonRafters.find((one) => one.id === id);
