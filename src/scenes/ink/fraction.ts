import { css, type Rgb } from './color';
import type { Ink, Point } from './pencil';

/** A length as it is read off a tape: feet, inches and a stacked fraction of up to sixteenths. */
export type Measure = {
  readonly feet: number;
  readonly whole: number;
  readonly over: number;
  readonly under: number;
};

const perFoot = 12;
const finest = 16;

/** To the nearest sixteenth. `inFeet` splits whole feet off. */
export const measureOf = (inches: number, inFeet: boolean): Measure => {
  const sixteenths = Math.round(Math.abs(inches) * finest);
  const feet = inFeet ? Math.floor(sixteenths / (perFoot * finest)) : 0;
  const rest = sixteenths - feet * perFoot * finest;
  let [over, under] = [rest % finest, finest];
  while (over > 0 && over % 2 === 0) [over, under] = [over / 2, under / 2];
  return { feet, whole: Math.floor(rest / finest), over, under };
};

export type Lettering = { readonly size: number; readonly color: Rgb; readonly weight?: number };

const font = (size: number, weight: number): string =>
  `${String(weight)} ${size.toFixed(1)}px "Barlow Condensed", "Arial Narrow", sans-serif`;

/** Digits of a stacked fraction beside a whole number of size 1; from the look's tokens. */
const digitSize = 0.78;

type Part = { readonly width: number; readonly draw: (x: number, y: number) => void };

/** Where a measure is set and in what lettering. */
export type Setting = { readonly at: Point; readonly lettering: Lettering };

/** A measure set with its middle at a point; gives its width back. Device pixels. */
export const drawMeasure = (ink: Ink, measure: Measure, { at, lettering }: Setting): number => {
  const parts = partsOf(ink, measure, lettering);
  const width = parts.reduce((sum, part) => sum + part.width, 0);
  let x = at[0] - width / 2;
  for (const part of parts) {
    part.draw(x, at[1]);
    x += part.width;
  }
  return width;
};

export const measureWidth = (ink: Ink, measure: Measure, lettering: Lettering): number =>
  partsOf(ink, measure, lettering).reduce((sum, part) => sum + part.width, 0);

const partsOf = (ink: Ink, { feet, whole, over, under }: Measure, lettering: Lettering): readonly Part[] => [
  ...(feet > 0 ? [plain(ink, `${String(feet)}' `, lettering)] : []),
  ...(whole > 0 || over === 0 ? [plain(ink, String(whole), lettering)] : []),
  ...(over > 0 ? [stacked(ink, [String(over), String(under)], lettering)] : []),
  plain(ink, '"', lettering),
];

const plain = (ink: Ink, text: string, { size, color, weight = 600 }: Lettering): Part => {
  ink.font = font(size, weight);
  return {
    width: ink.measureText(text).width,
    draw: (x, y) => {
      ink.font = font(size, weight);
      ink.fillStyle = css(color);
      ink.textAlign = 'left';
      ink.textBaseline = 'middle';
      ink.fillText(text, x, y);
    },
  };
};

const stacked = (
  ink: Ink,
  [over, under]: readonly [string, string],
  { size, color, weight = 600 }: Lettering,
): Part => {
  const digits = size * digitSize;
  ink.font = font(digits, weight);
  const wide = Math.max(ink.measureText(over).width, ink.measureText(under).width) + digits * 0.2;
  const gap = size * 0.08;
  return {
    width: wide + gap * 2,
    draw: (x, y) => {
      ink.font = font(digits, weight);
      ink.fillStyle = css(color);
      ink.textAlign = 'center';
      ink.textBaseline = 'middle';
      ink.fillText(over, x + gap + wide / 2, y - digits * 0.48);
      ink.fillText(under, x + gap + wide / 2, y + digits * 0.58);
      ink.fillRect(x + gap, y - Math.max(1, digits * 0.05), wide, Math.max(1.25, digits * 0.1));
    },
  };
};
