import type { Nailing } from '../../core/site/state';
import type { Point } from '../ink/pencil';
import type { Piece } from './board';
import type { SideNail } from './nails';

/** A joint laid out flat in inches: what is wood, where light comes through, where nails and the rule are. */
export type JointScene = {
  readonly pieces: readonly Piece[];
  /** Openings between faces, widest where the gap is read. */
  readonly light: readonly (readonly Point[])[];
  readonly sideNails: readonly SideNail[];
  readonly heads: readonly { readonly at: Point; readonly proud: boolean }[];
  /** The rule's zero at the gap, and the way its edge runs. */
  readonly rule: { readonly zero: Point; readonly way: 'right' | 'up' | 'down' };
  /** Pencil lines a carpenter left on the wood. */
  readonly marks: readonly (readonly [Point, Point])[];
  readonly spot: Point;
  /** What has to be in the picture: left, right, low, high. */
  readonly extent: readonly [number, number, number, number];
};

export type Nailed = Nailing | undefined;
