import type { Vec2 } from '../geometry/vector';
import { hair } from '../units/hair';
import { deckOf, type Edge } from './edges';
import { frameOf, scenesOf, type RoofForm } from './form';
import { framingOf, type Framing } from './framing';
import { expand } from './expand';
import { headersOn, type Header } from './headers';
import { heelOf, openingAt, tillOf, woodOf } from './hips';
import { jacksOf, type Jack, type Meet } from './jacks';
import { lineAt, startsAtEave, type Piece } from './pieces';
import type { RoofPlan } from './plan';
import { commonsOf, isCommon, shorteningAt, type RoofPlane } from './planes';
import { dot2, type Body } from './surface';

/** A framing whose pieces each end at one line at either end, with those that come to where several meet set apart. */
export type Settled = Framing & { readonly inPlace: readonly Piece[] };

export const settledFraming = (plan: RoofPlan): Settled => {
  const framing = framingOf(expand(plan));
  if (framing.form.frames.every(({ wing, header }) => wing === undefined && header === undefined))
    return { ...framing, inPlace: [] };
  const scenes = scenesOf(framing.form);
  const sceneOf = (body: Body): number => scenes.findIndex((scene) => scene.includes(body));
  const strips = [
    ...framing.edges.flatMap((edge) =>
      stripOf(framing.form, edge).map((strip) => ({ strip, scene: sceneOf(edge.planes[1].body) })),
    ),
    ...headersOn(framing, commonsOf(framing, plan)).map((header) => ({
      strip: headerStrip(header),
      scene: sceneOf(header.eave.body),
    })),
    ...openingStrips(plan, framing.form).map((strip) => ({ strip, scene: 0 })),
  ];
  const isInPlace = ({ piece, outline }: Outlined): boolean => {
    if (isTrimmer(framing.form, piece)) return false;
    const here = sceneOf(piece.eave.body);
    return strips.some(({ strip, scene }) => scene === here && overlap(outline, strip));
  };
  const inPlace = new Set(
    outlines(plan, framing)
      .filter(isInPlace)
      .map(({ piece }) => piece),
  );
  return { ...framing, pieces: framing.pieces.filter((piece) => !inPlace.has(piece)), inPlace: [...inPlace] };
};

/** Corners of a member seen from above, in order. */
type Outline = readonly [Vec2, Vec2, Vec2, Vec2];

/** A ridge, hip or valley seen from above. A wing's ridge that hangs from the host's is as long as the host is wide. */
const stripOf = (form: RoofForm, edge: Edge): readonly Outline[] => {
  const { from, line, run } = edge;
  if (edge.kind === 'sleeper') return wallLine(form, edge);
  const frame = frameOf(form, edge.planes[0].body);
  const wood = edge.kind === 'ridge' ? frame.ridge : woodOf(form, edge);
  if (!wood) return [];
  const hung = edge.kind === 'ridge' && frame.wing?.framing === 'suspendedRidge' ? frame.wing.host.span : 0;
  const half = wood.thickness / 2;
  const [x, y] = line.way;
  const at = (along: number, out: number): Vec2 => [
    from[0] + x * along - y * out,
    from[1] + y * along + x * out,
  ];
  const before = edge.kind === 'valley' && !openingAt(form, edge) ? heelOf(edge, wood.thickness) : hung;
  if (edge.kind === 'hip') {
    const till = tillOf(edge);
    // One that goes on to the ridge has its own jacks alone.
    if (!till || !frame.header) return [];
    const face = till.reach - frame.header.thickness;
    const to = (out: number): number => (face - dot2(till.normal, at(0, out))) / dot2(till.normal, [x, y]);
    return [[at(0, half), at(to(half), half), at(to(-half), -half), at(0, -half)]];
  }
  return [[at(-before, half), at(run + hung, half), at(run + hung, -half), at(-before, -half)]];
};

/** Where sheathing ends over the wall: what straddles it stands half on a sleeper and half on a plate. */
const wallLine = (form: RoofForm, edge: Edge): readonly Outline[] => {
  const deck = deckOf(form, edge);
  if (!deck) return [];
  const { up } = deck.plane;
  const [long, thin] = [2 * edge.run, 2 * hair];
  const at = (along: number, out: number): Vec2 => [
    edge.from[0] - up[1] * along + up[0] * out,
    edge.from[1] + up[0] * along + up[1] * out,
  ];
  return [[at(-long, thin), at(long, thin), at(long, -thin), at(-long, -thin)]];
};

const headerStrip = ({ eave: { plane }, wood, end }: Header): Outline => {
  const { up, till } = plane;
  const at = (u: number, v: number): Vec2 => [up[0] * u - up[1] * v, up[1] * u + up[0] * v];
  const [back, front] = [till?.reach ?? 0, (till?.reach ?? 0) - wood.thickness];
  return [at(front, end), at(back, end), at(back, -end), at(front, -end)];
};

/** A trimmer of a gable dormer: its valleys and headers are cut to it. */
const isTrimmer = ({ frames }: RoofForm, { eave, at }: Piece): boolean =>
  frames.some(
    ({ wing }) =>
      wing?.opening?.plan.side === eave.side &&
      wing.host.body === eave.body &&
      wing.opening.trimmers.includes(at),
  );

/** Headers and trimmers of gable dormers, these from where a rafter that stands on a side plate would come down into them. */
const openingStrips = ({ rafter }: RoofPlan, { frames, eaves }: RoofForm): readonly Outline[] =>
  frames.flatMap(({ wing }) => {
    const opening = wing?.opening;
    const host = eaves.find(({ body, side }) => body === wing?.host.body && side === opening?.plan.side);
    if (!opening || !host) return [];
    const { faces, meet, front, plates, plan } = opening;
    const wide = 2 * rafter.thickness;
    const at = (x: number, inFrom: number): Vec2 => [x, host.plane.foot[1] + host.plane.up[1] * inFrom];
    const strip = (x: readonly [number, number], y: readonly [number, number]): Outline => [
      at(x[0], y[0]),
      at(x[1], y[0]),
      at(x[1], y[1]),
      at(x[0], y[1]),
    ];
    const { thickness } = plan.header;
    const along = [plates ?? front, meet] as const;
    return [
      strip([faces[0] - wide, faces[0]], along),
      strip([faces[1], faces[1] + wide], along),
      strip(faces, [meet - thickness / 2, meet + 1.5 * thickness]),
      ...(plates === undefined ? [strip(faces, [front, front + 2 * thickness])] : []),
    ];
  });

type Outlined = { readonly piece: Piece; readonly outline: Outline };

const outlines = (plan: RoofPlan, framing: Framing): readonly Outlined[] => [
  ...jacksOf(plan, framing).map((jack) => ({
    piece: jack.piece,
    outline: outlineOf(plan, framing.form, jack),
  })),
  ...framing.pieces.filter(isCommon).map((piece) => {
    const shortening = shorteningAt(plan, framing.form, { eave: piece.eave, piece });
    const run = piece.to - piece.from;
    return { piece, outline: outlineOf(plan, framing.form, { piece, run, shortening }) };
  }),
];

/** Without its tail. */
const outlineOf = (
  { rafter }: RoofPlan,
  form: RoofForm,
  { piece, bottom, top, shortening }: Jack,
): Outline => {
  const { from } = lineAt(piece.eave, piece.at);
  const { up } = piece.eave.plane;
  const half = rafter.thickness / 2;
  const side = (out: number): readonly [Vec2, Vec2] => {
    const start: Vec2 = [from[0] - up[1] * out, from[1] + up[0] * out];
    const low = bottom ? faceAlong(form, { start, up, meet: bottom, above: true }) : piece.from;
    const high = top ? faceAlong(form, { start, up, meet: top, above: false }) : piece.to - shortening;
    return [
      [start[0] + up[0] * low, start[1] + up[1] * low],
      [start[0] + up[0] * high, start[1] + up[1] * high],
    ];
  };
  const [a, b] = side(half);
  const [d, c] = side(-half);
  return [a, b, c, d];
};

type Side = { readonly start: Vec2; readonly up: Vec2; readonly meet: Meet; readonly above: boolean };

/** How far up one side of a rafter the upper or lower face of a hip or valley is. */
const faceAlong = (form: RoofForm, { start, up, meet: { edge }, above }: Side): number => {
  const { way } = edge.line;
  const across: Vec2 = [-way[1], way[0]];
  const normal: Vec2 = dot2(across, up) > 0 ? across : [way[1], -way[0]];
  const half = (woodOf(form, edge)?.thickness ?? 0) / 2;
  const reach = dot2(normal, edge.from) + (above ? half : -half);
  return (reach - dot2(normal, start)) / dot2(normal, up);
};

/** Whether two convex outlines share more than an edge: no side of either has the other wholly beyond it. */
const overlap = (a: Outline, b: Outline): boolean => !parts(a, b) && !parts(b, a);

const parts = (a: Outline, b: Outline): boolean =>
  a.some((corner, i) => {
    const next = a[(i + 1) % 4] ?? corner;
    const out: Vec2 = [next[1] - corner[1], corner[0] - next[0]];
    const size = Math.sqrt(dot2(out, out));
    if (size < hair) return false;
    const far = (points: Outline, sign: 1 | -1): number =>
      Math.max(...points.map((p) => (sign * dot2(out, p)) / size));
    return -far(b, -1) > far(a, 1) - hair || -far(a, -1) > far(b, 1) - hair;
  });

/** Valleys beside whose foot a rafter stands so near that its tail ends against them. */
export const atTail = ({ form, edges }: Framing, piece: Piece): readonly Edge[] => {
  if (!startsAtEave(piece)) return [];
  const { overhang, plane } = piece.eave;
  const [x, y] = lineAt(piece.eave, piece.at).from;
  const along: Vec2 = [-plane.up[1], plane.up[0]];
  return edges.filter((edge) => {
    if (edge.kind !== 'valley' || !edge.planes.some((of) => of.plane === plane)) return false;
    // Those of a dormer end at its trimmers.
    if (openingAt(form, edge)) return false;
    const off = dot2(along, [x - edge.from[0], y - edge.from[1]]);
    const [aside, up] = [dot2(along, edge.line.way), dot2(plane.up, edge.line.way)];
    const wide = (woodOf(form, edge)?.thickness ?? 0) / up;
    return off * aside < 0 && (Math.abs(off) - wide) * up < (overhang + wide) * Math.abs(aside);
  });
};

export const planesOf = (plan: RoofPlan): readonly RoofPlane[] => commonsOf(settledFraming(plan), plan);
