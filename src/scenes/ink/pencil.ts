import { css, type Rgb } from './color';
import { clamp, dice, mix, noise1, smooth } from './noise';

export type Ink = CanvasRenderingContext2D;
export type Point = readonly [number, number];
export type Line = { readonly from: Point; readonly to: Point };
/** A ruled line: width in device pixels, strength 0…1. */
export type Ruled = Line & {
  readonly width: number;
  readonly alpha: number;
  readonly color: Rgb;
  readonly dash?: readonly number[];
};

/** A canvas to draw on, in device pixels. */
export const sheetOf = (width: number, height: number): HTMLCanvasElement => {
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(width));
  canvas.height = Math.max(1, Math.round(height));
  return canvas;
};

/** Its pen. Kept in plain memory: drawings are handed on as textures or read back, which a graphics card would only slow. */
export const inkOn = (canvas: HTMLCanvasElement): Ink =>
  canvas.getContext('2d', { willReadFrequently: true }) as Ink;

const lengthOf = ({ from, to }: Line): number => Math.hypot(to[0] - from[0], to[1] - from[1]);

/** Lines shorter than this leave no mark, pixels. */
const shortest = 0.3;
/** Pressure wanders over this many pixels; from the look's tokens. */
const pressureEvery = 34;

/** One ruled stroke: constant width, pressure that wanders slowly, a touch heavier at both ends. */
export const pencil = (ink: Ink, line: Ruled): void => {
  const length = lengthOf(line);
  if (length < shortest) return;
  const { from, to, width, alpha, color, dash } = line;
  ink.lineCap = 'butt';
  ink.lineWidth = width;
  ink.setLineDash(dash ? [...dash] : []);
  ink.strokeStyle = dash || length < 12 ? css(color, alpha * 0.95) : pressed(ink, line, length);
  ink.beginPath();
  ink.moveTo(from[0], from[1]);
  ink.lineTo(to[0], to[1]);
  ink.stroke();
};

const pressed = (ink: Ink, { from, to, alpha, color }: Ruled, length: number): CanvasGradient => {
  const seed = (from[0] * 13 + from[1] * 7 + to[0] * 3) | 0;
  const steps = Math.max(2, Math.round(length / 16));
  const wash = ink.createLinearGradient(from[0], from[1], to[0], to[1]);
  for (let i = 0; i <= steps; i++) {
    const t = i / steps;
    const pressure = mix(0.8, 1.06, noise1((t * length) / pressureEvery, seed));
    const ends = 1 + 0.1 * (Math.exp((-t * length) / 7) + Math.exp((-(1 - t) * length) / 7));
    wash.addColorStop(t, css(color, clamp(alpha * pressure * ends)));
  }
  return wash;
};

const toothTiles = new Map<number, HTMLCanvasElement>();
const toothSize = 256;

/** Paper tooth: a fine unevenness that a whole layer of pencil is multiplied by. `even` 1 leaves it smooth. */
const toothTile = (even: number): HTMLCanvasElement => {
  const known = toothTiles.get(even);
  if (known) return known;
  const canvas = sheetOf(toothSize, toothSize);
  const ink = inkOn(canvas);
  const image = ink.createImageData(toothSize, toothSize);
  const roll = dice(5);
  const raw = Float32Array.from({ length: toothSize * toothSize }, roll);
  for (let y = 0; y < toothSize; y++)
    for (let x = 0; x < toothSize; x++) {
      const grainy = mix(0.58, 1, smooth(0.34, 0.56, blurred(raw, x, y)));
      image.data[(y * toothSize + x) * 4 + 3] = mix(grainy, 1, even) * 255;
    }
  ink.putImageData(image, 0, 0);
  toothTiles.set(even, canvas);
  return canvas;
};

const blurred = (raw: Float32Array, x: number, y: number): number => {
  let sum = 0;
  for (let j = -1; j <= 1; j++)
    for (let i = -1; i <= 1; i++) {
      const at = ((y + j + toothSize) % toothSize) * toothSize + ((x + i + toothSize) % toothSize);
      sum += (raw[at] as number) * (i || j ? (i && j ? 0.5 : 0.8) : 2.2);
    }
  return sum / 7.4;
};

export const tooth = (ink: Ink, even: number): void => {
  const { canvas } = ink;
  ink.save();
  ink.setTransform(1, 0, 0, 1, 0, 0);
  ink.globalCompositeOperation = 'destination-in';
  ink.fillStyle = ink.createPattern(toothTile(even), 'repeat') as CanvasPattern;
  ink.fillRect(0, 0, canvas.width, canvas.height);
  ink.restore();
};

export type Snapped = Line & {
  readonly width: number;
  readonly color: Rgb;
  readonly dust: number;
  readonly spread: number;
  readonly seed: number;
};

/** A snapped chalk line: a tight core and dust thrown to both sides. */
export const chalk = (ink: Ink, line: Snapped): void => {
  const { from, to, width, color, dust, spread, seed } = line;
  const length = lengthOf(line);
  if (length < 1) return;
  const [ux, uy] = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  const roll = dice(seed);
  pencil(ink, { from, to, width, color, alpha: 0.94 });
  for (let i = Math.floor(length * dust); i > 0; i--) {
    const t = roll();
    const off = (roll() + roll() + roll() - 1.5) * 2 * spread;
    const size = 0.35 + roll() * 0.75;
    ink.fillStyle = css(color, 0.5 * Math.exp(-Math.abs(off) / 3.2) * roll());
    ink.fillRect(
      mix(from[0], to[0], t) - uy * off - size / 2,
      mix(from[1], to[1], t) + ux * off - size / 2,
      size,
      size,
    );
  }
};
