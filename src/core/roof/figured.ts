import type { FiguredHip, FiguredJacks, FiguredSleeper, Turn, Walls } from './figuredSlants';
import type { Section } from './plan';
import type { FiguredStep, RidgeInRun } from './figuredSteps';
import type { FiguredLookouts, FiguredRake } from './figuredRake';
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
  readonly headers?: readonly FiguredHeader[];
  readonly highPlates?: readonly FiguredHighPlate[];
  readonly standing?: FiguredStanding;
  /** Where sections of a run meet, from end A. */
  readonly steps?: readonly FiguredStep[];
  readonly posts?: readonly FiguredPosts[];
  readonly gableStuds?: readonly FiguredStuds[];
  readonly rakeRafters?: readonly FiguredRake[];
  readonly lookouts?: readonly FiguredLookouts[];
  readonly hips?: readonly FiguredHip[];
  readonly valleys?: readonly FiguredHip[];
  readonly jacks?: readonly FiguredJacks[];
  /** On the sheathing of the main roof, under the jacks of a wing framed over it. */
  readonly sleepers?: readonly FiguredSleeper[];
  /** Of a gambrel: where its two slopes meet, and what holds them there. */
  readonly breaks?: readonly FiguredBreak[];
  readonly purlins?: readonly FiguredPurlin[];
  readonly gussets?: readonly FiguredGussets[];
  /** Rafters that the layout puts where more than two members come together: no entry here has their cuts. */
  readonly cutInPlace?: readonly CutInPlace[];
  readonly dormers?: readonly FiguredDormer[];
  readonly cautions: readonly Caution[];
};

export type CutInPlace = {
  readonly side: Wall;
  readonly part?: string;
  /** Its station, and its theoretical level run. */
  readonly at: number;
  readonly run: number;
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
  readonly section: Section;
  readonly lineLength: number;
  readonly length: number;
  readonly topHeight: number;
  readonly leastDepth: number;
  readonly bearsFully: boolean;
  /** Of one of several along one line. */
  readonly lies?: RidgeInRun;
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
  readonly section: Section;
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
  readonly section: Section;
  readonly length: number;
  readonly topHeight: number;
  readonly leastDepth: number;
  readonly bearsFully: boolean;
};

/** Across the outside of the commons at a small gable: its top flush with the end's rafters where they meet its face. */
export type FiguredHeader = FiguredLedger & {
  /** Plumb, what the long planes cut off its upper corners, past the middles of the hips. */
  readonly clip: number;
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
  /** Of one that carries the end of a ridge: as thick as that is, as deep as it bears along it. */
  readonly section?: Section;
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
  /** Of a gambrel, lower or upper: on the plates, or on the purlins. Of a run: its section. */
  readonly part?: string;
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
  /** The same two where blocks are in its way: as it is cut to lie in a bay that its block fills. */
  readonly behindBlocks?: { readonly length: number; readonly clip: number };
};

export type Caution = { readonly code: string; readonly at: string; readonly text: string };

/** What is cut for a dormer besides its own commons, which stand with the others. Lengths along the slope unless said. */
export type FiguredDormer = {
  readonly id: string;
  readonly count: 1;
  readonly side: Side;
  readonly kind: 'shed' | 'gable';
  /** What its rafters come to, or its ridge. */
  readonly meets: 'ridge' | 'header';
  readonly slope: Turn;
  /** Level, from its front to where its tops come to those of the main roof, and how high that is above the street's plate. */
  readonly run: number;
  readonly meetHeight: number;
  /** Plumb, from the tops of the main rafters to the top of its plate, at the outside of its front wall. */
  readonly frontHeight: number;
  /** Centers of the main rafters under its side walls, cut like the other commons of their side. */
  readonly trimmers: {
    readonly id: string;
    readonly count: number;
    readonly side: Side;
    readonly at: readonly number[];
  };
  readonly headers: readonly DormerHeader[];
  /** Main rafters it interrupts: from the main plate to the lower header, from the upper header to the ridge. */
  readonly lowerRafters: readonly CommonRafter[];
  readonly upperRafters: readonly UpperRafter[];
  /** Of a shed dormer: its first and last rafter, tapered to lie on the trimmers. */
  readonly endRafters: readonly TaperedRafter[];
  readonly sideStuds: readonly SideStuds[];
  /** Of a gable dormer with side walls. */
  readonly sidePlates?: readonly SidePlates[];
  /** Of one without: the pair at its gable. */
  readonly faceRafters?: readonly FaceRafter[];
};

/** Top plates of side walls: level, from the front to the feet of the valleys' lines; and to their own long points, cut to the main rafters. */
export type SidePlates = {
  readonly id: string;
  readonly count: number;
  readonly side: Walls;
  readonly lineLength: number;
  readonly length: number;
  /** Of the cut that lies on the main rafters, off level; `tt` prints it as bevelDeg. */
  readonly bevel: Turn;
};

/** From the tops of the main rafters, where its foot lies, plumb to the dormer's ridge. Lengths along the middle of the top edge. */
export type FaceRafter = {
  readonly id: string;
  readonly count: number;
  readonly side: Walls;
  readonly run: number;
  readonly lineLength: number;
  readonly bodyLength: number;
  readonly stockLength: number;
  readonly plumbCutLength: number;
  readonly shorteningTop: number;
  /** Level, with the saw tilted off square; `tt` prints both in degrees. */
  readonly foot: { readonly level: Turn; readonly sawTilt: Turn };
};

/**
 * Plumb, of two members, between the inner trimmers; its top is level and flush with the lowest tops that come to it. One that
 * the gable of a dormer stands on is beveled to the main roof, and its height and depth are those of its upper face.
 */
export type DormerHeader = {
  readonly id: string;
  /** Members. */
  readonly count: number;
  readonly side: Side;
  readonly length: number;
  /** Of one member. */
  readonly section: Section;
  /** Level, from the main reference face to its outer face; of both members. */
  readonly from: number;
  readonly thickness: number;
  readonly topHeight: number;
  readonly leastDepth: number;
  readonly bearsFully: boolean;
  /** Of its top, off square; `tt` prints it as bevelDeg. */
  readonly bevel?: Turn;
};

/** Plumb at both ends. Run is level and theoretical, from where the planes meet to the ridge's middle. */
export type UpperRafter = {
  readonly id: string;
  readonly count: number;
  readonly side: Side;
  readonly run: number;
  readonly lineLength: number;
  readonly bodyLength: number;
  readonly stockLength: number;
  readonly plumbCutLength: number;
  readonly shorteningTop: number;
  readonly shorteningBottom: number;
};

/** A rafter whose lower edge is cut to the top of the one below it. */
export type TaperedRafter = CommonRafter & {
  /** Level, from its reference face to where its lower edge comes to the trimmer. */
  readonly taperFrom: number;
  /** Along the cut, and between it and the rafter's own edge; `tt` prints it as taperDeg. */
  readonly taperLength: number;
  readonly taper: Turn;
};

/** From a trimmer's top to the underside of the rafter over it; both ends beveled. Longest first. */
export type SideStuds = {
  readonly id: string;
  /** On both sides together. */
  readonly count: number;
  readonly side: Side;
  readonly section: Section;
  readonly spacing: number;
  /** From one to the next: spacing times the difference of the slopes. */
  readonly difference: number;
  /** Off square; `tt` prints them as topBevelDeg and bottomBevelDeg. */
  readonly topBevel: Turn;
  readonly bottomBevel: Turn;
  /** Along the edge that looks to the front, from the long point of the lower bevel up. */
  readonly lengths: readonly number[];
  /** From the lower long point to the upper one, at the other edge: what the board has to have. */
  readonly stockLengths: readonly number[];
};
