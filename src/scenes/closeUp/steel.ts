import { dice } from '../ink/noise';
import type { Ink, Point } from '../ink/pencil';
import { toX, toY, type Scaled } from './board';

/** Steel tools close up: a brushed plate, and a rule with its ticks exactly where they belong. */

export type Plate = {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
};

/** A brushed plate that lies on the work and throws a soft shadow. Device pixels. */
export const drawPlate = (ink: Ink, { x, y, width, height }: Plate, ratio: number): void => {
  const across = width >= height;
  const wash = across
    ? ink.createLinearGradient(0, y, 0, y + height)
    : ink.createLinearGradient(x, 0, x + width, 0);
  wash.addColorStop(0, '#f1f5f8');
  wash.addColorStop(0.35, '#d6e0e7');
  wash.addColorStop(1, '#b3c2ce');
  ink.save();
  ink.shadowColor = 'rgba(40,26,10,.5)';
  ink.shadowBlur = 9 * ratio;
  ink.shadowOffsetX = 4 * ratio;
  ink.shadowOffsetY = 6 * ratio;
  ink.fillStyle = wash;
  ink.fillRect(x, y, width, height);
  ink.restore();
  brush(ink, { x, y, width, height }, across);
  ink.strokeStyle = '#2f3d4a';
  ink.lineWidth = 1.1 * ratio;
  ink.strokeRect(x, y, width, height);
};

const brush = (ink: Ink, { x, y, width, height }: Plate, across: boolean): void => {
  ink.save();
  ink.beginPath();
  ink.rect(x, y, width, height);
  ink.clip();
  const roll = dice(5);
  const strokes = Math.min(900, Math.round((width * height) / 90));
  for (let i = 0; i < strokes; i++) {
    ink.fillStyle = roll() < 0.5 ? 'rgba(255,255,255,.06)' : 'rgba(30,44,58,.05)';
    const [px, py, long] = [x + roll() * width, y + roll() * height, 30 + roll() * 80];
    if (across) ink.fillRect(px, py, long, 1);
    else ink.fillRect(px, py, 1, long);
  }
  ink.restore();
};

/** A ruled edge: from a zero, to the right or up, ticks every sixteenth between two readings. */
export type Ruled = {
  readonly view: Scaled;
  /** Where the scale reads 0, in the picture's inches. */
  readonly zero: Point;
  readonly way: 'right' | 'up' | 'down';
  readonly from: number;
  readonly to: number;
  /** Length of an inch's tick, device pixels. */
  readonly tick: number;
  /** Ticks grow to this side of the edge: down or up for a level edge, right or left for a plumb one. */
  readonly grow: 1 | -1;
  readonly color?: string;
  readonly numbers?: (inch: number) => string;
};

const finest = 16;
/** Tick lengths as shares of an inch's: halves, quarters, eighths, sixteenths. The usual ladder of a tape. */
const share = (sixteenth: number): number =>
  sixteenth % 16 === 0
    ? 1
    : sixteenth % 8 === 0
      ? 0.78
      : sixteenth % 4 === 0
        ? 0.6
        : sixteenth % 2 === 0
          ? 0.45
          : 0.3;

/** Device pixels from the picture's zero to a reading; exact, not rounded. */
export const tickAt = ({ view, zero, way }: Pick<Ruled, 'view' | 'zero' | 'way'>, inches: number): number =>
  way === 'right' ? toX(view, zero[0] + inches) : toY(view, zero[1] + (way === 'up' ? inches : -inches));

export const drawTicks = (ruled: Ruled): void => {
  const { view, zero, way, from, to, tick, grow, color = '#18222b' } = ruled;
  const { ink, ratio } = view;
  ink.save();
  ink.strokeStyle = color;
  ink.fillStyle = color;
  ink.lineCap = 'butt';
  for (let i = Math.ceil(from * finest - 1e-9); i <= Math.floor(to * finest + 1e-9); i++) {
    const at = tickAt(ruled, i / finest);
    const long = tick * share(Math.abs(i)) * grow;
    ink.lineWidth = (i % 4 === 0 ? 1.5 : 1.1) * ratio * (view.k > 150 * ratio ? 1.4 : 1);
    ink.beginPath();
    if (way === 'right') {
      const edge = toY(view, zero[1]);
      ink.moveTo(at, edge);
      ink.lineTo(at, edge + long);
    } else {
      const edge = toX(view, zero[0]);
      ink.moveTo(edge, at);
      ink.lineTo(edge + long, at);
    }
    ink.stroke();
    if (i % finest === 0) number(ruled, i / finest, at);
  }
  ink.restore();
};

const number = ({ view, zero, way, tick, grow, numbers }: Ruled, inch: number, at: number): void => {
  const text = numbers ? numbers(inch) : inch > 0 ? String(inch) : '';
  if (!text) return;
  const { ink, ratio } = view;
  const size = Math.max(13 * ratio, Math.min(26 * ratio, tick * 0.55));
  ink.font = `700 ${size.toFixed(1)}px "Barlow Condensed", "Arial Narrow", sans-serif`;
  ink.textAlign = 'center';
  ink.textBaseline = 'middle';
  const off = (tick + size * 0.62) * grow;
  if (way === 'right') ink.fillText(text, at, toY(view, zero[1]) + off);
  else ink.fillText(text, toX(view, zero[0]) + off, at);
};
