import { add, scale, type Vec3 } from '../../core/geometry/vector';
import { prism, stick } from '../../present/model/prism';
import { schemeOf, type Shown } from '../../present/model/scheme';
import type { About, Solid } from '../../present/model/solid';
import { cornerCamera, type Corner } from '../ink/camera';

/** Where the machine's hook hangs, and the end of the boom it hangs from. Inches. */

/** How high the hook stands over the ridge, and the boom's pin over the hook; ours. */
export const hookOver = 30;
const pinOver = 36;
/** What the boom needs over the ridge to be seen whole. */
export const boomRoom = hookOver + pinOver + 15;
/** Legs of a sling spread so far to each side of the hook at most: none lies flatter than 30 degrees. */
const mostSpread = hookOver * 1.7;

export type Slung = {
  readonly hook: Vec3;
  /** Where each leg goes round the ridge, along it. */
  readonly chokes: readonly number[];
  /** Top edge of the ridge and across its line, there. */
  readonly z: number;
  readonly y: number;
};

/** The sling and its hook, as long as the ridge hangs from the machine or waits to; nothing else without one. */
export const slungAt = (shown: Shown): Slung | undefined => {
  const { site, pose, level } = shown;
  if (!site.sling || site.down !== undefined) return undefined;
  const { length, floor, half } = schemeOf(shown);
  const { ridge } = pose;
  const z = ridge ? (ridge.A.z + ridge.B.z) / 2 : (floor ?? 0) + 1.5;
  const y = ridge ? (ridge.A.y + ridge.B.y) / 2 : half * 0.42 + level.plan.ridge.depth / 2;
  const middle = length / 2 + 4;
  const spread = Math.min(length * 0.21, mostSpread);
  const chokes = site.sling.hitch === 'one' ? [middle] : [middle - spread, middle + spread];
  return { hook: [middle, y, z + hookOver], chokes, z, y };
};

/** The pin that the ropes hang from: plumb over the hook. */
export const pinAt = ({ hook }: Slung): Vec3 => add(hook, [0, 0, pinOver]);

/** From the tip: how far away each part of the boom begins and ends, how high and thick it is. Inches; ours. */
const parts = [
  { from: 6, to: 62, high: 7, thick: 5.5 },
  { from: 58, to: 124, high: 9.5, thick: 7.5 },
  { from: 120, to: 200, high: 12, thick: 9.5 },
] as const;
/** A band of thicker steel at the mouth of each part, inches. */
const band = { long: 4, more: 1.4 } as const;

/** Of an inch away from the tip: to the left of who looks on, back, and down. Of length one. Ours. */
const way = { left: 0.766, back: 0.575, down: 0.287 } as const;
/** The boom runs out into the deck as it goes down: so far under the pin it is still whole, and so far gone. Inches. */
const runsOut = { full: 12, gone: 44 } as const;

/**
 * Level data say how far a machine reaches, not where it stands. It is drawn behind the building from whichever corner one
 * looks, so that it hides nothing of the work; it throws no shade on it either.
 */
export const boomSolids = (shown: Shown, corner: Corner): readonly Solid[] => {
  const slung = slungAt(shown);
  return slung ? boomAt(pinAt(slung), corner) : [];
};

export const boomAt = (pin: Vec3, corner: Corner): readonly Solid[] => {
  const { right, away } = cornerCamera(corner, { scale: 1, middle: [0, 0], target: [0, 0, 0] });
  const level = Math.hypot(away[0], away[1]);
  const along: Vec3 = [
    (away[0] / level) * way.back - right[0] * way.left,
    (away[1] / level) * way.back - right[1] * way.left,
    -way.down,
  ];
  const flat = Math.hypot(along[0], along[1]);
  const aside: Vec3 = [-along[1] / flat, along[0] / flat, 0];
  const about: About = {
    id: 'boom',
    role: 'boom',
    material: 'steel',
    shadowless: true,
    fade: { full: pin[2] - runsOut.full, gone: pin[2] - runsOut.gone },
  };
  const at = (far: number, up = 0): Vec3 => add(add(pin, scale(along, far)), [0, 0, up]);
  const piece = (from: Vec3, to: Vec3, size: { readonly high: number; readonly thick: number }): Solid =>
    stick(about, { from, to, wide: [0, 0, 1], width: size.high, thickness: size.thick });
  const up = (high: number): number => high / 2 - 1.5;
  const boxes = parts.flatMap(({ from, to, high, thick }) => [
    piece(at(from, up(high)), at(to, up(high)), { high, thick }),
    piece(at(from, up(high)), at(from + band.long, up(high)), {
      high: high + band.more,
      thick: thick + band.more,
    }),
  ]);
  return [...cheeks(about, { at, aside }), ...wheel(about, { pin, along, aside }), ...boxes];
};

/** Two plates past the end of the last part, with the pin between them. */
const cheeks = (
  about: About,
  { at, aside }: { readonly at: (far: number, up?: number) => Vec3; readonly aside: Vec3 },
): readonly Solid[] =>
  [-1, 1].map((side) =>
    prism(about, {
      outline: [
        [8, 5],
        [8, -4],
        [0, -3.4],
        [-3, -1.6],
        [-3, 1.6],
        [0, 3.4],
      ],
      place: ([far, up], k) => add(at(far, up), scale(aside, side * (1.6 + 0.7 * k))),
    }),
  );

const rim = 12;
const wheelRadius = 2.6;

/** The wheel the ropes run over. */
const wheel = (
  about: About,
  { pin, along, aside }: { readonly pin: Vec3; readonly along: Vec3; readonly aside: Vec3 },
): readonly Solid[] => [
  prism(about, {
    outline: Array.from({ length: rim }, (_, i) => {
      const a = (2 * Math.PI * i) / rim;
      return [wheelRadius * Math.cos(a), wheelRadius * Math.sin(a)] as const;
    }),
    place: ([far, up], k) => add(add(add(pin, scale(along, far)), [0, 0, up]), scale(aside, -0.8 + 1.6 * k)),
  }),
];
