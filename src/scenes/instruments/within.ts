import { chalkLine } from '../ink/chalk';
import { palettes, type Theme } from '../ink/palette';
import type { Ink, Point } from '../ink/pencil';
import type { Area } from '../overview/fit';

/** Draws inside one part of a picture only. */
export const within = (ink: Ink, { x, y, width, height }: Area, draw: () => void): void => {
  ink.save();
  ink.beginPath();
  ink.rect(x, y, width, height);
  ink.clip();
  draw();
  ink.restore();
};

/** Light that comes through between two faces. */
export const lightIn = (theme: Theme): string => (theme === 'night' ? '#fff0cd' : '#ffeeb2');

type Spotted = { readonly ink: Ink; readonly theme: Theme; readonly ratio: number };

/** A pencil ring round the spot that the picture beside shows large. */
export const ringAt = ({ ink, theme, ratio }: Spotted, [x, y]: Point): void => {
  chalkLine(ink, { palette: palettes[theme], ratio, casing: 4.5, chalk: 1.8 }, () => {
    ink.arc(x, y, 10 * ratio, 0, 7);
  });
};
