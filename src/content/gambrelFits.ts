import { cladOf } from '../core/roof/forms/common';
import { gambrelRuns, standingAt } from '../core/roof/forms/gambrel';
import { miterOf } from '../core/roof/miter';
import type { GambrelPlan } from '../core/roof/plan';
import { stations } from '../core/roof/stations';
import { clearBays } from '../core/roof/bays';
import { hair } from '../core/units/hair';
import { gradient } from '../core/units/slope';
import { shortInches } from '../core/units/lengthText';
import { complaint, type Complaint } from './complaint';
import { slopeLimits } from './roofLimits';
import { when, type Show } from './saidSizes';

/** What does not go together in a gambrel: its two slopes, where they meet, and what holds them there. */

/** Slopes nearer to each other than this have no break that could be snapped. Rise over run; ours. */
const leastBend = 1e-4;

export const gambrelFits = (plan: GambrelPlan, show: Show): readonly Complaint[] => {
  const slopes = slopeFits(plan);
  if (slopes.length > 0) return slopes;
  const inside = breakInside(plan, show);
  if (inside.length > 0) return inside;
  return plan.breakOn.what === 'purlin' ? purlinFits(plan, show) : gussetFits(plan, show);
};

const slopeFits = ({ slope, upperSlope }: GambrelPlan): readonly Complaint[] => {
  const [m, flat] = [gradient(slope), gradient(upperSlope)];
  // Only a half circle leads here: a slope from the file was refused before.
  if (flat < slopeLimits.min - hair)
    return [
      complaint(
        'slope.rise',
        `makes ${shortInches(12 * m)} in 12, too flat for a half circle`,
        `at least ${shortInches((12 * (1 + slopeLimits.min)) / (1 - slopeLimits.min))} in 12`,
      ),
    ];
  return when(m - flat < leastBend, () =>
    complaint(
      'upperSlope.rise',
      `makes ${shortInches(12 * flat)} in 12 over ${shortInches(12 * m)} in 12`,
      'a slope flatter than the lower one; with one slope it is a gable',
    ),
  );
};

/** Room for a lower rafter between its seat, or a block, and the break, and for an upper one from there to the ridge. */
const breakInside = (plan: GambrelPlan, show: Show): readonly Complaint[] => {
  const { rafter, ridge, breakOn } = plan;
  const clad = cladOf(plan);
  const { lower, upper } = gambrelRuns(plan);
  const least = Math.max(plan.seat, clad + rafter.thickness);
  const taken = breakOn.what === 'purlin' ? Math.max(breakOn.seat, breakOn.purlin.thickness) : 0;
  const most = lower + upper - Math.max(taken, rafter.thickness) - ridge.thickness / 2;
  const fits = lower > least + hair && lower < most - hair;
  return when(!fits, () =>
    complaint(
      'breakIn',
      `is ${show(lower)}`,
      most > least
        ? `more than ${show(least)} and less than ${show(most)} on a span of ${show(plan.span)}`
        : `a span of more than ${show(2 * (least + lower + upper - most - clad))}`,
    ),
  );
};

const purlinFits = (plan: GambrelPlan, show: Show): readonly Complaint[] => {
  if (plan.breakOn.what !== 'purlin') return [];
  const { purlin, seat } = plan.breakOn;
  const { depth } = plan.rafter;
  const flat = gradient(plan.upperSlope);
  const top = plan.breakIn * gradient(plan.slope) + standingAt(plan).lift;
  const most = (depth * Math.sqrt(1 + flat * flat)) / flat;
  return [
    ...when(seat > purlin.thickness + hair, () =>
      complaint(
        'purlin.seat',
        `is ${show(seat)} on a purlin of ${show(purlin.thickness)}`,
        `at most ${show(purlin.thickness)}`,
      ),
    ),
    ...when(seat >= most - hair, () =>
      complaint('purlin.seat', `is ${show(seat)} and cuts the rafter through`, `less than ${show(most)}`),
    ),
    ...when(top - purlin.depth <= hair, () =>
      complaint(
        'purlin.depth',
        `is ${show(purlin.depth)} and reaches down to the plates: the purlin's top is ${show(top)} over them`,
        `less than ${show(Math.max(0, top))}, or a break further up`,
      ),
    ),
  ];
};

/** Past the miter's lower end, and short of the seats below, the blocks over them and the ridge above. */
const gussetFits = (plan: GambrelPlan, show: Show): readonly Complaint[] => {
  if (plan.breakOn.what !== 'gussets') return [];
  const { thickness, reach } = plan.breakOn;
  const { rafter, ridge, seat } = plan;
  const [steep, flat] = [gradient(plan.slope), gradient(plan.upperSlope)];
  const { lower, upper } = gambrelRuns(plan);
  const { half } = miterOf({ steep, flat, depth: rafter.depth });
  const least = (rafter.depth * half.rise) / half.run;
  const most = Math.min(
    (lower - Math.max(seat, cladOf(plan) + rafter.thickness)) * Math.sqrt(1 + steep * steep),
    (upper - ridge.thickness / 2) * Math.sqrt(1 + flat * flat) - rafter.depth * flat,
  );
  const row = stations({
    length: plan.length,
    spacing: plan.spacing,
    thickness: rafter.thickness,
    datum: plan.datum,
  });
  const bay = Math.min(...clearBays(row, rafter.thickness));
  return [
    ...when(reach <= least + hair || reach > most + hair, () =>
      most > least
        ? complaint(
            'gussets.reach',
            `is ${show(reach)}`,
            `more than ${show(least)} and at most ${show(most)} on these rafters`,
          )
        : complaint(
            'breakIn',
            `is ${show(lower)} and leaves rafters too short for gussets`,
            'longer rafters, shallower ones, or a purlin',
          ),
    ),
    ...when(2 * thickness > bay + hair, () =>
      complaint(
        'gussets.thickness',
        `is ${show(thickness)} on both sides of a bay of ${show(bay)}`,
        `at most ${show(bay / 2)}`,
      ),
    ),
  ];
};
