import type { Walls } from './figuredSlants';

/** What a figured roof needs bought, carried and marked. Lengths in inches, unrounded; weights in pounds. */
export type FiguredLists = {
  readonly cutList: CutList;
  readonly weights: Weights;
  readonly sheets: readonly FiguredSheets[];
};

export type MemberKind =
  | 'common'
  | 'ridge'
  | 'ledger'
  | 'hip'
  | 'valley'
  | 'jack'
  | 'sleeper'
  | 'rake'
  | 'lookout'
  | 'header'
  | 'block'
  | 'joist'
  | 'rafterTie'
  | 'collar'
  | 'breakTie'
  | 'purlin'
  | 'post'
  | 'stud';

/** A section with what the yard calls it. */
export type Stock = { readonly nominal: string; readonly thickness: number; readonly depth: number };

export type CutList = {
  /** What each cut takes. */
  readonly kerf: number;
  /** Every member, as the sticks it is made of: jacks and studs length by length, spliced ones piece by piece. */
  readonly sticks: readonly FiguredStick[];
  /** Members longer than any board, with their pieces in order; absent where there are none. */
  readonly splices?: readonly FiguredSplice[];
  /** What to buy, by section, longest boards first. */
  readonly boards: readonly FiguredBoards[];
  /** Sums of each section. */
  readonly bought: readonly Bought[];
};

/** Sticks of one member and one length. */
export type FiguredStick = {
  /** Its `id` in the figured roof. */
  readonly member: string;
  readonly kind: MemberKind;
  readonly stock: Stock;
  readonly count: number;
  /** Of the shortest board it comes out of. */
  readonly length: number;
};

export type FiguredSplice = {
  readonly member: string;
  readonly length: number;
  /** Where joints come: on rafter centers, on posts, between rafters, or anywhere in pieces alike. */
  readonly joints: 'rafters' | 'posts' | 'bays' | 'alike';
  readonly pieces: readonly { readonly length: number; readonly count: number }[];
};

/** Boards of one length cut alike. */
export type FiguredBoards = {
  readonly stock: Stock;
  readonly length: number;
  readonly count: number;
  /** Longer than boards are kept: has to be ordered. Absent where it is not. */
  readonly special?: true;
  /** From each board, longest first, and the members that have such a stick. */
  readonly cuts: readonly {
    readonly length: number;
    readonly count: number;
    readonly of: readonly string[];
  }[];
  /** Of one board: `length` = sticks + `kerfs` + `waste`. */
  readonly kerfs: number;
  readonly waste: number;
  /** Of its length. */
  readonly wasteShare: number;
};

/** All boards of one section: `bought` = `used` + `kerfs` + `waste`. */
export type Bought = {
  readonly stock: Stock;
  readonly boards: number;
  readonly bought: number;
  readonly used: number;
  readonly kerfs: number;
  readonly waste: number;
  readonly wasteShare: number;
};

/** An estimate, to plan who lifts what: from outside sizes and a middling density. */
export type Weights = {
  readonly estimate: true;
  /** Pounds a cubic foot. */
  readonly density: { readonly sawn: number; readonly engineered: number };
  /** The wettest it is meant for, percent. */
  readonly moisture: number;
  readonly sticks: readonly {
    readonly member: string;
    readonly kind: MemberKind;
    readonly count: number;
    /** Of one, and of all. */
    readonly each: number;
    readonly total: number;
  }[];
  readonly total: number;
  /** The heaviest single stick. */
  readonly heaviest: { readonly member: string; readonly each: number };
};

/** Sheathing on planes that are alike: courses up the slope, joints along the eave. */
export type FiguredSheets = {
  readonly side: Walls;
  /** Of which part of the roof, where it is not the main one. */
  readonly part?: string;
  /** Of such planes. */
  readonly count: number;
  /** From the top edge at the tails' plumb cut to the ridge line or the wall. */
  readonly slopeLength: number;
  /** Where courses meet, from the lower edge; the last course is what is left over the last mark. */
  readonly marks: readonly number[];
  readonly lastCourse: number;
  /** Two rows that take turns up the slope, the second half a sheet on. */
  readonly rows: readonly SheetRow[];
};

export type SheetRow = {
  /** A place along the eave that its joints are counted from: x on the long walls, y on the ends. */
  readonly from: number;
  readonly joints: number;
  /** Joints that lie on no rafter's center, and how far on the nearest center is (back, if below nothing). */
  readonly misses: readonly { readonly at: number; readonly by: number }[];
};
