import type { HandName } from '../../core/hands/hand';
import type { Part } from '../../core/score/score';

/** One thing to be played for the proofs: a hand on a level and seed; or the same again with one decision put right. */
export type Job =
  | { readonly what: 'run'; readonly level: string; readonly hand: HandName; readonly seed: number }
  | {
      readonly what: 'flip';
      readonly level: string;
      readonly hand: 'competent' | 'beginner';
      readonly seed: number;
    };

/** What a run came to: the raw totals that statistics are made from. */
export type Ran = Extract<Job, { what: 'run' }> & {
  readonly total: number;
  readonly pass: boolean;
  readonly parts: Partial<Readonly<Record<Part, number>>>;
  readonly done: number;
  readonly stopped: boolean;
};

/** The total of a run, and what it comes to with one of its wrong decisions right; no trials where all were right. */
export type Flipped = Extract<Job, { what: 'flip' }> & {
  readonly before: number;
  readonly trials: readonly { readonly decision: string; readonly after: number }[];
};

export type Told = Ran | Flipped;

/** Jobs are told apart by this, in the kept file too. */
export const jobKey = ({ what, level, hand, seed }: Pick<Job, 'what' | 'level' | 'hand' | 'seed'>): string =>
  `${what} ${level} ${hand} ${seed}`;
