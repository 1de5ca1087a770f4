import { add, lengthOf, scale, sub, unit, type Vec3 } from '../../core/geometry/vector';
import { apart, type Bulk } from '../../present/model/stickOf';
import type { Task } from '../../present/model/task';
import { bonesOf, gripAt, reaches, type Limbs, type Posture } from './figure';
import type { Footing, Surface } from './footing';
import { gripOf } from './tools';

/** Finds how a body stands, stoops or kneels so that its hands are where the work is and it is in nothing's way. */

export type Room = {
  readonly footing: Footing;
  readonly bulks: readonly Bulk[];
  /** Points of others that are there already. */
  readonly others: readonly Vec3[];
  /** Nobody of those who are clear comes under this: the line of a hung load. */
  readonly load?: { readonly y: number } | undefined;
};

export type Posed = {
  readonly posture: Posture;
  readonly surface: Surface;
  /** Level direction from the work to whoever does it: how the tool lies. */
  readonly toward: Vec3;
  /** Which hand works. */
  readonly hand: 'left' | 'right';
  /** What the other hand has hold of; nothing where only one hand reaches. */
  readonly holds: Vec3 | undefined;
  /** How far a hand or foot stays short of where it should be, and how deep the body is in something. Inches. */
  readonly short: number;
  readonly inside: number;
};

type Base = Pick<Posture, 'dark' | 'harness'>;

/** A way to be on one's feet or knees: how high the hips are, how far the back leans, and what that asks of a body. */
type Stance = {
  readonly hips: Vec3;
  readonly lean: number;
  readonly legs: Legs;
  readonly effort: number;
};

/** On both feet, on one knee, or on both. */
type Legs = 'feet' | 'knee' | 'knees';

const radians = Math.PI / 180;
const spine = 19.5;

const standing = [3, 14, 28, 42, 58, 72].map((lean): Stance => {
  const s = Math.sin(lean * radians);
  return { hips: [-8.5 * s, 0, 35.8 - 4 * s], lean, legs: 'feet', effort: lean / 9 };
});
const squatting = [15, 32, 52].map((lean): Stance => ({
  hips: [-6, 0, 22],
  lean,
  legs: 'feet',
  effort: 6 + lean / 12,
}));
const kneeling = [8, 25, 42, 58, 74].map((lean): Stance => ({
  hips: [-3 - lean / 30, 0, 18],
  lean,
  legs: 'knee',
  effort: 2.5 + lean / 16,
}));
const crawling = [58, 72, 84, 94].map((lean): Stance => ({
  hips: [-3, 0, 18],
  lean,
  legs: 'knees',
  effort: 3.5 + lean / 16,
}));
const stances: Readonly<Record<Legs, readonly Stance[]>> = {
  feet: [...standing, ...squatting],
  knee: kneeling,
  knees: crawling,
};

/** Turned so far from the way one comes from, degrees, and what each costs. */
const turns = [
  [0, 22, -22],
  [45, -45],
  [70, -70],
  [100, -100],
  [140, -140, 180],
];
/** Level distances of the feet from the work, inches. */
const distances = [9, 13, 17, 21, 25, 29, 33];
/** The chest looks a little past the work, so that one hand is nearer to it. Degrees. */
const twists = [0, 26, -26];

const headingOf = (v: Vec3): number => Math.atan2(v[1], v[0]) / radians;
const level = (degrees: number): Vec3 => [Math.cos(degrees * radians), Math.sin(degrees * radians), 0];

type Targets = { readonly main: Vec3; readonly off: Vec3 | undefined; readonly toward: Vec3 };

type Candidate = {
  readonly at: Vec3;
  readonly yaw: number;
  readonly stance: Stance;
  readonly hand: 'left' | 'right';
  readonly cost: number;
  readonly surface: Surface;
  readonly targets: Targets;
  readonly short: number;
};

/** Feet as they stand for a stance, forward and to the left of where one stands. */
const feetOf = (legs: Legs): { readonly left: Vec3; readonly right: Vec3 } => {
  if (legs === 'feet') return { left: [3, 5.5, 0], right: [-2, -5.5, 0] };
  const right: Vec3 = [-17, -5, 0];
  return legs === 'knee' ? { left: [9, 6, 0], right } : { left: [-17, 5, 0], right };
};

const turned = (yaw: number, [f, l, u]: Vec3): Vec3 => {
  const [c, s] = [Math.cos(yaw * radians), Math.sin(yaw * radians)];
  return [f * c - l * s, f * s + l * c, u];
};

const chestOf = ({ hips, lean }: Stance): Vec3 => [
  hips[0] + spine * Math.sin(lean * radians),
  0,
  hips[2] + spine * Math.cos(lean * radians),
];

/** A wrist's way to a grip: straight from the shoulder. */
const wristFor = (shoulder: Vec3, grip: Vec3): Vec3 => {
  const way = unit(sub(grip, shoulder)) ?? [0, 0, -1];
  return sub(grip, scale(way, gripAt));
};

const shoulders = new Map<Stance, readonly [Vec3, Vec3]>();

/** Where a stance has its shoulders, right (−1) and left: reckoned once. */
const shoulderOf = (stance: Stance, side: 1 | -1): Vec3 => {
  const known = shoulders.get(stance);
  if (known) return known[side === 1 ? 1 : 0];
  const a = stance.lean * radians;
  const [x, , z] = chestOf(stance);
  const at = (s: number): Vec3 => [x + 1.2 * Math.sin(a), s * 7.4, z + 1.2 * Math.cos(a)];
  const both = [at(-1), at(1)] as const;
  shoulders.set(stance, both);
  return both[side === 1 ? 1 : 0];
};

const tooNear = 8;

/** How far a grip is beyond an arm, or too near to fold it. */
const beyond = (shoulder: Vec3, grip: Vec3): number => {
  const [x, y, z] = [grip[0] - shoulder[0], grip[1] - shoulder[1], grip[2] - shoulder[2]];
  const far = Math.sqrt(x * x + y * y + z * z) - gripAt;
  return far > reaches.arm ? far - reaches.arm : far < tooNear ? (tooNear - far) * 0.5 : 0;
};

export const poseAtWork = (room: Room, task: Task, base: Base): Posed | undefined => {
  const both = tryPoses(room, task, base);
  if (!both || clean(both) || !task.holds) return both;
  const { holds: _free, ...oneHanded } = task;
  const one = tryPoses(room, oneHanded, base);
  return one && one.short + one.inside < both.short + both.inside ? one : both;
};

const clean = ({ short, inside }: Posed): boolean => short <= 0 && inside <= touching;

/** Ways to come to the work are tried from the easiest on, until one will do. */
const tryPoses = (room: Room, task: Task, base: Base): Posed | undefined => {
  const { works, holds, where } = task;
  if (!works || where.on !== 'work') return undefined;
  const near = { ...room, bulks: room.bulks.filter((bulk) => apart(bulk, works) < nearby) };
  let least: Tried | undefined;
  for (const group of turns) {
    const found: Candidate[] = [];
    for (const turn of group) {
      const heading = headingOf(where.from) + turn;
      const toward = level(heading);
      const targets: Targets = { main: gripOf(task.tool, works, toward), off: holds, toward };
      for (const distance of distances) candidatesAt(room, { targets, heading, turn, distance }, found);
    }
    least = best(near, task, { found, base, least });
    if (least && clean(least.posed)) break;
  }
  return least?.posed;
};

/** Nothing farther from the work than this can be in a body's way, inches. */
const nearby = 62;

type Stood = {
  readonly targets: Targets;
  readonly heading: number;
  readonly turn: number;
  readonly distance: number;
};

const candidatesAt = (room: Room, stood: Stood, into: Candidate[]): void => {
  const { targets, heading, distance } = stood;
  const middle = targets.off ? scale(add(targets.main, targets.off), 0.5) : targets.main;
  const at = add([middle[0], middle[1], 0], scale(level(heading), distance));
  for (const legs of ['feet', 'knee', 'knees'] as const)
    for (const twist of twists) {
      const yaw = heading + 180 + twist;
      const { left, right } = feetOf(legs);
      const surface = room.footing([add(at, turned(yaw, left)), add(at, turned(yaw, right))]);
      if (surface) reachingFrom({ ...stood, yaw, twist, legs, surface, at: [at[0], at[1], surface.z] }, into);
    }
};

type Facing = Stood & {
  readonly at: Vec3;
  readonly yaw: number;
  readonly twist: number;
  readonly legs: Legs;
  readonly surface: Surface;
};

/** What standing there asks besides the stance: a floor is easier than a plank, a plank than the ground outside. */
const footingCost: Readonly<Record<Surface['kind'], number>> = {
  floor: 0,
  plank: 1.5,
  staging: 6,
  ground: 16,
};
/** Farther short than this is not worth a thought, inches. */
const hopeless = 6;

const reachingFrom = (facing: Facing, into: Candidate[]): void => {
  const { at, yaw, surface, targets, turn, twist, legs } = facing;
  const local = (p: Vec3): Vec3 => turned(-yaw, sub(p, at));
  const main = local(targets.main);
  const off = targets.off && local(targets.off);
  const cost = Math.abs(turn) / 16 + Math.abs(twist) / 30 + footingCost[surface.kind];
  for (const stance of stances[legs])
    for (const hand of ['right', 'left'] as const) {
      const side = hand === 'right' ? -1 : 1;
      let short = beyond(shoulderOf(stance, side), main);
      if (off && short < hopeless) short += beyond(shoulderOf(stance, side === 1 ? -1 : 1), off);
      if (short >= hopeless) continue;
      const all = cost + stance.effort + (hand === 'left' ? 1.2 : 0) + short * 40;
      into.push({ at, yaw, stance, hand, cost: all, surface, targets, short });
    }
};

type Tried = { readonly posed: Posed; readonly bad: number };
type Choice = {
  readonly found: readonly Candidate[];
  readonly base: Base;
  readonly least: Tried | undefined;
};

/** So many of the easiest are tried for room; ours. */
const tried = 240;
/** A body may press so far into what it leans on, inches. */
const touching = 0.4;
/** What an inch inside of something weighs against effort; ours. */
const insideCost = 8;

const best = (room: Room, task: Task, { found, base, least: before }: Choice): Tried | undefined => {
  const easiest = [...found].sort((a, b) => a.cost - b.cost).slice(0, tried);
  let least = before;
  for (const candidate of easiest) {
    const { surface, targets, hand, short, cost } = candidate;
    if (least && cost > least.bad) break;
    const posture = postureOf(candidate, task, base);
    const inside = depthIn(room, posture, least ? (least.bad - cost) / insideCost : Infinity);
    const posed: Posed = {
      posture,
      surface,
      toward: targets.toward,
      hand,
      holds: targets.off,
      short,
      inside,
    };
    if (clean(posed)) return { posed, bad: 0 };
    const bad = cost + inside * insideCost;
    if (!least || bad < least.bad) least = { posed, bad };
  }
  return least;
};

/** Points along the bones with the radius of the flesh round them: what must not be inside of anything. */
export const fleshOf = (posture: Posture): readonly { readonly at: Vec3; readonly r: number }[] => {
  const { pelvis, chest, head, legs, arms } = bonesOf(posture);
  const along = (a: Vec3, b: Vec3, r: number) =>
    [0.08, 0.36, 0.64, 0.92].map((t) => ({ at: add(a, scale(sub(b, a), t)), r }));
  return [
    ...along(pelvis, chest, 5),
    { at: head, r: 4.6 },
    ...[legs.left, legs.right].flatMap(({ from, joint, end }) => [
      ...along(from, joint, 3.2),
      ...along(joint, end, 2.3),
    ]),
    ...[arms.left, arms.right].flatMap(({ from, joint }) => along(from, joint, 2.1)),
  ];
};

const depthIn = ({ bulks, others, load }: Room, posture: Posture, enough: number): number => {
  let sum = 0;
  for (const { at, r } of fleshOf(posture)) {
    for (const bulk of bulks) {
      const gap = apart(bulk, at);
      if (gap < r) sum += r - gap;
    }
    for (const other of others) {
      const gap = lengthOf(sub(at, other)) - 4;
      if (gap < r) sum += r - gap;
    }
    if (load && Math.abs(at[1] - load.y) < 3) sum += 3;
    if (sum > enough) return sum;
  }
  return sum;
};

const postureOf = ({ at, yaw, stance, hand, targets }: Candidate, task: Task, base: Base): Posture => {
  const local = (p: Vec3): Vec3 => turned(-yaw, sub(p, at));
  const feet = feetOf(stance.legs);
  const arm = (side: 1 | -1, grip: Vec3 | undefined): Pick<Limbs, 'hand' | 'grip' | 'elbow'> => {
    const shoulder = shoulderOf(stance, side);
    const pole: Vec3 = [-7, side * 5, -11];
    if (!grip) return { hand: idleHand(stance, side), elbow: pole };
    const to = local(grip);
    const way = unit(sub(to, shoulder)) ?? [0, 0, -1];
    return { hand: wristFor(shoulder, to), grip: way, elbow: pole };
  };
  const main = hand === 'right' ? -1 : 1;
  const armOf = (side: 1 | -1) => arm(side, side === main ? targets.main : targets.off);
  const { legs } = stance;
  const down = (side: 1 | -1) => ({ knee: [14, side * 6, -18] as Vec3, toe: [-0.3, 0, -1] as Vec3 });
  return {
    ...base,
    at,
    yaw,
    pelvis: stance.hips,
    chest: chestOf(stance),
    look: lookTo(stance, local(task.looks)),
    left: {
      ...armOf(1),
      foot: feet.left,
      ...(legs === 'knees' ? down(1) : legs === 'knee' ? { knee: [30, 8, 22] as Vec3 } : {}),
    },
    right: { ...armOf(-1), foot: feet.right, ...(legs === 'feet' ? {} : down(-1)) },
  };
};

/** A hand with nothing to do hangs from its shoulder, or lies on the raised knee. */
const idleHand = (stance: Stance, side: 1 | -1): Vec3 => {
  const shoulder = shoulderOf(stance, side);
  if (stance.legs === 'knee' && side === 1 && stance.lean < 35) return [11.5, 7, 21];
  const [x, y, z] = add(shoulder, [3.5, side * 2.2, -20]);
  return [x, y, Math.max(3, z)];
};

/** A head turns so far: not behind, nor straight down. */
const lookTo = (stance: Stance, local: Vec3): Vec3 => {
  const chest = chestOf(stance);
  const way = unit(sub(local, add(chest, [0, 0, 9]))) ?? [1, 0, 0];
  const side = Math.max(-0.75, Math.min(0.75, way[1]));
  return [Math.max(0.45, way[0]), side, Math.max(-0.8, Math.min(0.35, way[2]))];
};
