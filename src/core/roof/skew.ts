import type { Vec2 } from '../geometry/vector';
import type { Cheek, Turn } from './figuredSlants';
import { dot2 } from './surface';

/** Two upright members that meet aslant in plan: how that shows in their lengths and cuts. */

/** Cosine and sine of the angle in plan between two level unit directions, the acute one. */
export type Skew = { readonly cos: number; readonly sin: number };

export const skewOf = (a: Vec2, b: Vec2): Skew => {
  const cross = a[0] * b[1] - a[1] * b[0];
  return { cos: Math.abs(dot2(a, b)), sin: Math.abs(cross) };
};

/** Level, along one member, from the centre line of another to its face. Inches. */
export const halfAcross = (thickness: number, { sin }: Skew): number => thickness / 2 / sin;

/** The cheek of a member that climbs `m` against another: on its top edge, and off square where the saw follows the plumb line. */
export const cheekOf = (
  { end, side }: Pick<Cheek, 'end' | 'side'>,
  { cos, sin }: Skew,
  m: number,
): Cheek => ({
  end,
  side,
  cheekAngle: { rise: sin, run: cos * Math.sqrt(1 + m * m) },
  sawBevel: { rise: cos, run: sin },
});

export const square: Turn = { rise: 0, run: 1 };
