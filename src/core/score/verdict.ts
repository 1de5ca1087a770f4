import type { Mode } from '../level/mode';
import type { Score } from './score';
import { passLine } from './scored';

/** What a run is told it came to. `borderline`: too near the bar for one run to tell. */
export type Verdict = 'practice' | 'pass' | 'notYet' | 'borderline';

/**
 * `error`: standard error of one run on the level, points, from simulated hands; undefined where it is not known. A danger
 * or a fall is no matter of points, and leaves no doubt.
 */
export const verdictOn = (score: Score, mode: Mode, error: number | undefined): Verdict => {
  if (mode !== 'check-off') return 'practice';
  const near = error !== undefined && Math.abs(score.total - passLine.total) <= error;
  if (near && score.cap === undefined) return 'borderline';
  return score.pass ? 'pass' : 'notYet';
};
