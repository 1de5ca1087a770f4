import type { FaultId } from '../faults/fault';
import { spread, uniform } from './draw';
import type { Planted } from './level';
import { drawnOnce } from './drawnOnce';
import { plantedAt } from './planted';

/** A cut rafter as it lies on the pile. The learner never sees it; eyes and tools do. Inches. */
export type BoardTruth = {
  /** Body length over (+) or under what was figured, along the slope, when it was cut. */
  readonly long: number;
  /** How far the plumb cut would stand open at the bottom (+) or at the top (−) against a plumb face, as it was cut. */
  readonly open: number;
  /** Middle of the top edge above (+) or below the line of its ends. */
  readonly crown: number;
  /** How far its lower edge stands off sideways at its upper end when its heel is plumb. */
  readonly twist: number;
  /** Deeper (+) or shallower than its size when it was cut; its birdsmouth is as deep as figured. */
  readonly depth: number;
  /** Share of its depth it has lost to drying since it was cut. */
  readonly dried: number;
  /** The bundle it came from: 1 is the pile's own, 2 another. */
  readonly batch: 1 | 2;
  readonly fault: FaultId | undefined;
};

export const boardTruth = drawnOnce((drawn, board): BoardTruth => {
  const { level, seed } = drawn;
  const { ranges, dried } = level.asFound;
  const planted = plantedAt(drawn, board);
  const sound: BoardTruth = {
    long: spread({ seed, place: board, purpose: 'long' }, ranges.bodyLength),
    open: spread({ seed, place: board, purpose: 'open' }, ranges.cutOpen),
    crown: uniform(seed, board, 'crown') * ranges.crown,
    twist: spread({ seed, place: board, purpose: 'twist' }, ranges.twist),
    depth: spread({ seed, place: board, purpose: 'depth' }, ranges.boardDepth),
    dried,
    batch: 1,
    fault: planted?.fault,
  };
  return planted ? spoiled(sound, planted) : sound;
});

const spoiled = (board: BoardTruth, { fault, by }: Planted): BoardTruth => {
  if (fault === 'plumbCutLong') return { ...board, long: by };
  if (fault === 'plumbCutShort') return { ...board, long: -by };
  if (fault === 'plumbCutSteep') return { ...board, open: by };
  if (fault === 'crownDown') return { ...board, crown: -by };
  if (fault === 'twisted') return { ...board, twist: by };
  if (fault === 'driedOut') return { ...board, dried: by, batch: 2 };
  return board;
};
