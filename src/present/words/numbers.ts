import { fractionText, toFraction, type Fraction } from '../../core/units/fraction';
import { decimalInches, millimetres } from '../../core/units/lengthText';
import type { Messages } from './messages';

export type Units = 'feet' | 'decimal' | 'mm';

/** A length ready to be set: a stacked fraction, or plain text in the other units. */
export type Measure = {
  readonly feet: number;
  readonly fraction: Fraction;
  readonly plain: string | undefined;
};

/** Feet are split off only from 24 in up when asked for, as a tape is read in inches below. */
export const measureOf = (
  inches: number,
  { units, feet = false }: { readonly units: Units; readonly feet?: boolean },
): Measure => {
  const all = toFraction(inches);
  const split = feet && all.whole >= 24 ? Math.floor(all.whole / 12) : 0;
  const plain =
    units === 'feet'
      ? undefined
      : units === 'mm'
        ? `${millimetres(inches)} mm`
        : `${decimalInches(inches)} in`;
  return { feet: split, fraction: { ...all, whole: all.whole - 12 * split }, plain };
};

/** One running text: `12' 3 7/16"`, `-1/8"`. */
export const lengthText = (inches: number, units: Units): string => {
  const { feet, fraction, plain } = measureOf(inches, { units, feet: true });
  if (plain !== undefined) return plain;
  const sign = fraction.sign < 0 ? '-' : '';
  const rest = fractionText({ ...fraction, sign: 1 });
  if (feet > 0 && rest === '0') return `${sign}${feet}'`;
  return `${sign}${feet > 0 ? `${feet}' ` : ''}${rest}"`;
};

const dens: Readonly<Record<'en' | 'es', Readonly<Record<number, readonly [string, string]>>>> = {
  en: {
    2: ['half', 'halves'],
    4: ['quarter', 'quarters'],
    8: ['eighth', 'eighths'],
    16: ['sixteenth', 'sixteenths'],
  },
  es: {
    2: ['medio', 'medios'],
    4: ['cuarto', 'cuartos'],
    8: ['octavo', 'octavos'],
    16: ['dieciseisavo', 'dieciseisavos'],
  },
};

/** As it is said aloud: "5 and 3 sixteenths". */
export const spokenLength = (words: Messages, inches: number): string => {
  const { sign, whole, num, den } = toFraction(inches);
  const part = num === 0 ? '' : `${num} ${dens[words.lang][den]?.[num === 1 ? 0 : 1] ?? ''}`;
  const text = part === '' ? `${whole}` : whole === 0 ? part : `${whole} ${words.ui.number.and} ${part}`;
  return sign < 0 ? `${words.ui.number.under} ${text}` : text;
};

/** A reading lies on a line of the rule, or a hair to one side of it. A hair is 1/64 in: the finest an eye splits a sixteenth. Ours. */
export const hair = 1 / 64;

export type Hair = 'under' | 'on' | 'over';

/** The nearest line of a sixteenth, and on which side of it a value lies. */
export const lineAndHair = (inches: number): { readonly line: number; readonly side: Hair } => {
  const line = Math.round(inches * 16) / 16 + 0;
  return { line, side: inches > line ? 'over' : inches < line ? 'under' : 'on' };
};

/** A reading as it was said: `3/16" and a hair`. */
export const readingText = (words: Messages, inches: number, units: Units): string => {
  const { line, side } = lineAndHair(inches);
  if (units !== 'feet' || side === 'on') return lengthText(inches, units);
  return `${lengthText(line, units)} ${words.ui.act.hairSaid[side]}`;
};
