import { textWidth } from './textSize';
import type { Point } from './draw';
import type { CutMember, CutSize } from './cutMember';

/**
 * Where things of a member's drawing lie. The board lies with its top edge level: `along` from the top of the plumb cut toward
 * the tail, `deep` square down from the edge, inches. A body too long to show whole is broken in the middle.
 */
export type CutFrame = {
  readonly member: CutMember;
  readonly size: CutSize;
  /** On the drawing. */
  readonly at: (along: Point) => Point;
  /** Of the whole top edge, and where the body begins. */
  readonly edge: number;
  readonly bodyFrom: number;
  readonly pieces: readonly (readonly Point[])[];
  readonly breaks: readonly (readonly Point[])[];
  readonly heels: readonly Heel[];
  /** Heights of the two rows of dimensions. */
  readonly rows: readonly [top: number, low: number];
  readonly squareAt: Point;
  /** How far labels may go to the right. */
  readonly reach: number;
  readonly crownX: number | undefined;
  /** Whether the body's length has room over the body. */
  readonly isBodyOver: boolean;
  /** Whether the height above the plate has room inside the board, left of its line. */
  readonly isAboveInside: boolean;
};

/** A birdsmouth: from the top edge down to its corner, in along its seat, down its heel cut where wood is left past it. */
export type Heel = {
  readonly from: Point;
  readonly corner: Point;
  readonly seatEnd: Point;
  readonly low?: Point;
  readonly seat: number;
  readonly heel: number;
  readonly over: number;
};

/** Between the two pieces of a broken board. */
const broken = 14;

/** How wide the texts inside the board are. */
export type Inner = { readonly above: number; readonly body: number; readonly crown: number };

export const cutFrame = (member: CutMember, size: CutSize, inner: Inner): CutFrame => {
  const inLabel = inner.above;
  const { depth, slope, body, tail } = member;
  const m = slope.rise / slope.run;
  const slide = depth * m;
  const bodyFrom = member.high?.tail ?? 0;
  const edge = bodyFrom + body + tail;
  const heels = heelsOf(member, { m, bodyFrom });
  const g = Math.sqrt(1 + m * m);
  const end = member.foot ? 0 : member.tail > 0 || heels.length === 0 ? slide : (member.overPlate * m) / g;
  const whole = edge + end;
  const squareWide = 74 + textWidth(member.square.join(''), size.figure, 'narrow') + 20;
  const wide = size.width - squareWide - 16;
  const first = bodyFrom + slide + 1.2 * depth + (member.high ? member.high.seat + depth * m : 0);
  const last = whole - (bodyFrom + body) + member.seat + 0.4 * depth;
  const fitting = (wide - broken - inLabel) / (first + last);
  const scale = Math.min(
    size.deep / depth,
    Math.max(fitting, wide / whole),
    wide / Math.min(whole, first + last),
  );
  const isBroken = whole * scale > wide + 0.5;
  const upper = size.figure * 0.7;
  const rows = [upper, size.low ? upper : size.figure * 2.05] as const;
  const y = rows[1] + size.figure * 0.75 + 5;
  const x0 = 6;
  const x1 = x0 + (isBroken ? wide : whole * scale);
  const cut = isBroken ? breakAt({ x0, x1, first, last, scale, inLabel }) : undefined;
  const at = ([along, deep]: Point): Point => [
    cut === undefined || x0 + along * scale <= cut ? x0 + along * scale : x1 - (whole - along) * scale,
    y + deep * scale,
  ];
  const shape = outlineOf(member, { slide, edge, heels });
  return {
    member,
    size,
    at,
    edge,
    bodyFrom,
    heels,
    rows,
    reach: size.width - squareWide,
    squareAt: [size.width - squareWide + textWidth(member.square[0], size.figure, 'narrow') + 12, y + 16],
    isBodyOver: at([bodyFrom + body, 0])[0] - at([bodyFrom, 0])[0] > inner.body + 24,
    isAboveInside:
      at([bodyFrom + body, 0])[0] - inner.above > (cut === undefined ? x0 + slide * scale : cut + broken),
    crownX: cut === undefined ? undefined : crownAt({ x0, cut, slide, scale, bodyFrom, crown: inner.crown }),
    ...piecesOf({ shape, at, cut, y, deep: depth * scale }),
  };
};

const breakAt = ({
  x0,
  x1,
  first,
  last,
  scale,
  inLabel,
}: {
  x0: number;
  x1: number;
  first: number;
  last: number;
  scale: number;
  inLabel: number;
}): number => {
  const spare = x1 - x0 - broken - (first + last) * scale - inLabel;
  return x0 + first * scale + Math.max(0, spare) * 0.6;
};

type Crown = {
  readonly x0: number;
  readonly cut: number;
  readonly slide: number;
  readonly scale: number;
  readonly bodyFrom: number;
  readonly crown: number;
};

const crownAt = ({ x0, cut, slide, scale, bodyFrom, crown }: Crown): number | undefined => {
  const x = x0 + (bodyFrom + slide) * scale + 16;
  return bodyFrom === 0 && cut - x > crown + 20 ? x : undefined;
};

const heelsOf = (
  { depth, body, tail, seat, overPlate, high, slope }: CutMember,
  { m, bodyFrom }: { readonly m: number; readonly bodyFrom: number },
): readonly Heel[] => {
  const g = Math.sqrt(1 + m * m);
  const one = (along: number, so: { seat: number; over: number }, past: boolean): Heel => {
    const corner: Point = [along + (so.over * m) / g, so.over / g];
    return {
      from: [along, 0],
      corner,
      seatEnd: [corner[0] - so.seat / g, corner[1] + (so.seat * m) / g],
      ...(past && { low: [along + depth * m, depth] as const }),
      seat: so.seat,
      heel: (so.seat * slope.rise) / slope.run,
      over: so.over,
    };
  };
  return [
    ...(seat > 0 ? [one(bodyFrom + body, { seat, over: overPlate }, tail > 0)] : []),
    ...(high ? [one(bodyFrom, { seat: high.seat, over: high.overPlate }, true)] : []),
  ];
};

/** Lower edge from the plumb cut's foot to the tail's, and the upper edge back. */
const outlineOf = (
  member: CutMember,
  { slide, edge, heels }: { slide: number; edge: number; heels: readonly Heel[] },
): { readonly under: readonly Point[]; readonly top: readonly [Point, Point] } => {
  const { depth, foot, slope } = member;
  const [lower, upper] = heels;
  const notch = (heel: Heel): readonly Point[] => [
    heel.seatEnd,
    heel.corner,
    ...(heel.low ? [heel.low] : []),
  ];
  const tail: readonly Point[] = foot
    ? [[edge - (depth * slope.run) / slope.rise, depth]]
    : lower && !lower.low
      ? []
      : [[edge + slide, depth]];
  return {
    under: [[slide, depth], ...(upper ? notch(upper) : []), ...(lower ? notch(lower) : []), ...tail],
    top: [
      [0, 0],
      [edge, 0],
    ],
  };
};

type Shaped = {
  readonly shape: ReturnType<typeof outlineOf>;
  readonly at: (along: Point) => Point;
  readonly cut: number | undefined;
  readonly y: number;
  readonly deep: number;
};

const piecesOf = ({ shape, at, cut, y, deep }: Shaped): Pick<CutFrame, 'pieces' | 'breaks'> => {
  const under = shape.under.map(at);
  const [start, end] = shape.top.map(at) as [Point, Point];
  if (cut === undefined) return { pieces: [[start, ...under, end, start]], breaks: [] };
  const left = under.filter(([x]) => x <= cut + 0.01);
  const right = under.filter(([x]) => x > cut + 0.01);
  const other = cut + broken;
  return {
    pieces: [
      [[cut, y], start, ...left, [cut, y + deep]],
      [[other, y + deep], ...right, end, [other, y]],
    ],
    breaks: [zigzag(cut, y, deep), zigzag(other, y, deep)],
  };
};

const zigzag = (x: number, y: number, deep: number): readonly Point[] => [
  [x, y],
  [x, y + deep * 0.36],
  [x - 4, y + deep * 0.43],
  [x + 4, y + deep * 0.57],
  [x, y + deep * 0.64],
  [x, y + deep],
];
