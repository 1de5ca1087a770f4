import { gradient } from '../../units/slope';
import type { Frame, RoofForm } from '../form';
import type { GablePlan } from '../plan';
import { standingLimit, standingRow } from '../standing';
import type { Body, Limit, Plane } from '../surface';
import { cladOf, gableEnds, inward, rowOf } from './common';
import { wingOf } from './wing';

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

const endsOf = ({ length, standing }: GablePlan): readonly Limit[] =>
  gableEnds(length).map((limit) => (limit.id === standing?.end ? { ...limit, id: standingLimit } : limit));

export const gable = (plan: GablePlan): RoofForm => {
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
  const body: Body = { id: 'main', planes, limits: endsOf(plan) };
  const row = plan.standing ? standingRow({ ...plan, standing: plan.standing }) : { stations: rowOf(plan) };
  const eaves = planes.map((plane) => ({
    side: plane.id,
    plane,
    body,
    run: runs[plane.id],
    m: plane.m,
    overhang: sides[plane.id].overhang,
    seat: sides[plane.id].seat,
    clad,
    ...row,
  }));
  const main: Frame = {
    body,
    span: plan.span,
    past: plan.rakeOverhang,
    gables: plan.standing ? 1 : 2,
    ridge: plan.ridge,
  };
  const wings = (plan.wings ?? []).map((wing, i, all) =>
    wingOf(plan, {
      wing,
      host: main,
      wall: runs[wing.side] - clad,
      at: sides[wing.side],
      name: all.length > 1 ? `wing${i + 1}` : 'wing',
    }),
  );
  return {
    bodies: [body, ...wings.map(({ frame }) => frame.body)],
    eaves: [...eaves, ...wings.flatMap((wing) => wing.eaves)],
    frames: [main, ...wings.map(({ frame }) => frame)],
  };
};
