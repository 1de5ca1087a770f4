import type { Vec3 } from '../../core/geometry/vector';
import { schemeOf, type Scheme, type Shown } from '../../present/model/scheme';
import type { Model } from '../../present/model/solidsOf';
import { onScreen } from '../ink/camera';
import { css } from '../ink/color';
import { drawMeasure, measureOf, measureWidth } from '../ink/fraction';
import { palettes, type Palette, type Theme } from '../ink/palette';
import { chalk, inkOn, pencil, sheetOf, tooth, type Ink, type Point } from '../ink/pencil';
import { drawingFont } from '../overview/axisMark';
import type { Area } from '../overview/fit';
import type { DrawingWords } from '../overview/words';
import { drawFlat, drawFlatSelection, type Flat } from './drawFlat';
import { atWall, drawWallCut, highestOf, reachOf, slopeOut, wallFoot, withoutWall } from './wallBehind';

/** Section and side hung on one sheet: third angle, heights shared. Device pixels. */
export type SheetInput = {
  readonly shown: Shown;
  readonly model: Model;
  readonly theme: Theme;
  readonly words: DrawingWords;
  readonly area: Area;
  readonly ratio: number;
  readonly views: readonly ('section' | 'side')[];
  /** Section stands just before this station; the side is seen from here. */
  readonly station: number;
  readonly from: 'street' | 'yard';
};

/** A view on the sheet, and where its picture's upper left corner hangs. */
export type Hung = { readonly view: 'plan' | 'section' | 'side'; readonly flat: Flat; readonly at: Point };
export type Sheet = { readonly canvas: HTMLCanvasElement; readonly hung: readonly Hung[] };

/** x at which a section just before a station is cut. */
export const sectionAt = ({ stations }: Scheme, station: number): number => {
  const here = stations[station - 1] ?? 0;
  const before = stations[station - 2];
  return before === undefined ? here - 6 : Math.max((before + here) / 2, here - 10);
};

/** Room round the drawings for titles, numbers and dimensions, CSS pixels. */
const room = { top: 27, bottom: 20, side: 24 };

type Lie = {
  readonly view: 'section' | 'side';
  readonly x: number;
  readonly width: number;
  readonly origin: Point;
};
/** Left and right of a section, inches; ours. */
const aside = 7;

type Plan = { readonly scale: number; readonly lies: readonly Lie[] };

/** Size of the names of the heights, CSS pixels. */
const nameSize = 15;
/** Between the section and the side, CSS pixels, unless the names of the heights need more. */
const between = 92;

type Names = { readonly ridgeTop: number; readonly plate: number };

/** How wide the names of the heights are. */
const namesOf = ({ words, ratio }: SheetInput, ink: Ink): Names => {
  ink.font = drawingFont(nameSize * ratio);
  const wide = (text: string): number => ink.measureText(text).width;
  return { ridgeTop: wide(words.ridgeTop), plate: wide(words.plate) };
};

/** Room right of a section for the names: beside another view for both; alone for the plate's, the other stands over its line. */
const besideSection = ({ ratio, views }: SheetInput, names: Names): number => {
  if (!views.includes('section')) return 0;
  if (views.length === 1) return names.plate;
  return Math.max(between * ratio, Math.max(names.ridgeTop, names.plate) + 32 * ratio);
};

/** One scale for all views, so that heights line up. */
const planOf = (input: SheetInput, scheme: Scheme, beside: number): Plan => {
  const { area, ratio, views } = input;
  const { overhang } = input.shown.level.plan;
  const reach = reachOf(scheme, overhang);
  const spans = { section: reach.street + reach.yard + 2 * aside, side: scheme.length + 10 };
  const gap = beside;
  const total = views.reduce((sum, view) => sum + spans[view], 0);
  const highest = highestOf(scheme);
  const tall = highest + 17;
  const free = area.width - (2 * room.side * ratio + gap);
  const scale = Math.min(free / total, (area.height - (room.top + room.bottom) * ratio) / tall, 9 * ratio);
  const left = area.x + Math.max(room.side * ratio, (area.width - total * scale - gap) / 2);
  const foot =
    area.y +
    room.top * ratio +
    highest * scale +
    Math.max(0, (area.height - (room.top + room.bottom) * ratio - tall * scale) / 2);
  let x = left;
  const lies = views.map((view): Lie => {
    const width = spans[view] * scale;
    const before = view === 'section' ? reach.yard + aside : 5;
    const lie = { view, x, width, origin: [x + before * scale, foot] as Point };
    x += width + gap;
    return lie;
  });
  return { scale, lies };
};

export const drawSheet = (input: SheetInput): Sheet => {
  const scheme = schemeOf(input.shown);
  const canvas = sheetOf(input.area.width, input.area.height);
  const ink = inkOn(canvas);
  const beside = besideSection(input, namesOf(input, ink));
  const plan = planOf(input, scheme, beside);
  const hung = plan.lies.map((lie) => hangView(input, { scheme, plan, lie }));
  for (const { flat, at } of hung) ink.drawImage(flat.canvas, at[0], at[1]);
  annotate(ink, { input, scheme, plan, beside });
  return { canvas, hung };
};

type Hanging = { readonly scheme: Scheme; readonly plan: Plan; readonly lie: Lie };

const hangView = (input: SheetInput, { scheme, plan, lie }: Hanging): Hung => {
  const { model, theme, ratio, area, station, from } = input;
  const pad = 14 * ratio;
  const at: Point = [Math.floor(lie.x - pad), Math.floor(area.y)];
  const mirrored = lie.view === 'side' && from === 'yard' ? scheme.length * plan.scale : 0;
  const flat = drawFlat({
    model: lie.view === 'section' ? withoutWall(model, scheme) : model,
    theme,
    ratio,
    scale: plan.scale,
    width: Math.ceil(lie.width + 2 * pad),
    height: Math.floor(area.height),
    origin: [lie.origin[0] - at[0] + mirrored, lie.origin[1] - at[1]],
    what:
      lie.view === 'section'
        ? { kind: 'section', at: sectionAt(scheme, station) }
        : { kind: 'side', from, reach: scheme.half },
  });
  return { view: lie.view, flat, at };
};

type Annotated = {
  readonly input: SheetInput;
  readonly scheme: Scheme;
  readonly plan: Plan;
  /** Room right of the section for the names of the heights. */
  readonly beside: number;
};

const annotate = (ink: Ink, noted: Annotated): void => {
  const { input, scheme, plan } = noted;
  const { ratio, theme, words } = input;
  const palette = palettes[theme];
  const layer = inkOn(sheetOf(ink.canvas.width, ink.canvas.height));
  for (const lie of plan.lies) if (lie.view === 'section') drawWall(ink, noted, lie);
  const first = plan.lies[0] as Lie;
  const last = plan.lies[plan.lies.length - 1] as Lie;
  const heights = { top: first.origin[1] - scheme.top * plan.scale, plate: first.origin[1] };
  const alone = plan.lies.length === 1 ? noted.beside : 0;
  const [left, right] = [first.x - 16 * ratio, last.x + last.width + 14 * ratio + alone];
  for (const y of [heights.top, heights.plate])
    chalk(layer, {
      from: [left, y],
      to: [right, y],
      width: 1.1 * ratio,
      color: palette.chalk,
      dust: 0.9,
      spread: 1.7 * ratio,
      seed: Math.round(y),
    });
  for (const lie of plan.lies) (lie.view === 'section' ? noteSection : noteSide)(layer, noted, lie);
  tooth(layer, 0.6);
  ink.drawImage(layer.canvas, 0, 0);
  for (const lie of plan.lies) {
    const title = lie.view === 'section' ? words.section : words.side;
    letter(ink, palette, {
      text: title,
      at: [lie.x, input.area.y + 15 * ratio],
      size: 14 * ratio,
      align: 'left',
      tone: 'ink2',
    });
    if (lie.view === 'section') nameHeights(ink, noted, { lie, heights });
    else numberStations(ink, noted, lie);
  }
};

type Text = {
  readonly text: string;
  readonly at: Point;
  readonly size: number;
  readonly align: CanvasTextAlign;
  readonly tone: 'ink' | 'ink2' | 'chalk';
};

const letter = (ink: Ink, palette: Palette, { text, at, size, align, tone }: Text): void => {
  ink.font = drawingFont(size, tone === 'ink2' ? 500 : 600);
  ink.fillStyle = css(palette[tone]);
  ink.textAlign = align;
  ink.textBaseline = 'middle';
  ink.fillText(text, at[0], at[1]);
};

/** The wall behind a ledger, in front of everything that lies farther along. */
const drawWall = (ink: Ink, { input, scheme, plan }: Annotated, { origin }: Lie): void => {
  if (!atWall(scheme)) return;
  const back = reachOf(scheme, input.shown.level.plan.overhang).yard;
  const at = (y: number, z: number): Point => [origin[0] - y * plan.scale, origin[1] - z * plan.scale];
  const upright = (y: number) => [at(y, highestOf(scheme)), at(y, wallFoot)] as const;
  drawWallCut(ink, { face: upright(scheme.yard), back: upright(back) }, input);
};

/** Center line, the height dimension and the slope mark. */
const noteSection = (layer: Ink, { input, scheme, plan }: Annotated, lie: Lie): void => {
  const { ratio, theme } = input;
  const { pencil: color } = palettes[theme];
  const k = plan.scale;
  const [x, plate] = lie.origin;
  const top = plate - scheme.top * k;
  if (!atWall(scheme))
    pencil(layer, {
      from: [x, Math.max(top - 12 * ratio, input.area.y + 25 * ratio)],
      to: [x, plate + 14 * k],
      width: 0.9 * ratio,
      alpha: 0.75,
      color,
      dash: [14, 4, 3, 4].map((d) => d * ratio),
    });
  const xd = dimensionX(lie, scheme, k);
  pencil(layer, { from: [xd, top], to: [xd, plate], width: ratio, alpha: 0.9, color });
  for (const y of [top, plate])
    pencil(layer, {
      from: [xd - 3.5 * ratio, y + 3.5 * ratio],
      to: [xd + 3.5 * ratio, y - 3.5 * ratio],
      width: 1.3 * ratio,
      alpha: 0.95,
      color,
    });
  const { corner, unit, way } = slopeMark(lie, scheme, { k, ratio });
  const rise = unit * scheme.m;
  pencil(layer, { from: corner, to: [corner[0], corner[1] - rise], width: 1.1 * ratio, alpha: 0.85, color });
  pencil(layer, {
    from: [corner[0], corner[1] - rise],
    to: [corner[0] + way * unit, corner[1] - rise],
    width: 1.1 * ratio,
    alpha: 0.85,
    color,
  });
};

const dimensionX = (lie: Lie, scheme: Scheme, k: number): number => lie.origin[0] + scheme.half * 0.86 * k;

/** The slope mark lies on the yard rafter, left of the center line; on the street's where there is no other. */
const slopeMark = (
  lie: Lie,
  scheme: Scheme,
  { k, ratio }: { k: number; ratio: number },
): { readonly corner: Point; readonly unit: number; readonly way: 1 | -1 } => {
  const unit = Math.max(30 * ratio, 12 * k);
  const out = scheme.half * slopeOut(scheme, 0.72);
  const way = atWall(scheme) ? -1 : 1;
  return {
    corner: [
      lie.origin[0] - way * out * k,
      lie.origin[1] - (scheme.common.heightAbovePlate + (scheme.half - out) * scheme.m) * k - 3 * ratio,
    ],
    unit,
    way,
  };
};

type Named = { readonly lie: Lie; readonly heights: { readonly top: number; readonly plate: number } };

const nameHeights = (ink: Ink, noted: Annotated, { lie, heights }: Named): void => {
  const { input, scheme, plan } = noted;
  const { ratio, theme, shown } = input;
  const palette = palettes[theme];
  const k = plan.scale;
  nameLines(ink, noted, { lie, heights });
  const measure = measureOf(scheme.top, true);
  const lettering = { size: 17 * ratio, color: palette.ink };
  const at: Point = [dimensionX(lie, scheme, k), (heights.top + heights.plate) / 2 - 4 * ratio];
  const wide = measureWidth(ink, measure, lettering) + 8 * ratio;
  ink.fillStyle = css(palette.deck, 0.94);
  ink.fillRect(at[0] - wide / 2, at[1] - 15 * ratio, wide, 30 * ratio);
  drawMeasure(ink, measure, { at, lettering });
  const { corner, unit, way } = slopeMark(lie, scheme, { k, ratio });
  const { rise, run } = shown.level.plan.slope;
  const size = 15 * ratio;
  letter(ink, palette, {
    text: String(rise),
    at: [corner[0] - way * 6 * ratio, corner[1] - (unit * scheme.m) / 2],
    size,
    align: way < 0 ? 'left' : 'right',
    tone: 'ink',
  });
  letter(ink, palette, {
    text: String(run),
    at: [corner[0] + (way * unit) / 2, corner[1] - unit * scheme.m - 9 * ratio],
    size,
    align: 'center',
    tone: 'ink',
  });
};

/** Beside the section: under the ridge's line and over the plate's; alone, both from the right edge and over their lines. */
const nameLines = (ink: Ink, { input, scheme, plan, beside }: Annotated, { lie, heights }: Named): void => {
  const { ratio, theme, words, shown } = input;
  const alone = plan.lies.length === 1;
  const out = lie.origin[0] + (scheme.half + shown.level.plan.overhang) * plan.scale + 8 * ratio;
  const x = alone ? lie.x + lie.width + 14 * ratio + beside : out;
  const named = { size: nameSize * ratio, align: alone ? 'right' : 'left', tone: 'chalk' } as const;
  const ridgeAt: Point = [x, heights.top + (alone ? -9 : 11) * ratio];
  letter(ink, palettes[theme], { ...named, text: words.ridgeTop, at: ridgeAt });
  letter(ink, palettes[theme], { ...named, text: words.plate, at: [x, heights.plate - 10 * ratio] });
};

/** The string, seen edge on from its side. */
const noteSide = (layer: Ink, { input, plan }: Annotated, lie: Lie): void => {
  const { ratio, theme, model, from } = input;
  for (const { kind, id, a, b } of model.strokes) {
    if (kind !== 'string' || id !== `string.${from}`) continue;
    const place = (p: Vec3): Point => stationPoint(lie, plan, { input, x: p[0], z: p[2] });
    pencil(layer, {
      from: place(a),
      to: place(b),
      width: 1.5 * ratio,
      alpha: 1,
      color: palettes[theme].chalk,
    });
  }
};

type Spot = { readonly input: SheetInput; readonly x: number; readonly z: number };

const stationPoint = (lie: Lie, plan: Plan, { input, x, z }: Spot): Point => {
  const along = input.from === 'street' ? x : input.shown.level.plan.length - x;
  return [lie.origin[0] + along * plan.scale, lie.origin[1] - z * plan.scale];
};

const numberStations = (ink: Ink, { input, scheme, plan }: Annotated, lie: Lie): void => {
  const { ratio, theme, station } = input;
  const close = (scheme.stations[1] ?? 24) * plan.scale < 15 * ratio;
  scheme.stations.forEach((x, i) => {
    if (close && i % 2 === 1 && i + 1 !== station) return;
    const [px, py] = stationPoint(lie, plan, { input, x, z: -9 });
    const tone = i + 1 === station ? 'chalk' : 'ink';
    letter(ink, palettes[theme], {
      text: String(i + 1),
      at: [px, py + 12 * ratio],
      size: 15 * ratio,
      align: 'center',
      tone,
    });
  });
};

/** The chosen member in every view of the sheet. */
export const drawSheetSelection = (
  sheet: Sheet,
  chosen: { id: string; theme: Theme; ratio: number },
): HTMLCanvasElement => {
  const ink = inkOn(sheetOf(sheet.canvas.width, sheet.canvas.height));
  for (const { flat, at } of sheet.hung) ink.drawImage(drawFlatSelection(flat, chosen), at[0], at[1]);
  return ink.canvas;
};

/** The member under a finger on the sheet; device pixels. */
export const onSheet = (
  sheet: Sheet,
  pick: (flat: Flat, at: Point) => string | undefined,
  [x, y]: Point,
): string | undefined => {
  for (const { flat, at } of sheet.hung) {
    const found = pick(flat, [x - at[0], y - at[1]]);
    if (found) return found;
  }
  return undefined;
};

/** Where a point of the building lies on the sheet's first view that shows it. */
export const sheetPoint = (sheet: Sheet, view: Hung['view'], p: Vec3): Point | undefined => {
  const found = sheet.hung.find((hung) => hung.view === view);
  if (!found) return undefined;
  const [x, y] = onScreen(found.flat.camera, p);
  return [x + found.at[0], y + found.at[1]];
};
