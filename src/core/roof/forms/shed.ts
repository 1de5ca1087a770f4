import { gradient } from '../../units/slope';
import type { Eave, Frame, RoofForm } from '../form';
import type { ShedPlan } from '../plan';
import type { Body, Limit, Plane } from '../surface';
import { cladOf, gableEnds, inward, rowOf } from './common';

/** From the outside of the low plate to the face behind the ledger, or to the inner face of the high plate. Inches. */
export const shedReach = ({ span, highPlate }: ShedPlan): number => span - (highPlate?.width ?? 0);

export const shed = (plan: ShedPlan): RoofForm => {
  const clad = cladOf(plan);
  const run = shedReach(plan) + clad;
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
  const frame: Frame = {
    body,
    span: plan.span,
    past: plan.rakeOverhang,
    gables: plan.between ? 0 : 2,
    ...(plan.ledger && { ledger: plan.ledger }),
    ...(plan.highPlate && { highPlate: highPlateOf(plan.highPlate, clad) }),
  };
  return { bodies: [body], eaves: [eave], frames: [frame] };
};

const highPlateOf = (
  { width, seat, overhang }: NonNullable<ShedPlan['highPlate']>,
  clad: number,
): NonNullable<Frame['highPlate']> => ({ width, seat, past: width + clad + overhang });
