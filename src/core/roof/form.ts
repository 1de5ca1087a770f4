import { gradient } from '../units/slope';
import type { RoofPlan } from './plan';
import type { Side } from './side';

/**
 * A roof as planes over plates. Each eave has a reference face and a plane that rises from it; ridges are where planes
 * meet. Plans of every kind are expanded to this, and nothing after it asks what kind it was.
 */
export type RoofForm = {
  readonly eaves: readonly Eave[];
  readonly ridge: { readonly from: number; readonly to: number };
  /** Along the eaves, from gable to gable, inches. */
  readonly length: number;
};

export type Eave = {
  readonly side: Side;
  /** Level, reference face to ridge centre line, inches. */
  readonly run: number;
  /** Rise for each inch of run. */
  readonly m: number;
  /** Level, reference face to plumb tail cut, inches. */
  readonly overhang: number;
  /** Level cut, from the reference face inward, inches. */
  readonly seat: number;
  /** How far the reference face stands outside the plate: the sheathing, or nothing. Inches. */
  readonly clad: number;
};

/** Part of the seat that lies on the plate; the rest is over the sheathing. Inches. */
export const bearingOf = ({ seat, clad }: Eave): number => seat - clad;

/** The only place that knows kinds. */
export const expand = (plan: RoofPlan): RoofForm => {
  const clad = plan.reference === 'sheathing' ? plan.sheathing : 0;
  const eave = (side: Side): Eave => ({
    side,
    run: plan.span / 2 + clad,
    m: gradient(plan.slope),
    overhang: plan.overhang,
    seat: plan.seat,
    clad,
  });
  return {
    eaves: [eave('street'), eave('yard')],
    ridge: { from: -plan.rakeOverhang, to: plan.length + plan.rakeOverhang },
    length: plan.length,
  };
};
