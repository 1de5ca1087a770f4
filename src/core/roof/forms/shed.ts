import { gradient } from '../../units/slope';
import type { Eave, RoofForm } from '../form';
import type { ShedPlan } from '../plan';
import type { Body, Limit, Plane } from '../surface';
import { cladOf, gableEnds, inward, rowOf } from './common';

export const shed = (plan: ShedPlan): RoofForm => {
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
  const frame = { body, span: plan.span, past: plan.rakeOverhang, gables: 2, ledger: plan.ledger };
  return { bodies: [body], eaves: [eave], frames: [frame] };
};
