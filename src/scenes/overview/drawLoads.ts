import type { LoadArrow } from '../../present/loadPath';
import { onScreen, type Camera } from '../ink/camera';
import { css } from '../ink/color';
import { palettes, type Palette, type Theme } from '../ink/palette';
import { inkOn, sheetOf, type Ink, type Point } from '../ink/pencil';
import { seenRuns } from '../ink/edges';
import type { Raster } from '../ink/raster';
import { drawingFont } from './axisMark';
import { isBare, shared } from './bare';
import type { Area } from './fit';

/** Arrows along the members, as wide as what they carry, each with its figure on a chip of paper. Never a color of the member. */
export type LoadDrawing = {
  /** An empty label leaves an arrow without: its twin at the other end has it. */
  readonly arrows: readonly (LoadArrow & { readonly label: string })[];
  /** The printed scale: an arrow so wide is so many pounds. */
  readonly key: { readonly pounds: number; readonly label: string };
};

type On = {
  readonly camera: Camera;
  readonly raster: Raster;
  readonly letters: readonly Area[];
  readonly theme: Theme;
  readonly ratio: number;
};

/** The widest arrow, and the thinnest that still shows, CSS pixels. */
const widest = 13;
const thinnest = 1.2;
const letterSize = 15;

/** CSS pixels a pound, so that the largest is the widest. */
export const pixelsAPound = (arrows: readonly { readonly pounds: number }[]): number =>
  widest / Math.max(1, ...arrows.map(({ pounds }) => pounds));

export const arrowWide = (pounds: number, perPound: number): number => Math.max(thinnest, pounds * perPound);

/** On a canvas as large as the picture, over what is already on it. */
const drawLoads = (canvas: HTMLCanvasElement, loads: LoadDrawing, on: On): HTMLCanvasElement => {
  const ink = inkOn(canvas);
  const palette = palettes[on.theme];
  const perPound = pixelsAPound(loads.arrows);
  const placed = loads.arrows.map((arrow) => ({
    ...arrow,
    a: onScreen(on.camera, arrow.from),
    b: onScreen(on.camera, arrow.to),
    wide: arrowWide(arrow.pounds, perPound) * on.ratio,
    behind: liesBehind(on.raster, arrow),
  }));
  const look = { palette, ratio: on.ratio };
  for (const arrow of [...placed].sort((one, other) => Number(other.behind) - Number(one.behind)))
    drawArrow(ink, arrow, look);
  const taken: Area[] = [
    ...on.letters,
    ...placed.flatMap(({ a, b, wide }) => alongArrow([a, b], wide / 2 + on.ratio)),
  ];
  for (const arrow of placed) if (arrow.label !== '') taken.push(drawChip(ink, arrow, { ...look, taken }));
  drawKey(ink, loads.key, { ...look, perPound, raster: on.raster, taken });
  return canvas;
};

type Seen = Pick<On, 'camera' | 'raster' | 'letters'> & { readonly canvas: HTMLCanvasElement };

/** The load path over what is outlined already, or alone. */
export const loadsOver = (
  overview: Seen,
  outlined: HTMLCanvasElement | undefined,
  { loads, theme, ratio }: { readonly loads: LoadDrawing; readonly theme: Theme; readonly ratio: number },
): HTMLCanvasElement => {
  const { width, height } = overview.canvas;
  return drawLoads(outlined ?? sheetOf(width, height), loads, { ...overview, theme, ratio });
};

/** A member's middle lies so deep in it; less of an arrow than this share in sight, and it lies behind. Ours. */
const deep = 4.5;
const inSight = 0.4;

const liesBehind = (raster: Raster, { from, to }: LoadArrow): boolean => {
  const lengthOf = ([x0, y0]: Point, [x1, y1]: Point): number => Math.hypot(x1 - x0, y1 - y0);
  const seen = seenRuns(raster, { a: from, b: to }, deep).reduce(
    (sum, run) => sum + lengthOf(run.from, run.to),
    0,
  );
  const whole = lengthOf(onScreen(raster.camera, from), onScreen(raster.camera, to)) / raster.fine;
  return seen < inSight * whole;
};

/** `behind`: something stands before it; drawn hollow, as one sees through nothing. */
type Arrow = { readonly a: Point; readonly b: Point; readonly wide: number; readonly behind: boolean };
type Look = { readonly palette: Palette; readonly ratio: number };

/** A straight shaft and a head, in one outline. */
const arrowPath = (ink: Ink, { a, b, wide }: Arrow, ratio: number): void => {
  const long = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1;
  const [ux, uy] = [(b[0] - a[0]) / long, (b[1] - a[1]) / long];
  const half = wide / 2;
  const spread = half + 3.2 * ratio;
  const head = Math.min(long * 0.6, spread * 1.7);
  const at = (along: number, off: number): Point => [
    a[0] + ux * along - uy * off,
    a[1] + uy * along + ux * off,
  ];
  const points = [
    at(0, half),
    at(long - head, half),
    at(long - head, spread),
    at(long, 0),
    at(long - head, -spread),
    at(long - head, -half),
    at(0, -half),
  ];
  ink.beginPath();
  points.forEach(([x, y], i) => (i === 0 ? ink.moveTo(x, y) : ink.lineTo(x, y)));
  ink.closePath();
};

const drawArrow = (ink: Ink, arrow: Arrow, { palette, ratio }: Look): void => {
  ink.setLineDash([]);
  ink.lineJoin = 'round';
  arrowPath(ink, arrow, ratio);
  ink.strokeStyle = css(palette.casing, 0.92);
  ink.lineWidth = 3.4 * ratio;
  ink.stroke();
  ink.fillStyle = css(arrow.behind ? palette.paper : palette.ink, arrow.behind ? 0.7 : 1);
  ink.fill();
  if (!arrow.behind) return;
  ink.strokeStyle = css(palette.ink);
  ink.lineWidth = 1.3 * ratio;
  ink.stroke();
};

/** The boxes of its quarters: tighter than one box round a slanting arrow. */
const alongArrow = ([a, b]: readonly [Point, Point], pad: number): readonly Area[] =>
  [0, 1, 2, 3].map((i) => {
    const at = (t: number): Point => [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];
    return boxOf([at(i / 4), at((i + 1) / 4)], pad);
  });

const boxOf = (points: readonly Point[], pad: number): Area => {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  const [x, y] = [Math.min(...xs) - pad, Math.min(...ys) - pad];
  return { x, y, width: Math.max(...xs) + pad - x, height: Math.max(...ys) + pad - y };
};

type Chipped = Arrow & { readonly label: string };

/** To which side of an arrow a chip may lie and how far out, and how far along it. */
const asides = [1, -1, 1.5, -1.5, 2.2, -2.2, 3, -3] as const;
const shares = [0.5, 0.2, 0.8, -0.1, 1.1] as const;

/** Beside the arrow, on the side and at the distance where it lies on no other. */
const drawChip = (
  ink: Ink,
  { a, b, wide, label }: Chipped,
  { palette, ratio, taken }: Look & { readonly taken: readonly Area[] },
): Area => {
  ink.font = drawingFont(letterSize * ratio);
  const size = { width: ink.measureText(label).width + 8 * ratio, height: (letterSize + 4) * ratio };
  const long = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1;
  const [nx, ny] = [(b[1] - a[1]) / long, -(b[0] - a[0]) / long];
  const spots = asides.flatMap((times) =>
    shares.map((t): Area => {
      const out =
        times * (wide / 2 + 4 * ratio + (Math.abs(nx) * size.width + Math.abs(ny) * size.height) / 2);
      const [x, y] = [a[0] + (b[0] - a[0]) * t + nx * out, a[1] + (b[1] - a[1]) * t + ny * out];
      return { x: x - size.width / 2, y: y - size.height / 2, ...size };
    }),
  );
  const far = (box: Area): number =>
    Math.hypot(box.x + box.width / 2 - (a[0] + b[0]) / 2, box.y + box.height / 2 - (a[1] + b[1]) / 2);
  const { canvas } = ink;
  const inside = spots.filter(
    ({ x, y }) => x >= 0 && y >= 0 && x + size.width <= canvas.width && y + size.height <= canvas.height,
  );
  const free = inside.filter((box) => !taken.some((other) => shared(box, other)));
  const spot = free.sort((one, other) => far(one) - far(other))[0] ?? inside[0] ?? (spots[0] as Area);
  tied(ink, { box: spot, to: [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2], wide }, { palette, ratio });
  ink.fillStyle = css(palette.paper, 0.94);
  ink.fillRect(spot.x, spot.y, spot.width, spot.height);
  letter(ink, [label, [spot.x + spot.width / 2, spot.y + spot.height / 2 + 0.5 * ratio]], { palette, ratio });
  return spot;
};

type Tied = { readonly box: Area; readonly to: Point; readonly wide: number };

/** Farther than this from its arrow a chip is tied to it by a line, CSS pixels. */
const near = 12;

const tied = (ink: Ink, { box, to, wide }: Tied, { palette, ratio }: Look): void => {
  const from: Point = [
    Math.min(box.x + box.width, Math.max(box.x, to[0])),
    Math.min(box.y + box.height, Math.max(box.y, to[1])),
  ];
  if (Math.hypot(from[0] - to[0], from[1] - to[1]) - wide / 2 < near * ratio) return;
  for (const [width, color] of [
    [3, css(palette.casing, 0.8)],
    [1.1, css(palette.ink)],
  ] as const) {
    ink.strokeStyle = color;
    ink.lineWidth = width * ratio;
    ink.beginPath();
    ink.moveTo(from[0], from[1]);
    ink.lineTo(to[0], to[1]);
    ink.stroke();
  }
};

const letter = (ink: Ink, [text, at]: readonly [string, Point], { palette, ratio }: Look): void => {
  ink.font = drawingFont(letterSize * ratio);
  ink.fillStyle = css(palette.ink);
  ink.textAlign = 'center';
  ink.textBaseline = 'middle';
  ink.fillText(text, at[0], at[1]);
};

type Keyed = Look & { readonly perPound: number; readonly raster: Raster; readonly taken: readonly Area[] };

/** Under this the names of the views take up two rows at the left of the head, CSS pixels. */
const oneRowFrom = 600;

/** An arrow of a neat number of pounds, in a corner that is bare. */
const drawKey = (
  ink: Ink,
  { pounds, label }: LoadDrawing['key'],
  { palette, ratio, perPound, raster, taken }: Keyed,
): void => {
  ink.font = drawingFont(letterSize * ratio);
  const wide = ink.measureText(label).width;
  const size = { width: wide + 74 * ratio, height: 28 * ratio };
  const { width, height } = ink.canvas;
  const [left, right] = [12 * ratio, width - 12 * ratio - size.width];
  const [high, low] = [6 * ratio, height - 12 * ratio - size.height];
  const corners: readonly Point[] = [
    ...(width >= oneRowFrom * ratio ? [[left, high] as const] : []),
    [right, low],
    [left, low],
    [right, high],
  ];
  const boxes = corners.map(([x, y]): Area => ({ x, y, ...size }));
  const free = (box: Area): boolean => isBare(raster, box) && !taken.some((other) => shared(box, other));
  const box = boxes.find(free) ?? (boxes[0] as Area);
  ink.fillStyle = css(palette.paper, 0.94);
  ink.fillRect(box.x, box.y, size.width, size.height);
  const at: Point = [box.x + 8 * ratio, box.y + size.height / 2];
  const arrow = { a: at, b: [at[0] + 46 * ratio, at[1]] as Point, wide: arrowWide(pounds, perPound) * ratio };
  drawArrow(ink, { ...arrow, behind: false }, { palette, ratio });
  letter(ink, [label, [at[0] + 56 * ratio + wide / 2, at[1]]], { palette, ratio });
};
