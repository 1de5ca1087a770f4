import { dot, scale, type Vec3 } from '../../core/geometry/vector';
import type { Lights } from './light';
import { hash } from './noise';
import type { Palette } from './palette';
import { seenBy, type Ground } from './plane';
import { nothing, type Raster } from './raster';

/** Light on one flat surface, ready to be asked at any sample. */
export type SurfaceLight = {
  readonly base: number;
  readonly sky: number;
  readonly sun: number;
  readonly sunView: Ground | undefined;
  readonly skyViews: readonly { readonly raster: Raster; readonly view: Ground; readonly weight: number }[];
};

/** A surface is lifted off itself by this much before it is compared with what a light sees, inches. */
export const sunLift = 0.45;
export const skyLift = 0.7;

/** A spot of sky that lights a surface by no more than this is left out. */
export const leastWeight = 0.02;

export const surfaceLight = (
  { ground, normal }: { readonly ground: Ground; readonly normal: Vec3 },
  lights: Lights,
  palette: Palette,
): SurfaceLight => {
  const toSun = Math.max(0, dot(normal, lights.toSun));
  const skyward = 0.5 + 0.5 * normal[2];
  return {
    base: palette.ambient,
    sky: 0.27 * skyward + 0.07,
    sun: palette.sunStrength * toSun,
    sunView: toSun > 0 ? seenBy(ground, lights.sun.camera, scale(normal, sunLift)) : undefined,
    skyViews: lights.sky
      .map((raster) => ({
        raster,
        view: seenBy(ground, raster.camera, scale(normal, skyLift)),
        weight: -dot(normal, raster.camera.away),
      }))
      .filter(({ weight }) => weight > leastWeight),
  };
};

/** A surface with the lights it stands in. */
export type LitSurface = { readonly light: SurfaceLight; readonly lights: Lights };

/** Light 0…1 at a sample: what is always there, open sky, and sun where nothing stands in its way. */
export const lightAt = (lit: LitSurface, x: number, y: number): number => {
  const { light } = lit;
  const open = openAt(light, x, y);
  const seen = light.sunView ? sunAt(light.sunView, lit, [x, y]) : 0;
  return light.base + light.sky * (0.38 + 0.62 * open) + light.sun * seen;
};

const sunAt = (view: Ground, { lights }: LitSurface, [x, y]: readonly [number, number]): number => {
  const { width, height, depth } = lights.sun;
  const u = view[0][0] + view[0][1] * x + view[0][2] * y - 0.5;
  const v = view[1][0] + view[1][1] * x + view[1][2] * y - 0.5;
  const d = view[2][0] + view[2][1] * x + view[2][2] * y;
  const i = Math.floor(u);
  const j = Math.floor(v);
  if (i < 1 || j < 1 || i > width - 4 || j > height - 4) return 1;
  const [fu, fv] = [u - i, v - j];
  let sum = 0;
  for (let b = -1; b <= 2; b++) {
    const wv = b < 0 ? 1 - fv : b > 1 ? fv : 1;
    for (let a = -1; a <= 2; a++) {
      const wu = a < 0 ? 1 - fu : a > 1 ? fu : 1;
      if ((depth[(j + b) * width + i + a] as number) >= d - 0.25) sum += wu * wv;
    }
  }
  return sum / 9;
};

/** A repeating unevenness of 64 by 64 samples: spots of sky are asked a little beside the sample, so that no bands show. */
const jitterSide = 64;
const jitter = Float32Array.from({ length: jitterSide * jitterSide * 2 }, (_, i) => hash(i, 5) - 0.5);

/** The cell of a light that a sample asks for, a little beside it; `nothing` beyond the light's picture. */
export const skyCell = (
  { width, height }: Raster,
  view: Ground,
  [x, y]: readonly [number, number],
): number => {
  const at = ((y & (jitterSide - 1)) * jitterSide + (x & (jitterSide - 1))) * 2;
  const u = Math.floor(view[0][0] + view[0][1] * x + view[0][2] * y + (jitter[at] as number));
  const v = Math.floor(view[1][0] + view[1][1] * x + view[1][2] * y + (jitter[at + 1] as number));
  return u < 0 || v < 0 || u >= width || v >= height ? nothing : v * width + u;
};

/** How deep in a spot of sky's picture a sample may lie and still be lit. */
export const skyDepth = (view: Ground, [x, y]: readonly [number, number]): number =>
  view[2][0] + view[2][1] * x + view[2][2] * y - 0.5;

const openAt = ({ skyViews }: SurfaceLight, x: number, y: number): number => {
  let open = 0;
  let all = 0;
  const sample = [x, y] as const;
  for (const { raster, view, weight } of skyViews) {
    const cell = skyCell(raster, view, sample);
    all += weight;
    if (cell < 0 || (raster.depth[cell] as number) >= skyDepth(view, sample)) open += weight;
  }
  return all > 0 ? open / all : 0.6;
};
