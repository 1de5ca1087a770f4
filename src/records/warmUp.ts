import { attemptFile, attemptText } from '../content/attemptFile';
import { diceOf } from '../core/hands/dice';
import type { HandName } from '../core/hands/hand';
import { hands, playing } from '../core/hands/play';
import type { Level } from '../core/level/level';
import { scoreOf } from '../core/score/scored';
import type { Attempt } from '../core/site/attempt';
import { markText } from './marked';

/** Acts between two looks whether there is something to mark. */
const actsAtOnce = 8;

/** Runs go wrong in different ways, and each way runs other code. */
const practised: readonly HandName[] = ['expert', 'naive-order', 'skips-checks', 'competent'];

/** One act after the other, and each run marked when it is done. */
function* practice(level: Level): Generator<void> {
  for (const { name, player } of hands) {
    if (!practised.includes(name)) continue;
    let attempt: Attempt | undefined;
    for (attempt of playing(level, player(diceOf(1, name), undefined), { seed: 1, mode: 'own' })) yield;
    if (!attempt) continue;
    markText({ levels: [level], assignments: [] }, attemptText(attemptFile(attempt, scoreOf(attempt))));
    yield;
  }
}

/**
 * Frames a job several times and marks it before anything was handed in, for nobody to read: engines are several times slower on
 * code that they have not run much. Stops for good as soon as there is real work.
 */
export const warmUp = (level: Level, stopped: () => boolean): void => {
  const acts = practice(level);
  const on = (): void => {
    for (let i = 0; i < actsAtOnce; i++) if (stopped() || acts.next().done) return;
    setTimeout(on);
  };
  on();
};
