import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Vec2 } from '../../src/core/geometry/vector';
import { rafterOutline } from '../../src/core/roof/rafterOutline';
import { rafterOf, roofOf } from './roofs';

const area = (outline: readonly Vec2[]): number =>
  outline.reduce((sum, [x, z], i) => {
    const [u, w] = outline[(i + 1) % outline.length] as Vec2;
    return sum + (x * w - u * z) / 2;
  }, 0);
const apart = (a: Vec2 | undefined, b: Vec2 | undefined): number => {
  if (!a || !b) throw new Error('no point');
  return Math.sqrt((a[0] - b[0]) ** 2 + (a[1] - b[1]) ** 2);
};

/** Roofs of every slope and size that can be framed. */
const some = fc.record({
  rise: fc.double({ min: 1, max: 24, noNaN: true }),
  span: fc.double({ min: 60, max: 600, noNaN: true }),
  overhang: fc.double({ min: 0.5, max: 40, noNaN: true }),
  seat: fc.double({ min: 0.5, max: 5.5, noNaN: true }),
});
const changesOf = ({ rise, ...rest }: { rise: number; span: number; overhang: number; seat: number }) => ({
  slope: { rise, run: 12 },
  ...rest,
});

describe('the outline of a rafter', () => {
  it('measures what the figures say, corner to corner', () => {
    fc.assert(
      fc.property(some, (roof) => {
        const rafter = rafterOf(changesOf(roof));
        const [top, low, inside, corner, heel, tailLow, tailTop] = rafterOutline(rafter);
        const half = rafter.plumbCutLength / 2;
        const over: Vec2 = [rafter.run, rafter.heightAbovePlate];
        expect(apart(top, low) / 2).toBeCloseTo(half, 9);
        expect(apart(inside, corner)).toBeCloseTo(rafter.seat, 9);
        expect(apart(corner, heel)).toBeCloseTo(rafter.heelCut, 9);
        expect(apart(tailLow, tailTop)).toBeCloseTo(rafter.plumbCutLength, 9);
        expect(apart(top, over)).toBeCloseTo(rafter.bodyLength, 9);
        expect(apart(over, tailTop)).toBeCloseTo(rafter.tailLength, 9);
        expect(apart(top, tailTop)).toBeCloseTo(rafter.edgeLength, 9);
        expect(top?.[1]).toBeCloseTo(roofOf(changesOf(roof)).ridges[0]?.topHeight ?? NaN, 9);
        expect(corner).toEqual([rafter.run, 0]);
      }),
    );
  });

  it('goes round counter-clockwise and holds depth × edge less the birdsmouth', () => {
    fc.assert(
      fc.property(some, (roof) => {
        const rafter = rafterOf(changesOf(roof));
        const whole = 7.25 * rafter.edgeLength - (rafter.seat * rafter.heelCut) / 2;
        expect(area(rafterOutline(rafter))).toBeCloseTo(whole, 6);
      }),
    );
  });

  it('ends at the heel where there is no tail', () => {
    const rafter = rafterOf({ overhang: 0 });
    const outline = rafterOutline(rafter);
    expect(outline[outline.length - 1]).toEqual([144, rafter.heightAbovePlate]);
    expect(area(outline)).toBeLessThan(7.25 * rafter.edgeLength);
  });
});
