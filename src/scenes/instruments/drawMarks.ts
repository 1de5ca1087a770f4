import { css } from '../ink/color';
import type { Theme } from '../ink/palette';
import { pencil, type Ink, type Point } from '../ink/pencil';
import { drawingFont } from '../overview/axisMark';

/** What a board on the pile carries: paint on its end, a grade stamp, and what an eye should stop at. */

/** A board as an eye sees it: a place at a share of its length and a share across from its top edge. */
export type Face = {
  readonly ink: Ink;
  readonly ratio: number;
  readonly theme: Theme;
  readonly at: (along: number, across: number) => Point;
};

/** Each bundle comes with its own paint on the ends. */
const paints = { own: '#9b4f38', other: '#2f6f78' } as const;

export const endPaint = ({ ink, at }: Face, batch: keyof typeof paints): void => {
  ink.fillStyle = paints[batch];
  ink.globalAlpha = 0.85;
  ink.beginPath();
  for (const [along, across] of [
    [0, 0],
    [0.03, 0],
    [0.03, 1],
    [0, 1],
  ] as const)
    ink.lineTo(...at(along, across));
  ink.fill();
  ink.globalAlpha = 1;
};

/** Where the stamp stands along the board and across it. */
const stampAt = { from: 0.075, to: 0.155, top: 0.12, low: 0.48 };

/** The grade's number alone: whose stamp it is does not matter here. */
export const gradeStamp = ({ ink, ratio, theme, at }: Face, grade: string): void => {
  const [[x0, y0], [x1, y1]] = [at(stampAt.from, stampAt.top), at(stampAt.to, stampAt.low)];
  const tilt = Math.atan2(at(stampAt.to, 0.5)[1] - at(stampAt.from, 0.5)[1], x1 - x0);
  const [wide, high] = [x1 - x0, Math.max(15 * ratio, y1 - y0)];
  ink.save();
  ink.translate((x0 + x1) / 2, (y0 + y1) / 2);
  ink.rotate(tilt);
  ink.strokeStyle = ink.fillStyle = theme === 'day' ? 'rgba(38,24,60,.85)' : 'rgba(240,232,255,.9)';
  ink.lineWidth = 1.3 * ratio;
  ink.strokeRect(-wide / 2, -high / 2, wide, high);
  ink.font = drawingFont(Math.min(wide * 0.4, high * 0.8), 700);
  ink.textAlign = 'center';
  ink.textBaseline = 'middle';
  ink.fillText(grade, 0, 0.5 * ratio);
  ink.restore();
};

/** A knot whose rings the grain runs round, at a place of the face. CSS pixels; ours, by eye. */
const rings = [9, 6.5, 4] as const;

export const knotAt = ({ ink, ratio, theme }: Face, [x, y]: Point): void => {
  ink.fillStyle = theme === 'day' ? '#7a4a22' : '#4c2c12';
  ink.strokeStyle = '#2a170a';
  for (const [i, r] of rings.entries()) {
    ink.lineWidth = (i === 0 ? 1.6 : 1) * ratio;
    ink.beginPath();
    ink.ellipse(x, y, r * 1.35 * ratio, r * 0.9 * ratio, -0.08, 0, 7);
    if (i === 0) ink.fill();
    ink.stroke();
  }
};

/** Checks a board has that dried fast: short cracks from its end along the grain. Share across, and how far along. */
const checks = [
  [0.56, 0.11],
  [0.66, 0.2],
  [0.75, 0.08],
  [0.83, 0.16],
  [0.92, 0.1],
] as const;

export const dryChecks = ({ ink, ratio, at }: Face): void => {
  for (const [across, long] of checks)
    pencil(ink, {
      from: at(0.03, across),
      to: at(0.03 + long, across + 0.015),
      width: 1.5 * ratio,
      alpha: 0.9,
      color: [40, 26, 14],
    });
};

/** A board of the pile's own color, and one that dried gray. */
export const woodColor = (theme: Theme, batch: keyof typeof paints): string => {
  if (batch === 'other') return css(theme === 'day' ? [206, 193, 164] : [126, 116, 99]);
  return css(theme === 'day' ? [228, 190, 137] : [150, 114, 75]);
};
