import { gradient } from '../../units/slope';
import type { AtBreak, Eave, RoofForm } from '../form';
import { heightOver } from '../heightOver';
import { miterOf } from '../miter';
import type { GambrelPlan } from '../plan';
import type { Body, Plane } from '../surface';
import { cladOf, gableEnds, inward, rowOf } from './common';

/** Level runs of a side: from the reference face to the break, and from the break to the ridge's centre line. */
export const gambrelRuns = (plan: GambrelPlan): Readonly<Record<'lower' | 'upper', number>> => ({
  lower: plan.breakIn,
  upper: plan.span / 2 + cladOf(plan) - plan.breakIn,
});

/**
 * Upper planes start where the lower ones come to the break, so that the top edges of both meet over that line. What the
 * upper rafters bear on there follows from how high they stand over their own seat.
 */
export const standingAt = (plan: GambrelPlan): AtBreak => {
  const { depth } = plan.rafter;
  const { breakOn } = plan;
  const over = heightOver(depth, { m: gradient(plan.slope), seat: plan.seat });
  const lift = over - heightOver(depth, { m: gradient(plan.upperSlope), seat: upperSeat(plan) });
  return breakOn.what === 'purlin' ? { lift, purlin: breakOn.purlin } : { lift };
};

/** Of the upper rafters on a purlin; mitered ones have none. Inches. */
const upperSeat = ({ breakOn }: GambrelPlan): number => (breakOn.what === 'purlin' ? breakOn.seat : 0);

export const gambrel = (plan: GambrelPlan): RoofForm => {
  const clad = cladOf(plan);
  const runs = gambrelRuns(plan);
  const [m, flat] = [gradient(plan.slope), gradient(plan.upperSlope)];
  const planes = (['street', 'yard'] as const).flatMap((wall): readonly Plane[] => {
    const out = wall === 'street' ? -1 : 1;
    return [
      {
        id: `${wall}.lower`,
        foot: [0, out * (runs.lower + runs.upper)],
        up: inward[wall],
        base: 0,
        m,
      },
      { id: `${wall}.upper`, foot: [0, out * runs.upper], up: inward[wall], base: runs.lower * m, m: flat },
    ];
  });
  const body: Body = { id: 'main', planes, limits: gableEnds(plan.length) };
  const stations = rowOf(plan);
  const inside = miterOf({ steep: m, flat, depth: plan.rafter.depth }).inside;
  const { breakOn } = plan;
  const [till, from] = breakOn.what === 'purlin' ? [0, breakOn.purlin.thickness] : [inside, inside];
  const lower = {
    part: 'lower' as const,
    run: runs.lower,
    beyond: runs.upper,
    overhang: plan.overhang,
    seat: plan.seat,
    clad,
    open: [clad, runs.lower + till] as const,
  };
  const upper = {
    part: 'upper' as const,
    run: runs.upper,
    overhang: 0,
    seat: upperSeat(plan),
    clad: 0,
    stands: standingAt(plan),
    open: [from, runs.upper] as const,
  };
  const eaves = planes.map((plane, i): Eave => {
    const side = i < 2 ? 'street' : 'yard';
    return { side, plane, body, m: plane.m, stations, ...(i % 2 === 0 ? lower : upper) };
  });
  return {
    bodies: [body],
    eaves,
    frames: [{ body, span: plan.span, past: plan.rakeOverhang, gables: 2, ridge: plan.ridge }],
  };
};
