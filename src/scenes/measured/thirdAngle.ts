import { schemeOf, type Scheme } from '../../present/model/scheme';
import { inkOn, sheetOf, type Point } from '../ink/pencil';
import type { Area } from '../overview/fit';
import { drawFlat, type FlatInput, type FlatKind } from './drawFlat';
import { drawSheetInk } from './sheetInk';
import { sheetLay, type Hanging, type SheetLay } from './sheetLay';
import type { ThirdAngleInput } from './sheetParts';
import { sectionAt, type Hung, type Sheet } from './sheet';
import { withoutWall } from './wallBehind';

/** Plan, section and side on one sheet, in line with each other: what a draftsman hangs up to work and measure from. */

export type ThirdAngle = Sheet & { readonly lay: SheetLay };

/** A sheet of more samples than this is taken at one sample a pixel; ours: keeps a redraw short. */
const mostSamples = 3_400_000;

export const drawThirdAngle = (input: ThirdAngleInput): ThirdAngle => {
  const { shown, area, ratio, zoom } = input;
  const scheme = schemeOf(shown);
  const lay = sheetLay({ scheme, overhang: shown.level.plan.overhang, area, ratio, zoom });
  const canvas = sheetOf(area.width, area.height);
  const ink = inkOn(canvas);
  const hung = Object.values(lay.views).flatMap((one) => hang(input, { scheme, lay, one }) ?? []);
  for (const { flat, at } of hung) ink.drawImage(flat.canvas, at[0], at[1]);
  drawSheetInk(ink, { input, scheme, lay, hung });
  return { canvas, hung, lay };
};

type One = { readonly scheme: Scheme; readonly lay: SheetLay; readonly one: Hanging };

const hang = (input: ThirdAngleInput, so: One): Hung | undefined => {
  const part = partOf(input, so);
  return part && { view: so.one.view, at: part.at, flat: drawFlat(part.flat) };
};

/** A view as far as it lies on the sheet, and where; undefined for one that a hand has moved off it. */
export const partOf = (
  { model, theme, ratio, area, station }: ThirdAngleInput,
  { scheme, lay, one }: One,
): { readonly at: Point; readonly flat: FlatInput } | undefined => {
  const { x, y, width, height } = onSheetOf(one.box, area, 14 * ratio);
  if (width < 2 || height < 2) return undefined;
  const flat: FlatInput = {
    model: one.view === 'side' ? model : withoutWall(model, scheme),
    theme,
    ratio,
    fine: area.width * area.height * 4 <= mostSamples ? 2 : 1,
    scale: lay.scale,
    width,
    height,
    origin: [one.origin[0] - x, one.origin[1] - y],
    what: whatOf(one.view, scheme, station),
  };
  return { at: [x, y], flat };
};

const whatOf = (view: Hanging['view'], scheme: Scheme, station: number): FlatKind => {
  if (view === 'plan') return { kind: 'plan', top: scheme.top };
  if (view === 'section') return { kind: 'section', at: sectionAt(scheme, station) };
  return { kind: 'side', from: 'street', reach: scheme.half };
};

const onSheetOf = (box: Area, area: Area, pad: number): Area => {
  const x = Math.max(Math.floor(area.x), Math.floor(box.x - pad));
  const y = Math.max(Math.floor(area.y), Math.floor(box.y - pad));
  return {
    x,
    y,
    width: Math.min(Math.ceil(box.x + box.width + pad), Math.floor(area.x + area.width)) - x,
    height: Math.min(Math.ceil(box.y + box.height + pad), Math.floor(area.y + area.height)) - y,
  };
};
