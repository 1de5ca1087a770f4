import { characters } from '../../core/hands/characters';
import { diceOf } from '../../core/hands/dice';
import { play, playOut } from '../../core/hands/play';
import { skilled } from '../../core/hands/skilled';
import { uniform } from '../../core/level/draw';
import type { Level } from '../../core/level/level';
import { scoreOf } from '../../core/score/scored';
import { trialsEach } from './plan';
import type { Flipped, Job, Ran, Told } from './job';

/** Plays a job and keeps what the statistics need. */
export const played = (level: Level, job: Job): Told =>
  job.what === 'run' ? ran(level, job) : flipped(level, job);

const ran = (level: Level, job: Extract<Job, { what: 'run' }>): Ran => {
  const { total, pass, parts, done, findings } = scoreOf(play(level, job.hand, { seed: job.seed }));
  return { ...job, total, pass, parts, done, stopped: findings.some(({ kind }) => kind === 'safety') };
};

const flipped = (level: Level, job: Extract<Job, { what: 'flip' }>): Flipped => {
  const character = characters[job.hand];
  const from = (righted?: string) => {
    const { play: player, decider } = skilled({ character, dice: diceOf(job.seed, job.hand), righted });
    return { total: scoreOf(playOut(level, player, { seed: job.seed })).total, made: decider.made };
  };
  const first = from();
  const wrong = [...first.made].flatMap(([name, right]) => (right ? [] : [name]));
  const trials = chosen(wrong, job).map((decision) => ({ decision, after: from(decision).total }));
  return { ...job, before: first.total, trials };
};

/** A few of the wrong decisions of a run, each as likely. */
const chosen = (wrong: readonly string[], { level, seed }: Job): readonly string[] =>
  wrong
    .map((name) => ({ name, at: uniform(seed, `${level} ${name}`, 'flip') }))
    .sort((a, b) => a.at - b.at)
    .slice(0, trialsEach)
    .map(({ name }) => name);
