import type { Dice } from './dice';

/**
 * What a hand can get right or wrong. `order`: what a rule wants first is done first. `check`: a reading is taken. `read`: it
 * is said as shown. `judge`: what was seen is called rightly. `fit`: a piece is set, cut or moved true. `danger`: heeded.
 */
export type Sort = 'order' | 'check' | 'read' | 'judge' | 'fit' | 'danger';
export const sorts: readonly Sort[] = ['order', 'check', 'read', 'judge', 'fit', 'danger'];

/** The chance of the right decision, 0 to 1, by sort. */
export type Skill = Readonly<Record<Sort, number>>;

export const evenSkill = (chance: number): Skill => ({
  order: chance,
  check: chance,
  read: chance,
  judge: chance,
  fit: chance,
  danger: chance,
});

/** Decides by chance, each decision by a throw of its own name: one that falls otherwise moves no other. */
export type Decider = {
  readonly right: (sort: Sort, what: string) => boolean;
  /** An even chance in [0, 1) for how, where a decision is wrong or there are equals. */
  readonly how: (what: string) => number;
  /** Every decision that came up so far, by name, and how it fell. */
  readonly made: ReadonlyMap<string, boolean>;
};

/** `righted`: the name of one decision that is right whatever the dice say. */
export const deciderOf = (dice: Dice, skill: Skill, righted?: string): Decider => {
  const made = new Map<string, boolean>();
  return {
    right: (sort, what) => {
      const name = `${sort} ${what}`;
      const fell = name === righted || dice.keyed(name) < skill[sort];
      made.set(name, fell);
      return fell;
    },
    how: (what) => dice.keyed(`how ${what}`),
    made,
  };
};

/** A whole number from least to most, each as likely. */
export const between = (chance: number, [least, most]: readonly [number, number]): number =>
  least + Math.floor(chance * (most - least + 1));
