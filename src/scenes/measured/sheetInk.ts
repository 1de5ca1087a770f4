import type { Vec3 } from '../../core/geometry/vector';
import { chalkLine } from '../ink/chalk';
import { seenRuns } from '../ink/edges';
import { palettes } from '../ink/palette';
import { chalk, inkOn, pencil, sheetOf, tooth, type Ink, type Line, type Point } from '../ink/pencil';
import { drawSheetFigures } from './sheetFigures';
import { standsOn, type SheetLay } from './sheetLay';
import type { Hung } from './sheet';
import type { Inked, ThirdAngleInput } from './sheetParts';
import { atWall, drawWallCut, highestOf, reachOf, wallFoot, type WallCut } from './wallBehind';

/** Everything ruled on the sheet besides the work itself. Device pixels. */

/** Long and short by turns: a center or layout line. CSS pixels. */
export const longShort = [14, 4, 3, 4] as const;
/** Short and even: what lies behind. CSS pixels. */
export const hiddenDash = [6, 3.5] as const;

/** How far a layout line runs past the work, inches; and a carried one stands off it, CSS pixels. Ours. */
const beyond = 5;

export const drawSheetInk = (ink: Ink, inked: Inked): void => {
  const { input, hung } = inked;
  const { ratio, theme } = input;
  const palette = palettes[theme];
  const layer = inkOn(sheetOf(ink.canvas.width, ink.canvas.height));
  for (const wall of wallCuts(inked)) drawWallCut(ink, wall, { theme, ratio });
  for (const one of hung) drawMarks(layer, input, one);
  for (const line of centerLines(inked))
    pencil(layer, {
      ...line,
      width: 0.9 * ratio,
      alpha: 0.6,
      color: palette.pencil,
      dash: longShort.map((d) => d * ratio),
    });
  for (const line of carriedLines(inked))
    pencil(layer, { ...line, width: 0.7 * ratio, alpha: 0.4, color: palette.pencil });
  heightLines(inked).forEach(({ from, to }, i) =>
    chalk(layer, {
      from,
      to,
      width: 1.1 * ratio,
      color: palette.chalk,
      dust: 0.7,
      spread: 1.5 * ratio,
      seed: 31 + i,
    }),
  );
  tooth(layer, 0.6);
  ink.drawImage(layer.canvas, 0, 0);
  drawSheetFigures(ink, inked);
};

/** Layout marks where they were made, strings and snapped lines, as far as the view shows them. */
const drawMarks = (ink: Ink, { model, theme, ratio }: ThirdAngleInput, { flat, at }: Hung): void => {
  const palette = palettes[theme];
  const shift = ([x, y]: Point): Point => [x + at[0], y + at[1]];
  for (const { kind, a, b } of model.strokes) {
    const runs = seenRuns(flat.raster, { a, b }, 0.9);
    if (kind === 'mark') {
      for (const { from, to } of runs)
        pencil(ink, { from: shift(from), to: shift(to), width: ratio, alpha: 0.9, color: palette.ink });
      continue;
    }
    chalkLine(ink, { palette, ratio, casing: 3, chalk: 1.4 }, () => {
      for (const run of runs) {
        ink.moveTo(...shift(run.from));
        ink.lineTo(...shift(run.to));
      }
    });
  }
};

const line = (
  lay: SheetLay,
  view: 'plan' | 'section' | 'side',
  [a, b]: readonly [Vec3, Vec3],
): readonly Line[] => {
  const [from, to] = [standsOn(lay, view, a), standsOn(lay, view, b)];
  return from && to ? [{ from, to }] : [];
};

/** The building's center line in plan and section, which one at a wall has none of, and each station's layout line, from the plan down through the side. */
export const centerLines = ({
  input,
  scheme,
  lay,
}: Pick<Inked, 'input' | 'scheme' | 'lay'>): readonly Line[] => {
  const { length, top, stations, yard } = scheme;
  const wall = atWall(scheme);
  const from = wall ? yard : reachOf(scheme, input.shown.level.plan.overhang).yard + beyond;
  const middle = [
    ...line(lay, 'plan', [
      [-beyond - 3, 0, 0],
      [length + beyond + 3, 0, 0],
    ]),
    ...line(lay, 'section', [
      [0, 0, top + beyond + 2],
      [0, 0, -14],
    ]),
  ];
  return [
    ...(wall ? [] : middle),
    ...stations.flatMap((x): readonly Line[] => {
      const high = standsOn(lay, 'plan', [x, from, 0]);
      const low = standsOn(lay, 'side', [x, 0, -12]);
      return high && low ? [{ from: high, to: low }] : [];
    }),
  ];
};

/** The center line and the plates' outer faces carried across to the miter line and down to the section; the miter line itself. */
const carriedLines = ({ scheme, lay, input }: Inked): readonly Line[] => {
  const { miter } = lay;
  const { street, yard } = reachOf(scheme, input.shown.level.plan.overhang);
  if (!miter) return [];
  const [back, on] = [(yard + 4) * lay.scale, (street + 4) * lay.scale];
  const middle = atWall(scheme) ? [] : [0];
  const turned = [-scheme.half, ...middle, scheme.yard].flatMap((y) =>
    carriedAcross(lay, { y, x: -8, z: highestOf(scheme) + 9 }),
  );
  return [{ from: [miter[0] - back, miter[1] - back], to: [miter[0] + on, miter[1] + on] }, ...turned];
};

/** The wall behind a ledger where plan and section cut it: it goes on past both ends, up and down. */
const wallCuts = ({ scheme, lay, input }: Inked): readonly WallCut[] => {
  if (!atWall(scheme)) return [];
  const back = reachOf(scheme, input.shown.level.plan.overhang).yard;
  const cut = (view: 'plan' | 'section', a: Vec3, b: Vec3): readonly WallCut[] => {
    const [face] = line(lay, view, [a, b]);
    const [behind] = line(lay, view, [
      [a[0], back, a[2]],
      [b[0], back, b[2]],
    ]);
    return face && behind ? [{ face: [face.from, face.to], back: [behind.from, behind.to] }] : [];
  };
  const { length, yard } = scheme;
  return [
    ...cut('plan', [-beyond, yard, 0], [length + beyond, yard, 0]),
    ...cut('section', [0, yard, highestOf(scheme)], [0, yard, wallFoot]),
  ];
};

/** What lies at y: from the plan, where it ends at x, to the miter line, and from there down to the section at height z. */
export const carriedAcross = (
  lay: SheetLay,
  { y, x, z }: { readonly y: number; readonly x: number; readonly z: number },
): readonly Line[] => {
  const [start, end] = [standsOn(lay, 'plan', [x, y, 0]), standsOn(lay, 'section', [0, y, z])];
  if (!start || !end) return [];
  const turn: Point = [end[0], start[1]];
  return [
    { from: start, to: turn },
    { from: turn, to: end },
  ];
};

/** Figured heights of ridge and plate, through section and side. */
const heightLines = ({ scheme, lay }: Inked): readonly Line[] => {
  const { section, side } = lay.views;
  const first = section ?? side;
  if (!first || !side) return [];
  const [left, right] = [first.box.x - 8, side.box.x + side.box.width];
  return [scheme.top, 0].map((z): Line => {
    const y = side.origin[1] - z * lay.scale;
    return { from: [left, y], to: [right, y] };
  });
};
