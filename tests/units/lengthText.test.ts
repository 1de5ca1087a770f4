import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  decimalInches,
  feetInches,
  millimetres,
  parseLength,
  shortInches,
} from '../../src/core/units/lengthText';

describe('lengths as people write them', () => {
  it.each([
    [`24'`, 288],
    [`24 ft`, 288],
    [`24 feet`, 288],
    [`5 1/2"`, 5.5],
    [`5-1/2"`, 5.5],
    [`5-1/2`, 5.5],
    [`5 - 1/2 in`, 5.5],
    [`12' 3-7/16"`, 147.4375],
    [`12'3 7/16"`, 147.4375],
    [`12'-3 7/16"`, 147.4375],
    [`12' - 3"`, 147],
    [`12ft 3in`, 147],
    [`12 FT. 3 IN.`, 147],
    [`12' 3`, 147],
    [`1.5'`, 18],
    [`0.75`, 0.75],
    [`.75"`, 0.75],
    [`9/16"`, 0.5625],
    [`21/16`, 1.3125],
    [`  7 1/4 inches `, 7.25],
    [`5½"`, 5.5],
    [`5 ½”`, 5.5],
    [`¾”`, 0.75],
    [`12’ 3½”`, 147.5],
    [`12′ 3″`, 147],
    [`3''`, 3],
    [`5–1/2"`, 5.5],
    [`5 1⁄2"`, 5.5],
    [`5\u00a01/2"`, 5.5],
    ['305 mm', 305 / 25.4],
    ['305mm', 305 / 25.4],
    ['30.5 cm', 305 / 25.4],
    ['2.4 m', 2400 / 25.4],
    ['0', 0],
    [`0"`, 0],
  ])('%s', (text, inches) => {
    expect(parseLength(text)).toBeCloseTo(inches, 10);
  });

  it.each([
    '',
    ' ',
    'abc',
    'NaN',
    'Infinity',
    '1e5',
    '-5',
    `-5'`,
    `5''6`,
    '1/0',
    '5 1/0',
    '5 4/4',
    '5 9/8"',
    `5' 12"`,
    `5' 14"`,
    `5' 6' `,
    '5 6',
    '5.5 1/2',
    '1,000',
    '12 3',
    `" 5`,
    '5 km',
    '5 1/2 mm',
    '0x10',
    '٣',
    '1'.repeat(41),
    ' '.repeat(100_000),
  ])('refuses %s', (text) => {
    expect(parseLength(text)).toBeUndefined();
  });

  it('takes a number without a mark in the units of its file, and a mark at its word', () => {
    expect(parseLength('305', 'mm')).toBe(305 / 25.4);
    expect(parseLength('305', 'in')).toBe(305);
    expect(parseLength(`5 1/2"`, 'mm')).toBe(5.5);
    expect(parseLength(`24'`, 'mm')).toBe(288);
  });

  it('reads back what it shows, to the sixteenth', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 3_000_000 }), (sixteenths) => {
        expect(parseLength(feetInches(sixteenths / 16))).toBe(sixteenths / 16);
      }),
    );
  });

  it('never answers with anything but a finite length of 0 or more', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 60 }), (text) => {
        const found = parseLength(text);
        expect(found === undefined || (Number.isFinite(found) && found >= 0)).toBe(true);
      }),
    );
  });
});

describe('lengths as they are shown', () => {
  it.each([
    [160.997, `13' 5"`],
    [0.1875, `3/16"`],
    [12, `1'`],
    [11.99, `1'`],
    [0, `0"`],
    [-1.5, `-1 1/2"`],
    [147.4375, `12' 3 7/16"`],
  ])('%f in feet and inches', (inches, text) => {
    expect(feetInches(inches)).toBe(text);
  });

  it('in decimals and in millimetres', () => {
    expect(decimalInches(160.15837)).toBe('160.158');
    expect(decimalInches(0.9996)).toBe('1.000');
    expect(decimalInches(-0.0001)).toBe('0.000');
    expect(decimalInches(-2.0625)).toBe('-2.063');
    expect(shortInches(9.25)).toBe('9.25');
    expect(shortInches(200)).toBe('200');
    expect(shortInches(0)).toBe('0');
    expect(millimetres(1)).toBe('25');
    expect(millimetres(160.1584)).toBe('4068');
  });
});
