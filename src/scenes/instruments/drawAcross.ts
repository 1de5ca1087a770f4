import { drawPiece, edgePiece, toX, toY, type Piece, type Scaled } from '../closeUp/board';
import type { Into } from '../closeUp/drawJoint';
import { drawPlate, drawTicks } from '../closeUp/steel';

/** Tools read from left to right on a rule: a gap between two faces, and the pattern on a board. */

/** From and to, inches. */
type Span = readonly [number, number];

export const slab = ([u0, u1]: Span, [w0, w1]: Span): Piece['outline'] => [
  [u0, w1],
  [u1, w1],
  [u1, w0],
  [u0, w0],
];

export const put = (view: Scaled, piece: Piece): void => {
  drawPiece(view, piece);
  edgePiece(view, piece.outline, 1.7);
};

type Rule = { readonly from: number; readonly to: number; readonly numbers?: (inch: number) => string };

/** The rule's own width and an inch's tick, inches; a low picture has less, and all of it must be in sight. */
const rule = { wide: 0.62, tick: 0.26 };

/** The rule lies under the zero line; its zero is the picture's. */
const drawRule = (view: Scaled, { area, ratio }: Into, { from, to, numbers }: Rule): void => {
  const { ink, k, zero } = view;
  const room = area.y + area.height - zero[1];
  const high = Math.min(rule.wide * k, room - 5 * ratio);
  const start = Math.max(from, (area.x - zero[0]) / k - 1);
  drawPlate(ink, { x: toX(view, start), y: zero[1], width: (to - start) * k, height: high }, ratio);
  const tick = Math.min(rule.tick * k, high * 0.5);
  drawTicks({ view, zero: [0, 0], way: 'right', from, to, tick, grow: 1, ...(numbers ? { numbers } : {}) });
};

/** Half an inch of rule lies under the gap between two faces. */
export const drawGap = (view: Scaled, into: Into, shown: number): void => {
  const { ink, theme, k } = view;
  ink.fillStyle = theme === 'night' ? '#fff0cd' : '#ffffff';
  ink.fillRect(toX(view, 0), toY(view, 3), shown * k, 6 * k);
  put(view, { outline: slab([-4, 0], [-3, 3]), seed: 24, grain: 'end', pith: [3.4, 2], light: 0.62 });
  put(view, { outline: slab([shown, 8], [-3, 3]), seed: 26, grain: [0.8, -0.6], light: 0.78 });
  drawRule(view, into, { from: 0, to: 6 });
};

/** The pattern's end is zero; the board under it reaches past it or stops short. Ticks run both ways. */
export const drawPattern = (view: Scaled, into: Into, shown: number): void => {
  const above = (view.zero[1] - into.area.y) / view.k;
  put(view, { outline: slab([-6, shown], [-1, above * 0.72]), seed: 31, grain: [1, 0], light: 0.66 });
  put(view, { outline: slab([-6, 0], [above * 0.34, above * 0.94]), seed: 57, grain: [1, 0], light: 0.86 });
  drawRule(view, into, { from: -2, to: 2, numbers: (inch) => String(Math.abs(inch)) });
};
