import type { Vec3 } from '../../core/geometry/vector';
import { chalkLine } from '../ink/chalk';
import { dot } from '../../core/geometry/vector';
import { onScreen } from '../ink/camera';
import { seenRuns } from '../ink/edges';
import { palettes, type Palette, type Theme } from '../ink/palette';
import { inkOn, pencil, sheetOf, type Ink, type Line, type Point } from '../ink/pencil';
import type { Flat } from './drawFlat';
import type { Hung } from './sheet';
import { carriedAcross, hiddenDash, longShort } from './sheetInk';
import { standsOn, type SheetLay } from './sheetLay';
import type { ThirdAngle } from './thirdAngle';

/** The chosen member in every view of the sheet: full where it is seen, dashed where it lies behind, and carried from view to view. */

export type Chosen = { readonly id: string; readonly theme: Theme; readonly ratio: number };

/** A member narrower than this along the ridge is carried down once, at its middle, inches; ours. */
const oneLine = 6;
/** Out from the work to where a carried line begins, inches; ours. */
const off = 3;

export const drawChosenOnSheet = (sheet: ThirdAngle, chosen: Chosen): HTMLCanvasElement => {
  const canvas = sheetOf(sheet.canvas.width, sheet.canvas.height);
  inkChosen(inkOn(canvas), sheet, chosen);
  return canvas;
};

type Views = {
  readonly lay: SheetLay;
  readonly hung: readonly (Pick<Hung, 'at'> & { readonly flat: Seen })[];
};
type Seen = Pick<Flat, 'raster' | 'camera' | 'solids'>;

export const inkChosen = (ink: Ink, { lay, hung }: Views, { id, theme, ratio }: Chosen): void => {
  const palette = palettes[theme];
  const extent = extentOf(hung, id);
  if (!extent) return;
  const dash = longShort.map((d) => d * ratio);
  for (const line of carriedOf(lay, extent))
    pencil(ink, { ...line, width: ratio, alpha: 0.85, color: palette.chalk, dash });
  for (const { flat, at } of hung) {
    const { seen, hidden } = outlineOf(flat, id);
    for (const line of hidden) hiddenLine(ink, shifted(line, at), { palette, ratio });
    drawSeen(
      ink,
      seen.map((line) => shifted(line, at)),
      { palette, ratio },
    );
  }
};

const shifted = ({ from, to }: Line, [x, y]: Point): Line => ({
  from: [from[0] + x, from[1] + y],
  to: [to[0] + x, to[1] + y],
});

type Look = { readonly palette: Palette; readonly ratio: number };

const hiddenLine = (ink: Ink, line: Line, { palette, ratio }: Look): void => {
  pencil(ink, { ...line, width: 3.4 * ratio, alpha: 0.7, color: palette.casing });
  pencil(ink, {
    ...line,
    width: 1.5 * ratio,
    alpha: 1,
    color: palette.chalk,
    dash: hiddenDash.map((d) => d * ratio),
  });
};

const drawSeen = (ink: Ink, lines: readonly Line[], { palette, ratio }: Look): void => {
  ink.setLineDash([]);
  ink.lineCap = 'round';
  chalkLine(ink, { palette, ratio, casing: 4, chalk: 2.1 }, () => {
    for (const { from, to } of lines) {
      ink.moveTo(from[0], from[1]);
      ink.lineTo(to[0], to[1]);
    }
  });
};

const facing = -1e-6;
const inLine = 0.985;

/** A member's edges in one view, apart by whether something stands before them. */
export const outlineOf = (
  { raster, camera, solids }: Seen,
  id: string,
): { readonly seen: readonly Line[]; readonly hidden: readonly Line[] } => {
  const [seen, hidden]: [Line[], Line[]] = [[], []];
  for (const solid of solids) {
    if (solid.id !== id) continue;
    for (const { a, b, n1, n2 } of solid.edges) {
      const [f1, f2] = [dot(n1, camera.away) < facing, dot(n2, camera.away) < facing];
      if ((!f1 && !f2) || dot(n1, n2) > inLine) continue;
      const whole: Line = { from: onScreen(camera, a), to: onScreen(camera, b) };
      const runs = seenRuns(raster, { a, b }, 0.5);
      seen.push(...runs);
      hidden.push(...betweenRuns(whole, runs));
    }
  }
  return { seen, hidden };
};

/** Shorter gaps than this are only where two edges meet, pixels; ours. */
const shortest = 4;

const betweenRuns = ({ from, to }: Line, runs: readonly Line[]): readonly Line[] => {
  const long = Math.hypot(to[0] - from[0], to[1] - from[1]);
  if (long < shortest) return [];
  const at = (t: number): Point => [from[0] + (to[0] - from[0]) * t, from[1] + (to[1] - from[1]) * t];
  const share = (p: Point): number => Math.hypot(p[0] - from[0], p[1] - from[1]) / long;
  const ends = [0, ...runs.flatMap((run) => [share(run.from), share(run.to)]), 1];
  return Array.from({ length: ends.length / 2 }, (_, i) => [ends[2 * i] ?? 0, ends[2 * i + 1] ?? 1] as const)
    .filter(([s, e]) => (e - s) * long > shortest)
    .map(([s, e]) => ({ from: at(s), to: at(e) }));
};

type Extent = { readonly low: Vec3; readonly high: Vec3 };

const extentOf = (hung: Views['hung'], id: string): Extent | undefined => {
  const points = hung
    .flatMap(({ flat }) => flat.solids)
    .filter((solid) => solid.id === id)
    .flatMap(({ faces }) => faces.flatMap((face) => face.points));
  if (points.length === 0) return undefined;
  const part = (i: 0 | 1 | 2, pick: (...all: number[]) => number): number => pick(...points.map((p) => p[i]));
  return {
    low: [part(0, Math.min), part(1, Math.min), part(2, Math.min)],
    high: [part(0, Math.max), part(1, Math.max), part(2, Math.max)],
  };
};

/** Down from the plan to the side, across it by the miter line to the section, and level from the section to the side. */
export const carriedOf = (lay: SheetLay, { low, high }: Extent): readonly Line[] => {
  const xs = high[0] - low[0] < oneLine ? [(low[0] + high[0]) / 2] : [low[0], high[0]];
  const to = (a: Point | undefined, b: Point | undefined): readonly Line[] =>
    a && b ? [{ from: a, to: b }] : [];
  return [
    ...xs.flatMap((x) =>
      to(standsOn(lay, 'plan', [x, low[1] - off, 0]), standsOn(lay, 'side', [x, 0, high[2] + off])),
    ),
    ...[low[1], high[1]].flatMap((y) => carriedAcross(lay, { y, x: low[0] - off, z: high[2] + off })),
    ...[low[2], high[2]].flatMap((z) =>
      to(standsOn(lay, 'section', [0, low[1] - off, z]), standsOn(lay, 'side', [low[0] - off, 0, z])),
    ),
  ];
};
