import { spread, uniform } from '../level/draw';
import { asksForTails } from '../level/method';
import type { BoardId, RafterId } from './ids';
import { leavesTailsLong } from './required';
import type { Standing } from './standing';
import type { SiteState } from './state';

/** Rafter tails: cut to the pattern on the ground, or left long, snapped to one line when the row stands, and cut there. */

/** How far off its figure a tail comes out that is cut on the ground with the pattern, inches. Ours. */
const patternStray = 1 / 8;
/** How much too long a tail is that was left long, inches: from this much to that. Ours. */
const [leastLong, mostLong] = [1, 3];

/** Level reach of a board's tail past the overhang of the plan as it was delivered, inches. */
const tailLeft = ({ level, site, seed }: Standing, board: BoardId): number =>
  leavesTailsLong(level, site.agreed)
    ? leastLong + (mostLong - leastLong) * uniform(seed, board, 'tailLong')
    : asksForTails(level.methods)
      ? spread({ seed, place: board, purpose: 'tailCut' }, patternStray)
      : 0;

/** Level reach of a board's tail past the overhang of the plan, cuts included, inches. */
export const tailPast = (standing: Standing, board: BoardId): number =>
  tailLeft(standing, board) - (standing.site.trims[board]?.tail ?? 0);

export const tailCut = (site: SiteState, rafter: RafterId): boolean => {
  const board = site.members[rafter]?.board;
  return board !== undefined && site.trims[board]?.tail !== undefined;
};
