import { css, toneAt } from '../ink/color';
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

/** Ring pitch of a close-up, inches; from the look's tokens. */
const ringPitch = 0.17;

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

/** The outline's box in device pixels, as far as the canvas shows it. */
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

/** A strip of grain in the board's own directions, inches, and texels to an inch each way. */
type Patch = {
  readonly u: number;
  readonly v: number;
  readonly wide: number;
  readonly high: number;
  readonly fine: Point;
};

/** Directions of the strip: along the grain and across it; an end is sampled as it lies. */
const waysOf = ({ grain }: Piece): readonly [Point, Point] =>
  grain === 'end'
    ? [
        [1, 0],
        [0, 1],
      ]
    : [grain, [-grain[1], grain[0]]];

/** Fills the piece with its own grain: one strip, laid on by one affine map. */
export const drawPiece = (view: Scaled, piece: Piece): void => {
  const { ink, k } = view;
  const box = boxOf(view, piece.outline);
  if (box.width <= 0 || box.height <= 0) return;
  const patch = patchOf(view, piece, box);
  const [along, across] = waysOf(piece);
  const corner = toPoint(view, [
    along[0] * patch.u + across[0] * patch.v,
    along[1] * patch.u + across[1] * patch.v,
  ]);
  const [sx, sy] = [k / patch.fine[0], k / patch.fine[1]];
  ink.save();
  tracePath(view, piece.outline);
  ink.clip();
  ink.imageSmoothingEnabled = true;
  ink.imageSmoothingQuality = 'high';
  ink.transform(along[0] * sx, -along[1] * sx, across[0] * sy, -across[1] * sy, corner[0], corner[1]);
  ink.drawImage(grainImage(view, piece, patch), 0, 0);
  ink.restore();
};

/** Grain changes slowly along a board: this many device pixels to a texel there, one across. Ours. */
const stretch = 5;

const patchOf = (view: Scaled, piece: Piece, box: Box): Patch => {
  const [along, across] = waysOf(piece);
  const corners = [0, 1, 2, 3].map((i): Point => {
    const x = (box.x + (i % 2) * box.width - view.zero[0]) / view.k;
    const y = (view.zero[1] - box.y - Math.floor(i / 2) * box.height) / view.k;
    return [x * along[0] + y * along[1], x * across[0] + y * across[1]];
  });
  const [us, vs] = [corners.map((c) => c[0]), corners.map((c) => c[1])];
  const [u, v] = [Math.min(...us), Math.min(...vs)];
  const most = 1 / view.ratio;
  const fine: Point = [view.k * most * (piece.grain === 'end' ? 1 : 1 / stretch), view.k * most];
  return { u, v, wide: Math.max(...us) - u, high: Math.max(...vs) - v, fine };
};

const grainImage = (view: Scaled, piece: Piece, { u, v, wide, high, fine }: Patch): HTMLCanvasElement => {
  const canvas = sheetOf(Math.ceil(wide * fine[0]) + 1, Math.ceil(high * fine[1]) + 1);
  const ink = inkOn(canvas);
  const image = ink.createImageData(canvas.width, canvas.height);
  const palette = palettes[view.theme];
  const wood = woodFor(piece);
  const end = piece.grain === 'end';
  const fiberFine = view.k > 150 ? 26 : 20;
  const start = startOf(piece);
  for (let j = 0; j < canvas.height; j++)
    for (let i = 0; i < canvas.width; i++) {
      const [a, b] = [u + (i + 0.5) / fine[0] - start[0], v + (j + 0.5) / fine[1] - start[1]];
      const spot = end ? { along: 0, across: b, through: a } : { along: a, across: b, through: 0.75 };
      const dark = woodAt(wood, spot);
      const fiber = noise2(a * (end ? 20 : 0.36) + wood.phase, b * fiberFine, wood.seed + 11) - 0.5;
      const light = clamp(piece.light - (end ? 0.04 : 0) + fiber * (end ? 0.03 : 0.05));
      const k = clamp(dark * (end ? 1.25 : 1)) * palette.grainAmount.close;
      const base = toneAt(palette.tones.lumber, light);
      const at = (j * canvas.width + i) * 4;
      for (let c = 0; c < 3; c++) image.data[at + c] = mix(base[c] as number, palette.grain[c] as number, k);
      image.data[at + 3] = 255;
    }
  ink.putImageData(image, 0, 0);
  return canvas;
};

/** The outline's first point in the strip's own directions: grain is fixed to the board, not to the picture. */
const startOf = (piece: Piece): Point => {
  const [along, across] = waysOf(piece);
  const [x, y] = piece.outline[0] ?? [0, 0];
  return [x * along[0] + y * along[1], x * across[0] + y * across[1]];
};

const woodFor = (piece: Piece): Wood => {
  const wood = woodOf(piece.seed, { pitch: ringPitch, lean: 0.05 });
  return piece.pith ? { ...wood, pith: [piece.pith[0], piece.pith[1]], knots: [] } : wood;
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
