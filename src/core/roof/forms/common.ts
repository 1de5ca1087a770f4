import type { Vec2 } from '../../geometry/vector';
import { gradient } from '../../units/slope';
import { heightOver } from '../heightOver';
import type { GablePlan, GambrelPlan, RoofPlan, ShedPlan } from '../plan';
import type { Wall } from '../side';
import { stations } from '../stations';
import type { Limit } from '../surface';

/** How far the reference face stands outside the plate. Inches. */
export const cladOf = (plan: Pick<RoofPlan, 'reference' | 'sheathing'>): number =>
  plan.reference === 'sheathing' ? plan.sheathing : 0;

/** The level way a plane climbs from each wall. */
export const inward: Readonly<Record<Wall, Vec2>> = { street: [0, 1], yard: [0, -1], A: [1, 0], B: [-1, 0] };

export const gableEnds = (length: number): readonly Limit[] => [
  { id: 'A', normal: [-1, 0], reach: 0 },
  { id: 'B', normal: [1, 0], reach: length },
];

/** Marks along the eaves from gable to gable. */
export const rowOf = (plan: GablePlan | ShedPlan | GambrelPlan): readonly number[] =>
  stations({
    length: plan.length,
    spacing: plan.spacing,
    thickness: plan.rafter.thickness,
    datum: plan.datum,
    ...(plan.kind === 'shed' && plan.between && { clearance: plan.between.clearance }),
  });

/** Planes that meet over a hip or valley stand equally high over the plate; with another slope that takes another seat. */
export const seatFor = (
  plan: Pick<RoofPlan, 'slope' | 'rafter'> & { readonly seat: number },
  m: number,
): number => {
  const first = gradient(plan.slope);
  if (m === first) return plan.seat;
  const { depth } = plan.rafter;
  return (heightOver(depth, { m, seat: 0 }) - heightOver(depth, { m: first, seat: plan.seat })) / m;
};
