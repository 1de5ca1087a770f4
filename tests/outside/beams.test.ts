import { describe, expect, it } from 'vitest';
import { stiffnessOf } from '../../src/core/mechanics/section';
import { raisedTiePull, thrustAtHeel } from '../../src/core/advice/thrust';
import { lineSag } from '../../src/core/level/toolTruth';
import { lumber } from '../../src/core/stock/lumber';
import { all, pin, roller, sunk } from '../mechanics/evenBeam';

/** Published beam formulas against the frame solver, and figures that were reckoned with them. */

const joist = lumber[3]!;
const [load, point, long] = [2, 150, 120];
const stiffness = stiffnessOf(joist, { stiffness: 1.6e6, weight: 0 });
const ei = stiffness.upright;
const halves = [0, long / 2, long];

// AWC design aid 6 has the list of cases (read); these formulas were read in other lists. Exact fractions.
describe('beam formulas', () => {
  const cube = long * long * long;
  it.each([
    ['simple, even: 5wL⁴/384EI', [pin, [], roller], 'even', 1, (5 * load * cube * long) / (384 * ei)],
    ['simple, in the middle: PL³/48EI', [pin, [], roller], 'point', 1, (point * cube) / (48 * ei)],
    ['fixed at one end, even: wL⁴/8EI', [all, [], []], 'even', 2, (load * cube * long) / (8 * ei)],
    ['fixed at one end, at its tip: PL³/3EI', [all, [], []], 'tip', 2, (point * cube) / (3 * ei)],
    ['fixed at both, even: wL⁴/384EI', [all, [], all], 'even', 1, (load * cube * long) / (384 * ei)],
    ['fixed at both, in the middle: PL³/192EI', [all, [], all], 'point', 1, (point * cube) / (192 * ei)],
  ] as const)('%s', (_, held, how, place, exact) => {
    const loads = how === 'even' ? { even: load } : { point: [how === 'tip' ? 2 : 1, point] as const };
    const found = sunk({ at: halves, held, stiffness, ...loads }, place);
    expect(Math.abs(found / exact - 1)).toBeLessThan(1e-9);
  });
});

// Facts reckoned from the same formulas, inches to four places.
describe('how far sticks sink', () => {
  const eastern = { stiffness: 1.6e6, weight: 0 };
  const simple = (feet: number) => ({ at: [0, feet * 6, feet * 12], held: [pin, [], roller] });
  const of = (n: number) => stiffnessOf(lumber[n]!, eastern);

  it('a 2×10 over 16 ft: 0.1863 under 20 lb a foot, and under 200 lb in the middle', () => {
    expect(sunk({ ...simple(16), stiffness: of(3), even: 20 / 12 }, 1)).toBeCloseTo(0.1863, 4);
    // 200 lb at the middle of 16 ft is 320 lb even × 8/5 of the formulas' 5/384 to 1/48.
    expect(sunk({ ...simple(16), stiffness: of(3), point: [1, 200] }, 1)).toBeCloseTo(0.1863, 4);
  });

  it('a 2×8 tail of 24 in with 200 lb at its tip: 0.0121', () => {
    const tail = { at: [0, 24], held: [all, []], stiffness: of(2), point: [1, 200] as const };
    expect(sunk(tail, 1)).toBeCloseTo(0.0121, 4);
  });

  it('an engineered 1 3/4 × 11 7/8 of 6.06 lb a foot over 20 ft: 0.0447', () => {
    const lvl = stiffnessOf({ thickness: 1.75, depth: 11.875 }, { stiffness: 2e6, weight: 0 });
    expect(sunk({ ...simple(20), stiffness: lvl, even: 6.06 / 12 }, 1)).toBeCloseTo(0.0447, 4);
  });

  it('a 2×8 of 2.64 lb a foot over 16 ft: 0.0511', () => {
    expect(sunk({ ...simple(16), stiffness: of(2), even: 2.64 / 12 }, 1)).toBeCloseTo(0.0511, 4);
  });

  // 0.0245 is wL⁴/185EI, at 0.4215 L from the ends.
  it('a 2×10 over two spans of 12 ft with 20 lb a foot: 0.0245 at its deepest', () => {
    const deepest = 0.4215 * 144;
    const at = [0, deepest, 144, 288 - deepest, 288];
    const held = [pin, [], roller, [], roller];
    expect(sunk({ at, held, stiffness: of(3), even: 20 / 12 }, 1)).toBeCloseTo(0.0245, 4);
  });
});

// Section properties as reckoned from bd³/12 and bd²/6, in³ and in⁴ with the places told.
describe('sections', () => {
  it.each([
    [1.5, 3.5, 5.36],
    [1.5, 5.5, 20.8],
    [1.5, 7.25, 47.63],
    [1.5, 9.25, 98.93],
    [1.5, 11.25, 177.98],
  ])('%f × %f: %f in⁴', (thickness, depth, inertia) => {
    const { upright } = stiffnessOf({ thickness, depth }, { stiffness: 1, weight: 0 });
    expect(Math.abs(upright - inertia)).toBeLessThanOrEqual(0.005 + 1e-9);
  });

  it.each([
    [9.25, 115.4],
    [9.5, 125.0],
    [11.25, 207.6],
    [11.875, 244.2],
    [14, 400.2],
    [16, 597.3],
    [18, 850.5],
  ])('1 3/4 × %f: %f in⁴', (depth, inertia) => {
    const { upright } = stiffnessOf({ thickness: 1.75, depth }, { stiffness: 1, weight: 0 });
    expect(Math.abs(upright - inertia)).toBeLessThanOrEqual(0.05 + 1e-9);
  });
});

describe('what rafters push at their heels', () => {
  // An article on rafter ties: 1,440 lb (read). 24 ft, 4 in 12, 24 in on center, 40 psf (inputs reckoned back).
  it('1,440 lb at 4 in 12 over 24 ft with 80 lb a foot', () => {
    expect(thrustAtHeel(80, 24, 4)).toBe(1440);
  });

  it('is more the higher the tie: 1/(1 − share), nothing at the ridge', () => {
    expect(raisedTiePull(0)).toBe(1);
    expect(raisedTiePull(1 / 3)).toBeCloseTo(1.5, 12);
    for (const share of [1, 1.2, -0.1]) expect(raisedTiePull(share)).toBeUndefined();
  });
});

// w·L²/8T for a line of 0.0009 lb a foot pulled with 15 lb (reckoned; the weight is from memory): 0.036 over 20 ft, 0.144 over 40.
it.each([
  [20, 0.036],
  [40, 0.144],
])('a string of %i ft hangs %f in', (feet, sag) => {
  expect(lineSag(feet * 12, 15)).toBeCloseTo(sag, 3);
});
