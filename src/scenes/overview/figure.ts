import { add, cross, dot, lengthOf, lerp, scale, sub, unit, type Vec3 } from '../../core/geometry/vector';
import type { Mesh } from '../ink/mesh';
import type { Tone } from '../ink/palette';
import { ball, limb, type Basis } from './bodies';

/** A person as a posed skeleton, 70 in tall: targets for hands and feet, forward, to the left and up from where they stand. */
export type Posture = {
  readonly at: Vec3;
  /** Degrees the body looks, counterclockwise from the ridge's direction A to B. */
  readonly yaw: number;
  readonly pelvis: Vec3;
  readonly chest: Vec3;
  readonly look: Vec3;
  readonly left: Limbs;
  readonly right: Limbs;
  readonly dark: boolean;
  readonly harness: boolean;
};

export type Limbs = {
  readonly hand: Vec3;
  readonly foot: Vec3;
  readonly grip?: Vec3;
  readonly elbow?: Vec3;
  readonly knee?: Vec3;
  readonly toe?: Vec3;
  readonly points?: boolean;
};

export type Person = {
  readonly meshes: readonly Mesh[];
  readonly hands: { readonly left: Vec3; readonly right: Vec3 };
  readonly back: Vec3;
};

const norm = (v: Vec3): Vec3 => unit(v) ?? [0, 0, 1];

/** The joints of a posed body, building axes, and how far past its bones a limb was asked to reach, inches. */
export type Bones = {
  readonly pelvis: Vec3;
  readonly chest: Vec3;
  readonly head: Vec3;
  readonly arms: { readonly left: Bone; readonly right: Bone };
  readonly legs: { readonly left: Bone; readonly right: Bone };
};
export type Bone = { readonly from: Vec3; readonly joint: Vec3; readonly end: Vec3; readonly short: number };

const upperLower = { arm: [12, 10.5], leg: [17.5, 17] } as const;
/** The longest a wrist gets from its shoulder, and an ankle from its hip. */
export const reaches = { arm: 22.3, leg: 34.3 } as const;
/** From the wrist to the middle of the grip. */
export const gripAt = 2.2;

export const bonesOf = (posture: Posture): Bones => {
  const body = bodyOf('', posture);
  const [arm, leg] = [armBone, legBone].map((bone) => ({ left: bone(body, 1), right: bone(body, -1) }));
  const head = add(add(body.chest, scale(body.up, 9.6)), scale(norm(body.turn(posture.look)), 1.3));
  return {
    pelvis: body.pelvis,
    chest: body.chest,
    head,
    arms: arm as Bones['arms'],
    legs: leg as Bones['legs'],
  };
};

const limbsOf = ({ posture }: Body, side: 1 | -1): Limbs => (side === 1 ? posture.left : posture.right);

const armBone = (body: Body, side: 1 | -1): Bone => {
  const { chest, up, leftward, world, turn } = body;
  const limbs = limbsOf(body, side);
  const from = add(add(chest, scale(up, 1.2)), scale(leftward, side * 7.4));
  const pole = add(from, turn(limbs.elbow ?? [-6, side * 8, -8]));
  return { from, ...reach(from, world(limbs.hand), { bones: upperLower.arm, pole }) };
};

const legBone = (body: Body, side: 1 | -1): Bone => {
  const { pelvis, leftward, world, turn } = body;
  const limbs = limbsOf(body, side);
  const from = add(pelvis, scale(leftward, side * 3.6));
  const pole = add(pelvis, turn(limbs.knee ?? [20, side * 3, 0]));
  return { from, ...reach(from, add(world(limbs.foot), [0, 0, 3.2]), { bones: upperLower.leg, pole }) };
};

type Body = {
  readonly id: string;
  readonly forward: Vec3;
  readonly leftward: Vec3;
  readonly world: (q: Vec3) => Vec3;
  readonly turn: (q: Vec3) => Vec3;
  readonly pelvis: Vec3;
  readonly chest: Vec3;
  readonly up: Vec3;
  readonly front: Vec3;
  readonly posture: Posture;
};

const bodyOf = (id: string, posture: Posture): Body => {
  const a = (posture.yaw * Math.PI) / 180;
  const forward: Vec3 = [Math.cos(a), Math.sin(a), 0];
  const leftward: Vec3 = [-Math.sin(a), Math.cos(a), 0];
  const turn = (q: Vec3): Vec3 => add(add(scale(forward, q[0]), scale(leftward, q[1])), [0, 0, q[2]]);
  const world = (q: Vec3): Vec3 => add(posture.at, turn(q));
  const [pelvis, chest] = [world(posture.pelvis), world(posture.chest)];
  const up = norm(sub(chest, pelvis));
  return { id, forward, leftward, world, turn, pelvis, chest, up, front: norm(cross(leftward, up)), posture };
};

/** Where an elbow or knee goes so that a limb of two bones reaches its target, bent toward the pole. */
const reach = (from: Vec3, to: Vec3, { bones, pole }: Bend): Omit<Bone, 'from'> => {
  const [upper, lower] = bones;
  const full = upper + lower - 0.2;
  const far = lengthOf(sub(to, from));
  const end = far > full ? add(from, scale(sub(to, from), full / far)) : to;
  const length = Math.min(far, full);
  const along = norm(sub(end, from));
  const part = (upper * upper - lower * lower + length * length) / (2 * length);
  const out = Math.sqrt(Math.max(0, upper * upper - part * part));
  const toward = sub(pole, from);
  const aside = norm(sub(toward, scale(along, dot(toward, along))));
  return {
    joint: add(add(from, scale(along, part)), scale(aside, out)),
    end,
    short: Math.max(0, far - full),
  };
};
type Bend = { readonly bones: readonly [number, number]; readonly pole: Vec3 };

export const person = (id: string, posture: Posture): Person => {
  const body = bodyOf(id, posture);
  const left = armOf(body, 1);
  const right = armOf(body, -1);
  return {
    meshes: [
      ...trunk(body),
      ...legOf(body, 1),
      ...legOf(body, -1),
      ...left.meshes,
      ...right.meshes,
      ...head(body),
    ],
    hands: { left: left.hand, right: right.hand },
    back: add(add(body.chest, scale(body.front, -5)), scale(body.up, 1)),
  };
};

const trunk = ({ id, pelvis, chest, up, leftward, forward, front, posture }: Body): readonly Mesh[] => {
  const hip = (s: number): Vec3 => add(add(pelvis, scale(leftward, s * 3.6)), up);
  const height = lengthOf(sub(chest, pelvis));
  const waist = (s: number): Vec3 => add(add(pelvis, scale(leftward, s * 2.4)), scale(up, 4));
  const ribs = (s: number): Vec3 => add(add(chest, scale(leftward, s * 3.4)), scale(up, -2.5));
  const torso = [
    ...[1, -1].flatMap((s) => limb({ from: waist(s), to: ribs(s), radii: [4.2, 5.1], sides: 14 })),
    ...limb({
      from: add(chest, scale(leftward, -4.2)),
      to: add(chest, scale(leftward, 4.2)),
      radii: [4.4, 4.4],
      sides: 14,
    }),
  ];
  const covers = (p: Vec3): boolean => {
    const q = dot(sub(p, pelvis), up) / height;
    const side = Math.abs(dot(sub(p, chest), leftward));
    return (q > 0.3 && q < 0.4) || (q > 0.66 && q < 0.75) || (q >= 0.75 && Math.abs(side - 3.6) < 0.8);
  };
  const straps = posture.harness
    ? [1, -1].map((s): Mesh => ({
        id,
        tone: 'pants',
        triangles: limb({
          from: add(add(add(pelvis, scale(leftward, s * 4.6)), scale(up, 2)), scale(front, -4.4)),
          to: add(add(add(chest, scale(leftward, s * 1.2)), scale(up, 1)), scale(front, -5)),
          radii: [0.6, 0.6],
          sides: 6,
        }),
      }))
    : [];
  const basis: Basis = [forward, leftward, up];
  const belt = [
    ...limb({
      from: add(add(pelvis, scale(leftward, -3)), scale(up, 3.1)),
      to: add(add(pelvis, scale(leftward, 3)), scale(up, 3.1)),
      radii: [4.55, 4.55],
      sides: 14,
    }),
    ...[1, -1].flatMap((s) =>
      ball({
        at: add(add(pelvis, scale(leftward, s * 6.6)), scale(up, -0.3)),
        radii: [2.6, 1.7, 3.6],
        basis,
      }),
    ),
  ];
  return [
    { id, tone: 'pants', triangles: limb({ from: hip(1), to: hip(-1), radii: [4.5, 4.5], sides: 14 }) },
    { id, tone: 'vest', triangles: torso, band: { tone: 'band', covers } },
    { id, tone: 'belt', triangles: belt.slice(0) },
    ...straps,
  ];
};

const legOf = (body: Body, side: 1 | -1): readonly Mesh[] => {
  const { id, forward, world, turn } = body;
  const limbs = limbsOf(body, side);
  const foot = world(limbs.foot);
  const { from: hip, joint, end } = legBone(body, side);
  const way = limbs.toe ? norm(turn(limbs.toe)) : forward;
  const heel = add(foot, add(scale(way, -1.8), [0, 0, 1.6]));
  const toe = add(foot, add(scale(way, 5.4), [0, 0, 1.35]));
  return [
    {
      id,
      tone: 'pants',
      triangles: [
        ...limb({ from: hip, to: joint, radii: [4.1, 2.9] }),
        ...limb({ from: joint, to: end, radii: [2.9, 2.3] }),
      ],
    },
    {
      id,
      tone: 'boot',
      triangles: [
        ...limb({ from: heel, to: toe, radii: [1.75, 1.45], sides: 9 }),
        ...limb({ from: add(foot, [0, 0, 3.6]), to: heel, radii: [2.15, 1.8], sides: 9 }),
      ],
    },
  ];
};

const armOf = (body: Body, side: 1 | -1): { readonly meshes: readonly Mesh[]; readonly hand: Vec3 } => {
  const { id, turn, posture } = body;
  const limbs = limbsOf(body, side);
  const skin: Tone = posture.dark ? 'skin2' : 'skin';
  const { from: shoulder, joint, end } = armBone(body, side);
  const cuff = lerp(joint, end, 0.55);
  const way = norm(limbs.grip ? turn(limbs.grip) : sub(end, joint));
  const palm = add(end, scale(way, 3));
  const finger = limbs.points
    ? limb({ from: palm, to: add(end, scale(way, 6.2)), radii: [0.75, 0.6], sides: 7 })
    : [];
  return {
    meshes: [
      {
        id,
        tone: 'shirt',
        triangles: [
          ...limb({ from: shoulder, to: joint, radii: [2.75, 2] }),
          ...limb({ from: joint, to: cuff, radii: [2, 1.75] }),
        ],
      },
      { id, tone: skin, triangles: limb({ from: cuff, to: end, radii: [1.5, 1.25], sides: 9 }) },
      {
        id,
        tone: 'glove',
        triangles: [...limb({ from: end, to: palm, radii: [1.45, 1.25], sides: 9 }), ...finger],
      },
    ],
    hand: add(end, scale(way, gripAt)),
  };
};

const head = ({ id, chest, up, turn, posture }: Body): readonly Mesh[] => {
  const skin: Tone = posture.dark ? 'skin2' : 'skin';
  const front = norm(turn(posture.look));
  const neck = add(chest, scale(up, 4.6));
  const middle = add(add(neck, scale(up, 5)), scale(front, 1.3));
  const left = norm(cross([0, 0, 1], front));
  const top = cross(front, left);
  const basis: Basis = [front, left, top];
  const hat = add(middle, scale(top, 1.7));
  const at = (f: number, u: number, from: Vec3): Vec3 => add(add(from, scale(front, f)), scale(top, u));
  return [
    {
      id,
      tone: skin,
      triangles: [
        ...limb({ from: neck, to: add(neck, scale(up, 3.2)), radii: [2.2, 2.1], sides: 9 }),
        ...ball({ at: middle, radii: [4.1, 3.25, 4.9], basis, fine: [14, 10] }),
      ],
    },
    { id, tone: 'hair', triangles: ball({ at: at(-0.7, 0.4, middle), radii: [3.9, 3.45, 4.3], basis }) },
    {
      id,
      tone: 'hat',
      triangles: [
        ...ball({ at: hat, radii: [4.9, 4.15, 4.5], basis, upTo: 0.52, fine: [18, 8] }),
        ...ball({ at: at(1, 0, hat), radii: [6.6, 4.9, 0.55], basis, fine: [18, 6] }),
        ...limb({ from: at(-3.1, 3.4, hat), to: at(3.1, 3.4, hat), radii: [0.7, 0.7], sides: 7 }),
      ],
    },
    {
      id,
      tone: 'glass',
      triangles: limb({
        from: add(at(3.2, 0.4, middle), scale(left, 2.2)),
        to: add(at(3.2, 0.4, middle), scale(left, -2.2)),
        radii: [0.75, 0.75],
        sides: 7,
      }),
    },
  ];
};
