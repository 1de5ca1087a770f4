import { bearingOf } from '../core/roof/form';
import { cladOf } from '../core/roof/forms/common';
import { gableRuns } from '../core/roof/forms/gable';
import { postsUnder } from '../core/roof/forms/stepped';
import { gabletFits } from './gabletFits';
import { when, type Show } from './saidSizes';
import { dormerFits } from './dormerFits';
import { gambrelFits } from './gambrelFits';
import { lostSlants } from './lostSlants';
import { shedFits } from './shedFits';
import { standingFits } from './standingFits';
import { steppedFits } from './steppedFits';
import { wingFits } from './wingFits';
import { endRun, endSeat } from '../core/roof/forms/hip';
import { planeOverPlate, topOf, type RoofPlane } from '../core/roof/planes';
import { asSection, sectionKey } from '../core/roof/runCautions';
import { planesOf } from '../core/roof/settled';
import type { GablePlan, HipPlan, RoofPlan } from '../core/roof/plan';
import { lookoutsOf, rakeOf, reachOf } from '../core/roof/rake';
import { holesHeld, webBetweenHoles } from '../core/roof/vents';
import { hair } from '../core/units/hair';
import { mmPerInch } from '../core/units/inch';
import { gradient } from '../core/units/slope';
import { shortInches } from '../core/units/lengthText';
import { complaint, type Complaint } from './complaint';

/** Sizes that are each possible but do not go together: what cannot be framed, plane by plane. Told in the file's units. */
export const misfits = (plan: RoofPlan, units: 'in' | 'mm'): readonly Complaint[] => {
  const show: Show = (value) =>
    units === 'mm' ? `${shortInches(value * mmPerInch)} mm` : `${shortInches(value)} in`;
  const short = firstFits(plan, show);
  if (short.length > 0) return short;
  const planes = planesOf(plan);
  const all = [
    ...planes.flatMap((plane) =>
      (plane.eave.dormer || plane.eave.opening ? [ventsInBlock] : checks).flatMap((check) =>
        checked(plan, plane, { check, show }),
      ),
    ),
    ...alongRoof(plan, show),
  ];
  if (all.length === 0 && plan.kind === 'gable') return lostSlants(plan, show);
  return all.filter(({ path, wrong }, i) => all.findIndex((c) => c.path === path && c.wrong === wrong) === i);
};

type Checking = { readonly check: Check; readonly show: Show };

/** In a run of sections, told where that section says what is wrong, or the whole plan. */
const checked = (plan: RoofPlan, plane: RoofPlane, { check, show }: Checking): readonly Complaint[] => {
  const { section } = plane.eave;
  if (plan.kind !== 'stepped' || section === undefined) return check(plan, plane, show);
  return check(asSection(plan, section), plane, show).map((one) => ({
    ...one,
    path: sectionKey(plan, section, one.path),
  }));
};

type Check = (plan: RoofPlan, plane: RoofPlane, show: Show) => readonly Complaint[];

/** What has to hold before planes can be laid at all. */
const firstFits = (plan: RoofPlan, show: Show): readonly Complaint[] => {
  if (plan.kind === 'hip') return hipFits(plan, show);
  if (plan.kind === 'gambrel') return gambrelFits(plan, show);
  if (plan.kind === 'stepped') return [...postsFit(plan, show), ...steppedFits(plan, show)];
  if (plan.kind === 'shed') return shedFits(plan, show);
  const standing = standingFits(plan, show);
  return standing.length > 0
    ? standing
    : [...yardFits(plan, show), ...wingFits(plan, show), ...dormerFits(plan, show)];
};

/** A ridge between the plates, and posts under it. */
const yardFits = (plan: GablePlan, show: Show): readonly Complaint[] => {
  const { street, yard } = gableRuns(plan);
  const { thickness } = plan.ridge;
  const [m, other] = [gradient(plan.slope), gradient(plan.yard?.slope ?? plan.slope)];
  const lowest = thickness * m - other * (street + yard - thickness);
  const highest = m * (street + yard - thickness) - thickness * other;
  return [
    ...when(plan.yard !== undefined && Math.min(street, yard) <= thickness, () =>
      complaint(
        'yard.plateHeight',
        `is ${show(plan.yard?.plateHeight ?? 0)} and puts the ridge over a wall or past it`,
        `${show(lowest)} to ${show(highest)} at these slopes`,
      ),
    ),
    ...postsFit(plan, show),
  ];
};

const postsFit = (
  { posts, length }: Pick<GablePlan, 'posts' | 'length'>,
  show: Show,
): readonly Complaint[] => {
  const out = posts?.at.find((at) => at < -hair || at > length + hair);
  return when(out !== undefined, () =>
    complaint('posts.at', `has a post at ${show(out ?? 0)}`, `0 to ${show(length)}`),
  );
};

/** What a hip roof asks besides: a ridge between its ends, and end planes that come to the height of the others. */
const hipFits = (plan: HipPlan, show: Show): readonly Complaint[] => {
  const wrong = hipFitsAlone(plan, show);
  return wrong.length > 0 || !plan.gablet ? wrong : gabletFits(plan, plan.gablet, show);
};

const hipFitsAlone = (plan: HipPlan, show: Show): readonly Complaint[] => {
  const clad = cladOf(plan);
  const least = 2 * (endRun(plan) - clad);
  const seat = endSeat(plan);
  return [
    ...when(!plan.gablet && plan.length <= least + plan.rafter.thickness, () =>
      complaint(
        'length',
        `is ${show(plan.length)} and leaves no ridge between the hips`,
        `more than ${show(least + plan.rafter.thickness)}`,
      ),
    ),
    ...when(seat <= clad + hair || seat - clad > plan.plate.width + hair, () =>
      complaint(
        'endSlope.rise',
        `asks for a seat of ${show(seat)} on the ends, to come to the same height over the plate`,
        `a slope that keeps it over ${show(clad)} and at most ${show(plan.plate.width + clad)}`,
      ),
    ),
  ];
};

/** Checks of rafters on the walls; what stands at a break is checked with it. */
const onWalls =
  (check: Check): Check =>
  (plan, plane, show) =>
    plane.eave.stands ? [] : check(plan, plane, show);

const seatOnPlate: Check = ({ plate }, { eave }, show) => [
  ...when(bearingOf(eave) > plate.width + hair, () =>
    complaint(
      'seat',
      `is ${show(eave.seat)} on a plate of ${show(plate.width)}`,
      `at most ${show(plate.width + eave.clad)}`,
    ),
  ),
  ...when(bearingOf(eave) <= hair, () =>
    complaint(
      'seat',
      `is ${show(eave.seat)} and does not reach the plate behind the sheathing`,
      `more than ${show(eave.clad)}`,
    ),
  ),
];

const rafterWhole: Check = ({ rafter }, { cuts, eave: { seat } }, show) =>
  when(cuts.notchDepth >= rafter.depth - hair, () =>
    complaint(
      'seat',
      `is ${show(seat)} and cuts the rafter through`,
      `less than ${show(4 * cuts.maxSeat)}; ${show(cuts.maxSeat)} keeps the notch to a quarter of the depth`,
    ),
  );

const roomInside: Check = ({ kind, span }, { eave, cuts }, show) => {
  const sides = kind === 'shed' ? 1 : 2;
  return when(eave.run - eave.seat - cuts.shortening <= hair, () =>
    complaint(
      'span',
      `is ${show(span)} and leaves no rafter between its seat and its top`,
      `more than ${show(sides * (eave.seat - eave.clad + cuts.shortening))}`,
    ),
  );
};

const tiesUnderRidge: Check = (plan, plane, show) => {
  const top = topOf(plane) - (plan.kind === 'stepped' ? plane.eave.plane.base : 0);
  return when(
    plan.kind !== 'shed' &&
      !plane.atBreak &&
      !plane.eave.plane.till &&
      plan.joists !== false &&
      plan.joists.height >= top - hair,
    () =>
      complaint(
        'joists.height',
        'is at or over the top of the ridge',
        `less than ${show(top)}, and in the lower third of it`,
      ),
  );
};

const ventsInBlock: Check = ({ vents, spacing, rafter, blockAllowance }, plane, show) => {
  if (!vents) return [];
  const length = spacing - rafter.thickness - blockAllowance;
  const height = planeOverPlate(plane);
  if (vents.shape === 'notch')
    return [
      ...when(vents.depth >= height - hair, () =>
        complaint('vents.depth', `is ${show(vents.depth)}`, `less than the block's ${show(height)}`),
      ),
      ...when(2 * vents.leave >= length - hair, () =>
        complaint('vents.leave', `is ${show(vents.leave)}`, `less than half the block's ${show(length)}`),
      ),
    ];
  return [
    ...when(vents.diameter + 2 * webBetweenHoles > height + hair, () =>
      complaint(
        'vents.diameter',
        `is ${show(vents.diameter)}`,
        `at most ${show(Math.max(0, height - 2 * webBetweenHoles))} in a block ${show(height)} high`,
      ),
    ),
    ...when(holesHeld(vents, length) < vents.count, () =>
      complaint(
        'vents.count',
        `is ${vents.count}`,
        `at most ${holesHeld(vents, length)} in a block of ${show(length)}`,
      ),
    ),
  ];
};

const roomForPosts: Check = (plan, plane, show) => {
  if (!('posts' in plan) || !plan.posts) return [];
  const { section } = plane.eave;
  if (plan.kind === 'stepped' && section !== undefined && postsUnder(plan, section).length === 0) return [];
  const { below } = plan.posts;
  const least = plan.ridge.depth - topOf(plane);
  return when(below <= least + hair, () =>
    complaint(
      'posts.below',
      `is ${show(below)} and leaves no post under the ridge`,
      `more than ${show(least)}`,
    ),
  );
};

/** Past the gable there is room for the rake rafter, and between them for lookouts. */
const rakeRoom: Check = (plan, _, show) => {
  const rake = rakeOf(plan);
  if (plan.kind === 'hip' || !rake) return [];
  const { thickness } = rake.rafter;
  const reach = reachOf(plan);
  return [
    ...when(reach < -hair, () =>
      complaint(
        'rakeOverhang',
        `is ${show(plan.rakeOverhang)} and leaves no room for a rake rafter`,
        `at least ${show(thickness)}, and more than that with lookouts`,
      ),
    ),
    ...when(rake.lookouts !== false && Math.abs(reach) <= hair, () =>
      complaint(
        'rakeOverhang',
        `is ${show(plan.rakeOverhang)} and leaves lookouts nothing to reach over`,
        `more than ${show(thickness)}, or "lookouts": false`,
      ),
    ),
  ];
};

/** Notches leave some of the rafter, and lookouts have a rafter to butt against that none comes to from the other gable. */
const lookoutsFit: Check = (plan, { eave: { stations } }, show) => {
  const lookouts = lookoutsOf(plan);
  if (!lookouts) return [];
  const { spacing, thickness, width, back } = lookouts;
  const most = Math.floor((stations.length - 1) / 2);
  return [
    ...when(thickness >= plan.rafter.depth - hair, () =>
      complaint(
        'rake.lookouts.thickness',
        `is ${show(thickness)} and cuts the end rafter through`,
        `less than ${show(plan.rafter.depth)}`,
      ),
    ),
    ...when(spacing < 2 * width - hair, () =>
      complaint(
        'rake.lookouts.spacing',
        `is ${show(spacing)} and leaves less than a lookout's width between two`,
        `at least ${show(2 * width)}`,
      ),
    ),
    ...when(back > most, () =>
      complaint(
        'rake.lookouts.back',
        `is ${back} and runs into the lookouts of the other gable`,
        most > 0
          ? `at most ${most} with ${stations.length} rafters a side`
          : 'only with a rafter between the gables',
      ),
    ),
  ];
};

const checks: readonly Check[] = [
  onWalls(seatOnPlate),
  onWalls(rafterWhole),
  roomInside,
  tiesUnderRidge,
  ventsInBlock,
  roomForPosts,
  rakeRoom,
  lookoutsFit,
];

/** Along the roof. */
const alongRoof = (
  { length, spacing, rafter, blockAllowance }: RoofPlan,
  show: Show,
): readonly Complaint[] => [
  ...when(length < 2 * rafter.thickness - hair, () =>
    complaint(
      'length',
      `is ${show(length)}, too short for two rafters`,
      `at least ${show(2 * rafter.thickness)}`,
    ),
  ),
  ...when(spacing <= rafter.thickness + hair, () =>
    complaint(
      'spacing',
      `is ${show(spacing)}, no wider than a rafter`,
      `more than ${show(rafter.thickness)}`,
    ),
  ),
  ...when(spacing > rafter.thickness + hair && blockAllowance >= spacing - rafter.thickness - hair, () =>
    complaint(
      'blockAllowance',
      `is ${show(blockAllowance)} and leaves no block in its bay`,
      `less than ${show(spacing - rafter.thickness)}`,
    ),
  ),
];
