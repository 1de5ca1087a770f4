import { isOver } from '../units/hair';
import type { Source } from './source';

/**
 * Statics of two rafters pinned at a ridge board. An article on rafter ties gives four forces that come out of this; the copy
 * we read shows one, 1,440 lb. How many nails hold it stands in IRC table R802.5.2, which we know from memory only: its
 * numbers are left out on purpose, for the plans give them.
 */
export const thrustSource: Source = {
  document: 'statics of a tied pair',
  section: 'as an article on rafter ties gives it',
  sure: 'read',
};

/** Pounds pulling outward at each heel: w·L²/8h. `load` in pounds a foot of span for one pair, `span` and `rise` in feet. */
export const thrustAtHeel = (load: number, span: number, rise: number): number =>
  (load * span * span) / (8 * rise);

/**
 * How much more a tie pulls, and so how many more nails it needs, when it sits over the plate by a share of the ridge's
 * height: 1/(1 − share). Undefined at the ridge, over it, and under the plate.
 */
export const raisedTiePull = (share: number): number | undefined =>
  share >= 0 && isOver(1, share) ? 1 / (1 - share) : undefined;
