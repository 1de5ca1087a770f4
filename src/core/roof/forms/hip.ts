import { gradient, type Slope } from '../../units/slope';
import type { Eave, Frame, RoofForm } from '../form';
import { endStations, gabletStations, ridgeEndStations, type RowEnd } from '../hipStations';
import type { HipPlan } from '../plan';
import type { Wall } from '../side';
import { dot2, type Body, type Plane } from '../surface';
import type { Vec2 } from '../../geometry/vector';
import { cladOf, inward, seatFor } from './common';

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

/** Run of the end planes from the reference face to the ridge's end: where they come to the height of the long planes. */
export const endRun = (plan: HipPlan): number => {
  const run = plan.span / 2 + cladOf(plan);
  return plan.slope.rise * plan.endSlope.run === plan.endSlope.rise * plan.slope.run
    ? run
    : (run * gradient(plan.slope)) / gradient(plan.endSlope);
};

/** Seat of the rafters on the ends. Inches. */
export const endSeat = (plan: HipPlan): number => seatFor(plan, gradient(plan.endSlope));

/** Whether a small gable ends the plane over this wall. */
const isCut = ({ gablet }: HipPlan, wall: Wall): boolean =>
  gablet !== undefined && gablet.ends.some((end) => end === wall);

/** The plane over an end wall, as far as its small gable. */
const endPlane = (plan: HipPlan, wall: 'A' | 'B', box: Box): Plane => {
  const plane = planeOver(wall, plan.endSlope, box);
  if (!plan.gablet || !isCut(plan, wall)) return plane;
  const { foot, up } = plane;
  return { ...plane, till: { id: 'gablet', normal: up, reach: dot2(up, foot) + plan.gablet.back } };
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

/** Rafters along the long walls: from the ends of the ridge, or from the pairs at small gables, both ways. */
const longMarks = (plan: HipPlan, far: number): readonly number[] => {
  const clad = cladOf(plan);
  const { spacing, hipTop, gablet } = plan;
  const { thickness } = plan.rafter;
  const near = shortestJack(plan, plan.seat, [far, plan.span / 2 + clad]);
  const commons = hipTop === 'betweenCommons';
  if (!gablet)
    return ridgeEndStations({
      spacing,
      thickness,
      commons,
      from: far - clad,
      to: plan.length + clad - far,
      past: far - near,
    });
  const endAt = (wall: 'A' | 'B'): RowEnd => {
    const cut = isCut(plan, wall);
    const reach = cut ? gablet.back + thickness / 2 : far;
    return {
      at: wall === 'A' ? reach - clad : plan.length + clad - reach,
      rafters: cut ? (gablet.doubled ? 2 : 1) : commons ? 1 : 0,
      past: reach - near,
      clear: cut ? thickness + gablet.header.thickness : 0,
    };
  };
  return gabletStations({ spacing, thickness }, [endAt('A'), endAt('B')]);
};

/** The body's frame, with what a small gable adds. */
const frameFor = (plan: HipPlan, body: Body): Frame => ({
  body,
  span: plan.span,
  past: plan.gablet ? (plan.rakeOverhang ?? 0) : 0,
  gables: plan.gablet?.ends.length ?? 0,
  ridge: plan.ridge,
  hip: { ...plan.hip, top: plan.hipTop, fit: plan.hipFit },
  ...(plan.gablet && {
    header: plan.gablet.header,
    twins: plan.gablet.doubled ? plan.gablet.ends.length : 0,
  }),
});

export const hip = (plan: HipPlan): RoofForm => {
  const clad = cladOf(plan);
  const box = { half: plan.span / 2, length: plan.length, clad };
  const long = (['street', 'yard'] as const).map((wall) => planeOver(wall, plan.slope, box));
  const ends = (['A', 'B'] as const).map((wall) => endPlane(plan, wall, box));
  const body: Body = { id: 'main', planes: [...long, ...ends], limits: [] };
  const [run, far] = [plan.span / 2 + clad, endRun(plan)];
  const marks = longMarks(plan, far);
  const acrossWith = (commons: boolean): readonly number[] =>
    endStations({
      spacing: plan.spacing,
      thickness: plan.rafter.thickness,
      commons,
      past: run - shortestJack(plan, endSeat(plan), [run, far]),
    });
  const between = plan.hipTop === 'betweenCommons';
  const across = acrossWith(between);
  const toHeader = between ? across : acrossWith(true);
  const eaveOn = (plane: Plane, reach: number, stations: readonly number[]): Eave => ({
    side: plane.id as Wall,
    plane,
    body,
    run: reach,
    m: plane.m,
    overhang: plan.overhang,
    seat: seatFor(plan, plane.m),
    clad,
    stations,
  });
  return {
    bodies: [body],
    eaves: [
      ...long.map((plane) => eaveOn(plane, run, marks)),
      ...ends.map((plane) =>
        plane.till && plan.gablet ? eaveOn(plane, plan.gablet.back, toHeader) : eaveOn(plane, far, across),
      ),
    ],
    frames: [frameFor(plan, body)],
  };
};
