import { isOver } from '../units/hair';
import { shortInches } from '../units/lengthText';
import type { Caution } from './figured';
import { limits } from './limits';
import type { Lookouts, Rake, RoofPlan } from './plan';
import type { PlaneGroup } from './planes';
import { backsOf, lookoutMarks, rakeOf } from './rake';

/** Rakes that are legal to figure but unwise to build. Each is told once, of the first side it is so on. */
export const rakeCautions = (plan: RoofPlan, groups: readonly PlaneGroup[]): readonly Caution[] => {
  const rake = rakeOf(plan);
  if (!rake || plan.kind === 'hip') return [];
  const { lookouts } = rake;
  const told = groups.filter(({ count }) => count > 0);
  return [
    ...once(rakeRows, (check) => told.map((group) => check({ plan, rake, group }))),
    ...(lookouts
      ? once(lookoutRows, (check) => told.map((group) => check({ plan, rake, lookouts, group })))
      : []),
  ];
};

type Row<T> = { readonly code: string; readonly at: string; readonly check: T };

const once = <T>(
  rows: readonly Row<T>[],
  texts: (check: T) => readonly (string | false)[],
): readonly Caution[] =>
  rows.flatMap(({ code, at, check }) => {
    const text = texts(check).find((one) => one !== false);
    return text ? [{ code, at, text }] : [];
  });

type Raked = { readonly plan: Ended; readonly rake: Rake; readonly group: PlaneGroup };
type Ended = Exclude<RoofPlan, { readonly kind: 'hip' }>;
type RakeCheck = (so: Raked) => string | false;

type Checked = Raked & { readonly lookouts: Lookouts };
type Check = (so: Checked) => string | false;

const show = (value: number): string => `${shortInches(value)} in`;

/** Where the commons' cut is as long, theirs is said. */
const rakeOffBoard: RakeCheck = ({ plan, rake: { rafter }, group: { eave, cuts } }) => {
  const [what, board] = plan.kind === 'shed' ? ['ledger', plan.ledger] : ['ridge', plan.ridge];
  if (!board) return false;
  const { depth } = board;
  const plumb = rafter.depth * Math.sqrt(1 + eave.m * eave.m);
  return (
    isOver(plumb, Math.max(depth, cuts.plumbCutLength)) &&
    `The ${what} is ${show(depth)} deep and the plumb cut of the rake rafters is ${show(plumb)} long: the bottom ${show(plumb - depth)} of the cut bears on nothing.`
  );
};

const marksOf = ({ plan, lookouts, group }: Checked): readonly number[] =>
  lookoutMarks(plan, lookouts, { ...group.eave, edgeLength: group.cuts.edgeLength });

const noLookout: Check = (so) =>
  marksOf(so).length === 0 &&
  `No lookout falls on a rafter ${show(so.group.cuts.edgeLength)} long: the rake rafter hangs on its ends alone.`;

const notchDeep: Check = ({ plan: { rafter }, lookouts: { thickness } }) =>
  isOver(thickness, rafter.depth * limits.notchInside) &&
  `The notches for lookouts are ${show(thickness)} deep; away from its ends a rafter may be notched a sixth of its depth, ${show(rafter.depth * limits.notchInside)}.`;

/** The third is of the run. A rafter that stands on studs spans from one to the next and has none of its own; ours. */
const notchMiddle: Check = (so) => {
  const { eave } = so.group;
  const { run, overhang, m } = eave;
  if (so.plan.gableStuds && so.lookouts.back === 1) return false;
  const g = Math.sqrt(1 + m * m);
  const [from, to] = [(overhang + run / 3) * g, (overhang + (2 * run) / 3) * g];
  const half = so.lookouts.width / 2;
  const inside = marksOf(so).filter((mark) => isOver(mark + half, from) && isOver(to, mark - half));
  return (
    inside.length > 0 &&
    `${inside.length} of the notches in a rafter lie in the middle third of its run, where none may be${so.lookouts.back === 1 ? ' unless it stands on studs' : ''}.`
  );
};

const tailThin: Check = (so) => {
  const { eave } = so.group;
  const left = so.plan.rafter.depth - so.lookouts.thickness;
  const heel = eave.overhang * Math.sqrt(1 + eave.m * eave.m);
  const [lowest] = marksOf(so);
  return (
    lowest !== undefined &&
    isOver(heel, lowest - so.lookouts.width / 2) &&
    isOver(limits.tailDepth, left) &&
    `A notch for a lookout leaves ${show(left)} of the end rafter's tail; ${show(limits.tailDepth)} is the least.`
  );
};

/** Common practice, no source. */
const lookoutsShort: Check = ({ plan, lookouts, group }) => {
  const { A, B } = backsOf(plan, group.eave.stations, lookouts);
  const back = Math.min(A, B);
  return (
    isOver(plan.rakeOverhang, back) &&
    `The rake reaches out ${show(plan.rakeOverhang)} and its lookouts run back ${show(back)}. Common practice, no source: they run back at least as far as they reach out.`
  );
};

const rakeShallow: Check = ({ rake: { rafter }, lookouts: { thickness } }) =>
  isOver(thickness, rafter.depth) &&
  `The lookouts are ${show(thickness)} thick and the rake rafter is ${show(rafter.depth)} deep: their ends show under it.`;

const rakeRows: readonly Row<RakeCheck>[] = [
  { code: 'rakeOffBoard', at: 'rake.rafter.depth', check: rakeOffBoard },
];

const lookoutRows: readonly Row<Check>[] = [
  { code: 'lookoutsNone', at: 'rake.lookouts.spacing', check: noLookout },
  { code: 'lookoutNotchDeep', at: 'rake.lookouts.thickness', check: notchDeep },
  { code: 'lookoutNotchMiddle', at: 'rake.lookouts', check: notchMiddle },
  { code: 'lookoutTailThin', at: 'rake.lookouts.thickness', check: tailThin },
  { code: 'lookoutsShort', at: 'rake.lookouts.back', check: lookoutsShort },
  { code: 'rakeShallow', at: 'rake.rafter.depth', check: rakeShallow },
];
