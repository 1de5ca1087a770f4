import { sidesOf } from '../level/layout';
import type { Level } from '../level/level';
import { ends, type Side } from '../roof/side';
import { ledgerJoint, rafterId } from '../site/ids';
import { stayingPosts } from '../site/planPosts';
import type { Facts, Job } from './fact';
import { places } from './fact';

/** A stage the work has reached. Each may become untrue again when something is drawn or taken out. */
export type Milestone = (facts: Facts, job: Job) => boolean;

/** All rafters of a station hold, tacked or home. */
const holds =
  (facts: Facts, level: Level, prefix: '' | 'tack:') =>
  (station: number): boolean =>
    sidesOf(level).every((side) => {
      const id = rafterId(side, station);
      return facts(`${prefix}ridge:${id}`) && facts(`${prefix}heel:${id}`);
    });

const endPairs =
  (prefix: '' | 'tack:'): Milestone =>
  (facts, { level }) =>
    [1, places(level).last].every(holds(facts, level, prefix));

const rafters = (side: Side, { level }: Job, joint: string): readonly string[] =>
  places(level).all.map((n) => `${joint}${rafterId(side, n)}`);

/** Every pair that stands has its tie; with joists first every pair has one before any stands. */
const wallsTied: Milestone = (facts, { level, methods }) =>
  places(level).all.every((n) => {
    const stands = sidesOf(level).every((side) => facts(rafterId(side, n)));
    if (methods.ties === 'byPair' && !stands) return true;
    return facts(`joist.${n}`) || facts(`rafterTie.${n}`) || crossTied(facts, n);
  });

/** A cross tie at this station or the next ones within 8 ft; four bays at 24 in. */
const crossTied = (facts: Facts, station: number): boolean =>
  [0, 1, 2].some((d) => facts(`crossTie.${station - d}`) || facts(`crossTie.${station + d}`));

const upperTied: Milestone = (facts, { level, methods }) =>
  places(level).upper.every((n) =>
    methods.upper === 'straps'
      ? facts(`strap:strap.${n}`)
      : sidesOf(level).every((side) => facts(`collarEnd:collar.${n}.${side}`)),
  );

export const milestones = {
  wallsBraced: (facts, { level }) =>
    [...sidesOf(level), ...ends].every((wall) => facts(`brace.wall.${wall}`)),
  wallsTied,
  laidOut: (facts, { level }) =>
    [...sidesOf(level).map((side) => `mark:plate.${side}`), 'mark:ridge'].every(facts),
  ridgeLengthSettled: (facts) => facts('ridgeLength'),
  readyAloft: (facts) =>
    ['platform', 'ladder', 'openings', 'anchor', 'gear'].every((what) => facts(`ready:${what}`)),
  postsFixed: (facts, { level }) => stayingPosts(level).every((post) => facts(`fixed:${post}`)),
  ridgeUp: (facts) => facts('ridge'),
  endsTacked: endPairs('tack:'),
  heightSettled: (facts) => facts('settled'),
  endsProved: (facts, job) => endPairs('tack:')(facts, job) && facts('settled'),
  endsNailed: endPairs(''),
  middleLocked: (facts, { level }) => places(level).middle.some(holds(facts, level, '')),
  bracedAcross: (facts) => ends.every((end) => facts(`brace.across.${end}`)),
  bracedAlong: (facts) => facts('brace.along.1'),
  stackedStreet: (facts, job) => rafters('street', job, 'tack:heel:').every(facts),
  stackedYard: (facts, job) => rafters('yard', job, 'tack:heel:').every(facts),
  strungStreet: (facts) => facts('string.street'),
  strungYard: (facts) => facts('string.yard'),
  ledgerNailed: (facts, { level }) => places(level).all.every((n) => facts(ledgerJoint(n))),
  heelsNailed: (facts, job) => sidesOf(job.level).every((side) => rafters(side, job, 'heel:').every(facts)),
  lineSnapped: (facts, { level }) => sidesOf(level).every((side) => facts(`chalk.${side}`)),
  upperTied,
  readyToProp: (facts, job) =>
    sidesOf(job.level).every((side) => rafters(side, job, 'heel:').every(facts)) && upperTied(facts, job),
} satisfies Record<string, Milestone>;

export type MilestoneId = keyof typeof milestones;

/** Milestones that each side reaches by itself. */
export const sideMilestones = {
  strung: (facts, side) => facts(`string.${side}`),
  /** A line to cut to, on rafters whose heels are home. */
  tailLined: (facts, side, job) => facts(`tail.${side}`) && rafters(side, job, 'heel:').every(facts),
} satisfies Record<string, (facts: Facts, side: Side, job: Job) => boolean>;

export type SideMilestoneId = keyof typeof sideMilestones;

const isOfSide = (id: MilestoneId | SideMilestoneId): id is SideMilestoneId => id in sideMilestones;

/** Whether the earlier half of a rule is so; of one that each side has for itself, on the side it is asked for. */
export const reached = (
  id: MilestoneId | SideMilestoneId,
  facts: Facts,
  { job, instance }: { readonly job: Job; readonly instance: string },
): boolean => (isOfSide(id) ? sideMilestones[id](facts, instance as Side, job) : milestones[id](facts, job));

/** The name of what should have come first: with its side where each side has its own. */
export const milestoneName = (id: MilestoneId | SideMilestoneId, instance: string): string =>
  isOfSide(id) ? `${id}.${instance}` : id;
