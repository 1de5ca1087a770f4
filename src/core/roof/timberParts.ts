import type { Vec2, Vec3 } from '../geometry/vector';
import { frameOf, type Eave, type RoofForm } from './form';
import { dot2, type Line, type Plane } from './surface';
import type { Timber } from './timber';

/** What members as solids are made of. */

export const nameIn = (form: RoofForm, { body, side, part }: Eave): string => {
  const name = part ?? frameOf(form, body).name;
  return name ? `${name}.${side}` : side;
};

/** Plates are drawn 1 1/2 in thick, as nearly all are; only studs under a dormer's side plates depend on it. */
export const plateThick = 1.5;

export type Cut = Timber['cuts'][number];

type Side = {
  readonly depth: number;
  readonly over: number;
  readonly till: number;
  /** How far outside of its line the heel cut stands. */
  readonly heel?: number;
  /** Upper birdsmouth: its corners, from its outer end to the underside below its heel. */
  readonly notch?: Timber['outline'];
};

/** Side of a rafter: along from its reference face, up from the plate. */
export const rafterSide = (
  { m, seat, overhang }: Pick<Eave, 'm' | 'seat' | 'overhang'>,
  { depth, over, till, heel = 0, notch = [] }: Side,
): Timber['outline'] => {
  const top = (u: number): number => over + m * u;
  const plumb = depth * Math.sqrt(1 + m * m);
  const under = (u: number): number => top(u) - plumb;
  const tail: Timber['outline'] =
    overhang > heel
      ? [
          [-heel, 0],
          [-heel, under(-heel)],
          [-overhang, under(-overhang)],
          [-overhang, top(-overhang)],
        ].map(([a = 0, z = 0]) => [a, z] as const)
      : [
          [-heel, 0],
          [-heel, top(-heel)],
        ];
  return [[till, top(till)], [till, under(till)], ...notch, [seat, 0], ...tail];
};

/** Side of what stands on no plate: plumb at both ends, from a level place on its run to another. */
export const slantFrom = (
  { m }: Pick<Eave, 'm'>,
  { depth, over, from, till }: Pick<Side, 'depth' | 'over' | 'till'> & { readonly from: number },
): Timber['outline'] => {
  const top = (u: number): number => over + m * u;
  const plumb = depth * Math.sqrt(1 + m * m);
  return [
    [till, top(till)],
    [till, top(till) - plumb],
    [from, top(from) - plumb],
    [from, top(from)],
  ];
};

/** The other side of a cut. */
export const beyond = ({ normal: [x, y, z], reach }: Cut): Cut => ({ normal: [-x, -y, -z], reach: -reach });

export const levelCut = (normal: Vec2, reach: number): Cut => ({ normal: [normal[0], normal[1], 0], reach });

/** Under the top edges' plane. */
export const planeCut = ({ foot, up, m, base }: Plane, over: number): Cut => {
  const normal: Vec3 = [-m * up[0], -m * up[1], 1];
  return { normal, reach: base + over - m * dot2(up, foot) };
};

type Board = {
  readonly along: Vec2;
  readonly up: Vec2;
  readonly thickness: number;
};

/** A level board on edge or on its flat, along a line from a point. */
export const board = (
  id: string,
  { from, line }: { readonly from: Vec2; readonly line: Line },
  { along: [a, b], up: [low, high], thickness }: Board,
): Timber => ({
  id,
  origin: from,
  direction: line.way,
  outline: [
    [a, low],
    [b, low],
    [b, high],
    [a, high],
  ],
  thickness,
  cuts: [],
});
