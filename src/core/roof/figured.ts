/** The figured roof: what `tt figure` prints. Lengths in inches, angles as rise and run; degrees are made where they are shown. */
export type FiguredRoof = {
  readonly commonRafters: readonly CommonRafter[];
  readonly ridges: readonly FiguredRidge[];
  readonly layout: Layout;
  readonly blocks: readonly FiguredBlock[];
  readonly ties: readonly FiguredTie[];
  readonly cautions: readonly Caution[];
};

export type CommonRafter = {
  readonly id: string;
  readonly count: number;
  readonly side: 'both' | 'street' | 'yard';
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
};

export type Layout = {
  readonly spacing: number;
  readonly datum: string;
  readonly stations: readonly number[];
};

export type FiguredBlock = {
  readonly id: string;
  readonly count: number;
  readonly side: 'both' | 'street' | 'yard';
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
