import { faultRow } from '../../faults/rows';
import { boardTruth } from '../../level/boardTruth';
import { squareBias } from '../../level/toolTruth';
import { cutRafter } from '../hung';
import type { BoardId } from '../ids';
import { openItems } from '../punch';
import type { Standing } from '../standing';
import { firstOf, plain, type Row } from './reach';
import { plateBowed, ridgeBowed } from './string';
import { tailStray, tools } from '../../instruments/rows';
import { spread } from '../../level/draw';
import type { Side } from '../../roof/side';

/** What an eye, the pattern and the square tell of boards, and an eye of the whole. */

/**
 * The pattern lies on the top edge, its notch in the board's or its tail flush with a tail that nobody cut: it shows the
 * plumb cut beyond (+) or short of (−) itself.
 */
const patterned = (standing: Standing, board: string): number =>
  boardTruth(standing, board).long - (standing.site.trims[board]?.plumb ?? 0);

/** The square stands on the top edge: light at the bottom of the plumb cut (+) or at its top (−), its own error with it. */
const squared = (standing: Standing, board: string, turned: boolean): number => {
  const cut = cutRafter(standing, board as BoardId);
  return cut.open + ((turned ? -1 : 1) * squareBias(standing) * cut.plumb) / 12;
};

const looked = (standing: Standing, board: string): string => {
  const fault = board === 'board.ridge' ? undefined : boardTruth(standing, board).fault;
  return (fault && faultRow(fault)?.looks) ?? 'clean';
};

/** An eye along a line tells quarters. */
const sighted = (off: number | undefined): number | undefined =>
  off === undefined ? undefined : Math.round(off / tools.eye.division) * tools.eye.division + 0;

export const eyeShows = firstOf([
  plain(/^punch$/, (s) => openItems(s).length),
  plain(/^(board\.(?:\d+|ridge))$/, (s, [board]) => looked(s, board as string)),
  plain(/^ridge\.straight$/, (s) => sighted(ridgeBowed(s))),
  plain(/^plate\.(street|yard)\.mid$/, (s, [which]) => sighted(plateBowed(s, which as Side))),
]);

const pattern: Row = [
  /^(board\.\d+)$/,
  (s, [board], from) => {
    if (from !== undefined && from !== 'tail') return undefined;
    const past =
      from === 'tail' ? spread({ seed: s.seed, place: board as string, purpose: 'tail' }, tailStray) : 0;
    return patterned(s, board as string) + past;
  },
];
export const patternShows = firstOf([pattern]);

const square: Row = [
  /^(board\.\d+)$/,
  (s, [board], from) =>
    from === undefined || from === 'turned' ? squared(s, board as string, from === 'turned') : undefined,
];
export const squareShows = firstOf([square]);
