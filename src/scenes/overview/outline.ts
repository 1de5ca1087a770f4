import { project } from '../ink/camera';
import type { Rgb } from '../ink/color';
import { inkOn, sheetOf, type Ink } from '../ink/pencil';
import type { Raster } from '../ink/raster';

type Rows = { readonly x0: number; readonly x1: number; readonly y0: number; readonly y1: number };

/** The samples round all people; nothing to draw elsewhere. */
const rowsOf = ({ surfaces, camera, width, height }: Raster): Rows => {
  let [x0, x1, y0, y1] = [width, 0, height, 0];
  for (const { mesh, point } of surfaces) {
    if (!mesh) continue;
    const [x, y] = project(camera, point);
    x0 = Math.min(x0, x);
    x1 = Math.max(x1, x);
    y0 = Math.min(y0, y);
    y1 = Math.max(y1, y);
  }
  const round = 6 * camera.scale;
  return {
    x0: Math.max(1, Math.floor(x0 - round)),
    x1: Math.min(width - 2, Math.ceil(x1 + round)),
    y0: Math.max(1, Math.floor(y0 - round)),
    y1: Math.min(height - 2, Math.ceil(y1 + round)),
  };
};

/** A thin line where a person meets something else, and where one cloth meets another. */
export const drawOutlines = (ink: Ink, raster: Raster, color: Rgb): void => {
  const { width, fine, surface, surfaces } = raster;
  const first = surfaces.findIndex(({ mesh }) => mesh !== undefined);
  if (first < 0) return;
  const { x0, x1, y0, y1 } = rowsOf(raster);
  const [left, top] = [Math.floor(x0 / fine), Math.floor(y0 / fine)];
  const w = Math.floor(x1 / fine) - left + 1;
  const h = Math.floor(y1 / fine) - top + 1;
  if (w <= 0 || h <= 0) return;
  const heavy = new Float32Array(w * h);
  for (let y = y0; y <= y1; y++)
    for (let x = x0; x <= x1; x++) {
      const k = y * width + x;
      if ((surface[k] as number) < first) continue;
      const strength = strengthAt(raster, k);
      if (strength === 0) continue;
      const at = (Math.floor(y / fine) - top) * w + Math.floor(x / fine) - left;
      heavy[at] = (heavy[at] as number) + strength / fine;
    }
  const canvas = sheetOf(w, h);
  const layer = inkOn(canvas);
  const image = layer.createImageData(w, h);
  for (let at = 0; at < heavy.length; at++) {
    image.data.set(color, at * 4);
    image.data[at * 4 + 3] = 255 * Math.min(0.8, (heavy[at] as number) * 0.62);
  }
  layer.putImageData(image, 0, 0);
  ink.drawImage(canvas, left, top);
};

const strengthAt = ({ surface, surfaces, depth, width }: Raster, k: number): number => {
  const mesh = surfaces[surface[k] as number]?.mesh;
  if (!mesh) return 0;
  let most = 0;
  for (const step of [-1, 1, -width, width]) {
    const next = surfaces[surface[k + step] as number]?.mesh;
    const behind = (depth[k + step] as number) - (depth[k] as number);
    if (next?.id !== mesh.id && behind >= -0.2) return 1;
    if (next?.id === mesh.id && next.tone !== mesh.tone) most = Math.max(most, 0.55);
    else if (next?.id === mesh.id && behind > 2.2) most = Math.max(most, 0.75);
  }
  return most;
};
