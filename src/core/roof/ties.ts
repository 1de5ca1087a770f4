import { behindBlocks, type Reaches } from './behindBlocks';
import type { FiguredTie } from './figured';
import { bearsAt, platesOf, type Frame } from './form';
import type { RoofPlan as AnyPlan, ShedPlan } from './plan';
import { planeOverPlate, reachAt, type RoofPlane } from './planes';

/** Ties and collars: how high, how long to the long points, how many. Joists and rafter ties are of rafter stock. */

export type TieTop = {
  readonly planes: readonly RoofPlane[];
  readonly topHeight: number;
  readonly pairs: number;
  readonly frame: Frame;
};

type RoofPlan = Exclude<AnyPlan, ShedPlan>;

/** Share of the height of the ridge that collars stay above (IRC R802.4.6, read second hand). */
export const collarShare = 2 / 3;

export const figuredTies = (plan: RoofPlan, top: TieTop): readonly FiguredTie[] => [
  ...(plan.joists ? [lowTie(plan, plan.joists, top)] : []),
  ...(plan.kind === 'gambrel' && plan.breakTies ? breakTie(plan, plan.breakTies.every, top) : []),
  ...(plan.collars ? [collar(plan, plan.collars, top)] : []),
];

const idOf = (kind: string, { frame }: TieTop): string => (frame.name ? `${kind}.${frame.name}` : kind);

/** Height of the plates of a dormer; those of other roofs are where heights are measured from. Inches. */
const standsAt = ({ planes: [plane], frame }: TieTop): number =>
  frame.wing?.opening ? (plane?.eave.plane.base ?? 0) : 0;

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
    ...fitted(plan, { height: height + standsAt(top), top }),
  };
};

/** Lower edge, over the plates, at two thirds of the height of the ridge over the plates, or over the break: all of it is in the upper third. */
const collar = (plan: RoofPlan, { every }: { readonly every: number }, top: TieTop): FiguredTie => {
  const low = breakHeight(top.planes);
  const over = top.topHeight - platesOf(top.frame);
  return {
    id: idOf('collar', top),
    count: countOf(top.pairs, every),
    side: 'both',
    kind: 'collar',
    ...fitted(plan, { height: low + collarShare * (over - low), top }),
  };
};

/** What upper rafters stand on at a break, above the plates; without one they stand on those. Inches. */
export const breakHeight = (planes: readonly RoofPlane[]): number =>
  planes.reduce((height, { eave }) => (eave.stands ? bearsAt(eave) : height), 0);

/** From break to break, its lower edge on the purlins, or where the upper rafters' undersides are plumb at the break. */
const breakTie = (plan: RoofPlan, every: number, top: TieTop): readonly FiguredTie[] => {
  const upper = top.planes.filter(({ eave }) => eave.stands);
  const clips = upper.map(({ cuts }) => plan.rafter.depth - cuts.heightAbovePlate);
  const reaches = upper.map((plane) => [plane, plane.eave.run] as const);
  const tie = {
    height: breakHeight(top.planes),
    length: reaches.reduce((sum, [, reach]) => sum + reach, 0),
    clip: Math.max(0, ...clips),
  };
  return [
    {
      id: idOf('breakTie', top),
      count: countOf(top.pairs, every),
      side: 'both',
      kind: 'breakTie',
      ...tie,
      ...behindBlocks(plan, tie, { reaches, frame: top.frame }),
    },
  ];
};

/** Every so many pairs from end A, and the last pair always: a line is snapped from the first to the last. */
const countOf = (pairs: number, every: number): number => Math.ceil((pairs - 1) / every) + 1;

/**
 * With its lower edge over where the planes pass the plates' outer faces a tie ends at the roof planes; lower it ends over
 * those faces, and its upper corners are clipped by what would stand out of the plane there (plumb, inches).
 */
const fitted = (
  plan: RoofPlan,
  { height, top }: { readonly height: number; readonly top: TieTop },
): Omit<FiguredTie, 'id' | 'count' | 'side' | 'kind'> => {
  const { frame, planes } = top;
  const plates = platesOf(frame);
  const passes = (plane: RoofPlane): number => plane.eave.plane.base - plates + planeOverPlate(plane);
  const atWalls = planes.filter(({ eave }) => !eave.stands);
  const low = atWalls.filter((plane) => height < passes(plane));
  const reach = (plane: RoofPlane): number =>
    low.includes(plane) ? plane.eave.run - plane.eave.clad : reachAt(plane, height + plates);
  const reaches: Reaches = atWalls.map((plane) => [
    plane,
    overAll(planes, plane, (one) => reach(one) + (one.eave.beyond ?? 0)),
  ]);
  const clip = Math.max(0, ...low.map((plane) => height + plan.rafter.depth - passes(plane)));
  const allLow = low.length === atWalls.length;
  const length = allLow ? frame.span : reaches.reduce((sum, [, one]) => sum + one, 0);
  const tie = { height, length, clip };
  return { ...tie, ...behindBlocks(plan, tie, { reaches, frame }) };
};

/** Level, from the ridge's centre line to the plane that a side comes to first. Inches. */
const overAll = (
  planes: readonly RoofPlane[],
  { eave: { side } }: RoofPlane,
  reach: (plane: RoofPlane) => number,
): number => Math.min(...planes.filter(({ eave }) => eave.side === side).map(reach));
