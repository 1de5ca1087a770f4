import type { DormerShape, Opening } from '../core/roof/form';
import { rowOf } from '../core/roof/forms/common';
import { lookoutsOf } from '../core/roof/rake';
import type { GablePlan } from '../core/roof/plan';
import { hair } from '../core/units/hair';
import { complaint, type Complaint } from './complaint';
import { when, type Show } from './saidSizes';
import { wingTakes } from './wingFits';

/** Where a dormer of any kind stands in its roof, and beside others. */

type Place = DormerShape | Opening;

export type Sited = {
  readonly plan: GablePlan;
  readonly place: Place;
  readonly index: number;
  readonly show: Show;
};

type SiteCheck = (so: Sited) => readonly Complaint[];

export const pathOf = (index: number, key: string): string => `dormers.${index}.${key}`;

/** Trimmers stand two thicknesses clear of the end rafters, as rafters of the row do. */
export const onRoof: SiteCheck = ({ plan, place: { from, to, plan: dormer }, index, show }) => {
  const edge = 2 * plan.rafter.thickness;
  const half = (to - from) / 2;
  const [low, high] = [half + edge, plan.length - half - edge];
  return when(from < edge - hair || to > plan.length - edge + hair, () =>
    complaint(
      pathOf(index, 'at'),
      `is ${show(dormer.at)} and puts a dormer of ${show(dormer.width)} past the end of the roof`,
      low <= high
        ? `${show(low)} to ${show(high)}`
        : `a dormer of at most ${show(plan.length - 2 * edge - (2 * half - dormer.width))}`,
    ),
  );
};

/** Lookouts butt against the trimmers at the most: past them the rafters are cut short. */
export const clearOfLookouts: SiteCheck = ({ plan, place, index, show }) => {
  const lookouts = lookoutsOf(plan);
  if (!lookouts) return [];
  const marks = rowOf(plan);
  const { trimmers, plan: dormer } = place;
  const [first, last] = [trimmers[0] ?? 0, trimmers.at(-1) ?? 0];
  const before = marks.filter((at) => at < first - 2 * plan.rafter.thickness + hair).length;
  const after = marks.filter((at) => at > last + 2 * plan.rafter.thickness - hair).length;
  return when(Math.min(before, after) < lookouts.back, () =>
    complaint(
      pathOf(index, 'at'),
      `is ${show(dormer.at)} and cuts rafters that lookouts run back to`,
      `${lookouts.back} main rafter${lookouts.back > 1 ? 's' : ''} or more between it and each end`,
    ),
  );
};

type Among = { readonly places: readonly Place[]; readonly index: number; readonly show: Show };

/** Level, how far its eaves stand out beside its trimmers. Inches. */
const eavesOut = (place: Place): number =>
  'covers' in place && place.plan.walls ? place.covers[1] + place.plan.walls.overhang - place.to : 0;

/** Beside other dormers and wings of its side. */
export const apart = (plan: GablePlan, { places, index, show }: Among): readonly Complaint[] => {
  const place = places[index];
  if (!place) return [];
  const { side, at } = place.plan;
  const out = eavesOut(place);
  const between = (one: Place): number => Math.max(2 * plan.rafter.thickness, out + eavesOut(one));
  const other = places.findIndex(
    (one, i) =>
      i < index &&
      one.plan.side === side &&
      one.from < place.to + between(one) - hair &&
      one.to > place.from - between(one) + hair,
  );
  const wing = (plan.wings ?? []).findIndex((one) => {
    const [from, to] = wingTakes(plan, one);
    const beside = 2 * one.valley.thickness + 2 * plan.rafter.thickness + out;
    return one.side === side && from < place.to + beside && to > place.from - beside;
  });
  const [near] = places.slice(other >= 0 ? other : index);
  const accepted = `a place at least ${show(between(near ?? place))} beside it, or the other side`;
  return [
    ...when(other >= 0, () =>
      complaint(pathOf(index, 'at'), `is ${show(at)}, where dormer ${other + 1} stands`, accepted),
    ),
    ...when(wing >= 0, () =>
      complaint(
        pathOf(index, 'at'),
        `is ${show(at)}, where wing ${wing + 1} or its long valley comes in`,
        'a place beside it, or the other side',
      ),
    ),
  ];
};
