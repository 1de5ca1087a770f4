import { tools } from '../../core/instruments/rows';
import { css } from '../ink/color';
import { palettes } from '../ink/palette';
import { inkOn, pencil, type Ink, type Point } from '../ink/pencil';
import { drawMeasure, measureOf } from '../ink/fraction';
import { drawingFont } from '../overview/axisMark';
import type { EyeInto } from './drawEye';

/**
 * Somebody sights along an edge: near end large, far end small, a straight line held from end to end of it. Where its
 * middle lies somebody holds a lath with a tick for every quarter inch, the finest an eye tells from there.
 */

export type Sighted = {
  readonly shown: number;
  /** What lies to the side that counts as more, as the picture names it. */
  readonly toward: string;
};

/** Where the ends lie and how much smaller the far one is (its length in steps of its near end); CSS pixels to an inch at the middle. Shares, ours. */
const lie = { nearX: -0.04, farX: 0.97, shrinks: 2, line: 0.56, most: 48 };
/** Inches of the work that show beside the edge. Ours. */
const thick = 1.5;

type Seen = {
  readonly ink: Ink;
  readonly width: number;
  readonly height: number;
  readonly k: number;
  readonly shown: number;
};

/** Pixels across to the edge at a share of its length, and how large an inch is there: lines to one far point stay straight. */
const placeAt = (
  { width, k }: Pick<Seen, 'width' | 'k'>,
  t: number,
): { readonly x: number; readonly k: number } => {
  const away = 1 + lie.shrinks * t;
  return {
    x: width * (lie.nearX + ((lie.farX - lie.nearX) * t * (1 + lie.shrinks)) / away),
    k: (k * (1 + lie.shrinks / 2)) / away,
  };
};

/** The edge bows most in its middle; the other side of the work goes along with it. */
const edgeAt = (seen: Seen, t: number, side: number): Point => {
  const { x, k } = placeAt(seen, t);
  return [x, seen.height * lie.line - (4 * t * (1 - t) * seen.shown - side) * k];
};

const steps = Array.from({ length: 49 }, (_, i) => i / 48);

export const drawSight = ({ canvas, ratio, theme }: EyeInto, { shown, toward }: Sighted): void => {
  const ink = inkOn(canvas);
  const { width, height } = canvas;
  ink.clearRect(0, 0, width, height);
  const room = (height * 0.4) / Math.max(0.75, Math.abs(shown) + 0.25);
  const seen: Seen = { ink, width, height, k: Math.min(lie.most * ratio, room), shown };
  const palette = palettes[theme];
  fill(seen, css(theme === 'day' ? [228, 190, 137] : [150, 114, 75]));
  for (const side of [0, 0.3, 0.62, 0.9, 1.2, thick])
    stroke(seen, side, {
      width: (side === 0 || side === thick ? 1.6 : 0.8) * ratio,
      alpha: side === 0 || side === thick ? 0.9 : 0.28,
      color: palette.edge,
    });
  const line = (t: number): Point => [placeAt(seen, t).x, height * lie.line];
  pencil(ink, {
    from: line(0),
    to: line(1),
    width: 1.6 * ratio,
    alpha: 0.95,
    color: palette.chalk,
    dash: [7 * ratio, 4 * ratio],
  });
  drawLath(seen, ratio);
  ink.font = drawingFont(17 * ratio, 700);
  ink.fillStyle = css(palette.ink);
  ink.textAlign = 'left';
  ink.textBaseline = 'middle';
  ink.fillText(`+ ${toward}`, 8 * ratio, 14 * ratio);
};

const fill = (seen: Seen, color: string): void => {
  const { ink } = seen;
  ink.fillStyle = color;
  ink.beginPath();
  for (const t of steps) ink.lineTo(...edgeAt(seen, t, 0));
  for (const t of [...steps].reverse()) ink.lineTo(...edgeAt(seen, t, thick));
  ink.closePath();
  ink.fill();
};

type Stroke = {
  readonly width: number;
  readonly alpha: number;
  readonly color: readonly [number, number, number];
};

const stroke = (seen: Seen, side: number, how: Stroke): void => {
  steps
    .slice(1)
    .forEach((t, i) =>
      pencil(seen.ink, { from: edgeAt(seen, steps[i] as number, side), to: edgeAt(seen, t, side), ...how }),
    );
};

/** The lath's width beside the edge's middle, CSS pixels, and how far its ticks go, inches. Ours. */
const lath = { wide: 34, tick: 12 };

/** Ticks of a quarter from the straight line, up and down: the edge's middle is read against them. */
const drawLath = ({ ink, width, height, k }: Seen, ratio: number): void => {
  const middle = placeAt({ width, k }, 0.5).x;
  const zero = height * lie.line;
  ink.setLineDash([]);
  ink.fillStyle = '#f3e6c6';
  ink.strokeStyle = '#5a4128';
  ink.lineWidth = 1.2 * ratio;
  ink.beginPath();
  ink.rect(middle, -4 * ratio, lath.wide * ratio, height + 8 * ratio);
  ink.fill();
  ink.stroke();
  ink.strokeStyle = '#18222b';
  const step = tools.eye.division;
  const most = Math.floor(height / k / step);
  for (let i = -most; i <= most; i++) {
    const y = zero - i * step * k;
    const long = lath.tick * (i % 4 === 0 ? 1.6 : i % 2 === 0 ? 1.2 : 0.8) * ratio;
    ink.lineWidth = (i === 0 ? 2.4 : 1.3) * ratio;
    ink.beginPath();
    ink.moveTo(middle, y);
    ink.lineTo(middle + long, y);
    ink.stroke();
    if (i % 4 !== 0 || i === 0 || y < 10 * ratio || y > height - 10 * ratio) continue;
    drawMeasure(ink, measureOf(i * step, false), {
      at: [middle + long + 8 * ratio, y],
      lettering: { size: 14 * ratio, color: [24, 34, 43], weight: 700 },
    });
  }
};
