import { css } from '../ink/color';
import { palettes } from '../ink/palette';
import { toX, toY, type Scaled } from '../closeUp/board';
import { drawPlate, drawTicks } from '../closeUp/steel';
import { put, slab } from './drawAcross';
import type { Area } from '../overview/fit';
import { standRule } from './standRule';
import type { ReadingPicture } from './readingPicture';

/** Tools read on a rule that stands up: a string crosses it, a plate's edge, or water stands beside the mark. */

/** The rule stands so far right of the middle, and is this wide, inches. */
const rule = { at: -0.1, wide: 0.62 };

const drawRule = (view: Scaled, from: number, number: (inch: number) => string): void => {
  const { ink, k, ratio } = view;
  const top = 2.4;
  const low = Math.min(from, 0) === 0 ? 0 : from - 1;
  const plate = { x: toX(view, rule.at), y: toY(view, top), width: rule.wide * k, height: (top - low) * k };
  drawPlate(ink, plate, ratio);
  drawTicks({
    view,
    zero: [rule.at, 0],
    way: 'up',
    from,
    to: top - 0.1,
    tick: 0.26 * k,
    grow: 1,
    numbers: number,
  });
};

export const drawUpright = (
  view: Scaled,
  area: Area,
  picture: Extract<ReadingPicture, { tool: 'string' | 'waterLevel' }>,
): void => {
  if (picture.tool === 'waterLevel') {
    standRule(view, area, { at: rule.at, low: -100 });
    const wide = Math.min(hose.wide, (area.width * hose.most) / view.k);
    if (picture.together) drawWater(view, { shown: 0, from: hose.to - 2.3 * wide, wide });
    drawWater(view, { shown: picture.shown, from: hose.to - wide, wide });
  } else if (picture.over === 'plate') drawAlongPlate(view, picture);
  else drawOverRafter(view, picture);
};

type Strung = Extract<ReadingPicture, { tool: 'string' }>;

/** The rule stands on the rafter's edge, and the string crosses it. */
const drawOverRafter = (view: Scaled, { shown, nominal }: Strung): void => {
  put(view, { outline: slab([-6, 6], [-3, 0]), seed: 26, grain: [1, 0], light: 0.8 });
  drawRule(view, 1 / 16, (inch) => (inch === 0 ? '' : String(inch)));
  drawBlock(view, nominal);
  const [left, y] = [toY(view, nominal), toY(view, shown)];
  drawLine(view, [
    [toX(view, -6), left],
    [toX(view, -0.4), left],
    [toX(view, -0.2), y],
    [toX(view, 6), y],
  ]);
};

/** The rule hangs from the string with zero where the blocks put the plate; the plate's edge is read against it. */
const drawAlongPlate = (view: Scaled, { shown, nominal }: Strung): void => {
  put(view, { outline: slab([-6, -0.3], [-3, 0]), seed: 26, grain: [1, 0], light: 0.8 });
  put(view, { outline: slab([-0.3, 6], [-3, shown]), seed: 27, grain: [1, 0], light: 0.8 });
  drawRule(view, -0.9375, (inch) => (inch === 0 ? '0' : ''));
  drawBlock(view, nominal);
  const y = toY(view, nominal);
  drawLine(view, [
    [toX(view, -6), y],
    [toX(view, 6), y],
  ]);
};

/** A gauge block under the string; none where it lies on the work. */
const drawBlock = (view: Scaled, nominal: number): void => {
  if (nominal <= 0) return;
  put(view, {
    outline: slab([-1.15, -0.4], [0, nominal]),
    seed: 55,
    grain: 'end',
    pith: [2, 0.5],
    light: 0.7,
  });
};

const drawLine = (view: Scaled, points: readonly (readonly [number, number])[]): void => {
  const { ink, theme, ratio, k } = view;
  const palette = palettes[theme];
  for (const [width, color] of [
    [5 * ratio, css(palette.casing, 0.85)],
    [Math.max(2 * ratio, 0.012 * k), css(palette.chalk)],
  ] as const) {
    ink.strokeStyle = color;
    ink.lineWidth = width;
    ink.beginPath();
    for (const [x, y] of points) ink.lineTo(x, y);
    ink.stroke();
  }
};

/** How wide a hose is and where its right side stands, inches; the most of the picture's width it takes. Ours. */
const hose = { wide: 0.55, to: -0.16, most: 0.17 };

type Water = { readonly shown: number; readonly from: number; readonly wide: number };

/** A clear hose: the water's lower curve stands at the reading. */
const drawWater = (view: Scaled, { shown, from, wide }: Water): void => {
  const { ink, ratio, k, theme } = view;
  const [x0, x1] = [toX(view, from), toX(view, from + wide)];
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
  ink.lineTo(toX(view, rule.at), y);
  ink.stroke();
  ink.restore();
};
