import { attemptFile, attemptText } from '../content/attemptFile';
import { diceOf } from '../core/hands/dice';
import { expert } from '../core/hands/expert';
import type { Level } from '../core/level/level';
import { scoreOf } from '../core/score/scored';
import type { Attempt } from '../core/site/attempt';
import { begin, take } from '../core/site/take';
import { markText } from './marked';

/** Acts between two looks whether there is something to mark. */
const actsAtOnce = 8;

/**
 * Frames a job and marks it before anything was handed in, for nobody to read: engines are several times slower on code that
 * they have not run much. Stops for good as soon as there is real work.
 */
export const warmUp = (level: Level, stopped: () => boolean): void => {
  const player = expert.player(diceOf(1, expert.name), undefined);
  let attempt: Attempt = begin(level, 1, 'own');
  const on = (): void => {
    for (let acts = 0; acts < actsAtOnce; acts++) {
      if (stopped()) return;
      const act = player(attempt);
      if (!act) {
        markText({ levels: [level], assignments: [] }, attemptText(attemptFile(attempt, scoreOf(attempt))));
        return;
      }
      attempt = take(attempt, act);
    }
    setTimeout(on);
  };
  on();
};
