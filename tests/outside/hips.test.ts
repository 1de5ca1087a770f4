import { describe, expect, it } from 'vitest';
import { fractionText, toFraction } from '../../src/core/units/fraction';
import { degreesOf } from '../../src/present/degrees';
import { hipRoof, jacksOn, onlyHip } from '../roof/hips';

/**
 * Published figures of hips and their jacks, each held to its own rounding. NAV is NAVEDTRA 14044, Builder 3 & 2, vol. 2,
 * ch. 2; the table is the one on framing squares.
 */

const at = (rise: number, more: object = {}) => ({ slope: { rise, run: 12 }, seat: 1.5, ...more });
const tape = (inches: number): string => fractionText(toFraction(inches));
/** Per foot of common run; the sample's is 12 ft. */
const perFoot = (inches: number): number => inches / 12;

// Unit rise; hip a foot of common run, differences of jacks at 16 and 24 on center, side cuts against 12, both pitches.
// Rows 7, 8, 9, 13 and 16 hold spot values that were read (NAV pp. 2-12 to 2-33, US Army EN0069A); the rest are reckoned
// from the formulas printed with the table.
const square = [
  [2, 17.09, 16.22, 24.33, 11.837, 11.918, 9.462, 6.721],
  [3, 17.23, 16.49, 24.74, 11.642, 11.817, 14.036, 10.025],
  [4, 17.44, 16.87, 25.3, 11.384, 11.68, 18.435, 13.263],
  [5, 17.69, 17.33, 26.0, 11.077, 11.511, 22.62, 16.416],
  [6, 18.0, 17.89, 26.83, 10.733, 11.314, 26.565, 19.471],
  [7, 18.36, 18.52, 27.78, 10.365, 11.093, 30.256, 22.415],
  [8, 18.76, 19.23, 28.84, 9.985, 10.854, 33.69, 25.239],
  [9, 19.21, 20.0, 30.0, 9.6, 10.601, 36.87, 27.938],
  [10, 19.7, 20.83, 31.24, 9.219, 10.339, 39.806, 30.509],
  [11, 20.22, 21.7, 32.56, 8.846, 10.07, 42.51, 32.95],
  [12, 20.78, 22.63, 33.94, 8.485, 9.798, 45.0, 35.264],
  [13, 21.38, 23.59, 35.38, 8.139, 9.526, 47.291, 37.453],
  [14, 22.0, 24.59, 36.88, 7.809, 9.257, 49.399, 39.521],
  [15, 22.65, 25.61, 38.42, 7.496, 8.991, 51.34, 41.473],
  [16, 23.32, 26.67, 40.0, 7.2, 8.731, 53.13, 43.314],
  [17, 24.02, 27.74, 41.62, 6.92, 8.478, 54.782, 45.05],
  [18, 24.74, 28.84, 43.27, 6.656, 8.232, 56.31, 46.686],
] as const;

const tan = ({ rise, run }: { readonly rise: number; readonly run: number }): number => rise / run;
/** The table has hundredths, some of them cut off and not rounded (11 in 12 at 16 on center). */
const hundredth = 0.01;

describe('the framing square, hips and jacks', () => {
  it.each(square)('%i in 12', (rise, hip, at16, at24, jackCut, hipCut, pitch, hipPitch) => {
    const found = onlyHip(at(rise));
    const jacks = jacksOn('both', at(rise));
    expect(Math.abs(perFoot(found.lineLength) - hip)).toBeLessThan(hundredth);
    expect(Math.abs(jacks.difference - at24)).toBeLessThan(hundredth);
    expect(Math.abs(jacksOn('both', at(rise, { spacing: 16 })).difference - at16)).toBeLessThan(hundredth);
    expect(12 * tan(jacks.cheeks[0]!.cheekAngle)).toBeCloseTo(jackCut, 2);
    for (const { cheekAngle } of found.cheeks) expect(12 * tan(cheekAngle)).toBeCloseTo(hipCut, 2);
    expect(degreesOf(jacks.slope)).toBeCloseTo(pitch, 2);
    expect(degreesOf(found.slope)).toBeCloseTo(hipPitch, 2);
  });
});

describe('worked examples of hips', () => {
  // NAV p. 2-22, fig. 2-31 (rule read; 1 1/16 read second hand): half the 45° thickness of a 1 1/2 in piece, laid off level.
  it.each(['betweenCommons', 'againstRidge'])('W11: shortening %s', (hipTop) => {
    const { shorteningTop = 0 } = hipRoof({ hipTop }).hips?.[0] ?? {};
    expect(tape(shorteningTop)).toBe('1 1/16');
    expect(shorteningTop).toBeCloseTo(2.121 / 2, 3);
  });

  // NAV p. 2-24 (read): plumb and seat cuts at 17 and the rise; 17 stands for 16.97.
  it.each([4, 6, 8, 12])('W12: cuts of a hip at 17 and %i', (rise) => {
    expect(Math.abs(degreesOf(onlyHip(at(rise)).slope) - degreesOf({ rise, run: 17 }))).toBeLessThan(0.06);
  });

  // NAV p. 2-31, fig. 2-52 (read): 8 in 12 at 16 on center; the shortest jack 19.23, the next twice that.
  it('W15: jacks at 8 in 12', () => {
    const lengths = jacksOn('both', at(8, { spacing: 16, span: `21' 4"` })).lineLengths;
    expect(lengths[0]).toBeCloseTo(19.23, 2);
    expect(lengths[1]).toBeCloseTo(38.46, 2);
  });

  // NAV p. 2-33 (read): the jack's side cut at 8 in 12 is laid out with 12 and 10.
  it('W17: side cut of a jack at 8 in 12', () => {
    const [cheek] = jacksOn('both', at(8)).cheeks;
    expect(degreesOf(cheek!.cheekAngle)).toBeCloseTo(degreesOf({ rise: 12, run: 14.42 }), 1);
    expect(Math.abs(12 * tan(cheek!.cheekAngle) - 10)).toBeLessThan(1 / 32);
  });

  // NAV p. 2-33 (rule read): a hip jack is shortened by half the 45° thickness of the hip.
  it('W18: shortening of a jack', () => {
    expect(jacksOn('both').shorteningTop).toBeCloseTo(1.061, 3);
    expect(jacksOn('both', { hip: { thickness: 3, depth: 9.25 } }).shorteningTop).toBeCloseTo(2.121, 3);
  });

  // A course deck on hip ridges (read): 28 by 64 ft has a ridge of 36 ft, 3/4 in more at an end with a common,
  // 1 13/16 in more at one without.
  it.each([
    ['betweenCommons', '3/4', 0.75],
    ['againstRidge', '1 13/16', 1.811],
  ])('W23 and W24: ridge %s', (hipTop, more, exact) => {
    const [ridge] = hipRoof({ span: `28'`, length: `64'`, hipTop }).ridges;
    expect(ridge?.lineLength).toBeCloseTo(36 * 12, 9);
    const atEachEnd = ((ridge?.length ?? 0) - 36 * 12) / 2;
    expect(tape(atEachEnd)).toBe(more);
    expect(atEachEnd).toBeCloseTo(exact, 3);
  });

  // Radford's Cyclopedia of Construction, v. 3 (partly read): 6 in 12 over a run of 11 1/4 ft; hip 16 ft 10 1/2 in.
  it('W40: a hip over a run of 11 1/4 ft', () => {
    const { lineLength } = onlyHip({ span: `22' 6"` });
    expect(tape(lineLength)).toBe('202 1/2');
  });

  // Backing and drop of a 1 1/2 in hip, reckoned from the published formulas; 1/3 at 6 in 12 was read.
  it.each([
    [4, 0.2294, 12.92, 0.172, 0.177],
    [6, 0.3333, 18.43, 0.25, 0.265],
    [9, 0.4685, 25.1, 0.351, 0.398],
  ])('backing and drop at %i in 12', (rise, tangent, angle, deep, plumb) => {
    const { backing, drop } = onlyHip(at(rise));
    for (const turn of backing) {
      expect(tan(turn)).toBeCloseTo(tangent, 4);
      expect(degreesOf(turn)).toBeCloseTo(angle, 2);
      expect(0.75 * tan(turn)).toBeCloseTo(deep, 3);
    }
    expect(drop).toBeCloseTo(plumb, 3);
  });

  // IRC R802.3 (2006 text, read second hand): as deep as the cut end of the rafter, 8.106 in for 7 1/4 at 6 in 12 (row 1.2).
  it.each([
    [7.25, true],
    [8.1, true],
    [8.11, false],
    [9.25, false],
  ])('1.6: a hip %f in deep is warned of: %s', (depth, warned) => {
    const codes = hipRoof({ hip: { thickness: 1.5, depth } }).cautions.map(({ code }) => code);
    expect(codes.includes('hipShallow')).toBe(warned);
  });
});
