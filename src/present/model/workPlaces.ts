import { add, type Vec3 } from '../../core/geometry/vector';
import { signOf, type Side } from '../../core/roof/side';
import { partsOfJoint, placeOf, type BlockId, type RafterId } from '../../core/site/ids';
import type { RafterPose } from '../../core/site/pose';
import { plateAt } from '../../core/site/truePlate';
import { edgesOfRafter } from './rafterShape';
import { ridgeUnderAt } from './roofSolids';
import { bareFloor, schemeOf, type Scheme, type Shown } from './scheme';
import { bulkOf, gripOn, type Bulk } from './stickOf';
import type { Solid } from './solid';
import { besideRafter } from './tieSolids';

/** The places of the job where hands have work: joints, ends of members, spots along plates and ridge. */
export type Work = {
  readonly shown: Shown;
  readonly scheme: Scheme;
  /** Boxes of what stands, the longest of each name. */
  readonly bulks: ReadonlyMap<string, Bulk>;
};

/** A point to work at, a point beside it for the other hand, and the way one comes from. */
export type Place = { readonly at: Vec3; readonly grip: Vec3; readonly from: Vec3 };

export const workOf = (shown: Shown, solids: readonly Solid[]): Work => {
  const bulks = new Map<string, Bulk>();
  for (const solid of solids) {
    const bulk = bulkOf(solid);
    const known = bulks.get(solid.id);
    if (!known || known.halves[0] < bulk.halves[0]) bulks.set(solid.id, bulk);
  }
  return { shown, scheme: schemeOf(shown), bulks };
};

const joistBeside = ({ shown, scheme }: Work, station: number): 1 | -1 | 0 => {
  if (!(`joist.${station}` in shown.site.members) && !(`rafterTie.${station}` in shown.site.members))
    return 0;
  return station === scheme.stations.length ? -1 : 1;
};

/** The side of a station one works from: away from its joist where there is room, never from outside the gable. */
export const freeSide = ({ scheme }: Work, station: number): 1 | -1 =>
  station === 1 || station < scheme.stations.length / 2 ? 1 : -1;

/** How far the face one works from is from the rafter's middle: its own, or the joist's that lies against it. */
const faceOff = (work: Work, station: number): number =>
  joistBeside(work, station) === freeSide(work, station) ? 2.3 : 0.8;

export const rafterOf = ({ shown }: Work, member: string): RafterPose | undefined =>
  shown.pose.rafters[member as RafterId];

/** A point on a rafter's side at a level distance from the center line, so far below its upper edge, plumb. */
export const onRafter = (work: Work, rafter: RafterPose, { out, down, off = 0.8 }: OnRafter): Vec3 => {
  const { over } = edgesOfRafter(rafter, 0);
  const t = (out - rafter.top.out) / (rafter.heel.out - rafter.top.out);
  const x = rafter.x.ridge + (rafter.x.heel - rafter.x.ridge) * t;
  return [x + freeSide(work, rafter.station) * off, signOf(rafter.side) * out, over(out) - down];
};
type OnRafter = { readonly out: number; readonly down: number; readonly off?: number };

export const ridgePlace = (work: Work, rafter: RafterPose): Place => {
  const { plumbCutLength } = work.scheme.common;
  return {
    at: onRafter(work, rafter, { out: rafter.top.out + 1.6, down: plumbCutLength * 0.45 }),
    grip: onRafter(work, rafter, { out: rafter.top.out + 12, down: plumbCutLength * 0.6 }),
    from: [freeSide(work, rafter.station), signOf(rafter.side) * 0.35, 0],
  };
};

export const heelPlace = (work: Work, rafter: RafterPose): Place => {
  const { heightAbovePlate, plumbCutLength } = work.scheme.common;
  const side = freeSide(work, rafter.station);
  const off = faceOff(work, rafter.station);
  return {
    at: onRafter(work, rafter, { out: rafter.heel.out - 1.5, down: heightAbovePlate - 1, off }),
    grip: onRafter(work, rafter, { out: rafter.heel.out - 15, down: plumbCutLength * 0.5 }),
    from: [side * 0.8, -signOf(rafter.side), 0],
  };
};

/** Nails go through a ledger's face beside the rafter's place, with room to swing. */
const ledgerPlace = ({ scheme, shown }: Work, station: number): Place => {
  const { thickness, depth } = shown.level.plan.ridge;
  const last = station === scheme.stations.length;
  const x = (scheme.stations[station - 1] ?? 0) + (last ? -3 : 3);
  const y = -thickness / 2;
  const z = scheme.top - depth / 2;
  return { at: [x, y, z], grip: [x + (last ? -10 : 10), y, scheme.top], from: [0, -1, 0] };
};

/** Where a tie lies beside the rafter or on the plate of one side. */
const tiePlace = (work: Work, station: number, { side, out, z }: OnTie): Place => {
  const { scheme } = work;
  const sign = signOf(side);
  const last = station === scheme.stations.length;
  const x = besideRafter(scheme, `joist.${station}`) + (last ? -0.05 : 1.55);
  return {
    at: [x, sign * out, z],
    grip: [x, sign * (out - 12), scheme.tieDepth],
    from: [last ? -0.8 : 0.8, -sign, 0],
  };
};
type OnTie = { readonly side: Side; readonly out: number; readonly z: number };

const blockPlace = (work: Work, id: string, end: 'near' | 'far' | 'plate'): Place | undefined => {
  const block = work.shown.pose.blocks[id as BlockId];
  if (!block) return undefined;
  const sign = signOf(block.side);
  const middle = (block.x0 + block.x1) / 2;
  const { out, z } = plateAt(work.shown.pose.plates[block.side], middle);
  const y = sign * (out - 1.55);
  const x = end === 'near' ? block.x0 + 1.2 : end === 'far' ? block.x1 - 1.2 : middle - 4;
  return {
    at: [x, y, z + (end === 'plate' ? 0.8 : 2.6)],
    grip: [middle + 3, y, z + 2.4],
    from: [0, -sign, 0],
  };
};

/** Where hands are that fasten a joint or draw its nails. */
export const jointPlace = (work: Work, joint: string): Place | undefined => {
  const { kind, member } = partsOfJoint(joint);
  const rafter = rafterOf(work, member);
  const side = placeOf(joint).side ?? 'street';
  const station = placeOf(member).station ?? 1;
  switch (kind) {
    case 'ledger':
      return ledgerPlace(work, station);
    case 'ridge':
      return rafter && ridgePlace(work, rafter);
    case 'heel':
      return rafter && heelPlace(work, rafter);
    case 'heelTie':
      return tiePlace(work, station, { side, out: work.scheme.half - 7, z: work.scheme.tieDepth * 0.45 });
    case 'joistPlate':
      return tiePlace(work, station, { side, out: work.scheme.half - 2.6, z: 1 });
    case 'blockEnd':
      return blockPlace(work, member, joint.endsWith('.near') ? 'near' : 'far');
    case 'blockPlate':
      return blockPlace(work, member, 'plate');
    case 'collarEnd':
      return endPlace(work, member, side === 'street' ? 0.06 : 0.94);
    case 'strap':
      return strapPlace(work, station, 'street');
    case 'postHead':
      return postPlace(work, member, 'head');
    case 'postFoot':
      return postPlace(work, member, 'foot');
  }
};

export const strapPlace = (work: Work, station: number, side: Side): Place | undefined => {
  const rafter = rafterOf(work, `rafter.${side}.${station}`);
  return (
    rafter && {
      at: onRafter(work, rafter, { out: 5, down: 0, off: 0.4 }),
      grip: onRafter(work, rafter, { out: rafter.top.out + 9, down: 2 }),
      from: [freeSide(work, station), signOf(side) * 0.7, 0],
    }
  );
};

/** A place on a stick that stands or lies, 0 its lower end or the one nearer A or the street. */
export const endPlace = (work: Work, id: string, t: number): Place | undefined => {
  const bulk = work.bulks.get(id);
  if (!bulk) return undefined;
  const along = bulk.axes[0];
  const middle = work.scheme.length / 2;
  const inward = bulk.middle[0] < middle ? 1 : -1;
  const level = Math.abs(along[0]) > 0.7;
  // A wall's brace stands outside: one comes to it from there.
  const outside = id.startsWith('brace.wall.');
  const from: Vec3 = outside
    ? outward(work, bulk.middle)
    : level
      ? [0, bulk.middle[1] > 0 ? -1 : 1, 0]
      : [inward, 0, 0];
  const way = t > 0.5 ? -1 : 1;
  return {
    at: gripOn(bulk, t, from),
    grip: gripOn(bulk, t + (way * 13) / Math.max(1, 2 * bulk.halves[0]), from),
    from,
  };
};

const outward = ({ scheme }: Work, [x, y]: Vec3): Vec3 =>
  x < 0 ? [-1, 0, 0] : x > scheme.length ? [1, 0, 0] : [0, Math.sign(y), 0];

export const postPlace = (work: Work, id: string, part: 'head' | 'foot'): Place | undefined => {
  const { shown, scheme } = work;
  const n = placeOf(id).station ?? 1;
  if (!(id in shown.site.members)) return undefined;
  const x = scheme.posts[n - 1] as number;
  const floor = scheme.floor ?? bareFloor;
  const y = ridgeAt(work, x)[1];
  const head = ridgeUnderAt(shown.pose, shown.level.plan.ridge.depth, x) ?? scheme.top - 8;
  const way = n === 1 ? 1 : -1;
  const edge = x + way * 1.8;
  return part === 'head'
    ? { at: [edge, y, head - 3], grip: [edge, y, head - 15], from: [way, -0.8, 0] }
    : { at: [edge + way * 2, y, floor + 3], grip: [edge, y, floor + 17], from: [way, 0.8, 0] };
};

/** The middle of the ridge's upper edge at x, where it is or where it will be. */
export const ridgeAt = ({ shown, scheme }: Work, x: number): Vec3 => {
  const { ridge } = shown.pose;
  if (!ridge) return [x, 0, scheme.top];
  const t = (x - ridge.A.x) / (ridge.B.x - ridge.A.x);
  return [x, ridge.A.y + (ridge.B.y - ridge.A.y) * t, ridge.A.z + (ridge.B.z - ridge.A.z) * t];
};

/** A place on the ridge's side, from the street (−1) or the yard. */
export const ridgeSide = (work: Work, x: number, sign: 1 | -1): Place => {
  const { thickness, depth } = work.shown.level.plan.ridge;
  const y = (thickness / 2 + 0.1) * sign;
  const inward = x < work.scheme.length / 2 ? 1 : -1;
  const at = ridgeAt(work, x);
  return {
    at: add(at, [0, y, -depth * 0.6]),
    grip: add(at, [inward * 15, y, -depth * 0.6]),
    from: [0, sign, 0],
  };
};

/** A place on the plate's upper face, from inside. */
export const platePlace = (work: Work, side: Side, x: number): Place => {
  const { out, z } = plateAt(work.shown.pose.plates[side], x);
  const sign = signOf(side);
  const inward = x < work.scheme.length / 2 ? 1 : -1;
  const y = sign * (out - 2);
  return { at: [x, y, z + 0.1], grip: [x + inward * 13, y, z + 0.1], from: [inward * 0.2, -sign, 0] };
};
