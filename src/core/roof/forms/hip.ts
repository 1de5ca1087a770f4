import { gradient, type Slope } from '../../units/slope';
import type { Eave, RoofForm } from '../form';
import { endStations, ridgeEndStations } from '../hipStations';
import type { HipPlan } from '../plan';
import type { Wall } from '../side';
import type { Body, Plane } from '../surface';
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

export const hip = (plan: HipPlan): RoofForm => {
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
    frames: [
      {
        body,
        span: plan.span,
        past: 0,
        gables: 0,
        ridge: plan.ridge,
        hip: { ...plan.hip, top: plan.hipTop, fit: plan.hipFit },
      },
    ],
  };
};
