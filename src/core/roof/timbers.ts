import type { Vec2, Vec3 } from '../geometry/vector';
import { clearBays } from './bays';
import { eaveRows, type EaveRow } from './blocks';
import { heightOver } from './heightOver';
import { handsOf, type Edge } from './edges';
import { frameOf, type Eave, type Frame, type RoofForm } from './form';
import type { Framing } from './framing';
import { eaveOf, heelOf, heightAt, hipCuts, valleyFaces, woodOf } from './hips';
import { highPlateTimbers, overHighPlate } from './highPlateTimbers';
import { jacksOf, type Jack, type Meet } from './jacks';
import { lineAt, type Piece } from './pieces';
import type { RoofPlan } from './plan';
import { commonsOf, isCommon, shorteningAt, topOf as topHeightOf, type RoofPlane } from './planes';
import { ridgesOn, type RidgeOn } from './ridges';
import { atTail, settledFraming } from './settled';
import { dot2, pointOn, type Line, type Plane } from './surface';
import type { Timber } from './timber';

/** Every member of a roof in its place, as its figures have it cut: ridge or ledger, rafters, hips, blocks, plates. No ties. */
export const timbersOf = (plan: RoofPlan): readonly Timber[] => {
  const framing = settledFraming(plan);
  const { form, edges, pieces } = framing;
  const planes = commonsOf(framing, plan);
  return [
    ...ledgersOf(plan, form, planes),
    ...ridgesOn(plan, framing, planes).flatMap((ridge) => ridgeTimber(framing, ridge)),
    ...edges.filter(({ kind }) => kind !== 'ridge').flatMap((edge) => slantTimber(plan, framing, edge)),
    ...jacksOf(plan, framing).map((jack) => jackTimber(plan, framing, jack)),
    ...pieces.filter(isCommon).map((piece) => commonTimber(plan, framing, piece)),
    ...eaveRows(framing).flatMap((row) => blocksOn(plan, form, row)),
    ...form.eaves.map((eave) => plateUnder(plan, form, eave)),
    ...highPlateTimbers(plan, framing),
  ];
};

const nameIn = (form: RoofForm, { body, side }: Eave): string => {
  const { name } = frameOf(form, body);
  return name ? `${name}.${side}` : side;
};

type Cut = Timber['cuts'][number];

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
const rafterSide = (
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

const rafterTimber = (
  plan: RoofPlan,
  form: RoofForm,
  { piece, till, notch }: { piece: Piece; till: number; notch?: Timber['outline'] },
): Timber => {
  const { eave, at } = piece;
  return {
    id: `rafter.${nameIn(form, eave)}.${at}`,
    origin: lineAt(eave, at).from,
    direction: eave.plane.up,
    outline: rafterSide(eave, {
      depth: plan.rafter.depth,
      over: heightOver(plan.rafter.depth, eave),
      till,
      ...(notch && { notch }),
    }).map(([along, z]) => [along, z + eave.plane.base] as const),
    thickness: plan.rafter.thickness,
    cuts: [],
  };
};

const commonTimber = (plan: RoofPlan, framing: Framing, piece: Piece): Timber => {
  const { form } = framing;
  const till = piece.to - shorteningAt(plan, form, { eave: piece.eave, piece });
  const high = overHighPlate(plan, form, piece.eave);
  return { ...rafterTimber(plan, form, { piece, till, ...high }), cuts: tailCutsOf(framing, piece) };
};

const tailCutsOf = (framing: Framing, piece: Piece): readonly Cut[] =>
  atTail(framing, piece).map((edge) => faceOf(framing.form, piece, { edge, up: false }));

/** Cut by the faces of what it stands between. */
const jackTimber = (plan: RoofPlan, framing: Framing, jack: Jack): Timber => {
  const { form } = framing;
  const { piece, bottom, top, shortening } = jack;
  const till = top ? piece.to + past(plan, top) : piece.to - shortening;
  const cuts = [
    ...(bottom ? [faceOf(form, piece, { edge: bottom.edge, up: false })] : []),
    ...(top ? [faceOf(form, piece, { edge: top.edge, up: true })] : []),
    ...tailCutsOf(framing, piece),
  ];
  const whole = rafterTimber(plan, form, { piece, till });
  if (!bottom) return { ...whole, cuts };
  const outline = overValley(plan, piece, { from: piece.from - past(plan, bottom), till });
  return { ...whole, id: `${whole.id}.${Math.round(piece.from)}`, outline, cuts };
};

/** From a valley up; near its foot still on the plate. */
const overValley = (
  { rafter }: RoofPlan,
  { eave }: Piece,
  { from, till }: { readonly from: number; readonly till: number },
): Timber['outline'] => {
  const { m, seat, plane } = eave;
  const over = plane.base + heightOver(rafter.depth, eave);
  const plumb = rafter.depth * Math.sqrt(1 + m * m);
  const low: Timber['outline'] =
    from < seat && seat < till
      ? [
          [seat, plane.base],
          [from, plane.base],
        ]
      : [[from, over + m * from - plumb]];
  return [[till, over + m * till], [till, over + m * till - plumb], ...low, [from, over + m * from]];
};

/** Enough wood past the line to be cut to it. */
const past = ({ rafter: { thickness } }: RoofPlan, { skew }: Meet): number =>
  thickness + (thickness / 2) * (skew.cos / skew.sin);

/** The face of a hip or valley that a jack is cut to, at its upper or lower end. */
const faceOf = (
  form: RoofForm,
  { eave: { plane } }: Piece,
  { edge, up }: { readonly edge: Edge; readonly up: boolean },
): Cut => {
  const { way } = edge.line;
  const across: Vec2 = [-way[1], way[0]];
  const forward = dot2(across, plane.up) > 0 === up;
  const normal: Vec2 = forward ? across : [way[1], -way[0]];
  return levelCut(normal, dot2(normal, edge.from) - (woodOf(form, edge)?.thickness ?? 0) / 2);
};

const levelCut = (normal: Vec2, reach: number): Cut => ({ normal: [normal[0], normal[1], 0], reach });

/** Under the top edges' plane. */
export const planeCut = ({ foot, up, m, base }: Plane, over: number): Cut => {
  const normal: Vec3 = [-m * up[0], -m * up[1], 1];
  return { normal, reach: base + over - m * dot2(up, foot) };
};

const slantTimber = (plan: RoofPlan, framing: Framing, edge: Edge): readonly Timber[] => {
  const { form } = framing;
  const cuts = hipCuts(plan, framing, edge);
  const wood = woodOf(form, edge);
  if (!cuts || !wood) return [];
  const { left, right } = handsOf(edge);
  const over = heightAt(plan, eaveOf(form, left.plane));
  const base = left.plane.base;
  const g = Math.sqrt(1 + edge.m * edge.m);
  const tail = cuts.tailLength / g;
  const isHip = edge.kind === 'hip';
  const more = tail > 0 && isHip ? wood.thickness : 0;
  const backed = isHip && frameOf(form, left.body).hip?.fit === 'backed';
  return [
    {
      id: `${edge.kind}.${left.plane.id}.${right.plane.id}`,
      origin: edge.from,
      direction: edge.line.way,
      outline: rafterSide(
        { m: edge.m, seat: cuts.seat, overhang: tail + more },
        {
          depth: wood.depth,
          over: cuts.heightAbovePlate,
          till: edge.run,
          heel: isHip ? 0 : heelOf(edge, wood.thickness),
        },
      ).map(([along, z]) => [along, z + base] as const),
      thickness: wood.thickness,
      cuts: [
        ...(isHip ? tailCuts(form, [left.plane, right.plane]) : []),
        ...(isHip ? topCuts(plan, form, edge) : valleyCuts(framing, edge)),
        ...(backed ? [planeCut(left.plane, over), planeCut(right.plane, over)] : []),
      ],
    },
  ];
};

const tailCuts = (form: RoofForm, planes: readonly Plane[]): readonly Cut[] =>
  planes.map((plane) =>
    levelCut([-plane.up[0], -plane.up[1]], eaveOf(form, plane).overhang - dot2(plane.up, plane.foot)),
  );

/** Faces that the top of a hip comes to: those of the two commons, or the ridge's side. */
const topCuts = (plan: RoofPlan, form: RoofForm, edge: Edge): readonly Cut[] => {
  const apex = edge.to;
  const { way } = edge.line;
  const { hip, ridge } = frameOf(form, edge.planes[0].body);
  if (hip?.top === 'againstRidge' && ridge) {
    const normal: Vec2 = [0, way[1] > 0 ? 1 : -1];
    return [levelCut(normal, dot2(normal, apex) - ridge.thickness / 2)];
  }
  return edge.planes.map(({ plane: { up } }) => {
    const across: Vec2 = [-up[1], up[0]];
    const normal: Vec2 = dot2(across, way) > 0 ? across : [up[1], -up[0]];
    return levelCut(normal, dot2(normal, apex) - plan.rafter.thickness / 2);
  });
};

const valleyCuts = (framing: Framing, edge: Edge): readonly Cut[] =>
  valleyFaces(framing, edge).map(({ way, thickness, beyond = 0 }) => {
    const across: Vec2 = [-way[1], way[0]];
    const normal: Vec2 = dot2(across, edge.line.way) > 0 ? across : [way[1], -way[0]];
    return levelCut(
      normal,
      dot2(normal, pointOn({ from: edge.to, way: edge.line.way }, beyond)) - thickness / 2,
    );
  });

/** A wing's ridge is cut to what it comes to: its length is that of its middle. */
const ridgeTimber = (framing: Framing, { edge, frame, ends, figured }: RidgeOn): readonly Timber[] => {
  if (!frame.ridge) return [];
  const inner = framing.edges.find(
    ({ parts, planes }) => parts !== undefined && planes.some((of) => of.body === frame.body),
  );
  const [low, high] = ends.map(({ past: more, more: board }) => more + board) as [number, number];
  const slack = inner ? frame.ridge.thickness : 0;
  const timber = board(figured.id, edge, {
    along: [-low - (low < 0 ? slack : 0), edge.run + high + (high < 0 ? slack : 0)],
    up: [figured.topHeight - frame.ridge.depth, figured.topHeight],
    thickness: frame.ridge.thickness,
  });
  if (!inner) return [timber];
  return [
    { ...timber, cuts: [ridgeCut(inner, frame.wing?.valley.thickness ?? 0, edge), ...hostCuts(frame)] },
  ];
};

/** The face of the host's ridge. */
const hostCuts = ({ body, wing }: Frame): readonly Cut[] =>
  body.limits
    .filter(({ id }) => id === 'host')
    .map(({ normal, reach }) => levelCut(normal, reach - (wing?.host.ridge?.thickness ?? 0) / 2));

const ridgeCut = ({ from, line: { way } }: Edge, thickness: number, ridge: Edge): Cut => {
  const across: Vec2 = [-way[1], way[0]];
  const mid: Vec2 = [(ridge.from[0] + ridge.to[0]) / 2, (ridge.from[1] + ridge.to[1]) / 2];
  const beyond = dot2(across, from) - dot2(across, mid) > 0;
  const normal: Vec2 = beyond ? across : [way[1], -way[0]];
  return levelCut(normal, dot2(normal, from) - thickness / 2);
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
const ledgersOf = (
  plan: RoofPlan,
  { frames }: RoofForm,
  [plane]: readonly RoofPlane[],
): readonly Timber[] => {
  const [{ ledger }] = frames;
  if (!ledger || !plane) return [];
  const top = topHeightOf(plane);
  const from: Vec2 = [0, -ledger.thickness / 2];
  return [
    board(
      'ledger',
      { from, line: { from, way: [1, 0] } },
      { along: [0, plan.length], up: [top - ledger.depth, top], thickness: ledger.thickness },
    ),
  ];
};

/** Between neighbours, plumb over the plate's outer face, beveled to the plane; they stand in the middle of their bay. */
const blocksOn = (plan: RoofPlan, form: RoofForm, { eave, runs }: EaveRow): readonly Timber[] => {
  if (plan.blockStands !== 'plumb') return [];
  const over = heightOver(plan.rafter.depth, eave);
  const { base } = eave.plane;
  const bays = runs.flatMap((run) =>
    clearBays(run, plan.rafter.thickness).map((clear, i) => ({
      clear,
      mid: ((run[i] as number) + (run[i + 1] as number)) / 2,
    })),
  );
  return bays.flatMap(({ clear, mid }, i): readonly Timber[] => {
    const length = clear - plan.blockAllowance;
    if (length <= 0) return [];
    const { up } = eave.plane;
    const line = lineAt(eave, mid);
    return [
      {
        id: `block.${nameIn(form, eave)}.${i + 1}`,
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

/** Under an eave, from corner to corner on the long walls and between them on the ends; a wing's comes to the main wall. */
const plateUnder = (plan: RoofPlan, form: RoofForm, eave: Eave): Timber => {
  const { plane, clad } = eave;
  const { foot, up, base } = plane;
  const { width } = plan.plate;
  const in2 = clad + width / 2;
  const along = alongPlate(plan, form, eave);
  const isEnd = up[1] === 0;
  const origin: Vec2 = isEnd ? [foot[0] + up[0] * in2, 0] : [0, foot[1] + up[1] * in2];
  return board(
    `plate.${nameIn(form, eave)}`,
    { from: origin, line: { from: origin, way: isEnd ? [0, 1] : [1, 0] } },
    { along, up: [base - plateThick, base], thickness: width },
  );
};

const alongPlate = (plan: RoofPlan, form: RoofForm, eave: Eave): Vec2 => {
  const { width } = plan.plate;
  const { wing, body } = frameOf(form, eave.body);
  if (wing) {
    const gable = body.limits.find(({ id }) => id === 'gable');
    const sign = gable && gable.normal[1] < 0 ? -1 : 1;
    const host = form.eaves.find((one) => one.body === wing.host.body && one.plane.up[1] === -sign);
    const wall = host ? host.run - host.clad : 0;
    const ends = [sign * wall, sign * (gable?.reach ?? 0)] as const;
    return [Math.min(...ends), Math.max(...ends)];
  }
  return eave.plane.up[1] === 0 ? [-plan.span / 2 + width, plan.span / 2 - width] : [0, plan.length];
};
