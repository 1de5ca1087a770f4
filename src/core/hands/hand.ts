import type { Action } from '../site/action';
import type { Attempt } from '../site/attempt';
import type { CharacterName, RungName } from './characters';
import type { Methods } from '../level/method';
import type { Dice } from './dice';

/** A simulated learner: given what it can see, its next act, or nothing when it is done. It never sees the truth. */
export type Hand = {
  readonly name: HandName;
  /** Starts one run: a player with its own memory and dice. */
  readonly player: (dice: Dice, wanted?: Partial<Methods>) => Player;
};

export type Player = (attempt: Attempt) => Action | undefined;

/** The expert with one thing left out is no learner: levels are proved with them, and their consequences shown. */
export type HandName =
  'expert' | 'reads-nothing' | 'nails-first' | CharacterName | RungName | 'random' | 'idle';
