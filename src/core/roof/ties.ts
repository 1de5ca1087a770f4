import type { FiguredTie } from './figured';
import type { Frame } from './form';
import type { GablePlan, HipPlan } from './plan';
import { planeOverPlate, reachAt, type RoofPlane } from './planes';

/** Ties and collars: how high, how long to the long points, how many. Joists and rafter ties are of rafter stock. */

export type TieTop = {
  readonly planes: readonly RoofPlane[];
  readonly topHeight: number;
  readonly pairs: number;
  readonly frame: Frame;
};

type RoofPlan = GablePlan | HipPlan;

/** Share of the height of the ridge that collars stay above (IRC R802.4.6, read second hand). */
export const collarShare = 2 / 3;

export const figuredTies = (plan: RoofPlan, top: TieTop): readonly FiguredTie[] => [
  ...(plan.joists ? [lowTie(plan, plan.joists, top)] : []),
  ...(plan.collars ? [collar(plan, plan.collars, top)] : []),
];

const idOf = (kind: string, { frame }: TieTop): string => (frame.name ? `${kind}.${frame.name}` : kind);

/** On the plates it is a joist; raised, it carries no ceiling there and is told as a rafter tie. */
const lowTie = (
  plan: RoofPlan,
  { every, height }: { readonly every: number; readonly height: number },
  top: TieTop,
): FiguredTie => {
  const kind = height > 0 ? 'rafterTie' : 'joist';
  return {
    id: idOf(kind, top),
    count: countOf(top.pairs, every),
    side: 'both',
    kind,
    ...fitted(plan, { height, top }),
  };
};

/** Lower edge at two thirds of the height of the ridge, so that all of it is in the upper third. */
const collar = (plan: RoofPlan, { every }: { readonly every: number }, top: TieTop): FiguredTie => ({
  id: idOf('collar', top),
  count: countOf(top.pairs, every),
  side: 'both',
  kind: 'collar',
  ...fitted(plan, { height: collarShare * top.topHeight, top }),
});

/** Every so many pairs from end A, and the last pair always: a line is snapped from the first to the last. */
const countOf = (pairs: number, every: number): number => Math.ceil((pairs - 1) / every) + 1;

/**
 * With its lower edge over where the planes pass the plates' outer faces a tie ends at the roof planes; lower it ends over
 * those faces, and its upper corners are clipped by what would stand out of the plane there (plumb, inches).
 */
const fitted = (
  plan: RoofPlan,
  { height, top }: { readonly height: number; readonly top: TieTop },
): Pick<FiguredTie, 'height' | 'length' | 'clip'> => {
  const passes = (plane: RoofPlane): number => plane.eave.plane.base + planeOverPlate(plane);
  const low = top.planes.filter((plane) => height < passes(plane));
  if (low.length === top.planes.length) {
    const standsOut = low.map((plane) => height + plan.rafter.depth - passes(plane));
    return { height, length: top.frame.span, clip: Math.max(0, ...standsOut) };
  }
  const length = top.planes.reduce(
    (sum, plane) => sum + (low.includes(plane) ? plane.eave.run - plane.eave.clad : reachAt(plane, height)),
    0,
  );
  const clip = Math.max(0, ...low.map((plane) => height + plan.rafter.depth - passes(plane)));
  return { height, length, clip };
};
