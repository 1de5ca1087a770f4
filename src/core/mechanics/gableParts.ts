import type { Side } from '../roof/side';
import type { Beam, Frame, Node } from './frame';
import type { GableRafter } from './gable';

/** The frame of a gable, and where in it each part is found again. */
export type GableParts = {
  readonly frame: Frame;
  readonly ridge: readonly Node[];
  readonly ridgeBeams: readonly Beam[];
  readonly plates: Readonly<Record<Side, readonly Node[]>>;
  readonly rafters: ReadonlyMap<string, RafterParts>;
  /** The same by station, counted from 0. */
  readonly rows: Readonly<Record<Side, readonly (RafterParts | undefined)[]>>;
};

export type RafterParts = {
  readonly rafter: GableRafter;
  readonly heel: Node;
  readonly top: Node;
  readonly beam: Beam;
  /** Numbers of the links that are its faces. */
  readonly faces: Readonly<Record<FaceName, number>>;
};

export type FaceName = 'plumbTop' | 'plumbBottom' | 'seatOut' | 'seatIn' | 'heelCut';
