import { levelLength } from '../core/instruments/rows';

/** How far a bubble runs for a rise of an eighth in four feet, a share of the bubble's length. Ours, by eye. */
const runPerEighth = 0.42;

/** How far the bubble of a level so many inches long stands off its lines, a share of the bubble's length, toward the high end. */
export const bubbleOff = (shown: number, long: number): number =>
  (shown / 0.125) * (levelLength / long) * runPerEighth;
