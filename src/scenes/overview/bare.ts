import type { Point } from '../ink/pencil';
import { nothing, type Raster } from '../ink/raster';
import type { Area } from './fit';

/** Where a drawing is bare, so that words can stand there. Device pixels. */

/** Samples left out between two that are looked at: finer than any stick is thin. Ours. */
const stride = 2;

/** Nothing at all is drawn in this part of the picture, and all of it lies inside. */
export const isBare = (
  { surface, width, height, fine }: Raster,
  { x, y, width: w, height: h }: Area,
): boolean => {
  const [x0, y0, x1, y1] = [x, y, x + w, y + h].map((v) => Math.round(v * fine)) as [
    number,
    number,
    number,
    number,
  ];
  if (x0 < 0 || y0 < 0 || x1 > width || y1 > height) return false;
  for (let j = y0; j < y1; j += stride)
    for (let i = x0; i < x1; i += stride) if (surface[j * width + i] !== nothing) return false;
  return true;
};

/** Whether a box and a convex outline have any of the picture in common: no line parts them. */
export const meets = ({ x, y, width, height }: Area, outline: readonly Point[]): boolean => {
  const corners: readonly Point[] = [
    [x, y],
    [x + width, y],
    [x + width, y + height],
    [x, y + height],
  ];
  const edges = outline.map((a, i): Point => {
    const b = outline[(i + 1) % outline.length] ?? a;
    return [a[1] - b[1], b[0] - a[0]];
  });
  const parted = (across: Point): boolean => {
    const along = (points: readonly Point[]) => points.map((p) => p[0] * across[0] + p[1] * across[1]);
    const [one, other] = [along(corners), along(outline)];
    return Math.max(...one) < Math.min(...other) || Math.max(...other) < Math.min(...one);
  };
  return ![[1, 0] as const, [0, 1] as const, ...edges].some(parted);
};

export const shared = (a: Area, b: Area): boolean =>
  a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;

export const grown = ({ x, y, width, height }: Area, by: number): Area => ({
  x: x - by,
  y: y - by,
  width: width + 2 * by,
  height: height + 2 * by,
});
