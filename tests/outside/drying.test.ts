import { describe, expect, it } from 'vitest';
import { shareLost, shrunkFromGreen } from '../../src/core/stock/drying';

/** US Forest Products Laboratory, research paper FPL-RP-489: whole pieces of framing lumber, green at 28 %. */

const widthAt = (green: number, moisture: number): number =>
  green * (1 - (shrunkFromGreen(moisture)?.width ?? NaN) / 100);

describe('lumber that dries', () => {
  // Read: PS 20-70 takes 2.80 % of the width and 2.35 % of the thickness from green to 15 %; the equations give 2.806, 2.347.
  it('from green to 15 %', () => {
    expect(shrunkFromGreen(15)?.width).toBeCloseTo(2.806, 3);
    expect(shrunkFromGreen(15)?.thickness).toBeCloseTo(2.347, 3);
    expect(Math.abs((shrunkFromGreen(15)?.width ?? 0) - 2.8)).toBeLessThan(0.01);
    expect(Math.abs((shrunkFromGreen(15)?.thickness ?? 0) - 2.35)).toBeLessThan(0.01);
  });

  // Reckoned from the equations: a piece 7 1/2 in wide when green.
  it.each([
    [19, 7.354],
    [15, 7.29],
    [12, 7.241],
    [8, 7.177],
  ])('7 1/2 in green at %i %%', (moisture, width) => {
    expect(widthAt(7.5, moisture)).toBeCloseTo(width, 3);
  });

  // Reckoned from the equations: loss of width of pieces dressed dry, from 19 % to 12 and to 8 %.
  it.each([
    [5.5, 0.084, 0.133],
    [7.25, 0.111, 0.175],
    [9.25, 0.142, 0.223],
    [11.25, 0.173, 0.271],
  ])('%f in dressed at 19 %%', (width, at12, at8) => {
    expect(width * (shareLost(19, 12) ?? NaN)).toBeCloseTo(at12, 3);
    expect(width * (shareLost(19, 8) ?? NaN)).toBeCloseTo(at8, 3);
  });

  // Reckoned: 9 1/2 in green comes to 9.233 at 15 %, where PS 20 has a dry 9 1/4.
  it('9 1/2 in green is about 9 1/4 dry', () => {
    expect(widthAt(9.5, 15)).toBeCloseTo(9.233, 3);
  });

  it('says nothing where the paper does not', () => {
    expect(shrunkFromGreen(7)).toBeUndefined();
    expect(shareLost(28, 12)).toBeUndefined();
  });
});
