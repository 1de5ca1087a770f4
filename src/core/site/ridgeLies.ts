import { ridgeTruth } from '../level/asFound';
import type { Standing } from './standing';

/** How the ridge lies by itself between its ends, and under a hand at its middle. */

/** Above (+) and to the yard (+) of the straight line of its ends, at this share of its length from A; inches. */
export const ownLie = (standing: Standing, share: number): { readonly up: number; readonly over: number } => {
  const { bow, crown } = ridgeTruth(standing);
  const own = 4 * share * (1 - share);
  const pushed = standing.site.ridge?.pushed ?? bow;
  return { up: crown * own, over: bow * own + (pushed - bow) * bent(Math.min(share, 1 - share)) };
};

/** Shape of a beam on two supports with a load at its middle, 1 there: 3s − 4s³ up to the middle. */
const bent = (share: number): number => 3 * share - 4 * share * share * share;
