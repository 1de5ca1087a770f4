import { hair, isOver } from '../units/hair';
import { shortInches } from '../units/lengthText';
import { dormersOn, type DormerOn } from './dormers';
import type { Caution, FiguredDormer } from './figured';
import type { DormerShape, Eave, Opening } from './form';
import type { Framing } from './framing';
import { limits } from './limits';
import type { RoofPlan } from './plan';

/** Dormers that are legal to figure but unwise to build. */

const show = (value: number): string => `${shortInches(value)} in`;

/** A dormer of any kind as it is framed into the main roof. */
export type CutIn = {
  readonly plan: RoofPlan;
  readonly place: DormerShape | Opening;
  readonly host: Eave;
  readonly dormer: FiguredDormer;
};

type Checked = CutIn & { readonly on: DormerOn };

export type CautionRow<T> = {
  readonly code: string;
  readonly at: string;
  readonly check: (so: T) => string | false;
};

/** What is unwise about one dormer, with its place in the plan. */
export const dormerCautioned = <T extends CutIn>(
  rows: readonly CautionRow<T>[],
  so: T,
): readonly Caution[] => {
  const { plan, place } = so;
  const index = plan.kind === 'gable' ? (plan.dormers?.indexOf(place.plan) ?? 0) : 0;
  return rows.flatMap(({ code, at, check }) => {
    const text = check(so);
    return text === false ? [] : [{ code, at: `dormers.${index}.${at}`, text }];
  });
};

export const dormerCautions = (
  plan: RoofPlan,
  { form }: Framing,
  dormers: readonly FiguredDormer[],
): readonly Caution[] =>
  dormersOn(form).flatMap((on) => {
    const dormer = dormers.find(({ id }) => id === on.name);
    return dormer ? dormerCautioned(rows, { plan, on, dormer, place: on.shape, host: on.host }) : [];
  });

type Check = (so: Checked) => string | false;
type CutInCheck = (so: CutIn) => string | false;

const slopeLow: Check = ({ on: { shape } }) =>
  isOver(limits.boardSlope, shape.m) &&
  `The dormer's slope is ${shortInches(12 * shape.m)} in 12. Under ${12 * limits.boardSlope} in 12 ${
    shape.toRidge ? 'the ridge has to carry as a beam, on posts, and ' : ''
  }few roofings keep water out: look up the least slope of the one chosen.`;

const headerShallow: CutInCheck = ({ place, dormer: { headers } }) => {
  const least = Math.max(0, ...headers.map(({ leastDepth }) => leastDepth));
  return (
    isOver(least, place.plan.header.depth) &&
    `The header is ${show(place.plan.header.depth)} deep and ${place.plan.kind === 'gable' ? 'what is' : 'the rafters'} cut to it ${place.plan.kind === 'gable' ? 'needs' : 'need'} ${show(least)}.`
  );
};

/** Longer headers hang from hangers and are not sized by habit. Common practice, no source. Inches. */
const designSpan = 72;

const headerLong: CutInCheck = ({ dormer: { headers, upperRafters, lowerRafters } }) => {
  const length = headers[0]?.length ?? 0;
  const many = (upperRafters[0]?.count ?? 0) + (lowerRafters[0]?.count ?? 0);
  return (
    isOver(length, designSpan) &&
    `The headers are ${show(length)} long and take ${many} rafters to the trimmers. Past ${show(designSpan)} header, trimmers and hangers need a design: code and plans first.`
  );
};

const pairsCut: CutInCheck = ({ plan, place: { inner } }) =>
  plan.kind === 'gable' &&
  !plan.posts &&
  inner.length > 0 &&
  `The dormer cuts ${inner.length} main rafters short. Their partners on the other side push on the ridge alone: ties, floor and ridge there need a design, code and plans first.`;

const edgesNear: CutInCheck = ({ plan, place, host }) => {
  const { thickness } = plan.rafter;
  const commons = host.stations.filter((at) => !host.through?.includes(at));
  const [left, right] = [
    commons.filter((at) => at < place.from).length,
    commons.filter((at) => at > place.to - thickness).length,
  ];
  return (
    Math.min(left, right) < 2 &&
    `The dormer leaves ${Math.min(left, right)} main rafter${Math.min(left, right) === 1 ? '' : 's'} between it and the end of the roof, beside its trimmers; two are common practice.`
  );
};

/** Two plates and a sole of 1 1/2 in each: under them no stud stands. Common practice, no source. */
const wallLeast = 4.5;

const wallLow: CutInCheck = ({ dormer: { frontHeight } }) =>
  isOver(wallLeast, frontHeight) &&
  `The front wall stands ${show(Math.max(frontHeight, hair))} over the main rafters: no room for its plates, sill and flashing.`;

/** Of every dormer; those over a wall of its own where it has one. */
export const cutInRows: readonly CautionRow<CutIn>[] = [
  { code: 'headerShallow', at: 'header.depth', check: headerShallow },
  { code: 'headerLong', at: 'width', check: headerLong },
  { code: 'pairsCut', at: 'width', check: pairsCut },
  { code: 'dormerNearEnd', at: 'at', check: edgesNear },
];
export const wallRow: CautionRow<CutIn> = { code: 'dormerWallLow', at: 'wall', check: wallLow };

const rows: readonly CautionRow<Checked>[] = [
  { code: 'dormerSlopeLow', at: 'slope', check: slopeLow },
  ...cutInRows,
  wallRow,
];
