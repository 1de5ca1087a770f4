import { describe, expect, it } from 'vitest';
import { adviceOn } from '../../src/core/advice/advice';
import { limits } from '../../src/core/roof/limits';
import { collarShare } from '../../src/core/roof/ties';
import { codesOf, planOf, rafterOf, roofOf, type Changes } from '../roof/roofs';

/** Limits of the code, each at its number: the last roof that keeps to it and the first that does not. */

const ties = (height: number) => ({ joists: { height } });
const section = (depth: number) => ({ rafter: { thickness: 1.5, depth } });
const flat = (thickness: number, spacing = 24) => ({
  ...section(9.25),
  rakeOverhang: 16,
  rake: { lookouts: { thickness, spacing } },
});
const { topHeight } = roofOf().ridges[0]!;

describe('IRC R802, read second hand', () => {
  it.each<readonly [string, string, Changes, Changes]>([
    // R802.3: a board of 1 in nominal, 3/4 actual.
    [
      'ridgeThin',
      'R802.3',
      { ridge: { thickness: 0.75, depth: 9.25 } },
      { ridge: { thickness: 0.74, depth: 9.25 } },
    ],
    // R802.3 (2018 on): no continuous tie, so a beam.
    ['tiesAbsent', 'R802.3', {}, { joists: false }],
    // R802.4.4: under 3 in 12 the ridge is a beam.
    ['slopeLow', 'R802.4.4', { slope: { rise: 3, run: 12 } }, { slope: { rise: 2.99, run: 12 } }],
    // R802.4.6: collars 4 ft on center.
    ['collarsWide', 'R802.4.6', { collars: { every: 2 } }, { collars: { every: 3 } }],
    // R802.3.1 up to 2015: ties 4 ft on center.
    ['tiesWide', 'R802.3.1', { joists: { every: 2 } }, { joists: { every: 3 } }],
    // R802.5.2: ties in the bottom third.
    ['tiesHigh', 'R802.5.2', ties(topHeight / 3 - 0.01), ties(topHeight / 3 + 0.01)],
    // R802.6: 1 1/2 in on wood.
    ['bearingShort', 'R802.6', { seat: 1.5 }, { seat: 1.49 }],
    // R802.7.1: a quarter of the depth at the ends; the notch is seat · m/g.
    ['notchDeep', 'R802.7.1', { seat: 4.05 }, { seat: 4.06 }],
    // R802.7.1: a sixth of the depth away from the ends, 9 1/4 / 6 = 1.542, and not in the middle third.
    ['lookoutNotchDeep', 'R802.7.1', flat(1.54), flat(1.55)],
    // On a run of 144 that is 62 to 110 from the tail cut, level: 69.3 to 123 up the edge. At 60 in, 60 and 120.
    ['lookoutNotchMiddle', 'R802.7.1', flat(1.5, 64), flat(1.5, 60)],
    // R802.7.1.1: 3 1/2 in left and 24 in of reach.
    ['tailThin', 'R802.7.1.1', { ...section(5.5), seat: 4.47 }, { ...section(5.5), seat: 4.48 }],
    ['tailLong', 'R802.7.1.1', { overhang: 24 }, { overhang: 24.01 }],
  ])('%s: %s', (code, _, keeps, breaks) => {
    expect(codesOf(keeps)).not.toContain(code);
    expect(codesOf(breaks)).toContain(code);
  });

  // R802.4.6: the upper third; 1×4 at the least, 3 1/2 in.
  it('collars sit in the upper third', () => {
    const collar = roofOf({ collars: { every: 2 } }).ties.find(({ kind }) => kind === 'collar');
    expect(collarShare).toBe(2 / 3);
    expect(collar?.height).toBeCloseTo((topHeight * 2) / 3, 9);
    expect(limits.collarDepth).toBe(3.5);
  });

  // R802.4.1: the span of a rafter is its horizontal projection, not its length.
  it('spans are level', () => {
    const { run, lineLength } = rafterOf();
    expect(run).toBe(144);
    expect(lineLength).toBeGreaterThan(run);
  });
});

describe('R602.10.8.2 and the seat', () => {
  const told = (changes: Changes) => {
    const plan = planOf(changes);
    return adviceOn({ roof: { plan, cuts: rafterOf(changes), topHeight } }).map(({ code }) => code);
  };
  // IRC R602.10.8.2 (second hand): over 15 1/4 in from plate to top of rafter blocks are not enough.
  it('15 1/4 in from plate to top', () => {
    const heel = (depth: number) => ({ ...section(depth), seat: 2.25 });
    const base = rafterOf(heel(11.25)).heightAbovePlate;
    const g = Math.sqrt(1.25);
    const deepest = 11.25 + (15.25 - base) / g;
    expect(told(heel(deepest))).not.toContain('heelTall');
    expect(told(heel(deepest + 0.01))).toContain('heelTall');
  });

  // NAVEDTRA 14044 p. 2-11 (read): 2 in of stock left over the seat.
  it('2 in left over the seat', () => {
    const left = (depth: number) => ({ ...section(depth), seat: 3.5, overhang: 0 });
    const notch = rafterOf(left(5.5)).notchDepth;
    expect(told(left(notch + 2))).not.toContain('seatDeep');
    expect(told(left(notch + 1.99))).toContain('seatDeep');
  });

  // A trade magazine's answer, "Sizing the birdsmouth" (read): a seat is no wider than the plate.
  it('a seat wider than its plate is refused', () => {
    expect(() => planOf({ plate: { width: 3.5 }, seat: 3.5 })).not.toThrow();
    expect(() => planOf({ plate: { width: 3.5 }, seat: 3.51 })).toThrow('seat');
  });
});
