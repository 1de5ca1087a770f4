import { ridgeTruth } from '../level/asFound';
import { boardTruth } from '../level/boardTruth';
import { uniform } from '../level/draw';
import { againstWall, postPlaces, roofOf, sidesOf, stationsOf } from '../level/layout';
import type { Level } from '../level/level';
import { wallBraceSpacing } from '../mechanics/fasteners';
import type { Fastening, Gable, GableRafter, GableShape, PlateSpot, Support } from '../mechanics/gable';
import { gableFrame } from '../mechanics/gableFrame';
import type { GableParts } from '../mechanics/gableParts';
import { settle, type Settled } from '../mechanics/settle';
import type { CommonRafter } from '../roof/figured';
import { ends, type End, type Side } from '../roof/side';
import { lowGrade, woodOf } from '../stock/wood';
import { gradient } from '../units/slope';
import { beyondLock, fastened, pairHolds } from './holding';
import { wallHolds } from './framedHolds';
import { keptFrames } from './keptFrames';
import { blocksOf, bracesOf, nailsOf, strapsOf, tiesOf, type NailsIn } from './framedHolds';
import { ledgerJoint, placeOf, type BoardId, type JointId, type RafterId } from './ids';
import { cutRafter } from './hung';
import { offLine } from './planPosts';
import { ownLie, tipped } from './ridgeLies';
import type { Standing } from './standing';
import type { PlatePose } from './pose';
import type { Placed, RidgeState, SiteState } from './state';
import { plateAt, platePose } from './truePlate';

/** The site as a frame: what is fastened, what carries and steadies it, and where it comes to rest. */
export type Framed = { readonly gable: Gable; readonly parts: GableParts; readonly settled: Settled };

/** Undefined as long as no rafter is fastened: until then everything is where hands and posts hold it. */
export const framed = (standing: Standing): Framed | undefined => {
  const { site } = standing;
  if (!site.ridge || !anyFastened(site)) return undefined;
  return solvedOnce(standing);
};

const solved = (gable: Gable): Framed => {
  const parts = gableFrame(gable);
  return { gable, parts, settled: settle(parts.frame) };
};

const rafterIds = (site: SiteState): readonly RafterId[] =>
  Object.keys(site.members).filter((id): id is RafterId => id.startsWith('rafter.'));

const anyFastened = (site: SiteState): boolean => rafterIds(site).some((id) => inFrame(site, id));

/** A rafter that nothing fastens is held by hand, and is not in the frame. */
export const inFrame = (site: SiteState, id: RafterId): boolean =>
  fastened(site, `ridge:${id}`) || fastened(site, `heel:${id}`);

/**
 * What stands, as a gable. Every rafter is taken to stand at its figured station: one that stands off its mark by an inch
 * weighs on the ridge as if it did not.
 */
const gableOf = (standing: Standing): Gable => {
  const { level, seed, site } = standing;
  const nails = nailsOf(standing);
  return {
    shape: shapeOf(level),
    stations: stationsOf(level),
    ridge: ridgeTruth(standing),
    plates: { street: spotsOf(standing, 'street'), yard: spotsOf(standing, 'yard') },
    ...(againstWall(level) && { wall: wallHolds(standing) }),
    walls: {
      braces: { street: wallBraces(standing, 'street'), yard: wallBraces(standing, 'yard') },
      corners: ends.filter((end) => site.members[`brace.wall.${end}`] !== undefined),
    },
    rafters: rafterIds(site)
      .filter((id) => inFrame(site, id))
      .map((id) => rafterOf(standing, id, nails)),
    supports: supportsOf(standing),
    ties: tiesOf(standing, nails),
    braces: bracesOf(standing),
    blocks: blocksOf(standing, nails),
    straps: strapsOf(standing, nails),
    lean: uniform(seed, 'walls', 'lean') < 0.5 ? 1 : -1,
  };
};

const solvedOnce = keptFrames({ gableOf, solve: solved, linksIn: ({ parts }) => parts.frame.links.length });

const shapeOf = (level: Level): GableShape => {
  const known = shapes.get(level);
  if (known) return known;
  const { plan } = level;
  const common = roofOf(level).commonRafters[0] as CommonRafter;
  const shape: GableShape = {
    run: plan.span / 2,
    m: gradient(plan.slope),
    seat: common.seat,
    overhang: plan.overhang,
    heightAbovePlate: common.heightAbovePlate,
    topHeight: roofOf(level).ridges[0]?.topHeight ?? 0,
    rafter: plan.rafter,
    ridge: plan.ridge,
    rafterWood: woodOf(plan.rafter),
    ridgeWood: woodOf(plan.ridge),
  };
  shapes.set(level, shape);
  return shape;
};
const shapes = new WeakMap<Level, GableShape>();

const spotsOf = (standing: Standing, side: Side): readonly PlateSpot[] => {
  if (!sidesOf(standing.level).includes(side)) return [];
  const plate = platePose(standing, side);
  const known = spots.get(plate);
  if (known) return known;
  const made = stationsOf(standing.level).map((x): PlateSpot => {
    const { z, out } = plateAt(plate, x);
    return { up: z, out: out - standing.level.plan.span / 2 };
  });
  spots.set(plate, made);
  return made;
};
const spots = new WeakMap<PlatePose, readonly PlateSpot[]>();

/** A plate as built at one station, counted from 1. */
export const spotAt = (standing: Standing, side: Side, station: number): PlateSpot =>
  spotsOf(standing, side)[station - 1] ?? { up: 0, out: 0 };

const wallBraces = ({ level, site }: Standing, side: Side): readonly number[] => {
  if (!site.members[`brace.wall.${side}`]) return [];
  const count = Math.max(1, Math.ceil(level.plan.length / wallBraceSpacing) - 1);
  return Array.from({ length: count }, (_, i) => ((i + 1) * level.plan.length) / (count + 1));
};

/** The same rafter as last time while nothing that it is made of has changed. */
const rafterOf = (standing: Standing, id: RafterId, nails: NailsIn): GableRafter => {
  const { level, seed, site } = standing;
  const placed = site.members[id] as Placed;
  const [ridge, heel] = [`ridge:${id}`, `heel:${id}`] as const;
  const [above, below] = [nails(ridge), nails(heel)];
  const of = [
    level,
    seed,
    site.joints[ridge],
    site.joints[heel],
    site.rests[ridge],
    site.rests[heel],
    site.trims[placed.board ?? 'board.1'],
    // In a stick that is split nails count in part.
    above.nails,
    above.tacks,
    below.nails,
    below.tacks,
  ];
  const last = rafters.get(placed);
  if (last && of.every((one, i) => one === last.of[i])) return last.rafter;
  const rafter = rafterAnew(standing, id, nails);
  rafters.set(placed, { of, rafter });
  return rafter;
};
const rafters = new WeakMap<Placed, { readonly of: readonly unknown[]; readonly rafter: GableRafter }>();

const rafterAnew = (standing: Standing, id: RafterId, nails: NailsIn): GableRafter => {
  const { side, station } = placeOf(id) as { side: Side; station: number };
  const board = (standing.site.members[id]?.board ?? 'board.1') as BoardId;
  const cut = cutRafter(standing, board);
  return {
    name: id,
    side,
    station: station - 1,
    top: fasteningOf(standing.site, `ridge:${id}`, nails),
    heel: fasteningOf(standing.site, `heel:${id}`, nails),
    long: cut.long,
    open: cut.open,
    deep: cut.deep,
    seatOpen: cut.seatOpen,
    eased: cut.eased,
    ...ownShape(standing, board),
  };
};

/** Twist and wood of a board as it was found. Its crown turns neither end: the cuts were marked true to the line of its ends. */
const ownShape = (standing: Standing, board: BoardId): Pick<GableRafter, 'twist' | 'wood'> => {
  const { twist, fault } = boardTruth(standing, board);
  const turned = twist / standing.level.plan.rafter.depth;
  return { twist: turned, ...(fault === 'lowGrade' ? { wood: lowGrade } : {}) };
};

const fasteningOf = (site: SiteState, joint: JointId, nails: NailsIn): Fastening => {
  const rest = site.rests[joint];
  return { joint, ...nails(joint), ...(rest ? { rest } : {}) };
};

/** Between the two ends, as far along as x. */
const between = (at: Readonly<Record<End, number>>, x: number, length: number): number =>
  at.A + ((at.B - at.A) * x) / length;

const supportsOf = (standing: Standing): readonly Support[] => {
  const { level, site } = standing;
  const ridge = site.ridge as RidgeState;
  const { length } = level.plan;
  // A ridge that is bowed by itself is carried and steadied where it lies: nobody forces it onto its posts.
  const at = (x: number): Pick<Support, 'x' | 'high' | 'aside'> => {
    const { up, over } = ownLie(standing, x / length);
    return { x, high: between(ridge.high, x, length) + up, aside: between(ridge.aside, x, length) + over };
  };
  const posts = postPlaces(level).flatMap((x, i): readonly Support[] => {
    const name = `post.${i + 1}` as const;
    const post = site.members[name];
    return post ? [onPost(standing, { name, kind: 'post', fixed: post.how === 'both', ...at(x) })] : [];
  });
  const hung = site.sling !== undefined && ridge.on === 'machine';
  const slings = hung
    ? [length / 4, (3 * length) / 4].map((x, i): Support => ({
        name: `sling.${i + 1}`,
        kind: 'sling',
        fixed: false,
        ...at(x),
      }))
    : [];
  return [...posts, ...slings, ...handsOn(standing, at), ...handsAtMiddle(standing, at)];
};

/** One of the plan's posts goes down to the ground, and its head is where it was cut to, not where the ridge would like it. */
const onPost = (standing: Standing, post: Support): Support => {
  const { posts } = standing.level.plan;
  if (!posts) return underTips(standing, post);
  return { ...post, below: posts.below, high: (post.high ?? 0) + offLine(standing, post.x) };
};

/** A ridge that was laid on its props has its ends at their height: its props stand as much lower as those tip up. */
const underTips = ({ level, site }: Standing, prop: Support): Support => {
  if (site.ridge?.on !== 'posts') return prop;
  return { ...prop, high: (prop.high ?? 0) - between(tipped(level), prop.x, level.plan.length) };
};

/**
 * People hold an end of a ridge by hand until its pair is fastened, and steady both ends until it is braced along or they
 * turn to stacking. They carry it only where it was lifted by hand and nothing else stands under it.
 */
const handsOn = (
  standing: Standing,
  at: (x: number) => Pick<Support, 'x' | 'high' | 'aside'>,
): readonly Support[] => {
  const { level, site } = standing;
  const stations = stationsOf(level);
  const steadied = !againstWall(level) && !site.members['brace.along.1'] && !stacking(standing);
  return ends.flatMap((end): readonly Support[] => {
    const station = end === 'A' ? 1 : stations.length;
    const open = !heldThere(standing, station);
    if (!open && !steadied) return [];
    const place = at(stations[station - 1] as number);
    const carries = open && site.ridge?.on === 'hands' && !site.members['post.1'];
    const high = carries ? place.high : undefined;
    return [{ name: `hands.${end}`, kind: 'hands', fixed: false, ...place, high }];
  });
};

/** By a pair of rafters, or by the wall behind a ledger. */
const heldThere = (standing: Standing, station: number): boolean =>
  againstWall(standing.level)
    ? fastened(standing.site, ledgerJoint(station))
    : pairHolds(standing, station, 'fastened');

const stacking = ({ level, site }: Standing): boolean => rafterIds(site).some((id) => beyondLock(level, id));

/** Somebody holds the middle where it was pushed to. */
const handsAtMiddle = (
  { site, level }: Standing,
  at: (x: number) => Pick<Support, 'x' | 'aside'>,
): readonly Support[] => {
  if (site.ridge?.pushed === undefined || site.ridge.eased) return [];
  return [{ ...at(level.plan.length / 2), name: 'hands.mid', kind: 'hands', fixed: false, high: undefined }];
};
