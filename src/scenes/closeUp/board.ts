import { css } from '../ink/color';
import { toneAt } from '../ink/color';
import { clamp, mix, noise2 } from '../ink/noise';
import { palettes, type Theme } from '../ink/palette';
import { inkOn, sheetOf, type Ink, type Point } from '../ink/pencil';
import { woodAt, woodOf, type Wood } from '../ink/wood';

/** Close up, inches go to pixels by one scale: u to the right, w up. */
export type Scaled = {
  readonly ink: Ink;
  readonly theme: Theme;
  readonly ratio: number;
  /** Device pixels to an inch, and where u = w = 0 lies. */
  readonly k: number;
  readonly zero: Point;
};

export const toX = ({ zero, k }: Scaled, u: number): number => zero[0] + u * k;
export const toY = ({ zero, k }: Scaled, w: number): number => zero[1] - w * k;
export const toPoint = (view: Scaled, [u, w]: Point): Point => [toX(view, u), toY(view, w)];

/** One piece of lumber seen flat: its outline, which way its grain lies, and how it is lit. */
export type Piece = {
  readonly outline: readonly Point[];
  readonly seed: number;
  /** `end`: cut across, rings show. Else the direction along the grain. */
  readonly grain: 'end' | Point;
  readonly light: number;
  /** Pith this far from its middle, across and through: an end with the pith near it shows full rings. */
  readonly pith?: Point;
};

/** Ring pitch of a close-up, inches, and samples a pixel; from the look's tokens, coarse samples ours. */
const ringPitch = 0.17;
const coarse = 2;

export const tracePath = (view: Scaled, outline: readonly Point[]): void => {
  view.ink.beginPath();
  outline.forEach((p, i) => {
    const [x, y] = toPoint(view, p);
    if (i === 0) view.ink.moveTo(x, y);
    else view.ink.lineTo(x, y);
  });
  view.ink.closePath();
};

type Box = { readonly x: number; readonly y: number; readonly width: number; readonly height: number };

const boxOf = (view: Scaled, outline: readonly Point[]): Box => {
  const { width, height } = view.ink.canvas;
  const points = outline.map((p) => toPoint(view, p));
  const x = Math.max(0, Math.floor(Math.min(...points.map((p) => p[0]))));
  const y = Math.max(0, Math.floor(Math.min(...points.map((p) => p[1]))));
  return {
    x,
    y,
    width: Math.min(width, Math.ceil(Math.max(...points.map((p) => p[0])))) - x,
    height: Math.min(height, Math.ceil(Math.max(...points.map((p) => p[1])))) - y,
  };
};

/** Fills the piece with its own grain. */
export const drawPiece = (view: Scaled, piece: Piece): void => {
  const { ink } = view;
  const box = boxOf(view, piece.outline);
  if (box.width <= 0 || box.height <= 0) return;
  ink.save();
  tracePath(view, piece.outline);
  ink.clip();
  ink.imageSmoothingEnabled = true;
  ink.imageSmoothingQuality = 'high';
  ink.drawImage(grainImage(view, piece, box), box.x, box.y, box.width, box.height);
  ink.restore();
};

const grainImage = (view: Scaled, piece: Piece, box: Box): HTMLCanvasElement => {
  const canvas = sheetOf(Math.ceil(box.width / coarse), Math.ceil(box.height / coarse));
  const ink = inkOn(canvas);
  const image = ink.createImageData(canvas.width, canvas.height);
  const palette = palettes[view.theme];
  const wood = woodFor(piece);
  const fiberFine = view.k > 150 ? 26 : 20;
  for (let j = 0; j < canvas.height; j++)
    for (let i = 0; i < canvas.width; i++) {
      const u = (box.x + (i + 0.5) * coarse - view.zero[0]) / view.k;
      const w = (view.zero[1] - box.y - (j + 0.5) * coarse) / view.k;
      const spot = spotOf(piece, u, w);
      const dark = woodAt(wood, spot);
      const fiber =
        noise2(
          spot.along * 0.12 * 3 + wood.phase,
          (spot.across + spot.through * 1.7) * fiberFine,
          wood.seed + 11,
        ) - 0.5;
      const end = piece.grain === 'end';
      const base = toneAt(
        palette.tones.lumber,
        clamp(piece.light - (end ? 0.04 : 0) + fiber * (end ? 0.03 : 0.05)),
      );
      const k = clamp(dark * (end ? 1.25 : 1)) * palette.grainAmount.close;
      const at = (j * canvas.width + i) * 4;
      for (let c = 0; c < 3; c++) image.data[at + c] = mix(base[c] as number, palette.grain[c] as number, k);
      image.data[at + 3] = 255;
    }
  ink.putImageData(image, 0, 0);
  return canvas;
};

const woodFor = (piece: Piece): Wood => {
  const wood = woodOf(piece.seed, { pitch: ringPitch, lean: 0.05 });
  return piece.pith ? { ...wood, pith: [piece.pith[0], piece.pith[1]], knots: [] } : wood;
};

const spotOf = (
  { grain, outline }: Piece,
  u: number,
  w: number,
): { along: number; across: number; through: number } => {
  const [u0, w0] = outline[0] ?? [0, 0];
  if (grain === 'end') return { along: 0, across: w - w0, through: u - u0 };
  const [du, dw] = grain;
  return { along: (u - u0) * du + (w - w0) * dw, across: -(u - u0) * dw + (w - w0) * du, through: 0.75 };
};

/** The piece's outline as pencil edges. */
export const edgePiece = (view: Scaled, outline: readonly Point[], weight = 1.6): void => {
  const { ink, theme, ratio } = view;
  tracePath(view, outline);
  ink.strokeStyle = css(palettes[theme].edge, 0.9);
  ink.lineWidth = weight * ratio;
  ink.lineJoin = 'miter';
  ink.stroke();
};

/** Shade along an edge where something stands close over the piece: darkest at the edge. */
export const shadeBand = (view: Scaled, [from, to]: readonly [Point, Point], reach: number): void => {
  const { ink, k } = view;
  const [a, b] = [toPoint(view, from), toPoint(view, to)];
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1;
  const n: Point = [(-(b[1] - a[1]) / length) * reach * k, ((b[0] - a[0]) / length) * reach * k];
  const wash = ink.createLinearGradient(a[0], a[1], a[0] + n[0], a[1] + n[1]);
  wash.addColorStop(0, 'rgba(50,30,10,.34)');
  wash.addColorStop(1, 'rgba(50,30,10,0)');
  ink.fillStyle = wash;
  ink.beginPath();
  ink.moveTo(a[0], a[1]);
  ink.lineTo(b[0], b[1]);
  ink.lineTo(b[0] + n[0], b[1] + n[1]);
  ink.lineTo(a[0] + n[0], a[1] + n[1]);
  ink.fill();
};
