import type { Methods } from '../level/method';
import { againstWall, ridgeCarries } from '../level/layout';
import type { Level } from '../level/level';
import { placeOf } from '../site/ids';
import type { Fact, Job } from './fact';
import { places } from './fact';
import type { MilestoneId, SideMilestoneId } from './milestones';

/** One rule of the work, as data. Why it holds is told in both catalogues under its id. */
export type RuleId = OrderRuleId | CheckRuleId | StateRuleId | SafetyRuleId;
export type OrderRuleId =
  'O1' | 'O2' | 'O3' | 'O4' | 'O5' | 'O6' | 'O7' | 'O8' | 'O9' | 'O10' | 'O11' | 'O12' | 'O13';
export type CheckRuleId = 'C1' | 'C2' | 'C3' | 'C4' | 'C5' | 'C6' | 'C7';
export type StateRuleId = 'T1' | 'T2';
export type SafetyRuleId = 'S1' | 'S2' | 'S3' | 'S4';

/** `now`: its consequence happens on the site. `frame`: only its cost is told, what it would do is not simulated yet. */
export type Shows = 'now' | 'frame';

export type OrderRule = {
  readonly id: OrderRuleId;
  readonly type: 'order';
  readonly applies: (job: Job) => boolean;
  /** Only where rafters lean on one of these; everywhere where it is left out. */
  readonly ridge?: readonly RidgeKind[];
  /** The same in words, for RULES.md. */
  readonly when: string;
  readonly before: MilestoneId | SideMilestoneId;
  /** The later step in words, for RULES.md. */
  readonly later: string;
  /** Name of the instance a fact belongs to when it is the later step of this rule. */
  readonly after: (fact: Fact, job: Job) => string | undefined;
  /** Crew-minutes of putting it right late, and how they add up. */
  readonly rework: number;
  readonly how: string;
  readonly shows: Shows;
  readonly source: string;
  /** The level of the course that brings it up; none where no level has such a roof. */
  readonly introducedBy?: string;
};

/** A board that rafters hold, a beam that carries them, or a ledger on a wall. */
export type RidgeKind = 'board' | 'beam' | 'ledger';

export const common = 'common practice, no source';
const always = (): boolean => true;
const when =
  (key: keyof Methods, value: string) =>
  ({ methods }: Job): boolean =>
    methods[key] === value;

/** A rafter set up beyond the end pairs. */
const beyondEnds = (fact: Fact, { level }: Job): boolean => {
  if (!fact.startsWith('rafter.')) return false;
  const { station } = placeOf(fact);
  return station !== undefined && station !== 1 && station !== places(level).last;
};

const beyondEndsAndMiddle = (fact: Fact, job: Job): boolean =>
  beyondEnds(fact, job) && !places(job.level).middle.includes(placeOf(fact).station ?? 0);

const endJoint = (fact: Fact, { level }: Job): boolean => {
  if (fact.startsWith('ledger:')) return true;
  if (!/^(ridge|heel):rafter\./.test(fact)) return false;
  const { station } = placeOf(fact);
  return station === 1 || station === places(level).last;
};

/** A heel nailed home that is neither at an end nor in the middle third, where the lock pair stands. */
const stackHeel = (fact: Fact, job: Job): boolean =>
  fact.startsWith('heel:') && beyondEndsAndMiddle(fact.slice(5), job);

const kindOf = (level: Level): RidgeKind => {
  if (againstWall(level)) return 'ledger';
  return ridgeCarries(level) ? 'beam' : 'board';
};

const isOf =
  (...ridges: readonly RidgeKind[]) =>
  ({ level }: Pick<Job, 'level'>): boolean =>
    ridges.includes(kindOf(level));

/** A ridge with a side on either hand. */
const free = isOf('board', 'beam');

const longRidge = ({ level }: { readonly level: Level }): boolean => level.plan.length > 24 * 12;

export const orderRules: readonly OrderRule[] = [
  {
    id: 'O1',
    type: 'order',
    applies: always,
    when: 'always',
    later: 'the ridge is up',
    before: 'wallsBraced',
    after: (f) => (f === 'ridge' ? 'ridge' : undefined),
    rework: 40,
    how: 're-brace 8, prove again 12, shift and redo ends 20',
    shows: 'frame',
    source: common,
    introducedBy: 'boathouse',
  },
  {
    id: 'O2',
    type: 'order',
    applies: isOf('board'),
    ridge: ['board'],
    when: 'the ridge is a board; pair by pair where ties are set so',
    later: 'a post is taken out, or the machine unhooked',
    before: 'wallsTied',
    after: (f) => (/^out:post\.|^unhooked$/.test(f) ? 'props' : undefined),
    rework: 90,
    how: 'pull walls 30, 22 heels 55, prove again 5',
    shows: 'now',
    source: 'AWC course text on roof thrust (read): ties carry it, collars do not',
    introducedBy: 'sail-loft',
  },
  {
    id: 'O3',
    type: 'order',
    applies: always,
    when: 'always',
    later: 'a rafter stands beyond the end pairs',
    before: 'laidOut',
    after: (f, job) => (beyondEnds(f, job) ? 'layout' : undefined),
    rework: 60,
    how: '18 rafters at 3.5',
    shows: 'now',
    source: common,
    introducedBy: 'boathouse',
  },
  {
    id: 'O4',
    type: 'order',
    applies: when('ridgeLength', 'cut'),
    when: 'the ridge is cut to length',
    later: 'the ridge is up',
    before: 'ridgeLengthSettled',
    after: (f) => (f === 'ridge' ? 'ridge' : undefined),
    rework: 25,
    how: 'take it down, cut, put it up',
    shows: 'frame',
    source: common,
    introducedBy: 'boathouse',
  },
  {
    id: 'O5',
    type: 'order',
    applies: always,
    when: 'always',
    later: 'an end joint is nailed home',
    before: 'endsProved',
    after: (f, job) => (endJoint(f, job) ? 'ends' : undefined),
    rework: 24,
    how: '8 joints at 3',
    shows: 'now',
    source: common,
    introducedBy: 'garden-hut',
  },
  {
    id: 'O6',
    type: 'order',
    applies: (job) => free(job) && longRidge(job) && job.methods.stack === 'oneSide',
    ridge: ['board', 'beam'],
    when: 'ridge over 24 ft, one side at a time',
    later: 'a rafter stands beyond the end and middle pairs',
    before: 'middleLocked',
    after: (f, job) => (beyondEndsAndMiddle(f, job) ? 'stack' : undefined),
    rework: 53,
    how: '9 rafters off and on, lock',
    shows: 'now',
    source: 'beam arithmetic',
    introducedBy: 'hay-barn',
  },
  {
    id: 'O7',
    type: 'order',
    applies: free,
    ridge: ['board', 'beam'],
    when: 'not against a wall',
    later: 'a rafter stands beyond the end and middle pairs',
    before: 'bracedAlong',
    after: (f, job) => (beyondEndsAndMiddle(f, job) ? 'stack' : undefined),
    rework: 40,
    how: 'plumb the row again',
    shows: 'now',
    source: 'NAVEDTRA 14044 p. 2-38 (read)',
    introducedBy: 'drying-shed',
  },
  {
    id: 'O8',
    type: 'order',
    applies: always,
    when: 'each side',
    later: 'a heel beyond the end and middle pairs is nailed home',
    before: 'strung',
    after: (f, job) => (stackHeel(f, job) ? placeOf(f).side : undefined),
    rework: 33,
    how: '11 heels at 3, each side',
    shows: 'now',
    source: common,
    introducedBy: 'garden-hut',
  },
  {
    id: 'O9',
    type: 'order',
    applies: (job) => free(job) && when('upper', 'collars')(job),
    ridge: ['board', 'beam'],
    when: 'collars',
    later: 'a collar stands',
    before: 'lineSnapped',
    after: (f) => (/^collar\./.test(f) ? 'collars' : undefined),
    rework: 36,
    how: '6 collars at 6',
    shows: 'now',
    source: common,
    introducedBy: 'hay-barn',
  },
  {
    id: 'O10',
    type: 'order',
    applies: (job) => job.methods.hang === 'posts' && isOf('board')(job),
    ridge: ['board'],
    when: 'the ridge is a board, on posts until its rafters hold it',
    later: 'a post is taken out',
    before: 'readyToProp',
    after: (f) => (/^out:post\./.test(f) ? 'props' : undefined),
    rework: 42,
    how: 'posts 12, jack 10, late work 20',
    shows: 'now',
    source: common,
    introducedBy: 'hay-barn',
  },
  {
    id: 'O11',
    type: 'order',
    applies: when('tails', 'snapped'),
    when: 'tails left long, each side',
    later: 'a tail is cut',
    before: 'tailLined',
    after: (f) => (f.startsWith('tail:') ? placeOf(f.slice(5)).side : undefined),
    rework: 36,
    how: '9 tails pieced out at 4, each side',
    shows: 'now',
    source: common,
    introducedBy: 'ferry-shelter',
  },
  {
    id: 'O12',
    type: 'order',
    applies: isOf('beam'),
    ridge: ['beam'],
    when: 'the ridge carries as a beam, on posts of the plan',
    later: 'a rafter stands',
    before: 'postsFixed',
    after: (f) => (f.startsWith('rafter.') ? 'posts' : undefined),
    rework: 56,
    how: 'jack the ridge 10, posts 18, prove the ends again 12, 16 joints that slipped',
    shows: 'now',
    source: common,
  },
  {
    id: 'O13',
    type: 'order',
    applies: isOf('ledger'),
    ridge: ['ledger'],
    when: 'rafters lean on a ledger at a wall',
    later: 'a rafter stands beyond the end rafters',
    before: 'ledgerNailed',
    after: (f, job) => (beyondEnds(f, job) ? 'ledger' : undefined),
    rework: 38,
    how: 'prop the ledger 12, raise it 2, nail it 12, prove the ends again 12',
    shows: 'now',
    source: common,
  },
];

/** Of some rules those that say anything of a roof with such a ridge. */
export const onItsRidge = (level: Level, ids: readonly RuleId[]): readonly RuleId[] =>
  ids.filter((id) => {
    const ridge = orderRules.find((rule) => rule.id === id)?.ridge;
    return ridge === undefined || isOf(...ridge)({ level });
  });

export type CheckRule = {
  readonly id: CheckRuleId;
  readonly type: 'check';
  readonly weight: number;
  /** What is read and from when until when, in words, for RULES.md. */
  readonly asks: string;
  readonly shows: Shows;
  readonly source: string;
  readonly introducedBy: string;
};

export const checkRules: readonly CheckRule[] = [
  {
    id: 'C1',
    type: 'check',
    weight: 5,
    asks: 'widths, diagonals, level, straight, a quarter each: from the start until the ridge is up',
    shows: 'now',
    source: common,
    introducedBy: 'boathouse',
  },
  {
    id: 'C2',
    type: 'check',
    weight: 5,
    asks: 'height (tape, or both birdsmouths of that end by the rule) and centre, at A and B: from the end pairs tacked at the ridge until an end heel is home',
    shows: 'now',
    source: common,
    introducedBy: 'garden-hut',
  },
  {
    id: 'C3',
    type: 'check',
    weight: 4,
    asks: 'the level from both ends: from the height settled until an end heel is home',
    shows: 'now',
    source: '1/4 in in 10 ft as general framing tolerance (read); for a ridge it is ours',
    introducedBy: 'pump-house',
  },
  {
    id: 'C4',
    type: 'check',
    weight: 4,
    asks: 'the string along a ridge over 16 ft: from the end pairs tacked at the ridge until a pair locks its middle',
    shows: 'now',
    source: 'ours',
    introducedBy: 'sail-loft',
  },
  {
    id: 'C5',
    type: 'check',
    weight: 5,
    asks: 'of every two neighbours one to the string: from the string stretched until its heel is home',
    shows: 'now',
    source: 'ours',
    introducedBy: 'wood-store',
  },
  {
    id: 'C6',
    type: 'check',
    weight: 3,
    asks: 'from the datum every four bays: until the next four heels are home',
    shows: 'now',
    source: 'ours',
    introducedBy: 'wood-store',
  },
  {
    id: 'C7',
    type: 'check',
    weight: 3,
    asks: 'walked with the punch list: from the last nail until it is handed over',
    shows: 'now',
    source: common,
    introducedBy: 'hay-barn',
  },
];
