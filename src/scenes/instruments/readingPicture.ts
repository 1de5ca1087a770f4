/** What a tool shows at a place, as a picture to take a reading off. Lengths in inches, as shown by the tool, never as said. */
export type ReadingPicture =
  /** A tape: the mark lies at `shown` from its hook. */
  | { readonly tool: 'tape'; readonly shown: number }
  /** A six-inch rule held to a gap `shown` wide. */
  | { readonly tool: 'rule'; readonly shown: number }
  /** A four-foot level whose far end stands `shown` higher (+) or lower than its near end by its own bubble. */
  | { readonly tool: 'level'; readonly shown: number }
  /** Water in a hose beside a rule on the plate: `shown` above (+) or below the mark at the start. */
  | { readonly tool: 'waterLevel'; readonly shown: number }
  /**
   * A string over gauge blocks `nominal` thick. Over a rafter `shown` is the space under it; along a plate it is how
   * far the plate stands out (+) or in (-) of where the blocks put it.
   */
  | {
      readonly tool: 'string';
      readonly over: 'rafter' | 'plate';
      readonly shown: number;
      readonly nominal: number;
    }
  /** The pattern held to a plumb cut: the board reaches `shown` past (+) or short of the pattern. */
  | { readonly tool: 'pattern'; readonly shown: number };
