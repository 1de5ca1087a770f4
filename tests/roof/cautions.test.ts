import { describe, expect, it } from 'vitest';
import { codesOf, roofOf, type Changes } from './roofs';

const rafter = (depth: number) => ({ rafter: { thickness: 1.5, depth } });
const slope = (rise: number) => ({ slope: { rise, run: 12 } });

/** Code, place, the last plan that is all right and the first that is not; the text has to hold these numbers. */
const rows: readonly (readonly [string, string, Changes, Changes, readonly string[]])[] = [
  [
    'ridgeShallow',
    'ridge.depth',
    { ridge: { thickness: 1.5, depth: 8.11 } },
    { ridge: { thickness: 1.5, depth: 7.25 } },
    ['7.25 in', '8.106 in', '0.856 in'],
  ],
  [
    'ridgeThin',
    'ridge.thickness',
    { ridge: { thickness: 0.75, depth: 9.25 } },
    { ridge: { thickness: 0.625, depth: 9.25 } },
    ['0.625 in', '0.75 in'],
  ],
  ['notchDeep', 'seat', { seat: 4.05 }, { seat: 4.06 }, ['1.816 in', '1.813 in', '4.053 in']],
  [
    'tailThin',
    'seat',
    { ...rafter(5.5), seat: 4.47 },
    { ...rafter(5.5), seat: 4.48 },
    ['3.496 in', '3.5 in'],
  ],
  ['tailLong', 'overhang', { overhang: 24 }, { overhang: 24.1 }, ['24.1 in', '24 in']],
  ['bearingShort', 'seat', { seat: 1.5 }, { seat: 1.4 }, ['1.4 in', '1.5 in']],
  ['slopeLow', 'slope', slope(3), slope(2.9), ['2.9 in 12', '3 in 12']],
  ['tiesAbsent', 'joists', {}, { joists: false }, []],
  [
    'tiesHigh',
    'joists.height',
    { joists: { height: 25.9 } },
    { joists: { height: 26 } },
    ['26 in', '25.994 in'],
  ],
  ['tiesWide', 'joists.every', { joists: { every: 2 } }, { joists: { every: 3 } }, ['72 in', '48 in']],
  [
    'tieBearing',
    'plate.width',
    { plate: { width: 3.5 } },
    { plate: { width: 3 }, seat: 2 },
    ['1.438 in', '1.5 in'],
  ],
  ['collarsWide', 'collars.every', { collars: { every: 2 } }, { collars: { every: 3 } }, ['72 in', '48 in']],
  ['collarsTight', 'collars', slope(3), { ...slope(3), span: 240 }, ['3.5 in']],
];

describe('cautions', () => {
  it.each(rows)('%s at %s', (...row) => {
    const [code, at, fine, unwise, numbers] = row;
    expect(codesOf(fine)).not.toContain(code);
    const found = roofOf(unwise).cautions.filter((caution) => caution.code === code);
    expect(found).toHaveLength(1);
    expect(found[0]?.at).toBe(at);
    for (const number of numbers) expect(found[0]?.text).toContain(number);
  });

  it('says nothing of tails where there are none', () => {
    expect(codesOf({ ...rafter(4), seat: 3.5, overhang: 0 })).not.toContain('tailThin');
  });

  it('says nothing of ties or collars that are not there', () => {
    const codes = codesOf({ joists: false, collars: false, ...slope(2) });
    expect(codes).toEqual(['slopeLow', 'tiesAbsent']);
  });

  it('counts only the part of a seat that lies on the plate', () => {
    expect(codesOf({ reference: 'sheathing', seat: 1.9 })).toContain('bearingShort');
    expect(codesOf({ reference: 'sheathing', seat: 2 })).not.toContain('bearingShort');
  });

  it('is not put off by the last bit of a number', () => {
    // 2×6 at 9 in 12: the plumb cut is 6.875, by √ and ÷ a hair more or less.
    const ridge = { thickness: 1.5, depth: 6.875 };
    expect(codesOf({ ...rafter(5.5), ...slope(9), seat: 1.5, ridge })).not.toContain('ridgeShallow');
    expect(codesOf({ seat: `${1.5 * 25.4} mm` })).not.toContain('bearingShort');
  });

  it('still figures every one of them', () => {
    for (const [, , , unwise] of rows) expect(roofOf(unwise).commonRafters).toHaveLength(1);
  });
});
