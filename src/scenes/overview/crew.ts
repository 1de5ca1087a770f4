import type { Vec3 } from '../../core/geometry/vector';
import type { Person as Who, Spot } from '../../core/site/action';
import type { Fallen } from '../../core/site/pose';
import { placeOf } from '../../core/site/ids';
import { signOf } from '../../core/roof/side';
import { schemeOf, type Scheme, type Shown } from '../../present/model/scheme';
import type { Mesh } from '../ink/mesh';
import { hammer, person, type Limbs, type Person, type Posture } from './figure';

/** The crew where the site says they are, doing what the state of the work tells: kneeling at a heel, holding, signaling. */
export type Crew = {
  readonly meshes: readonly Mesh[];
  /** Lifelines from a back to the anchor. */
  readonly lines: readonly (readonly [Vec3, Vec3])[];
  /** Where those stand who are clear of the building. */
  readonly feet: readonly Vec3[];
};

export const crewOf = (shown: Shown): Crew => {
  const scheme = schemeOf(shown);
  const drawn = (['lead', 'helper'] as const).map((who) => drawnAs(shown, scheme, who));
  const anchor = anchorAt(shown, scheme);
  return {
    meshes: drawn.flatMap(({ meshes }) => meshes),
    feet: drawn.filter(({ clear }) => clear).map(({ at }) => at),
    lines: anchor ? drawn.filter(({ aloft }) => aloft).map(({ body }) => [body.back, anchor] as const) : [],
  };
};

type Drawn = {
  readonly meshes: readonly Mesh[];
  readonly body: Person;
  readonly aloft: boolean;
  readonly clear: boolean;
  readonly at: Vec3;
};

const drawnAs = (shown: Shown, scheme: Scheme, who: Who): Drawn => {
  const { fallen } = shown.pose;
  const spot = fallen ? 'clear' : shown.site.people[who];
  const work = workAt(shown);
  const aloft = spot === 'platform' || spot === 'ladder' || spot === 'plate' || spot === 'beside';
  const harness = aloft && shown.site.ready.anchor !== undefined;
  const kneels = who === 'helper' && spot === 'platform' && work !== undefined && scheme.floor !== undefined;
  const base = { dark: who === 'helper', harness };
  const posture: Posture = kneels
    ? kneeling(scheme, work, base)
    : standing(
        scheme,
        { who, spot, fallen, signals: !fallen && shown.site.sling !== undefined && who === 'lead' },
        base,
      );
  const body = person(who, posture);
  const a = (posture.yaw * Math.PI) / 180;
  const held = kneels
    ? hammer(who, work.x + 34 > scheme.length ? body.hands.left : body.hands.right, {
        handle: [-0.45 * Math.cos(a), -0.45 * Math.sin(a), 0.9],
        face: [Math.cos(a), Math.sin(a), 0.5],
      })
    : [];
  return { meshes: [...body.meshes, ...held], body, aloft, clear: spot === 'clear', at: posture.at };
};

type Work = { readonly x: number; readonly sign: 1 | -1; readonly out: number };
type Base = Pick<Posture, 'dark' | 'harness'>;

/** The heel that waits for nails and was placed last: where a helper kneels. */
const workAt = ({ site, pose }: Shown): Work | undefined => {
  const open = Object.keys(site.members).filter(
    (id) => id.startsWith('rafter.') && (site.joints[`heel:${id as `rafter.yard.1`}`]?.nails ?? 0) < 1,
  );
  const id = open[open.length - 1];
  if (!id) return undefined;
  const { side, station } = placeOf(id);
  const rafter = pose.rafters[`rafter.${side ?? 'street'}.${station ?? 1}`];
  return rafter && side ? { x: rafter.x.heel, sign: signOf(side), out: rafter.heel.out } : undefined;
};

/** Kneels inside the roof, beside the rafter: on its B side unless that would be past the gable, then mirrored. */
const kneeling = (scheme: Scheme, work: Work, base: Base): Posture => {
  const past = work.x + 34 > scheme.length;
  const yaw = work.sign < 0 ? 222 : 138;
  const held: Limbs = { hand: [26, 8, 6], foot: [8, 6, 0], knee: [30, 8, 20] };
  const raised: Limbs = {
    hand: [12, -17, 37],
    foot: [-17, -5, 0],
    grip: [-0.35, -0.1, 0.9],
    elbow: [-4, -14, 2],
    knee: [14, -6, -18],
    toe: [-0.3, 0, -1],
  };
  return {
    ...base,
    at: [work.x + (past ? -17 : 17), work.sign * (work.out - 27), scheme.floor ?? 0],
    yaw: past ? 180 - yaw : yaw,
    pelvis: [-3, 0, 18],
    chest: [12, 0, 32],
    look: [0.8, past ? -0.1 : 0.1, -0.55],
    left: past ? mirrored(raised) : held,
    right: past ? mirrored(held) : raised,
  };
};

const mirrored = ({ hand, foot, grip, elbow, knee, toe }: Limbs): Limbs => {
  const over = ([x, y, z]: Vec3): Vec3 => [x, -y, z];
  return {
    hand: over(hand),
    foot: over(foot),
    ...(grip ? { grip: over(grip) } : {}),
    ...(elbow ? { elbow: over(elbow) } : {}),
    ...(knee ? { knee: over(knee) } : {}),
    ...(toe ? { toe: over(toe) } : {}),
  };
};

type Stand = {
  readonly who: Who;
  readonly spot: Spot;
  readonly signals: boolean;
  readonly fallen: Fallen | undefined;
};

/** Ground inside the walls and out, as far as the drawing shows any: inches; ours. */
const groundLevel = -66;

const standing = (scheme: Scheme, { who, spot, signals, fallen }: Stand, base: Base): Posture => {
  const { at, yaw } = fallen ? afterFall(scheme, who, fallen) : places(scheme, who)[spot];
  const s = who === 'lead' ? 1 : -1;
  return {
    ...base,
    at,
    yaw,
    pelvis: [0, 0, 37],
    chest: [1.6, 0, 56.5],
    look: signals ? [0.85, 0.45, 0.26] : [0.9, 0.2 * s, spot === 'clear' ? 0.12 : -0.1],
    left: signals
      ? { hand: [17, 10, 53], foot: [2.5, 5.5, 0] }
      : { hand: spot === 'ladder' ? [11, 8, 47] : [6, 10, 36], foot: [3 * s, 5.5, 0], elbow: [-6, 10, -6] },
    right: signals
      ? {
          hand: [3.5, -19.5, 35],
          foot: [-2, -5.5, 0],
          grip: [0.05, -0.12, -1],
          elbow: [-4, -14, -3],
          points: true,
        }
      : {
          hand: spot === 'beside' ? [14, -7, 58] : spot === 'ladder' ? [11, -8, 47] : [9, -6, 42],
          foot: [-2 * s, -5.5, 0],
          elbow: [-4, -14, -6],
        },
  };
};

type Place = { readonly at: Vec3; readonly yaw: number };

const places = (scheme: Scheme, who: Who): Readonly<Record<Spot, Place>> => {
  const { length, half, floor } = scheme;
  const z = floor ?? groundLevel;
  const lead = who === 'lead';
  return {
    clear: clearAt(scheme, who, lead ? -26 : -28),
    beside: { at: [length * (lead ? 0.6 : 0.4), -17, z], yaw: 90 },
    path: { at: [length / 2, lead ? -20 : 20, z], yaw: 90 },
    platform: { at: [length * (lead ? 0.63 : 0.36), -19, z], yaw: lead ? 106 : 74 },
    ladder: { at: [length - 36, half + 6, 2], yaw: 270 },
    plate: { at: [length * 0.55, -half + 2, 0], yaw: 90 },
  };
};

/** On the ground by a gable, looking at the building. */
const clearAt = ({ length, half }: Scheme, who: Who, x: number): Place => {
  const [y, turned] = who === 'lead' ? [-half * 0.5, 20] : [half * 0.25, -25];
  return { at: [x, y, groundLevel], yaw: x > length ? 180 - turned : turned };
};

/** Clear of what came down, by a gable it did not fall toward. Inches; ours. */
const afterFall = (scheme: Scheme, who: Who, { way, toward }: Fallen): Place => {
  const out = who === 'lead' ? 32 : 34;
  return clearAt(scheme, who, way === 'along' && toward < 0 ? scheme.length + out - 12 : -out);
};

const anchorAt = ({ site }: Shown, { length, half, floor }: Scheme): Vec3 | undefined => {
  if (site.ready.anchor === undefined) return undefined;
  return site.ready.anchor === 'wall'
    ? [length * 0.5, half - 3, 0.5]
    : [length * 0.5, 22, (floor ?? 0) + 0.5];
};
