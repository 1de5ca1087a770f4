import { describe, expect, it } from 'vitest';
import { fractionText, toFraction } from '../../src/core/units/fraction';
import { rafterOf, roofOf } from '../roof/roofs';

/** Examples that others have published, each held to its own rounding. NAV is NAVEDTRA 14044, Builder 3 & 2, vol. 2, ch. 2. */

const slope = (rise: number) => ({ rise, run: 12 });
const tape = (inches: number): string => fractionText(toFraction(inches));

describe('worked examples of common rafters', () => {
  // NAV p. 2-12, example 1 (read): 7 in 12 over a span of 16 ft; 13.89 a foot, 111.12 in, told as 111 1/8 in.
  it('W1: 7 in 12 over 16 ft', () => {
    const { lineLength } = rafterOf({ slope: slope(7), span: `16'` });
    expect(tape(lineLength)).toBe('111 1/8');
    expect(Math.abs(lineLength - 111.12)).toBeLessThan(8 * 0.005);
  });

  // NAV p. 2-12, example 2 (inputs read; the last line is cut off in the copy): 6 in 12 over 25 ft, rise 6.25 ft.
  it('W2: 6 in 12 over 25 ft', () => {
    const { rise, run, lineLength } = rafterOf({ slope: slope(6), span: `25'` });
    expect(run).toBe(150);
    expect(rise).toBe(75);
    expect(tape(lineLength)).toBe('167 11/16');
  });

  // NAV p. 2-13 (read): half a 1 1/2 in ridge, 3/4 in, is taken off level. Along the edge at 8 in 12: 0.901 (reckoned).
  it('W3: shortening by half the ridge', () => {
    const { shortening, lineLength, bodyLength } = rafterOf({ slope: slope(8), seat: 2 });
    expect(shortening).toBe(3 / 4);
    expect(lineLength - bodyLength).toBeCloseTo(0.901, 3);
  });

  // NAV p. 2-13 (formula read): the tail is the length a foot times the projection in feet.
  it('W4: a tail of 10 in at 8 in 12', () => {
    const { tailLength } = rafterOf({ slope: slope(8), seat: 2, overhang: 10 });
    expect(tailLength).toBeCloseTo(12.02, 2);
    expect(Math.abs(tailLength - (14.42 * 10) / 12)).toBeLessThan(0.005);
  });

  // NAV p. 2-15 (inputs read, lengths reckoned): 8 in 12 stepped off over a run of 5 ft 9 in.
  it('W5: a run of 5 ft 9 in at 8 in 12', () => {
    const { run, lineLength, tailLength } = rafterOf({
      slope: slope(8),
      span: `11' 6"`,
      overhang: 10,
      seat: 2,
    });
    expect(run).toBe(69);
    expect(lineLength).toBeCloseTo(82.93, 2);
    expect(tailLength).toBeCloseTo(12.02, 2);
  });

  // US Army subcourse EN5156 p. 3-9 (read): 13 in 12 over 20 ft 8 in; 17.69 × 10 1/3 = 182.79 in, told as 15 ft 3 in.
  it('W6: 13 in 12 over 20 ft 8 in', () => {
    const { run, lineLength } = rafterOf({ slope: slope(13), span: `20' 8"`, seat: 1.5 });
    expect(run).toBe(124);
    // The table's hundredths, times ten and a third; then the manual's own rounding to whole inches.
    expect(Math.abs(lineLength - 182.79)).toBeLessThan((0.005 * 124) / 12);
    expect(Math.abs(lineLength - 183)).toBeLessThan(1 / 4);
  });

  // US Army subcourse EN5156 p. 3-5 (read): measured across the square, 8 and 12 are 14 5/12 in apart.
  it('W7: 8 in 12 a foot, and over 10 ft', () => {
    const { run, lineLength } = rafterOf({ slope: slope(8), span: `20'`, seat: 2 });
    expect(Math.abs((lineLength / run) * 12 - (14 + 5 / 12))).toBeLessThan(1 / 24);
    expect(lineLength).toBeCloseTo(144.22, 2);
  });

  // NAV p. 2-17 (formula read): a tie is twice its drop below the peak, in inches, over the rise, in feet.
  it.each([
    [8, 24],
    [4, 12],
    [12, 40],
  ])('W22: a tie at %i in 12, %i in below the peak of the top edges', (rise, drop) => {
    const changes = { slope: slope(rise), seat: 1.5 };
    const { heightAbovePlate, rise: high } = rafterOf(changes);
    const [tie] = roofOf({ ...changes, joists: { height: heightAbovePlate + high - drop } }).ties;
    expect((tie?.length ?? 0) / 12).toBeCloseTo((drop * 2) / rise, 9);
  });
});

describe('the table on a framing square', () => {
  // Line 1, length of common rafters per foot of run; these read in NAV pp. 2-12 to 2-33 and US Army EN0069A.
  it.each([
    [7, 13.89],
    [8, 14.42],
    [13, 17.69],
    [16, 20.0],
  ])('%i in 12: %f in a foot', (rise, table) => {
    const { lineLength, run } = rafterOf({ slope: slope(rise), seat: 1.5 });
    expect(Math.abs((lineLength / run) * 12 - table)).toBeLessThanOrEqual(0.005);
  });

  // US Army EN5156, fig. 3-13 (read): rise over span as a pitch.
  it.each([
    [4, 1 / 6],
    [6, 1 / 4],
    [8, 1 / 3],
    [10, 5 / 12],
    [12, 1 / 2],
    [15, 5 / 8],
    [18, 3 / 4],
  ])('%i in 12 is a pitch of %f', (rise, pitch) => {
    const found = rafterOf({ slope: slope(rise), seat: 1.5 });
    expect(found.rise / 288).toBeCloseTo(pitch, 12);
  });
});

describe('what the ridge has to cover', () => {
  // Depth × √(1 + slope²) for the cut end of IRC R802.3 (reckoned); 2×8 at 6 in 12 read as about 8 in, second hand.
  it.each([
    [5.5, 6, 6.149],
    [7.25, 6, 8.106],
    [7.25, 12, 10.253],
    [9.25, 4, 9.75],
    [11.25, 8, 13.521],
  ])('%f deep at %i in 12: %f', (depth, rise, cut) => {
    const changes = { rafter: { thickness: 1.5, depth }, slope: slope(rise), seat: 1.5 };
    expect(rafterOf(changes).plumbCutLength).toBeCloseTo(cut, 3);
    expect(roofOf(changes).ridges[0]?.leastDepth).toBeCloseTo(cut, 3);
  });

  // A home inspector's reading of IRC R802.3 (second hand): a 2×8 ridge does not cover a 2×8 rafter at 6 in 12, a 2×10 does.
  it('wants a 2×10 over 2×8 rafters at 6 in 12', () => {
    const bears = (depth: number) => roofOf({ ridge: { thickness: 1.5, depth } }).ridges[0]?.bearsFully;
    expect(bears(7.25)).toBe(false);
    expect(bears(9.25)).toBe(true);
  });
});

describe('the birdsmouth', () => {
  // A trade magazine's answer, "Sizing the birdsmouth" (read): 2×12, a notch of 2 13/16; seats of 8 7/8 and 4 in at most.
  it.each([
    [4, 8 + 7 / 8, 8.894],
    [12, 4, 3.977],
  ])('of a 2×12 at %i in 12 has a seat of %f at most', (rise, published, exact) => {
    const changes = { rafter: { thickness: 1.5, depth: 11.25 }, plate: { width: 11.25 }, slope: slope(rise) };
    const { maxSeat } = rafterOf(changes);
    expect(maxSeat).toBeCloseTo(exact, 3);
    expect(Math.abs(maxSeat - published)).toBeLessThan(1 / 32);
    const { notchDepth } = rafterOf({ ...changes, seat: maxSeat });
    expect(tape(notchDepth)).toBe('2 13/16');
  });

  // A home inspection article, September 2020, applying IRC R502.8.1 (read, second hand): the most square to the edge.
  it.each([
    [5.5, '1 3/8'],
    [7.25, '1 13/16'],
    [9.25, '2 5/16'],
    [11.25, '2 13/16'],
  ])('of a rafter %f deep is %s deep at most', (depth, most) => {
    const changes = { rafter: { thickness: 1.5, depth }, plate: { width: 12 } };
    const { maxSeat } = rafterOf(changes);
    expect(tape(rafterOf({ ...changes, seat: maxSeat }).notchDepth)).toBe(most);
    expect(roofOf({ ...changes, seat: maxSeat }).cautions.map(({ code }) => code)).not.toContain('notchDeep');
    expect(roofOf({ ...changes, seat: maxSeat + 0.01 }).cautions.map(({ code }) => code)).toContain(
      'notchDeep',
    );
  });
});

describe('vents in the blocks', () => {
  // A vent maker's page (read): 600 sq ft want 144 sq in an eave. Over 15 bays (reckoned): 9.6 a bay, four 2 in holes or
  // two of 2 1/2 in.
  it.each([
    [2, 4, 3.142],
    [2.5, 2, 4.909],
  ])('holes of %f in: %i of them, %f sq in each', (diameter, count, each) => {
    const area = (holes: number) =>
      roofOf({ vents: { shape: 'holes', count: holes, diameter } }).blocks[1]?.vent?.area ?? 0;
    expect(area(1)).toBeCloseTo(each, 3);
    expect(area(count)).toBeGreaterThanOrEqual(9.6);
    expect(area(count - 1)).toBeLessThan(9.6);
  });

  // NAV p. 2-19, fig. 2-29 (read): gable studs 24 in apart at 6 in 12 differ by 12 in; 16 in apart by 8 (reckoned).
  it.each([
    [24, 12],
    [16, 8],
  ])('W21: gable studs %i in apart', (spacing, difference) => {
    const [studs] = roofOf({ gableStuds: { spacing } }).gableStuds ?? [];
    expect(studs?.difference).toBe(difference);
    const lengths = studs?.lengths ?? [];
    expect(lengths.length).toBeGreaterThan(4);
    for (const [i, length] of lengths.slice(1).entries())
      expect(length - (lengths[i] ?? 0)).toBeCloseTo(difference, 9);
  });
});
