import { css } from '../ink/color';
import { drawMeasure, measureOf, measureWidth } from '../ink/fraction';
import type { Palette } from '../ink/palette';
import { pencil, type Ink, type Point } from '../ink/pencil';

/** A measured line: two slashes, the line between them, and the figure on it over a chip of the deck. */
export type Dimension = {
  readonly from: Point;
  readonly to: Point;
  readonly inches: number;
  /** Feet split off, as a tape is read from 2 ft up. */
  readonly inFeet?: boolean;
  /** Where the work it measures begins and ends: a thin line is brought out from there. */
  readonly off?: readonly [Point, Point];
};

export type Drafting = { readonly palette: Palette; readonly ratio: number };

/** Digits of a figure, CSS pixels: those of its fraction stay above 12. */
export const figureSize = 15.5;
/** Clear of the figure on its line, and of the work at a line brought out, CSS pixels. */
const clear = 3.5;
const standsOff = 3;
const slash = 3.5;

/** Whether the figure has room between the two slashes. */
export const figureFits = (
  ink: Ink,
  { from, to, inches, inFeet = false }: Dimension,
  ratio: number,
): boolean => {
  const level = Math.abs(to[0] - from[0]) >= Math.abs(to[1] - from[1]);
  const room = level ? Math.abs(to[0] - from[0]) : Math.abs(to[1] - from[1]);
  if (!level) return room > (figureSize + 14) * ratio;
  const lettering = { size: figureSize * ratio, color: [0, 0, 0] as const };
  return room > measureWidth(ink, measureOf(inches, inFeet), lettering) + (2 * clear + slash) * ratio;
};

export const drawDimension = (ink: Ink, dimension: Dimension, { palette, ratio }: Drafting): void => {
  const { from, to, inches, inFeet = false, off } = dimension;
  const color = palette.pencil;
  const thin = { width: 0.7 * ratio, alpha: 0.6, color };
  off?.forEach((start, i) => broughtOut(ink, [start, i === 0 ? from : to], { ...thin, ratio }));
  pencil(ink, { from, to, width: 0.95 * ratio, alpha: 0.9, color });
  for (const [x, y] of [from, to])
    pencil(ink, {
      from: [x - slash * ratio, y + slash * ratio],
      to: [x + slash * ratio, y - slash * ratio],
      width: 1.4 * ratio,
      alpha: 0.95,
      color,
    });
  const at: Point = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  const lettering = { size: figureSize * ratio, color: palette.ink };
  const measure = measureOf(inches, inFeet);
  const wide = measureWidth(ink, measure, lettering) + 2 * clear * ratio;
  const high = (measure.over > 0 ? figureSize * 1.75 : figureSize * 1.1) * ratio;
  ink.fillStyle = css(palette.deck, 0.96);
  ink.fillRect(at[0] - wide / 2, at[1] - high / 2, wide, high);
  drawMeasure(ink, measure, { at, lettering });
};

type Thin = {
  readonly width: number;
  readonly alpha: number;
  readonly color: Palette['ink'];
  readonly ratio: number;
};

/** From a little off the work to a little past the line. */
const broughtOut = (ink: Ink, [a, b]: readonly [Point, Point], { ratio, ...look }: Thin): void => {
  const far = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1;
  const step = (p: Point, by: number): Point => [
    p[0] + ((b[0] - a[0]) / far) * by * ratio,
    p[1] + ((b[1] - a[1]) / far) * by * ratio,
  ];
  pencil(ink, { from: step(a, standsOff), to: step(b, standsOff), ...look });
};
