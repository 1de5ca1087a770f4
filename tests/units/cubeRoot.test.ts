import { describe, expect, it } from 'vitest';
import { cubeRoot } from '../../src/core/units/cubeRoot';

const nearly = (found: number, exact: number): void => {
  expect(Math.abs(found - exact)).toBeLessThanOrEqual(2 * Number.EPSILON * Math.abs(exact));
};

describe('a cube root by Newton’s steps', () => {
  it('gives whole numbers back from their cubes', () => {
    for (let n = 1; n <= 2000; n++) nearly(cubeRoot(n * n * n), n);
  });

  it('is right to the last bits however big or small the number', () => {
    for (let power = -300; power <= 300; power += 7) {
      for (const digit of [1, 2.7, 9.99]) {
        const x = Number(`${digit}e${power}`);
        nearly(cubeRoot(x), Math.cbrt(x));
      }
    }
  });

  it('takes nothing and what is below it', () => {
    expect(cubeRoot(0)).toBe(0);
    expect(cubeRoot(-27)).toBeCloseTo(-3, 14);
  });
});
