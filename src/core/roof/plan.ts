import type { Inch } from '../units/inch';
import type { Slope } from '../units/slope';

/** A roof as somebody would type it, parsed, checked and in inches. Keys as the roof file has them. */
export type RoofPlan = GablePlan | HipPlan | ShedPlan | GambrelPlan | SteppedPlan;

/** Gables at both ends. */
export type GablePlan = Shared &
  Ridged & {
    readonly kind: 'gable';
    /** What the yard side has of its own; the ridge goes where both planes come to the same height. */
    readonly yard?: YardSide;
    readonly gableStuds?: GableStuds;
    /** Gables that stand square to it and meet it in valleys. */
    readonly wings?: readonly Wing[];
    /** Sheds over walls that stand up through it, and small gables in its planes. */
    readonly dormers?: readonly Dormer[];
    /** A ridge that carries as a beam, and where its posts stand. */
    readonly posts?: Posts;
    /** A roof that stands at one end, in whose planes this one's top edges lie. */
    readonly standing?: Standing;
    readonly rakeOverhang: Inch;
    readonly rake?: Rake;
    readonly datum: 'endA' | 'endB' | 'centre';
  };

/** Slopes on all four sides, and a ridge between two hips at each end. */
export type YardSide = {
  readonly slope: Slope;
  /** Of its plate over the street's. */
  readonly plateHeight: Inch;
  readonly overhang: Inch;
  readonly seat: Inch;
};

/** Its plates are as high as those of the side it stands against. */
export type Wing = {
  readonly side: 'street' | 'yard';
  /** Its ridge's centre line, from end A. */
  readonly at: Inch;
  /** Between the outsides of its plates. */
  readonly span: Inch;
  /** Along its plates, from the outside of the main roof's plate to its gable. */
  readonly length: Inch;
  readonly slope: Slope;
  readonly overhang: Inch;
  readonly rakeOverhang: Inch;
  readonly ridge: Section;
  readonly valley: Section;
  /** Where its ridge comes in lower than the main one: a valley runs on to that, or its own ridge does, hung from it. */
  readonly framing: 'longValley' | 'suspendedRidge' | 'overSheathing';
  /** Of a wing framed over sheathing: what lies on the main rafters, and the sleepers on it that jacks stand on. */
  readonly over: { readonly sheathing: Inch; readonly sleeper: Section };
  /** Which valley is the long one: that on the side of end A or of B. */
  readonly longFrom: 'A' | 'B';
};

export type Dormer = ShedDormer | GableDormer;

type InRoof = {
  readonly side: 'street' | 'yard';
  /** Its middle, from end A. */
  readonly at: Inch;
  /** Each of the two members of a header. */
  readonly header: Section;
};

/** A shed dormer: a wall in the roof, and a plane of lower slope from it back to the main roof. */
export type ShedDormer = InRoof & {
  readonly kind: 'shed';
  /** Between the outsides of its side walls. */
  readonly width: Inch;
  /** Level, from the main reference face in to that of its front wall; 0 stands over the main wall. */
  readonly front: Inch;
  /** Top of its front plate over that of the main plate on its side. */
  readonly wall: Inch;
  /** Nothing where it runs to the main ridge, whatever slope that takes. */
  readonly slope?: Slope;
  readonly overhang: Inch;
  readonly seat: Inch;
  /** In its side walls, from the front back. */
  readonly studs: GableStuds;
};

/** A gable dormer: two planes that meet the main roof in valleys, its ridge on a header between doubled trimmers. */
export type GableDormer = InRoof & {
  readonly kind: 'gable';
  /** Between the outsides of its side walls; without them of its gable where that stands on the main roof. */
  readonly width: Inch;
  readonly slope: Slope;
  /** Level, from the main reference face in to that of its gable. */
  readonly front: Inch;
  readonly rakeOverhang: Inch;
  readonly ridge: Section;
  readonly valley: Section;
  /** Nothing where its planes come down to the main roof at its gable. */
  readonly walls?: SideWalls;
};

export type SideWalls = {
  /** Top of their plates over that of the main plate on its side. */
  readonly top: Inch;
  readonly overhang: Inch;
  readonly seat: Inch;
  readonly studs: GableStuds;
};

/** Every so far from the ridge's centre line, or from a shed's wall, in both gables. */
export type GableStuds = { readonly spacing: Inch; readonly thickness: Inch };

/** What carries the roof past the gables: a rafter at its outer edge, and lookouts laid flat that hold it. */
export type Rake = { readonly rafter: Section; readonly lookouts: Lookouts | false };

/** In notches of the end rafter, so far apart along the slope, and back over so many bays to the rafter they butt against. */
export type Lookouts = {
  readonly spacing: Inch;
  readonly thickness: Inch;
  readonly width: Inch;
  readonly back: number;
};

/** Their centres from end A, and how far below the top of the plates they stand. */
export type Posts = { readonly at: readonly Inch[]; readonly below: Inch };

/** What was measured on a standing gable, and how the new one goes on from it. Slope and seat of the plan follow from it. */
export type Standing = {
  /** Where it stands. Its gable and the new roof's plates meet in the joint line. */
  readonly end: 'A' | 'B';
  /** Plumb, at the outside of the plate: from the plate to the top edge of its rafters. */
  readonly heightAbovePlate: Inch;
  /** Of its ridge over the plate, where it was measured; then the plan's slope is the one that stands. */
  readonly ridgeTop?: Inch;
  readonly ridgeThickness: Inch;
  /** Centre of its last rafter, behind the joint line. */
  readonly lastRafter: Inch;
  readonly rafterDepth: Inch;
  /** What it was said to have, which the new rafters follow only where nothing was measured. */
  readonly nominal: Slope;
};

/**
 * One plane, from a low plate to a ledger on a wall, or to the plate of a higher wall. `span` is from the outside of the low
 * plate to the face behind the ledger, or to the outside of the high plate.
 */
export type ShedPlan = Shared & {
  readonly kind: 'shed';
  readonly rakeOverhang: Inch;
  readonly rake?: Rake;
  /** One of the two. */
  readonly ledger?: Section;
  readonly highPlate?: HighPlate;
  /** Walls at both ends that rise past the roof. */
  readonly between?: Between;
  readonly gableStuds?: GableStuds;
  readonly datum: 'endA' | 'endB' | 'centre';
};

/** Two slopes a side, steep below and flatter above, and gables at both ends. */
export type GambrelPlan = Shared &
  Ridged & {
    readonly kind: 'gambrel';
    readonly upperSlope: Slope;
    /** Level, from the reference face in to the line where the two slopes meet. */
    readonly breakIn: Inch;
    readonly breakOn: BreakOn;
    /** From break to break; as many as there are pairs, or fewer. */
    readonly breakTies: { readonly every: number } | false;
    readonly gableStuds?: GableStuds;
    readonly rakeOverhang: Inch;
    readonly datum: 'endA' | 'endB' | 'centre';
  };

/**
 * What the break is framed of. On a purlin the upper rafters sit with a birdsmouth, and both slopes end plumb over its outer
 * face. With gussets the rafters are mitered against each other and plywood is nailed over both faces of the joint.
 */
export type BreakOn =
  | { readonly what: 'purlin'; readonly purlin: Section; readonly seat: Inch }
  | { readonly what: 'gussets'; readonly thickness: Inch; readonly reach: Inch };

/**
 * Gables one after the other along one line, from end A, each with a ridge of its own. Span, slope, overhang, seat and ridge
 * of the plan are those of every section that was not said to have others.
 */
export type SteppedPlan = Shared &
  Ridged & {
    readonly kind: 'stepped';
    readonly sections: readonly [RoofSection, ...RoofSection[]];
    /** Ridges that carry as beams, and where their posts stand; `below` the plates that no section raises. */
    readonly posts?: Posts;
    readonly gableStuds?: GableStuds;
    /** Past the gables at the two ends of the run. */
    readonly rakeOverhang: Inch;
    readonly datum: 'endA' | 'endB' | 'centre';
  };

export type RoofSection = {
  readonly length: Inch;
  readonly span: Inch;
  readonly slope: Slope;
  /** Of its plates, over the height that those of a section without this key have. */
  readonly plateHeight: Inch;
  readonly overhang: Inch;
  readonly seat: Inch;
  readonly ridge: Section;
  /** Past its gable where it stands higher than the section beside it. */
  readonly stepOverhang: Inch;
  readonly bearing: RidgeBearing;
};

/** How a ridge ends against the gable wall of a higher section: let into it, or at its face, on a wall or post before it. */
export type RidgeBearing = {
  readonly on: 'pocket' | 'wall';
  /** Along the ridge. */
  readonly length: Inch;
  /** How far below the top of its own section's plates that stands which carries it. */
  readonly below: Inch;
  /** Level, left between the higher wall and the end rafter beside it. */
  readonly clearance: Inch;
};

/** Its rafters have a second birdsmouth there, whose heel cut stands at the plate's inner face. */
export type HighPlate = {
  readonly width: Inch;
  /** Level cut, from the plate's inner face outward. */
  readonly seat: Inch;
  /** Level, from the reference face of the high wall to the plumb cut of the rafters' upper ends. */
  readonly overhang: Inch;
};

/** Level, left between each wall and the end rafter beside it. */
export type Between = { readonly clearance: Inch };

/** What a roof with a ridge has. */
type Ridged = {
  readonly ridge: Section;
  readonly joists: { readonly every: number; readonly height: Inch } | false;
  readonly collars: { readonly every: number } | false;
};

export type HipPlan = Shared &
  Ridged & {
    readonly kind: 'hip';
    /** Of the two end planes; the same as `slope` or not. */
    readonly endSlope: Slope;
    readonly hip: Section;
    /** Where hips end: between the commons at the ridge's end, or against the ridge itself with no commons there. */
    readonly hipTop: 'betweenCommons' | 'againstRidge';
    /** Top edges planed to both planes, or the whole hip set lower until its edges come to them. */
    readonly hipFit: 'backed' | 'dropped';
    readonly datum: 'ridgeEnd';
    /** Small gables that cut the hips short, how far the ridge runs past them, and the studs in them. */
    readonly gablet?: Gablet;
    readonly rakeOverhang?: Inch;
    readonly gableStuds?: GableStuds;
  };

/** A small gable over an end: a header across the outside of a pair of commons, that hips and the end's rafters come to. */
export type Gablet = {
  /** Level, from the end's reference face to the outside of that pair, which is the face of the small gable. */
  readonly back: Inch;
  readonly ends: readonly ('A' | 'B')[];
  readonly header: Section;
  /** Two rafters side by side in that pair. */
  readonly doubled: boolean;
};

/** What every kind has. */
type Shared = {
  readonly slope: Slope;
  readonly span: Inch;
  readonly length: Inch;
  readonly overhang: Inch;
  readonly spacing: Inch;
  readonly rafter: Section;
  readonly plate: { readonly width: Inch };
  readonly seat: Inch;
  readonly reference: 'plate' | 'sheathing';
  readonly sheathing: Inch;
  readonly blockAllowance: Inch;
  readonly blockStands: 'plumb' | 'square';
  readonly vents?: Vents;
};

/** Openings in the blocks: a notch in the top edge that leaves so much at each end, or drilled holes. Inches. */
export type Vents =
  | { readonly shape: 'notch'; readonly depth: Inch; readonly leave: Inch }
  | { readonly shape: 'holes'; readonly count: number; readonly diameter: Inch };

export type Section = { readonly thickness: Inch; readonly depth: Inch };
