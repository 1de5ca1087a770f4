import type { Vec3 } from '../../core/geometry/vector';

/** What a solid is on the building: decides how it is drawn and what a tap on it means. */
export type Role =
  | 'ridge'
  | 'rafter'
  | 'block'
  | 'tie'
  | 'collar'
  | 'strap'
  | 'post'
  | 'brace'
  | 'plate'
  | 'wall'
  | 'panel'
  | 'floor'
  | 'staging'
  | 'ladder'
  | 'gauge'
  | 'board'
  | 'tool'
  | 'boom';

export type Material = 'lumber' | 'panel' | 'sheath' | 'steel';

/** A flat face: its outline, how it is cut into triangles (indexes into the outline), and which way it looks. */
export type Face = {
  readonly points: readonly Vec3[];
  readonly triangles: readonly Triangle[];
  readonly normal: Vec3;
};
export type Triangle = readonly [number, number, number];

/** A straight edge and the directions of the two faces that meet there. */
export type Edge = { readonly a: Vec3; readonly b: Vec3; readonly n1: Vec3; readonly n2: Vec3 };

/** How a board's grain lies: a point of it, along the grain, across the wide face, through the thickness. */
export type Frame = {
  readonly origin: Vec3;
  readonly along: Vec3;
  readonly across: Vec3;
  readonly through: Vec3;
};

/** One thing with a body, in building axes and inches. */
export type Solid = {
  /** Member id where it is a member, else a scenery name. */
  readonly id: string;
  readonly role: Role;
  readonly material: Material;
  readonly faces: readonly Face[];
  readonly edges: readonly Edge[];
  readonly frame: Frame;
  /** Keeps a board's grain the same every time it is drawn. */
  readonly seed: number;
  readonly selectable: boolean;
  /** Runs out into the deck between these heights. */
  readonly fade?: { readonly full: number; readonly gone: number };
  readonly shadowless?: boolean;
};

/** What a maker of solids says about one besides its shape. */
export type About = Pick<Solid, 'id' | 'role'> &
  Partial<Pick<Solid, 'material' | 'seed' | 'selectable' | 'fade' | 'shadowless'>>;

/** A line that lies on the work: a pencil mark, a string, a chalk line. */
export type Stroke = {
  readonly kind: 'mark' | 'string' | 'chalk';
  readonly id: string;
  readonly a: Vec3;
  readonly b: Vec3;
};

/** A place where something may go that is not there yet. */
export type OpenSpot = { readonly id: string; readonly points: readonly Vec3[] };
