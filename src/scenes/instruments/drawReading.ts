import { css } from '../ink/color';
import { palettes } from '../ink/palette';
import { inkOn } from '../ink/pencil';
import { drawPiece, edgePiece, toX, toY, type Piece, type Scaled } from '../closeUp/board';
import type { Into } from '../closeUp/drawJoint';
import { nameTicks } from '../closeUp/lens';
import { drawPlate, drawTicks } from '../closeUp/steel';
import { drawLevel } from './drawLevel';
import { drawTape } from './drawTape';
import type { ReadingPicture } from './readingPicture';

/** A tool at its place, drawn so large that a sixteenth can be judged. Ticks lie exactly where they belong. */
export const drawReading = (into: Into, picture: ReadingPicture): void => {
  const view = scaledFor(into, picture);
  const { ink } = view;
  const { area, ratio, words } = into;
  ink.save();
  ink.beginPath();
  ink.rect(area.x, area.y, into.canvas.width, into.canvas.height);
  ink.clip();
  if (picture.tool === 'tape') drawTape(view, into, picture.shown);
  else if (picture.tool === 'level') drawLevel(view, into, picture.shown);
  else if (picture.tool === 'rule') drawGap(view, picture.shown);
  else if (picture.tool === 'pattern') drawPattern(view, picture.shown);
  else drawUpright(view, picture);
  if (area.height >= leastForWords * ratio)
    nameTicks(view, {
      at: [area.x + area.width / 2, area.y + area.height - 24 * ratio],
      caption: words.eachTick,
    });
  ink.restore();
};

/** A lower picture has no room for what a tick is: the words would lie over the ticks. CSS pixels, ours. */
const leastForWords = 170;

/** Inches that have to fit across the picture, and pixels to an inch at most and at least, device ratio 1; ours. */
const across = 2.5;
const scales = { most: 320, least: 192 };

const scaledFor = ({ canvas, area, ratio, theme }: Into, picture: ReadingPicture): Scaled => {
  const fit = Math.min(area.width, area.height * 1.3) / across;
  const k = Math.min(scales.most * ratio, Math.max(scales.least * ratio, fit));
  const upright = picture.tool === 'string' || picture.tool === 'waterLevel';
  return {
    ink: inkOn(canvas),
    theme,
    ratio,
    k,
    zero: [area.x + area.width * (upright ? 0.5 : 0.34), area.y + area.height * (lies[picture.tool] ?? 0.52)],
  };
};

/** How far down the picture the work's edge lies: a tape needs its blade's numbers above it. */
const lies: Readonly<Partial<Record<ReadingPicture['tool'], number>>> = {
  string: 0.78,
  waterLevel: 0.5,
  tape: 0.82,
};

/** From and to, inches. */
type Span = readonly [number, number];

const slab = ([u0, u1]: Span, [w0, w1]: Span): Piece['outline'] => [
  [u0, w1],
  [u1, w1],
  [u1, w0],
  [u0, w0],
];

const put = (view: Scaled, piece: Piece): void => {
  drawPiece(view, piece);
  edgePiece(view, piece.outline, 1.7);
};

/** Half an inch of rule lies under the gap between two faces. */
const drawGap = (view: Scaled, shown: number): void => {
  const { ink, theme, k, ratio } = view;
  ink.fillStyle = theme === 'night' ? '#fff0cd' : '#ffffff';
  ink.fillRect(toX(view, 0), toY(view, 3), shown * k, 6 * k);
  put(view, { outline: slab([-4, 0], [-3, 3]), seed: 24, grain: 'end', pith: [3.4, 2], light: 0.62 });
  put(view, { outline: slab([shown, 8], [-3, 3]), seed: 26, grain: [0.8, -0.6], light: 0.78 });
  drawPlate(ink, { x: toX(view, 0), y: toY(view, 0), width: 6 * k, height: 0.62 * k }, ratio);
  drawTicks({ view, zero: [0, 0], way: 'right', from: 1 / 16, to: 6, tick: 0.26 * k, grow: 1 });
};

/** The pattern's end is zero; the board under it reaches past it or stops short. Ticks run both ways. */
const drawPattern = (view: Scaled, shown: number): void => {
  const { ink, k, ratio } = view;
  put(view, { outline: slab([-6, shown], [-1.1, 0.55]), seed: 31, grain: [1, 0], light: 0.66 });
  put(view, { outline: slab([-6, 0], [0.1, 1.5]), seed: 57, grain: [1, 0], light: 0.86 });
  drawPlate(ink, { x: toX(view, -2), y: toY(view, -0.15), width: 4 * k, height: 0.62 * k }, ratio);
  drawTicks({
    view,
    zero: [0, -0.15],
    way: 'right',
    from: -2,
    to: 2,
    tick: 0.26 * k,
    grow: 1,
    numbers: (inch) => (inch === 0 ? '0' : String(Math.abs(inch))),
  });
};

/** A rule stands up: a string crosses it over a rafter's edge, or water stands beside the mark. */
const drawUpright = (
  view: Scaled,
  picture: Extract<ReadingPicture, { tool: 'string' | 'waterLevel' }>,
): void => {
  const { ink, k, ratio } = view;
  const water = picture.tool === 'waterLevel';
  if (!water) put(view, { outline: slab([-6, 6], [-3, 0]), seed: 26, grain: [1, 0], light: 0.8 });
  const low = water ? -2 : 0;
  drawPlate(ink, { x: toX(view, -0.1), y: toY(view, 2.4), width: 0.62 * k, height: (2.4 - low) * k }, ratio);
  drawTicks({
    view,
    zero: [-0.1, 0],
    way: 'up',
    from: water ? -1.95 : 1 / 16,
    to: 2.3,
    tick: 0.26 * k,
    grow: 1,
    numbers: (inch) => (inch === 0 ? (water ? '0' : '') : String(Math.abs(inch))),
  });
  if (water) drawWater(view, picture.shown);
  else drawString(view, picture.shown, picture.nominal);
};

const drawString = (view: Scaled, shown: number, nominal: number): void => {
  const { ink, theme, ratio, k } = view;
  put(view, {
    outline: slab([-1.15, -0.4], [0, nominal]),
    seed: 55,
    grain: 'end',
    pith: [2, 0.5],
    light: 0.7,
  });
  const palette = palettes[theme];
  const y = toY(view, shown);
  const left = toY(view, nominal);
  for (const [width, color] of [
    [7 * ratio, css(palette.casing, 0.85)],
    [Math.max(3 * ratio, 0.012 * k), css(palette.chalk)],
  ] as const) {
    ink.strokeStyle = color;
    ink.lineWidth = width;
    ink.beginPath();
    ink.moveTo(toX(view, -6), left);
    ink.lineTo(toX(view, -0.4), left);
    ink.lineTo(toX(view, -0.2), y);
    ink.lineTo(toX(view, 6), y);
    ink.stroke();
  }
};

/** A clear hose: the water's lower curve stands at the reading. */
const drawWater = (view: Scaled, shown: number): void => {
  const { ink, ratio, k, theme } = view;
  const [x0, x1] = [toX(view, -0.75), toX(view, -0.2)];
  const y = toY(view, shown);
  ink.save();
  ink.fillStyle = theme === 'night' ? 'rgba(120,150,170,.45)' : 'rgba(96,132,158,.4)';
  ink.beginPath();
  ink.moveTo(x0, y - 0.03 * k);
  ink.quadraticCurveTo((x0 + x1) / 2, y + 0.03 * k, x1, y - 0.03 * k);
  ink.lineTo(x1, toY(view, -4));
  ink.lineTo(x0, toY(view, -4));
  ink.fill();
  ink.strokeStyle = css(palettes[theme].steelEdge, 0.9);
  ink.lineWidth = 1.6 * ratio;
  ink.beginPath();
  ink.moveTo(x0, y - 0.03 * k);
  ink.quadraticCurveTo((x0 + x1) / 2, y + 0.03 * k, x1, y - 0.03 * k);
  ink.stroke();
  ink.lineWidth = 2 * ratio;
  ink.strokeRect(x0, toY(view, 3), x1 - x0, 7 * k);
  ink.setLineDash([6 * ratio, 5 * ratio]);
  ink.lineWidth = 1.2 * ratio;
  ink.beginPath();
  ink.moveTo(x1, y);
  ink.lineTo(toX(view, 0.5), y);
  ink.stroke();
  ink.restore();
};
