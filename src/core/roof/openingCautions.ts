import { isOver } from '../units/hair';
import { shortInches } from '../units/lengthText';
import { cutInRows, dormerCautioned, wallRow, type CautionRow, type CutIn } from './dormerCautions';
import type { Caution, FiguredDormer } from './figured';
import type { Framing } from './framing';
import { limits } from './limits';
import { openingsOn, type OpeningOn } from './openings';
import type { RoofPlan } from './plan';

/** Gable dormers that are legal to figure but unwise to build. */

type Checked = CutIn & { readonly on: OpeningOn };
type Check = (so: Checked) => string | false;

const show = (value: number): string => `${shortInches(value)} in`;

export const openingCautions = (
  plan: RoofPlan,
  { form }: Framing,
  dormers: readonly FiguredDormer[],
): readonly Caution[] =>
  openingsOn(form).flatMap((on) => {
    const dormer = dormers.find(({ id }) => id === on.name);
    if (!dormer) return [];
    const rows = on.opening.plates === undefined ? bare : [...bare, wallRow, untied];
    return dormerCautioned(rows, { plan, on, dormer, place: on.opening, host: on.host });
  });

const slopeLow: Check = ({ dormer: { slope } }) =>
  isOver(limits.boardSlope, slope.rise / slope.run) &&
  `The dormer's slope is ${shortInches((12 * slope.rise) / slope.run)} in 12. Under ${12 * limits.boardSlope} in 12 few roofings keep water out: look up the least slope of the one chosen.`;

const cutOf = (plan: RoofPlan, m: number): number => plan.rafter.depth * Math.sqrt(1 + m * m);

const ridgeShallow: Check = ({ plan, on: { opening }, dormer: { slope } }) => {
  const [cut, { ridge }] = [cutOf(plan, slope.rise / slope.run), opening.plan];
  return (
    isOver(cut, ridge.depth) &&
    `The dormer's ridge is ${show(ridge.depth)} deep and the plumb cut is ${show(cut)} long: the bottom ${show(cut - ridge.depth)} of the cut bears on nothing.`
  );
};

/** IRC R802.3 up to 2015, R802.4.3 since, read second hand: no less deep than the cut end of the rafters. */
const valleyShallow: Check = ({ plan, on: { opening, host }, dormer: { slope } }) => {
  const cut = cutOf(plan, Math.max(host.m, slope.rise / slope.run));
  const { depth } = opening.plan.valley;
  return (
    isOver(cut, depth) &&
    `The valley is ${show(depth)} deep and the jacks are cut ${show(cut)} long; it has to be as deep as their cut.`
  );
};

const bare: readonly CautionRow<Checked>[] = [
  { code: 'dormerSlopeLow', at: 'slope', check: slopeLow },
  { code: 'ridgeShallow', at: 'ridge.depth', check: ridgeShallow },
  { code: 'valleyShallow', at: 'valley.depth', check: valleyShallow },
  ...cutInRows,
];

const untied: CautionRow<Checked> = {
  code: 'tiesAbsent',
  at: 'wall',
  check: ({ plan }) =>
    plan.kind === 'gable' &&
    plan.joists === false &&
    "Nothing ties the dormer's side walls together: with a ridge board they need joists across their plates, or the ridge has to be a beam.",
};
