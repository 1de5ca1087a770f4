import type { HandName } from '../../core/hands/hand';
import { rungName, rungs } from '../../core/hands/characters';
import type { Job } from './job';

/** How often each hand plays a level. */
export type Sizes = {
  readonly expert: number;
  /** The competent, each single fault, each novice. */
  readonly each: number;
  /** People on each rung of the ladder; each plays twice on a level. */
  readonly people: number;
  readonly random: number;
  /** Runs whose wrong decisions are put right one at a time. */
  readonly flips: number;
  /** Order lists, for what needs no frame. */
  readonly lists: number;
};

export const singleFaults = [
  'skips-checks',
  'naive-order',
  'careless-fit',
  'takes-any',
  'refuses-all',
  'unsafe',
] as const satisfies readonly HandName[];

/** Whom the expert is told from; random counts among them with as many runs as the others. */
export const novices = ['beginner', 'quits', 'random'] as const satisfies readonly HandName[];

const idles = 4;
/** Runs of one person of the ladder on one level. */
export const runsEach = 2;
/** Decisions that are put right, one at a time, in one run. */
export const trialsEach = 4;

/** For 200 runs of each, the usual: 10,000 of the random hand, which is quick, 1,000 order lists, 20 people on each rung. */
export const sizesFor = (runs: number): Sizes => ({
  expert: runs,
  each: runs,
  people: Math.max(2, Math.round(runs / 10)),
  random: 50 * runs,
  flips: Math.ceil(runs / 2),
  lists: 5 * runs,
});

/** A share of it, for levels that are not the reference. */
export const shareOf = (sizes: Sizes, share: number): Sizes => {
  const part = (count: number, least: number): number => Math.max(least, Math.ceil(count * share));
  return {
    expert: part(sizes.expert, 4),
    each: part(sizes.each, 4),
    people: part(sizes.people, 2),
    random: part(sizes.random, 4),
    flips: part(sizes.flips, 2),
    lists: part(sizes.lists, 50),
  };
};

const firstSeed = 1;

export const jobsFor = (level: string, sizes: Sizes): readonly Job[] => {
  const runs = (hand: HandName, count: number): readonly Job[] =>
    Array.from({ length: count }, (_, i) => ({ what: 'run', level, hand, seed: firstSeed + i }));
  const flips = Array.from({ length: sizes.flips }, (_, i): Job => ({
    what: 'flip',
    level,
    hand: i % 2 === 0 ? 'competent' : 'beginner',
    seed: firstSeed + i,
  }));
  return [
    ...runs('expert', sizes.expert),
    ...(['competent', ...singleFaults, 'beginner', 'quits'] as const).flatMap((hand) =>
      runs(hand, sizes.each),
    ),
    ...rungs.flatMap((tenths) => runs(rungName(tenths), runsEach * sizes.people)),
    ...flips,
    ...runs('idle', idles),
    ...runs('random', sizes.random),
  ];
};
