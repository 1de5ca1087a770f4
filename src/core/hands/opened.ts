import type { Level } from '../level/level';
import { crewDid, wholeJob } from '../level/stages';
import type { Action } from '../site/action';
import type { Attempt } from '../site/attempt';
import type { Mode } from '../level/mode';
import { begin, take } from '../site/take';
import { diceOf } from './dice';
import { expert } from './expert';

/** A run as the learner finds it: nothing touched, or everything before the level's first stage done by the crew. */
export const opened = (level: Level, seed: number, mode: Mode): Attempt => {
  const before = crewDid(level.stages ?? wholeJob);
  if (!before) return begin(level, seed, mode);
  const bySeed = cache.get(level) ?? new Map<number, Attempt>();
  cache.set(level, bySeed);
  const known = bySeed.get(seed) ?? doneByCrew({ ...level, stages: before }, seed);
  bySeed.set(seed, known);
  const { steps, site } = known;
  return { level, seed, mode, steps, site, found: { steps: steps.length, site } };
};
const cache = new WeakMap<Level, Map<number, Attempt>>();

/** The same acts once more from where the learner began; the steps that were taken back are taken back again. */
export const replay = (
  { level, seed, mode }: Pick<Attempt, 'level' | 'seed' | 'mode'>,
  actions: readonly Action[],
): Attempt => actions.reduce(take, opened(level, seed, mode));

/** A careful crew in the usual order, up to where it would hand over. */
const doneByCrew = (level: Level, seed: number): Attempt => {
  const player = expert.player(diceOf(seed, expert.name), undefined);
  let attempt = begin(level, seed, 'own');
  for (;;) {
    const act = player(attempt);
    if (!act || act.type === 'handOver' || (act.type === 'read' && act.at === 'punch')) return attempt;
    attempt = take(attempt, act);
  }
};
