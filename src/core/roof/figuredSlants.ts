import type { Section } from './plan';
import type { Wall } from './side';

/** Hips, valleys and jacks as the figured roof tells them, and the words it tells walls and angles in. Lengths in inches. */

/** Walls that have the same: both long ones, both ends, all four, or one; of a wing both of its own. */
export type Walls = 'both' | 'ends' | 'all' | Wall;

/** An angle as rise over run. */
export type Turn = { readonly rise: number; readonly run: number };

/** A cut that meets another member aslant. */
export type Cheek = {
  readonly end: 'top' | 'bottom';
  /** Of one looking up the member. */
  readonly side: 'left' | 'right';
  /** On the top edge, between the cut and the length; `tt` prints it as cheekAngleDeg. */
  readonly cheekAngle: Turn;
  /** Tilt of the saw off square where it follows the plumb line; `tt` prints it as sawBevelDeg. */
  readonly sawBevel: Turn;
};

/** What hips, valleys and jacks have in common. Lengths along the middle of the top edge. */
type Slanting = {
  readonly id: string;
  readonly count: number;
  /** Level and theoretical, along its own run. */
  readonly run: number;
  readonly lineLength: number;
  readonly bodyLength: number;
  readonly tailLength: number;
  /** Middle of the top edge over the plate's corner or face, after any drop. */
  readonly heightAbovePlate: number;
  readonly seat: number;
  /** `tt` prints it as slopeDeg. */
  readonly slope: Turn;
  readonly cheeks: readonly Cheek[];
  readonly shorteningTop: number;
  readonly shorteningBottom: number;
};

/** A hip, or a valley: that bears on the inner corner of the plates, or of a dormer against a trimmer, where it has no seat. */
export type FiguredHip = Slanting & {
  /** Of a hip the walls it stands over, of a valley the eaves of the wing it starts at. */
  readonly side: Walls;
  readonly section: Section;
  /** Of hips cut short by a small gable at one end only: whose end they are. */
  readonly end?: 'A' | 'B';
  /** Of each side, looking up: left, right; `tt` prints them as backingAngleDeg. */
  readonly backing: readonly [Turn, Turn];
  /** Plumb: how much lower a hip with a square top sits; how far the corners of a valley are under the planes. */
  readonly drop: number;
};

export type FiguredSleeper = {
  readonly id: string;
  readonly count: number;
  readonly side: Walls;
  readonly section: Section;
  /** Level, of the line that the jacks' top edges come down to. */
  readonly run: number;
  /** Along that line, on the slope. */
  readonly lineLength: number;
  /** Seen from above, between that line and the main ridge; `tt` prints it as planAngleDeg. */
  readonly planAngle: Turn;
  /** How far in from the main reference face its upper end is, level. */
  readonly intrusion: number;
};

/** Jacks that differ in length alone; the single figures are the longest one's. */
export type FiguredJacks = Slanting & {
  readonly side: Walls;
  /** Between which two they stand: plate, hip, valley, ridge, or the header of a dormer. */
  readonly kind:
    | 'hipJack'
    | 'valleyJack'
    | 'valleyToHeader'
    | 'blindJack'
    | 'hipValleyCripple'
    | 'valleyCripple'
    | 'plateToValley';
  /** Of one looking up the hip or the valley: which side of it they are on. */
  readonly hipSide?: 'left' | 'right';
  readonly valleySide?: 'left' | 'right';
  /** Of one that stands on a sleeper: its cut is level, with the saw tilted off square; `tt` prints both in degrees. */
  readonly foot?: { readonly level: Turn; readonly sawTilt: Turn };
  /** From one to the next, along the slope. */
  readonly difference: number;
  /** Shortest first. */
  readonly lineLengths: readonly number[];
  readonly lengths: readonly number[];
  /** How many there are of each length. */
  readonly counts: readonly number[];
};
