/** What a tool shows at a place, as a picture to take a reading off. Lengths in inches, as shown by the tool, never as said. */
export type ReadingPicture =
  /**
   * A tape: the mark lies at `shown` from where it starts. Held at its inch mark it has no hook at work; put from rafter
   * to rafter it shows a sum.
   */
  | { readonly tool: 'tape'; readonly shown: number; readonly from?: 'inch' | 'last' }
  /** A six-inch rule held to a gap `shown` wide. */
  | { readonly tool: 'rule'; readonly shown: number }
  /** A level so many inches long, whose far end stands `shown` higher (+) or lower than its near end by its own bubble. */
  | { readonly tool: 'level'; readonly shown: number; readonly long: number }
  /** Water in a hose beside a rule on the plate: `shown` above (+) or below the mark, where its other end may be too. */
  | { readonly tool: 'waterLevel'; readonly shown: number; readonly together: boolean }
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
  | { readonly tool: 'pattern'; readonly shown: number }
  /** A square set plumb to the top edge of a cut rafter: light at the bottom (+) or top of its plumb cut. */
  | {
      readonly tool: 'square';
      readonly shown: number;
      readonly turned: boolean;
      /** Rise for a run of 1, and the plumb cut's length, inches. */
      readonly slope: number;
      readonly plumb: number;
    }
  /** A bob over a rule with its middle marked: its tip lies `shown` toward B (+) or A. */
  | { readonly tool: 'bob'; readonly shown: number; readonly still: boolean }
  /** A straightedge over three rafters: the middle one stands `shown` over (+) or under the line of the others. */
  | { readonly tool: 'straightedge'; readonly shown: number; readonly station: number }
  /** A pole with one mark, plumb or leaning as it is held by eye: the ridge's top lies `shown` over (+) or under it. */
  | { readonly tool: 'storyPole'; readonly shown: number; readonly plumb: boolean };
