import type { Slope } from '../core/units/slope';
import { inch, mmPerInch, type Inch } from '../core/units/inch';
import { parseLength } from '../core/units/lengthText';
import { at } from './shape';

/** Lengths and slopes as a roof file has them: numbers in the file's units, or texts with their mark. */

export type Units = 'in' | 'mm';

export const unitsOf = (file: unknown): Units => (at(file, ['units']) === 'mm' ? 'mm' : 'in');

export const sizeOf = (value: unknown, units: Units): Inch | undefined => {
  if (typeof value === 'string') return parseLength(value, units);
  if (typeof value !== 'number' || !Number.isFinite(value)) return undefined;
  return inch(units === 'mm' ? value / mmPerInch : value);
};

type FileSlope = { readonly rise: number | string; readonly run: number | string };

/** Numbers stay as they were written; texts are read in the same units. */
export const slopeOf = ({ rise, run }: FileSlope, units: Units = 'in'): Slope => {
  if (typeof rise === 'number' && typeof run === 'number') return { rise, run };
  return { rise: sizeOf(rise, units) ?? 0, run: sizeOf(run, units) ?? 0 };
};
