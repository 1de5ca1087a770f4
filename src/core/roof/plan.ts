import type { Inch } from '../units/inch';
import type { Slope } from '../units/slope';

/** A roof as somebody would type it, parsed, checked and in inches. Keys as the roof file has them. */
export type RoofPlan = GablePlan | HipPlan | ShedPlan;

/** Gables at both ends. */
export type GablePlan = Shared &
  Ridged & {
    readonly kind: 'gable';
    /** What the yard side has of its own; the ridge goes where both planes come to the same height. */
    readonly yard?: YardSide;
    readonly gableStuds?: GableStuds;
    /** Gables that stand square to it and meet it in valleys. */
    readonly wings?: readonly Wing[];
    /** A ridge that carries as a beam, and where its posts stand. */
    readonly posts?: Posts;
    /** A roof that stands at one end, in whose planes this one's top edges lie. */
    readonly standing?: Standing;
    readonly rakeOverhang: Inch;
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
  readonly framing: 'longValley' | 'suspendedRidge';
  /** Which valley is the long one: that on the side of end A or of B. */
  readonly longFrom: 'A' | 'B';
};

/** Every so far from the ridge's centre line, or from a shed's wall, in both gables. */
export type GableStuds = { readonly spacing: Inch; readonly thickness: Inch };

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
  /** One of the two. */
  readonly ledger?: Section;
  readonly highPlate?: HighPlate;
  /** Walls at both ends that rise past the roof. */
  readonly between?: Between;
  readonly gableStuds?: GableStuds;
  readonly datum: 'endA' | 'endB' | 'centre';
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
