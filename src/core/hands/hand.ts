import type { Action } from '../site/action';
import type { Attempt } from '../site/attempt';
import type { Methods } from '../level/method';
import type { Dice } from './dice';

/** A simulated learner: given what it can see, its next act, or nothing when it is done. It never sees the truth. */
export type Hand = {
  readonly name: HandName;
  /** Starts one run: a player with its own memory and dice. */
  readonly player: (dice: Dice, wanted?: Partial<Methods>) => Player;
};

export type Player = (attempt: Attempt) => Action | undefined;

export type HandName = 'expert' | 'skips-checks' | 'naive-order' | 'random' | 'idle';
