import { blockError, boardTruth, growth } from '../level/asFound';
import { roofOf, stationsOf } from '../level/layout';
import type { CommonRafter } from '../roof/figured';
import { gradient } from '../units/slope';
import { signOf, type Side } from '../roof/side';
import { placeOf, type BlockId, type BoardId, type RafterId } from './ids';
import type { BlockPose, Gaps, Pose, RafterPose } from './pose';
import type { Standing } from './standing';
import type { Placed, RidgeState, SiteState } from './state';
import { figuredX, plateAt, platePose } from './truePlate';

/**
 * Where everything is. Geometry only: the ridge is straight and stiff between its supports, a rafter hangs with its top
 * edge flush with the ridge's and turns about that point until its seat bears or its heel cut is hard against the wall.
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
  const plates = { street: platePose(standing, 'street'), yard: platePose(standing, 'yard') };
  const { ridge, members } = standing.site;
  const rafters: Record<RafterId, RafterPose> = {};
  const blocks: Record<BlockId, BlockPose> = {};
  for (const [id, placed] of Object.entries(members) as [string, Placed][]) {
    if (id.startsWith('rafter.') && ridge)
      rafters[id as RafterId] = rafterPose(standing, id as RafterId, plates);
    if (id.startsWith('block.')) blocks[id as BlockId] = blockPose(standing, id as BlockId, placed);
  }
  return { plates, ridge: ridge && ridgePose(standing, ridge), rafters, blocks };
};

/** Ridge ends with the length it was cut to. Height above (+) or below the figured top is at the gables. */
const ridgePose = ({ level }: Standing, ridge: RidgeState): NonNullable<Pose['ridge']> => {
  const top = figuredTop(level);
  return {
    A: { x: 0, y: ridge.aside.A, z: top + ridge.high.A },
    B: { x: level.plan.length, y: ridge.aside.B, z: top + ridge.high.B },
  };
};

/** Figured height of the ridge's top edge above the plates. */
export const figuredTop = (level: Standing['level']): number => roofOf(level).ridges[0]?.topHeight ?? 0;

/** How high above figured, and how far to the yard of centre, the ridge is at x. */
export const ridgeAt = (
  ridge: RidgeState,
  share: number,
): { readonly high: number; readonly aside: number } => ({
  high: ridge.high.A + (ridge.high.B - ridge.high.A) * share,
  aside: ridge.aside.A + (ridge.aside.B - ridge.aside.A) * share,
});

const rafterPose = (standing: Standing, id: RafterId, plates: Pose['plates']): RafterPose => {
  const { level, site } = standing;
  const placed = site.members[id] as Placed;
  const { side, station } = placeOf(id) as { side: Side; station: number };
  const board = (placed.board ?? 'board.1') as BoardId;
  const plate = plateAt(plates[side], placed.x);
  const at = ridgeAt(site.ridge as RidgeState, placed.x / level.plan.length);
  const face = signOf(side) * at.aside + level.plan.ridge.thickness / 2;
  const cut = cutRafter(standing, board);
  const hung = hang(cut, { level: plate.out - face, height: figuredTop(level) + at.high - plate.z });
  return {
    side,
    station,
    board,
    x: { heel: placed.x, ridge: site.marks.ridge?.[station - 1] ?? placed.x },
    top: { out: face + hung.apart, z: figuredTop(level) + at.high },
    heel: { out: plate.out + hung.gaps.heelCut, z: plate.z + cut.overPlate + hung.gaps.seat },
    depth: level.plan.rafter.depth,
    crown: boardTruth(standing, board).crown,
    gaps: hung.gaps,
  };
};

/** One rafter as really cut: level and plumb distance from heel to plumb cut, top edge over its seat, how its plumb cut stands. */
type CutRafter = {
  readonly out: number;
  readonly up: number;
  readonly overPlate: number;
  readonly open: number;
  readonly plumb: number;
  readonly m: number;
};

const cutRafter = (standing: Standing, board: BoardId): CutRafter => {
  const { level, site } = standing;
  const common = roofOf(level).commonRafters[0] as CommonRafter;
  const m = gradient(level.plan.slope);
  const g = Math.sqrt(1 + m * m);
  const truth = boardTruth(standing, board);
  const trims = site.trims[board] ?? {};
  const body = common.bodyLength + truth.long - (trims.plumb ?? 0);
  const wedge = trims.wedge ?? 0;
  return {
    out: body / g - Math.max(0, wedge),
    up: (body * m) / g,
    overPlate: common.heightAbovePlate - (trims.seat ?? 0),
    open: truth.open - wedge,
    plumb: common.plumbCutLength,
    m,
  };
};

/** Turns the rafter about its flush top until the heel stops it. `apart` is how far its plumb cut falls short of the ridge. */
const hang = (
  cut: CutRafter,
  room: { readonly level: number; readonly height: number },
): { readonly gaps: Gaps; readonly apart: number } => {
  const off = cut.out - room.level;
  const over = room.height - cut.overPlate - cut.up;
  const drop = over < 0 ? over : Math.min(over, Math.max(0, off) / cut.m);
  const heel = off - cut.m * drop;
  const apart = Math.max(0, -heel);
  const lean = cut.open - (drop / cut.out) * cut.plumb;
  return {
    apart,
    gaps: {
      seat: over - drop,
      heelCut: Math.max(0, heel),
      plumbTop: apart + Math.max(0, -lean),
      plumbBottom: apart + Math.max(0, lean),
    },
  };
};

const blockPose = (standing: Standing, id: BlockId, placed: Placed): BlockPose => {
  const { side, station } = placeOf(id) as { side: Side; station: number };
  const x1 = placed.x + blockLength(standing, id);
  const far = standing.site.members[`rafter.${side}.${station + 1}`];
  const face = far ? far.x - thickness(standing) / 2 : x1;
  return { side, bay: station, x0: placed.x, x1, gap: Math.max(0, face - x1) };
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

/** Number of the last station. */
export const lastStation = ({ level }: Pick<Standing, 'level'>): number => stationsOf(level).length;
