import { css } from '../ink/color';
import { measureOf, drawMeasure, measureWidth } from '../ink/fraction';
import { palettes } from '../ink/palette';
import { inkOn, sheetOf, type Ink, type Point } from '../ink/pencil';
import { drawingFont } from '../overview/axisMark';
import type { Scaled } from './board';

/** A glass over one small spot: the same drawing again, larger, so that a sixteenth can be judged. */
export type Lens = {
  readonly view: Scaled;
  /** Where the glass lies and its radius, device pixels; the spot it looks at, inches. */
  readonly at: Point;
  readonly radius: number;
  readonly spot: Point;
  readonly caption: string;
  readonly draw: (view: Scaled) => void;
};

/** Pixels to an inch inside, device ratio 1: 24 to a sixteenth; from the look's tokens. */
const lensScale = 384;
/** A small glass shows at least a quarter inch, as long as a sixteenth stays large enough to be judged: 12. Ours. */
const lensShows = 0.25;
const leastScale = 192;

export const drawLens = ({ view, at, radius, spot, caption, draw }: Lens): void => {
  const { ink, ratio, theme } = view;
  const k = Math.max(leastScale * ratio, Math.min(lensScale * ratio, (2 * radius) / lensShows));
  const glass = sheetOf(radius * 2, radius * 2);
  const inner = inkOn(glass);
  inner.fillStyle = theme === 'night' ? '#17140f' : '#fffdf6';
  inner.fillRect(0, 0, radius * 2, radius * 2);
  draw({ ...view, ink: inner, k, zero: [radius - spot[0] * k, radius + spot[1] * k] });
  rays(view, { at, radius, spot, k });
  ink.save();
  ink.shadowColor = 'rgba(40,26,10,.5)';
  ink.shadowBlur = 18 * ratio;
  ink.shadowOffsetY = 7 * ratio;
  ink.fillStyle = '#fff';
  ink.beginPath();
  ink.arc(at[0], at[1], radius + 5 * ratio, 0, 7);
  ink.fill();
  ink.restore();
  ink.save();
  ink.beginPath();
  ink.arc(at[0], at[1], radius, 0, 7);
  ink.clip();
  ink.drawImage(glass, at[0] - radius, at[1] - radius);
  ink.restore();
  rim(ink, { at, radius, ratio });
  nameTicks(view, { at: [at[0], at[1] + radius + 20 * ratio], caption });
};

const rim = (ink: Ink, { at, radius, ratio }: { at: Point; radius: number; ratio: number }): void => {
  const metal = ink.createLinearGradient(at[0] - radius, at[1] - radius, at[0] + radius, at[1] + radius);
  metal.addColorStop(0, '#e3ebf0');
  metal.addColorStop(0.5, '#6f8699');
  metal.addColorStop(1, '#3b4d5d');
  for (const [r, width, color] of [
    [radius + 3 * ratio, 6 * ratio, metal],
    [radius, ratio, '#2a3641'],
    [radius + 6 * ratio, ratio, '#2a3641'],
  ] as const) {
    ink.strokeStyle = color;
    ink.lineWidth = width;
    ink.beginPath();
    ink.arc(at[0], at[1], r, 0, 7);
    ink.stroke();
  }
};

type Looks = { readonly at: Point; readonly radius: number; readonly spot: Point; readonly k: number };

const rays = (view: Scaled, { at, radius, spot, k }: Looks): void => {
  const { ink, ratio } = view;
  const [fx, fy] = [view.zero[0] + spot[0] * view.k, view.zero[1] - spot[1] * view.k];
  const small = (radius / k) * view.k;
  ink.strokeStyle = css(palettes[view.theme].pencil, 0.9);
  ink.lineWidth = 1.5 * ratio;
  ink.beginPath();
  ink.arc(fx, fy, small, 0, 7);
  ink.stroke();
  const far = Math.hypot(at[0] - fx, at[1] - fy);
  const big = radius + 6 * ratio;
  if (far <= big) return;
  const toward = Math.atan2(at[1] - fy, at[0] - fx);
  ink.lineWidth = 1.1 * ratio;
  for (const side of [-1, 1]) {
    const a = toward + side * Math.acos((small - big) / far);
    ink.beginPath();
    ink.moveTo(fx + Math.cos(a) * small, fy + Math.sin(a) * small);
    ink.lineTo(at[0] + Math.cos(a) * big, at[1] + Math.sin(a) * big);
    ink.stroke();
  }
};

/** "each tick is 1/16" under a glass or a scale. */
export const nameTicks = (
  { ink, theme, ratio }: Scaled,
  { at, caption }: { at: Point; caption: string },
): void => {
  const color = palettes[theme].ink;
  const lettering = { size: 16 * ratio, color };
  const sixteenth = measureOf(1 / 16, false);
  ink.font = drawingFont(17 * ratio);
  const words = ink.measureText(`${caption} `).width;
  const all = words + measureWidth(ink, sixteenth, lettering);
  const haze = ink.createRadialGradient(at[0], at[1], 0, at[0], at[1], all * 0.75);
  haze.addColorStop(0, css(palettes[theme].deck, 0.95));
  haze.addColorStop(0.7, css(palettes[theme].deck, 0.85));
  haze.addColorStop(1, css(palettes[theme].deck, 0));
  ink.save();
  ink.translate(at[0], at[1]);
  ink.scale(1, 0.3);
  ink.translate(-at[0], -at[1]);
  ink.fillStyle = haze;
  ink.fillRect(at[0] - all, at[1] - all, all * 2, all * 2);
  ink.restore();
  ink.font = drawingFont(17 * ratio);
  ink.fillStyle = css(color);
  ink.textAlign = 'left';
  ink.textBaseline = 'middle';
  ink.fillText(caption, at[0] - all / 2, at[1]);
  drawMeasure(ink, sixteenth, { at: [at[0] - all / 2 + words + (all - words) / 2, at[1]], lettering });
};
