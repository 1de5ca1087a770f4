import type { Solid } from '../../present/model/solid';
import type { Camera } from '../ink/camera';
import { drawEdges } from '../ink/edges';
import { palettes, type Theme } from '../ink/palette';
import { inkOn } from '../ink/pencil';
import { addSolid, giveBack, nothing, rasterFor, type Raster } from '../ink/raster';
import { shade } from '../ink/shade';
import { closestRing, edgeStyle } from '../overview/drawOverview';
import type { Lights } from '../ink/light';
import type { Area } from '../overview/fit';
import { boxOf } from './boxes';
import { showsOne } from './without';

/** Bodies on their way, drawn over the scene they move through and hidden by what of it is in front. */

/** A raster without them, or one with them and the one from before they were there. */
export type Scene = {
  readonly raster: Raster;
  readonly ids: ReadonlySet<string>;
  readonly behind: Raster | undefined;
};

export type Air = {
  readonly scene: Scene;
  readonly camera: Camera;
  readonly picture: { readonly width: number; readonly height: number };
  readonly theme: Theme;
  readonly ratio: number;
  readonly lights: Lights;
};

/** A picture and where its upper left corner lies on the picture of the scene, device pixels. */
export type Placed = { readonly canvas: HTMLCanvasElement; readonly at: Pick<Area, 'x' | 'y'> };

/** What is closer than this to a surface of the scene lies on it, inches. */
const touching = 0.3;

export const drawInTheAir = (air: Air, bodies: readonly Solid[]): Placed | undefined => {
  const { camera, picture, theme, ratio, lights } = air;
  const box = boxOf(camera, bodies, picture);
  if (!box) return undefined;
  const [mx, my] = camera.middle;
  const raster = rasterFor({ ...box, fine: 1 }, { ...camera, middle: [mx - box.x, my - box.y] });
  for (const body of bodies) addSolid(raster, body);
  hideBehind(raster, air.scene, box);
  const palette = palettes[theme];
  const pitch = Math.max(0.5, Math.round((closestRing / camera.scale) * 10) / 10);
  const drawn = shade(raster, {
    theme,
    amount: palette.grainAmount.overview,
    pitch,
    lighting: { kind: 'lit', lights },
  });
  const layer = inkOn(drawn);
  drawEdges(layer, raster, { solids: bodies, style: edgeStyle(palette, ratio), bias: 0.5 });
  giveBack([raster]);
  return { canvas: drawn, at: { x: box.x, y: box.y } };
};

/** Takes out what the scene hides, and lets edges know how near the scene is. */
const hideBehind = (raster: Raster, { raster: seen, ids, behind }: Scene, box: Area): void => {
  const { width, height, depth, surface } = raster;
  const mid = seen.fine >> 1;
  for (let j = 0; j < height; j++)
    for (let i = 0; i < width; i++) {
      const k = ((box.y + j) * seen.fine + mid) * seen.width + (box.x + i) * seen.fine + mid;
      const from = behind && showsOne(seen, k, ids) ? behind : seen;
      const scene = from.depth[k] as number;
      const at = j * width + i;
      if (surface[at] !== nothing && scene < (depth[at] as number) - touching) surface[at] = nothing;
      if (scene < (depth[at] as number)) depth[at] = scene;
    }
};
