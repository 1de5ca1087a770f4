import { css } from './color';
import { dice } from './noise';
import { palettes, type Palette, type Theme } from './palette';
import { inkOn, sheetOf, type Ink } from './pencil';

/** The deck is the drawing board: oriented strands, tone on tone, one tile that repeats without a seam. */

const tileSize = 640;
const tiles = new Map<string, HTMLCanvasElement>();

export const deckTile = (theme: Theme, ratio: number): HTMLCanvasElement => {
  const key = `${theme}@${String(ratio)}`;
  const known = tiles.get(key);
  if (known) return known;
  const size = Math.round(tileSize * ratio);
  const canvas = sheetOf(size, size);
  const ink = inkOn(canvas);
  ink.fillStyle = css(palettes[theme].deck);
  ink.fillRect(0, 0, size, size);
  const roll = dice(3);
  const count = Math.round((tileSize * tileSize) / 470);
  for (let i = 0; i < count; i++) strand(ink, palettes[theme], { roll, size, ratio });
  tiles.set(key, canvas);
  return canvas;
};

type Throw = { readonly roll: () => number; readonly size: number; readonly ratio: number };

const strand = (ink: Ink, palette: Palette, { roll, size, ratio }: Throw): void => {
  const [x, y] = [roll() * size, roll() * size];
  const length = (19 + roll() * 53) * ratio;
  const width = (4.3 + roll() * 9.4) * ratio;
  const turn = (roll() - 0.5) * 1.5 + (roll() < 0.24 ? Math.PI / 2 : 0);
  const color = palette.strands[Math.floor(roll() * palette.strands.length)] ?? palette.deck;
  const reach = 80 * ratio;
  for (const dx of [-size, 0, size])
    for (const dy of [-size, 0, size]) {
      if (x + dx < -reach || y + dy < -reach || x + dx > size + reach || y + dy > size + reach) continue;
      ink.save();
      ink.translate(x + dx, y + dy);
      ink.rotate(turn);
      chip(ink, length, width);
      ink.globalAlpha = 0.48;
      ink.fillStyle = css(color);
      ink.fill();
      ink.globalAlpha = 0.35;
      ink.strokeStyle = css(palette.strandEdge);
      ink.lineWidth = 0.6 * ratio;
      ink.beginPath();
      ink.moveTo(-length / 2 + width * 0.2, width * 0.4);
      ink.lineTo(length / 2 - width * 0.7, width / 2);
      ink.lineTo(length / 2, width * 0.2);
      ink.stroke();
      ink.restore();
    }
};

const chip = (ink: Ink, length: number, width: number): void => {
  ink.beginPath();
  ink.moveTo(-length / 2, -width * 0.25);
  ink.lineTo(-length / 2 + width * 0.6, -width / 2);
  ink.lineTo(length / 2 - width * 0.3, -width * 0.42);
  ink.lineTo(length / 2, width * 0.2);
  ink.lineTo(length / 2 - width * 0.7, width / 2);
  ink.lineTo(-length / 2 + width * 0.2, width * 0.4);
  ink.closePath();
};

/** Daylight from the upper left, or a work lamp: one radial wash. */
export const deckLight = (ink: Ink, theme: Theme): void => {
  const { width: w, height: h } = ink.canvas;
  const reach = Math.max(w, h) * 0.6;
  const wash = ink.createRadialGradient(w * 0.37, h * 0.3, reach * 0.08, w * 0.39, h * 0.4, reach);
  const stops =
    theme === 'night'
      ? ['rgba(255,214,150,.13)', 'rgba(255,206,140,.04)', 'rgba(0,0,0,.28)']
      : ['rgba(255,251,240,.42)', 'rgba(255,248,232,.10)', 'rgba(120,96,56,.05)'];
  stops.forEach((color, i) => wash.addColorStop([0, theme === 'night' ? 0.5 : 0.55, 1][i] ?? 1, color));
  ink.fillStyle = wash;
  ink.fillRect(0, 0, w, h);
};

/** The whole ground of a screen. Sizes in device pixels. */
export const drawDeck = (ink: Ink, theme: Theme, ratio: number): void => {
  ink.fillStyle = ink.createPattern(deckTile(theme, ratio), 'repeat') as CanvasPattern;
  ink.fillRect(0, 0, ink.canvas.width, ink.canvas.height);
  deckLight(ink, theme);
};

/** A panel seam: a dark line with light on its far side. Ends in device pixels. */
export const seam = (
  ink: Ink,
  palette: Palette,
  ends: {
    readonly from: readonly [number, number];
    readonly to: readonly [number, number];
    readonly ratio: number;
  },
): void => {
  const { from, to, ratio } = ends;
  const [dx, dy] = from[0] === to[0] ? [ratio, 0] : [0, ratio];
  [palette.seam.dark, palette.seam.light].forEach((color, i) => {
    ink.strokeStyle = color;
    ink.lineWidth = ratio;
    ink.beginPath();
    ink.moveTo(from[0] + dx * i, from[1] + dy * i);
    ink.lineTo(to[0] + dx * i, to[1] + dy * i);
    ink.stroke();
  });
};
