import { hair } from '../../units/hair';
import { gradient } from '../../units/slope';
import type { Eave, Frame, HostSide, Opening } from '../form';
import { heightOver } from '../heightOver';
import type { GableDormer, GablePlan } from '../plan';
import { signOf } from '../side';
import type { Body, Plane } from '../surface';
import { cladOf, inward, seatFor } from './common';
import { fromGable } from './wing';

/**
 * A gable dormer is a small gable whose ridge and valleys come to a header in one plane of the main roof. With side walls it
 * has plates of its own, flush with the outer trimmers; without them its planes come down to the main roof at its gable, over
 * the middles of the inner trimmers. The lower ends of its valleys are cut to those trimmers.
 */
export const openingOf = (plan: GablePlan, dormer: GableDormer, host: HostSide): Opening => {
  const { at, width, walls } = dormer;
  const { thickness } = plan.rafter;
  const half = width / 2;
  const front = dormer.front + cladOf(plan);
  const m = gradient(dormer.slope);
  const [run, outside] = walls ? [half + cladOf(plan), half] : [half, half + 1.5 * thickness];
  const high = walls ? walls.top - host.over : 0;
  const foot = walls ? (high + heightOver(plan.rafter.depth, { m, seat: walls.seat })) / host.m : front;
  const beside = [outside - thickness / 2, outside - 1.5 * thickness] as const;
  const face = signOf(dormer.side) * (host.run - front - thickness / 2);
  return {
    plan: dormer,
    host,
    from: at - outside,
    to: at + outside,
    trimmers: [at - beside[0], at - beside[1], at + beside[1], at + beside[0]],
    faces: [at - outside + 2 * thickness, at + outside - 2 * thickness],
    covers: [at - run, at + run],
    inner: [],
    front,
    foot,
    meet: foot + (run * m) / host.m,
    ...(walls ? { plates: high / host.m } : { face }),
  };
};

/** Height and slope of its rafters: without plates as high over the line where they come down as the main ones over theirs. */
const standsOn = (
  plan: GablePlan,
  { plan: { slope, walls, side }, host, front }: Opening,
): Pick<Eave, 'seat' | 'overhang' | 'clad'> & Pick<Plane, 'base' | 'm' | 'over'> => {
  const m = gradient(slope);
  if (walls) {
    const over = heightOver(plan.rafter.depth, { m, seat: walls.seat }) - host.over;
    const { overhang, seat } = walls;
    return { m, base: host.base + walls.top, over, overhang, seat, clad: cladOf(plan) };
  }
  const main = side === 'yard' && plan.yard ? plan.yard : plan;
  const seat = seatFor({ slope: main.slope, seat: main.seat, rafter: plan.rafter }, m);
  return { m, base: host.base + host.m * front, seat, overhang: 0, clad: 0 };
};

/** Stations along its eaves beside which tails would come down into the main rafters. */
const bareOf = (
  plan: GablePlan,
  { plan: { walls, side }, host, foot }: Opening,
  m: number,
): Pick<Eave, 'bare'> => {
  if (!walls) return {};
  const plumb = plan.rafter.depth * Math.sqrt(1 + m * m);
  const from = foot - (m * walls.overhang + plumb) / host.m - plan.rafter.thickness / 2 - hair;
  const sign = signOf(side);
  const ends = [sign * (host.run - from), -sign * host.run] as const;
  return { bare: [[Math.min(...ends), Math.max(...ends)]] };
};

type Place = { readonly opening: Opening; readonly name: string; readonly host: Frame };

export const gableDormerOf = (
  plan: GablePlan,
  { opening, name, host }: Place,
): { readonly frame: Frame; readonly eaves: readonly Eave[] } => {
  const { plan: dormer, covers, front } = opening;
  const { m, base, over = 0, ...cut } = standsOn(plan, opening);
  const sign = signOf(dormer.side);
  const gable = opening.host.run - front;
  const planes = (['A', 'B'] as const).map((wall, i): Plane & { readonly id: string } => ({
    id: `${name}.${wall}`,
    foot: [covers[i] ?? 0, 0],
    up: inward[wall],
    base,
    m,
    over,
  }));
  const body: Body = {
    id: name,
    planes,
    limits: [
      { id: 'gable', normal: [0, sign], reach: gable },
      { id: 'host', normal: [0, -sign], reach: 0 },
    ],
  };
  const marks = fromGable(plan, gable).map((d) => sign * (gable - d));
  const stations = sign > 0 ? [...marks].reverse() : marks;
  const eaves = planes.map((plane, i): Eave => ({
    side: i === 0 ? 'A' : 'B',
    plane,
    body,
    run: (covers[1] - covers[0]) / 2,
    m,
    ...cut,
    stations,
    ...bareOf(plan, opening, m),
    opening,
  }));
  const frame: Frame = {
    body,
    name,
    span: dormer.width,
    past: dormer.rakeOverhang,
    gables: 0,
    ridge: dormer.ridge,
    wing: { host, valley: dormer.valley, framing: 'header', opening, isLong: () => false },
  };
  return { frame, eaves };
};
