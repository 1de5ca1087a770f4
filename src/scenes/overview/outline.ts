import { css, type Rgb } from '../ink/color';
import { inkOn, sheetOf, type Ink } from '../ink/pencil';
import type { Raster } from '../ink/raster';

/** A thin line where a person meets something else, and where one cloth meets another. */
export const drawOutlines = (ink: Ink, raster: Raster, color: Rgb): void => {
  const { width, height, fine, surface } = raster;
  const [w, h] = [width / fine, height / fine];
  const heavy = new Float32Array(w * h);
  const first = raster.surfaces.findIndex(({ mesh }) => mesh !== undefined);
  if (first < 0) return;
  for (let y = 1; y < height - 1; y++)
    for (let x = 1; x < width - 1; x++) {
      const k = y * width + x;
      if ((surface[k] as number) < first) continue;
      const strength = strengthAt(raster, k);
      if (strength === 0) continue;
      const at = Math.floor(y / fine) * w + Math.floor(x / fine);
      heavy[at] = (heavy[at] as number) + strength / fine;
    }
  const canvas = sheetOf(w, h);
  const layer = inkOn(canvas);
  layer.fillStyle = css(color);
  heavy.forEach((strength, at) => {
    if (strength <= 0) return;
    layer.globalAlpha = Math.min(0.8, strength * 0.62);
    layer.fillRect(at % w, Math.floor(at / w), 1, 1);
  });
  ink.drawImage(canvas, 0, 0);
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
