import type { Vec3 } from '../../core/geometry/vector';
import { signOf } from '../../core/roof/side';
import type { Person as Who, Sign, Spot } from '../../core/site/action';
import type { Fallen } from '../../core/site/pose';
import { groundLevel } from '../../present/model/sawhorses';
import { schemeOf, type Scheme, type Shown } from '../../present/model/scheme';
import type { Task } from '../../present/model/task';
import type { Limbs, Posture } from './figure';

/** Where the site's spots are, how one stands there, and the signals. */

export type Place = { readonly at: Vec3; readonly yaw: number };

export const spotPlace = (scheme: Scheme, who: Who, spot: Spot): Place => {
  const { length, half, lane, sides, floor } = scheme;
  const way = sides.includes('yard') ? 1 : -1;
  const z = floor ?? groundLevel;
  const lead = who === 'lead';
  const rows: Readonly<Record<Spot, Place>> = {
    clear: clearAt(scheme, who, lead ? -18 : -28),
    beside: { at: [length * (lead ? 0.6 : 0.4), lane - 17, z], yaw: 90 },
    path: { at: [length / 2 + (lead ? 12 : -12), lane + (lead ? -3 : 3), z], yaw: lead ? 100 : 80 },
    platform: { at: [length * (lead ? 0.63 : 0.36), lane - 22, z], yaw: lead ? 106 : 74 },
    ladder: { at: [length - 36, way * (half + 3.9 + (lead ? 0 : 9)), lead ? -8 : -44], yaw: way * 270 },
    plate: { at: [length * 0.55, signOf('street') * (half - 2), 0], yaw: 90 },
  };
  return rows[spot];
};

/** On the ground by a gable, looking at the building. */
const clearAt = ({ length, half, sides }: Scheme, who: Who, x: number): Place => {
  const [y, turned] =
    who === 'lead' ? [-half * 0.8, 24] : [half * (sides.includes('yard') ? 0.25 : -0.3), -25];
  return { at: [x, y, groundLevel], yaw: x > length ? 180 - turned : turned };
};

/** Clear of what came down, by a gable it did not fall toward. Inches; ours. */
export const afterFall = (scheme: Scheme, who: Who, { way, toward }: Fallen): Place => {
  const out = who === 'lead' ? 32 : 34;
  return clearAt(scheme, who, way === 'along' && toward < 0 ? scheme.length + out - 12 : -out);
};

/**
 * Hand signals of 29 CFR 1926 Subpart CC, Appendix A (from memory): hoist, the arm upright, forefinger up, small circles;
 * lower, the arm down and out, forefinger down, small circles; swing, the arm out, pointing the way the load should go; stop,
 * the arm out level, palm down, swung back and forth. One moment of each. From the right shoulder: forward, left, up.
 */
const signs: Readonly<Record<Sign, Limbs>> = {
  hoist: {
    hand: [6, -11, 74],
    grip: [0.06, 0.02, 1],
    foot: [-2, -5.5, 0],
    elbow: [4, -14, -2],
    points: true,
  },
  lower: {
    hand: [9, -18.5, 39.5],
    grip: [0.1, -0.1, -1],
    foot: [-2, -5.5, 0],
    elbow: [-4, -14, -3],
    points: true,
  },
  swing: {
    hand: [6, -28.6, 59],
    grip: [0.15, -1, 0],
    foot: [-2, -5.5, 0],
    elbow: [-4, -10, -6],
    points: true,
  },
  stop: { hand: [7, -28, 57], grip: [0.2, -1, -0.04], foot: [-2, -5.5, 0], elbow: [-2, -12, -4] },
};

type Base = Pick<Posture, 'dark' | 'harness'>;

export const atSpot = (shown: Shown, { who, task, base }: { who: Who; task: Task; base: Base }): Posture => {
  const scheme = schemeOf(shown);
  const { fallen } = shown.pose;
  const spot: Spot = fallen || task.where.on !== 'spot' ? 'clear' : task.where.spot;
  const { at, yaw } = fallen ? afterFall(scheme, who, fallen) : spotPlace(scheme, who, spot);
  const s = who === 'lead' ? 1 : -1;
  const stood = {
    ...base,
    at,
    yaw: spot === 'clear' ? facing(task, who, yaw) : yaw,
    pelvis: [0, 0, 35.8] as Vec3,
    chest: [1.6, 0, 55.2] as Vec3,
    look: [0.9, 0.2 * s, spot === 'clear' ? 0.12 : -0.1] as Vec3,
  };
  if (spot === 'ladder' && !fallen) return { ...stood, ...onLadder(at) };
  if (task.doing === 'signal' && task.sign)
    return { ...stood, look: [0.9, 0.3, 0.3], right: signs[task.sign], left: hanging(1, s) };
  if (task.doing === 'guide')
    return {
      ...stood,
      look: [0.9, 0, 0.3],
      left: { hand: [17, 4, 44], grip: [0.7, -0.3, 0.5], foot: [7, 5.5, 0], elbow: [-4, 12, -8] },
      right: { hand: [11, -7, 37], grip: [0.8, 0.3, 0.3], foot: [-6, -5.5, 0], elbow: [-6, -12, -8] },
    };
  if (task.doing === 'talk')
    return {
      ...stood,
      look: [1, 0, 0.02],
      left: hanging(1, s),
      right: {
        hand: who === 'lead' ? [16, -5, 48] : [9, -6, 40],
        foot: [-2 * s, -5.5, 0],
        elbow: [-5, -13, -7],
      },
    };
  return { ...stood, left: hanging(1, s), right: hanging(-1, s) };
};

/** They face each other to talk; an upright arm is turned clear of one's own face. */
const facing = ({ doing, sign }: Task, who: Who, yaw: number): number => {
  if (doing === 'talk') return who === 'lead' ? 75 : 255;
  return sign === 'hoist' && who === 'lead' ? 52 : yaw;
};

const hanging = (side: 1 | -1, s: number): Limbs => ({
  hand: side === 1 ? [5, 10, 35.5] : [7, -9.5, 37],
  foot: [3 * s * side, side * 5.5, 0],
  elbow: [-6, side * 11, -7],
});

/** Both boots on one rung, hands on the rails: three points of contact are kept while it is climbed. */
const onLadder = (_at: Vec3): Pick<Posture, 'pelvis' | 'chest' | 'left' | 'right' | 'look'> => ({
  pelvis: [-6, 0, 35],
  chest: [0, 0, 53.5],
  look: [0.95, 0, -0.15],
  left: { hand: [11, 7.6, 46], grip: [0.6, -0.2, 0.6], foot: [-3, 4, 0.7], elbow: [-4, 12, -8] },
  right: { hand: [11, -7.6, 46], grip: [0.6, 0.2, 0.6], foot: [-3, -4, 0.7], elbow: [-4, -12, -8] },
});
