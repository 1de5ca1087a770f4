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
  readonly highPlates?: readonly FiguredHighPlate[];
  readonly standing?: FiguredStanding;
  readonly posts?: readonly FiguredPosts[];
  readonly gableStuds?: readonly FiguredStuds[];
  readonly hips?: readonly FiguredHip[];
  readonly valleys?: readonly FiguredHip[];
  readonly jacks?: readonly FiguredJacks[];
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
  readonly heightAbovePlate: number;
  readonly notchDepth: number;
  readonly maxSeat: number;
  /** Of one that bears on a second, higher plate. */
  readonly high?: HighEnd;
};

/** The upper birdsmouth of a rafter that bears on a high plate: its heel cut at the plate's inner face, where `run` ends. */
export type HighEnd = {
  readonly seat: number;
  readonly heelCut: number;
  /** Plumb, high plate to top edge, at the plate's inner face. */
  readonly heightAbovePlate: number;
  readonly notchDepth: number;
  /** Upper heel plumb line to the plumb cut of the upper end, along the slope. */
  readonly tailLength: number;
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

/** The top plate of the higher wall: how high it has to stand for the slope and the seats to come out. */
export type FiguredHighPlate = {
  readonly id: string;
  readonly count: number;
  readonly side: Walls;
  readonly length: number;
  /** Its top, above the top of the low plate. */
  readonly height: number;
};

/** What there is to know where a new roof planes in with one that stands. */
export type FiguredStanding = {
  readonly end: 'A' | 'B';
  /** That the new rafters are figured to; `tt` prints it as slopeDeg. */
  readonly slope: Turn;
  /** How much more (+) or less (−) what stands rises than its nominal slope, from the plate to the ridge's face. */
  readonly riseOffNominal: number;
  /** Level: what a plumb cut for the nominal slope would leave open at one end. */
  readonly nominalGap: number;
  /** Centre of the standing roof's last rafter, from end A as the stations are. */
  readonly lastRafter: number;
  /** Clear, between it and the first new rafter, if it is as thick as that. */
  readonly firstBay: number;
  /** Plumb: how much lower (+) or higher (−) the new undersides are. */
  readonly underside: number;
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
  readonly kind: 'joist' | 'rafterTie' | 'collar';
  readonly height: number;
  readonly length: number;
  /** What is cut off each upper corner, plumb at the plate's outer face, of a tie as deep as the rafters. */
  readonly clip: number;
};

export type Caution = { readonly code: string; readonly at: string; readonly text: string };
