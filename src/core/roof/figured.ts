import type { Side, Wall } from './side';

/** The figured roof: what `tt figure` prints. Lengths in inches, angles as rise and run; degrees are made where they are shown. */
export type FiguredRoof = {
  readonly commonRafters: readonly CommonRafter[];
  readonly ridges: readonly FiguredRidge[];
  readonly layout: Layout;
  readonly blocks: readonly FiguredBlock[];
  readonly ties: readonly FiguredTie[];
  /** Absent where the roof has none. */
  readonly ledgers?: readonly FiguredLedger[];
  readonly posts?: readonly FiguredPosts[];
  readonly gableStuds?: readonly FiguredStuds[];
  readonly hips?: readonly FiguredHip[];
  readonly valleys?: readonly FiguredHip[];
  readonly jacks?: readonly FiguredJacks[];
  /** Of a gambrel: where its two slopes meet, and what holds them there. */
  readonly breaks?: readonly FiguredBreak[];
  readonly purlins?: readonly FiguredPurlin[];
  readonly gussets?: readonly FiguredGussets[];
  /** Rafters that the layout puts where more than two members come together: no entry here has their cuts. */
  readonly cutInPlace?: readonly CutInPlace[];
  readonly cautions: readonly Caution[];
};

export type CutInPlace = {
  readonly side: Wall;
  readonly part?: string;
  /** Its station, and its theoretical level run. */
  readonly at: number;
  readonly run: number;
};

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

/** A hip, or a valley: that bears on the inner corner of the plates. */
export type FiguredHip = Slanting & {
  /** Of a hip the walls it stands over, of a valley the eaves of the wing it starts at. */
  readonly side: Walls;
  /** Of each side, looking up: left, right; `tt` prints them as backingAngleDeg. */
  readonly backing: readonly [Turn, Turn];
  /** Plumb: how much lower a hip with a square top sits; how far the corners of a valley are under the planes. */
  readonly drop: number;
};

/** Jacks that differ in length alone; the single figures are the longest one's. */
export type FiguredJacks = Slanting & {
  readonly side: Walls;
  /** Between which two they stand: plate, hip, valley, or ridge. */
  readonly kind: 'hipJack' | 'valleyJack' | 'hipValleyCripple' | 'valleyCripple' | 'plateToValley';
  /** Of one looking up the hip or the valley: which side of it they are on. */
  readonly hipSide?: 'left' | 'right';
  readonly valleySide?: 'left' | 'right';
  /** From one to the next, along the slope. */
  readonly difference: number;
  /** Shortest first. */
  readonly lineLengths: readonly number[];
  readonly lengths: readonly number[];
};

export type CommonRafter = {
  readonly id: string;
  readonly count: number;
  readonly side: Walls;
  readonly run: number;
  readonly rise: number;
  readonly lineLength: number;
  readonly shortening: number;
  readonly bodyLength: number;
  readonly tailLength: number;
  readonly edgeLength: number;
  readonly stockLength: number;
  readonly plumbCutLength: number;
  readonly seat: number;
  readonly heelCut: number;
  /** Of the upper ones of a gambrel: over their purlin, or over their underside plumb at a miter, which has no seat. */
  readonly heightAbovePlate: number;
  readonly notchDepth: number;
  readonly maxSeat: number;
};

export type FiguredRidge = {
  readonly id: string;
  readonly count: number;
  readonly side: 'both';
  readonly lineLength: number;
  readonly length: number;
  readonly topHeight: number;
  readonly leastDepth: number;
  readonly bearsFully: boolean;
  /** With unequal slopes: whose rafters stand over the ridge's top if they are not beveled to it, and by how much. */
  readonly proud?: { readonly side: Side; readonly by: number };
};

/** The line where the top edges of both slopes meet, from gable to gable. */
export type FiguredBreak = {
  readonly id: string;
  readonly count: number;
  readonly side: Walls;
  readonly length: number;
  /** Level, from the reference face in; and plumb, from the plate to the top edges. */
  readonly run: number;
  readonly height: number;
  /** Along the plumb line over the purlin's outer face, or along the line that halves the angle of the two slopes. */
  readonly joint: 'plumb' | 'miter';
  /** Of the faces that both rafters share. */
  readonly jointLength: number;
  /** Both off square; `tt` prints them as lowerCutDeg and upperCutDeg. */
  readonly lowerCut: Turn;
  readonly upperCut: Turn;
};

/** Under the upper rafters, its outer face under the break; the lower ones are cut against that face. */
export type FiguredPurlin = {
  readonly id: string;
  readonly count: number;
  readonly side: Walls;
  readonly length: number;
  readonly topHeight: number;
  readonly leastDepth: number;
  readonly bearsFully: boolean;
};

/** Plywood over a mitered joint: two legs as deep as the rafters, each so long along the top edge. */
export type FiguredGussets = {
  readonly id: string;
  readonly count: number;
  readonly side: Walls;
  readonly thickness: number;
  readonly reach: number;
  /** Of the piece it is cut from, square to the miter and along it. */
  readonly length: number;
  readonly width: number;
  /** Of each leg off the piece's length; `tt` prints it as bendDeg. */
  readonly bend: Turn;
};

/** On a wall: its top flush with the rafters' where they meet its face. */
export type FiguredLedger = {
  readonly id: string;
  readonly count: number;
  readonly side: Walls;
  readonly length: number;
  readonly topHeight: number;
  readonly leastDepth: number;
  readonly bearsFully: boolean;
};

/** In both gables, to their long points, shortest first. */
export type FiguredStuds = {
  readonly id: string;
  /** In both gables together. */
  readonly count: number;
  readonly side: Walls;
  readonly spacing: number;
  /** From one to the next. */
  readonly difference: number;
  /** Of the top, off square; `tt` prints it as bevelDeg. */
  readonly bevel: Turn;
  readonly lengths: readonly number[];
};

/** Under a ridge that carries: from what they stand on to its underside. */
export type FiguredPosts = {
  readonly id: string;
  readonly count: number;
  readonly side: 'both';
  readonly length: number;
  readonly at: readonly number[];
};

export type Layout = {
  readonly spacing: number;
  readonly datum: string;
  readonly stations: readonly number[];
  /** Eaves that are laid out otherwise; absent where none is. */
  readonly eaves?: readonly {
    readonly side: Walls;
    /** Of which part of the roof, where it is not the main one. */
    readonly part?: string;
    readonly stations: readonly number[];
  }[];
};

export type FiguredBlock = {
  readonly id: string;
  readonly count: number;
  readonly side: Walls;
  /** Of a gambrel: on the plates, or on the purlins. */
  readonly part?: 'lower' | 'upper';
  readonly length: number;
  /** Of its outer face, from the plate to the roof plane. */
  readonly height: number;
  /** Tilt of its top edge off square, as rise and run; `tt` prints it as bevelDeg. */
  readonly bevel: { readonly rise: number; readonly run: number };
  /** Free area in square inches, where the plan asks for vents and the block is long enough. */
  readonly vent?: { readonly area: number; readonly shape: 'notch' | 'holes' };
};

export type FiguredTie = {
  readonly id: string;
  readonly count: number;
  readonly side: 'both';
  readonly kind: 'joist' | 'rafterTie' | 'collar' | 'breakTie';
  readonly height: number;
  readonly length: number;
  /** What is cut off each upper corner, plumb at the plate's outer face, of a tie as deep as the rafters. */
  readonly clip: number;
};

export type Caution = { readonly code: string; readonly at: string; readonly text: string };
