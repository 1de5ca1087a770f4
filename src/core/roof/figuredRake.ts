import type { Section } from './plan';
import type { End, Side } from './side';

/** What runs past the gables, as the figured roof tells it. Lengths in inches, along the slope unless said. */

/** The outermost rafter of each gable: cut as the commons of its side are, but without a birdsmouth. */
export type FiguredRake = {
  readonly id: string;
  /** At both gables together. */
  readonly count: number;
  readonly side: 'both' | Side;
  readonly section: Section;
  /** Level, from the gable out to its centre; its outer face is at the rake overhang. */
  readonly past: number;
  readonly run: number;
  readonly rise: number;
  readonly lineLength: number;
  readonly shortening: number;
  /** From the plumb cut to where a common has its heel. */
  readonly bodyLength: number;
  readonly tailLength: number;
  readonly edgeLength: number;
  readonly stockLength: number;
  readonly plumbCutLength: number;
};

/** Flat pieces from the rake rafter back to a common. One entry for each that differs. */
export type FiguredLookouts = {
  readonly id: string;
  readonly count: number;
  readonly side: 'both' | Side;
  readonly section: Section;
  /** The gable they are at, or both. */
  readonly end: 'ends' | End;
  readonly spacing: number;
  /** Level: from the face of the common they butt against to the inner face of the rake rafter. */
  readonly length: number;
  /** Level: of it outside the gable, and inside. */
  readonly reach: number;
  readonly back: number;
  /** Square to the edge, and along it. */
  readonly notchDepth: number;
  readonly notchWidth: number;
  /** In all: each has a notch at every mark. */
  readonly notchedRafters: number;
  /** Middles of lookouts and notches, lowest first, along the top edge from the tail's plumb cut; the same on the rake rafter. */
  readonly marks: readonly number[];
  readonly markedFrom: 'tailCut';
};
