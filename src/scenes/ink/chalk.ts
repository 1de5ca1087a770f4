import { css } from './color';
import type { Palette } from './palette';
import type { Ink } from './pencil';

/** Widths of the casing and of the chalk in it, CSS pixels. */
export type Chalked = {
  readonly palette: Palette;
  readonly ratio: number;
  readonly casing: number;
  readonly chalk: number;
};

/** A line of chalk with a paper casing, so that it shows over whatever it crosses. `path` lays the line. */
export const chalkLine = (ink: Ink, { palette, ratio, casing, chalk }: Chalked, path: () => void): void => {
  for (const [width, color] of [
    [casing, css(palette.casing, 0.8)],
    [chalk, css(palette.chalk)],
  ] as const) {
    ink.strokeStyle = color;
    ink.lineWidth = width * ratio;
    ink.beginPath();
    path();
    ink.stroke();
  }
};
