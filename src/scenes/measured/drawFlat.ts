import type { Vec3 } from '../../core/geometry/vector';
import type { Model } from '../../present/model/solidsOf';
import { planCamera, sectionCamera, sideCamera, type Camera } from '../ink/camera';
import { rgb } from '../ink/color';
import { drawEdges, type EdgeStyle } from '../ink/edges';
import { clamp, mix } from '../ink/noise';
import { palettes, type Palette, type Theme } from '../ink/palette';
import { inkOn, sheetOf, tooth, type Point } from '../ink/pencil';
import { addSolid, rasterFor, type Raster, type Surface } from '../ink/raster';
import { shade } from '../ink/shade';
import { cutAt, type CutSolid } from './cutAt';

/** A square view: a section across the ridge at x looking toward B, the side seen from the street or the yard, or the plan under a height. */
export type FlatKind =
  | { readonly kind: 'plan'; readonly top: number }
  | { readonly kind: 'section'; readonly at: number }
  | { readonly kind: 'side'; readonly from: 'street' | 'yard'; readonly reach: number };

export type FlatInput = {
  readonly model: Model;
  readonly what: FlatKind;
  readonly theme: Theme;
  readonly width: number;
  readonly height: number;
  readonly ratio: number;
  readonly scale: number;
  /** Where x = 0 or the center line, at plate height, stands in the picture. */
  readonly origin: Point;
  /** Samples per device pixel, each way; 2 when absent. */
  readonly fine?: 1 | 2;
};

export type Flat = {
  readonly canvas: HTMLCanvasElement;
  readonly raster: Raster;
  readonly camera: Camera;
  readonly solids: readonly CutSolid[];
};

/** How deep a view goes before its members are as pale as they get, inches; ours. */
const deep = 130;

const leftOut = /^(ladder|pile|spare|floor|staging|board\.ridge)/;

const cameraFor = (what: FlatKind, lie: Parameters<typeof planCamera>[0]): Camera => {
  if (what.kind === 'plan') return planCamera(lie);
  return what.kind === 'section' ? sectionCamera(lie) : sideCamera(what.from, lie);
};

/** What is in front in a square view, before anything is drawn of it. */
export const seenFlat = ({
  model,
  what,
  width,
  height,
  scale,
  origin,
  fine = 2,
}: Omit<FlatInput, 'theme' | 'ratio'>): Omit<Flat, 'canvas'> => {
  const camera = cameraFor(what, { scale, middle: origin, target: [0, 0, 0] });
  const shown = model.solids
    .filter((solid) => !leftOut.test(solid.id))
    .map((solid) => (solid.fade ? { ...solid, fade: { full: -6, gone: -17 } } : solid));
  const solids: readonly CutSolid[] = what.kind === 'section' ? cutAt(shown, what.at) : shown;
  const raster = rasterFor({ width, height, fine }, camera);
  for (const solid of solids) addSolid(raster, solid);
  return { raster, camera, solids };
};

export const drawFlat = (input: FlatInput): Flat => {
  const { what, theme, width, height, ratio } = input;
  const { camera, raster, solids } = seenFlat(input);
  const palette = palettes[theme];
  const canvas = shade(raster, {
    theme,
    amount: palette.grainAmount.flat,
    pitch: Math.max(0.5, Math.round((2.1 / camera.scale) * 10) / 10),
    lighting: {
      kind: 'flat',
      light: theme === 'night' ? 0.56 : 0.84,
      wash: {
        ground: theme === 'night' ? rgb('#3a3229') : rgb('#f0e2c4'),
        amount: (surface) => washOf(surface, what),
      },
    },
  });
  const layer = inkOn(sheetOf(width, height));
  drawEdges(layer, raster, { solids, style: flatEdges({ palette, ratio, what }), bias: 1.3 });
  tooth(layer, 0.85);
  inkOn(canvas).drawImage(layer.canvas, 0, 0);
  return { canvas, raster, camera, solids };
};

const depthOf = (p: Vec3, what: FlatKind): number => {
  if (what.kind === 'plan') return clamp((what.top - p[2]) / (what.top + 1));
  return what.kind === 'section'
    ? clamp((p[0] - what.at) / deep)
    : clamp((what.reach + (what.from === 'street' ? p[1] : -p[1])) / (2 * what.reach));
};

const washOf = ({ solid, normal, point }: Surface, what: FlatKind): number => {
  if (solid?.material === 'sheath') return 0.55;
  const cut = (solid as CutSolid | undefined)?.cut === true;
  if (cut) return normal[0] < -0.5 ? -0.24 : 0.2;
  return 0.28 + depthOf(point, what) * 0.34;
};

type Styled = { readonly palette: Palette; readonly ratio: number; readonly what: FlatKind };

const flatEdges =
  ({ palette, ratio, what }: Styled): EdgeStyle =>
  (solid, outer) => {
    const color = palette.edge;
    if (solid.material === 'sheath') return outer ? { width: 0.7 * ratio, alpha: 0.45, color } : undefined;
    if ((solid as CutSolid).cut) return { width: 1.35 * ratio, alpha: 0.95, color };
    const d = depthOf(solid.faces[0]?.points[0] ?? [0, 0, 0], what);
    const onEdge = what.kind === 'side' && (solid.role === 'rafter' || solid.role === 'tie');
    return {
      width: mix(onEdge ? 0.85 : 1, 0.7, d) * ratio,
      alpha: mix(onEdge ? 0.72 : 0.85, 0.5, d),
      color,
    };
  };

/** The chosen member in a level view, outlined in chalk. */
export const drawFlatSelection = (
  flat: Flat,
  { id, theme, ratio }: { id: string; theme: Theme; ratio: number },
): HTMLCanvasElement => {
  const layer = inkOn(sheetOf(flat.canvas.width, flat.canvas.height));
  const solids = flat.solids.filter((solid) => solid.id === id);
  const color = palettes[theme].chalk;
  drawEdges(layer, flat.raster, {
    solids,
    bias: 0.4,
    style: (_solid, outer) => (outer ? { width: 2 * ratio, alpha: 1, color } : undefined),
  });
  return layer.canvas;
};
