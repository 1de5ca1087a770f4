import { attemptFile, attemptText } from '../content/attemptFile';
import { diceOf } from '../core/hands/dice';
import type { HandName } from '../core/hands/hand';
import { hands } from '../core/hands/play';
import type { Level } from '../core/level/level';
import { scoreOf } from '../core/score/scored';
import type { Attempt } from '../core/site/attempt';
import { begin, take } from '../core/site/take';
import { markText } from './marked';

/** Acts between two looks whether there is something to mark. */
const actsAtOnce = 8;

/** Runs go wrong in different ways, and each way runs other code. */
const practised: readonly HandName[] = ['expert', 'naive-order', 'skips-checks', 'competent'];

/** More than any of these hands needs for a job. */
const mostActs = 2000;

/** One act after the other, and each run marked when it is done. */
function* practice(level: Level): Generator<void> {
  for (const hand of hands.filter(({ name }) => practised.includes(name))) {
    const player = hand.player(diceOf(1, hand.name), undefined);
    let attempt: Attempt = begin(level, 1, 'own');
    for (let act = player(attempt); act && attempt.steps.length < mostActs; act = player(attempt)) {
      attempt = take(attempt, act);
      yield;
    }
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
