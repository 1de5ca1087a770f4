import type { Vec3 } from '../geometry/vector';

/**
 * A piece of wood in its place, as whoever cuts it sees it: its side drawn flat, as thick as it is, and the slanting
 * cuts that take more away. Inches, axes of the roof.
 */
export type Timber = {
  readonly id: string;
  /** Plan point that `along` is counted from, and the level unit direction it grows in. */
  readonly origin: readonly [x: number, y: number];
  readonly direction: readonly [x: number, y: number];
  /** The side's corners, counter-clockwise seen from the right of its direction: along, up. */
  readonly outline: readonly (readonly [along: number, z: number])[];
  /** Square to the side, half to each hand of the line. */
  readonly thickness: number;
  /** Kept where normal · point <= reach. */
  readonly cuts: readonly { readonly normal: Vec3; readonly reach: number }[];
};
