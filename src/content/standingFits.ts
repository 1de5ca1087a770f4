import { cladOf } from '../core/roof/forms/common';
import type { GablePlan, Standing } from '../core/roof/plan';
import { toRidgeFace } from '../core/roof/standing';
import { hair } from '../core/units/hair';
import { gradient } from '../core/units/slope';
import { complaint, type Complaint } from './complaint';
import { slopeLimits } from './roofLimits';
import type { RoofFile } from './roofSchema';
import { when, type Show } from './saidSizes';
import { at, said } from './shape';

/** What does not go together where a new roof goes on from one that stands. */

/** Keys that what was measured there gives already, and parts that are not figured beside it. */
const given: Readonly<Record<string, string>> = {
  seat: 'left out: the height above the plate gives it',
  datum: "left out: the layout goes on from the standing roof's last rafter",
  yard: 'left out: both sides of a roof that goes on from another are alike',
  rake: 'left out: rake rafters are not figured yet where one end goes on from another roof',
  dormers: 'left out: dormers are not figured yet in a roof that goes on from another',
};

export const besideStanding = (file: RoofFile): readonly Complaint[] =>
  file.standing === undefined
    ? []
    : Object.entries(given).flatMap(([key, accepted]) => {
        const value = at(file, [key]);
        return when(value !== undefined, () =>
          complaint(key, `is ${said(value)} beside a standing roof`, accepted),
        );
      });

export const standingFits = (plan: GablePlan, show: Show): readonly Complaint[] => {
  const { standing } = plan;
  if (!standing) return [];
  const measured = slopeFits(plan, standing, show);
  return measured.length > 0
    ? measured
    : [...seatFits(plan, standing, show), ...layoutFits(plan, standing, show)];
};

const slopeFits = (plan: GablePlan, standing: Standing, show: Show): readonly Complaint[] => {
  const run = toRidgeFace({ span: plan.span, standing });
  const { ridgeTop, heightAbovePlate, ridgeThickness } = standing;
  if (ridgeTop === undefined) return [];
  if (run <= hair)
    return [
      complaint(
        'standing.ridgeThickness',
        `is ${show(ridgeThickness)}`,
        `less than the span, ${show(plan.span)}`,
      ),
    ];
  const m = (ridgeTop - heightAbovePlate) / run;
  const top = (by: number): string => show(heightAbovePlate + by * run);
  return when(m < slopeLimits.min - hair || m > slopeLimits.max + hair, () =>
    complaint(
      'standing.ridgeTop',
      `is ${show(ridgeTop)}, ${show(ridgeTop - heightAbovePlate)} over the rafters at the plate in a run of ${show(run)}`,
      `${top(slopeLimits.min)} to ${top(slopeLimits.max)}: a slope of 1 to 36 in 12`,
    ),
  );
};

/** The seat that follows has to lie on the plate and leave the rafter whole. */
const seatFits = (plan: GablePlan, { heightAbovePlate }: Standing, show: Show): readonly Complaint[] => {
  const clad = cladOf(plan);
  const m = gradient(plan.slope);
  const plumb = plan.rafter.depth * Math.sqrt(1 + m * m);
  const bearing = plan.seat - clad;
  const least = Math.max(plumb - plan.plate.width * m, clad * m);
  return when(
    bearing <= hair || bearing > plan.plate.width + hair || heightAbovePlate <= clad * m + hair,
    () =>
      complaint(
        'standing.heightAbovePlate',
        `is ${show(heightAbovePlate)} and asks for ${show(bearing)} of seat on a plate of ${show(plan.plate.width)}`,
        least < plumb
          ? `${show(least)} to less than ${show(plumb)} with these rafters at this slope`
          : `deeper rafters, or a plate of more than ${show(bearing)}`,
      ),
  );
};

/** The standing rafter stays behind the joint line, the first new one before it. */
const layoutFits = (
  { rafter: { thickness }, spacing }: GablePlan,
  { lastRafter }: Standing,
  show: Show,
): readonly Complaint[] => {
  const [least, most] = [thickness / 2, spacing - thickness / 2];
  return when(least <= most && (lastRafter < least - hair || lastRafter > most + hair), () =>
    complaint(
      'standing.lastRafter',
      `is ${show(lastRafter)} behind the joint line`,
      `${show(least)} to ${show(most)}, that both rafters stand clear of it`,
    ),
  );
};
