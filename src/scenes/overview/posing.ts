import { add, scale, sub, unit, type Vec3 } from '../../core/geometry/vector';
import { apart } from '../../present/model/stickOf';
import type { Task } from '../../present/model/task';
import { gripAt, reaches, type Limbs, type Posture } from './figure';
import { depthIn, type Obstacles } from './flesh';
import type { Footing, Surface } from './footing';
import { allLegs, feetOf, shoulderOf, stances, type Legs, type Stance } from './stances';
import { gripOf } from './tools';

/** Finds how a body stands, stoops or kneels so that its hands are where the work is and it is in nothing's way. */

export type Room = Obstacles & { readonly footing: Footing };

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

const radians = Math.PI / 180;

/** Turned so far from the way one comes from, degrees, and what each costs. */
const turns = [
  [0, 22, -22],
  [45, -45],
  [70, -70],
  [100, -100],
  [140, -140, 180],
];
/** Where feet are looked for about the work. */
type Ways = {
  /** Level distances of the feet from the work, inches. */
  readonly distances: readonly number[];
  /** The chest looks a little past the work, so that one hand is nearer to it. Degrees. */
  readonly twists: readonly number[];
  /** Steps to the left of the straight way, inches. */
  readonly asides: readonly number[];
  /** So many of the easiest are tried for room; ours. */
  readonly tried: number;
};
const usual: Ways = { distances: [9, 13, 17, 21, 25, 29, 33], twists: [0, 26, -26], asides: [0], tried: 240 };
const thorough: Ways = {
  distances: [5, 9, 13, 17, 21, 25, 29, 33],
  twists: [0, 26, -26, 55, -55],
  asides: [-14, -7, 0, 7, 14],
  tried: 900,
};

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

const turned = (yaw: number, v: Vec3): Vec3 => turnedBy(level(yaw), v);

const turnedBy = ([c, s]: Vec3, [f, l, u]: Vec3): Vec3 => [f * c - l * s, f * s + l * c, u];

/** A wrist's way to a grip: straight from the shoulder. */
const wristFor = (shoulder: Vec3, grip: Vec3): Vec3 => {
  const way = unit(sub(grip, shoulder)) ?? [0, 0, -1];
  return sub(grip, scale(way, gripAt));
};

const tooNear = 8;

/** How far a grip is beyond an arm, or too near to fold it. */
const beyond = (shoulder: Vec3, grip: Vec3): number => {
  const [x, y, z] = [grip[0] - shoulder[0], grip[1] - shoulder[1], grip[2] - shoulder[2]];
  const far = Math.sqrt(x * x + y * y + z * z) - gripAt;
  return far > reaches.arm ? far - reaches.arm : far < tooNear ? (tooNear - far) * 0.5 : 0;
};

/** With both hands where the work asks for it, else with one; with an eye on more places where the easy ones fail. */
export const poseAtWork = (room: Room, task: Task, base: Base): Posed | undefined => {
  const { holds, ...oneHanded } = task;
  let least: Posed | undefined;
  for (const [asked, ways] of [
    [task, usual],
    [task, thorough],
    ...(holds
      ? ([
          [oneHanded, usual],
          [oneHanded, thorough],
        ] as const)
      : []),
  ] as const) {
    const found = tryPoses(room, { task: asked, ways }, base);
    if (found && (!least || found.short + found.inside < least.short + least.inside)) least = found;
    if (least && clean(least)) break;
  }
  return least;
};

const clean = ({ short, inside }: Posed): boolean => short <= 0 && inside <= touching;

/** Ways to come to the work are tried from the easiest on, until one will do. */
const tryPoses = (room: Room, { task, ways }: Search, base: Base): Posed | undefined => {
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
      for (const distance of ways.distances)
        for (const aside of ways.asides)
          candidatesAt(room, { targets, heading, turn, distance, aside, twists: ways.twists }, found);
    }
    least = best(near, task, { found, base, least, tried: ways.tried });
    if (least && clean(least.posed)) break;
  }
  return least?.posed;
};

type Search = { readonly task: Task; readonly ways: Ways };

/** Nothing farther from the work than this can be in a body's way, inches. */
const nearby = 62;

type Stood = {
  readonly targets: Targets;
  readonly heading: number;
  readonly turn: number;
  readonly distance: number;
  readonly aside: number;
  readonly twists: readonly number[];
};

const candidatesAt = (room: Room, stood: Stood, into: Candidate[]): void => {
  const { targets, heading, distance, aside, twists } = stood;
  const { main, off } = targets;
  const back = level(heading);
  const x = (off ? (main[0] + off[0]) / 2 : main[0]) + back[0] * distance + back[1] * aside;
  const y = (off ? (main[1] + off[1]) / 2 : main[1]) + back[1] * distance - back[0] * aside;
  for (const twist of twists) {
    const yaw = heading + 180 + twist;
    const ahead = level(yaw);
    const [c, s] = ahead;
    for (const legs of allLegs) {
      const surface = room.footing(
        feetOf(legs).rests.map(([f, l]) => [x + f * c - l * s, y + f * s + l * c] as const),
      );
      if (surface)
        reachingFrom(
          { targets, turn: stood.turn, yaw, ahead, twist, legs, surface, at: [x, y, surface.z] },
          into,
        );
    }
  }
};

type Facing = Pick<Stood, 'targets' | 'turn'> & {
  readonly at: Vec3;
  readonly yaw: number;
  readonly ahead: Vec3;
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

const bothHands = ['right', 'left'] as const;

const reachingFrom = (facing: Facing, into: Candidate[]): void => {
  const { at, yaw, ahead, surface, targets, turn, twist, legs } = facing;
  const back: Vec3 = [ahead[0], -ahead[1], 0];
  const local = (p: Vec3): Vec3 => turnedBy(back, sub(p, at));
  const main = local(targets.main);
  const off = targets.off && local(targets.off);
  const cost = Math.abs(turn) / 16 + Math.abs(twist) / 30 + footingCost[surface.kind];
  for (const stance of stances[legs])
    for (const hand of bothHands) {
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
  readonly tried: number;
};

/** A body may press so far into what it leans on, inches. */
const touching = 0.4;
/** What an inch inside of something weighs against effort; ours. */
const insideCost = 8;

const best = (room: Room, task: Task, { found, base, least: before, tried }: Choice): Tried | undefined => {
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
    chest: stance.chest,
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
  const chest = stance.chest;
  const way = unit(sub(local, add(chest, [0, 0, 9]))) ?? [1, 0, 0];
  const side = Math.max(-0.75, Math.min(0.75, way[1]));
  return [Math.max(0.45, way[0]), side, Math.max(-0.8, Math.min(0.35, way[2]))];
};
