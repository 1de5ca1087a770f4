import { css } from '../ink/color';
import { palettes } from '../ink/palette';
import type { Point } from '../ink/pencil';
import { toX, toY, type Scaled } from '../closeUp/board';
import type { Into } from '../closeUp/drawJoint';
import { drawPlate, drawTicks, type Ruled } from '../closeUp/steel';
import { drawingFont } from '../overview/axisMark';
import { put, slab } from './drawAcross';
import { nameQuarters } from './quarters';
import type { ReadingPicture } from './readingPicture';

type Hung = Extract<ReadingPicture, { tool: 'bob' }>;

/** The bob's tip over a rule laid on the plate, its middle marked: A to the left, B to the right, as seen from the street. */
export const drawBob = (view: Scaled, { area }: Into, { shown, still }: Hung): void => {
  put(view, { outline: slab([-40, 40], [-4, -0.1]), seed: 26, grain: [1, 0], light: 0.74 });
  layRule(view, area);
  if (still) hang(view, shown, 1);
  else swing(view, shown, area.y);
  nameEnds(view, area);
};

const layRule = (view: Scaled, area: Into['area']): void => {
  const { ink, k, ratio, zero, theme } = view;
  const high = Math.min(0.62 * k, area.y + area.height - zero[1] - 6 * ratio);
  drawPlate(ink, { x: area.x - 20 * ratio, y: zero[1], width: area.width + 40 * ratio, height: high }, ratio);
  const ruled: Ruled = {
    view,
    zero: [0, 0],
    way: 'right',
    from: (area.x - zero[0]) / k,
    to: (area.x + area.width - zero[0]) / k,
    tick: Math.min(0.26 * k, high * 0.4),
    grow: 1,
    numbers: () => '',
  };
  drawTicks(ruled);
  nameQuarters(ruled, { from: area.x, to: area.x + area.width, deep: high });
  ink.strokeStyle = css(palettes[theme === 'night' ? 'day' : theme].chalk);
  ink.lineWidth = 2.4 * ratio;
  ink.beginPath();
  ink.moveTo(zero[0], zero[1]);
  ink.lineTo(zero[0], zero[1] + ruled.tick);
  ink.stroke();
};

/** A bob of turned brass: half its width over the height above its tip, inches. Ours. */
const turned: readonly Point[] = [
  [0.004, 0],
  [0.02, 0.05],
  [0.15, 0.45],
  [0.2, 0.7],
  [0.2, 4],
];
/** Its tip hangs clear of the rule by this, inches. */
const clear = 0.02;

const hang = (view: Scaled, at: number, alpha: number): void => {
  const { ink, ratio } = view;
  const side = (way: 1 | -1): readonly Point[] =>
    turned.map(([half, up]): Point => [toX(view, at + way * half), toY(view, clear + up)]);
  ink.save();
  ink.globalAlpha = alpha;
  const brass = ink.createLinearGradient(toX(view, at - 0.2), 0, toX(view, at + 0.2), 0);
  brass.addColorStop(0, '#7a5a18');
  brass.addColorStop(0.35, '#f1dc92');
  brass.addColorStop(0.6, '#c49a37');
  brass.addColorStop(1, '#5f4512');
  ink.fillStyle = brass;
  ink.strokeStyle = '#3c2b0a';
  ink.lineWidth = 1.3 * ratio;
  ink.beginPath();
  for (const [x, y] of [...side(-1)].reverse()) ink.lineTo(x, y);
  for (const [x, y] of side(1)) ink.lineTo(x, y);
  ink.closePath();
  ink.fill();
  ink.stroke();
  ink.restore();
};

/** How far to either side the ghosts of a swinging bob stand, inches. Ours. */
const ghosts = 0.2;

const swing = (view: Scaled, shown: number, top: number): void => {
  for (const [off, alpha] of [
    [-ghosts, 0.22],
    [ghosts, 0.22],
    [-ghosts / 2, 0.34],
    [ghosts / 2, 0.34],
    [0, 0.62],
  ] as const)
    hang(view, shown + off, alpha);
  const { ink, ratio, theme, k } = view;
  const [x0, x1] = [toX(view, shown - 1.7 * ghosts), toX(view, shown + 1.7 * ghosts)];
  const y = Math.max(toY(view, 0.2), top + 14 * ratio);
  ink.strokeStyle = css(palettes[theme].chalk);
  ink.lineWidth = 2 * ratio;
  ink.beginPath();
  ink.moveTo(x0, y);
  ink.quadraticCurveTo(toX(view, shown), y + 0.1 * k, x1, y);
  for (const [x, way] of [
    [x0, 1],
    [x1, -1],
  ] as const) {
    ink.moveTo(x + way * 9 * ratio, y - 3 * ratio);
    ink.lineTo(x, y);
    ink.lineTo(x + way * 5 * ratio, y + 9 * ratio);
  }
  ink.stroke();
};

const nameEnds = ({ ink, ratio, theme }: Scaled, { x, y, width }: Into['area']): void => {
  ink.font = drawingFont(18 * ratio, 700);
  ink.textBaseline = 'middle';
  ink.fillStyle = css(palettes[theme].ink);
  ink.textAlign = 'left';
  ink.fillText('‹ A', x + 8 * ratio, y + 16 * ratio);
  ink.textAlign = 'right';
  ink.fillText('B ›', x + width - 8 * ratio, y + 16 * ratio);
};
