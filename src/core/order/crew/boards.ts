import type { BoardId } from '../../site/ids';
import type { View } from './view';

/** The board to take next: one found sound or put right; where nobody looked, the top of the pile; a refused one last. */
export const boardFor = ({ seen, said }: View): BoardId | undefined => {
  const rank = (board: BoardId): number => {
    const call = seen.site.judged[board]?.call;
    if (call === 'sound' || (call === 'mend' && seen.site.trims[board] !== undefined)) return 0;
    return call === undefined && said('eye', board)?.value !== 'split' ? 1 : 2;
  };
  return [...seen.boards.free].sort((a, b) => rank(a) - rank(b))[0];
};
