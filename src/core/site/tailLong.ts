import { spread, uniform } from '../level/draw';
import { stationsOf } from '../level/layout';
import type { Level } from '../level/level';
import { beyond } from '../level/stages';
import { sides } from '../roof/side';
import { rafterId, type BoardId, type RafterId } from './ids';
import { methodsOf, type Agreed } from './required';
import type { Standing } from './standing';
import type { SiteState } from './state';

/** Rafter tails: cut to the pattern on the ground, or left long, snapped to one line when the row stands, and cut there. */

/** Whether a level has the choice at all: where it has not, tails are as figured and nobody looks at them. */
export const asksForTails = ({ methods }: Level): boolean => methods.tails.includes('snapped');

export const leavesTailsLong = (level: Level, agreed: Agreed): boolean =>
  methodsOf(level, agreed).tails === 'snapped';

/** How far off its figure a tail comes out that is cut on the ground with the pattern, inches. Ours. */
const patternStray = 1 / 8;
/** How much too long a tail is that was left long, inches: from this much to that. Ours. */
const [leastLong, mostLong] = [1, 3];
/** Level reach of a board's tail past the overhang of the plan as it was delivered, inches. */
const tailLeft = ({ level, site, seed }: Standing, board: BoardId): number =>
  leavesTailsLong(level, site.agreed)
    ? leastLong + (mostLong - leastLong) * uniform(seed, board, 'tailLong')
    : asksForTails(level)
      ? spread({ seed, place: board, purpose: 'tailCut' }, patternStray)
      : 0;

/** Level reach of a board's tail past the overhang of the plan, cuts included, inches. */
export const tailPast = (standing: Standing, board: BoardId): number =>
  tailLeft(standing, board) - (standing.site.trims[board]?.tail ?? 0);

export const tailCut = (site: SiteState, rafter: RafterId): boolean => {
  const board = site.members[rafter]?.board;
  return board !== undefined && site.trims[board]?.tail !== undefined;
};

/** Rafters whose tails have yet to be cut where the level ends; none where they came cut or others cut them later. */
export const tailsLeft = (level: Level, site: SiteState): readonly RafterId[] =>
  tailsWanted(level, site).filter((id) => !tailCut(site, id));

export const tailsWanted = (level: Level, { agreed }: Pick<SiteState, 'agreed'>): readonly RafterId[] =>
  leavesTailsLong(level, agreed) && !(level.stages && beyond(level.stages, 'close'))
    ? sides.flatMap((side) => stationsOf(level).map((_, i) => rafterId(side, i + 1)))
    : [];
