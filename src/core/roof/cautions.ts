import { isOver } from '../units/hair';
import { shortInches } from '../units/lengthText';
import type { Caution } from './figured';
import { bearingOf } from './form';
import { limits } from './limits';
import type { PlaneGroup } from './planes';
import type { RoofPlan, ShedPlan } from './plan';
import { collarShare } from './ties';

/** Plans that are legal to figure but unwise to build. */

export type Checked = PlaneGroup & { readonly plan: RoofPlan; readonly topHeight: number };

/** What is wrong, in one or two plain sentences with the numbers; nothing when all is well. */
type Check = (so: Checked) => string | false;

export const cautionsOf = (so: Checked): readonly Caution[] =>
  onNoPlate(so)
    ? []
    : rows.flatMap(({ code, at, check }) => {
        const text = check(so);
        return text === false ? [] : [{ code, at: keyOf(so, at), text }];
      });

/** The rafters of a dormer without side walls have no birdsmouth. */
const onNoPlate = ({ eave: { opening } }: Checked): boolean =>
  opening !== undefined && opening.plates === undefined;

/** A dormer's own keys stand with it. */
const keyOf = ({ plan, eave: { dormer, opening } }: Checked, at: string): string => {
  const of = (dormer ?? opening)?.plan;
  return of && plan.kind === 'gable' ? `dormers.${plan.dormers?.indexOf(of) ?? 0}.${at}` : at;
};

/** Of roofs with a ridge; a dormer's rafters are looked at by its own cautions. */
type RidgedCheck = (
  so: PlaneGroup & { readonly plan: Exclude<RoofPlan, ShedPlan>; readonly topHeight: number },
) => string | false;

const ridged =
  (check: RidgedCheck): Check =>
  ({ plan, ...so }) =>
    plan.kind !== 'shed' &&
    !so.eave.dormer &&
    !so.eave.opening &&
    !so.eave.plane.till &&
    check({ ...so, plan });

/** Of roofs whose ridge is a board: one on posts carries, and needs no ties to do so. */
const onBoard = (check: RidgedCheck): Check =>
  ridged((so) => !('posts' in so.plan && so.plan.posts) && check(so));

const show = (value: number): string => `${shortInches(value)} in`;

const ridgeShallow: RidgedCheck = ({ plan: { ridge }, cuts }) =>
  isOver(cuts.plumbCutLength, ridge.depth) &&
  `The ridge is ${show(ridge.depth)} deep and the plumb cut is ${show(cuts.plumbCutLength)} long: the bottom ${show(cuts.plumbCutLength - ridge.depth)} of the cut bears on nothing.`;

const ridgeThin: RidgedCheck = ({ plan: { ridge } }) =>
  isOver(limits.ridgeThickness, ridge.thickness) &&
  `The ridge is ${show(ridge.thickness)} thick; ${show(limits.ridgeThickness)} is the least.`;

const ledgerShallow: Check = ({ plan, cuts }) =>
  plan.kind === 'shed' &&
  plan.ledger !== undefined &&
  isOver(cuts.plumbCutLength, plan.ledger.depth) &&
  `The ledger is ${show(plan.ledger.depth)} deep and the plumb cut is ${show(cuts.plumbCutLength)} long: the bottom ${show(cuts.plumbCutLength - plan.ledger.depth)} of the cut bears on nothing.`;

const notchDeep: Check = ({ plan: { rafter }, cuts }) =>
  isOver(cuts.notchDepth, rafter.depth * limits.notchShare) &&
  `The birdsmouth is ${show(cuts.notchDepth)} deep; the most at a bearing is a quarter of the depth, ${show(rafter.depth * limits.notchShare)}. A seat of ${show(cuts.maxSeat)} keeps to it.`;

const tailThin: Check = ({ plan: { rafter }, eave: { overhang }, cuts }) =>
  overhang > 0 &&
  isOver(limits.tailDepth, rafter.depth - cuts.notchDepth) &&
  `${show(rafter.depth - cuts.notchDepth)} of wood is left over the birdsmouth to carry the overhang; ${show(limits.tailDepth)} is the least.`;

const tailLong: Check = ({ eave: { overhang } }) =>
  isOver(overhang, limits.tailReach) &&
  `The tails reach out ${show(overhang)}; past ${show(limits.tailReach)} they need a design.`;

const bearingShort: Check = ({ eave }) =>
  isOver(limits.bearing, bearingOf(eave)) &&
  `The seat bears ${show(bearingOf(eave))} on the plate; ${show(limits.bearing)} is the least.`;

const slopeLow: RidgedCheck = ({ eave: { m } }) =>
  isOver(limits.boardSlope, m) &&
  `The slope is ${shortInches(12 * m)} in 12. Under ${12 * limits.boardSlope} in 12 the ridge has to carry as a beam, on posts, not as a board.`;

const tiesAbsent: RidgedCheck = ({ plan: { joists } }) =>
  joists === false &&
  'Nothing ties the walls together: with a ridge board they need joists or rafter ties, or the ridge has to be a beam.';

const tiesHigh: RidgedCheck = ({ plan: { joists }, topHeight }) =>
  joists !== false &&
  isOver(joists.height, topHeight * limits.tieShare) &&
  `The ties sit ${show(joists.height)} above the plate. Above the lower third, ${show(topHeight * limits.tieShare)}, the ridge has to be a beam.`;

const tiesWide: RidgedCheck = ({ plan: { joists, spacing } }) =>
  joists !== false &&
  isOver(joists.every * spacing, limits.tieSpacing) &&
  `The ties are ${show(joists.every * spacing)} apart; ${show(limits.tieSpacing)} is the most, and newer codes may ask for less.`;

/** Joists on the plates lie on them as far as the blocks: as thick as rafters, and an allowance. Blocks that lean over leave more. */
const tieBearing: RidgedCheck = ({ plan: { joists, plate, rafter, blockAllowance, blockStands } }) => {
  const left = plate.width - rafter.thickness - blockAllowance;
  return (
    joists !== false &&
    joists.height === 0 &&
    blockStands === 'plumb' &&
    isOver(limits.bearing, left) &&
    `Behind the blocks a joist has ${show(Math.max(0, left))} of the plate; ${show(limits.bearing)} is the least.`
  );
};

const collarsWide: RidgedCheck = ({ plan: { collars, spacing } }) =>
  collars !== false &&
  isOver(collars.every * spacing, limits.collarSpacing) &&
  `The collars are ${show(collars.every * spacing)} apart; ${show(limits.collarSpacing)} is the most.`;

const collarsTight: RidgedCheck = ({ plan: { collars, ridge }, topHeight }) => {
  const room = topHeight * (1 - collarShare) - ridge.depth;
  return (
    collars !== false &&
    isOver(limits.collarDepth, room) &&
    `The upper third leaves ${show(Math.max(0, room))} under the ridge board, and a collar needs ${show(limits.collarDepth)}: use ridge straps.`
  );
};

const rows: readonly { readonly code: string; readonly at: string; readonly check: Check }[] = [
  { code: 'ridgeShallow', at: 'ridge.depth', check: ridged(ridgeShallow) },
  { code: 'ridgeThin', at: 'ridge.thickness', check: ridged(ridgeThin) },
  { code: 'ledgerShallow', at: 'ledger.depth', check: ledgerShallow },
  { code: 'notchDeep', at: 'seat', check: notchDeep },
  { code: 'tailThin', at: 'seat', check: tailThin },
  { code: 'tailLong', at: 'overhang', check: tailLong },
  { code: 'bearingShort', at: 'seat', check: bearingShort },
  { code: 'slopeLow', at: 'slope', check: onBoard(slopeLow) },
  { code: 'tiesAbsent', at: 'joists', check: onBoard(tiesAbsent) },
  { code: 'tiesHigh', at: 'joists.height', check: onBoard(tiesHigh) },
  { code: 'tiesWide', at: 'joists.every', check: onBoard(tiesWide) },
  { code: 'tieBearing', at: 'plate.width', check: ridged(tieBearing) },
  { code: 'collarsWide', at: 'collars.every', check: ridged(collarsWide) },
  { code: 'collarsTight', at: 'collars', check: ridged(collarsTight) },
];
