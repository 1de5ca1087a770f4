import type { Vec3 } from '../core/geometry/vector';
import { lerp } from '../core/geometry/vector';
import { placeOf } from '../core/site/ids';
import { openSpotsOf } from '../present/model/openSpots';
import type { Shown } from '../present/model/scheme';
import { drawJoint } from './closeUp/drawJoint';
import { drawReading } from './instruments/drawReading';
import { onScreen } from './ink/camera';
import { giveBack } from './ink/raster';
import { drawDeck, seam } from './ink/deck';
import { palettes } from './ink/palette';
import { inkOn, sheetOf, type Point } from './ink/pencil';
import { drawSheet, drawSheetSelection, onSheet, sheetPoint, type Sheet } from './measured/sheet';
import { drawChosenOnSheet } from './measured/sheetChosen';
import { drawThirdAngle, type ThirdAngle } from './measured/thirdAngle';
import { loadsOver } from './overview/drawLoads';
import { drawOverview, drawSelection, stagedOf, type Overview, type Staged } from './overview/drawOverview';
import type { Area } from './overview/fit';
import { hiddenBy } from './overview/hidden';
import { memberAt } from './overview/pick';
import { layoutOf, type StageLayout } from './stageLayout';
import type { StageScene } from './stageScene';
import type { StageView } from './stageView';

type Size = { readonly width: number; readonly height: number; readonly ratio: number };
type Zoom = { readonly scale: number; readonly x: number; readonly y: number };
type Moved = {
  readonly x: number;
  readonly y: number;
  readonly scale: number;
  readonly about: readonly [number, number];
};

/** Draws what changed into canvases and hands them to the scene. Remembers what it drew, so that nothing is drawn twice. */
export type Painter = {
  readonly paint: (scene: StageScene, view: StageView) => void;
  readonly pick: (x: number, y: number) => string | undefined;
  readonly placeOf: (id: string) => { readonly x: number; readonly y: number } | undefined;
  readonly hides: (box: Area) => number;
  readonly nudge: (scene: StageScene, by: Moved) => void;
  readonly zoomBy: (factor: number) => void;
  readonly resetZoom: () => void;
};

type Kept = {
  deck: string;
  key: readonly unknown[];
  chosen: readonly unknown[];
  staged:
    | { readonly site: unknown; readonly pose: unknown; readonly corner: string; readonly what: Staged }
    | undefined;
  overview: Overview | undefined;
  sheet: Sheet | undefined;
  /** The sheet of three views, while it is what hangs. */
  third: ThirdAngle | undefined;
  sheetAt: { readonly x: number; readonly y: number };
  view: StageView | undefined;
  layout: StageLayout | undefined;
  zoom: Zoom;
  /** How the other views were left. */
  zooms: Map<StageView['view'], Zoom>;
  drawn: Zoom;
  corner: string;
};

const whole: Zoom = { scale: 1, x: 0, y: 0 };
const zoomRange = { least: 0.8, most: 5 };

const same = (a: readonly unknown[], b: readonly unknown[]): boolean =>
  a.length === b.length && a.every((value, i) => Object.is(value, b[i]));

const shownOf = ({ level, site, pose, figured }: StageView): Shown => ({ level, site, pose, figured });

export const createPainter = (size: () => Size, reducedMotion: boolean): Painter => {
  const kept: Kept = {
    deck: '',
    key: [],
    chosen: [],
    staged: undefined,
    overview: undefined,
    sheet: undefined,
    third: undefined,
    zooms: new Map(),
    sheetAt: { x: 0, y: 0 },
    view: undefined,
    layout: undefined,
    zoom: whole,
    drawn: whole,
    corner: '',
  };
  return {
    paint: (scene, view) => {
      paint({ scene, view, kept, size: size(), reducedMotion });
    },
    pick: (x, y) => pick(kept, size().ratio, [x, y]),
    placeOf: (id) => standsAt(kept, size().ratio, id),
    hides: (box) => hides(kept, size().ratio, box),
    nudge: (scene, by) => {
      nudge(scene, kept, { by, ratio: size().ratio });
    },
    zoomBy: (factor) => {
      const { width, height } = size();
      kept.zoom = zoomed(kept.zoom, {
        x: 0,
        y: 0,
        scale: factor,
        about: [(kept.layout?.main.width ?? width) / 2, (kept.layout?.main.height ?? height) / 2],
      });
    },
    resetZoom: () => {
      kept.zoom = whole;
    },
  };
};

type Painting = {
  readonly scene: StageScene;
  readonly view: StageView;
  readonly kept: Kept;
  readonly size: Size;
  readonly reducedMotion: boolean;
};

const paint = (painting: Painting): void => {
  const { scene, view, kept, size } = painting;
  const layout = layoutOf({ ...size, insets: view.insets, view: view.view });
  kept.layout = layout;
  keepZoom(kept, view.view);
  kept.view = view;
  paintDeck(painting, layout);
  const { width, height, ratio } = size;
  const { top, right, bottom, left } = view.insets;
  const common = [
    view.site,
    view.pose,
    view.theme,
    view.words,
    view.view,
    width,
    height,
    ratio,
    top,
    right,
    bottom,
    left,
  ];
  const key = [...common, view.corner, kept.zoom, view.joint, view.reading, stationOf(view), view.from];
  if (!same(key, kept.key)) paintMain(painting, layout);
  kept.key = key;
  const chosen = [...key, view.selected, view.loads];
  if (!same(chosen, kept.chosen)) paintChosen(scene, kept, ratio);
  kept.chosen = chosen;
};

/** Each view is found again as a hand left it. */
const keepZoom = (kept: Kept, next: StageView['view']): void => {
  if (!kept.view || kept.view.view === next) return;
  kept.zooms.set(kept.view.view, kept.zoom);
  kept.zoom = kept.zooms.get(next) ?? whole;
};

const scaled = ({ x, y, width, height }: Area, ratio: number): Area => ({
  x: x * ratio,
  y: y * ratio,
  width: width * ratio,
  height: height * ratio,
});

const paintDeck = ({ scene, view, kept, size }: Painting, { linked, main }: StageLayout): void => {
  const { width, height, ratio } = size;
  const key = [view.theme, width, height, ratio, linked?.y, main.x, main.width].join(' ');
  if (key === kept.deck) return;
  kept.deck = key;
  const canvas = sheetOf(width * ratio, height * ratio);
  const ink = inkOn(canvas);
  drawDeck(ink, view.theme, ratio);
  if (linked) {
    const y = Math.round(linked.y * ratio) + 0.5;
    seam(ink, palettes[view.theme], {
      from: [linked.x * ratio, y],
      to: [(linked.x + linked.width) * ratio, y],
      ratio,
    });
  }
  scene.put('deck', canvas);
};

const paintMain = (painting: Painting, layout: StageLayout): void => {
  const { scene, view, kept, size } = painting;
  kept.drawn = kept.zoom;
  const old = kept.overview;
  giveBack([...(old ? [old.raster] : []), ...(kept.sheet?.hung ?? []).map(({ flat }) => flat.raster)]);
  kept.overview = undefined;
  kept.sheet = undefined;
  kept.third = undefined;
  if (view.view === 'overview') {
    paintOverview(painting, layout);
    const turned = kept.corner !== '' && kept.corner !== view.corner && old !== undefined;
    if (turned && !painting.reducedMotion)
      scene.fadeFrom(old.canvas, { x: layout.main.x * size.ratio, y: layout.main.y * size.ratio });
    kept.corner = view.corner;
    if (layout.linked) paintSheet(painting, layout.linked, layout.linkedViews);
    else scene.put('linked', undefined);
    return;
  }
  scene.put('linked', undefined);
  if (view.view === 'sheet') return paintThird(painting, layout.main);
  if (view.view === 'section' || view.view === 'side') {
    scene.put('main', undefined);
    paintSheet(painting, layout.main, [view.view]);
    return;
  }
  const canvas = sheetOf(size.width * size.ratio, size.height * size.ratio);
  const into = {
    canvas,
    area: scaled(layout.main, size.ratio),
    ratio: size.ratio,
    theme: view.theme,
    words: view.words,
  };
  if (view.view === 'joint' && view.joint) drawJoint(into, shownOf(view), view.joint);
  if (view.view === 'reading' && view.reading) drawReading(into, view.reading);
  scene.put('main', canvas);
};

const stagedFor = (view: StageView, kept: Kept): Staged => {
  const known = kept.staged;
  if (known && known.site === view.site && known.pose === view.pose && known.corner === view.corner)
    return known.what;
  if (known) giveBack([known.what.lights.sun, ...known.what.lights.sky]);
  const what = stagedOf(shownOf(view), true, view.corner);
  kept.staged = { site: view.site, pose: view.pose, corner: view.corner, what };
  return what;
};

const paintOverview = ({ scene, view, kept, size }: Painting, { main }: StageLayout): void => {
  const { ratio } = size;
  const staged = stagedFor(view, kept);
  kept.overview = drawOverview(
    {
      shown: shownOf(view),
      corner: view.corner,
      theme: view.theme,
      words: view.words,
      width: Math.round(main.width * ratio),
      height: Math.round(main.height * ratio),
      area: scaled({ x: 0, y: 0, width: main.width, height: main.height }, ratio),
      ratio,
      people: true,
      zoom: { scale: kept.zoom.scale, x: kept.zoom.x * ratio, y: kept.zoom.y * ratio },
    },
    staged,
  );
  scene.put('main', kept.overview.canvas, { x: main.x * ratio, y: main.y * ratio });
};

const paintSheet = (
  { scene, view, kept, size }: Painting,
  area: Area,
  views: readonly ('section' | 'side')[],
): void => {
  const { ratio } = size;
  const { x, y, width, height } = scaled(area, ratio);
  kept.sheet = drawSheet({
    shown: shownOf(view),
    model: stagedFor(view, kept).model,
    theme: view.theme,
    words: view.words,
    area: { x: 0, y: 0, width: Math.round(width), height: Math.round(height) },
    ratio,
    views,
    station: stationOf(view),
    from: view.from ?? 'street',
  });
  kept.sheetAt = { x: Math.round(x), y: Math.round(y) };
  scene.put('linked', kept.sheet.canvas, kept.sheetAt);
};

const paintThird = ({ scene, view, kept, size }: Painting, main: Area): void => {
  const { ratio } = size;
  const { x, y, width, height } = scaled(main, ratio);
  kept.third = drawThirdAngle({
    shown: shownOf(view),
    model: stagedFor(view, kept).model,
    theme: view.theme,
    words: view.words,
    area: { x: 0, y: 0, width: Math.round(width), height: Math.round(height) },
    ratio,
    station: stationOf(view),
    zoom: { scale: kept.zoom.scale, x: kept.zoom.x * ratio, y: kept.zoom.y * ratio },
  });
  kept.sheet = kept.third;
  kept.sheetAt = { x, y };
  scene.put('main', kept.third.canvas, kept.sheetAt);
};

/** The section stands before the chosen rafter, else before the last one placed. */
const stationOf = ({ station, selected, pose }: StageView): number => {
  if (station !== undefined) return station;
  const chosen = selected === undefined ? undefined : placeOf(selected).station;
  if (chosen !== undefined && /^(rafter|joist|collar)/.test(selected ?? '')) return chosen;
  const placed = Object.values(pose.rafters);
  return placed[placed.length - 1]?.station ?? 2;
};

const paintChosen = (scene: StageScene, kept: Kept, ratio: number): void => {
  const { view, overview, sheet, third, layout } = kept;
  const at = { x: (layout?.main.x ?? 0) * ratio, y: (layout?.main.y ?? 0) * ratio };
  const id = view?.selected;
  const chosen = id !== undefined && view ? { id, theme: view.theme, ratio } : undefined;
  const outlined = overview
    ? chosen && drawSelection(overview, chosen)
    : chosen && third && drawChosenOnSheet(third, chosen);
  const loads = overview && view?.loads;
  const laid = loads ? loadsOver(overview, outlined, { loads, theme: view.theme, ratio }) : outlined;
  scene.put('chosen', laid, at);
  scene.put(
    'linkedChosen',
    chosen && sheet && !third ? drawSheetSelection(sheet, chosen) : undefined,
    kept.sheetAt,
  );
};

const pick = (kept: Kept, ratio: number, [x, y]: Point): string | undefined => {
  const { view, overview, sheet, layout } = kept;
  if (!view || !layout) return undefined;
  const at: Point = [x * ratio, y * ratio];
  const spots = openSpotsOf(shownOf(view));
  const inLinked = layout.linked ? y >= layout.linked.y : true;
  if (sheet && inLinked)
    return onSheet(sheet, ({ raster, camera }, p) => memberAt({ raster, camera, spots: [], ratio }, p), [
      at[0] - kept.sheetAt.x,
      at[1] - kept.sheetAt.y,
    ]);
  if (!overview) return undefined;
  const inside: Point = [at[0] - layout.main.x * ratio, at[1] - layout.main.y * ratio];
  return memberAt({ raster: overview.raster, camera: overview.camera, spots, ratio }, inside);
};

const hides = ({ view, overview, layout }: Kept, ratio: number, box: Area): number => {
  if (!overview || !layout) return 0;
  const { x, y } = layout.main;
  return hiddenBy(overview, scaled({ ...box, x: box.x - x, y: box.y - y }, ratio), view?.selected);
};

const standsAt = (
  kept: Kept,
  ratio: number,
  id: string,
): { readonly x: number; readonly y: number } | undefined => {
  const { view, overview, sheet, staged, layout } = kept;
  if (!view) return undefined;
  const p = landmark(view, staged?.what, id);
  if (!p) return undefined;
  if (overview && layout) {
    const [x, y] = onScreen(overview.camera, p);
    return { x: layout.main.x + x / ratio, y: layout.main.y + y / ratio };
  }
  const on = view.view === 'sheet' ? 'plan' : view.view === 'side' ? 'side' : 'section';
  const seen = sheet && sheetPoint(sheet, on, p);
  return seen && { x: (seen[0] + kept.sheetAt.x) / ratio, y: (seen[1] + kept.sheetAt.y) / ratio };
};

/** A rafter is known by a spot near its heel, anything else by its middle, an open place by its first point. */
const landmark = (view: StageView, staged: Staged | undefined, id: string): Vec3 | undefined => {
  const solids = staged?.model.solids.filter((solid) => solid.id === id) ?? [];
  const points = solids.flatMap(({ faces }) => faces[0]?.points ?? []);
  const first = points[0];
  if (!first) return openSpotsOf(shownOf(view)).find((spot) => spot.id === id)?.points[0];
  const middle = points.reduce<Vec3>((sum, p) => lerp(sum, p, 1 / points.length), first);
  return id.startsWith('rafter.') ? lerp(first, points[4] ?? middle, 0.12) : middle;
};

const zoomed = (zoom: Zoom, { x, y, scale, about }: Moved): Zoom => {
  const next = Math.min(zoomRange.most, Math.max(zoomRange.least, zoom.scale * scale));
  const k = next / zoom.scale;
  return {
    scale: next,
    x: about[0] + (zoom.x - about[0]) * k + x,
    y: about[1] + (zoom.y - about[1]) * k + y,
  };
};

/** While a hand is on it the picture is only moved; it is drawn sharp when the hand lets go. */
const nudge = (scene: StageScene, kept: Kept, { by, ratio }: { by: Moved; ratio: number }): void => {
  const { drawn, layout } = kept;
  if (!layout) return;
  const { x, y } = layout.main;
  kept.zoom = zoomed(kept.zoom, { ...by, about: [by.about[0] - x, by.about[1] - y] });
  const k = kept.zoom.scale / drawn.scale;
  scene.nudge({
    x: (x + kept.zoom.x - drawn.x * k) * ratio,
    y: (y + kept.zoom.y - drawn.y * k) * ratio,
    scale: k,
  });
};
