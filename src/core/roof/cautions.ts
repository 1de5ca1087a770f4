import { decimalInches } from '../units/lengthText';
import type { RafterCuts } from './common';
import type { Caution } from './figured';
import type { Eave } from './form';
import type { RoofPlan } from './plan';

/** Plans that are legal to figure but unwise to build. Limits in inches, each with its source. */
export const limits = {
  /** IRC R802.7.1: a notch at an end is no deeper than a quarter of the depth (read second hand). */
  notchShare: 1 / 4,
  /** IRC R802.7.1.1: stock left over the overhang, and how far a cantilevered tail may reach (read second hand). */
  tailDepth: 3.5,
  tailReach: 24,
  /** IRC R802.6: bearing on wood (read second hand). */
  bearing: 1.5,
  /** IRC R802.4.4: under 3 in 12 the ridge is a beam (read second hand). */
  boardSlope: 3 / 12,
  /** IRC R802.5.2: ties in the lower third (read second hand). */
  tieShare: 1 / 3,
} as const;

export type Checked = {
  readonly plan: RoofPlan;
  readonly eave: Eave;
  readonly cuts: RafterCuts;
  readonly topHeight: number;
};

export const cautionsOf = (so: Checked): readonly Caution[] =>
  rows.flatMap((row) => (row.unwise(so) ? [{ code: row.code, at: row.at, text: row.text(so) }] : []));

type Row = {
  readonly code: string;
  readonly at: string;
  readonly unwise: (so: Checked) => boolean;
  readonly text: (so: Checked) => string;
};

const show = (value: number): string => `${decimalInches(value)} in`;
const tieHeight = ({ plan }: Checked): number => (plan.joists ? plan.joists.height : 0);

const rows: readonly Row[] = [
  {
    code: 'ridgeShallow',
    at: 'ridge.depth',
    unwise: ({ plan, cuts }) => plan.ridge.depth < cuts.plumbCutLength,
    text: ({ plan, cuts }) =>
      `The ridge is ${show(plan.ridge.depth)} deep and the plumb cut is ${show(cuts.plumbCutLength)}: part of the cut bears on nothing.`,
  },
  {
    code: 'notchDeep',
    at: 'seat',
    unwise: ({ plan, cuts }) => cuts.notchDepth > plan.rafter.depth * limits.notchShare,
    text: ({ plan, cuts }) =>
      `The birdsmouth is ${show(cuts.notchDepth)} deep; the limit at a bearing is a quarter of the depth, ${show(plan.rafter.depth * limits.notchShare)}.`,
  },
  {
    code: 'tailThin',
    at: 'seat',
    unwise: ({ plan, cuts }) => plan.overhang > 0 && plan.rafter.depth - cuts.notchDepth < limits.tailDepth,
    text: ({ plan, cuts }) =>
      `Only ${show(plan.rafter.depth - cuts.notchDepth)} of wood is left over the overhang; ${show(limits.tailDepth)} is the least.`,
  },
  {
    code: 'tailLong',
    at: 'overhang',
    unwise: ({ plan }) => plan.overhang > limits.tailReach,
    text: ({ plan }) =>
      `The tail reaches out ${show(plan.overhang)}; past ${show(limits.tailReach)} it needs a design.`,
  },
  {
    code: 'bearingShort',
    at: 'seat',
    unwise: ({ eave }) => eave.bearing < limits.bearing,
    text: ({ eave }) =>
      `The seat bears ${show(eave.bearing)} on the plate; ${show(limits.bearing)} is the least.`,
  },
  {
    code: 'slopeLow',
    at: 'slope',
    unwise: ({ eave }) => eave.m < limits.boardSlope,
    text: () => 'Under 3 in 12 the ridge has to carry as a beam, on posts, not as a board.',
  },
  {
    code: 'tiesAbsent',
    at: 'joists',
    unwise: ({ plan }) => plan.joists === false,
    text: () =>
      'Nothing ties the walls together: a ridge board needs joists or rafter ties, or it must be a beam.',
  },
  {
    code: 'tiesHigh',
    at: 'joists.height',
    unwise: (so) => tieHeight(so) > so.topHeight * limits.tieShare,
    text: (so) =>
      `The ties sit ${show(tieHeight(so))} up; above the lower third, ${show(so.topHeight * limits.tieShare)}, the ridge has to be a beam.`,
  },
];
