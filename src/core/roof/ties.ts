import type { RafterCuts } from './common';
import type { FiguredTie } from './figured';
import type { RoofPlan } from './plan';

/** Ties and collars: how high, how long to the long points, how many. They are of rafter stock. */

export type TieTop = {
  readonly cuts: RafterCuts;
  readonly topHeight: number;
  readonly m: number;
  readonly pairs: number;
};

export const figuredTies = (plan: RoofPlan, top: TieTop): readonly FiguredTie[] => [
  ...(plan.joists ? [lowTie(plan, plan.joists, top)] : []),
  ...(plan.collars ? [collar(plan, plan.collars, top)] : []),
];

const lowTie = (
  plan: RoofPlan,
  { every, height }: { readonly every: number; readonly height: number },
  top: TieTop,
): FiguredTie => {
  const kind = height > 0 ? 'rafterTie' : 'joist';
  return { id: kind, count: countOf(top.pairs, every), side: 'both', kind, ...fitted(plan, { height, top }) };
};

/** Lower edge of a collar at two thirds of the height of the ridge: the whole of it is in the upper third (IRC R802.4.6). */
const collar = (plan: RoofPlan, { every }: { readonly every: number }, top: TieTop): FiguredTie => ({
  id: 'collar',
  count: countOf(top.pairs, every),
  side: 'both',
  kind: 'collar',
  ...fitted(plan, { height: (2 / 3) * top.topHeight, top }),
});

/** Every so many pairs from the first, and the last pair always. */
const countOf = (pairs: number, every: number): number => {
  const regular = Math.floor((pairs - 1) / every) + 1;
  return (pairs - 1) % every === 0 ? regular : regular + 1;
};

/**
 * Above the rafter's height over the plate a tie ends at the roof planes; lower it is as long as the span, and its upper
 * corners are clipped by what stands out of the plane at the plate's outer face (plumb, inches).
 */
const fitted = (
  plan: RoofPlan,
  { height, top }: { readonly height: number; readonly top: TieTop },
): { readonly height: number; readonly length: number; readonly clip: number } => {
  const { run, heightAbovePlate } = top.cuts;
  if (height >= heightAbovePlate)
    return { height, length: 2 * (run + (heightAbovePlate - height) / top.m), clip: 0 };
  return { height, length: plan.span, clip: Math.max(0, height + plan.rafter.depth - heightAbovePlate) };
};
