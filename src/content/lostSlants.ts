import { figure } from '../core/roof/figure';
import type { GablePlan } from '../core/roof/plan';
import { hair } from '../core/units/hair';
import { complaint, type Complaint } from './complaint';
import type { Show } from './saidSizes';

/** Valleys so thick that what they meet leaves nothing of one: known only when all of them are figured. */
export const lostSlants = (plan: GablePlan, show: Show): readonly Complaint[] => {
  const wings = plan.wings ?? [];
  if (wings.length === 0) return [];
  const lost = (figure(plan).valleys ?? []).find(({ bodyLength }) => bodyLength <= hair);
  if (!lost) return [];
  const thickest = wings.reduce(
    (best, { valley }, i) => (valley.thickness > (wings[best]?.valley.thickness ?? 0) ? i : best),
    0,
  );
  return [
    complaint(
      `wings.${thickest}.valley.thickness`,
      `is ${show(wings[thickest]?.valley.thickness ?? 0)} and leaves no valley rafter between what it meets`,
      'a valley of thinner stock, or a wider wing',
    ),
  ];
};
