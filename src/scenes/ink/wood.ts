import { dice, hash, mix, noise1, noise2, smooth } from './noise';

/** Growth rings about a pith line that leaves the board at a small angle; knots push the rings aside. Inches. */
export type Wood = {
  readonly seed: number;
  readonly pith: readonly [number, number];
  readonly lean: readonly [number, number];
  readonly pitch: number;
  readonly phase: number;
  readonly tone: number;
  readonly knots: readonly Knot[];
};
export type Knot = { readonly along: number; readonly across: number; readonly radius: number };

/** `pitch`: distance of the rings. `lean`: how fast the pith leaves through the thickness. */
export const woodOf = (seed: number, { pitch, lean }: { pitch: number; lean: number }): Wood => {
  const roll = dice(seed * 7919 + 17);
  roll();
  const pith: Wood['pith'] = [(roll() - 0.5) * 3.2, (roll() < 0.5 ? -1 : 1) * (1.2 + roll() * 2.6)];
  const leans: Wood['lean'] = [(roll() - 0.5) * 0.02, lean * (0.6 + roll() * 0.8) * (roll() < 0.5 ? -1 : 1)];
  const knotted = roll() < 0.55 ? 1 + Math.floor(roll() * 2) : 0;
  return {
    seed: Math.floor(roll() * 1e5),
    pith,
    lean: leans,
    pitch: pitch * (0.8 + roll() * 0.5),
    phase: roll() * 9,
    tone: roll(),
    knots: Array.from({ length: knotted }, () => ({
      along: (roll() - 0.5) * 90,
      across: (roll() - 0.5) * 3.4,
      radius: 0.3 + roll() * 0.4,
    })),
  };
};

type Spot = { readonly along: number; readonly across: number; readonly through: number };

/** How dark the wood is at a point, 0 early wood to 1 late wood, knots included. */
export const woodAt = (wood: Wood, { along: l, across: a, through: b }: Spot): number => {
  let aside = 0;
  let knot = 0;
  let knotAt = 0;
  for (const k of wood.knots) {
    const y = a - k.across;
    const d = Math.sqrt(((l - k.along) / 1.25) ** 2 + y * y) / k.radius;
    if (d >= 6) continue;
    aside -= (k.radius * 1.05 * Math.exp(-d * d * 0.16) * y) / (Math.abs(y) + 0.25 * k.radius);
    if (d >= 1.3) continue;
    const here = smooth(1.12, 0.92, d + (noise2(l * 3, a * 3, wood.seed) - 0.5) * 0.25);
    if (here > knot) [knot, knotAt] = [here, d];
  }
  const dark = ringAt(wood, { along: l, across: a + aside, through: b });
  if (knot <= 0) return dark;
  return mix(dark, 0.62 + 0.3 * (0.5 + 0.5 * Math.sin(knotAt * 15)) + 0.25 * smooth(0.8, 1.05, knotAt), knot);
};

const ringAt = (wood: Wood, { along: l, across: a, through: b }: Spot): number => {
  const s = wood.seed;
  const da = a - wood.pith[0] - wood.lean[0] * l - (noise1(l * 0.035 + wood.phase, s) - 0.5) * 1.3;
  const db = b - wood.pith[1] - wood.lean[1] * l - (noise1(l * 0.027 + wood.phase + 40, s) - 0.5) * 0.8;
  const fine =
    (noise2(l * 0.09, a * 0.55, s + 3) - 0.5) * 0.1 + (noise2(l * 0.5, a * 2.2, s + 4) - 0.5) * 0.018;
  const even = (Math.sqrt(da * da + db * db) + fine) / wood.pitch;
  const ring = even + noise1(even * 0.37 + wood.phase, s + 5) * 1.7 + noise1(even * 0.11, s + 6) * 2.2;
  const i = Math.floor(ring);
  return lateWood(ring - i, 0.55 + 0.3 * hash(i, s)) * (0.62 + 0.38 * hash(i, s + 1));
};

/** One year across: pale early wood, a ramp to dark late wood, a sharp edge. */
const lateWood = (part: number, wide: number): number => {
  if (part < wide) return (part / wide) ** 2.2 * 0.34;
  if (part < 0.93) return mix(0.34, 1, smooth(wide, 0.93, part));
  return 1 - smooth(0.93, 1, part) * 0.97;
};
