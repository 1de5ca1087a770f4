import { ridgeTruth } from '../level/asFound';
import { boardTruth } from '../level/boardTruth';
import { uniform } from '../level/draw';
import { middleStations, postX, roofOf, stationsOf } from '../level/layout';
import type { Level } from '../level/level';
import { wallBraceSpacing } from '../mechanics/fasteners';
import type {
  Fastening,
  Gable,
  GableBrace,
  GableRafter,
  GableShape,
  GableTie,
  PlateSpot,
  Support,
} from '../mechanics/gable';
import { gableFrame } from '../mechanics/gableFrame';
import type { GableParts } from '../mechanics/gableParts';
import { settle, type Settled } from '../mechanics/settle';
import type { CommonRafter } from '../roof/figured';
import { ends, sides, type End, type Side } from '../roof/side';
import { lowGrade, woodOf } from '../stock/wood';
import { gradient } from '../units/slope';
import { fastened, pairHolds } from './holding';
import { placeOf, rafterId, type BoardId, type JointId, type RafterId } from './ids';
import { cutRafter } from './hung';
import type { Standing } from './standing';
import type { Placed, RidgeState, SiteState } from './state';
import { plateAt, platePose } from './truePlate';

/** The site as a frame: what is fastened, what carries and steadies it, and where it comes to rest. */
export type Framed = { readonly gable: Gable; readonly parts: GableParts; readonly settled: Settled };

/** Undefined as long as no rafter is fastened: until then everything is where hands and posts hold it. */
export const framed = (standing: Standing): Framed | undefined => {
  const { site } = standing;
  if (!site.ridge || !anyFastened(site)) return undefined;
  const near = bySite.get(site);
  if (near?.level === standing.level && near.seed === standing.seed) return near.frame;
  const frame = solved(standing);
  bySite.set(site, { level: standing.level, seed: standing.seed, frame });
  return frame;
};
const bySite = new WeakMap<SiteState, { level: Level; seed: number; frame: Framed }>();

/** Frames are kept by what they are made of, so that asking before the deed and doing it cost one solution. */
const solved = (standing: Standing): Framed => {
  const key = keyOf(standing);
  const known = byMakeUp.get(key);
  if (known) return known;
  const gable = gableOf(standing);
  const parts = gableFrame(gable);
  const fresh = { gable, parts, settled: settle(parts.frame) };
  if (byMakeUp.size >= mostKept) byMakeUp.clear();
  byMakeUp.set(key, fresh);
  return fresh;
};
const byMakeUp = new Map<string, Framed>();
const mostKept = 64;
const levels = new WeakMap<Level, number>();
let levelsSeen = 0;

const keyOf = ({ level, seed, site }: Standing): string => {
  const known = levels.get(level) ?? ++levelsSeen;
  levels.set(level, known);
  const parts: string[] = [`${known}|${seed}`];
  for (const [id, placed] of Object.entries(site.members)) {
    if (placed && carries(id))
      parts.push(`${id} ${placed.board ?? ''} ${placed.how ?? ''} ${placed.off ?? ''}`);
  }
  for (const [joint, so] of Object.entries(site.joints))
    if (so && carries(joint)) parts.push(`${joint} ${so.nails} ${so.tacks}`);
  const { rests, ridge, mends, trims, sling } = site;
  parts.push(JSON.stringify([rests, ridge, mends, trims, sling !== undefined]));
  return parts.join('|');
};

/** Blocks and straps are not part of the frame. */
export const carries = (id: string): boolean => !id.includes('block') && !id.includes('strap');

const rafterIds = (site: SiteState): readonly RafterId[] =>
  Object.keys(site.members).filter((id): id is RafterId => id.startsWith('rafter.'));

const anyFastened = (site: SiteState): boolean => rafterIds(site).some((id) => inFrame(site, id));

/** A rafter that nothing fastens is held by hand, and is not in the frame. */
export const inFrame = (site: SiteState, id: RafterId): boolean =>
  fastened(site, `ridge:${id}`) || fastened(site, `heel:${id}`);

const gableOf = (standing: Standing): Gable => {
  const { level, seed, site } = standing;
  return {
    shape: shapeOf(level),
    stations: stationsOf(level),
    ridge: ridgeTruth(standing),
    plates: { street: spotsOf(standing, 'street'), yard: spotsOf(standing, 'yard') },
    walls: {
      braces: { street: wallBraces(standing, 'street'), yard: wallBraces(standing, 'yard') },
      corners: ends.filter((end) => site.members[`brace.wall.${end}`] !== undefined),
    },
    rafters: rafterIds(site)
      .filter((id) => inFrame(site, id))
      .map((id) => rafterOf(standing, id)),
    supports: supportsOf(standing),
    ties: tiesOf(standing),
    braces: bracesOf(standing),
    lean: uniform(seed, 'walls', 'lean') < 0.5 ? 1 : -1,
  };
};

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
  const plate = platePose(standing, side);
  return stationsOf(standing.level).map((x) => {
    const { z, out } = plateAt(plate, x);
    return { up: z, out: out - standing.level.plan.span / 2 };
  });
};

/** A plate as built at one station, counted from 1. */
export const spotAt = (standing: Standing, side: Side, station: number): PlateSpot =>
  spotsOf(standing, side)[station - 1] ?? { up: 0, out: 0 };

const wallBraces = ({ level, site }: Standing, side: Side): readonly number[] => {
  if (!site.members[`brace.wall.${side}`]) return [];
  const count = Math.max(1, Math.ceil(level.plan.length / wallBraceSpacing) - 1);
  return Array.from({ length: count }, (_, i) => ((i + 1) * level.plan.length) / (count + 1));
};

const rafterOf = (standing: Standing, id: RafterId): GableRafter => {
  const { side, station } = placeOf(id) as { side: Side; station: number };
  const board = (standing.site.members[id]?.board ?? 'board.1') as BoardId;
  const cut = cutRafter(standing, board);
  return {
    name: id,
    side,
    station: station - 1,
    top: fasteningOf(standing.site, `ridge:${id}`),
    heel: fasteningOf(standing.site, `heel:${id}`),
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

const fasteningOf = (site: SiteState, joint: JointId): Fastening => {
  const { nails, tacks } = site.joints[joint] ?? { nails: 0, tacks: 0 };
  const rest = site.rests[joint];
  return { joint, nails, tacks, ...(rest ? { rest } : {}) };
};

/** Between the two ends, as far along as x. */
const between = (at: Readonly<Record<End, number>>, x: number, length: number): number =>
  at.A + ((at.B - at.A) * x) / length;

const supportsOf = (standing: Standing): readonly Support[] => {
  const { level, site } = standing;
  const ridge = site.ridge as RidgeState;
  const { length } = level.plan;
  const at = (x: number): Pick<Support, 'x' | 'high' | 'aside'> => ({
    x,
    high: between(ridge.high, x, length),
    aside: between(ridge.aside, x, length),
  });
  const posts = ([1, 2] as const).flatMap((n): readonly Support[] => {
    const post = site.members[`post.${n}`];
    const fixed = post?.how === 'both';
    return post ? [{ name: `post.${n}`, kind: 'post', fixed, ...at(postX(level, n)) }] : [];
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
  return [...posts, ...slings, ...handsOn(standing, at)];
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
  const steadied = !site.members['brace.along.1'] && !stacking(standing);
  return ends.flatMap((end): readonly Support[] => {
    const station = end === 'A' ? 1 : stations.length;
    const open = !pairHolds(site, station, 'fastened');
    if (!open && !steadied) return [];
    const place = at(stations[station - 1] as number);
    const carries = open && site.ridge?.on === 'hands' && !site.members['post.1'];
    const high = carries ? place.high : undefined;
    return [{ name: `hands.${end}`, kind: 'hands', fixed: false, ...place, high }];
  });
};

/** A rafter stands beyond the end pairs and the middle third. */
const stacking = ({ level, site }: Standing): boolean => {
  const first = [1, stationsOf(level).length, ...middleStations(level)];
  return rafterIds(site).some((id) => !first.includes(placeOf(id).station ?? 1));
};

const tiesOf = ({ level, site }: Standing): readonly GableTie[] => {
  const section = level.plan.rafter;
  return (Object.entries(site.members) as [string, Placed][]).flatMap(([id, placed]) => {
    const station = (placeOf(id).station ?? 1) - 1;
    const tie = (kind: GableTie['kind'], name: string, nails: number): readonly GableTie[] => {
      const height = tieHeight(level, kind, placed);
      const rest = site.rests[name]?.[0];
      const so = { name, kind, station, section, height, nails };
      return nails > 0 ? [rest === undefined ? so : { ...so, rest }] : [];
    };
    if (/^(joist|rafterTie|crossTie)\./.test(id))
      return [
        ...tie('plates', id, fewest(site, [`joistPlate:${id}.street`, `joistPlate:${id}.yard`])),
        ...tie('heels', `heels.${station + 1}`, fewest(site, heelTies(station + 1))),
      ];
    if (id.startsWith('collar.'))
      return tie('upper', id, fewest(site, [`collarEnd:${id}.street`, `collarEnd:${id}.yard`]));
    return [];
  });
};

/** Middle of a tie above the plates. */
export const tieHeight = (level: Level, kind: GableTie['kind'], placed: Placed): number => {
  const half = level.plan.rafter.depth / 2;
  const collar = roofOf(level).ties.find((tie) => tie.kind === 'collar')?.height ?? 0;
  return kind === 'upper' ? collar + (placed.off ?? 0) + half : half;
};

const heelTies = (station: number): readonly string[] =>
  sides.map((side) => `heelTie:${rafterId(side, station)}`);

/** Nails in the weaker of some joints, tacks not counted. */
const fewest = (site: SiteState, joints: readonly string[]): number =>
  joints.reduce((least, joint) => Math.min(least, site.joints[joint as JointId]?.nails ?? 0), 9);

const bracesOf = ({ level, site }: Standing): readonly GableBrace[] => {
  const stations = stationsOf(level);
  const { length } = level.plan;
  const brace = (name: string, way: GableBrace['way'], x: number): readonly GableBrace[] => {
    const rest = site.rests[name]?.[0];
    const so = { name, way, x };
    return site.members[name as 'brace.along.1'] ? [rest === undefined ? so : { ...so, rest }] : [];
  };
  return [
    ...brace('brace.across.A', 'across', stations[0] as number),
    ...brace('brace.across.B', 'across', stations[stations.length - 1] as number),
    ...brace('brace.along.1', 'along', length / 2),
  ];
};
