import { fractionText, toFraction } from './fraction';
import { inch, mmPerInch, type Inch } from './inch';

/** Reads and shows lengths as people write them. */

/** Longer texts than this are no length. Characters; ours. */
const longestText = 40;

const feetPattern = /^(\d+(?:\.\d+)?|\.\d+) ?(?:'|ft\.?|feet|foot)(?: ?- ?| |(?=[\d.])|$)(.*)$/;
const inchPattern = /^(.*[\d.]) ?(?:"|in\.?|inch|inches)$/;
const metricPattern = /^(\d+(?:\.\d+)?|\.\d+) ?(mm|cm|m)$/;
const decimalPattern = /^(?:\d+(?:\.\d+)?|\.\d+)$/;
const fractionPattern = /^(?:(\d+)(?: ?- ?| ))?(\d+) ?\/ ?(\d+)$/;

const mmIn = { mm: 1, cm: 10, m: 1000 } as const;

/**
 * `24'`, `5 1/2"`, `12' 3-7/16"`, `5-1/2`, `.75`, `305 mm`. Undefined for anything else, and for what reads like a slip:
 * 12 in or more after feet, a fraction of 1 or more after a whole number. A text without a mark is in `bare` units.
 */
export const parseLength = (text: string, bare: 'in' | 'mm' = 'in'): Inch | undefined => {
  if (text.length > longestText) return undefined;
  const clean = plain(text);
  const metric = metricPattern.exec(clean);
  if (metric) return inch((Number(metric[1]) * mmIn[metric[2] as keyof typeof mmIn]) / mmPerInch);
  const feet = feetPattern.exec(clean);
  if (feet) return feetAnd(Number(feet[1]), feet[2] as string);
  const marked = inchPattern.exec(clean);
  const value = numberOf(marked ? (marked[1] as string) : clean);
  return value === undefined ? undefined : inch(!marked && bare === 'mm' ? value / mmPerInch : value);
};

const feetAnd = (feet: number, rest: string): Inch | undefined => {
  if (rest === '') return inch(feet * 12);
  const inches = numberOf(inchPattern.exec(rest)?.[1] ?? rest);
  return inches === undefined || inches >= 12 ? undefined : inch(feet * 12 + inches);
};

/** `5`, `.75`, `5 1/2`, `5-1/2`, `9/16`. */
const numberOf = (text: string): number | undefined => {
  if (decimalPattern.test(text)) return Number(text);
  const found = fractionPattern.exec(text);
  if (!found) return undefined;
  const [whole, num, den] = [found[1], Number(found[2]), Number(found[3])];
  if (den === 0 || (whole !== undefined && num >= den)) return undefined;
  return Number(whole ?? 0) + num / den;
};

const vulgar: Readonly<Record<string, string>> = {
  '¼': '1/4',
  '½': '1/2',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

/** One form for the marks that keyboards and phones put in: curly quotes, primes, built fractions, dashes, wide spaces. */
const plain = (text: string): string =>
  text
    .replace(/[¼½¾⅛⅜⅝⅞]/g, (sign) => ` ${vulgar[sign]}`)
    .replace(/[‘’′]/g, "'")
    .replace(/[“”″]|''/g, '"')
    .replace(/⁄/g, '/')
    .replace(/[‐‑–−]/g, '-')
    .replace(/\s+/g, ' ')
    .trim()
    .toLowerCase();

/** `13' 5"`, `3/16"`, `-1 1/2"`: feet and inches to the nearest sixteenth. */
export const feetInches = (value: number): string => {
  const { sign, whole, num, den } = toFraction(value);
  const feet = Math.floor(whole / 12);
  const inches = fractionText({ sign: 1, whole: whole - feet * 12, num, den });
  const text = feet === 0 ? `${inches}"` : inches === '0' ? `${feet}'` : `${feet}' ${inches}"`;
  return sign < 0 ? `-${text}` : text;
};

/** `160.158`: inches to the thousandth. */
export const decimalInches = (value: number): string => {
  const thousandths = Math.round(Math.abs(value) * 1000);
  const text = `${Math.floor(thousandths / 1000)}.${`${thousandths % 1000}`.padStart(3, '0')}`;
  return value < 0 && thousandths > 0 ? `-${text}` : text;
};

/** `9.25`, `200`: inches to the thousandth, as short as they go. */
export const shortInches = (value: number): string => decimalInches(value).replace(/\.?0+$/, '');

/** `4068`: whole millimetres. */
export const millimetres = (value: number): string => `${Math.round(value * mmPerInch)}`;
