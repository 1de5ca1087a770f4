import { drawJoint } from './closeUp/drawJoint';
import { drawReading } from './instruments/drawReading';
import { rastersOf } from './ink/light';
import { giveBack } from './ink/raster';
import { drawDeck, seam } from './ink/deck';
import { palettes } from './ink/palette';
import { inkOn, sheetOf } from './ink/pencil';
import { drawSheet, drawSheetSelection } from './measured/sheet';
import { drawChosenOnSheet } from './measured/sheetChosen';
import { drawThirdAngle } from './measured/thirdAngle';
import { loadsOver } from './overview/drawLoads';
import {
  drawOverview,
  drawSelection,
  stagedOf,
  type Overview,
  type OverviewInput,
  type Staged,
} from './overview/drawOverview';
import type { Area } from './overview/fit';
import { jointShowOf } from './motion/jointShow';
import { hangsTogether } from './motion/lifted';
import { playOn } from './motion/onStage';
import { showAct } from './motion/showAct';
import { hides, pick, standsAt } from './stageFind';
import {
  lieOf,
  scaled,
  shownOf,
  stationOf,
  toldOn,
  whole,
  zoomed,
  type Kept,
  type Moved,
  type Size,
} from './stageKept';
import { lift, setDown } from './stageLift';
import { nudge } from './stageNudge';
import { layoutOf, type StageLayout } from './stageLayout';
import type { StageScene } from './stageScene';
import type { StageView } from './stageView';

/** Draws what changed into canvases and hands them to the scene. Remembers what it drew, so that nothing is drawn twice. */
export type Painter = {
  readonly paint: (scene: StageScene, view: StageView) => void;
  readonly pick: (x: number, y: number) => string | undefined;
  readonly placeOf: (id: string) => { readonly x: number; readonly y: number } | undefined;
  readonly hides: (box: Area) => number;
  readonly nudge: (scene: StageScene, by: Moved) => void;
  /** Shows the hung ridge so many inches over where it hangs; undefined when the next picture will show where it came to. */
  readonly lift: (scene: StageScene, by: number | undefined) => void;
  readonly zoomBy: (factor: number) => void;
  readonly resetZoom: () => void;
  /** Everything is handed over anew next time: the scene is another one. */
  readonly forget: () => void;
};

const same = (a: readonly unknown[], b: readonly unknown[]): boolean =>
  a.length === b.length && a.every((value, i) => Object.is(value, b[i]));

export const createPainter = (size: () => Size): Painter => {
  const kept: Kept = {
    deck: '',
    main: [],
    key: [],
    chosen: [],
    staged: undefined,
    overview: undefined,
    sheet: undefined,
    sheetKey: [],
    third: undefined,
    zooms: new Map(),
    sheetAt: { x: 0, y: 0 },
    view: undefined,
    layout: undefined,
    zoom: whole,
    drawn: whole,
    corner: '',
    act: undefined,
    joint: undefined,
    onStage: undefined,
    lifting: undefined,
    spare: [],
    dimmed: [],
  };
  return {
    paint: (scene, view) => {
      paint({ scene, view, kept, size: size() });
    },
    pick: (x, y) => pick(kept, size().ratio, [x, y]),
    placeOf: (id) => standsAt(kept, size().ratio, id),
    hides: (box) => hides(kept, size().ratio, box),
    nudge: (scene, by) => {
      nudge(scene, kept, { by, ratio: size().ratio });
    },
    lift: (scene, by) => {
      const { view } = kept;
      if (by === undefined || !view) return;
      const now = size();
      const plate = () => plateOf({ view, kept, size: now, unhooked: true }, hangsTogether(shownOf(view)));
      lift(scene, kept, { by, size: now, plate });
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
    forget: () => {
      Object.assign(kept, { deck: '', main: [], key: [], chosen: [], sheetKey: [] });
    },
  };
};

type Painting = {
  readonly scene: StageScene;
  readonly view: StageView;
  readonly kept: Kept;
  readonly size: Size;
};

const paint = (painting: Painting): void => {
  const { scene, view, kept, size } = painting;
  const layout = layoutOf({ ...size, insets: view.insets, view: view.view });
  kept.layout = layout;
  keepZoom(kept, view.view);
  kept.view = view;
  paintDeck(painting, layout);
  const lie = lieOf(painting);
  const moment = [view.site, view.pose, view.lastAct, view.view, ...lie];
  const key = [...moment, view.words, view.joint, view.reading, stationOf(view), view.from];
  const main = [...moment, ...toldOn(view)];
  const news = !same(main, kept.main);
  const was = { act: kept.act, joint: kept.joint };
  const acted = view.act?.step !== was.act?.step;
  kept.act = view.act;
  if (news || acted) {
    scene.cutShort();
    setDown(scene, kept);
    giveBack(kept.spare.splice(0));
  }
  if (news) paintMain(painting, layout);
  else if (!same(key, kept.key)) paintLinked(painting, layout);
  kept.main = main;
  giveBack(kept.dimmed.splice(0));
  kept.key = key;
  const chosen = [...key, view.selected, view.loads];
  if (!same(chosen, kept.chosen)) paintChosen(scene, kept, size.ratio);
  kept.chosen = chosen;
  if (!news && !acted) return;
  paintAct(painting, lie);
  if (acted) paintNails(painting, was);
};

/** The picture without some members. */
const plateOf = (
  { view, kept, size, unhooked }: Pick<Painting, 'view' | 'kept' | 'size'> & { readonly unhooked?: true },
  ids: ReadonlySet<string>,
): Overview => {
  const { model, ...rest } = stagedFor(view, kept);
  const solids = model.solids.filter(({ id }) => !ids.has(id));
  const input = inputOf({ view, kept, size }, kept.layout as StageLayout);
  const { shaded } = kept.overview ?? {};
  const known = kept.overview &&
    shaded && { ...kept.overview, shaded: { ...shaded, colors: shaded.colors.slice() } };
  const staged = { ...rest, model: { ...model, solids } };
  const drawn = drawOverview({ ...input, unhooked: unhooked === true }, staged, known);
  kept.spare.push(drawn.raster);
  return drawn;
};

/** The views beside the overview, hung anew. */
const paintLinked = (painting: Painting, layout: StageLayout): void => {
  const { kept } = painting;
  if (!kept.overview || !layout.linked) return;
  paintSheet(painting, layout.linked, layout.linkedViews);
};

/** In a close-up nails go in one after the other. */
const paintNails = ({ scene, view, kept }: Painting, was: Pick<Kept, 'act' | 'joint'>): void => {
  const { joint, act } = kept;
  if (!act || !joint || !was.joint || view.still || act.step !== (was.act?.step ?? 0) + 1) return;
  const show = jointShowOf(was.joint, joint, act);
  const at = { x: 0, y: 0 };
  if (show) playOn({ scene, end: joint.into.canvas, before: was.joint.into.canvas, at }, show);
};

/** What led here is shown as it happens, where the moment before it was seen from the same place. */
const paintAct = ({ scene, view, kept, size }: Painting, lie: readonly unknown[]): void => {
  const { overview, staged, onStage: before, layout } = kept;
  const after =
    overview && staged && layout
      ? { shown: shownOf(view), overview, staged: staged.what, act: view.act, lie }
      : undefined;
  kept.onStage = after;
  if (!after || !layout || view.still) return;
  const { ratio } = size;
  const plate = (ids: ReadonlySet<string>): Overview => plateOf({ view, kept, size }, ids);
  const at = { x: layout.main.x * ratio, y: layout.main.y * ratio };
  showAct({ scene, before, after, at, theme: view.theme, ratio, plate });
};

/** Each view is found again as a hand left it. */
const keepZoom = (kept: Kept, next: StageView['view']): void => {
  if (!kept.view || kept.view.view === next) return;
  kept.zooms.set(kept.view.view, kept.zoom);
  kept.zoom = kept.zooms.get(next) ?? whole;
};

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
  if (old) kept.spare.push(old.raster);
  kept.overview = undefined;
  kept.joint = undefined;
  kept.third = undefined;
  if (view.view !== 'overview' || !layout.linked) takeDown(kept);
  if (view.view === 'overview') {
    paintOverview(painting, layout, old);
    const turned = kept.corner !== '' && kept.corner !== view.corner && old !== undefined;
    if (turned && !view.still)
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
  if (view.view === 'joint' && view.joint) {
    drawJoint(into, shownOf(view), view.joint);
    kept.joint = { into, shown: shownOf(view), joint: view.joint };
  }
  if (view.view === 'reading' && view.reading) drawReading(into, view.reading);
  scene.put('main', canvas);
};

/** The sheet that hangs is taken down. */
const takeDown = (kept: Kept): void => {
  giveBack((kept.sheet?.hung ?? []).map(({ flat }) => flat.raster));
  kept.sheet = undefined;
  kept.sheetKey = [];
};

const stagedFor = (view: StageView, kept: Kept): Staged => {
  const known = kept.staged;
  if (
    known &&
    known.site === view.site &&
    known.pose === view.pose &&
    known.act === view.lastAct &&
    known.corner === view.corner
  )
    return known.what;
  const what = stagedOf(shownOf(view), view.corner, known?.what);
  if (known) kept.dimmed.push(...rastersOf(known.what.lights, what.lights));
  kept.staged = { site: view.site, pose: view.pose, act: view.lastAct, corner: view.corner, what };
  return what;
};

const inputOf = (
  { view, kept, size: { ratio } }: Pick<Painting, 'view' | 'kept' | 'size'>,
  { main }: StageLayout,
): OverviewInput => ({
  shown: shownOf(view),
  corner: view.corner,
  theme: view.theme,
  words: view.words,
  width: Math.round(main.width * ratio),
  height: Math.round(main.height * ratio),
  area: scaled({ x: 0, y: 0, width: main.width, height: main.height }, ratio),
  ratio,
  zoom: { scale: kept.zoom.scale, x: kept.zoom.x * ratio, y: kept.zoom.y * ratio },
});

const paintOverview = (
  { scene, view, kept, size }: Painting,
  layout: StageLayout,
  old: Overview | undefined,
): void => {
  const { main } = layout;
  kept.overview = drawOverview(inputOf({ view, kept, size }, layout), stagedFor(view, kept), old);
  scene.put('main', kept.overview.canvas, { x: main.x * size.ratio, y: main.y * size.ratio });
};

const paintSheet = (
  { scene, view, kept, size }: Painting,
  area: Area,
  views: readonly ('section' | 'side')[],
): void => {
  const { ratio } = size;
  const { x, y, width, height } = scaled(area, ratio);
  const { model } = stagedFor(view, kept);
  const { level, theme, words, from = 'street' } = view;
  const station = stationOf(view);
  const key = [model, level, theme, words, x, y, width, height, ratio, views.join(), station, from];
  if (same(key, kept.sheetKey)) return;
  takeDown(kept);
  kept.sheetKey = key;
  kept.sheet = drawSheet({
    shown: shownOf(view),
    model,
    theme,
    words,
    area: { x: 0, y: 0, width: Math.round(width), height: Math.round(height) },
    ratio,
    views,
    station,
    from,
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
