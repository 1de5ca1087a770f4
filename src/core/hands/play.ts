import type { Level } from '../level/level';
import type { Methods } from '../level/method';
import type { Attempt, Mode } from '../site/attempt';
import { begin, take } from '../site/take';
import { diceOf } from './dice';
import { expert, skipsChecks } from './expert';
import type { Hand, HandName } from './hand';
import { idle } from './idle';
import { naiveOrder } from './naive';
import { random } from './random';

/** Every crew hand by name. */
export const hands: readonly Hand[] = [expert, skipsChecks, naiveOrder, random, idle];

/** More acts than any job here needs: a hand that goes round in a circle ends here. */
const enough = 2000;

/** A hand plays a level from the start until it stops. Same level, hand, seed and way: same attempt. */
export const play = (
  level: Level,
  hand: HandName,
  run: { readonly seed: number; readonly mode?: Mode; readonly wanted?: Partial<Methods> },
): Attempt => {
  const found = hands.find(({ name }) => name === hand) ?? idle;
  const player = found.player(diceOf(run.seed, hand), run.wanted);
  let attempt = begin(level, run.seed, run.mode ?? 'check-off');
  for (let acts = 0; acts < enough; acts++) {
    const act = player(attempt);
    if (!act) break;
    attempt = take(attempt, act);
  }
  return attempt;
};
