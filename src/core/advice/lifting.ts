import { loadConstant } from '../stock/lift';
import { poundsAnInch } from '../stock/lumber';
import { woodOf } from '../stock/wood';
import type { Source } from './source';

export const liftSource: Source = {
  document: 'NIOSH',
  section: 'revised lifting equation',
  sure: 'read',
};

/** Inches: how far out the hands are, how high they start, how far up or down they go. */
export type Lift = {
  readonly reach: number;
  readonly height: number;
  readonly travel: number;
  /** The part for turning, lifting often and poor grip, 1 at best: its tables are not read, so the caller brings it. */
  readonly rest?: number;
};

/**
 * Recommended weight limit, pounds: 51 · 10/H · (1 − 0.0075·|V − 30|) · (0.82 + 1.8/D), each part 1 at the most, times `rest`.
 * Constant and these three parts are read; without `rest` it is the limit for a straight, seldom lift with a good grip.
 */
export const weightLimit = ({ reach, height, travel, rest = 1 }: Lift): number => {
  const out = Math.min(1, 10 / reach);
  const up = Math.max(0, 1 - 0.0075 * Math.abs(height - 30));
  const far = Math.min(1, 0.82 + 1.8 / travel);
  return loadConstant * out * up * far * rest;
};

/** A straight stick. Inches; `density` in pounds a cubic foot, else what its thickness is made of. */
export type Board = {
  readonly thickness: number;
  readonly depth: number;
  readonly length: number;
  readonly density?: number;
};

/** Its weight, pounds. Density: see `core/stock/wood.ts`; of a species it is the caller's, for those tables are not read. */
export const boardPounds = (board: Board): number => {
  const wood = woodOf(board);
  return poundsAnInch(board, { ...wood, weight: board.density ?? wood.weight }) * board.length;
};

/** How many people it takes so that none has more than a limit, in the best of places unless said. Pounds. */
export const peopleFor = (pounds: number, limit: number = loadConstant): number =>
  Math.max(1, Math.ceil(pounds / limit));
