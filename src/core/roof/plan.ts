import type { Inch } from '../units/inch';
import type { Slope } from '../units/slope';

/** A roof as somebody would type it, parsed, checked and in inches. Keys as the roof file has them. */
export type RoofPlan = {
  readonly kind: 'gable';
  readonly slope: Slope;
  readonly span: Inch;
  readonly length: Inch;
  readonly overhang: Inch;
  readonly rakeOverhang: Inch;
  readonly spacing: Inch;
  readonly rafter: Section;
  readonly ridge: Section;
  readonly plate: { readonly width: Inch };
  readonly seat: Inch;
  readonly reference: 'plate' | 'sheathing';
  readonly sheathing: Inch;
  readonly blockAllowance: Inch;
  readonly blockStands: 'plumb' | 'square';
  readonly datum: 'endA' | 'endB' | 'centre';
  readonly joists: { readonly every: number; readonly height: Inch } | false;
  readonly collars: { readonly every: number } | false;
  readonly vents?: Vents;
};

/** Openings in the blocks: a notch in the top edge that leaves so much at each end, or drilled holes. Inches. */
export type Vents =
  | { readonly shape: 'notch'; readonly depth: Inch; readonly leave: Inch }
  | { readonly shape: 'holes'; readonly count: number; readonly diameter: Inch };

export type Section = { readonly thickness: Inch; readonly depth: Inch };
