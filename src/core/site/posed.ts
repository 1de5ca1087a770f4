import { blockError, growth } from '../level/asFound';
import { boardTruth } from '../level/boardTruth';
import { roofOf } from '../level/layout';
import { pointMoves, valueOf, type Link, type Node } from '../mechanics/frame';
import type { FaceName, RafterParts } from '../mechanics/gableParts';
import { signOf, type End, type Side } from '../roof/side';
import { fallenFrom } from './fallen';
import { framed, type Framed } from './framed';
import { boardDepth, cutRafter, hang, type Hung } from './hung';
import { placeOf, type BlockId, type BoardId, type RafterId } from './ids';
import { ownLie } from './ridgeLies';
import type { BlockPose, Gaps, Place, PlatePose, Pose, RafterPose } from './pose';
import { tailPast } from './tailLong';
import type { Standing } from './standing';
import type { Placed, RidgeState, SiteState } from './state';
import { figuredX, plateAt, platePose } from './truePlate';

/**
 * Where everything is. What is fastened is where the frame comes to rest; a rafter that nothing fastens hangs with its top
 * edge flush with the ridge's, by hand; a ridge that no rafter holds lies where it was put.
 */
export const pose = (standing: Standing): Pose => {
  const known = cache.get(standing.site);
  if (known && known.seed === standing.seed && known.level === standing.level) return known.pose;
  const fresh = posed(standing);
  cache.set(standing.site, { seed: standing.seed, level: standing.level, pose: fresh });
  return fresh;
};
const cache = new WeakMap<
  SiteState,
  { readonly seed: number; readonly level: Standing['level']; readonly pose: Pose }
>();

const posed = (standing: Standing): Pose => {
  const { down } = standing.site;
  if (down === undefined) return stood(standing, framed(standing));
  return { ...stood(standing, undefined), fallen: fallenFrom(framed(standing), down) };
};

/** The frame that holds things where they are; none once it came down. */
const standingFrame = (standing: Standing): Framed | undefined =>
  standing.site.down === undefined ? framed(standing) : undefined;

const stood = (standing: Standing, frame: Framed | undefined): Pose => {
  const { ridge, members } = standing.site;
  const plates = platesOf(standing, frame);
  const rafters: Record<RafterId, RafterPose> = {};
  const blocks: Record<BlockId, BlockPose> = {};
  for (const [id, placed] of Object.entries(members) as [string, Placed][]) {
    if (id.startsWith('rafter.') && ridge)
      rafters[id as RafterId] = rafterPose(standing, id as RafterId, { frame, plates });
    if (id.startsWith('block.')) blocks[id as BlockId] = blockPose(standing, id as BlockId, placed);
  }
  return { plates, ridge: ridge && ridgePose(standing, frame), rafters, blocks };
};

const platesOf = (standing: Standing, frame: Framed | undefined): Pose['plates'] => ({
  street: platesAt(standing, frame, 'street'),
  yard: platesAt(standing, frame, 'yard'),
});

/** A plate as built, and as far as the frame has moved it. */
const platesAt = (standing: Standing, frame: Framed | undefined, side: Side): PlatePose => {
  const built = platePose(standing, side);
  const nodes = frame?.parts.plates[side] ?? [];
  if (!frame || nodes.length === 0) return built;
  const last = nodes.length - 1;
  const spot = (at: keyof PlatePose, node: number): PlatePose['A'] => {
    const { x, y } = movedAt(frame, nodes[node] as Node);
    return { x: built[at].x + x, y: built[at].y + y, z: built[at].z };
  };
  return { A: spot('A', 0), mid: spot('mid', Math.round(last / 2)), B: spot('B', last) };
};

/** How far a node has moved, or a point fixed to it. */
const movedAt = (
  { settled }: Framed,
  node: Node,
  point = node.at,
): { readonly x: number; readonly y: number; readonly z: number } => {
  const along = (way: Node['at']): number => pointMoves(node, { point, way }, settled.u);
  return { x: along([1, 0, 0]), y: along([0, 1, 0]), z: along([0, 0, 1]) };
};

/** Top edge of the ridge at each end and halfway. Height above (+) or below the figured top is at the gables. */
const ridgePose = (standing: Standing, frame: Framed | undefined): NonNullable<Pose['ridge']> => {
  const { length } = standing.level.plan;
  const place = (x: number): Place => topEdgeAt(standing, frame, x);
  return { A: place(0), mid: place(length / 2), B: place(length) };
};

/** Middle of the ridge's top edge at places along it; none until it is up. */
export const ridgeLine = (standing: Standing, xs: readonly number[]): readonly Place[] => {
  if (!standing.site.ridge) return [];
  const frame = standingFrame(standing);
  return xs.map((x) => topEdgeAt(standing, frame, x));
};

const topEdgeAt = (standing: Standing, frame: Framed | undefined, x: number): Place => {
  const { high, aside, along } = ridgeAt(standing, frame, x);
  return { x: x + along, y: aside, z: figuredTop(standing.level) + high };
};

/** Figured height of the ridge's top edge above the plates. */
export const figuredTop = (level: Standing['level']): number => roofOf(level).ridges[0]?.topHeight ?? 0;

type RidgeOff = { readonly high: number; readonly aside: number; readonly along: number };

/** How high above figured, how far to the yard of centre, and how far toward B the top edge of the ridge is at x. */
const ridgeAt = (standing: Standing, frame: Framed | undefined, x: number): RidgeOff => {
  if (!frame) return ridgeByHand(standing, x);
  const { ridge } = frame.parts;
  const next = Math.max(
    1,
    ridge.findIndex((node, i) => x <= node.at[0] || i === ridge.length - 1),
  );
  const [from, to] = [ridge[next - 1] as Node, ridge[next] as Node];
  const t = (x - from.at[0]) / (to.at[0] - from.at[0]);
  const top = (node: Node) => movedAt(frame, node, [node.at[0], node.at[1], frame.gable.shape.topHeight]);
  const [a, b] = [top(from), top(to)];
  return { high: a.z + (b.z - a.z) * t, aside: a.y + (b.y - a.y) * t, along: a.x + (b.x - a.x) * t };
};

/** Straight between its ends but for how it lies by itself. */
const ridgeByHand = (standing: Standing, x: number): RidgeOff => {
  const { high, aside } = standing.site.ridge as RidgeState;
  const share = x / standing.level.plan.length;
  const { up, over } = ownLie(standing, share);
  return {
    high: high.A + (high.B - high.A) * share + up,
    aside: aside.A + (aside.B - aside.A) * share + over,
    along: 0,
  };
};

type Around = { readonly frame: Framed | undefined; readonly plates: Pose['plates'] };

const rafterPose = (standing: Standing, id: RafterId, around: Around): RafterPose => {
  const { site } = standing;
  const placed = site.members[id] as Placed;
  const { side, station } = placeOf(id) as { side: Side; station: number };
  const board = (placed.board ?? 'board.1') as BoardId;
  const x = { heel: placed.x, ridge: site.marks.ridge?.[station - 1] ?? placed.x };
  const common = {
    side,
    station,
    board,
    depth: boardDepth(standing, board),
    crown: boardTruth(standing, board).crown,
    tail: tailPast(standing, board),
  };
  const settled = around.frame && settledPose(around.frame, id);
  if (settled)
    return { ...common, ...settled, x: { heel: x.heel + settled.x.heel, ridge: x.ridge + settled.x.ridge } };
  return { ...common, x, ...hungPose(standing, id, around) };
};

type Lies = Pick<RafterPose, 'top' | 'heel' | 'gaps'>;

const hungPose = (standing: Standing, id: RafterId, { frame, plates }: Around): Lies => {
  const { site, level } = standing;
  const placed = site.members[id] as Placed;
  const side = placeOf(id).side as Side;
  const plate = plateAt(plates[side], placed.x);
  const at = ridgeAt(standing, frame, placed.x);
  const face = signOf(side) * at.aside + level.plan.ridge.thickness / 2;
  const cut = cutRafter(standing, (placed.board ?? 'board.1') as BoardId);
  const top = figuredTop(level) + at.high;
  const hung = hang(cut, { level: plate.out - face, height: top - plate.z });
  return {
    top: { out: face + hung.apart, z: top },
    heel: { out: plate.out + hung.gaps.heelCut, z: plate.z + cut.overPlate + hung.gaps.seat },
    gaps: hung.gaps,
  };
};

/** What stands open at a rafter's two ends, as `pose` tells it; undefined where there is none up or nothing to hang it from. */
export const gapsAt = (standing: Standing, id: RafterId): Gaps | undefined => {
  const { ridge, members } = standing.site;
  if (!ridge || !members[id]) return undefined;
  const frame = standingFrame(standing);
  const parts = frame?.parts.rafters.get(id);
  if (frame && parts) return gapsOf(frame, parts.faces);
  return hungPose(standing, id, { frame, plates: platesOf(standing, frame) }).gaps;
};

/** How a rafter would lie at its place, held by hand, whatever fastens it now. */
export const hungAt = (standing: Standing, id: RafterId): Hung => {
  const frame = framed(standing);
  const side = placeOf(id).side as Side;
  const { x } = standing.site.members[id] as Placed;
  const still = standing.site.down === undefined ? frame : undefined;
  const { gaps, top } = hungPose(standing, id, { frame, plates: platesOf(standing, still) });
  const face = signOf(side) * ridgeAt(standing, frame, x).aside + standing.level.plan.ridge.thickness / 2;
  return { gaps, apart: top.out - face };
};

/** Top edge of the ridge, as `pose` tells it; undefined until it is up. */
export const ridgeNow = (standing: Standing): Pose['ridge'] =>
  standing.site.ridge && ridgePose(standing, standingFrame(standing));

/** The plates, as `pose` tells them. */
export const platesNow = (standing: Standing): Pose['plates'] => platesOf(standing, standingFrame(standing));

/** How high above figured (+) the ridge's top edge really is at its two ends. */
export const ridgeHigh = (standing: Standing): Readonly<Record<End, number>> | undefined => {
  const ridge = ridgeNow(standing);
  const top = figuredTop(standing.level);
  return ridge && { A: ridge.A.z - top, B: ridge.B.z - top };
};

/** How far to the yard (+) of the centre line the ridge's top edge really is at its two ends. */
export const ridgeAside = (standing: Standing): Readonly<Record<End, number>> | undefined => {
  const ridge = ridgeNow(standing);
  return ridge && { A: ridge.A.y, B: ridge.B.y };
};

/** A fastened rafter where the frame has it. */
const settledPose = (frame: Framed, id: RafterId): (Lies & { readonly x: RafterPose['x'] }) | undefined => {
  const parts = frame.parts.rafters.get(id);
  if (!parts) return undefined;
  const { shape } = frame.gable;
  const { heel, top } = parts;
  const sign = signOf(parts.rafter.side);
  const face = movedAt(frame, top, [top.at[0], top.at[1], shape.topHeight]);
  const outer = movedAt(frame, heel, [heel.at[0], sign * shape.run, shape.heightAbovePlate]);
  return {
    x: { heel: outer.x, ridge: face.x },
    top: { out: shape.ridge.thickness / 2 + sign * face.y, z: shape.topHeight + face.z },
    heel: { out: shape.run + sign * outer.y, z: shape.heightAbovePlate + outer.z },
    gaps: gapsOf(frame, parts.faces),
  };
};

const gapsOf = ({ settled }: Framed, faces: RafterParts['faces']): Gaps => {
  const light = (face: FaceName): number => {
    const { row, rest } = settled.frame.links[faces[face]] as Link;
    return Math.max(0, valueOf(row, settled.u) - rest);
  };
  return {
    seat: Math.max(light('seatOut'), light('seatIn')),
    heelCut: light('heelCut'),
    plumbTop: light('plumbTop'),
    plumbBottom: light('plumbBottom'),
  };
};

const blockPose = (standing: Standing, id: BlockId, placed: Placed): BlockPose => {
  const { side, station } = placeOf(id) as { side: Side; station: number };
  const x1 = placed.x + blockLength(standing, id);
  const far = standing.site.members[`rafter.${side}.${station + 1}`];
  const face = far ? far.x - thickness(standing) / 2 : x1;
  return { side, bay: station, x0: placed.x, x1, gap: Math.max(0, face - x1) };
};

/** How far a block is open at its far end, as `pose` tells it; undefined where it is not up. */
export const blockGap = (standing: Standing, id: BlockId): number | undefined => {
  const placed = standing.site.members[id];
  return placed && blockPose(standing, id, placed).gap;
};

/** What a rafter takes up in the row, nail heads and swelling included. */
export const thickness = (standing: Standing): number =>
  standing.level.plan.rafter.thickness + growth(standing);

/** A block as really cut: the figured length of its bay, its own error, less what was trimmed. */
export const blockLength = (standing: Standing, id: BlockId): number => {
  const { level, site } = standing;
  const bay = placeOf(id).station as number;
  const near = figuredX(standing, bay);
  const clear = figuredX(standing, bay + 1) - near - level.plan.rafter.thickness;
  return clear - level.plan.blockAllowance + blockError(standing, id) - (site.trims[id]?.end ?? 0);
};

/** Clear distance between two neighbouring rafters at the plate; undefined unless both stand. */
export const clearBay = (standing: Standing, side: Side, bay: number): number | undefined => {
  const near = standing.site.members[`rafter.${side}.${bay}`];
  const far = standing.site.members[`rafter.${side}.${bay + 1}`];
  return near && far ? far.x - near.x - thickness(standing) : undefined;
};
