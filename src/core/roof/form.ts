import type { Vec2 } from '../geometry/vector';
import { gradient, type Slope } from '../units/slope';
import type { GablePlan, HipPlan, RoofPlan, ShedPlan } from './plan';
import { heightOver } from './heightOver';
import { endStations, ridgeEndStations } from './hipStations';
import type { Wall } from './side';
import { stations } from './stations';
import type { Body, Limit, Plane } from './surface';

/**
 * A roof as planes over plates. Each eave has a reference face and a plane that rises from it; ridges, hips and valleys are
 * where planes meet. Plans of every kind are expanded to this. Geometry asks no kind after it; only what is bought for an
 * edge or an end is looked up in the plan again: hip stock, a ledger, posts, gable studs.
 */
export type RoofForm = {
  readonly bodies: readonly Body[];
  readonly eaves: readonly Eave[];
  /** How far ridges run past a limit that bodies end at, inches. */
  readonly past: number;
};

export type Eave = {
  readonly side: Wall;
  readonly plane: Plane;
  readonly body: Body;
  /** Level, reference face to the ridge's centre line or the wall behind the ledger, inches. */
  readonly run: number;
  /** Rise for each inch of run. */
  readonly m: number;
  /** Level, reference face to plumb tail cut, inches. */
  readonly overhang: number;
  /** Level cut, from the reference face inward, inches. */
  readonly seat: number;
  /** How far the reference face stands outside the plate: the sheathing, or nothing. Inches. */
  readonly clad: number;
  /** Rafter centres along the eave: x on the long walls, y on the ends. Inches. */
  readonly stations: readonly number[];
};

/** Part of the seat that lies on the plate; the rest is over the sheathing. Inches. */
export const bearingOf = ({ seat, clad }: Pick<Eave, 'seat' | 'clad'>): number => seat - clad;

/** The only place where kinds become planes. */
export const expand = (plan: RoofPlan): RoofForm => {
  if (plan.kind === 'shed') return shed(plan);
  return plan.kind === 'hip' ? hip(plan) : gable(plan);
};

/** How far the reference face stands outside the plate. Inches. */
export const cladOf = (plan: RoofPlan): number => (plan.reference === 'sheathing' ? plan.sheathing : 0);

/** The level way a plane climbs from each wall. */
const inward: Readonly<Record<Wall, Vec2>> = { street: [0, 1], yard: [0, -1], A: [1, 0], B: [-1, 0] };

type Box = { readonly half: number; readonly length: number; readonly clad: number };

/** The plane over one wall of a rectangle of plates, from its reference face. */
const planeOver = (wall: Wall, slope: Slope, { half, length, clad }: Box): Plane => {
  const feet: Readonly<Record<Wall, Vec2>> = {
    street: [0, -(half + clad)],
    yard: [0, half + clad],
    A: [-clad, 0],
    B: [length + clad, 0],
  };
  return { id: wall, foot: feet[wall], up: inward[wall], base: 0, m: gradient(slope) };
};

const gableEnds = (length: number): readonly Limit[] => [
  { id: 'A', normal: [-1, 0], reach: 0 },
  { id: 'B', normal: [1, 0], reach: length },
];

/** Marks along the eaves from gable to gable. */
const rowOf = (plan: GablePlan | ShedPlan): readonly number[] =>
  stations({
    length: plan.length,
    spacing: plan.spacing,
    thickness: plan.rafter.thickness,
    datum: plan.datum,
  });

/**
 * Level runs of both planes to where they come to the same height. Without a side of its own the ridge is in the middle.
 * From equal heights there: m·run = plateHeight + m′·(span − run).
 */
export const gableRuns = (plan: GablePlan): Readonly<Record<'street' | 'yard', number>> => {
  const clad = cladOf(plan);
  if (!plan.yard) return { street: plan.span / 2 + clad, yard: plan.span / 2 + clad };
  const [m, other, over] = [gradient(plan.slope), gradient(plan.yard.slope), plan.span + 2 * clad];
  const street = (plan.yard.plateHeight + other * over) / (m + other);
  return { street, yard: over - street };
};

const gable = (plan: GablePlan): RoofForm => {
  const clad = cladOf(plan);
  const runs = gableRuns(plan);
  const usual = { slope: plan.slope, plateHeight: 0, overhang: plan.overhang, seat: plan.seat };
  const sides = { street: usual, yard: plan.yard ?? usual };
  const planes = (['street', 'yard'] as const).map((wall): Plane & { readonly id: 'street' | 'yard' } => ({
    id: wall,
    foot: [0, wall === 'street' ? -runs.street : runs.yard],
    up: inward[wall],
    base: sides[wall].plateHeight,
    m: gradient(sides[wall].slope),
  }));
  const body: Body = { id: 'main', planes, limits: gableEnds(plan.length) };
  const marks = rowOf(plan);
  const eaves = planes.map((plane) => ({
    side: plane.id,
    plane,
    body,
    run: runs[plane.id],
    m: plane.m,
    overhang: sides[plane.id].overhang,
    seat: sides[plane.id].seat,
    clad,
    stations: marks,
  }));
  return { bodies: [body], eaves, past: plan.rakeOverhang };
};

const shed = (plan: ShedPlan): RoofForm => {
  const clad = cladOf(plan);
  const run = plan.span + clad;
  const plane: Plane = { id: 'street', foot: [0, -run], up: inward.street, base: 0, m: gradient(plan.slope) };
  const wall: Limit = { id: 'wall', normal: [0, 1], reach: 0 };
  const body: Body = { id: 'main', planes: [plane], limits: [...gableEnds(plan.length), wall] };
  const { m } = plane;
  const eave: Eave = {
    side: 'street',
    plane,
    body,
    run,
    m,
    overhang: plan.overhang,
    seat: plan.seat,
    clad,
    stations: rowOf(plan),
  };
  return { bodies: [body], eaves: [eave], past: plan.rakeOverhang };
};

/** Run of the end planes from the reference face to the ridge's end: where they come to the height of the long planes. */
export const endRun = (plan: HipPlan): number => {
  const run = plan.span / 2 + cladOf(plan);
  return plan.slope.rise * plan.endSlope.run === plan.endSlope.rise * plan.slope.run
    ? run
    : (run * gradient(plan.slope)) / gradient(plan.endSlope);
};

/** Seat of the rafters on the ends. Inches. */
export const endSeat = (plan: HipPlan): number => seatFor(plan, gradient(plan.endSlope));

/** Planes that meet over a hip stand equally high over the plate; with another slope that takes another seat. */
const seatFor = (plan: HipPlan, m: number): number => {
  const first = gradient(plan.slope);
  if (m === first) return plan.seat;
  const { depth } = plan.rafter;
  return (heightOver(depth, { m, seat: 0 }) - heightOver(depth, { m: first, seat: plan.seat })) / m;
};

/**
 * How near to the corner a jack can stand, along its eave: any nearer, its hip takes more of it than leaves room for its
 * seat. `along` the eave and up from it, a hip goes so far. Inches.
 */
const shortestJack = (
  { hip: { thickness } }: HipPlan,
  seat: number,
  [along, up]: readonly [number, number],
): number => {
  const taken = ((thickness / 2) * Math.sqrt(along * along + up * up)) / along;
  return ((seat + taken) * along) / up;
};

const hip = (plan: HipPlan): RoofForm => {
  const clad = cladOf(plan);
  const box = { half: plan.span / 2, length: plan.length, clad };
  const long = (['street', 'yard'] as const).map((wall) => planeOver(wall, plan.slope, box));
  const ends = (['A', 'B'] as const).map((wall) => planeOver(wall, plan.endSlope, box));
  const body: Body = { id: 'main', planes: [...long, ...ends], limits: [] };
  const [run, far] = [plan.span / 2 + clad, endRun(plan)];
  const layout = {
    spacing: plan.spacing,
    thickness: plan.rafter.thickness,
    commons: plan.hipTop === 'betweenCommons',
  };
  const marks = ridgeEndStations({
    ...layout,
    from: far - clad,
    to: plan.length + clad - far,
    past: far - shortestJack(plan, plan.seat, [far, run]),
  });
  const across = endStations({
    ...layout,
    past: run - shortestJack(plan, endSeat(plan), [run, far]),
  });
  const eaveOn = (plane: Plane, isEnd: boolean): Eave => ({
    side: plane.id as Wall,
    plane,
    body,
    run: isEnd ? far : run,
    m: plane.m,
    overhang: plan.overhang,
    seat: seatFor(plan, plane.m),
    clad,
    stations: isEnd ? across : marks,
  });
  return {
    bodies: [body],
    eaves: [...long.map((one) => eaveOn(one, false)), ...ends.map((one) => eaveOn(one, true))],
    past: 0,
  };
};
