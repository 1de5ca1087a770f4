import { scale, type Vec3 } from '../../core/geometry/vector';
import { project, type Camera } from '../ink/camera';
import { css } from '../ink/color';
import type { Palette } from '../ink/palette';
import { pencil, type Ink, type Point } from '../ink/pencil';
import type { Area } from './fit';
import type { DrawingWords } from './words';

/** Where the axis mark stands, and what it is drawn with. Sizes in device pixels. */
export type Mark = {
  readonly ink: Ink;
  readonly camera: Camera;
  readonly at: Point;
  readonly ratio: number;
  readonly palette: Palette;
  /** How long each axis is; a tick stands at every foot. */
  readonly feet: number;
};

export const drawingFont = (size: number, weight = 600): string =>
  `${String(weight)} ${size.toFixed(1)}px "Barlow Condensed", "Arial Narrow", sans-serif`;

const foot = 12;

/** Ridge, eave and up as they lie in this view, a tick for every foot: the scale of the drawing. */
export const drawAxisMark = (mark: Mark, words: DrawingWords): void => {
  for (const axis of axesOf(mark, words)) drawAxis(mark, axis);
  for (const label of labelsOf(mark, words)) letter(mark, label);
};

/** The part of the picture that the mark takes up where it stands. */
export const markBox = (mark: Mark, words: DrawingWords): Area => {
  const { ink, ratio, at } = mark;
  const boxes = labelsOf(mark, words).map(({ text, size, at: [x, y] }) => {
    ink.font = drawingFont(size * ratio);
    const half = ink.measureText(text).width / 2;
    return { left: x - half, right: x + half, top: y - (size * ratio) / 2, bottom: y + (size * ratio) / 2 };
  });
  const left = Math.min(at[0], ...boxes.map((box) => box.left));
  const top = Math.min(at[1], ...boxes.map((box) => box.top));
  return {
    x: left,
    y: top,
    width: Math.max(at[0], ...boxes.map((box) => box.right)) - left,
    height: Math.max(at[1], ...boxes.map((box) => box.bottom)) - top,
  };
};

type Axis = { readonly way: Vec3; readonly name: string; readonly tip: Point };

const axesOf = (mark: Mark, words: DrawingWords): readonly Axis[] => {
  const { camera } = mark;
  const outward: Vec3 = camera.away[1] > 0 ? [0, -1, 0] : [0, 1, 0];
  const along: Vec3 = camera.right[0] >= 0 ? [1, 0, 0] : [-1, 0, 0];
  const named: readonly (readonly [Vec3, string])[] = [
    [along, words.ridge],
    [outward, words.eave],
    [[0, 0, 1], words.up],
  ];
  return named.map(([way, name]) => ({ way, name, tip: from(mark, scale(way, mark.feet * foot)) }));
};

const from = ({ camera, at }: Mark, v: Vec3): Point => {
  const [x, y] = project(camera, v);
  const [ox, oy] = project(camera, [0, 0, 0]);
  return [at[0] + x - ox, at[1] + y - oy];
};

const drawAxis = (mark: Mark, { way, tip }: Axis): void => {
  const { ink, at, ratio, palette, feet } = mark;
  const ticks = Array.from({ length: feet }, (_, i) => (i + 1) * foot);
  const look = { width: 1.5 * ratio, alpha: 0.95, color: palette.pencil };
  pencil(ink, { from: at, to: tip, ...look });
  for (const t of ticks) {
    const [x, y] = from(mark, scale(way, t));
    const [dx, dy] = way[2] ? [3.5 * ratio, 0] : [0, 3.5 * ratio];
    pencil(ink, { from: [x - dx, y - dy], to: [x + dx, y + dy], ...look, width: 1.3 * ratio });
  }
};

type Label = { readonly text: string; readonly size: number; readonly quiet: boolean; readonly at: Point };

/** Size of an axis' name, CSS pixels. */
const nameSize = 15;

/** Each axis by name past its tip, and what a tick is under them unless it goes without. */
const labelsOf = (mark: Mark, words: DrawingWords): readonly Label[] => {
  const { ink, at, ratio } = mark;
  const names = axesOf(mark, words).map(({ name, tip }): Label => {
    const [dx, dy] = [tip[0] - at[0], tip[1] - at[1]];
    const far = Math.hypot(dx, dy) || 1;
    ink.font = drawingFont(nameSize * ratio);
    const wide = ink.measureText(name).width;
    const gap = 5 * ratio + (Math.abs(dx / far) * wide) / 2 + (Math.abs(dy / far) * nameSize * ratio) / 2;
    const past: Point = [tip[0] + (dx / far) * gap, tip[1] + (dy / far) * gap * 0.75];
    return { text: name, size: nameSize, quiet: false, at: past };
  });
  const under = { text: words.ticks, size: 14, quiet: true, at: [at[0], at[1] + 50 * ratio] as Point };
  return words.ticks === '' ? names : [...names, under];
};

const letter = ({ ink, ratio, palette }: Mark, { text, size, quiet, at: [x, y] }: Label): void => {
  ink.font = drawingFont(size * ratio, quiet ? 500 : 600);
  ink.fillStyle = css(quiet ? palette.ink2 : palette.ink);
  ink.textAlign = 'center';
  ink.textBaseline = 'middle';
  ink.fillText(text, x, y);
};
