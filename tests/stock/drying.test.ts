import { fc, it as law } from '@fast-check/vitest';
import { describe, expect, it } from 'vitest';
import { driedCut, openOffSlope, shareLost, shrunkFromGreen } from '../../src/core/stock/drying';
import { rafterOf } from '../roof/roofs';

const size = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const cut = fc
  .record({ depth: size(3.5, 11.25), seatShare: size(0.1, 0.9), m: size(0.25, 1.5) })
  .map(({ depth, seatShare, m }) => {
    const g = Math.sqrt(1 + m * m);
    const seat = (seatShare * depth * g) / m;
    return { depth, seat, heightAbovePlate: depth * g - seat * m, m };
  });
const share = size(0.001, 0.06);

/** A point of the stick as [along its length, square under its top edge], level and plumb. */
const turned = ([along, under]: readonly [number, number], m: number) => {
  const g = Math.sqrt(1 + m * m);
  return { level: (along + under * m) / g, plumb: (along * m - under) / g };
};

describe('a rafter that dries after it was cut', () => {
  law.prop([cut, share])('opens at the bottom of its plumb cut, sits low, opens at the seat', (one, lost) => {
    const { open, low, seat, long } = driedCut(one, lost);
    for (const gap of [open, low, seat, long]) expect(gap).toBeGreaterThan(0);
    for (const part of Object.values(driedCut(one, 0))) expect(part).toBe(0);
    const twice = driedCut(one, 2 * lost);
    expect(twice.open).toBeCloseTo(2 * open, 12);
    expect(driedCut(one, -lost).low).toBe(-low);
  });

  // Corner by corner: the bottom of the plumb cut lies under its top, D·m farther down the stick.
  law.prop([cut, share])('has the gaps that its corners make', (one, lost) => {
    const { depth, seat, heightAbovePlate, m } = one;
    const g = Math.sqrt(1 + m * m);
    const found = driedCut(one, lost);
    const was = turned([-depth * m, depth], m);
    const is = turned([-depth * m, depth * (1 - lost)], m);
    expect(was.level).toBeCloseTo(0, 9);
    expect(was.level - is.level).toBeCloseTo(found.open, 9);
    // The seat's two ends, square under the top edge: the inner one is s·m/g less deep.
    const outer = heightAbovePlate / g;
    const inner = outer + (seat * m) / g;
    const up = (under: number): number => (under * lost) / g;
    expect(up(inner) - up(outer)).toBeCloseTo(found.seat, 9);
  });

  it('over a 2×8 at 6 in 12 that loses a fiftieth', () => {
    const { seat, heightAbovePlate } = rafterOf();
    const dried = driedCut({ depth: 7.25, seat, heightAbovePlate, m: 0.5 }, 0.02);
    expect(dried.open).toBeCloseTo(0.0648, 4);
    expect(dried.low).toBeCloseTo(0.1271, 4);
    expect(dried.seat).toBeCloseTo(0.028, 4);
  });
});

describe('a rafter that lies at another slope than it was cut for', () => {
  law.prop([size(3.5, 11.25), size(0.2, 1.5), size(0.001, 0.3)])(
    'opens at the top when it lies steeper, at the bottom when flatter, not at all when right',
    (depth, slope, more) => {
      expect(openOffSlope(depth, { cut: slope, lies: slope })).toBe(0);
      expect(openOffSlope(depth, { cut: slope, lies: slope + more })).toBeGreaterThan(0);
      expect(openOffSlope(depth, { cut: slope + more, lies: slope })).toBeLessThan(0);
    },
  );

  law.prop([size(3.5, 11.25), size(0.2, 1.5), size(0.001, 0.08)])(
    'opens like a cut that dried, which is one for a steeper slope',
    (depth, m, share) => {
      const left = 1 - share;
      const { open } = driedCut({ depth, seat: 0, heightAbovePlate: 0, m }, share);
      expect(open).toBeCloseTo(-openOffSlope(depth * left, { cut: m / left, lies: m }), 9);
    },
  );

  law.prop([size(3.5, 11.25), size(0.2, 1.5), size(0.201, 1.7)])(
    'by how far its lower corner comes to lie past the upper one, toward the ridge',
    (depth, slope, lies) => {
      const corner = turned([-depth * slope, depth], lies);
      expect(corner.level).toBeCloseTo(openOffSlope(depth, { cut: slope, lies }), 9);
    },
  );
});

describe('lumber that dries', () => {
  it('says nothing of moistures the paper has none for', () => {
    for (const moisture of [7.9, 19.1, NaN]) expect(shrunkFromGreen(moisture)).toBeUndefined();
    expect(shareLost(19, 7)).toBeUndefined();
    expect(shareLost(28, 12)).toBeUndefined();
  });

  it('loses nothing where it stays and swells on the way back', () => {
    expect(shareLost(12, 12)).toBe(0);
    expect(shareLost(12, 19)).toBeLessThan(0);
    expect((1 - shareLost(19, 12)!) * (1 - shareLost(12, 8)!)).toBeCloseTo(1 - shareLost(19, 8)!, 12);
  });
});
