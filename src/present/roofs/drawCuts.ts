import type { CutMember, CutSize } from './cutMember';
import { textMid, type Drawing, type Point, type Shape } from './draw';
import { cutFrame, type CutFrame } from './cutFrame';
import { edgeViews } from './drawEdges';
import { tapeText, type Told } from './figures';
import { textWidth } from './textSize';

/** A member's cuts as it lies on the horses, top edge up, with all that is marked on it. Figures exact, in inches. */

/** Shorter tails are none: half a tick of a tape. Inches. */
const least = 1 / 32;

/** Its height follows from what there is to show. */
export const cutDrawing = (told: Told, member: CutMember, size: CutSize): Drawing => {
  const above = `${tapeText(member.overPlate, told.units)} ${told.words.roofs.draw.abovePlate}`;
  const frame = cutFrame(member, size, {
    above: textWidth(above, size.figure, 'narrow') + 26,
    body: textWidth(
      `${told.words.roofs.draw.body} ${tapeText(member.body, told.units)}`,
      size.figure,
      'narrow',
    ),
    crown: textWidth(told.words.roofs.draw.crownUp, size.word, 'narrow'),
  });
  const { draw } = told.words.roofs;
  const side = [
    ...sideShapes(frame),
    ...dimensions(told, frame),
    ...inside(told, frame),
    ...square(told, frame),
  ];
  const low = labels(told, frame);
  const views = edgeViews(told, member, { ...size, top: low.bottom + 10 });
  return {
    title: draw.cutsOf(member.name),
    width: size.width,
    height: views.bottom,
    shapes: [...side, ...low.shapes, ...views.shapes],
  };
};

const sideShapes = ({ pieces, breaks, heels, at }: CutFrame): readonly Shape[] => [
  ...pieces.map((points): Shape => ({ kind: 'line', points, role: 'wood' })),
  ...breaks.map((points): Shape => ({ kind: 'line', points, role: 'thin' })),
  ...heels.map(({ from, corner }): Shape => ({
    kind: 'line',
    points: [at(from), at(corner)],
    role: 'middle',
  })),
];

/** Over the board: the whole edge, and body and tail below it; or the body alone. */
const dimensions = (told: Told, frame: CutFrame): readonly Shape[] => {
  const { member, size, rows, at, edge, bodyFrom } = frame;
  const { draw } = told.words.roofs;
  const [top, low] = rows;
  const xOf = (along: number): number => at([along, 0])[0];
  const [whole, start, heel, end] = [0, bodyFrom, bodyFrom + member.body, edge].map(xOf) as [
    number,
    number,
    number,
    number,
  ];
  const dimension = (from: number, to: number, { y, text }: { y: number; text?: string }): Shape => ({
    kind: 'dimension',
    from: [from, y],
    to: [to, y],
    ...(text !== undefined && { label: textMid([(from + to) / 2, y], text, { size: size.figure }) }),
  });
  const text = (name: string, inches: number): string => `${name} ${tapeText(inches, told.units)}`;
  const up = (x: number, row: number): Shape => ({
    kind: 'line',
    points: [
      [x, at([0, 0])[1] - 3],
      [x, row - 6],
    ],
    role: 'thin',
  });
  const isWhole = !size.low && edge - member.body > 0.01;
  const tailed = text(draw.tail, member.tail);
  const body = text(draw.body, member.body);
  const fits = end - heel > textWidth(tailed, size.figure, 'narrow') + 24;
  return [
    ...(isWhole ? [dimension(whole, end, { y: top, text: text(draw.whole, edge) })] : []),
    dimension(start, heel, { y: low, ...(frame.isBodyOver && { text: body }) }),
    ...(member.tail > least ? [dimension(heel, end, { y: low, ...(fits && { text: tailed }) })] : []),
    ...(member.tail > least && !fits
      ? [textMid([end + 8, low], tailed, { size: size.figure, anchor: 'start' })]
      : []),
    ...(isWhole ? [up(whole, top), up(end, top)] : []),
    ...(isWhole && start === whole ? [] : [up(start, low)]),
    ...(isWhole && heel === end ? [] : [up(heel, low)]),
    ...(!isWhole && member.tail > least ? [up(end, low)] : []),
  ];
};

/** Inside the board: how high it stands over the plate, and which way the crown goes. */
const inside = ({ words, units }: Told, frame: CutFrame): readonly Shape[] => {
  const { member, size, at, heels, crownX } = frame;
  const { draw } = words.roofs;
  const y = at([0, 0])[1] + size.figure * 0.55 + 5;
  const high = heels
    .slice(0, frame.isAboveInside ? 1 : 0)
    .flatMap(({ from, corner, over }): readonly Shape[] => {
      const [x0, y0] = at(from);
      const [x1, y1] = at(corner);
      const on: Point = [x0 + ((x1 - x0) * (y - y0)) / (y1 - y0), y];
      const text = textMid([x0 - 10, y], `${tapeText(over, units)} ${draw.abovePlate}`, {
        size: size.figure,
        anchor: 'end',
      });
      return [text, { kind: 'line', points: [[x0 - 7, y], on], role: 'thin', dot: true }];
    });
  const deep = at([0, member.depth])[1] - at([0, 0])[1];
  const base = at([0, 0])[1] + deep / 2;
  const crown: readonly Shape[] =
    crownX === undefined
      ? []
      : [
          {
            kind: 'line',
            points: [
              [crownX, base + 9],
              [crownX, base - 9],
            ],
            role: 'thin',
          },
          {
            kind: 'line',
            points: [
              [crownX - 4, base - 3],
              [crownX, base - 9],
              [crownX + 4, base - 3],
            ],
            role: 'thin',
          },
          textMid([crownX + 9, base], draw.crownUp, { size: size.word, anchor: 'start' }),
        ];
  return [...high, ...crown];
};

type Label = { readonly on: Point; readonly text: string; readonly want: number };

/** Under the board, in a row, each led to what it is the length of. */
const labels = (
  told: Told,
  frame: CutFrame,
): { readonly shapes: readonly Shape[]; readonly bottom: number } => {
  const { member, size, at, heels, edge } = frame;
  const { draw } = told.words.roofs;
  const tape = (inches: number): string => tapeText(inches, told.units);
  const slide = member.depth * (member.slope.rise / member.slope.run);
  const flat = (member.depth * member.slope.run) / member.slope.rise;
  const mid = ([a, b]: Point, [c, d]: Point): Point => at([(a + c) / 2, (b + d) / 2]);
  const top = mid([0, 0], [slide, member.depth]);
  const along = at([frame.bodyFrom + member.body / 2, 0]);
  const wanted: readonly Label[] = [
    ...(frame.isBodyOver ? [] : [{ on: along, text: `${draw.body} ${tape(member.body)}`, want: along[0] }]),
    { on: top, text: `${draw.plumb} ${tape(member.plumbCut)}`, want: top[0] },
    ...heels.flatMap(({ corner, seatEnd, low, seat, heel }): readonly Label[] => [
      { on: mid(corner, seatEnd), text: `${draw.seat} ${tape(seat)}`, want: mid(corner, seatEnd)[0] - 44 },
      ...(low
        ? [{ on: mid(corner, low), text: `${draw.heel} ${tape(heel)}`, want: mid(corner, low)[0] + 44 }]
        : []),
    ]),
    ...(frame.isAboveInside
      ? []
      : heels.slice(0, 1).map(({ from, corner, over }) => ({
          on: mid(from, corner),
          text: `${tape(over)} ${draw.abovePlate}`,
          want: mid(from, corner)[0] - 90,
        }))),
    ...(member.foot
      ? [{ on: mid([edge, 0], [edge - flat, member.depth]), text: draw.level, want: at([edge - flat, 0])[0] }]
      : []),
    ...(member.tail > least
      ? [
          {
            on: mid([edge, 0], [edge + slide, member.depth]),
            text: draw.plumb,
            want: at([edge + slide, 0])[0],
          },
        ]
      : []),
  ];
  const row = at([0, member.depth])[1] + 26;
  const fresh = wanted.filter(({ text }, i) => wanted.findIndex((one) => one.text === text) === i);
  const inOrder = fitting(fresh, { width: frame.reach, size: size.figure }).sort((a, b) => a.on[0] - b.on[0]);
  const placed = inRow(inOrder, { width: frame.reach, size: size.figure });
  return {
    bottom: row + size.figure * 0.7,
    shapes: placed.flatMap(({ on, text, x }): readonly Shape[] => [
      textMid([x, row], text, { size: size.figure }),
      { kind: 'line', points: [[x, row - size.figure * 0.62], on], role: 'thin', dot: true },
    ]),
  };
};

/** Without the tail's cut, which is like the upper one, where there is no room for it. */
const fitting = (
  wanted: readonly Label[],
  { width, size }: { readonly width: number; readonly size: number },
): Label[] => {
  const wide = wanted.reduce((sum, { text }) => sum + textWidth(text, size, 'narrow') + 14, 0);
  return wide > width ? wanted.filter(({ text }) => /\d/.test(text)) : [...wanted];
};

/** Texts side by side, each as near to where it wants to be as the others let it. */
const inRow = (
  wanted: readonly Label[],
  { width, size }: { readonly width: number; readonly size: number },
): readonly (Label & { readonly x: number })[] => {
  const wide = wanted.map(({ text }) => textWidth(text, size, 'narrow') + 14);
  const xs = wanted.map(({ want }) => want);
  let from = 0;
  xs.forEach((x, i) => {
    const half = (wide[i] ?? 0) / 2;
    xs[i] = Math.max(x, from + half);
    from = (xs[i] ?? 0) + half;
  });
  let to = width;
  for (let i = xs.length - 1; i >= 0; i -= 1) {
    const half = (wide[i] ?? 0) / 2;
    xs[i] = Math.min(xs[i] ?? 0, to - half);
    to = (xs[i] ?? 0) - half;
  }
  return wanted.map((label, i) => ({ ...label, x: xs[i] ?? 0 }));
};

/** The triangle that the square makes on the board: its edge is the slope. */
const square = ({ words }: Told, frame: CutFrame): readonly Shape[] => {
  const { member, size, squareAt } = frame;
  const { rise, run } = member.slope;
  const [x, y] = squareAt;
  const g = Math.sqrt(rise * rise + run * run);
  const hyp = Math.min(74, (34 * g * g) / (rise * run));
  const foot = (hyp * rise * rise) / (g * g);
  const deep = (hyp * rise * run) / (g * g);
  const corner: Point = [x + foot, y + deep];
  const [riseText, runText] = member.square;
  const half = size.figure * 0.5;
  const isFlat = deep < size.figure * 1.4;
  const under: Point = [x + hyp / 2, y + deep + size.figure * 0.75];
  const left: Point = [x + foot / 2 - (half * foot) / deep / 2 - 6, y + deep / 2 + half];
  const right: Point = [x + (foot + hyp) / 2 + (half * (hyp - foot)) / deep / 2 + 6, y + deep / 2 + half];
  const out = (at: Point, anchor: 'start' | 'middle' | 'end', text: string): Shape =>
    textMid(at, text, { size: size.figure, anchor });
  // Of a flat triangle the long leg has its figure under it.
  const legs = !isFlat
    ? [out(left, 'end', riseText), out(right, 'start', runText)]
    : rise < run
      ? [out([x - 5, y + half], 'end', riseText), out(under, 'middle', runText)]
      : [out(under, 'middle', riseText), out([x + hyp + 5, y + half], 'start', runText)];
  return [
    { kind: 'outline', points: [[x, y], corner, [x + hyp, y]], role: 'thin' },
    ...legs,
    textMid([x + hyp / 2, y - size.word * 0.8], words.roofs.draw.square, { size: size.word }),
  ];
};
