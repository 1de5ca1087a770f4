import type { RoofForm } from './form';
import { gable } from './forms/gable';
import { gambrel } from './forms/gambrel';
import { hip } from './forms/hip';
import { shed } from './forms/shed';
import { stepped } from './forms/stepped';
import type { RoofPlan } from './plan';

/** The only place where kinds become planes. */
export const expand = (plan: RoofPlan): RoofForm => {
  if (plan.kind === 'shed') return shed(plan);
  if (plan.kind === 'gambrel') return gambrel(plan);
  if (plan.kind === 'stepped') return stepped(plan);
  return plan.kind === 'hip' ? hip(plan) : gable(plan);
};
