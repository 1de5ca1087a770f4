import { scale, type Vec3 } from '../../core/geometry/vector';
import { project, type Camera } from '../ink/camera';
import { css } from '../ink/color';
import type { Palette } from '../ink/palette';
import { pencil, type Ink, type Point } from '../ink/pencil';
import type { DrawingWords } from './words';

/** Where the axis mark stands, and what it is drawn with. Sizes in device pixels. */
export type Mark = {
  readonly ink: Ink;
  readonly camera: Camera;
  readonly at: Point;
  readonly ratio: number;
  readonly palette: Palette;
};

export const drawingFont = (size: number, weight = 600): string =>
  `${String(weight)} ${size.toFixed(1)}px "Barlow Condensed", "Arial Narrow", sans-serif`;

const foot = 12;
const ticks = [foot, 2 * foot];

/** Ridge, eave and up as they lie in this view, a tick for every foot: the scale of the drawing. */
export const drawAxisMark = (mark: Mark, words: DrawingWords): void => {
  const { camera } = mark;
  const outward: Vec3 = camera.away[1] > 0 ? [0, -1, 0] : [0, 1, 0];
  const along: Vec3 = camera.right[0] >= 0 ? [1, 0, 0] : [-1, 0, 0];
  drawAxis(mark, along, words.ridge);
  drawAxis(mark, outward, words.eave);
  drawAxis(mark, [0, 0, 1], words.up);
  label(mark, [mark.at[0], mark.at[1] + 50 * mark.ratio], { text: words.ticks, size: 14, quiet: true });
};

const from = ({ camera, at }: Mark, v: Vec3): Point => {
  const [x, y] = project(camera, v);
  const [ox, oy] = project(camera, [0, 0, 0]);
  return [at[0] + x - ox, at[1] + y - oy];
};

const drawAxis = (mark: Mark, way: Vec3, name: string): void => {
  const { ink, at, ratio, palette } = mark;
  const look = { width: 1.5 * ratio, alpha: 0.95, color: palette.pencil };
  pencil(ink, { from: at, to: from(mark, scale(way, 2 * foot)), ...look });
  for (const t of ticks) {
    const [x, y] = from(mark, scale(way, t));
    const [dx, dy] = way[2] ? [3.5 * ratio, 0] : [0, 3.5 * ratio];
    pencil(ink, { from: [x - dx, y - dy], to: [x + dx, y + dy], ...look, width: 1.3 * ratio });
  }
  const tip = from(mark, scale(way, 2 * foot));
  const [dx, dy] = [tip[0] - at[0], tip[1] - at[1]];
  const far = Math.hypot(dx, dy) || 1;
  const gap = (way[2] ? 14 : 20) * ratio;
  label(mark, [tip[0] + (dx / far) * gap, tip[1] + (dy / far) * gap * 0.75], {
    text: name,
    size: 15,
    quiet: false,
  });
};

type Label = { readonly text: string; readonly size: number; readonly quiet: boolean };

const label = ({ ink, ratio, palette }: Mark, [x, y]: Point, { text, size, quiet }: Label): void => {
  ink.font = drawingFont(size * ratio, quiet ? 500 : 600);
  ink.fillStyle = css(quiet ? palette.ink2 : palette.ink);
  ink.textAlign = 'center';
  ink.textBaseline = 'middle';
  ink.fillText(text, x, y);
};
