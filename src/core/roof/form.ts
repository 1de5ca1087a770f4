import type { Section } from './plan';
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
  /** Of a body that stands against another. */
  readonly wing?: WingFrame;
};

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
  readonly framing: 'longValley' | 'suspendedRidge';
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
  /** Centre of a rafter that stands already, of the roof that this one goes on from: the first or last bay is beside it. */
  readonly standing?: number;
};

/** Part of the seat that lies on the plate; the rest is over the sheathing. Inches. */
export const bearingOf = ({ seat, clad }: Pick<Eave, 'seat' | 'clad'>): number => seat - clad;

export const frameOf = ({ frames }: RoofForm, body: Body): Frame =>
  frames.find((frame) => frame.body === body) ?? frames[0];
