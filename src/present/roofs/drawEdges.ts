import type { Cheek, Turn } from '../../core/roof/figuredSlants';
import { textMid, type Point, type Shape } from './draw';
import type { CutMember, CutSize } from './cutMember';
import { degreesText, type Told } from './figures';

/** Beside the side of a member: its top edge where it is cut aslant, seen from above, and its end where the top is planed. */

type Views = { readonly shapes: readonly Shape[]; readonly bottom: number };

export const edgeViews = (told: Told, member: CutMember, size: CutSize & { readonly top: number }): Views => {
  const { note } = told.words.roofs;
  const thick = 18;
  const ends = (['top', 'bottom'] as const).filter((end) => member.cheeks.some((one) => one.end === end));
  let y = size.top;
  const rows = ends.map((end) => {
    const own = member.cheeks.filter((one) => one.end === end);
    const made = cheekRow(told, own, { end, y, thick, size });
    y = made.bottom + 10;
    return made.shapes;
  });
  const foot = member.foot
    ? [
        textMid(
          [6, y + size.figure / 2],
          `${note.bottom}: ${told.words.roofs.draw.level}, ${told.words.roofs.draw.saw} ${degreesText(member.foot.sawTilt)}`,
          { size: size.figure, anchor: 'start' },
        ),
      ]
    : [];
  if (foot.length > 0) y += size.figure + 10;
  const section = member.backing ? backingView(told, member.backing, { size, y }) : undefined;
  return {
    shapes: [...rows.flat(), ...foot, ...(section?.shapes ?? [])],
    bottom: section?.bottom ?? y - 8,
  };
};

type Row = {
  readonly end: 'top' | 'bottom';
  readonly y: number;
  readonly thick: number;
  readonly size: CutSize;
};

/** The upper end is on the left, as on the side; looking up, the left hand is below. */
const cheekRow = (told: Told, cheeks: readonly Cheek[], { end, y, thick, size }: Row): Views => {
  const { draw, note } = told.words.roofs;
  const long = 96;
  const left = 6;
  const [x, back] = end === 'top' ? [left, left + long] : [left + long, left];
  const way = end === 'top' ? 1 : -1;
  const reach = (cheek: Cheek, over: number): number =>
    Math.min(long * 0.6, (over * cheek.cheekAngle.run) / cheek.cheekAngle.rise);
  const [one, other] = cheeks;
  const tip: readonly Point[] =
    one && other && one.side !== other.side
      ? tipOf(cheeks, { x, y, thick, way, reach })
      : one
        ? one.side === 'left'
          ? [
              [x, y],
              [x + way * reach(one, thick), y + thick],
            ]
          : [
              [x + way * reach(one, thick), y],
              [x, y + thick],
            ]
        : [];
  const words = [
    ...new Set(
      cheeks.map(
        (cheek) =>
          `${draw.cheek} ${degreesText(cheek.cheekAngle)}, ${draw.saw} ${degreesText(cheek.sawBevel)}`,
      ),
    ),
  ];
  const lines = [`${draw.topEdge}, ${note[end]}: ${words[0] ?? ''}`, ...words.slice(1)];
  const step = size.figure * 1.2;
  return {
    shapes: [
      { kind: 'line', points: [[back, y], ...tip, [back, y + thick]], role: 'wood' },
      ...lines.map((text, i) =>
        textMid([left + long + 10, y + thick / 2 + i * step], text, { size: size.figure, anchor: 'start' }),
      ),
    ],
    bottom: y + thick + (lines.length - 1) * step,
  };
};

type Tip = {
  readonly x: number;
  readonly y: number;
  readonly thick: number;
  readonly way: number;
  readonly reach: (cheek: Cheek, over: number) => number;
};

/** Both hands: a point in the middle. */
const tipOf = (cheeks: readonly Cheek[], { x, y, thick, way, reach }: Tip): readonly Point[] => {
  const of = (side: 'left' | 'right'): number => {
    const cheek = cheeks.find((one) => one.side === side);
    return cheek ? reach(cheek, thick / 2) : 0;
  };
  return [
    [x + way * of('right'), y],
    [x, y + thick / 2],
    [x + way * of('left'), y + thick],
  ];
};

/** The end, looking up: both halves of the top planed to their planes. */
const backingView = (
  { words }: Told,
  [left, right]: readonly [Turn, Turn],
  { size, y }: { readonly size: CutSize; readonly y: number },
): Views => {
  const wide = 30;
  const deep = 46;
  const x = size.width - wide - 8;
  const fall = (turn: Turn): number => Math.min(18, ((wide / 2) * turn.rise) / turn.run);
  const top = y + 2;
  const text =
    left.rise * right.run === right.rise * left.run
      ? degreesText(left)
      : `${degreesText(left)}, ${degreesText(right)}`;
  return {
    shapes: [
      {
        kind: 'outline',
        points: [
          [x, top + fall(left)],
          [x + wide / 2, top],
          [x + wide, top + fall(right)],
          [x + wide, top + deep],
          [x, top + deep],
        ],
        role: 'wood',
      },
      textMid([x - 10, top + deep * 0.75], `${words.roofs.draw.backing} ${text}`, {
        size: size.figure,
        anchor: 'end',
      }),
    ],
    bottom: top + deep + 4,
  };
};
