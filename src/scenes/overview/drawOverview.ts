import type { Vec3 } from '../../core/geometry/vector';
import { modelOf, type Model } from '../../present/model/solidsOf';
import { schemeOf, type Shown } from '../../present/model/scheme';
import type { Solid } from '../../present/model/solid';
import { onScreen, sameCamera, type Camera, type Corner } from '../ink/camera';
import { chalkLine } from '../ink/chalk';
import { drawEdges, seenRuns, type EdgeStyle } from '../ink/edges';
import { lightsFor, type Lights } from '../ink/light';
import { palettes, type Palette, type Theme } from '../ink/palette';
import { inkOn, pencil, sheetOf, tooth, type Ink } from '../ink/pencil';
import { addMesh, addSolid, rasterFor, type Raster } from '../ink/raster';
import { canvasOf, colorsOf, type Shading } from '../ink/shade';
import type { Colors } from '../ink/staying';
import { crewOf, type Crew } from './crew';
import { fittedCamera, type Area } from './fit';
import { drawGear, drawLifeline } from './gear';
import { boomRoom, boomSolids } from './machine';
import { drawLettering } from './lettering';
import { drawOutlines } from './outline';
import { drawRing } from './ring';
import { seenPose, steadyModel, steadySolids } from './steady';
import type { DrawingWords } from './words';

/** What the overview is drawn from. Sizes in device pixels; `ratio` is device pixels to a CSS pixel. */
export type OverviewInput = {
  readonly shown: Shown;
  readonly corner: Corner;
  readonly theme: Theme;
  readonly words: DrawingWords | undefined;
  readonly width: number;
  readonly height: number;
  /** Where the roof itself must fit, clear of what lies over the drawing. */
  readonly area: Area;
  readonly ratio: number;
  /** Without the sling and what it hangs on: they are drawn apart. */
  readonly unhooked?: boolean;
  /** Larger than fitted, and moved, device pixels. */
  readonly zoom?: Zoom;
};

export type Zoom = { readonly scale: number; readonly x: number; readonly y: number };

const zoomedCamera = (camera: Camera, { scale, x, y }: Zoom): Camera => ({
  ...camera,
  scale: camera.scale * scale,
  middle: [camera.middle[0] * scale + x, camera.middle[1] * scale + y],
});

/** The drawing, and what a finger or a selection needs of it afterwards. */
export type Overview = {
  readonly canvas: HTMLCanvasElement;
  readonly raster: Raster;
  readonly camera: Camera;
  readonly model: Model;
  /** Where the letters of the ends stand. */
  readonly letters: readonly Area[];
  /** The colors under all that is drawn over them, until the next picture takes them over; how they came about. */
  readonly shaded: Shaded;
};

type Shaded = { readonly colors: Colors; readonly lights: Lights; readonly theme: Theme };

/** Bodies, people and light of one state of the site, seen from one corner. */
export type Staged = {
  readonly model: Model;
  readonly crew: Crew;
  /** The end of the machine's boom, where something hangs from it. */
  readonly boom: readonly Solid[];
  readonly lights: Lights;
};

/** `before`: what stood there the moment before; bodies and lights that are the same are taken over from it. */
export const stagedOf = (shown: Shown, corner: Corner, before?: Staged): Staged => {
  const still = { ...shown, pose: seenPose(shown.pose) };
  const model = steadyModel(before?.model, unhidden(modelOf(still), corner));
  const found = crewOf(still, model.solids);
  const crew = { ...found, solids: steadySolids(before?.crew.solids ?? [], found.solids) };
  const scene = { solids: model.solids, things: crew.solids, meshes: crew.meshes };
  const boom = steadySolids(before?.boom ?? [], boomSolids(still, corner));
  return { model, crew, boom, lights: lightsFor(scene, corner, before?.lights) };
};

/** From behind, the wall of the house would hide the work: it is left out there. */
const unhidden = (model: Model, corner: Corner): Model =>
  corner === 'yard' || corner === 'B'
    ? { ...model, solids: model.solids.filter(({ id }) => !id.startsWith('house.')) }
    : model;

/** The letters over the ridge's ends need so much at the head of the picture, CSS pixels. */
const lettersHigh = 14;

const underLetters = ({ area, ratio, words }: OverviewInput): Area => {
  const high = words ? lettersHigh * ratio : 0;
  return { ...area, y: area.y + high, height: area.height - high };
};

/** No ring closer than this on screen, device pixels: the pitch widens instead. From the look's tokens. */
export const closestRing = 1.6;
/** Pictures of more samples than this are taken at one sample a pixel. Ours: keeps a redraw short on a phone. */
const mostSamples = 3_400_000;

/** `earlier`: the picture before. Its colors are taken over, where it was seen alike; nobody may look at them again. */
export const drawOverview = (input: OverviewInput, staged: Staged, earlier?: Overview): Overview => {
  const { shown, width, height, ratio, theme } = input;
  const scheme = schemeOf(shown);
  const fitted = fittedCamera({
    ...input,
    area: underLetters(input),
    scheme,
    overhang: shown.level.plan.overhang,
    hook: shown.level.machine ? boomRoom : 12,
  });
  const camera = input.zoom ? zoomedCamera(fitted, input.zoom) : fitted;
  const fine = width * height * 4 <= mostSamples ? 2 : 1;
  const raster = rasterFor({ width, height, fine }, camera);
  const model: Model = {
    ...staged.model,
    solids: [...staged.model.solids, ...staged.crew.solids, ...(input.unhooked ? [] : staged.boom)],
    strokes: [...staged.model.strokes, ...staged.crew.strokes],
  };
  for (const solid of model.solids) addSolid(raster, solid);
  for (const mesh of staged.crew.meshes) addMesh(raster, mesh);
  const palette = palettes[theme];
  const shading: Shading = {
    theme,
    amount: palette.grainAmount.overview,
    pitch: Math.max(0.5, Math.round((closestRing / camera.scale) * 10) / 10),
    lighting: { kind: 'lit', lights: staged.lights },
  };
  const alike = earlier && earlier.shaded.theme === theme && sameSight(earlier.raster, raster);
  const colors = colorsOf(raster, shading, alike ? { raster: earlier.raster, ...earlier.shaded } : undefined);
  const canvas = canvasOf(colors, raster);
  const ink = inkOn(canvas);
  drawFeet(ink, { camera, feet: staged.crew.feet, night: theme === 'night' });
  drawPencil(ink, { raster, palette, ratio, model, night: theme === 'night' });
  drawOutlines(ink, raster, theme === 'night' ? [14, 10, 8] : [44, 28, 18]);
  drawStrings(ink, { raster, palette, ratio, model });
  if (staged.model.loose) drawRing(ink, { camera, palette, ratio, at: staged.model.loose });
  const gear = { ink, raster, camera, palette, ratio };
  for (const line of staged.crew.lines) drawLifeline(gear, line);
  if (input.unhooked !== true) drawGear(gear, shown, staged.crew.tagHand);
  fadeFoot(ink, ratio);
  const letters = input.words ? drawLettering(ink, { ...input, camera, palette, raster }, input.words) : [];
  const shaded = { colors, lights: staged.lights, theme };
  return { canvas, raster, camera, model: staged.model, letters, shaded };
};

const sameSight = (a: Raster, b: Raster): boolean =>
  a.width === b.width && a.height === b.height && a.fine === b.fine && sameCamera(a.camera, b.camera);

type Standing = { readonly camera: Camera; readonly feet: readonly Vec3[]; readonly night: boolean };

/** Who stands clear of the building stands on the deck: a soft spot of shade under the feet, behind the figure. */
const drawFeet = (ink: Ink, { camera, feet, night }: Standing): void => {
  ink.save();
  ink.globalCompositeOperation = 'destination-over';
  for (const at of feet) {
    const [x, y] = onScreen(camera, at);
    const r = 17 * camera.scale;
    ink.save();
    ink.translate(x + r * 0.2, y);
    ink.scale(1, 0.42);
    const spot = ink.createRadialGradient(0, 0, 0, 0, 0, r);
    spot.addColorStop(0, night ? 'rgba(0,0,0,.6)' : 'rgba(70,50,24,.5)');
    spot.addColorStop(1, 'rgba(70,50,24,0)');
    ink.fillStyle = spot;
    ink.fillRect(-r, -r, 2 * r, 2 * r);
    ink.restore();
  }
  ink.restore();
};

type Penciled = {
  readonly raster: Raster;
  readonly palette: Palette;
  readonly ratio: number;
  readonly model: Model;
};

const drawPencil = (
  ink: Ink,
  { raster, palette, ratio, model, night }: Penciled & { readonly night: boolean },
): void => {
  const layer = inkOn(sheetOf(ink.canvas.width, ink.canvas.height));
  drawEdges(layer, raster, { solids: model.solids, style: edgeStyle(palette, ratio), bias: 0.5 });
  for (const { kind, a, b } of model.strokes) {
    if (kind !== 'mark') continue;
    for (const run of seenRuns(raster, { a, b }, 0.6))
      pencil(layer, { ...run, width: ratio, alpha: 0.85, color: night ? [236, 228, 212] : [40, 36, 32] });
  }
  tooth(layer, 0.55);
  ink.drawImage(layer.canvas, 0, 0);
};

/** Silhouettes stronger than inner edges; walls and plates quieter than the work. */
export const edgeStyle =
  ({ edge, steelEdge, edgeAlpha }: Palette, ratio: number): EdgeStyle =>
  ({ role }, outer) => {
    if (role === 'floor') return undefined;
    if (role === 'wall') return { width: 0.8 * ratio, alpha: outer ? 0.4 : 0.25, color: edge };
    if (role === 'plate')
      return { width: (outer ? 0.9 : 0.65) * ratio, alpha: outer ? 0.62 : 0.36, color: edge };
    if (role === 'ladder' || role === 'strap' || role === 'tool' || role === 'boom')
      return { width: 0.8 * ratio, alpha: 0.7, color: steelEdge };
    if (role === 'panel') return { width: 0.8 * ratio, alpha: 0.5, color: edge };
    return {
      width: (outer ? 1.15 : 0.8) * ratio,
      alpha: outer ? edgeAlpha.outer : edgeAlpha.inner,
      color: edge,
    };
  };

/** Strings and chalk are what is meant: blue, with a paper casing where they cross the work. */
const drawStrings = (ink: Ink, { raster, palette, ratio, model }: Penciled): void => {
  for (const { kind, a, b } of model.strokes) {
    if (kind === 'mark') continue;
    const runs = seenRuns(raster, { a, b }, 0.9);
    const [casing, chalk] = kind === 'string' ? [3.6, 1.7] : [3, 1.4];
    chalkLine(ink, { palette, ratio, casing, chalk }, () => {
      for (const { from, to } of runs) {
        ink.moveTo(from[0], from[1]);
        ink.lineTo(to[0], to[1]);
      }
    });
  }
};

/** The drawing runs out at its foot instead of being cut off. CSS pixels. */
const footFade = 40;

const fadeFoot = (ink: Ink, ratio: number): void => {
  const { width, height } = ink.canvas;
  const wash = ink.createLinearGradient(0, height - footFade * ratio, 0, height - 4 * ratio);
  wash.addColorStop(0, 'rgba(0,0,0,0)');
  wash.addColorStop(1, 'rgba(0,0,0,1)');
  ink.save();
  ink.globalCompositeOperation = 'destination-out';
  ink.fillStyle = wash;
  ink.fillRect(0, height - footFade * ratio, width, footFade * ratio);
  ink.restore();
};

/** The chosen member outlined in chalk with a casing: its own layer, so that choosing redraws nothing else. */
export const drawSelection = (overview: Overview, { id, theme, ratio }: Chosen): HTMLCanvasElement => {
  const { raster, model } = overview;
  const layer = inkOn(sheetOf(overview.canvas.width, overview.canvas.height));
  const solids = model.solids.filter((solid) => solid.id === id);
  const { casing, chalk } = palettes[theme];
  const pass = (outerWidth: number, innerWidth: number, color: Palette['chalk']): void => {
    const style: EdgeStyle = (_solid: Solid, outer) => {
      const width = outer ? outerWidth : innerWidth;
      return width > 0 ? { width: width * ratio, alpha: 1, color } : undefined;
    };
    drawEdges(layer, raster, { solids, style, bias: 0.5 });
  };
  pass(4.2, 0, casing);
  pass(2.4, 1.3, chalk);
  tooth(layer, 0.85);
  return layer.canvas;
};
export type Chosen = { readonly id: string; readonly theme: Theme; readonly ratio: number };
