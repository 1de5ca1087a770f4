import type { BoardId } from '../../site/ids';
import type { View } from './view';

/** The board to take next: one found sound or put right; where nobody looked, the top of the pile; a refused one last. */
export const boardFor = (view: View): BoardId | undefined =>
  [...view.seen.boards.free].sort((a, b) => boardRank(view, a) - boardRank(view, b))[0];

/** 0 for a board found sound or put right, 1 where nobody called it anything, 2 for a refused one. */
export const boardRank = ({ seen, said }: View, board: BoardId): number => {
  const call = seen.site.judged[board]?.call;
  if (call === 'sound' || (call === 'mend' && seen.site.trims[board] !== undefined)) return 0;
  return call === undefined && said('eye', board)?.value !== 'split' ? 1 : 2;
};
