import { fractionText, toFraction } from './fraction';
import { inch, mmPerInch, type Inch } from './inch';

/** Reads and shows lengths as people write them. */

const inchPart = String.raw`(\d+)\s*[- ]\s*(\d+)\s*/\s*(\d+)|(\d+)\s*/\s*(\d+)|(\d+(?:\.\d+)?|\.\d+)`;
const feetPattern = /^(\d+(?:\.\d+)?)\s*(?:'|ft)\s*-?\s*(.*)$/;
const inchPattern = new RegExp(`^(?:${inchPart})\\s*(?:"|in)?$`);
const mmPattern = /^(\d+(?:\.\d+)?|\.\d+)\s*mm$/;

/** `24'`, `5 1/2"`, `12' 3-7/16"`, `5-1/2`, `.75`, `305 mm`. Undefined for anything else. A bare number is inches. */
export const parseLength = (text: string): Inch | undefined => {
  const trimmed = text.trim();
  const mm = mmPattern.exec(trimmed);
  if (mm) return inch(Number(mm[1]) / mmPerInch);
  const feet = feetPattern.exec(trimmed);
  if (!feet) return parseInches(trimmed);
  const rest = feet[2] === '' ? 0 : parseInches(feet[2] as string);
  return rest === undefined ? undefined : inch(Number(feet[1]) * 12 + rest);
};

const parseInches = (text: string): Inch | undefined => {
  const found = inchPattern.exec(text);
  if (!found) return undefined;
  const [, whole, num, den, soloNum, soloDen, decimal] = found;
  if (decimal !== undefined) return inch(Number(decimal));
  const below = Number(den ?? soloDen);
  return below === 0 ? undefined : inch(Number(whole ?? 0) + Number(num ?? soloNum) / below);
};

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

/** `4068`: whole millimetres. */
export const millimetres = (value: number): string => `${Math.round(value * mmPerInch)}`;
