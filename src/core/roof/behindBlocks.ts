import type { FiguredTie } from './figured';
import { bearsAt, platesOf, type Frame } from './form';
import type { RoofPlan } from './plan';
import { isOver } from '../units/hair';
import { planeOverPlate, type RoofPlane } from './planes';

/**
 * Blocks fill their bays, for they hold the rafters apart: a tie that lies in a bay stops behind the blocks of its two walls.
 * Common practice, no source.
 */

type Fitted = Pick<FiguredTie, 'height' | 'length' | 'clip'>;

/** Ends of a tie, each from the ridge's centre line to its long point, in the order of the planes. Inches. */
export type Reaches = readonly (readonly [plane: RoofPlane, reach: number])[];

/** As cut to clear the blocks by the allowance that these have; absent where the tie passes over them, or has no room between. */
export const behindBlocks = (
  plan: RoofPlan,
  tie: Fitted,
  { reaches, frame }: { readonly reaches: Reaches; readonly frame: Frame },
): Pick<FiguredTie, 'behindBlocks'> => {
  const ends = reaches.map(([plane, reach]) => {
    const low = tie.height + platesOf(frame) - bearsAt(plane.eave);
    const behind = faceOf(plane) - blockReaches(plan, plane, low);
    return { plane, low, reach: isInWay(plan, plane, low) ? Math.min(reach, behind) : reach, full: reach };
  });
  const length = ends.reduce((sum, { reach }) => sum + reach, 0);
  if (length <= 0 || ends.every(({ reach, full }) => reach === full)) return {};
  const clips = ends.flatMap(({ plane, low, reach }) => {
    const under = planeOverPlate(plane) + (faceOf(plane) - reach) * plane.eave.m;
    return isOver(under, low) ? [low + plan.rafter.depth - under] : [];
  });
  return {
    behindBlocks: { length, clip: Math.max(0, ...clips) },
  };
};

/** Level, from the ridge's centre line to the outside of the plate. Inches. */
const faceOf = ({ eave }: RoofPlane): number => eave.run - eave.clad + (eave.beyond ?? 0);

/** How far in from the plate's outside a block is in the way of what begins `low` over that plate. Inches. */
const blockReaches = (
  { blockStands, rafter, blockAllowance }: RoofPlan,
  { eave }: RoofPlane,
  low: number,
): number => {
  const { thickness } = rafter;
  if (blockStands === 'plumb') return thickness + blockAllowance;
  const g = Math.sqrt(1 + eave.m * eave.m);
  const foot = (thickness * eave.m) / g;
  return Math.max(0, thickness / g - Math.max(0, low - foot) * eave.m + blockAllowance);
};

/** Some of it is lower than the inner top edge of the block, and some higher than what that stands on. */
const isInWay = ({ blockStands, rafter }: RoofPlan, plane: RoofPlane, low: number): boolean => {
  const { thickness, depth } = rafter;
  const { m, stands } = plane.eave;
  if (stands && stands.purlin === undefined) return false;
  const outer = planeOverPlate(plane);
  const g2 = 1 + m * m;
  const top = blockStands === 'plumb' ? outer + thickness * m : outer / g2 + (thickness * m) / Math.sqrt(g2);
  return low < top && low + depth > 0;
};
