import { hair, isOver } from '../units/hair';
import { shortInches } from '../units/lengthText';
import { dormersOn, frontIn, mainTop, type DormerOn } from './dormers';
import type { Caution, FiguredDormer } from './figured';
import type { Framing } from './framing';
import { limits } from './limits';
import type { RoofPlan } from './plan';

/** Dormers that are legal to figure but unwise to build. */

const show = (value: number): string => `${shortInches(value)} in`;

type Checked = { readonly plan: RoofPlan; readonly on: DormerOn; readonly dormer: FiguredDormer };

export const dormerCautions = (
  plan: RoofPlan,
  { form }: Framing,
  dormers: readonly FiguredDormer[],
): readonly Caution[] =>
  dormersOn(form).flatMap((on, i) => {
    const dormer = dormers[i];
    if (!dormer) return [];
    return rows.flatMap(({ code, at, check }) => {
      const text = check({ plan, on, dormer });
      return text === false ? [] : [{ code, at: `dormers.${i}.${at}`, text }];
    });
  });

type Check = (so: Checked) => string | false;

const slopeLow: Check = ({ on: { shape } }) =>
  isOver(limits.boardSlope, shape.m) &&
  `The dormer's slope is ${shortInches(12 * shape.m)} in 12. Under ${12 * limits.boardSlope} in 12 ${
    shape.toRidge ? 'the ridge has to carry as a beam, on posts, and ' : ''
  }few roofings keep water out: look up the least slope of the one chosen.`;

const headerShallow: Check = ({ on: { shape }, dormer: { headers } }) => {
  const least = Math.max(0, ...headers.map(({ leastDepth }) => leastDepth));
  return (
    isOver(least, shape.plan.header.depth) &&
    `The header is ${show(shape.plan.header.depth)} deep and the rafters cut to it need ${show(least)}.`
  );
};

/** Longer headers hang from hangers and are not sized by habit. Common practice, no source. Inches. */
const designSpan = 72;

const headerLong: Check = ({ dormer: { headers, upperRafters, lowerRafters } }) => {
  const length = headers[0]?.length ?? 0;
  const many = (upperRafters[0]?.count ?? 0) + (lowerRafters[0]?.count ?? 0);
  return (
    isOver(length, designSpan) &&
    `The headers are ${show(length)} long and take ${many} rafters to the trimmers. Past ${show(designSpan)} header, trimmers and hangers need a design: code and plans first.`
  );
};

const pairsCut: Check = ({ plan, on: { shape } }) =>
  plan.kind === 'gable' &&
  !plan.posts &&
  `The dormer cuts ${shape.inner.length} main rafters short. Their partners on the other side push on the ridge alone: ties, floor and ridge there need a design, code and plans first.`;

const edgesNear: Check = ({ plan, on: { shape, host } }) => {
  const { thickness } = plan.rafter;
  const commons = host.stations.filter((at) => !host.through?.includes(at));
  const [left, right] = [
    commons.filter((at) => at < shape.from).length,
    commons.filter((at) => at > shape.to - thickness).length,
  ];
  return (
    Math.min(left, right) < 2 &&
    `The dormer leaves ${Math.min(left, right)} main rafter${Math.min(left, right) === 1 ? '' : 's'} between it and the end of the roof, beside its trimmers; two are common practice.`
  );
};

/** Two plates and a sole of 1 1/2 in each: under them no stud stands. Common practice, no source. */
const wallLeast = 4.5;

const wallLow: Check = ({ on }) => {
  const { shape } = on;
  const high = shape.host.base + shape.plan.wall - mainTop(on, frontIn(on));
  return (
    isOver(wallLeast, high) &&
    `The front wall stands ${show(Math.max(high, hair))} over the main rafters: no room for its plates, sill and flashing.`
  );
};

const rows: readonly { readonly code: string; readonly at: string; readonly check: Check }[] = [
  { code: 'dormerSlopeLow', at: 'slope', check: slopeLow },
  { code: 'headerShallow', at: 'header.depth', check: headerShallow },
  { code: 'headerLong', at: 'width', check: headerLong },
  { code: 'pairsCut', at: 'width', check: pairsCut },
  { code: 'dormerNearEnd', at: 'at', check: edgesNear },
  { code: 'dormerWallLow', at: 'wall', check: wallLow },
];
