import type { HandName } from '../../core/hands/hand';
import { rungName, rungs } from '../../core/hands/characters';
import type { Level } from '../../core/level/level';
import type { ProofLine } from '../../core/score/proof';
import type { Part } from '../../core/score/score';
import { weakestPart, type Norm } from '../../core/score/weakest';
import type { Flipped, Ran, Told } from './job';
import { acceptedTotals, randomMeans } from './lists';
import { novices, runsEach, singleFaults, type Sizes } from './plan';
import { aucOf, errorOfMeasurement, intraclass, mean, spearman, standardDeviation } from './stats';

type Bound = { readonly least?: number; readonly most?: number };
type Found = { readonly target: string; readonly value: number; readonly n: number };

const line = (level: string, { target, value, n }: Found, { least, most }: Bound): ProofLine => ({
  target,
  level,
  value: Math.round(value * 10000) / 10000,
  wanted: [least === undefined ? '' : `≥ ${least}`, most === undefined ? '' : `≤ ${most}`]
    .filter(Boolean)
    .join(', '),
  n,
  reached: (least === undefined || value >= least) && (most === undefined || value <= most),
});

/** Everything that was played on one level, asked for by hand. */
export type Played = {
  readonly of: (hand: HandName) => readonly Ran[];
  readonly totals: (hand: HandName) => readonly number[];
  readonly flips: readonly Flipped[];
};

export const playedOn = (level: string, told: readonly Told[]): Played => {
  const runs = told.filter((one): one is Ran => one.what === 'run' && one.level === level);
  const byHand = new Map<HandName, Ran[]>();
  for (const run of runs) byHand.set(run.hand, [...(byHand.get(run.hand) ?? []), run]);
  const of = (hand: HandName): readonly Ran[] =>
    [...(byHand.get(hand) ?? [])].sort((a, b) => a.seed - b.seed);
  const flips = told.filter((one): one is Flipped => one.what === 'flip' && one.level === level);
  return { of, totals: (hand) => of(hand).map(({ total }) => total), flips };
};

export const linesFor = (level: Level, told: readonly Told[], sizes: Sizes): readonly ProofLine[] => {
  const all = playedOn(level.id, told);
  return [
    ...expertLines(level.id, all),
    ...listLines(level, sizes.lists),
    ...apartLines(level.id, all),
    ...ladderLines(level.id, all),
    ...weaknessLines(level.id, all),
    ...bottomLines(level.id, all),
    ...flipLines(level.id, all),
  ];
};

const expertLines = (level: string, { of, totals }: Played): readonly ProofLine[] => {
  const expert = totals('expert');
  const n = expert.length;
  const passed = of('expert').filter(({ pass }) => pass).length;
  return [
    line(level, { target: 'expert: mean', value: mean(expert), n }, { least: 95 }),
    line(level, { target: 'expert: share that pass', value: passed / n, n }, { least: 0.98 }),
    line(level, { target: 'expert: lowest', value: Math.min(...expert), n }, { least: 99 }),
    line(
      level,
      { target: 'expert: from lowest to highest', value: Math.max(...expert) - Math.min(...expert), n },
      { most: 1 },
    ),
  ];
};

/** On lists of work, with everything else perfect. */
const listLines = (level: Level, count: number): readonly ProofLine[] => {
  const accepted = acceptedTotals(level, count);
  const n = accepted.length;
  const spread = Math.max(...accepted) - Math.min(...accepted);
  const means = randomMeans(level, count);
  const worst = means.reduce((far, one) => (Math.abs(one) > Math.abs(far) ? one : far), 0);
  return [
    line(level.id, { target: 'accepted orders: lowest', value: Math.min(...accepted), n }, { least: 99 }),
    line(level.id, { target: 'accepted orders: from lowest to highest', value: spread, n }, { most: 1 }),
    line(
      level.id,
      {
        target: 'random complete orders: order before its floor',
        value: mean(means),
        n: count * means.length,
      },
      { least: -0.05, most: 0.05 },
    ),
    line(
      level.id,
      { target: 'random complete orders: the way farthest from 0', value: worst, n: count },
      { least: -0.05, most: 0.05 },
    ),
  ];
};

const apartLines = (level: string, { totals }: Played): readonly ProofLine[] => {
  const pooled = novices.flatMap((hand) => totals(hand).slice(0, totals('beginner').length));
  const expert = totals('expert');
  const competent = totals('competent');
  return [
    line(
      level,
      {
        target: 'AUC: expert against novices',
        value: aucOf(expert, pooled),
        n: expert.length + pooled.length,
      },
      { least: 0.99 },
    ),
    ...singleFaults.map((hand) =>
      line(
        level,
        {
          target: `AUC: competent against ${hand}`,
          value: aucOf(competent, totals(hand)),
          n: competent.length + totals(hand).length,
        },
        { least: 0.75 },
      ),
    ),
  ];
};

/** People of the ladder: a rung, and their runs on this level in turn. */
export const peopleOf = ({
  totals,
}: Played): readonly { readonly skill: number; readonly runs: readonly number[] }[] =>
  rungs.flatMap((tenths) => {
    const all = totals(rungName(tenths));
    return Array.from({ length: Math.floor(all.length / runsEach) }, (_, i) => ({
      skill: tenths / 10,
      runs: all.slice(i * runsEach, (i + 1) * runsEach),
    }));
  });

const ladderLines = (level: string, all: Played): readonly ProofLine[] => {
  const people = peopleOf(all);
  const runs = people.flatMap(({ skill, runs: own }) => own.map((total) => ({ skill, total })));
  return [
    line(
      level,
      {
        target: 'Spearman: skill and score, one run',
        value: spearman(
          runs.map(({ skill }) => skill),
          runs.map(({ total }) => total),
        ),
        n: runs.length,
      },
      { least: 0.85 },
    ),
  ];
};

/** The parts each single fault should be named by. */
const weakness: Readonly<Partial<Record<HandName, Part>>> = {
  'skips-checks': 'checks',
  'naive-order': 'order',
  'careless-fit': 'fit',
  'takes-any': 'eye',
  'refuses-all': 'eye',
};

const parts: readonly Part[] = ['order', 'checks', 'fit', 'eye', 'economy'];

/** What the competent come to on a level, part by part. */
export const normOf = ({ of }: Played): Norm =>
  Object.fromEntries(
    parts.flatMap((part) => {
      const values = of('competent').flatMap((run) => run.parts[part] ?? []);
      return values.length === 0
        ? []
        : [[part, { mean: mean(values), sd: standardDeviation(values) }] as const];
    }),
  );

const weaknessLines = (level: string, all: Played): readonly ProofLine[] => {
  const norm = normOf(all);
  const named = (hand: HandName, runs: readonly Ran[]): boolean => {
    const own = weakness[hand];
    if (own === undefined) return runs.every(({ stopped }) => stopped);
    return weakestPart(meanParts(runs), norm) === own;
  };
  return singleFaults.flatMap((hand) =>
    [1, fourRuns].map((size) => {
      const groups = grouped(all.of(hand), size);
      const share = groups.filter((runs) => named(hand, runs)).length / groups.length;
      const target = `weakness named: ${hand}, ${size === 1 ? 'one run' : 'mean of four'}`;
      return line(level, { target, value: share, n: groups.length }, { least: 0.95 });
    }),
  );
};

/** A decision about a person takes at least so many runs. */
const fourRuns = 4;

const grouped = <T>(all: readonly T[], size: number): readonly (readonly T[])[] =>
  Array.from({ length: Math.floor(all.length / size) }, (_, i) => all.slice(i * size, (i + 1) * size));

const meanParts = (runs: readonly Ran[]): Ran['parts'] =>
  Object.fromEntries(
    parts.flatMap((part) => {
      const values = runs.flatMap((run) => run.parts[part] ?? []);
      return values.length === 0 ? [] : [[part, mean(values)] as const];
    }),
  );

const bottomLines = (level: string, { of, totals }: Played): readonly ProofLine[] => {
  const random = totals('random');
  const passed = of('random').filter(({ pass }) => pass).length;
  return [
    line(level, { target: 'random: mean', value: mean(random), n: random.length }, { most: 25 }),
    line(level, { target: 'random: passes', value: passed, n: random.length }, { most: 0 }),
    line(
      level,
      { target: 'idle: highest', value: Math.max(...totals('idle')), n: totals('idle').length },
      { most: 5 },
    ),
  ];
};

/** Trials in which putting one decision right lowered the total, worst first. */
export const lowered = ({ flips }: Pick<Played, 'flips'>) =>
  flips
    .flatMap(({ level, hand, seed, before, trials }) =>
      trials.map(({ decision, after }) => ({ level, hand, seed, decision, before, after })),
    )
    .filter(({ before, after }) => after < before)
    .sort((a, b) => a.after - a.before - (b.after - b.before));

/** More than this is a loss that has to be explained, points. */
const halfAPoint = 0.5;

const flipLines = (level: string, all: Played): readonly ProofLine[] => {
  const n = all.flips.reduce((sum, { trials }) => sum + trials.length, 0);
  const down = lowered(all);
  const far = down.filter(({ before, after }) => before - after > halfAPoint).length;
  return [
    line(level, { target: 'a decision put right: lowered by over half a point', value: far, n }, { most: 0 }),
    line(
      level,
      { target: 'a decision put right: share lowered at all', value: n === 0 ? 0 : down.length / n, n },
      { most: 0.01 },
    ),
  ];
};

/** Over the levels together: what the mean of four runs tells, and how far people agree with themselves from job to job. */
export const linesOver = (levels: readonly string[], told: readonly Told[]): readonly ProofLine[] => {
  if (levels.length < 2) return [];
  const people = overLevels(levels, told);
  const name = levels.join(', ');
  const n = people.length;
  const means = people.map(({ runs }) => mean(runs));
  return [
    line(
      name,
      {
        target: 'Spearman: skill and score, mean of four',
        value: spearman(
          people.map(({ skill }) => skill),
          means,
        ),
        n,
      },
      { least: 0.95 },
    ),
    line(
      name,
      {
        target: 'ICC(2,4): four runs over the levels',
        value: intraclass(people.map(({ runs }) => runs)).mean,
        n,
      },
      { least: 0.9 },
    ),
  ];
};

/** The same person on each level: four runs over two. */
const overLevels = (levels: readonly string[], told: readonly Told[]) => {
  const byLevel = levels.map((level) => peopleOf(playedOn(level, told)));
  const count = Math.min(...byLevel.map(({ length }) => length));
  return Array.from({ length: count }, (_, i) => ({
    skill: byLevel[0]?.[i]?.skill ?? 0,
    runs: byLevel.flatMap((people) => people[i]?.runs ?? []),
  }));
};

/** The standard error of one run on a level, from people of the ladder who did it twice. */
export const errorOn = (level: string, told: readonly Told[]): number => {
  const people = peopleOf(playedOn(level, told));
  if (people.length < 3) return NaN;
  const { single } = intraclass(people.map(({ runs }) => runs));
  return errorOfMeasurement(standardDeviation(people.flatMap(({ runs }) => runs)), single);
};
