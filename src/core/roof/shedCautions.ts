import { isOver } from '../units/hair';
import { shortInches } from '../units/lengthText';
import { gradient } from '../units/slope';
import type { Caution } from './figured';
import { limits } from './limits';
import type { RoofPlan, ShedPlan } from './plan';
import type { PlaneGroup } from './planes';

/** Of sheds: what a low slope asks of what carries their upper ends, and the birdsmouth on a high plate. */
export const shedCautions = (plan: RoofPlan, groups: readonly PlaneGroup[]): readonly Caution[] => {
  const [group] = groups;
  if (plan.kind !== 'shed' || !group) return [];
  return rows.flatMap(({ code, at, check }) => {
    const text = check(plan, group);
    return text === false ? [] : [{ code, at, text }];
  });
};

type Check = (plan: ShedPlan, group: PlaneGroup) => string | false;

const show = (value: number): string => `${shortInches(value)} in`;

/** The published limit is of members that rafters lean on, so a shed may be flatter; it is said what stands in for them. */
const slopeLow: Check = ({ slope, ledger }) =>
  isOver(limits.boardSlope, gradient(slope)) &&
  `The slope is ${shortInches(12 * gradient(slope))} in 12. The limit of ${12 * limits.boardSlope} in 12 is for ridges, hips and valleys, which carry as beams below it; a shed has none and may be flatter. ${
    ledger ? 'Its ledger and what fastens it carry' : 'Its high wall carries'
  } half of the roof at any slope. Mind what roofing the slope takes.`;

const highNotchDeep: Check = ({ rafter }, { cuts: { high, maxSeat } }) =>
  high !== undefined &&
  isOver(high.notchDepth, rafter.depth * limits.notchShare) &&
  `The upper birdsmouth is ${show(high.notchDepth)} deep; the most at a bearing is a quarter of the depth, ${show(rafter.depth * limits.notchShare)}. A seat of ${show(maxSeat)} keeps to it.`;

const highTailThin: Check = ({ rafter, highPlate }, { cuts: { high } }) =>
  high !== undefined &&
  highPlate !== undefined &&
  highPlate.overhang > 0 &&
  isOver(limits.tailDepth, rafter.depth - high.notchDepth) &&
  `${show(rafter.depth - high.notchDepth)} of wood is left over the upper birdsmouth to carry the high overhang; ${show(limits.tailDepth)} is the least.`;

const highTailLong: Check = ({ highPlate }) =>
  highPlate !== undefined &&
  isOver(highPlate.overhang, limits.tailReach) &&
  `The upper ends reach out ${show(highPlate.overhang)}; past ${show(limits.tailReach)} they need a design.`;

const highBearingShort: Check = ({ highPlate }) =>
  highPlate !== undefined &&
  isOver(limits.bearing, highPlate.seat) &&
  `The upper seat bears ${show(highPlate.seat)} on the high plate; ${show(limits.bearing)} is the least.`;

const rows: readonly { readonly code: string; readonly at: string; readonly check: Check }[] = [
  { code: 'slopeLow', at: 'slope', check: slopeLow },
  { code: 'notchDeep', at: 'highPlate.seat', check: highNotchDeep },
  { code: 'tailThin', at: 'highPlate.seat', check: highTailThin },
  { code: 'tailLong', at: 'highPlate.overhang', check: highTailLong },
  { code: 'bearingShort', at: 'highPlate.seat', check: highBearingShort },
];
