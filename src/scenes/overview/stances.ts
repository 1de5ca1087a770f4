import type { Vec3 } from '../../core/geometry/vector';

/** Ways to be on one's feet or knees. Inches: forward, to the left, up from where one stands. */

/** How high the hips are, how far the back leans, and what that asks of a body. */
export type Stance = {
  readonly hips: Vec3;
  readonly chest: Vec3;
  /** Right and left shoulder. */
  readonly shoulders: readonly [Vec3, Vec3];
  readonly lean: number;
  readonly legs: Legs;
  readonly effort: number;
};

/** On both feet, on one knee, or on both. */
export type Legs = 'feet' | 'knee' | 'knees';

const radians = Math.PI / 180;
const spine = 19.5;

type Bent = Pick<Stance, 'hips' | 'lean' | 'legs' | 'effort'>;

const stanceOf = ({ hips, lean, legs, effort }: Bent): Stance => {
  const [s, c] = [Math.sin(lean * radians), Math.cos(lean * radians)];
  const chest: Vec3 = [hips[0] + spine * s, 0, hips[2] + spine * c];
  const shoulder = (side: 1 | -1): Vec3 => [chest[0] + 1.2 * s, side * 7.4, chest[2] + 1.2 * c];
  return { hips, chest, shoulders: [shoulder(-1), shoulder(1)], lean, legs, effort };
};

const standing = [3, 14, 28, 42, 58, 72].map((lean) => {
  const s = Math.sin(lean * radians);
  return stanceOf({ hips: [-8.5 * s, 0, 35.8 - 4 * s], lean, legs: 'feet', effort: lean / 9 });
});
const squatting = [15, 32, 52].map((lean) =>
  stanceOf({ hips: [-6, 0, 22], lean, legs: 'feet', effort: 6 + lean / 12 }),
);
const kneeling = [8, 25, 42, 58, 74].map((lean) =>
  stanceOf({ hips: [-3 - lean / 30, 0, 18], lean, legs: 'knee', effort: 2.5 + lean / 16 }),
);
const crawling = [58, 72, 84, 94].map((lean) =>
  stanceOf({ hips: [-3, 0, 18], lean, legs: 'knees', effort: 3.5 + lean / 16 }),
);
export const stances: Readonly<Record<Legs, readonly Stance[]>> = {
  feet: [...standing, ...squatting],
  knee: kneeling,
  knees: crawling,
};
export const allLegs = ['feet', 'knee', 'knees'] as const;

type Feet = {
  readonly left: Vec3;
  readonly right: Vec3;
  /** Boots and knees that have to be on something. */
  readonly rests: readonly Vec3[];
};
type Pair = Pick<Feet, 'left' | 'right'>;
const resting = ({ left, right }: Pair, knees: readonly Vec3[] = []): Feet => ({
  left,
  right,
  rests: [left, right, ...knees],
});
/** Where a knee comes down, to the left or the right. */
const [kneeLeft, kneeRight]: readonly [Vec3, Vec3] = [
  [1, 5, 0],
  [1, -5, 0],
];
const feet: Readonly<Record<Legs, Feet>> = {
  feet: resting({ left: [3, 5.5, 0], right: [-2, -5.5, 0] }),
  knee: resting({ left: [9, 6, 0], right: [-17, -5, 0] }, [kneeRight]),
  knees: resting({ left: [-17, 5, 0], right: [-17, -5, 0] }, [kneeLeft, kneeRight]),
};

/** Feet as they stand for a stance. */
export const feetOf = (legs: Legs): Feet => feet[legs];

export const shoulderOf = ({ shoulders }: Stance, side: 1 | -1): Vec3 => shoulders[side === 1 ? 1 : 0];
