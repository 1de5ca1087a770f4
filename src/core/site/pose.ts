import type { End, Side } from '../roof/side';
import type { BlockId, BoardId, JointId, RafterId } from './ids';

/** Where everything really is, in building axes and inches. */
export type Pose = {
  /** Top outer edge of each eave plate. */
  readonly plates: Readonly<Record<Side, PlatePose>>;
  /** Middle of the ridge's top edge; absent until it is up. */
  readonly ridge: RidgePose | undefined;
  readonly rafters: Readonly<Record<RafterId, RafterPose>>;
  readonly blocks: Readonly<Record<BlockId, BlockPose>>;
  /** Set once it came down; everything else is then where hands had put it, as if nothing had moved since. */
  readonly fallen?: Fallen;
};

export type RidgePose = Readonly<Record<End | 'mid', Place>>;

export type Place = { readonly x: number; readonly y: number; readonly z: number };

export type PlatePose = {
  readonly [P in End | 'mid']: Place;
};

export type RafterPose = {
  readonly side: Side;
  readonly station: number;
  readonly board: BoardId;
  /** x of its centre at the heel and at the ridge. */
  readonly x: { readonly heel: number; readonly ridge: number };
  /** Level distance from the building's centre line and height of the top edge: at the plumb cut, and over the plate's outer face. */
  readonly top: { readonly out: number; readonly z: number };
  readonly heel: { readonly out: number; readonly z: number };
  readonly depth: number;
  /** Level reach of its tail past the plan's overhang. */
  readonly tail: number;
  /** Middle of the top edge above (+) or below the straight line between heel and top. */
  readonly crown: number;
  readonly gaps: Gaps;
};

/** Light that shows at the faces of one rafter, inches, never negative. */
export type Gaps = {
  readonly seat: number;
  readonly heelCut: number;
  readonly plumbTop: number;
  readonly plumbBottom: number;
};

export type BlockPose = {
  readonly side: Side;
  readonly bay: number;
  readonly x0: number;
  readonly x1: number;
  /** Open at its far end. */
  readonly gap: number;
};

/** Which way it fell and where it came loose, as the frame told it at the moment it no longer stood. */
export type Fallen = {
  readonly way: 'along' | 'sideways' | 'downward';
  /** Along: toward B (+1) or A. Sideways: toward the yard (+1) or the street. */
  readonly toward: 1 | -1;
  /** The joint whose two sides parted the most; undefined where nothing was fastened. */
  readonly loose: JointId | undefined;
};
