import type { Cheek, Turn } from '../../core/roof/figuredSlants';

/** A member as its cuts are drawn: figures exact, in inches. */
export type CutMember = {
  readonly name: string;
  readonly depth: number;
  readonly thickness: number;
  /** Of the member itself, from level. */
  readonly slope: Turn;
  readonly body: number;
  readonly tail: number;
  readonly plumbCut: number;
  /** Nothing where it has no birdsmouth. */
  readonly seat: number;
  readonly overPlate: number;
  /** The same at its upper end, where it bears there too. */
  readonly high?: { readonly seat: number; readonly overPlate: number; readonly tail: number };
  readonly cheeks: readonly Cheek[];
  readonly backing?: readonly [Turn, Turn];
  /** Of one that stands on a sleeper. */
  readonly foot?: { readonly level: Turn; readonly sawTilt: Turn };
  /** What the square is held at: rise, and the run it goes with; of hips 17, as it is in plan. */
  readonly square: readonly [rise: string, run: string];
};

export type CutSize = {
  readonly width: number;
  /** Height of figures, and of words beside them. */
  readonly figure: number;
  readonly word: number;
  /** Most that the board's depth is drawn at. */
  readonly deep: number;
  /** Without the line for the whole top edge. */
  readonly low?: true;
};
