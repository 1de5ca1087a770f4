import type { Vec2, Vec3 } from '../geometry/vector';
import { clearBays } from './bays';
import { edgesOf, handsOf, type Edge } from './edges';
import { expand, type Eave, type RoofForm } from './form';
import { heightOver, hipCuts } from './hips';
import { jacksOf, type Jack } from './jacks';
import { lineAt, piecesOf, topOf, type Piece } from './pieces';
import type { HipPlan } from './plan';
import { grouped, isCommon, planesOf } from './planes';
import { figuredRidges } from './ridges';
import { dot2, pointOn, type Plane } from './surface';
import type { Timber } from './timber';

/** Every member of a hip roof in its place, as its figures have it cut: ridge, hips, commons, jacks, blocks, plates. */
export const timbersOf = (plan: HipPlan): readonly Timber[] => {
  const form = expand(plan);
  const pieces = piecesOf(form);
  const edges = edgesOf(form);
  const jacks = jacksOf(plan, pieces, edges);
  return [
    ...ridgesOf(plan, form),
    ...edges.filter(({ kind }) => kind === 'hip').map((edge) => hipTimber(plan, form, edge)),
    ...pieces.filter(isCommon).map((piece) => commonTimber(plan, piece)),
    ...jacks.map((jack) => jackTimber(plan, jack)),
    ...form.eaves.flatMap((eave) => blocksOn(plan, eave)),
    ...platesOf(plan),
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

const rafterTimber = (plan: HipPlan, { eave, at }: Piece, till: number): Timber => ({
  id: `rafter.${eave.side}.${at}`,
  origin: lineAt(eave, at).from,
  direction: eave.plane.up,
  outline: rafterSide(eave, { depth: plan.rafter.depth, over: heightOver(plan), till }),
  thickness: plan.rafter.thickness,
  cuts: [],
});

const commonTimber = (plan: HipPlan, piece: Piece): Timber =>
  rafterTimber(plan, piece, piece.to - (topOf(piece) === 'ridge' ? plan.ridge : plan.rafter).thickness / 2);

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
const planeCut = ({ foot, up, m }: Plane, over: number): Cut => {
  const normal: Vec3 = [-m * up[0], -m * up[1], 1];
  return { normal, reach: over - m * dot2(up, foot) };
};

const hipTimber = (plan: HipPlan, form: RoofForm, edge: Edge): Timber => {
  const cuts = hipCuts(plan, form, edge);
  const { left, right } = handsOf(edge);
  const over = heightOver(plan);
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

const ridgesOf = (plan: HipPlan, form: RoofForm): readonly Timber[] => {
  const groups = grouped(planesOf(form, plan));
  const [figured] = figuredRidges(plan, { form, groups });
  const edge = edgesOf(form).find(({ kind }) => kind === 'ridge');
  if (!figured || !edge) return [];
  const more = (figured.length - edge.run) / 2;
  const [low, high] = [figured.topHeight - plan.ridge.depth, figured.topHeight];
  return [
    {
      id: 'ridge',
      origin: edge.from,
      direction: edge.line.way,
      outline: [
        [-more, low],
        [edge.run + more, low],
        [edge.run + more, high],
        [-more, high],
      ],
      thickness: plan.ridge.thickness,
      cuts: [],
    },
  ];
};

/** Between neighbours, plumb over the plate's outer face, beveled to the plane; they stand in the middle of their bay. */
const blocksOn = (plan: HipPlan, eave: Eave): readonly Timber[] => {
  if (plan.blockStands !== 'plumb') return [];
  const over = heightOver(plan);
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
          [-length / 2, 0],
          [length / 2, 0],
          [length / 2, 2 * over],
          [-length / 2, 2 * over],
        ],
        thickness: plan.rafter.thickness,
        cuts: [planeCut(eave.plane, over)],
      },
    ];
  });
};

/** Plates are drawn 1 1/2 in thick, as nearly all are; no figure here depends on it. */
const plateThick = 1.5;

const platesOf = ({ span, length, plate: { width } }: HipPlan): readonly Timber[] => {
  const strip = (id: string, from: Vec2, to: Vec2): Timber => {
    const run = Math.abs(to[0] - from[0]) + Math.abs(to[1] - from[1]);
    return {
      id,
      origin: from,
      direction: [(to[0] - from[0]) / run, (to[1] - from[1]) / run],
      outline: [
        [0, -plateThick],
        [run, -plateThick],
        [run, 0],
        [0, 0],
      ],
      thickness: width,
      cuts: [],
    };
  };
  const [half, mid] = [span / 2, width / 2];
  return [
    strip('plate.street', [0, -half + mid], [length, -half + mid]),
    strip('plate.yard', [0, half - mid], [length, half - mid]),
    strip('plate.A', [mid, -half + width], [mid, half - width]),
    strip('plate.B', [length - mid, -half + width], [length - mid, half - width]),
  ];
};
