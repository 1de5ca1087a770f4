import type { Level } from '../level/level';
import type { Methods } from '../level/method';
import type { Attempt } from '../site/attempt';
import type { Mode } from '../level/mode';
import { take } from '../site/take';
import { diceOf } from './dice';
import { characters, rungName, rungs } from './characters';
import { expert, readsNothing } from './expert';
import type { Hand, HandName, Player } from './hand';
import { idle } from './idle';
import { nailsFirst } from './naive';
import { opened } from './opened';
import { random } from './random';
import { evenSkill } from './skill';
import { skilled } from './skilled';

const characterHands = (Object.keys(characters) as (keyof typeof characters)[]).map((name): Hand => ({
  name,
  player: (dice, wanted) => skilled({ character: characters[name], dice, wanted }).play,
}));

const ladder = rungs.map((tenths): Hand => ({
  name: rungName(tenths),
  player: (dice, wanted) => skilled({ character: { skill: evenSkill(tenths / 10) }, dice, wanted }).play,
}));

/** Every crew hand by name. */
export const hands: readonly Hand[] = [
  expert,
  ...characterHands,
  ...ladder,
  readsNothing,
  nailsFirst,
  random,
  idle,
];

/** More acts than any job here needs: a hand that goes round in a circle ends here. */
const enough = 2000;

export type Run = { readonly seed: number; readonly mode?: Mode; readonly wanted?: Partial<Methods> };

/** A hand plays a level from the start until it stops. Same level, hand, seed and way: same attempt. */
export const play = (level: Level, hand: HandName, run: Run): Attempt => {
  const found = hands.find(({ name }) => name === hand) ?? idle;
  return playOut(level, found.player(diceOf(run.seed, hand), run.wanted), run);
};

/** The same with a player of one's own. */
export const playOut = (level: Level, player: Player, run: Run): Attempt => {
  let last: Attempt | undefined;
  for (const attempt of playing(level, player, run)) last = attempt;
  return last as Attempt;
};

/** The run as it stands before its first act and after each. */
export function* playing(
  level: Level,
  player: Player,
  { seed, mode = 'check-off' }: Run,
): Generator<Attempt, void> {
  let attempt = opened(level, seed, mode);
  yield attempt;
  for (let acts = 0; acts < enough; acts++) {
    const act = player(attempt);
    if (!act) return;
    attempt = take(attempt, act);
    yield attempt;
  }
}
