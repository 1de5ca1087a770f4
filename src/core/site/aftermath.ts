import { pointMoves, valueOf, type Link, type Node } from '../mechanics/frame';
import { leastBearing } from '../mechanics/fasteners';
import { blockRow, strapRow } from '../mechanics/gableBlocks';
import { ridgeRow, tieRow } from '../mechanics/gableHolds';
import { backOf } from '../mechanics/gableWall';
import { between, partingsOf } from '../mechanics/partings';
import type { Settled } from '../mechanics/settle';
import type { Vec3 } from '../geometry/vector';
import { signOf, type Side } from '../roof/side';
import { evolve } from './evolve';
import type { SiteEvent } from './event';
import { farthest } from './fallen';
import { framed, spotAt, type Framed } from './framed';
import { metBy, tieHeight } from './framedHolds';
import { beyondLock, carried, middleLocked } from './holding';
import { cutRafter } from './hung';
import {
  blockEndsOf,
  partsOfJoint,
  placeOf,
  type BlockId,
  type BoardId,
  type JointId,
  type MemberId,
  type RafterId,
} from './ids';
import { figuredTop, hungAt, ridgeLine } from './posed';
import type { Standing } from './standing';
import { figuredX } from './truePlate';
import type { SiteState } from './state';

/** Acts that change what is fastened, carried or cut, so that the frame has to come to rest again. */
const weighty: ReadonlySet<SiteEvent['type']> = new Set<SiteEvent['type']>([
  'tacked',
  'nailed',
  'drawn',
  'placed',
  'tieSet',
  'postSet',
  'braced',
  'ridgeLanded',
  'ridgeMoved',
  'ridgePushed',
  'wallMended',
  'swapped',
  'takenOut',
  'hookedOn',
  'unhooked',
]);

const weighs = (event: SiteEvent): boolean => weighty.has(event.type);

type Rests = Readonly<Record<string, readonly number[]>>;

/** Nails that give one after another more often than this bring it down. */
const mostRounds = 8;

/**
 * What follows by itself once an act is done: how what was fastened stood to each other then, which nails give, and
 * whether it comes down. Every number is settled here and kept in the events.
 */
export const aftermath = (before: Standing, events: readonly SiteEvent[]): readonly SiteEvent[] => {
  if (!events.some(weighs)) return [];
  let site = events.reduce(evolve, before.site);
  const told: SiteEvent[] = [];
  const tell = (event: SiteEvent): void => {
    told.push(event);
    site = evolve(site, event);
  };
  const eased = lettingGo({ ...before, site }, events);
  if (eased) tell(eased);
  const rests = {
    ...fastenedNow(before, site, events),
    ...(movedBodily(events) ? handledAgain(before, site) : {}),
  };
  if (Object.keys(rests).length > 0) tell({ type: 'rested', rests });
  for (let round = 0; ; round++) {
    const standing = { ...before, site };
    const frame = framed(standing);
    const why = frame ? fallOf(standing, frame) : carried(standing) ? undefined : 'nothingCarriesTheRidge';
    if (why) return [...told, { type: 'cameDown', why }];
    const given = frame ? givenIn(frame.settled) : {};
    if (Object.keys(given).length === 0) return told;
    if (round >= mostRounds) return [...told, { type: 'cameDown', why: 'downward' }];
    tell({ type: 'slipped', rests: given });
  }
};

/** The ridge or a wall was moved: whatever is only tacked is knocked loose and set again where it comes to lie. */
const movedBodily = (events: readonly SiteEvent[]): boolean =>
  events.some(({ type }) => type === 'ridgeMoved' || type === 'ridgePushed' || type === 'wallMended');

/** Whoever holds the middle of the ridge lets go once a pair locks it, or when the crew turns to stacking. */
const lettingGo = (standing: Standing, events: readonly SiteEvent[]): SiteEvent | undefined => {
  const { ridge } = standing.site;
  if (ridge?.pushed === undefined || ridge.eased) return undefined;
  if (middleLocked(standing)) return { type: 'ridgeEased', locked: true };
  const stacks = events.some((event) => event.type === 'placed' && beyondLock(standing.level, event.member));
  return stacks ? { type: 'ridgeEased', locked: false } : undefined;
};

/** Joints of rafters fastened just now, and ties, braces, blocks and straps, as they stand. */
const fastenedNow = (before: Standing, after: SiteState, events: readonly SiteEvent[]): Rests => {
  const rests: Record<string, readonly number[]> = {};
  for (const event of events) {
    if ((event.type === 'tacked' || event.type === 'nailed') && !heldAlready(before.site, event.joint))
      Object.assign(rests, restOf(before, event.joint), blockRests(before, after, event.joint));
    if (event.type === 'tieSet') rests[event.member] = [tiePart(before, event.member, 'plates')];
    if (event.type === 'braced') rests[event.member] = [bracePart(before, event.member)];
  }
  return rests;
};

const heldAlready = (site: SiteState, joint: JointId): boolean => {
  const so = site.joints[joint];
  return so !== undefined && so.nails + so.tacks > 0;
};

const restOf = (before: Standing, joint: JointId): Rests => {
  const { kind, member } = partsOfJoint(joint);
  if (kind === 'ridge' || kind === 'heel') {
    if (!before.site.ridge || !before.site.members[member]) return {};
    return { [joint]: asHung(before, kind, member as RafterId) };
  }
  if (kind === 'ledger') return { [joint]: ledgerPart(before, joint) };
  if (kind === 'collarEnd') return { [member]: [tiePart(before, member, 'upper')] };
  if (kind === 'heelTie') {
    const { station } = placeOf(member);
    return { [`heels.${station ?? 0}`]: [tiePart(before, member, 'heels')] };
  }
  return kind === 'strap' ? { [joint]: [strapPart(before, member)] } : {};
};

/** Ends of a block that hold from now on, because they or the block's plate were nailed. */
const blockRests = (before: Standing, after: SiteState, joint: JointId): Rests => {
  const { kind, member } = partsOfJoint(joint);
  if (kind !== 'blockEnd' && kind !== 'blockPlate') return {};
  const block = member as BlockId;
  if (!heldAlready(after, `blockPlate:${block}`)) return {};
  const ends = kind === 'blockEnd' ? [joint] : blockEndsOf(block).filter((end) => heldAlready(after, end));
  return Object.fromEntries(ends.map((end) => [end, [blockPart(before, end)]]));
};

/** How far a rafter has rolled from its plate where a block meets it; 0 where the frame does not have it yet. */
const blockPart = (standing: Standing, end: string): number => {
  const frame = framed(standing);
  const row = frame && blockRow(frame.parts, frame.gable.shape, metBy(end));
  return frame && row ? valueOf(row, frame.settled.u) : 0;
};

const strapPart = (standing: Standing, member: string): number => {
  const frame = framed(standing);
  const station = (placeOf(member).station ?? 1) - 1;
  const row = frame && strapRow(frame.parts, frame.gable.shape, station);
  return frame && row ? valueOf(row, frame.settled.u) : 0;
};

/** How a rafter's end stands to ridge or plate while a hand holds it there: along, across, up. */
const asHung = (standing: Standing, kind: 'ridge' | 'heel', id: RafterId): readonly number[] => {
  const { side, station } = placeOf(id) as { side: Side; station: number };
  const { gaps, apart } = hungAt(standing, id);
  if (kind === 'ridge') return [0, signOf(side) * apart, 0];
  const { up, out } = spotAt(standing, side, station);
  const { deep } = cutRafter(standing, (standing.site.members[id]?.board ?? 'board.1') as BoardId);
  return [0, signOf(side) * (out + gaps.heelCut), up - deep + gaps.seat];
};

/** Joints that are only tacked, as hands set them again to a ridge or wall that was moved under them. */
const handledAgain = (before: Standing, site: SiteState): Rests => {
  const loose = (Object.keys(site.joints) as JointId[]).filter((joint) => {
    const so = site.joints[joint];
    return /^(ridge|heel|ledger):/.test(joint) && so !== undefined && so.nails === 0 && so.tacks > 0;
  });
  const joints = { ...site.joints };
  for (const joint of loose) delete joints[joint];
  const free: Standing = { ...before, site: { ...site, joints } };
  return Object.fromEntries(loose.map((joint) => [joint, asHeld(free, joint)]));
};

/** A joint with its tacks out, as it stands: in the frame where something else holds its rafter, else as it hangs. */
const asHeld = (standing: Standing, joint: JointId): readonly number[] => {
  if (partsOfJoint(joint).kind === 'ledger') return ledgerPart(standing, joint);
  const { kind, member } = partsOfJoint(joint) as { kind: 'ridge' | 'heel'; member: RafterId };
  const frame = framed(standing);
  const parts = frame?.parts.rafters.get(member);
  if (!frame || !parts) return asHung(standing, kind, member);
  const { side, station } = parts.rafter;
  const rows = partingsOf(frame.gable.shape, side);
  const [own, met] =
    kind === 'ridge'
      ? [parts.top, frame.parts.ridge[station] as Node]
      : [parts.heel, frame.parts.plates[side][station] as Node];
  const { slides } = kind === 'ridge' ? rows.top : rows.heel;
  return slides.map((row) => valueOf(between(row, own, met), frame.settled.u));
};

/** How the back of a ledger stands to where it was figured on the wall: along, off it, up. */
const ledgerPart = (standing: Standing, joint: JointId): readonly number[] => {
  const { station = 1 } = placeOf(joint);
  const frame = framed(standing);
  const node = frame?.parts.ridge[station - 1];
  if (!frame || !node) {
    const x = figuredX(standing, station);
    return [0, 0, (ridgeLine(standing, [x])[0]?.z ?? 0) - figuredTop(standing.level)];
  }
  const point = backOf(frame.gable.shape, node);
  const moves = (way: Vec3): number => pointMoves(node, { point, way }, frame.settled.u);
  return [moves([1, 0, 0]), moves([0, 1, 0]), moves([0, 0, 1])];
};

/** How far apart the ends of a tie stand beyond figured, as the frame has them; 0 where nothing is fastened yet. */
const tiePart = (standing: Standing, member: string, kind: 'plates' | 'heels' | 'upper'): number => {
  const frame = framed(standing);
  if (!frame) return 0;
  const station = (placeOf(member).station ?? 1) - 1;
  const placed = standing.site.members[member as MemberId] ?? { x: 0 };
  const height = tieHeight(standing.level, kind, placed);
  const row = tieRow(frame.parts, { kind, station, height });
  return row ? valueOf(row, frame.settled.u) : 0;
};

const bracePart = (standing: Standing, member: string): number => {
  const frame = framed(standing);
  if (!frame) return 0;
  const { stations } = frame.gable;
  const along = member === 'brace.along.1';
  const x = along
    ? standing.level.plan.length / 2
    : (stations[member.endsWith('A') ? 0 : stations.length - 1] as number);
  return valueOf(ridgeRow(frame.parts, x, along ? [1, 0, 0] : [0, 1, 0]), frame.settled.u);
};

/** Which way it comes down, when it does. */
export type Fall = 'alongTheRidge' | 'sideways' | 'downward' | 'nothingCarriesTheRidge';

/** A ridge that leans more than this part of its height is as good as down. Ours. */
const mostLean = 1 / 25;

const fallOf = (standing: Standing, frame: Framed): Fall | undefined => {
  const { settled, parts, gable } = frame;
  if (settled.falls) return wayDown(farthestOf(parts, settled.falls.way));
  const most = gable.shape.topHeight * mostLean;
  const { along, across } = farthestOf(parts, settled.u);
  if (along > most) return 'alongTheRidge';
  if (across > most) return 'sideways';
  return offItsSeat(standing, frame) ? 'downward' : undefined;
};

type Far = { readonly along: number; readonly across: number; readonly down: number };

/** The farthest that any place of the ridge goes, each way. */
const farthestOf = ({ ridge }: Framed['parts'], moves: Float64Array): Far => {
  const most = (way: Vec3): number => Math.abs(farthest(ridge, way, moves));
  return { along: most([1, 0, 0]), across: most([0, 1, 0]), down: most([0, 0, 1]) };
};

/** The largest part of the ridge's motion names the fall. */
const wayDown = ({ along, across, down }: Far): Fall => {
  if (along >= across && along >= down) return 'alongTheRidge';
  return across >= down ? 'sideways' : 'downward';
};

/** A heel that nothing fastens has slid until too little of its seat is left on the plate. */
const offItsSeat = ({ site }: Standing, { settled, gable, parts }: Framed): boolean =>
  [...parts.rafters.values()].some(({ rafter, faces }) => {
    if (heldAlready(site, rafter.heel.joint as JointId)) return false;
    const { row, rest } = settled.frame.links[faces.heelCut] as Link;
    return valueOf(row, settled.u) - rest > gable.shape.seat - leastBearing;
  });

const givenIn = ({ gave }: Settled): Rests =>
  Object.fromEntries(gave.map(({ grip, rests }) => [grip.joint, rests]));
