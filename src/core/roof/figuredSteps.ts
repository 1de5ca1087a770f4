/** Several ridges along one line. Inches; places along the run are from end A, heights over plates that no section raises. */

export type RidgeInRun = {
  readonly part: string;
  /** Its ends as cut, what lies in pockets with it. */
  readonly from: number;
  readonly to: number;
  readonly underside: number;
  /** Of its underside over the plates of its own section. */
  readonly overPlates: number;
};

/** Where a lower section runs against the gable wall of a higher one. */
export type FiguredStep = {
  readonly id: string;
  /** Face of that wall. */
  readonly at: number;
  readonly higher: string;
  readonly lower: string;
  /** Plumb, from the top of the lower ridge to that of the higher one. */
  readonly rise: number;
  readonly bearing: RidgeBears;
};

/** The end of the lower ridge, in a pocket of the higher wall or on a wall or post before it. */
export type RidgeBears = {
  readonly on: 'pocket' | 'wall';
  /** Along the ridge; and where. */
  readonly length: number;
  readonly from: number;
  readonly to: number;
  /** Square inches: all of the ridge's thickness. */
  readonly area: number;
  /** Of the ridge's underside, which is the top of what carries it. */
  readonly height: number;
  /** The same over the plates of both sections; below nothing where the pocket is in the wall under the higher plates. */
  readonly overLower: number;
  readonly overHigher: number;
  /** Of a pocket: plumb, from the ridge's top to the first wood of the higher roof over it. */
  readonly clear?: number;
  /** Of the post: what it stands on, and from there to the ridge. */
  readonly stands?: { readonly on: 'lowerPlates' | 'higherPlates' | 'below'; readonly length: number };
};
