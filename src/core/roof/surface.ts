import type { Vec2 } from '../geometry/vector';
import { hair } from '../units/hair';

/**
 * The roof as planes over plates, seen from above. A body is what stands under several planes at once: at each plan point
 * the lowest of them. Where bodies overlap the higher one is the roof. Hips and ridges are where planes of one body meet,
 * valleys where bodies do. Everything runs straight, so along any line of the plan it all comes down to where straight
 * lines cross. Inches.
 */
export type Plane = {
  readonly id: string;
  /** A point of the reference line, and the level unit direction the plane climbs in from there. */
  readonly foot: Vec2;
  readonly up: Vec2;
  /** Height of the reference line. */
  readonly base: number;
  /** Rise for each inch of run. */
  readonly m: number;
  /** How much higher its rafters' tops lie over the reference line than those of the plane it is compared with; 0 unless said. */
  readonly over?: number;
  /** Where it ends although others of its body are no lower yet: past that the body is the lowest of the rest. */
  readonly till?: Limit;
};

/** What a body ends at besides its own planes: kept where normal · point <= reach. A unit normal. */
export type Limit = { readonly id: string; readonly normal: Vec2; readonly reach: number };

export type Body = {
  readonly id: string;
  readonly planes: readonly Plane[];
  readonly limits: readonly Limit[];
};

/** A line of the plan: a point and a unit direction. */
export type Line = { readonly from: Vec2; readonly way: Vec2 };

/** `at + by · u` along a line. */
type Straight = { readonly at: number; readonly by: number };

export const dot2 = (a: Vec2, b: Vec2): number => a[0] * b[0] + a[1] * b[1];
/** Two level unit directions, by their product. */
export const isSameWay = (product: number): boolean => product > 1 - hair;
export const pointOn = ({ from, way }: Line, u: number): Vec2 => [from[0] + way[0] * u, from[1] + way[1] * u];

/** Level distance in from the plane's reference line. */
export const inFrom = ({ foot, up }: Plane, p: Vec2): number => dot2(up, [p[0] - foot[0], p[1] - foot[1]]);
const baseOf = ({ base, over = 0 }: Plane): number => base + over;
export const heightAt = (plane: Plane, p: Vec2): number => baseOf(plane) + plane.m * inFrom(plane, p);

const inside = (plane: Plane, { from, way }: Line): Straight => ({
  at: inFrom(plane, from),
  by: dot2(plane.up, way),
});
const heightAlong = (plane: Plane, line: Line): Straight => {
  const { at, by } = inside(plane, line);
  return { at: baseOf(plane) + plane.m * at, by: plane.m * by };
};
const less = (a: Straight, b: Straight): Straight => ({ at: a.at - b.at, by: a.by - b.by });

/** What a stretch of a line has to keep to, with what is there where it stops: stays where the straight is 0 or more. */
type Bound = { readonly stop: Stop; readonly keeps: Straight };

/** What ends a stretch: a reference line, a limit, or another plane. */
export type Stop =
  | { readonly what: 'eave'; readonly plane: Plane }
  | { readonly what: 'limit'; readonly limit: Limit }
  | { readonly what: 'plane'; readonly plane: Plane; readonly body: Body };

/** Part of a line, with all that stops it at each end: several where they meet in a point. */
export type Stretch = {
  readonly from: number;
  readonly to: number;
  readonly low: readonly Stop[];
  readonly high: readonly Stop[];
};

/** Nearer than this is the same place. Inches. */
const near = 1e-7;

const open: Stretch = { from: -Infinity, to: Infinity, low: [], high: [] };

/** What is left of a stretch that keeps to a bound as well. */
const kept = (stretch: Stretch | undefined, { stop, keeps: { at, by } }: Bound): Stretch | undefined => {
  if (!stretch) return undefined;
  if (by === 0) return at >= -near ? stretch : undefined;
  const u = -at / by;
  const next = by > 0 ? fromLater(stretch, u, stop) : tillSooner(stretch, u, stop);
  return next.to - next.from > near ? next : undefined;
};

const fromLater = (stretch: Stretch, u: number, stop: Stop): Stretch => {
  if (u > stretch.from + near) return { ...stretch, from: u, low: [stop] };
  return u >= stretch.from - near ? { ...stretch, low: [...stretch.low, stop] } : stretch;
};
const tillSooner = (stretch: Stretch, u: number, stop: Stop): Stretch => {
  if (u < stretch.to - near) return { ...stretch, to: u, high: [stop] };
  return u <= stretch.to + near ? { ...stretch, high: [...stretch.high, stop] } : stretch;
};

const within = (limit: Limit, line: Line): Bound => ({
  stop: { what: 'limit', limit },
  keeps: { at: limit.reach - dot2(limit.normal, line.from), by: -dot2(limit.normal, line.way) },
});

const limitsOf = (body: Body, line: Line): readonly Bound[] =>
  body.limits.map((limit) => within(limit, line));

const tillOf = ({ till }: Plane, line: Line): readonly Bound[] => (till ? [within(till, line)] : []);

const eaveOf = (plane: Plane, line: Line): Bound => ({
  stop: { what: 'eave', plane },
  keeps: inside(plane, line),
});

type At = { readonly line: Line; readonly height: Straight };

/** Under every plane of a body but those given, and those that end somewhere. */
const under = (body: Body, but: readonly Plane[], { line, height }: At): readonly Bound[] =>
  body.planes
    .filter((plane) => plane.till === undefined && !but.includes(plane))
    .map((plane) => ({
      stop: { what: 'plane', plane, body },
      keeps: less(heightAlong(plane, line), height),
    }));

/** Where planes of a body that end somewhere, but those given, lie lower than a height. */
const dips = (body: Body, but: readonly Plane[], { line, height }: At): readonly (Stretch | undefined)[] =>
  body.planes
    .filter((plane) => plane.till !== undefined && !but.includes(plane))
    .map((plane) => {
      const keeps = less(height, heightAlong(plane, line));
      const lower: Bound = { stop: { what: 'plane', plane, body }, keeps };
      return [...tillOf(plane, line), lower].reduce<Stretch | undefined>(kept, open);
    });

/** What keeps to all bounds, without the holes. */
const keptOf = (bounds: readonly Bound[], holes: readonly (Stretch | undefined)[]): readonly Stretch[] => {
  const whole = bounds.reduce<Stretch | undefined>(kept, open);
  return holes.reduce<readonly Stretch[]>(without, whole ? [whole] : []);
};

/** Where another body stands higher than a height along a line. */
const hidden = (body: Body, line: Line, height: Straight): readonly Stretch[] =>
  keptOf(
    [
      ...body.planes.map((plane) => eaveOf(plane, line)),
      ...limitsOf(body, line),
      ...under(body, [], { line, height }),
    ],
    dips(body, [], { line, height }),
  );

/** What is left of stretches where one is taken out of them. */
const without = (stretches: readonly Stretch[], hole: Stretch | undefined): readonly Stretch[] => {
  if (!hole) return stretches;
  return stretches.flatMap((stretch) => {
    if (hole.from >= stretch.to - near || hole.to <= stretch.from + near) return [stretch];
    const before: Stretch = { ...stretch, to: hole.from, high: hole.low };
    const after: Stretch = { ...stretch, from: hole.to, low: hole.high };
    return [before, after].filter(({ from, to }) => to - from > near);
  });
};

/** Where a plane of a body is the roof along a line of the plan, from its reference line up. */
export const alongPlane = (
  line: Line,
  { plane, body }: { readonly plane: Plane; readonly body: Body },
  bodies: readonly Body[],
): readonly Stretch[] => {
  const height = heightAlong(plane, line);
  const own = keptOf(
    [
      eaveOf(plane, line),
      ...limitsOf(body, line),
      ...tillOf(plane, line),
      ...under(body, [plane], { line, height }),
    ],
    dips(body, [plane], { line, height }),
  );
  return bodies
    .filter((other) => other !== body)
    .reduce<readonly Stretch[]>((all, other) => hidden(other, line, height).reduce(without, all), own);
};

/** A plane with the body it belongs to. */
export type Of = { readonly plane: Plane; readonly body: Body };

/** The line of the plan over which two planes are equally high, the way it climbs; level ones run along the first eave. */
export const meeting = (a: Plane, b: Plane): Line | undefined => {
  const by: Vec2 = [a.m * a.up[0] - b.m * b.up[0], a.m * a.up[1] - b.m * b.up[1]];
  const size = Math.sqrt(dot2(by, by));
  if (size < near) return undefined;
  const along: Vec2 = [-by[1] / size, by[0] / size];
  const climbs = a.m * dot2(a.up, along);
  const way: Vec2 = climbs < 0 ? [-along[0], -along[1]] : along;
  const off = heightAt(a, b.foot) - heightAt(b, b.foot);
  const from: Vec2 = [b.foot[0] - (by[0] / size) * (off / size), b.foot[1] - (by[1] / size) * (off / size)];
  return { from, way };
};

/** Where two planes meet on the roof: the stretches of their line that nothing cuts off or hides. */
export const alongMeeting = (
  [a, b]: readonly [Of, Of],
  line: Line,
  bodies: readonly Body[],
): readonly Stretch[] => {
  const height = heightAlong(a.plane, line);
  const but = [a.plane, b.plane];
  const bounds = [a, b].flatMap(({ plane, body }) => [
    eaveOf(plane, line),
    ...limitsOf(body, line),
    ...tillOf(plane, line),
    ...under(body, but, { line, height }),
  ]);
  const own = keptOf(
    bounds,
    [a, b].flatMap(({ body }) => dips(body, but, { line, height })),
  );
  return bodies
    .filter((other) => other !== a.body && other !== b.body)
    .reduce<readonly Stretch[]>((all, other) => hidden(other, line, height).reduce(without, all), own);
};
