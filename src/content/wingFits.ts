import { cladOf } from '../core/roof/forms/common';
import { gableRuns } from '../core/roof/forms/gable';
import { wingSeat } from '../core/roof/forms/wing';
import type { GablePlan, Wing } from '../core/roof/plan';
import { hair } from '../core/units/hair';
import { gradient } from '../core/units/slope';
import { complaint, type Complaint } from './complaint';
import { when, type Show } from './saidSizes';

/** What does not go together in a wing: where it stands, how high it comes, and where its long valley ends. */

/** Inches; extents along the host's wall. */
type Placed = {
  readonly wing: Wing;
  readonly index: number;
  readonly half: number;
  readonly from: number;
  readonly to: number;
};

export const wingFits = (plan: GablePlan, show: Show): readonly Complaint[] => {
  const clad = cladOf(plan);
  const all = (plan.wings ?? []).map((wing, index): Placed => {
    const half = wing.span / 2 + clad;
    return { wing, index, half, from: wing.at - half, to: wing.at + half };
  });
  return all.flatMap((one) => [
    ...onWall(plan, one, show),
    ...underRidge(plan, one, show),
    ...apart(one, all, show),
    ...longInside(plan, { one, all }, show),
  ]);
};

const onWall = (plan: GablePlan, { wing, index, half, from, to }: Placed, show: Show): readonly Complaint[] =>
  when(from < -hair || to > plan.length + hair, () =>
    complaint(
      `wings.${index}.at`,
      `is ${show(wing.at)} and puts a wing of ${show(wing.span)} past the end of the wall`,
      half <= plan.length - half
        ? `${show(half)} to ${show(plan.length - half)}`
        : `a wing of at most ${show(plan.length - 2 * cladOf(plan))}`,
    ),
  );

const underRidge = (plan: GablePlan, { wing, index }: Placed, show: Show): readonly Complaint[] => {
  const clad = cladOf(plan);
  const most = 2 * (widest(plan, wing) - clad);
  const seat = wingSeat(plan, wing, sideOf(plan, wing).seat);
  return [
    ...when(wing.span > most + hair, () =>
      complaint(
        `wings.${index}.span`,
        `is ${show(wing.span)} and brings its ridge over the main one`,
        `at most ${show(Math.max(0, most))} at these slopes`,
      ),
    ),
    ...when(seat <= clad + hair || seat - clad > plan.plate.width + hair, () =>
      complaint(
        `wings.${index}.slope.rise`,
        `asks for a seat of ${show(seat)} on the wing, to come to the same height over the plate`,
        `a slope that keeps it over ${show(clad)} and at most ${show(plan.plate.width + clad)}`,
      ),
    ),
  ];
};

const sideOf = (plan: GablePlan, { side }: Wing): Pick<GablePlan, 'slope' | 'seat'> =>
  side === 'yard' && plan.yard ? plan.yard : plan;

/** Level run of a wing whose ridge comes as high as the main one; so far a long valley leads aside on its way there. Inches. */
const widest = (plan: GablePlan, wing: Wing): number =>
  (gradient(sideOf(plan, wing).slope) * gableRuns(plan)[wing.side]) / gradient(wing.slope);

const apart = (
  { wing, index, from, to }: Placed,
  all: readonly Placed[],
  show: Show,
): readonly Complaint[] => {
  const other = all.find(
    (one) => one.index < index && one.wing.side === wing.side && one.from < to - hair && one.to > from + hair,
  );
  return when(other !== undefined, () =>
    complaint(
      `wings.${index}.at`,
      `is ${show(wing.at)}, where wing ${(other?.index ?? 0) + 1} stands on the same side`,
      'wings that stand beside each other',
    ),
  );
};

type Among = { readonly one: Placed; readonly all: readonly Placed[] };

/** Along the wall, all that a wing takes of the host's plane, its long valley with it. Inches. */
export const wingTakes = (plan: GablePlan, wing: Wing): readonly [from: number, to: number] => {
  const half = wing.span / 2 + cladOf(plan);
  const [from, to] = [wing.at - half, wing.at + half];
  const reach = widest(plan, wing);
  if (wing.framing !== 'longValley' || reach <= half + hair) return [from, to];
  return wing.longFrom === 'A' ? [from, Math.max(to, from + reach)] : [Math.min(from, to - reach), to];
};

/** The long valley has to come to the main ridge before the roof ends or another wing begins. */
const longInside = (plan: GablePlan, { one, all }: Among, show: Show): readonly Complaint[] => {
  const { wing, index, half, from, to } = one;
  const reach = widest(plan, wing);
  if (wing.framing !== 'longValley' || reach <= half + hair) return [];
  const far = wing.longFrom === 'A' ? from + reach : to - reach;
  const over = Math.abs(far - wing.at);
  const past = far < wing.valley.thickness || far > plan.length - wing.valley.thickness;
  const [low, high] = [Math.min(far, wing.at), Math.max(far, wing.at)];
  const other = all.find(
    (next) => next.index !== index && next.wing.side === wing.side && next.from < high && next.to > low,
  );
  const accepted = 'the other side, or framing "suspendedRidge"';
  return [
    ...when(past, () =>
      complaint(
        `wings.${index}.longFrom`,
        `is "${wing.longFrom}": the long valley would reach the ridge ${show(over)} beside the wing's middle, past the end of the roof`,
        accepted,
      ),
    ),
    ...when(other !== undefined, () =>
      complaint(
        `wings.${index}.longFrom`,
        `is "${wing.longFrom}": the long valley would run into wing ${(other?.index ?? 0) + 1}`,
        accepted,
      ),
    ),
  ];
};
