import { expect, it } from 'vitest';
import { fractionText, toFraction } from '../../src/core/units/fraction';
import { rafterOf, roofOf } from '../roof/roofs';

/** The 12 by 16 ft roof that the drawings of this project show, with the numbers written on them. */
const shed = {
  slope: { rise: 9, run: 12 },
  span: `12'`,
  length: `16'`,
  overhang: 12,
  rafter: { thickness: 1.5, depth: 5.5 },
  ridge: { thickness: 1.5, depth: 7.25 },
  plate: { width: 3.5 },
  seat: '2 1/4"',
};
const tape = (inches = NaN): string => fractionText(toFraction(inches));

it('has the numbers of its drawings', () => {
  const rafter = rafterOf(shed);
  expect(rafter).toMatchObject({ run: 72, rise: 54, lineLength: 90, tailLength: 15, seat: 2.25 });
  expect(tape(rafter.bodyLength)).toBe('89 1/16');
  expect(tape(rafter.plumbCutLength)).toBe('6 7/8');
  expect(rafter.notchDepth).toBeCloseTo(1.35, 9);
  expect(tape(rafter.heightAbovePlate)).toBe('5 3/16');
  expect(tape(roofOf(shed).ridges[0]?.topHeight)).toBe('58 5/8');
  expect(roofOf(shed).ridges[0]?.bearsFully).toBe(true);
  expect(roofOf(shed).blocks.map(({ length }) => tape(length))).toEqual(['21 11/16', '22 7/16']);
  expect(roofOf(shed).cautions).toEqual([]);
});
