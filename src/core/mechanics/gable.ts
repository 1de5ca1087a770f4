import type { End, Side } from '../roof/side';
import type { NailRow } from './fasteners';
import type { Wood } from '../stock/wood';
import type { Size } from './section';

/** A gable as far as it stands, for the frame: figured shape, what was really cut and built, and what holds what. Inches. */
export type Gable = {
  readonly shape: GableShape;
  /** Rafter centres along the ridge. */
  readonly stations: readonly number[];
  /** How the ridge board lies when nothing forces it: middle off to the yard (+), and up (+), of the line of its ends. */
  readonly ridge: { readonly bow: number; readonly crown: number };
  /** None on a side that is not built. */
  readonly plates: Readonly<Record<Side, readonly PlateSpot[]>>;
  readonly walls: Walls;
  /** Where there is a wall behind the ridge, which then is a ledger: what fastens it to the studs. */
  readonly wall?: readonly WallHold[];
  readonly rafters: readonly GableRafter[];
  readonly supports: readonly Support[];
  readonly ties: readonly GableTie[];
  readonly braces: readonly GableBrace[];
  readonly blocks: readonly GableBlock[];
  readonly straps: readonly GableStrap[];
  /** Which way the row leans by nature: the level push goes there. */
  readonly lean: 1 | -1;
  /** For what-if runs only: other nails than the usual rows. */
  readonly rows?: { readonly nail: NailRow; readonly tack: NailRow };
};

export type GableShape = {
  /** Level, heel cut to the ridge's centre line. */
  readonly run: number;
  /** Rise for a run of 1. */
  readonly m: number;
  readonly seat: number;
  /** Level, beyond the heel cut. */
  readonly overhang: number;
  readonly heightAbovePlate: number;
  readonly topHeight: number;
  readonly rafter: Size;
  readonly ridge: Size;
  readonly rafterWood: Wood;
  readonly ridgeWood: Wood;
};

/** A plate at one station: its top above (+) the figured height and its outer face outward (+) of the line. */
export type PlateSpot = { readonly up: number; readonly out: number };

/** Braces across each eave wall, by where they stand along it, and which gable walls hold their corners. */
export type Walls = {
  readonly braces: Readonly<Record<Side, readonly number[]>>;
  readonly corners: readonly End[];
  /** For what-if runs only: walls that never move. */
  readonly rigid?: true;
};

/** Nails of a ledger into the wall at one station, counted from 0. */
export type WallHold = Fastening & { readonly station: number };

export type GableRafter = {
  readonly name: string;
  readonly side: Side;
  /** Counted from 0 at end A. */
  readonly station: number;
  readonly top: Fastening;
  readonly heel: Fastening;
  /** Body over (+) or under its figured length, along the slope. */
  readonly long: number;
  /** Plumb cut open at the bottom (+) or the top (−) when the rafter lies true. */
  readonly open: number;
  /** Seat cut deeper than figured: it lies that much lower. */
  readonly deep: number;
  /** Inner edge of the seat off the plate (+) while its outer edge bears. */
  readonly seatOpen?: number;
  /** Heel cut eased: it stands that much farther out than figured. */
  readonly eased?: number;
  /** How far its upper end is turned about its length against its heel, radians. */
  readonly twist?: number;
  /** Where it is not what the roof's rafters are made of. */
  readonly wood?: Wood;
};

/** Nails home and not home; less than a whole one counts where its stick is split. */
export type Nails = { readonly nails: number; readonly tacks: number };

/** Nails of a joint, and how the two parts stood to each other when they were driven: three moves, three turns. */
export type Fastening = Nails & { readonly joint: string; readonly rest?: readonly number[] };

/** Something that carries or steadies the ridge at a place along it. */
export type Support = {
  readonly name: string;
  readonly kind: 'post' | 'hands' | 'sling';
  readonly x: number;
  /** Its top above (+) the figured height; undefined when it only steadies. */
  readonly high: number | undefined;
  /** Where it steadies the ridge, to the yard (+) of the centre line. */
  readonly aside: number;
  /** A post fixed at head and foot, with its side brace. */
  readonly fixed: boolean;
  /** A post that goes on down to the ground: its foot below the plates. Others stand on their line. */
  readonly below?: number;
};

export type GableTie = {
  readonly name: string;
  readonly station: number;
  /** `plates`: nailed to both plates. `heels`: nailed to both rafters at the plate. `upper`: a collar between the rafters. */
  readonly kind: 'plates' | 'heels' | 'upper';
  readonly section: Size;
  /** Of its middle above the plates. */
  readonly height: number;
  readonly nails: number;
  readonly rest?: number;
};

/** One end of a block that is nailed both to a rafter and to the plate. */
export type GableBlock = {
  readonly name: string;
  readonly side: Side;
  /** Of the rafter, counted from 0. */
  readonly station: number;
  readonly end: Nails;
  /** The whole block's, in its lower edge. */
  readonly plate: Nails;
  readonly rest?: number;
};

/** A steel strap over the ridge from rafter to rafter. */
export type GableStrap = {
  readonly name: string;
  readonly station: number;
  /** Of both sides together. */
  readonly nails: number;
  readonly rest?: number;
};

export type GableBrace = {
  readonly name: string;
  readonly way: 'across' | 'along';
  readonly x: number;
  readonly rest?: number;
};
