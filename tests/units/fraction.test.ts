import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fractionText, fromFraction, toFraction } from '../../src/core/units/fraction';

describe('fractions of an inch', () => {
  it.each([
    [0, '0'],
    [0.03, '0'],
    [1 / 32, '1/16'],
    [0.5, '1/2'],
    [5.1875, '5 3/16'],
    [11.97, '12'],
    [89.0625, '89 1/16'],
    [-0.5, '-1/2'],
    [-0.01, '0'],
    [-1.25, '-1 1/4'],
  ])('%f is %s', (inches, text) => {
    expect(fractionText(toFraction(inches))).toBe(text);
  });

  it('reads sixty-fourths when asked', () => {
    expect(toFraction(1.015625, 64)).toEqual({ sign: 1, whole: 1, num: 1, den: 64 });
  });

  it('is off by half a sixteenth at most, in lowest terms, and never 16/16', () => {
    fc.assert(
      fc.property(fc.double({ min: -100_000, max: 100_000, noNaN: true }), (inches) => {
        const found = toFraction(inches);
        expect(Math.abs(fromFraction(found) - inches)).toBeLessThanOrEqual(1 / 32 + 1e-9);
        expect(found.num).toBeLessThan(found.den);
        expect(found.num === 0 ? found.den : found.num % 2).toBe(1);
        expect([1, 2, 4, 8, 16]).toContain(found.den);
      }),
    );
  });
});
