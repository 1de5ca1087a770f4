import type { Shown } from '../../present/model/scheme';
import { modelOf } from '../../present/model/solidsOf';
import { schemeOf } from '../../present/model/scheme';
import type { Corner } from '../ink/camera';
import { drawEdges } from '../ink/edges';
import { lightsFor, rastersOf } from '../ink/light';
import { palettes, type Theme } from '../ink/palette';
import { inkOn, sheetOf } from '../ink/pencil';
import { addSolid, giveBack, rasterFor } from '../ink/raster';
import { shade } from '../ink/shade';
import { fittedCamera } from './fit';

/** A small drawing of a site as it stood, without people or words: for strips of states and for a job's card. */
export type ThumbInput = {
  readonly shown: Shown;
  readonly theme: Theme;
  readonly corner?: Corner;
  /** CSS pixels, and device pixels to one of them. */
  readonly width: number;
  readonly height: number;
  readonly ratio: number;
};

/** On a clear canvas of width × ratio by height × ratio; lay it on the deck or on paper. */
export const drawThumb = ({
  shown,
  theme,
  corner = 'street',
  width,
  height,
  ratio,
}: ThumbInput): HTMLCanvasElement => {
  const model = modelOf(shown);
  const size = { width: Math.round(width * ratio), height: Math.round(height * ratio) };
  const camera = fittedCamera({
    scheme: schemeOf(shown),
    overhang: shown.level.plan.overhang,
    hook: 6,
    corner,
    area: { x: 0, y: 0, ...size },
    ratio,
  });
  const lights = lightsFor({ solids: model.solids, things: [], meshes: [] }, corner);
  const raster = rasterFor({ ...size, fine: 3 }, camera);
  const palette = palettes[theme];
  for (const solid of model.solids) addSolid(raster, solid);
  const canvas = shade(raster, {
    theme,
    amount: palette.grainAmount.overview * 0.55,
    pitch: 1.6,
    lighting: { kind: 'lit', lights },
  });
  const layer = inkOn(sheetOf(size.width, size.height));
  drawEdges(layer, raster, {
    solids: model.solids,
    bias: 0.9,
    style: ({ role }, outer) => {
      if (role === 'wall' || role === 'floor') return undefined;
      return { width: (outer ? 0.7 : 0.5) * ratio, alpha: outer ? 0.72 : 0.3, color: palette.edge };
    },
  });
  const ink = inkOn(canvas);
  ink.drawImage(layer.canvas, 0, 0);
  const foot = 14 * ratio;
  const wash = ink.createLinearGradient(0, size.height - foot, 0, size.height);
  wash.addColorStop(0, 'rgba(0,0,0,0)');
  wash.addColorStop(1, 'rgba(0,0,0,1)');
  ink.globalCompositeOperation = 'destination-out';
  ink.fillStyle = wash;
  ink.fillRect(0, size.height - foot, size.width, foot);
  ink.globalCompositeOperation = 'source-over';
  giveBack([raster, ...rastersOf(lights)]);
  return canvas;
};
