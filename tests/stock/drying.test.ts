import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { driedCut, openOffSlope } from '../../src/core/stock/drying';
import { rafterOf } from '../roof/roofs';

const { plumbCutLength, seat, heightAbovePlate } = rafterOf();
const m = 0.5;
const cut = { depth: 7.25, seat, heightAbovePlate, m };
const share = fc.double({ min: 0.001, max: 0.06, noNaN: true });

type Point = readonly [number, number];

describe('a rafter that dries after it was cut', () => {
  // The corners themselves: along the slope they stay, square to it each comes nearer to the top edge by the share.
  const g = Math.sqrt(1 + m * m);
  const moved = ([x, z]: Point, k: number): Point => {
    // Top edge through (0, heightAbovePlate); x level toward the ridge, z up.
    const under = (heightAbovePlate + m * x - z) / g;
    return [x - (under * k * m) / g, z + (under * k) / g];
  };

  it('is what its corners say', () => {
    fc.assert(
      fc.property(share, (k) => {
        const dried = driedCut(cut, k);
        // Bottom of a plumb cut at x = 0: how far it comes back level from the top of the cut, which stays.
        const [back] = moved([0, heightAbovePlate - plumbCutLength], k);
        expect(Math.abs(back)).toBeCloseTo(dried.open, 9);
        // Seat: the corner at the heel and the one at its inner end, how much one rises over the other.
        const [heel, inner] = [moved([0, 0], k), moved([seat, 0], k)];
        const across = inner[0] - heel[0];
        expect(Math.abs(inner[1] - heel[1])).toBeCloseTo(dried.seat, 9);
        expect(across).toBeCloseTo(seat - (seat * m * m * k) / (g * g), 9);
        // Plumb height over the heel's corner is what it was, less its share.
        expect(heightAbovePlate + m * heel[0] - heel[1]).toBeCloseTo(heightAbovePlate * (1 - k), 9);
        expect(dried.low).toBeCloseTo(heightAbovePlate * k, 12);
      }),
    );
  });

  it('loses nothing where it does not dry, and twice as much where it dries twice as much', () => {
    expect(driedCut(cut, 0)).toEqual({ open: 0, low: 0, seat: 0, long: 0 });
    fc.assert(
      fc.property(share, (k) => {
        const [one, two] = [driedCut(cut, k), driedCut(cut, 2 * k)];
        for (const key of ['open', 'low', 'seat', 'long'] as const)
          expect(two[key]).toBeCloseTo(2 * one[key], 12);
      }),
    );
  });
});

describe('a plumb cut on a rafter that lies at another slope', () => {
  const rise = fc.double({ min: 0.1, max: 2, noNaN: true });

  it('fits where the slopes are one, opens at the bottom where it lies steeper, at the top where flatter', () => {
    fc.assert(
      fc.property(rise, rise, (lies, made) => {
        const gap = openOffSlope(7.25, { cut: made, lies });
        expect(Math.sign(gap)).toBe(Math.sign(lies - made));
        expect(openOffSlope(7.25, { cut: made, lies: made })).toBe(0);
      }),
    );
  });
});
