import { palettes } from '../ink/palette';
import { pencil, type Ink, type Line, type Point } from '../ink/pencil';
import { letter, type Inked } from './sheetParts';

const foot = 12;
/** A line of figures under the sheet's own: from its foot, CSS pixels. */
const scaleFeet = [1, 2, 4, 8] as const;
/** The scale is about this long, CSS pixels. */
const wanted = 110;

/** The scale of the sheet, a tick for every foot, and the sign that it hangs in third angle (ISO 5456-2: a cut cone). */
export const titleBlock = (ink: Ink, inked: Inked): void => {
  const { input, lay } = inked;
  const { ratio, theme, words, area } = input;
  const { section, plan } = lay.views;
  if (!plan) return;
  const look = { width: 1.2 * ratio, alpha: 0.92, color: palettes[theme].pencil };
  const feet = scaleFeet.findLast((n) => n * foot * lay.scale <= wanted * ratio) ?? 1;
  const long = feet * foot * lay.scale;
  const at: Point = section
    ? [area.x + 22 * ratio, area.y + 40 * ratio]
    : [plan.box.x + plan.box.width - long, plan.box.y - 38 * ratio];
  for (const line of scaleLines(at, { feet, long, ratio })) pencil(ink, { ...line, ...look });
  const beside: Point = section ? [at[0], at[1] + 17 * ratio] : [at[0] - 8 * ratio, at[1] - 3 * ratio];
  letter(ink, inked, {
    text: words.ticks,
    at: beside,
    size: 14,
    align: section ? 'left' : 'right',
    tone: 'ink2',
  });
  if (section) coneSign(ink, [at[0] + Math.max(long, 92 * ratio) + 46 * ratio, at[1]], inked);
};

type Scale = { readonly feet: number; readonly long: number; readonly ratio: number };

const scaleLines = ([x, y]: Point, { feet, long, ratio }: Scale): readonly Line[] => [
  { from: [x, y], to: [x + long, y] },
  ...Array.from({ length: feet + 1 }, (_, i): Line => {
    const at = x + (long * i) / feet;
    return { from: [at, y - 6 * ratio], to: [at, y] };
  }),
];

/** A cut cone and, on the side of its small end, what is seen from there. */
const coneSign = (ink: Ink, [x, y]: Point, { input: { ratio, theme } }: Inked): void => {
  const color = palettes[theme].pencil;
  const look = { width: ratio, alpha: 0.9, color };
  const [small, big] = [4.5 * ratio, 9 * ratio];
  for (const r of [small, big]) ring(ink, [x, y], { r, ...look });
  const [left, right] = [x + 17 * ratio, x + 37 * ratio];
  const corners: readonly Point[] = [
    [left, y - small],
    [right, y - big],
    [right, y + big],
    [left, y + small],
  ];
  corners.forEach((from, i) => {
    pencil(ink, { from, to: corners[(i + 1) % 4] as Point, ...look });
  });
  const dash = [7, 2, 2, 2].map((d) => d * ratio);
  pencil(ink, { from: [x - 13 * ratio, y], to: [right + 5 * ratio, y], ...look, alpha: 0.7, dash });
  pencil(ink, { from: [x, y - 13 * ratio], to: [x, y + 13 * ratio], ...look, alpha: 0.7, dash });
};

type Ring = {
  readonly r: number;
  readonly width: number;
  readonly alpha: number;
  readonly color: readonly [number, number, number];
};

const ring = (ink: Ink, [x, y]: Point, { r, width, alpha, color }: Ring): void => {
  ink.setLineDash([]);
  ink.lineWidth = width;
  ink.strokeStyle = `rgba(${color.join(',')},${alpha})`;
  ink.beginPath();
  ink.arc(x, y, r, 0, 2 * Math.PI);
  ink.stroke();
};
