import type { Vec3 } from '../../core/geometry/vector';
import { signOf } from '../../core/roof/side';
import { schemeOf, type Scheme, type Shown } from '../../present/model/scheme';
import { onScreen, type Camera } from '../ink/camera';
import { css } from '../ink/color';
import type { Palette } from '../ink/palette';
import type { Ink, Point } from '../ink/pencil';
import type { Raster } from '../ink/raster';
import { drawAxisMark, drawingFont, markBox, type Mark } from './axisMark';
import { grown, isBare, meets, shared } from './bare';
import type { Area } from './fit';
import type { DrawingWords } from './words';

/** What is written on the overview: the ends' letters and the axis mark, where nothing is drawn. Device pixels. */
export type Lettered = {
  readonly shown: Shown;
  readonly area: Area;
  readonly ratio: number;
  readonly camera: Camera;
  readonly raster: Raster;
  readonly palette: Palette;
};

/** Where the letters A and B came to stand. */
export const drawLettering = (ink: Ink, on: Lettered, words: DrawingWords): readonly Area[] => {
  const letters = placedLetters(on);
  drawLetters(ink, on, letters);
  const taken = letters.map(({ box }) => box);
  drawMark(ink, on, { words, taken });
  return taken;
};

type Placed = { readonly text: string; readonly at: Point; readonly box: Area };

/** Size of an end's letter, and its clear space, CSS pixels. */
const letterSize = 17;
const letterRoom = 3;
/** Where a letter may stand, inches out from its end of the ridge and up: the nearest bare place is taken. Ours. */
const steps: readonly (readonly [number, number])[] = [
  [0, 0],
  [12, 0],
  [0, 12],
  [12, 12],
  [24, 0],
  [0, 24],
  [24, 24],
  [36, 0],
  [0, 36],
  [48, 0],
  [36, 36],
  [0, 48],
  [60, 0],
  [0, 60],
];

const placedLetters = (on: Lettered): readonly Placed[] => {
  const { shown, ratio, camera, raster } = on;
  const { length, top, common } = schemeOf(shown);
  const over = shown.pose.ridge ? top + 8 : common.heightAbovePlate + 8;
  const aside = camera.right[0] * 4 * ratio;
  const size = letterSize * ratio;
  return (['A', 'B'] as const).map((text): Placed => {
    const sign = text === 'A' ? -1 : 1;
    const places = steps.map(([out, up]): Placed => {
      const p: Vec3 = [(text === 'A' ? 0 : length) + sign * (8 + out), 0, over + up];
      const [x, y] = onScreen(camera, p);
      const at: Point = [x + sign * aside, y];
      return {
        text,
        at,
        box: { x: at[0] - size * 0.3, y: y - size * 0.4, width: size * 0.6, height: size * 0.8 },
      };
    });
    const bare = places.find(({ box }) => isBare(raster, grown(box, letterRoom * ratio)));
    return bare ?? (places[0] as Placed);
  });
};

const drawLetters = (ink: Ink, { ratio, palette }: Lettered, letters: readonly Placed[]): void => {
  ink.font = drawingFont(letterSize * ratio);
  ink.fillStyle = css(palette.ink);
  ink.strokeStyle = css(palette.deck, 0.85);
  ink.lineWidth = 4 * ratio;
  ink.lineJoin = 'round';
  ink.textAlign = 'center';
  ink.textBaseline = 'middle';
  for (const { text, at } of letters) {
    ink.strokeText(text, at[0], at[1]);
    ink.fillText(text, at[0], at[1]);
  }
};

/** From the edges of the picture and from what is drawn, CSS pixels. Ours. */
const margin = 12;
const clear = 6;
/** The same two where there is little room. */
const closer: Point = [4, 3];
/** Corners in the order they are tried: x and y, 0 the first edge, 1 the last. */
const corners: readonly Point[] = [
  [1, 0],
  [0, 1],
  [0, 0],
  [1, 1],
];

type Marked = { readonly words: DrawingWords; readonly taken: readonly Area[] };

/** From the whole of it to the least: without the line on ticks, then a foot long, then close to the edges. */
const shorter = (
  words: DrawingWords,
): readonly { readonly said: DrawingWords; readonly feet: number; readonly close?: true }[] => {
  const bare = { ...words, ticks: '' };
  return [
    { said: words, feet: 2 },
    { said: bare, feet: 2 },
    { said: bare, feet: 1 },
    { said: bare, feet: 1, close: true },
  ];
};

/** In the first corner that is free now and stays free of the whole roof, as long as there is room for; else not at all. */
const drawMark = (ink: Ink, on: Lettered, { words, taken }: Marked): void => {
  const { area, ratio, camera, palette, raster } = on;
  const outlines = plannedOutlines(on);
  const free = (box: Area): boolean =>
    isBare(raster, box) &&
    !taken.some((other) => shared(box, other)) &&
    !outlines.some((outline) => meets(box, outline));
  for (const { said, feet, close } of shorter(words)) {
    const [edge, room] = (close ? closer : [margin, clear]).map((v) => v * ratio) as [number, number];
    for (const [right, low] of corners) {
      const loose: Mark = { ink, camera, at: [0, 0], ratio, palette, feet };
      const box = markBox(loose, said);
      const at: Point = [
        area.x + edge - box.x + right * (area.width - box.width - 2 * edge),
        area.y + edge - box.y + low * (area.height - box.height - 2 * edge),
      ];
      const mark = { ...loose, at };
      if (free(grown(markBox(mark, said), room))) return drawAxisMark(mark, said);
    }
  }
};

/** The faces of the roof as it will be and of the walls under it: the mark keeps clear of them from the first day. */
const plannedOutlines = ({ shown, camera }: Lettered): readonly (readonly Point[])[] => {
  const { overhang } = shown.level.plan;
  return plannedFaces(schemeOf(shown), overhang).map((face) => face.map((p) => onScreen(camera, p)));
};

/** How far under the plates the walls are drawn in full, inches; ours. */
const wallShown = 40;

const plannedFaces = (
  { half, yard, sides, length, top, common, m }: Scheme,
  overhang: number,
): readonly (readonly Vec3[])[] => {
  const low = common.heightAbovePlate - overhang * m;
  const out = half + overhang;
  const quad = (y0: number, z0: number, [y1, z1]: Point): readonly Vec3[] => [
    [0, y0, z0],
    [length, y0, z0],
    [length, y1, z1],
    [0, y1, z1],
  ];
  const gable = (x: number): readonly Vec3[] => [
    [x, -out, low],
    ...(yard === half ? [[x, out, low] as const] : [[x, yard, low] as const, [x, yard, top] as const]),
    [x, 0, top],
  ];
  return [
    ...sides.map(signOf).map((side) => quad(side * out, low, [0, top])),
    ...sides.map(signOf).map((side) => quad(side * half, -wallShown, [side * half, 0])),
    gable(0),
    gable(length),
  ];
};
