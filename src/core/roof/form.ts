import type { GableDormer, Section, ShedDormer } from './plan';
import type { Wall } from './side';
import type { Body, Plane } from './surface';

/**
 * A roof as planes over plates. Each eave has a reference face and a plane that rises from it; ridges, hips and valleys are
 * where planes meet. Plans of every kind are expanded to this. Nothing after it asks for the kind: each body says what its
 * edges are framed of, and how.
 */
export type RoofForm = {
  readonly bodies: readonly Body[];
  readonly eaves: readonly Eave[];
  /** One for each body, in the same order; the first is the main roof. */
  readonly frames: readonly [Frame, ...Frame[]];
};

/** What a body's edges are framed of. */
export type Frame = {
  readonly body: Body;
  /** What ids call it; the main roof has no name. */
  readonly name?: string;
  /** Between the outsides of its plates, inches. */
  readonly span: number;
  /** How far its ridge runs past the limits that are gables, inches. */
  readonly past: number;
  /** Gables that studs fill. */
  readonly gables: number;
  readonly ridge?: Section;
  readonly ledger?: Section;
  readonly highPlate?: HighPlate;
  readonly hip?: HipFrame;
  /** What hips and rafters come to where a plane ends at a small gable: on the outside of the commons there. */
  readonly header?: Section;
  /** Pairs of rafters right beside another one, that share its tie. */
  readonly twins?: number;
  /** Of a body that stands against another. */
  readonly wing?: WingFrame;
  /** Of one of several bodies along one line. */
  readonly section?: SectionFrame;
};

/** A section of a run: where it lies, how high its plates are, what each end of its ridge comes to. Inches. */
export type SectionFrame = {
  readonly from: number;
  readonly to: number;
  readonly plates: number;
  readonly ends: Readonly<Record<'A' | 'B', SectionEnd>>;
};

/** A gable, with how far the ridge runs past it, or a higher section whose gable wall the ridge goes into so far. */
export type SectionEnd =
  { readonly what: 'gable'; readonly past: number } | { readonly what: 'higher'; readonly into: number };

/** A plate that the upper ends of rafters bear on. */
export type HighPlate = {
  readonly width: number;
  /** Level cut, from its inner face outward; that face is where the rafters' theoretical line ends. Inches. */
  readonly seat: number;
  /** Level, from its inner face to the plumb cut of the upper ends. Inches. */
  readonly past: number;
};

export type HipFrame = Section & {
  readonly top: 'betweenCommons' | 'againstRidge';
  readonly fit: 'backed' | 'dropped';
};

export type WingFrame = {
  readonly host: Frame;
  readonly valley: Section;
  /** How valleys end whose ridge comes in lower than the host's: one of them runs on to it, or the wing's ridge does. */
  readonly framing: 'longValley' | 'suspendedRidge' | 'header';
  /** Where its ridge and valleys come to a header in one plane of the host. */
  readonly opening?: Opening;
  /** Where it is framed over the host's sheathing: the tops of the sleepers on it, as a body that is not framed. */
  readonly over?: { readonly deck: Body; readonly sleeper: Section };
  /** Whether a valley from this corner is the long one. */
  readonly isLong: (corner: readonly [x: number, y: number]) => boolean;
};

export type Eave = {
  readonly side: Wall;
  readonly plane: Plane;
  readonly body: Body;
  /** Level, reference face to the ridge's centre line or the wall behind the ledger, inches. */
  readonly run: number;
  /** Rise for each inch of run. */
  readonly m: number;
  /** Level, reference face to plumb tail cut, inches. */
  readonly overhang: number;
  /** Level cut, from the reference face inward, inches. */
  readonly seat: number;
  /** How far the reference face stands outside the plate: the sheathing, or nothing. Inches. */
  readonly clad: number;
  /** Rafter centres along the eave: x on the long walls, y on the ends. Inches. */
  readonly stations: readonly number[];
  /** Between which stations tails end at the wall, for what stands against it there. */
  readonly bare?: readonly (readonly [from: number, to: number])[];
  /** Stations whose rafters run through under another body: they carry its sides. */
  readonly through?: readonly number[];
  /** Of a shed dormer's own eave. */
  readonly dormer?: DormerShape;
  /** Of a run: its section, counted from 0 at end A. */
  readonly section?: number;
  /** Of the eaves of a gable dormer. */
  readonly opening?: Opening;
  /** Of several planes over one wall: which this one is, as ids call it. */
  readonly part?: 'lower' | 'upper';
  /** Level, from the end of its run to the ridge's centre line, where other planes go on. Inches. */
  readonly beyond?: number;
  /** Of a plane that begins at a break: what its rafters stand on there. */
  readonly stands?: AtBreak;
  /** Level, in from the reference face: where its underside is open to studs, where that is not all of it. Inches. */
  readonly open?: readonly [from: number, to: number];
  /** Centre of a rafter that stands already, of the roof that this one goes on from: the first or last bay is beside it. */
  readonly standing?: number;
};

/** A shed dormer as it stands in a plane of the main roof. Inches, level ones in from its own reference face. */
export type DormerShape = {
  readonly plan: ShedDormer;
  /** Of the plane it stands in. */
  readonly host: HostSide;
  /** Outsides of its side walls, along the roof. */
  readonly from: number;
  readonly to: number;
  /** Two main rafters side by side under each side wall. */
  readonly trimmers: readonly number[];
  /** Its first and last rafter, over the outer trimmers, and those between them. */
  readonly ends: readonly [number, number];
  readonly inner: readonly number[];
  readonly m: number;
  /** From its reference face to where the tops of its rafters come to those of the main roof. */
  readonly run: number;
  /** Plumb, at its reference face, between those two. */
  readonly gap: number;
  readonly toRidge: boolean;
  /** Level, what the header or half of the ridge takes off its rafters. */
  readonly shortening: number;
};

/**
 * What a small gable is framed into: a hole between doubled trimmers in a plane of the main roof. Inches, level ones in from
 * that plane's reference face.
 */
export type Opening = {
  readonly plan: GableDormer;
  /** Of the plane it is in. */
  readonly host: HostSide;
  /** Outsides of its trimmers, along the roof, and their centers. */
  readonly from: number;
  readonly to: number;
  readonly trimmers: readonly number[];
  /** Inner faces of the inner ones, that headers fit between. */
  readonly faces: readonly [from: number, to: number];
  /** What its planes cover besides, along the roof. */
  readonly covers: readonly [from: number, to: number];
  /** Main rafters' marks between the trimmers. */
  readonly inner: readonly number[];
  /** To its gable, where the outer face of a lower header stands. */
  readonly front: number;
  /** To the lower ends of the valleys' lines: where tops of its rafters over the wall, or its gable, come to the main ones. */
  readonly foot: number;
  /** To where its ridge's line comes to them, over the middle of the header's inside member. */
  readonly meet: number;
  /** With side walls: to where their plates come to the tops of the main rafters. */
  readonly plates?: number;
  /** Without: the station of the pair that stands on the main rafters at its gable. */
  readonly face?: number;
};

/** A side of the main roof: run from its reference face to the ridge, height of its plate, rise for each inch, top of its rafters over the plate. */
export type HostSide = {
  readonly run: number;
  readonly base: number;
  readonly m: number;
  readonly over: number;
};

/** How far over the plane's own line its rafters bear, or their undersides are, plumb at the break; and the purlin. Inches. */
export type AtBreak = { readonly lift: number; readonly purlin?: Section };

/** Height of what an eave's rafters bear on. Inches. */
export const bearsAt = ({ plane, stands }: Pick<Eave, 'plane' | 'stands'>): number =>
  plane.base + (stands?.lift ?? 0);

/** Part of the seat that lies on the plate; the rest is over the sheathing. Inches. */
export const bearingOf = ({ seat, clad }: Pick<Eave, 'seat' | 'clad'>): number => seat - clad;

/** Height of the plates that ties and studs of a body stand on. Inches. */
export const platesOf = ({ section }: Frame): number => section?.plates ?? 0;

/** What an eave's rafter has of it: no tail where something else stands. */
export const tailedAt = (eave: Eave, at: number): Eave =>
  eave.overhang > 0 && eave.bare?.some(([from, to]) => at > from && at < to)
    ? { ...eave, overhang: 0 }
    : eave;

/** Bodies that make one roof together: the framed ones, and each that is framed over a deck with it. */
export const scenesOf = ({ frames }: RoofForm): readonly (readonly Body[])[] => {
  const together = frames.filter(({ wing }) => !wing?.over).map(({ body }) => body);
  const over = frames.flatMap(({ body, wing }) => (wing?.over ? [[wing.over.deck, body]] : []));
  return [together, ...over];
};

/** The opening of a plane that a place along it is in. */
export const openingIn = ({ frames }: RoofForm, { body, side }: Eave, at: number): Opening | undefined =>
  frames
    .flatMap(({ wing }) => (wing?.opening && wing.host.body === body ? [wing.opening] : []))
    .find((one) => one.plan.side === side && one.inner.includes(at));

export const frameOf = ({ frames }: RoofForm, body: Body): Frame =>
  frames.find((frame) => frame.body === body) ?? frames[0];
