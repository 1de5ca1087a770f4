import type { RoofPlan } from '../../core/roof/plan';
import type { Timber } from '../../core/roof/timber';
import { timbersOf } from '../../core/roof/timbers';
import { lengthText } from '../words/numbers';
import { textMid, type Drawing, type Point, type Role, type Shape } from './draw';
import type { Told } from './figures';
import { textWidth } from './textSize';
import { roofTitle } from './title';

/**
 * The whole roof from above, to scale: plates, ridges, hips, valleys, and every rafter where the layout puts it. End A is on
 * the left and the yard toward the reader, as in all our views.
 */
export const planDrawing = (asked: Told & { readonly plan: RoofPlan }, size: DrawSize): Drawing => {
  const { plan, words } = asked;
  const isLong = plan.length / plan.spacing > most;
  const seen = isLong ? [] : timbersOf(plan).flatMap(seenFromAbove);
  const wood = isLong ? [platesOf(plan)] : seen.map(({ points }) => points);
  const { top, ...sides } = roomOf(asked, size);
  const room = { ...sides, top: isLong ? top + size.word * 1.6 : top };
  const frame = framed(wood.flat(), { ...size, room });
  const notes = isLong
    ? [textMid([size.width / 2, size.word], words.roofs.draw.tooMany, { size: size.word })]
    : [];
  return {
    title: words.roofs.draw.planOf(roofTitle(asked).toLowerCase()),
    width: size.width,
    height: frame.height,
    shapes: [
      ...(isLong ? [{ kind: 'outline', points: platesOf(plan).map(frame.at), role: 'thin' } as const] : []),
      ...seen.map((one) => shapeOf(one, frame)),
      ...around(asked, size, frame),
      ...notes,
    ],
  };
};

/** Of a drawing that fills a place, or its width and less of its height: words and figures are no smaller than said. */
export type DrawSize = {
  readonly width: number;
  readonly height: number;
  readonly figure: number;
  readonly word: number;
};

/** Rafters on a side, past which they would be one gray field. */
const most = 160;

type Room = { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };

export type Frame = {
  readonly at: (point: Point) => Point;
  readonly scale: number;
  /** Of what is drawn, on the drawing. */
  readonly box: Room;
  /** Of the drawing, with the room over and under what is drawn. */
  readonly height: number;
};

/** What is drawn as large as the place and the room around it let it be, in the middle of its width. */
export const framed = (
  points: readonly Point[],
  { width, height, room }: DrawSize & { readonly room: Room },
): Frame => {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  const [top, bottom] = [Math.min(...ys), Math.max(...ys)];
  const [wide, high] = [width - room.left - room.right, height - room.top - room.bottom];
  const scale = Math.max(0.001, Math.min(wide / Math.max(right - left, 1), high / Math.max(bottom - top, 1)));
  const x0 = room.left + (wide - (right - left) * scale) / 2;
  const at = ([x, y]: Point): Point => [x0 + (x - left) * scale, room.top + (y - top) * scale];
  const [a, b] = [at([left, top]), at([right, bottom])];
  const box = { left: a[0], top: a[1], right: b[0], bottom: b[1] };
  return { at, scale, box, height: Math.ceil(box.bottom + room.bottom) };
};

const roomOf = ({ plan, units }: Told & { readonly plan: RoofPlan }, { figure, word }: DrawSize): Room => {
  const span = textWidth(lengthText(plan.span, units), figure, 'narrow');
  return {
    left: span + 16 + word * 1.8,
    right: word * 1.8,
    top: word * 1.8,
    bottom: word * 1.7 + figure * 1.6,
  };
};

const platesOf = (plan: RoofPlan): readonly Point[] => {
  const [street, yard] = acrossOf(plan);
  return [
    [0, street],
    [plan.length, street],
    [plan.length, yard],
    [0, yard],
  ];
};

type Seen = {
  readonly id: string;
  readonly role: Role;
  readonly points: readonly Point[];
  /** Down its middle, from end to end. */
  readonly middle: readonly [Point, Point];
};

/** Its outline from above, as far as plumb cuts leave it. Blocks are too small to tell apart. */
const seenFromAbove = ({ id, origin, direction, outline, thickness, cuts }: Timber): readonly Seen[] => {
  const [kind = ''] = id.split('.');
  if (kind === 'block') return [];
  const along = outline.map(([u]) => u);
  const [from, to] = [Math.min(...along), Math.max(...along)];
  const half = thickness / 2;
  const corner = (u: number, v: number): Point => [
    origin[0] + direction[0] * u - direction[1] * v,
    origin[1] + direction[1] * u + direction[0] * v,
  ];
  const whole = [corner(from, -half), corner(to, -half), corner(to, half), corner(from, half)];
  const points = cuts
    .filter(({ normal }) => Math.abs(normal[2]) < 1e-9)
    .reduce<readonly Point[]>(
      (left, { normal, reach }) => clipped(left, [normal[0], normal[1]], reach),
      whole,
    );
  if (points.length < 3) return [];
  const reach = points.map(([x, y]) => direction[0] * (x - origin[0]) + direction[1] * (y - origin[1]));
  const middle = [corner(Math.min(...reach), 0), corner(Math.max(...reach), 0)] as const;
  return [{ id, role: roles[kind] ?? 'stick', points, middle }];
};

const roles: Readonly<Record<string, Role>> = {
  ridge: 'wood',
  hip: 'wood',
  valley: 'wood',
  ledger: 'wood',
  header: 'wood',
  purlin: 'wood',
  sleeper: 'dashed',
  plate: 'dashed',
  highPlate: 'dashed',
};

/** What of a polygon lies where normal · point <= reach. */
const clipped = (points: readonly Point[], normal: Point, reach: number): readonly Point[] => {
  const over = ([x, y]: Point): number => normal[0] * x + normal[1] * y - reach;
  return points.flatMap((p, i): readonly Point[] => {
    const next = points[(i + 1) % points.length] ?? p;
    const [a, b] = [over(p), over(next)];
    const kept: readonly Point[] = a <= 0 ? [p] : [];
    if (a < 0 === b < 0 || a === b) return kept;
    const t = a / (a - b);
    return [...kept, [p[0] + (next[0] - p[0]) * t, p[1] + (next[1] - p[1]) * t]];
  });
};

/** Too thin for two lines, a member is one: down its middle. */
const shapeOf = ({ id, role, points, middle }: Seen, { at, scale }: Frame): Shape =>
  scale * 1.5 >= 2.4 || role === 'dashed'
    ? { kind: 'outline', points: points.map(at), role, id }
    : { kind: 'line', points: middle.map(at), role };

/** From the street's plate to the yard's, or to a shed's wall. */
export const acrossOf = ({ kind, span }: RoofPlan): readonly [street: number, yard: number] =>
  kind === 'shed' ? [-span, 0] : [-span / 2, span / 2];

/** Which side and end is which, and how long and wide it is, plate to plate. */
const around = (
  asked: Told & { readonly plan: RoofPlan },
  size: DrawSize,
  { at, box }: Frame,
): readonly Shape[] => {
  const { plan, words, units } = asked;
  const { draw } = words.roofs;
  const [street, yard] = acrossOf(plan);
  const [left, top] = at([0, street]);
  const [right, bottom] = at([plan.length, yard]);
  const middle = (left + right) / 2;
  const across = (top + bottom) / 2;
  const low = box.bottom + size.word * 1.7 + size.figure * 0.6;
  const wide = textWidth(lengthText(plan.span, units), size.figure, 'narrow');
  // A short line has its text beside it.
  const isShort = bottom - top < size.figure + 22;
  const out = box.left - size.word * 1.8 - 6 - (isShort ? 0 : wide / 2);
  const spanText = lengthText(plan.span, units);
  const word = (x: number, y: number, text: string): Shape => textMid([x, y], text, { size: size.word });
  return [
    word(middle, box.top - size.word, draw.street),
    word(middle, box.bottom + size.word, draw.yard),
    word(box.left - size.word, across, 'A'),
    word(box.right + size.word, across, 'B'),
    {
      kind: 'dimension',
      from: [left, low],
      to: [right, low],
      label: textMid([middle, low], lengthText(plan.length, units), { size: size.figure }),
    },
    {
      kind: 'dimension',
      from: [out, top],
      to: [out, bottom],
      ...(!isShort && { label: textMid([out, across], spanText, { size: size.figure }) }),
    },
    ...(isShort ? [textMid([out - 8, across], spanText, { size: size.figure, anchor: 'end' })] : []),
  ];
};
