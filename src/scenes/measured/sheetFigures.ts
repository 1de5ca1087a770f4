import { palettes } from '../ink/palette';
import { pencil, type Ink, type Point } from '../ink/pencil';
import { drawDimension, figureFits } from './dimension';
import { dimensionsOf } from './sheetMeasures';
import { letter, type Inked } from './sheetParts';
import { titleBlock } from './titleBlock';
import { slopeOut } from './wallBehind';

/** Names, numbers and figures on the sheet. Nothing under 13 CSS pixels, whatever the scale. */

export const drawSheetFigures = (ink: Ink, inked: Inked): void => {
  const { input } = inked;
  const drafting = { palette: palettes[input.theme], ratio: input.ratio };
  for (const dimension of dimensionsOf(inked))
    if (figureFits(ink, dimension, input.ratio)) drawDimension(ink, dimension, drafting);
  drawTitles(ink, inked);
  numberStations(ink, inked);
  drawSlope(ink, inked);
  titleBlock(ink, inked);
};

const drawTitles = (ink: Ink, inked: Inked): void => {
  const { input, lay, scheme } = inked;
  const { ratio, words } = input;
  const { plan, section, side } = lay.views;
  const title = (text: string, x: number, y: number): void => {
    letter(ink, inked, { text, at: [x, y], size: 15, align: 'left', tone: 'ink2', chip: true });
  };
  if (plan) title(words.plan, plan.box.x, plan.box.y - 42 * ratio);
  if (section) title(words.section, section.box.x, section.box.y - 16 * ratio);
  if (side) title(words.side, side.box.x, side.box.y - 16 * ratio);
  if (!side) return;
  const right = section ? side.box.x - 14 * ratio : side.box.x + side.box.width;
  const y = (z: number): number => side.origin[1] - z * lay.scale;
  const named = { size: 15, align: 'right', tone: 'chalk', chip: true } as const;
  letter(ink, inked, { ...named, text: words.ridgeTop, at: [right, y(scheme.top) - 11 * ratio] });
  letter(ink, inked, { ...named, text: words.plate, at: [right, y(0) - 11 * ratio] });
};

/** Once, between plan and side, on the layout lines that belong to both. */
const numberStations = (ink: Ink, inked: Inked): void => {
  const { input, lay, scheme } = inked;
  const { ratio, station } = input;
  const { plan } = lay.views;
  if (!plan) return;
  const close = (scheme.stations[1] ?? 24) * lay.scale < 17 * ratio;
  scheme.stations.forEach((x, i) => {
    if (close && i % 2 === 1 && i + 1 !== station) return;
    const at: Point = [plan.origin[0] + x * lay.scale, plan.box.y + plan.box.height + 12 * ratio];
    const tone = i + 1 === station ? 'chalk' : 'ink';
    letter(ink, inked, { text: String(i + 1), at, size: 16, align: 'center', tone, chip: true });
  });
};

/** The slope as an angle on the roof: 12 level, the rise beside it. */
const drawSlope = (ink: Ink, inked: Inked): void => {
  const { input, lay, scheme } = inked;
  const { ratio, theme, shown } = input;
  const { section } = lay.views;
  if (!section) return;
  const color = palettes[theme].pencil;
  const unit = Math.max(34 * ratio, 12 * lay.scale);
  const out = scheme.half * slopeOut(scheme, 0.66);
  const rise = unit * scheme.m;
  const x = section.origin[0] + out * lay.scale;
  const y =
    section.origin[1] -
    (scheme.common.heightAbovePlate + (scheme.half - out) * scheme.m) * lay.scale -
    5 * ratio;
  const look = { width: 1.1 * ratio, alpha: 0.9, color };
  pencil(ink, { from: [x, y], to: [x, y - rise], ...look });
  pencil(ink, { from: [x, y - rise], to: [x - unit, y - rise], ...look });
  const { rise: up, run } = shown.level.plan.slope;
  const said = { size: 15, tone: 'ink' } as const;
  letter(ink, inked, { ...said, text: String(up), at: [x + 6 * ratio, y - rise / 2], align: 'left' });
  letter(ink, inked, {
    ...said,
    text: String(run),
    at: [x - unit / 2, y - rise - 9 * ratio],
    align: 'center',
  });
};
