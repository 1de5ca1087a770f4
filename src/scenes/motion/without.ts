import { inkOn, sheetOf } from '../ink/pencil';
import type { Raster } from '../ink/raster';
import type { Overview } from '../overview/drawOverview';
import type { Area } from '../overview/fit';

/** Two pictures of the same size, seen alike: before an act and after it. */
export type Pair = { readonly before: Overview; readonly after: Overview };

/** Pencil at an edge reaches so far past the surface, device pixels. */
const pencilReach = 2;

/** Whether a sample shows one of these members. */
export const showsOne = ({ surface, surfaces }: Raster, k: number, ids: ReadonlySet<string>): boolean => {
  const solid = surfaces[surface[k] as number]?.solid;
  return solid !== undefined && ids.has(solid.id);
};

/**
 * The picture after an act, but where it shows these members the picture from before it: the scene that they move
 * through. Only the box is looked at.
 */
export const without = ({ before, after }: Pair, ids: ReadonlySet<string>, box: Area): HTMLCanvasElement => {
  const { canvas, raster } = after;
  const patched = sheetOf(canvas.width, canvas.height);
  const ink = inkOn(patched);
  ink.drawImage(canvas, 0, 0);
  const { x, y, width, height } = box;
  const now = ink.getImageData(x, y, width, height);
  const then = inkOn(before.canvas).getImageData(x, y, width, height);
  const [to, from] = [new Uint32Array(now.data.buffer), new Uint32Array(then.data.buffer)];
  const hit = new Uint8Array(width * height);
  for (let j = 0; j < height; j++)
    for (let i = 0; i < width; i++)
      if (pixelShows(raster, ((y + j) * raster.width + x + i) * raster.fine, ids)) hit[j * width + i] = 1;
  for (let j = 0; j < height; j++)
    for (let i = 0; i < width; i++)
      if (near(hit, { width, height }, [i, j])) to[j * width + i] = from[j * width + i] as number;
  ink.putImageData(now, x, y);
  return patched;
};

/** Whether any sample of a device pixel, from its upper left one on, shows one of these members. */
const pixelShows = (raster: Raster, first: number, ids: ReadonlySet<string>): boolean => {
  for (let v = 0; v < raster.fine; v++)
    for (let u = 0; u < raster.fine; u++)
      if (showsOne(raster, first + v * raster.width + u, ids)) return true;
  return false;
};

type Size = { readonly width: number; readonly height: number };

const near = (hit: Uint8Array, { width, height }: Size, [i, j]: readonly [number, number]): boolean => {
  for (let v = Math.max(0, j - pencilReach); v <= Math.min(height - 1, j + pencilReach); v++)
    for (let u = Math.max(0, i - pencilReach); u <= Math.min(width - 1, i + pencilReach); u++)
      if (hit[v * width + u] === 1) return true;
  return false;
};
