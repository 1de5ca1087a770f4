import type { Vec2, Vec3 } from '../geometry/vector';
import { clearBays } from './bays';
import { heightOver } from './heightOver';
import { edgesOf, handsOf, type Edge } from './edges';
import { expand, type Eave, type RoofForm } from './form';
import { heightAtHips, hipCuts } from './hips';
import { jacksOf, type Jack } from './jacks';
import { lineAt, piecesOf, type Piece } from './pieces';
import type { GablePlan, HipPlan, RoofPlan, ShedPlan } from './plan';
import { grouped, isCommon, planesOf, shorteningAt, topOf as topHeightOf } from './planes';
import { ledgerPast } from './rake';
import { notched, rakeTimbers } from './rakeTimbers';
import { figuredRidges } from './ridges';
import { dot2, pointOn, type Line, type Plane } from './surface';
import type { Timber } from './timber';

/** Every member of a roof in its place, as its figures have it cut: ridge or ledger, rafters, hips, blocks, plates. No ties. */
export const timbersOf = (plan: RoofPlan): readonly Timber[] => {
  const form = expand(plan);
  const pieces = piecesOf(form);
  return [
    ...(plan.kind === 'shed' ? [ledgerOf(plan, form)] : ridgesOf(plan, form)),
    ...(plan.kind === 'hip' ? slantingOf(plan, form, pieces) : []),
    ...pieces.filter(isCommon).map((piece) => notched(plan, piece, commonTimber(plan, piece))),
    ...rakeTimbers(plan, form),
    ...form.eaves.flatMap((eave) => blocksOn(plan, eave)),
    ...form.eaves.map((eave) => plateUnder(plan, eave)),
  ];
};

const slantingOf = (plan: HipPlan, form: RoofForm, pieces: readonly Piece[]): readonly Timber[] => {
  const edges = edgesOf(form);
  return [
    ...edges.filter(({ kind }) => kind === 'hip').map((edge) => hipTimber(plan, form, edge)),
    ...jacksOf(plan, pieces, edges).map((jack) => jackTimber(plan, jack)),
  ];
};

type Cut = Timber['cuts'][number];

/** Side of a rafter: along from its reference face, up from the plate. */
const rafterSide = (
  { m, seat, overhang }: Pick<Eave, 'm' | 'seat' | 'overhang'>,
  { depth, over, till }: { readonly depth: number; readonly over: number; readonly till: number },
): Timber['outline'] => {
  const top = (u: number): number => over + m * u;
  const plumb = depth * Math.sqrt(1 + m * m);
  const under = (u: number): number => top(u) - plumb;
  const tail: Timber['outline'] =
    overhang > 0
      ? [
          [0, 0],
          [0, under(0)],
          [-overhang, under(-overhang)],
          [-overhang, top(-overhang)],
        ].map(([a = 0, z = 0]) => [a, z] as const)
      : [
          [0, 0],
          [0, top(0)],
        ];
  return [[till, top(till)], [till, under(till)], [seat, 0], ...tail];
};

const rafterTimber = (plan: RoofPlan, { eave, at }: Piece, till: number): Timber => ({
  id: `rafter.${eave.side}.${at}`,
  origin: lineAt(eave, at).from,
  direction: eave.plane.up,
  outline: rafterSide(eave, {
    depth: plan.rafter.depth,
    over: heightOver(plan.rafter.depth, eave),
    till,
  }).map(([along, z]) => [along, z + eave.plane.base] as const),
  thickness: plan.rafter.thickness,
  cuts: [],
});

const commonTimber = (plan: RoofPlan, piece: Piece): Timber =>
  rafterTimber(plan, piece, piece.to - shorteningAt(plan, piece));

/** Cut by the face of its hip. */
const jackTimber = (plan: HipPlan, { piece, hip, hipSide, run }: Jack): Timber => {
  const { way } = hip.line;
  const toHip: Vec2 = hipSide === 'right' ? [-way[1], way[0]] : [way[1], -way[0]];
  return {
    ...rafterTimber(plan, piece, run + plan.rafter.thickness),
    cuts: [levelCut(toHip, dot2(toHip, hip.from) - plan.hip.thickness / 2)],
  };
};

const levelCut = (normal: Vec2, reach: number): Cut => ({ normal: [normal[0], normal[1], 0], reach });

/** Under the top edges' plane. */
export const planeCut = ({ foot, up, m, base }: Plane, over: number): Cut => {
  const normal: Vec3 = [-m * up[0], -m * up[1], 1];
  return { normal, reach: base + over - m * dot2(up, foot) };
};

const hipTimber = (plan: HipPlan, form: RoofForm, edge: Edge): Timber => {
  const cuts = hipCuts(plan, form, edge);
  const { left, right } = handsOf(edge);
  const over = heightAtHips(plan);
  const g = Math.sqrt(1 + edge.m * edge.m);
  const tail = cuts.tailLength / g;
  const more = tail > 0 ? plan.hip.thickness : 0;
  const tails = [left, right].map(({ plane }) => {
    const overhang = form.eaves.find((eave) => eave.plane === plane)?.overhang ?? 0;
    return levelCut([-plane.up[0], -plane.up[1]], overhang - dot2(plane.up, plane.foot));
  });
  return {
    id: `hip.${left.plane.id}.${right.plane.id}`,
    origin: edge.from,
    direction: edge.line.way,
    outline: rafterSide(
      { m: edge.m, seat: cuts.seat, overhang: tail + more },
      { depth: plan.hip.depth, over: cuts.heightAbovePlate, till: edge.run },
    ),
    thickness: plan.hip.thickness,
    cuts: [
      ...tails,
      ...topCuts(plan, edge),
      ...(plan.hipFit === 'backed' ? [planeCut(left.plane, over), planeCut(right.plane, over)] : []),
    ],
  };
};

/** Faces that the top of a hip comes to: those of the two commons, or the ridge's side. */
const topCuts = (plan: HipPlan, edge: Edge): readonly Cut[] => {
  const apex = edge.to;
  const { way } = edge.line;
  if (plan.hipTop === 'againstRidge') {
    const normal: Vec2 = [0, way[1] > 0 ? 1 : -1];
    return [levelCut(normal, dot2(normal, apex) - plan.ridge.thickness / 2)];
  }
  return edge.planes.map(({ plane: { up } }) => {
    const across: Vec2 = [-up[1], up[0]];
    const normal: Vec2 = dot2(across, way) > 0 ? across : [up[1], -up[0]];
    return levelCut(normal, dot2(normal, apex) - plan.rafter.thickness / 2);
  });
};

const ridgesOf = (plan: GablePlan | HipPlan, form: RoofForm): readonly Timber[] => {
  const groups = grouped(planesOf(form, plan));
  const [figured] = figuredRidges(plan, { form, groups });
  const edge = edgesOf(form).find(({ kind }) => kind === 'ridge');
  if (!figured || !edge) return [];
  const more = (figured.length - edge.run) / 2;
  const low = figured.topHeight - plan.ridge.depth;
  return [
    board('ridge', edge, {
      along: [-more, edge.run + more],
      up: [low, figured.topHeight],
      thickness: plan.ridge.thickness,
    }),
  ];
};

type Board = {
  readonly along: Vec2;
  readonly up: Vec2;
  readonly thickness: number;
};

/** A level board on edge or on its flat, along a line from a point. */
const board = (
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

/** Its back on the wall, its top flush with the rafters where they meet its face. */
const ledgerOf = (plan: ShedPlan, form: RoofForm): Timber => {
  const [plane] = planesOf(form, plan);
  const top = plane ? topHeightOf(plane) : 0;
  const from: Vec2 = [0, -plan.ledger.thickness / 2];
  return board(
    'ledger',
    { from, line: { from, way: [1, 0] } },
    {
      along: [-ledgerPast(plan), plan.length + ledgerPast(plan)],
      up: [top - plan.ledger.depth, top],
      thickness: plan.ledger.thickness,
    },
  );
};

/** Between neighbours, plumb over the plate's outer face, beveled to the plane; they stand in the middle of their bay. */
const blocksOn = (plan: RoofPlan, eave: Eave): readonly Timber[] => {
  if (plan.blockStands !== 'plumb') return [];
  const over = heightOver(plan.rafter.depth, eave);
  const { base } = eave.plane;
  return clearBays(eave.stations, plan.rafter.thickness).flatMap((clear, i): readonly Timber[] => {
    const length = clear - plan.blockAllowance;
    if (length <= 0) return [];
    const mid = ((eave.stations[i] as number) + (eave.stations[i + 1] as number)) / 2;
    const { up } = eave.plane;
    const line = lineAt(eave, mid);
    return [
      {
        id: `block.${eave.side}.${i + 1}`,
        origin: pointOn(line, eave.clad + plan.rafter.thickness / 2),
        direction: [Math.abs(up[1]), Math.abs(up[0])],
        outline: [
          [-length / 2, base],
          [length / 2, base],
          [length / 2, base + 2 * over + plan.rafter.depth * eave.m],
          [-length / 2, base + 2 * over + plan.rafter.depth * eave.m],
        ],
        thickness: plan.rafter.thickness,
        cuts: [planeCut(eave.plane, over)],
      },
    ];
  });
};

/** Plates are drawn 1 1/2 in thick, as nearly all are; no figure here depends on it. */
const plateThick = 1.5;

/** Under an eave, from corner to corner on the long walls and between them on the ends. */
const plateUnder = (plan: RoofPlan, { plane: { foot, up, base }, clad, side }: Eave): Timber => {
  const { width } = plan.plate;
  const isEnd = up[1] === 0;
  const [from, to] = isEnd ? [-plan.span / 2 + width, plan.span / 2 - width] : [0, plan.length];
  const in2 = clad + width / 2;
  const origin: Vec2 = isEnd ? [foot[0] + up[0] * in2, 0] : [0, foot[1] + up[1] * in2];
  return board(
    `plate.${side}`,
    { from: origin, line: { from: origin, way: isEnd ? [0, 1] : [1, 0] } },
    { along: [from, to], up: [base - plateThick, base], thickness: width },
  );
};
