import { complaint, type Complaint } from '../../content/complaint';
import { play } from '../../core/hands/play';
import { everyWay } from '../../core/hands/ways';
import type { Level } from '../../core/level/level';
import type { Methods } from '../../core/level/method';
import { scoreOf } from '../../core/score/scored';
import type { Score } from '../../core/score/score';

/** What only playing shows: that the level can be finished well in every accepted way, and that its faults can be found and missed. */
export const provedComplaints = (level: Level, runs: number = seedsEach): readonly Complaint[] => {
  const played = runsOf(level, runs).map(({ seed, way }) => ({
    way,
    seed,
    score: scoreOf(play(level, 'expert', { seed, wanted: way })),
  }));
  return [...played.flatMap(notClean), ...offPar(level, played), ...notMissed(level)];
};

/** Every choice of every topic is played on at least so many seeds. */
const seedsEach = 20;

type Played = { readonly way: Methods; readonly seed: number; readonly score: Score };

/** Ways are met in steps of this: prime to every number of ways there can be, so few runs already meet most choices. */
const stride = 7;

/** Ways in turn, each on a seed of its own: with n choices in a topic, n times the seeds give each choice its share. */
const runsOf = (level: Level, seeds: number): readonly { readonly seed: number; readonly way: Methods }[] => {
  const ways = everyWay(level);
  const most = Math.max(...Object.values(level.methods).map((choices) => choices.length));
  const count = Math.max(seeds * most, seeds === seedsEach ? ways.length : 0);
  return Array.from({ length: count }, (_, i) => ({
    seed: i + 1,
    way: ways[(i * stride) % ways.length] as Methods,
  }));
};

const notClean = ({ way, seed, score }: Played): readonly Complaint[] => {
  const bad = score.findings
    .filter(({ kind }) => kind === 'order' || kind === 'safety' || kind === 'eye')
    .map(({ code, at }) => `${code} ${at ?? ''}`);
  if (score.pass && bad.length === 0) return [];
  const what = score.pass
    ? bad.join(', ')
    : `does not pass, total ${score.total}${bad.length === 0 ? '' : `: ${bad.join(', ')}`}`;
  return [
    complaint(
      `methods (${Object.values(way).join(' ')}, seed ${seed})`,
      `the expert hand ${what}`,
      'a pass with nothing out of order, unsafe or missed',
    ),
  ];
};

/** How far par may lie from what clean runs take. Ours. */
const parShare = 0.1;

const offPar = (level: Level, played: readonly Played[]): readonly Complaint[] =>
  level.methods.hang.flatMap((hang) => {
    const used = played.filter(({ way }) => way.hang === hang).map(({ score }) => score.minutes.used);
    const par = level.par[hang];
    if (used.length === 0 || par === undefined) return [];
    const mean = used.reduce((a, b) => a + b, 0) / used.length;
    return Math.abs(par - mean) > parShare * mean
      ? [complaint(`par.${hang}`, `is ${par}`, `about ${Math.round(mean)}, what a clean run takes`)]
      : [];
  });

/** A hand that reads nothing must miss every fault that is planted, or it is no fault. */
const notMissed = (level: Level): readonly Complaint[] => {
  const score = scoreOf(
    play(level, 'reads-nothing', {
      seed: 1,
      wanted: level.methods.ridgeLength.includes('cut') ? { ridgeLength: 'cut' } : {},
    }),
  );
  const missed = score.findings.filter(({ kind }) => kind === 'eye').map(({ code }) => code);
  return [...new Set(level.asFound.planted.map(({ fault }) => fault))]
    .filter((fault) => !missed.includes(fault))
    .map((fault) =>
      complaint(
        'asFound.planted',
        `${fault} is not missed by a hand that reads nothing`,
        'a fault that has to be looked for',
      ),
    );
};
