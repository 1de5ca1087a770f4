import { uniform } from '../level/draw';

/**
 * A hand's own chance, apart from the site's: a throw for every time it is asked, or a throw that belongs to a name and
 * falls the same whenever it is asked for.
 */
export type Dice = {
  readonly below: (count: number) => number;
  readonly chance: (share: number) => boolean;
  readonly keyed: (key: string) => number;
};

/** Dice for a hand on a seed. The site's draws are keyed by places; these by the hand's name, so they share nothing. */
export const diceOf = (seed: number, name: string): Dice => {
  let thrown = 0;
  const next = (): number => uniform(seed, `hand.${name}`, `throw.${thrown++}`);
  return {
    below: (count) => Math.floor(next() * count),
    chance: (share) => next() < share,
    keyed: (key) => uniform(seed, `hand.${name}`, key),
  };
};

/** One of a list, each as likely. */
export const oneOf = <T>(dice: Dice, list: readonly T[]): T | undefined => list[dice.below(list.length)];

/** A list in any order. */
export const shuffled = <T>(dice: Dice, list: readonly T[]): readonly T[] => {
  const mixed = [...list];
  for (let i = mixed.length - 1; i > 0; i--) {
    const j = dice.below(i + 1);
    const [a, b] = [mixed[i] as T, mixed[j] as T];
    mixed[i] = b;
    mixed[j] = a;
  }
  return mixed;
};
