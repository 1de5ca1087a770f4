import type { Scheme } from '../../present/model/scheme';
import type { Point } from '../ink/pencil';
import type { Area } from '../overview/fit';
import { highestOf, reachOf } from './wallBehind';

/** Where the plan, the section and the side hang on one sheet: third angle, one scale, edges in line. Pure figures. */

export type SheetView = 'plan' | 'section' | 'side';

/** Moved and scaled by hand, device pixels. */
export type SheetZoom = { readonly scale: number; readonly x: number; readonly y: number };

export type Lying = {
  readonly scheme: Scheme;
  readonly overhang: number;
  readonly area: Area;
  readonly ratio: number;
  readonly zoom?: SheetZoom;
};

export type Hanging = {
  readonly view: SheetView;
  /** What the view takes up with everything it shows, device pixels. */
  readonly box: Area;
  /** Where the building's origin stands in it: end A of the center line at plate height. */
  readonly origin: Point;
};

export type SheetLay = {
  /** Device pixels an inch, the same in every view. */
  readonly scale: number;
  readonly views: Readonly<Partial<Record<SheetView, Hanging>>>;
  /** A point of the miter line, on which what lies across the plan turns down to the section. */
  readonly miter: Point | undefined;
};

/** Narrower than this there is no room for the section beside the side, CSS pixels; ours. */
const sectionFrom = 520;
/** Round the drawings for titles, numbers and figures on their lines, CSS pixels; ours. */
const room = { top: 58, bottom: 40, left: 46, right: 22 };
/** Between columns for the names of the heights; between rows for the stations' numbers. CSS pixels; ours. */
const between = { columns: 104, rows: 58 };
/** How far walls are drawn under the plates, and past the ends of the ridge and of the tails, inches; ours. */
const under = 17;
const past = 6;
/** On a stage lower than this the sheet is as wide as the stage, and its foot is moved into view. CSS pixels; ours. */
const wholeFrom = 420;
/** Bigger than this a small roof only looks coarse, CSS pixels an inch. */
const largest = 9;

type Free = { readonly width: number; readonly height: number };

const scaleFor = (free: Free, inches: Free, ratio: number): number => {
  const across = Math.min(free.width / inches.width, largest * ratio);
  return Math.max(0.2 * ratio, Math.min(across, free.height / inches.height));
};

/** The whole sheet in its area, then as a hand moved and scaled it. */
export const sheetLay = ({ scheme, overhang, area, ratio, zoom }: Lying): SheetLay => {
  const all = area.width >= sectionFrom * ratio;
  const reach = reachOf(scheme, overhang);
  const toYard = reach.yard + past;
  const deep = reach.street + past + toYard;
  const long = scheme.length + 2 * past;
  const highest = highestOf(scheme);
  const tall = highest + under;
  const px = (css: number): number => css * ratio;
  const gap = all ? px(between.columns) : 0;
  const free = {
    width: area.width - px(room.left + room.right) - gap,
    height: area.height < px(wholeFrom) ? Infinity : area.height - px(room.top + room.bottom + between.rows),
  };
  const k = scaleFor(free, { width: all ? deep + long : long, height: deep + tall }, ratio);
  const used = { width: (all ? deep + long : long) * k + gap, height: (deep + tall) * k };
  const left = area.x + px(room.left) + Math.max(0, (free.width + gap - used.width) / 2);
  const top = area.y + px(room.top) + (free.height === Infinity ? 0 : (free.height - used.height) / 2);
  const [right, low] = [all ? left + deep * k + gap : left, top + deep * k + px(between.rows)];
  const plan: Hanging = {
    view: 'plan',
    box: { x: right, y: top, width: long * k, height: deep * k },
    origin: [right + past * k, top + toYard * k],
  };
  const foot = low + highest * k;
  const side: Hanging = {
    view: 'side',
    box: { x: right, y: low, width: long * k, height: tall * k },
    origin: [right + past * k, foot],
  };
  const section: Hanging = {
    view: 'section',
    box: { x: left, y: low, width: deep * k, height: tall * k },
    origin: [left + toYard * k, foot],
  };
  const miter: Point | undefined = all ? [section.origin[0], plan.origin[1]] : undefined;
  return moved({ scale: k, views: all ? { plan, section, side } : { plan, side }, miter }, zoom);
};

const moved = (lay: SheetLay, zoom: SheetZoom = { scale: 1, x: 0, y: 0 }): SheetLay => {
  const at = ([x, y]: Point): Point => [x * zoom.scale + zoom.x, y * zoom.scale + zoom.y];
  const hung = ({ view, box, origin }: Hanging): Hanging => {
    const [x, y] = at([box.x, box.y]);
    const size = { width: box.width * zoom.scale, height: box.height * zoom.scale };
    return { view, box: { x, y, ...size }, origin: at(origin) };
  };
  const { plan, section, side } = lay.views;
  return {
    scale: lay.scale * zoom.scale,
    views: {
      ...(plan ? { plan: hung(plan) } : {}),
      ...(section ? { section: hung(section) } : {}),
      ...(side ? { side: hung(side) } : {}),
    },
    miter: lay.miter && at(lay.miter),
  };
};

/** Where a place of the building stands in a view of the sheet, device pixels; undefined where the view does not hang. */
export const standsOn = (
  { scale, views }: SheetLay,
  view: SheetView,
  [x, y, z]: readonly [number, number, number],
): Point | undefined => {
  const hung = views[view];
  if (!hung) return undefined;
  const [ox, oy] = hung.origin;
  if (view === 'plan') return [ox + x * scale, oy - y * scale];
  return [ox + (view === 'section' ? -y : x) * scale, oy - z * scale];
};
