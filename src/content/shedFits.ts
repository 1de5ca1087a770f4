import { shedReach } from '../core/roof/forms/shed';
import { cladOf } from '../core/roof/forms/common';
import type { ShedPlan } from '../core/roof/plan';
import { hair } from '../core/units/hair';
import { gradient } from '../core/units/slope';
import { complaint, type Complaint } from './complaint';
import type { RoofFile } from './roofSchema';
import { when, type Show } from './saidSizes';
import { at, said } from './shape';

/** What does not go together in a shed: what its upper ends come to, and the walls beside it. */

/** What carries the upper ends, and keys that mean nothing between walls. */
export const shedKeys = (file: RoofFile): readonly Complaint[] => {
  if (file.kind !== 'shed') return [];
  return [
    ...when(file.ledger === undefined && file.highPlate === undefined, () =>
      complaint('ledger', 'is missing', '{"thickness", "depth"}, or highPlate for a second, higher wall'),
    ),
    ...when(file.ledger !== undefined && file.highPlate !== undefined, () =>
      complaint('highPlate', 'stands beside a ledger', 'one of the two'),
    ),
    ...when(file.highPlate !== undefined && file.rake !== undefined, () =>
      complaint('rake', 'is not figured yet over a high plate', 'left out, or with a ledger'),
    ),
    ...(file.between ? ['rakeOverhang', 'rake', 'gableStuds'] : []).flatMap((key) => {
      const value = at(file, [key]);
      return when(value !== undefined, () =>
        complaint(key, `is ${said(value)} between walls`, 'left out: there is no gable'),
      );
    }),
  ];
};

export const shedFits = (plan: ShedPlan, show: Show): readonly Complaint[] => [
  ...roomBetween(plan, show),
  ...highPlateFits(plan, show),
];

const roomBetween = (
  { between, length, rafter: { thickness } }: ShedPlan,
  show: Show,
): readonly Complaint[] => {
  const most = (length - 2 * thickness) / 2;
  return when(between !== undefined && most >= 0 && between.clearance > most + hair, () =>
    complaint(
      'between.clearance',
      `is ${show(between?.clearance ?? 0)} and leaves no room for two rafters`,
      `at most ${show(most)}`,
    ),
  );
};

const highPlateFits = (plan: ShedPlan, show: Show): readonly Complaint[] => {
  const { highPlate, rafter, seat, span } = plan;
  if (!highPlate) return [];
  const m = gradient(plan.slope);
  const most = Math.min(highPlate.width, (rafter.depth * Math.sqrt(1 + m * m)) / m);
  const bearing = seat - cladOf(plan);
  const cutThrough = highPlate.seat >= (rafter.depth * Math.sqrt(1 + m * m)) / m - hair;
  return [
    ...when(highPlate.seat > highPlate.width + hair || cutThrough, () =>
      complaint(
        'highPlate.seat',
        `is ${show(highPlate.seat)} ${cutThrough ? 'and cuts the rafter through' : `on a plate of ${show(highPlate.width)}`}`,
        `${cutThrough ? 'less than' : 'at most'} ${show(most)}`,
      ),
    ),
    ...when(shedReach(plan) - bearing <= hair, () =>
      complaint(
        'span',
        `is ${show(span)} and leaves no rafter between its two seats`,
        `more than ${show(highPlate.width + Math.max(0, bearing))}`,
      ),
    ),
  ];
};
