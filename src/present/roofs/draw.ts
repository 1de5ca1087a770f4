import { textWidth, type Face } from './textSize';

/**
 * Drawings as a few plain shapes, which any view can put on its own surface. x to the right, y down, in the unit that texts
 * are sized in.
 */
export type Drawing = {
  /** What it shows, for those who hear it. */
  readonly title: string;
  readonly width: number;
  readonly height: number;
  readonly shapes: readonly Shape[];
};

export type Point = readonly [x: number, y: number];

/** Wood as cut; wood seen small; what the section cuts through; a member behind or taken away; thin lines that only lead the eye; the middle of something; grain. */
export type Role = 'wood' | 'stick' | 'thin' | 'dashed' | 'middle' | 'grain' | 'cut';

export type Shape =
  | { readonly kind: 'outline'; readonly points: readonly Point[]; readonly role: Role; readonly id?: string }
  | { readonly kind: 'line'; readonly points: readonly Point[]; readonly role: Role; readonly dot?: true }
  | Text
  | Dimension;

export type Text = {
  readonly kind: 'text';
  /** On the base line, at the anchor. */
  readonly at: Point;
  readonly text: string;
  readonly size: number;
  readonly face: Face;
  readonly anchor: 'start' | 'middle' | 'end';
};

/** Level or plumb, with a tick at each end; its text stands in a gap of the line. */
export type Dimension = {
  readonly kind: 'dimension';
  readonly from: Point;
  readonly to: Point;
  readonly label?: Text;
};

export type Box = {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
};
export type Segment = { readonly from: Point; readonly to: Point };

/** Of the letters themselves: over the base line and under it, in sizes. */
const over = 0.74;
const under = 0.2;

export const boxOf = ({ at: [x, y], text, size, face, anchor }: Text): Box => {
  const wide = textWidth(text, size, face);
  const left = anchor === 'start' ? x : anchor === 'end' ? x - wide : x - wide / 2;
  return { left, right: left + wide, top: y - over * size, bottom: y + under * size };
};

/** A text whose letters stand in the middle of a height. */
export const textMid = (
  [x, y]: Point,
  text: string,
  {
    size,
    face = 'narrow',
    anchor = 'middle',
  }: Partial<Omit<Text, 'kind' | 'text' | 'at'>> & { size: number },
): Text => ({ kind: 'text', at: [x, y + ((over - under) / 2) * size], text, size, face, anchor });

/** Room between a dimension's text and its line, and half of a tick. */
const gap = 5;
const tick = 4;

/** A dimension as its lines. */
export const dimensionLines = ({ from, to, label }: Dimension): readonly Segment[] => {
  const ticks = [from, to].map(([x, y]): Segment => ({
    from: [x - tick, y + tick],
    to: [x + tick, y - tick],
  }));
  if (!label) return [{ from, to }, ...ticks];
  const box = boxOf(label);
  const level = from[1] === to[1];
  const [low, high] = level ? [box.left - gap, box.right + gap] : [box.top - gap, box.bottom + gap];
  const [start, end] = level ? [from[0], to[0]] : [from[1], to[1]];
  const [a, b] = [Math.min(start, end), Math.max(start, end)];
  const crosses = high > a && low < b;
  const parts = crosses
    ? [
        [a, low],
        [high, b],
      ]
    : [[a, b]];
  const lines = parts
    .filter(([one = 0, other = 0]) => other > one)
    .map(([one = 0, other = 0]): Segment =>
      level ? { from: [one, from[1]], to: [other, from[1]] } : { from: [from[0], one], to: [from[0], other] },
    );
  return [...lines, ...ticks];
};

/** All straight lines of a drawing. */
export const segmentsOf = ({ shapes }: Drawing): readonly Segment[] =>
  shapes.flatMap((shape): readonly Segment[] => {
    if (shape.kind === 'text') return [];
    if (shape.kind === 'dimension') return dimensionLines(shape);
    const { points } = shape;
    const all = shape.kind === 'outline' && points[0] ? [...points, points[0]] : points;
    return all.slice(1).map((to, i) => ({ from: all[i] ?? to, to }));
  });

/** All texts of a drawing. */
export const textsOf = ({ shapes }: Drawing): readonly Text[] =>
  shapes.flatMap((shape) =>
    shape.kind === 'text' ? [shape] : shape.kind === 'dimension' && shape.label ? [shape.label] : [],
  );
