import type { FiguredTie } from './figured';
import type { RoofPlan } from './plan';
import { planeOverPlate, reachAt, type RoofPlane } from './planes';

/** Ties and collars: how high, how long to the long points, how many. Joists and rafter ties are of rafter stock. */

export type TieTop = {
  readonly planes: readonly RoofPlane[];
  readonly topHeight: number;
  readonly pairs: number;
};

/** Share of the height of the ridge that collars stay above (IRC R802.4.6, read second hand). */
export const collarShare = 2 / 3;

export const figuredTies = (plan: RoofPlan, top: TieTop): readonly FiguredTie[] => [
  ...(plan.joists ? [lowTie(plan, plan.joists, top)] : []),
  ...(plan.collars ? [collar(plan, plan.collars, top)] : []),
];

/** On the plates it is a joist; raised, it carries no ceiling there and is told as a rafter tie. */
const lowTie = (
  plan: RoofPlan,
  { every, height }: { readonly every: number; readonly height: number },
  top: TieTop,
): FiguredTie => {
  const kind = height > 0 ? 'rafterTie' : 'joist';
  return { id: kind, count: countOf(top.pairs, every), side: 'both', kind, ...fitted(plan, { height, top }) };
};

/** Lower edge at two thirds of the height of the ridge, so that all of it is in the upper third. */
const collar = (plan: RoofPlan, { every }: { readonly every: number }, top: TieTop): FiguredTie => ({
  id: 'collar',
  count: countOf(top.pairs, every),
  side: 'both',
  kind: 'collar',
  ...fitted(plan, { height: collarShare * top.topHeight, top }),
});

/** Every so many pairs from end A, and the last pair always: a line is snapped from the first to the last. */
const countOf = (pairs: number, every: number): number => Math.ceil((pairs - 1) / every) + 1;

/**
 * With its lower edge over the rafters' height above the plate a tie ends at the roof planes; lower it is as long as the
 * span, and its upper corners are clipped by what would stand out of the plane at the plate's outer face (plumb, inches).
 */
const fitted = (
  plan: RoofPlan,
  { height, top }: { readonly height: number; readonly top: TieTop },
): Pick<FiguredTie, 'height' | 'length' | 'clip'> => {
  const above = top.planes.every(({ cuts }) => height >= cuts.heightAbovePlate);
  if (above) {
    const length = top.planes.reduce((sum, plane) => sum + reachAt(plane, height), 0);
    return { height, length, clip: 0 };
  }
  const standsOut = top.planes.map((plane) => height + plan.rafter.depth - planeOverPlate(plane));
  return { height, length: plan.span, clip: Math.max(0, ...standsOut) };
};
