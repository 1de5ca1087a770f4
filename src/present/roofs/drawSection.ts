import type { FiguredRoof, FiguredTie } from '../../core/roof/figured';
import type { RoofPlan } from '../../core/roof/plan';
import type { Timber } from '../../core/roof/timber';
import { timbersOf } from '../../core/roof/timbers';
import { gradient } from '../../core/units/slope';
import { lengthText } from '../words/numbers';
import { textMid, type Drawing, type Point, type Shape } from './draw';
import { acrossOf, framed, type DrawSize, type Frame } from './drawPlan';
import { grainOf } from './drawGrain';
import type { Told } from './figures';
import { textWidth } from './textSize';
import { in12, roofTitle } from './title';

/** The roof cut across where it is whole, to scale, street on the left: rafters on plates and ridge, with their ties. */

type Asked = Told & { readonly plan: RoofPlan; readonly roof: FiguredRoof };

export const sectionDrawing = (given: Asked, size: DrawSize): Drawing => {
  const whole = timbersOf(shortened(given.plan));
  const at = middleStation(whole, given.plan);
  const rafters = whole.filter((one) => isRafter(one) && one.origin[0] === at);
  const section = sectionIn(rafters[0]?.id ?? '');
  const asked = section === undefined ? given : ofSection(given, section);
  const { plan, words } = asked;
  const cut = whole.filter((one) => isCutThrough(one, at) && sectionIn(one.id) === section);
  const sides = rafters.map(sideOf);
  const ties = asked.roof.ties.flatMap((tie) => tieOutline(plan, tie, sides));
  const ends = [...cut.map(endOf), ...sides, ...ties];
  const height = heightOf(asked.roof);
  const room = {
    left: size.figure * 2,
    right: textWidth(lengthText(height, asked.units), size.figure, 'narrow') + 24,
    // The slope's mark stands over a roof that is low.
    top: size.figure * (gradient(plan.slope) < 3 / 8 ? 3 : 1.2),
    bottom: size.figure * 2.4,
  };
  const flip = ([y, z]: Point): Point => [y, -z];
  const frame = framed(ends.flat().map(flip), { ...size, room });
  const draw = (points: readonly Point[]): readonly Point[] => points.map((p) => frame.at(flip(p)));
  return {
    title: words.roofs.draw.sectionOf(roofTitle(asked).toLowerCase()),
    width: size.width,
    height: frame.height,
    shapes: [
      ...ties.map((points): Shape => ({ kind: 'outline', points: draw(points), role: 'stick' })),
      ...sides.map((points): Shape => ({ kind: 'outline', points: draw(points), role: 'wood' })),
      ...sides.flatMap((points) => grainOf(draw(points))),
      ...cut.map((one): Shape => ({ kind: 'outline', points: draw(endOf(one)), role: 'cut', id: one.id })),
      ...dimensions(asked, size, { frame, height }),
      ...slopeMark(asked, size, { frame, sides }),
    ],
  };
};

/** Which part of a run a member is of, counted from 1; undefined of any other roof. */
const sectionIn = (id: string): number | undefined => {
  const found = /\.section(\d+)/.exec(id)?.[1];
  return found === undefined ? undefined : Number(found);
};

/** A run as its part alone, at the height it has in the run. */
const ofSection = (asked: Asked, section: number): Asked => {
  const { plan, roof } = asked;
  const own = plan.kind === 'stepped' ? plan.sections[section - 1] : undefined;
  if (!own) return asked;
  const isOwn = ({ id }: { readonly id: string }): boolean => sectionIn(id) === section;
  return {
    ...asked,
    plan: { ...plan, span: own.span, slope: own.slope },
    roof: { ...roof, ridges: roof.ridges.filter(isOwn), ties: roof.ties.filter(isOwn) },
  };
};

/** A section of a long roof is that of a short one: its middle is as all the rest. Those with parts of their own stay whole. */
const shortened = (plan: RoofPlan): RoofPlan => {
  const plain =
    plan.kind === 'shed' ||
    plan.kind === 'gambrel' ||
    (plan.kind === 'gable' && !plan.wings?.length && !plan.dormers?.length && !plan.posts && !plan.standing);
  return plain && plan.length > 40 * plan.spacing
    ? { ...plan, length: (plan.spacing * 40) as RoofPlan['length'] }
    : plan;
};

const isRafter = ({ id, direction }: Timber): boolean =>
  id.startsWith('rafter.') && !id.includes('wing') && Math.abs(direction[1]) > 0.999;

/** Where rafters reach across the most of the span, nearest to the middle. */
const middleStation = (all: readonly Timber[], { length }: RoofPlan): number => {
  const reach = new Map<number, number>();
  for (const one of all.filter(isRafter)) {
    const along = one.outline.map(([u]) => u);
    const x = one.origin[0];
    reach.set(x, (reach.get(x) ?? 0) + Math.max(...along) - Math.min(...along));
  }
  const most = Math.max(0, ...reach.values());
  return [...reach]
    .filter(([, far]) => far > most - 1)
    .map(([x]) => x)
    .reduce((best, x) => (Math.abs(x - length / 2) < Math.abs(best - length / 2) ? x : best), Infinity);
};

const sideOf = ({ origin, direction, outline }: Timber): readonly Point[] =>
  outline.map(([u, z]) => [origin[1] + direction[1] * u, z]);

/** Runs along the roof past the section: its end is seen. */
const isCutThrough = ({ id, origin, direction, outline }: Timber, x: number): boolean => {
  if (Math.abs(direction[0]) < 0.999 || id.startsWith('block') || id.startsWith('rafter')) return false;
  const along = outline.map(([u]) => origin[0] + direction[0] * u);
  return Math.min(...along) <= x && Math.max(...along) >= x;
};

const endOf = ({ origin, outline, thickness }: Timber): readonly Point[] => {
  const zs = outline.map(([, z]) => z);
  const [low, high] = [Math.min(...zs), Math.max(...zs)];
  const [left, right] = [origin[1] - thickness / 2, origin[1] + thickness / 2];
  return [
    [left, low],
    [right, low],
    [right, high],
    [left, high],
  ];
};

/** Depths that ties are drawn with: as the rafters, or a 2×4. */
const collarDepth = 3.5;

const tieOutline = (
  plan: RoofPlan,
  { id, kind, height, length, behindBlocks }: FiguredTie,
  sides: readonly (readonly Point[])[],
): readonly (readonly Point[])[] => {
  if (/wing|dormer/.test(id) || sides.length < 2) return [];
  const high = height + (kind === 'collar' ? collarDepth : plan.rafter.depth);
  const half = (plan.span + (behindBlocks?.length ?? length) - length) / 2;
  const edge = (z: number, way: 1 | -1): number => {
    const reach = topReach(sides, z, way);
    return way * Math.min(half, reach === undefined ? half : reach);
  };
  return [
    [
      [edge(height, -1), height],
      [edge(height, 1), height],
      ...corner(sides, { height, high, half, way: 1 }),
      [edge(high, 1), high],
      [edge(high, -1), high],
      ...corner(sides, { height, high, half, way: -1 }),
    ],
  ];
};

/** How far out the top edges of a side are at a height. */
const topReach = (sides: readonly (readonly Point[])[], z: number, way: 1 | -1): number | undefined => {
  const reaches = tops(sides, way).flatMap(([[y0, z0], [y1, z1]]) =>
    z >= Math.min(z0, z1) && z <= Math.max(z0, z1) && z0 !== z1
      ? [way * (y0 + ((y1 - y0) * (z - z0)) / (z1 - z0))]
      : [],
  );
  return reaches.length === 0 ? undefined : Math.max(...reaches);
};

/** Top edges of a side's rafters: from their tails to their upper ends. */
const tops = (sides: readonly (readonly Point[])[], way: 1 | -1): readonly (readonly [Point, Point])[] =>
  sides.flatMap((points): readonly (readonly [Point, Point])[] => {
    const top = points[0];
    const tail = points[points.length - 1];
    if (!top || !tail) return [];
    return (top[0] + tail[0]) * way > 0 ? [[tail, top]] : [];
  });

type Corner = { readonly height: number; readonly high: number; readonly half: number; readonly way: 1 | -1 };

/** Where a tie's end leaves the plate's face for the roof's plane. */
const corner = (
  sides: readonly (readonly Point[])[],
  { height, high, half, way }: Corner,
): readonly Point[] =>
  tops(sides, way).flatMap(([[y0, z0], [y1, z1]]): readonly Point[] => {
    const z = z0 + ((z1 - z0) * (way * half - y0)) / (y1 - y0);
    return z > height && z < high ? [[way * half, z]] : [];
  });

const heightOf = ({ ridges, ledgers, highPlates }: FiguredRoof): number =>
  ridges[0]?.topHeight ?? ledgers?.[0]?.topHeight ?? highPlates?.[0]?.height ?? 0;

type In = { readonly frame: Frame; readonly height: number };

const dimensions = (
  { plan, units }: Asked,
  { figure }: DrawSize,
  { frame, height }: In,
): readonly Shape[] => {
  const { at, box } = frame;
  const [street, yard] = acrossOf(plan);
  const [left, zero] = at([street, 0]);
  const [right] = at([yard, 0]);
  const [, top] = at([0, -height]);
  const low = box.bottom + figure * 1.3;
  const wide = textWidth(lengthText(height, units), figure, 'narrow');
  // A short line has its text beside it.
  const isShort = zero - top < figure + 22;
  const out = box.right + 12 + (isShort ? 0 : wide / 2);
  const text = lengthText(height, units);
  const thin = (x0: number, x1: number, y: number): Shape => ({
    kind: 'line',
    points: [
      [x0, y],
      [x1, y],
    ],
    role: 'thin',
  });
  return [
    {
      kind: 'dimension',
      from: [left, low],
      to: [right, low],
      label: textMid([(left + right) / 2, low], lengthText(plan.span, units), { size: figure }),
    },
    thin(box.right + 4, out + 6, zero),
    thin(Math.min(box.right, at([0, 0])[0] + 8), out + 6, top),
    {
      kind: 'dimension',
      from: [out, zero],
      to: [out, top],
      ...(!isShort && { label: textMid([out, (zero + top) / 2], text, { size: figure }) }),
    },
    ...(isShort ? [textMid([out + 9, (zero + top) / 2], text, { size: figure, anchor: 'start' })] : []),
  ];
};

type Marked = { readonly frame: Frame; readonly sides: readonly (readonly Point[])[] };

/** Rise in 12 over the lowest rafter of the street side, clear of it. */
const slopeMark = ({ plan }: Asked, { figure }: DrawSize, { frame, sides }: Marked): readonly Shape[] => {
  const [edge] = [...tops(sides, -1), ...tops(sides, 1)];
  if (!edge) return [];
  const [tail, top] = edge.map(([y, z]) => frame.at([y, -z])) as [Point, Point];
  const { rise, run } = plan.slope;
  const m = rise / run;
  const way = top[0] > tail[0] ? 1 : -1;
  const wide = Math.min(34, 30 / Math.max(m, 0.001));
  const deep = wide * m;
  const along = plan.kind === 'gable' && plan.dormers?.length ? 0.62 : 0.42;
  const mid: Point = [tail[0] + (top[0] - tail[0]) * along, tail[1] + (top[1] - tail[1]) * along];
  // The corner lies over the slope, clear of a dormer's wall: level leg on top, plumb leg on the tail's side.
  const lift = figure * 0.5 + 6;
  const low: Point = [mid[0] - (way * wide) / 2, mid[1] + deep / 2 - lift];
  const high: Point = [low[0] + way * wide, low[1] - deep];
  const square: Point = [low[0], high[1]];
  return [
    { kind: 'outline', points: [low, high, square], role: 'thin' },
    textMid([square[0] - way * 6, (low[1] + square[1]) / 2], in12(plan.slope), {
      size: figure,
      anchor: way > 0 ? 'end' : 'start',
    }),
    textMid([(square[0] + high[0]) / 2, square[1] - figure * 0.62], '12', { size: figure }),
  ];
};
