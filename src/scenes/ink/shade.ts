import type { Rgb } from './color';
import type { Lights } from './light';
import { mix, smooth } from './noise';
import { palettes, type Theme } from './palette';
import { sheetOf, inkOn } from './pencil';
import { groundOf, slantAt, type Ground } from './plane';
import { nothing, type Raster, type Surface } from './raster';
import { stayingIn, type Colors, type Earlier } from './staying';
import { lightAt, surfaceLight } from './surfaceLight';
import { normalSlants, tint, tonerOf, type Grained, type Toner } from './surfaceTone';

/** How a picture is lit. `flat` views wash what lies deeper toward the paper. */
export type Lighting =
  | { readonly kind: 'lit'; readonly lights: Lights }
  | { readonly kind: 'flat'; readonly light: number; readonly wash: Wash };

/** How far a surface goes over to the ground color, 0…1; below 0 darker: what a section plane cuts. */
export type Wash = { readonly ground: Rgb; readonly amount: (surface: Surface) => number };

type Shader = {
  readonly light: (x: number, y: number) => number;
  readonly tone: Toner;
  readonly height: ((x: number, y: number) => number) | undefined;
  readonly wash: number;
};

export type Shading = Grained & { readonly lighting: Lighting };

/** Colors every sample that shows something, and gathers samples to device pixels. */
export const shade = (raster: Raster, shading: Shading): HTMLCanvasElement =>
  canvasOf(colorsOf(raster, shading), raster);

export const canvasOf = (colors: Colors, { width, height, fine }: Raster): HTMLCanvasElement => {
  const canvas = sheetOf(width / fine, height / fine);
  inkOn(canvas).putImageData(new ImageData(colors, canvas.width, canvas.height), 0, 0);
  return canvas;
};

/** The colors of a raster; of an earlier picture only those pixels are colored anew that may have changed. */
export const colorsOf = (raster: Raster, shading: Shading, earlier?: Earlier): Colors => {
  const { fine } = raster;
  const [width, height] = [raster.width / fine, raster.height / fine];
  const { lighting } = shading;
  const over = lighting.kind === 'lit' ? earlier : undefined;
  const data = over?.colors ?? new Uint8ClampedArray(width * height * 4);
  const shaders: (Shader | undefined)[] = new Array<Shader | undefined>(raster.surfaces.length);
  const work: Work = { raster, shading, shaders, sum: new Float32Array(4), data };
  const stays = over && lighting.kind === 'lit' ? stayingIn(raster, lighting.lights, over) : undefined;
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      if (stays?.(x, y)) continue;
      gather(work, x, y);
    }
  return data;
};

type Work = {
  readonly raster: Raster;
  readonly shading: Shading;
  readonly shaders: (Shader | undefined)[];
  readonly sum: Float32Array;
  readonly data: Colors;
};

/** One device pixel: light is asked once for each surface in it, color at each sample. */
const gather = (work: Work, px: number, py: number): void => {
  const { raster, shading, shaders, sum, data } = work;
  const { fine, width, surface, surfaces } = raster;
  sum.fill(0);
  let last = nothing;
  let light = 0;
  for (let j = 0; j < fine; j++)
    for (let i = 0; i < fine; i++) {
      const [x, y] = [px * fine + i, py * fine + j];
      const id = surface[y * width + x] as number;
      if (id < 0) continue;
      const shader = (shaders[id] ??= shaderOf(raster, surfaces[id] as Surface, shading));
      if (id !== last) light = shader.light(x + 0.5, y + 0.5);
      last = id;
      shader.tone(light, x + 0.5, y + 0.5);
      add(work, shader, shader.height ? shader.height(x + 0.5, y + 0.5) : 1);
    }
  const alpha = sum[3] as number;
  const at = (py * (width / fine) + px) * 4;
  if (alpha <= 0) {
    data[at] = data[at + 1] = data[at + 2] = data[at + 3] = 0;
    return;
  }
  data[at] = (sum[0] as number) / alpha;
  data[at + 1] = (sum[1] as number) / alpha;
  data[at + 2] = (sum[2] as number) / alpha;
  data[at + 3] = (alpha / (fine * fine)) * 255;
};

const add = ({ sum, shading: { lighting } }: Work, { wash }: Shader, alpha: number): void => {
  const ground = lighting.kind === 'flat' ? lighting.wash.ground : undefined;
  for (let c = 0; c < 3; c++) {
    const own = tint[c] as number;
    const washed =
      !ground || wash === 0
        ? own
        : wash < 0
          ? own * (1 + wash * (1 + 0.12 * c))
          : mix(own, ground[c] as number, wash);
    sum[c] = (sum[c] as number) + washed * alpha;
  }
  sum[3] = (sum[3] as number) + alpha;
};

const shaderOf = (raster: Raster, surface: Surface, shading: Shading): Shader => {
  const ground = groundOf(raster.camera, surface.point, surface.normal);
  const { lighting } = shading;
  const fade = surface.solid?.fade;
  return {
    tone: tonerOf(surface, ground, shading),
    height: fade && ((x, y) => smooth(fade.gone, fade.full, slantAt(ground[2], x, y))),
    wash: lighting.kind === 'flat' ? lighting.wash.amount(surface) : 0,
    light:
      lighting.kind === 'flat'
        ? () => lighting.light
        : surface.mesh
          ? roundLight(surface, ground, { lights: lighting.lights, theme: shading.theme })
          : flatLight(surface, ground, { lights: lighting.lights, theme: shading.theme }),
  };
};

type Lit = { readonly lights: Lights; readonly theme: Theme };

const flatLight = (surface: Surface, ground: Ground, { lights, theme }: Lit): Shader['light'] => {
  const light = surfaceLight({ ground, normal: surface.normal }, lights, palettes[theme]);
  const lit = { light, lights };
  return (x, y) => lightAt(lit, x, y);
};

/** A rounded body turns its face from the sun little by little; it takes its shadow from where it stands. */
const roundLight = (surface: Surface, ground: Ground, { lights, theme }: Lit): Shader['light'] => {
  const normals = normalSlants(surface, ground);
  const palette = palettes[theme];
  const own = {
    ...surfaceLight({ ground, normal: surface.normal }, { ...lights, sky: [] }, palette),
    sun: 1,
  };
  const sunOnly = { light: { ...own, base: 0, sky: 0 }, lights };
  const { toSun: sunward } = lights;
  return (x, y) => {
    if (!normals) return palette.ambient + 0.2;
    const n = [0, 1, 2].map((i) => slantAt(normals[i as 0 | 1 | 2], x, y)) as [number, number, number];
    const toSun = n[0] * sunward[0] + n[1] * sunward[1] + n[2] * sunward[2];
    const seen = toSun > 0 && own.sunView ? lightAt(sunOnly, x, y) : 0;
    const sky = (0.27 * (0.5 + 0.5 * n[2]) + 0.07) * 0.82;
    return palette.ambient + sky + palette.sunStrength * Math.max(0, toSun) * seen;
  };
};
