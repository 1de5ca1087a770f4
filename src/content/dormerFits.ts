import type { DormerShape } from '../core/roof/form';
import { cladOf } from '../core/roof/forms/common';
import { dormersIn } from '../core/roof/forms/gable';
import { heightOver } from '../core/roof/heightOver';
import type { GablePlan } from '../core/roof/plan';
import { hair } from '../core/units/hair';
import { shortInches } from '../core/units/lengthText';
import { complaint, type Complaint } from './complaint';
import { apart, clearOfLookouts, onRoof, pathOf, type Sited } from './dormerPlaces';
import { openingChecks } from './gableDormerFits';
import { slopeLimits } from './roofLimits';
import { when, type Show } from './saidSizes';

/** What does not go together in a shed dormer: how high its wall is, and where its plane comes to the main one. */

type Placed = Sited & { readonly shape: DormerShape };

type Check = (so: Placed) => readonly Complaint[];

/** The first thing wrong with each: what comes later leans on it. */
export const dormerFits = (plan: GablePlan, show: Show): readonly Complaint[] => {
  const all = dormersIn(plan);
  const first = all.flatMap(({ shape, opening }, index) => {
    const site = { plan, place: shape ?? opening, index, show };
    const found = opening
      ? openingChecks.map((check) => check({ ...site, opening }))
      : checks.map((check) => check({ ...site, shape }));
    return found.find(({ length }) => length > 0) ?? [];
  });
  const places = all.map(({ shape, opening }) => shape ?? opening);
  return first.length > 0 ? first : places.flatMap((_, index) => apart(plan, { places, index, show }));
};

const wideEnough: Check = ({ plan, shape: { inner, plan: dormer }, index, show }) =>
  when(inner.length === 0, () =>
    complaint(
      pathOf(index, 'width'),
      `is ${show(dormer.width)} and leaves no rafter of its own between its trimmers`,
      `at least ${show(plan.spacing + 7 * plan.rafter.thickness)}, or a place over a rafter`,
    ),
  );

/** Over the main wall, or so far in that the rafters below it keep their birdsmouths. */
const frontStands: Check = ({ plan, shape, index, show }) => {
  const { front, seat, header } = shape.plan;
  const main = shape.plan.side === 'yard' && plan.yard ? plan.yard.seat : plan.seat;
  const least = Math.max(plan.plate.width, main - cladOf(plan));
  const most = shape.host.run - seat - plan.rafter.depth - 2 * header.thickness - plan.ridge.thickness;
  return when((front > 0 && front < least + hair) || front > most, () =>
    complaint(
      pathOf(index, 'front'),
      `is ${show(front)}`,
      most > least
        ? `0 for a wall over the main one, or from more than ${show(least)} to ${show(most)}`
        : '0, for a wall over the main one',
    ),
  );
};

const seatOnPlate: Check = ({ plan, shape: { plan: dormer }, index, show }) => {
  const clad = cladOf(plan);
  return when(dormer.seat <= clad + hair || dormer.seat > plan.plate.width + clad + hair, () =>
    complaint(
      pathOf(index, 'seat'),
      `is ${show(dormer.seat)} on a plate of ${show(plan.plate.width)}`,
      `more than ${show(clad)}, at most ${show(plan.plate.width + clad)}`,
    ),
  );
};

const lowerSlope: Check = ({ shape: { plan: dormer, m, host }, index }) =>
  when(dormer.slope !== undefined && m >= host.m - hair, () =>
    complaint(
      pathOf(index, 'slope.rise'),
      `is a slope of ${shortInches(12 * m)} in 12, and never comes down to the main roof`,
      `less than ${shortInches(12 * host.m)} in 12`,
    ),
  );

/** Its plate is drawn 1 1/2 in thick, and has to lie over the main rafters with the whole of its width. Inches. */
const plateThick = 1.5;

/** Height of the plate with which tops of a slope come to those of the main roof so far in from the main reference face. Inches. */
const wallFor = ({ plan, shape: { host, plan: dormer } }: Placed, m: number, meet: number): number =>
  host.over +
  host.m * meet -
  heightOver(plan.rafter.depth, { m, seat: dormer.seat }) -
  m * (meet - dormer.front);

const leastWall = ({ plan, shape: { host, plan: dormer } }: Placed): number =>
  host.over + host.m * (dormer.front + cladOf(plan) + plan.plate.width) + plateThick;

/** Highest wall under which the plane still comes down to the main one with room for its header, or to the ridge. */
const mostWall = (so: Placed): number => {
  const { plan, shape } = so;
  const { host, plan: dormer, m } = shape;
  if (!dormer.slope) return wallFor(so, slopeLimits.min, host.run);
  return wallFor(so, m, host.run - plan.ridge.thickness / 2 - dormer.header.thickness);
};

const wallStands: Check = (so) => {
  const { shape, index, show } = so;
  const { wall } = shape.plan;
  const [least, most] = [leastWall(so), mostWall(so)];
  const over = shape.plan.slope ? !shape.toRidge && wall >= most : wall > most + hair;
  const never = !Number.isFinite(shape.m) || shape.m >= shape.host.m - hair;
  const wrong =
    wall < least - hair
      ? 'puts its plate under the main roof'
      : over
        ? 'brings it over the main ridge, or leaves no room for its header under the ridge'
        : never
          ? 'leaves it no slope of its own'
          : undefined;
  return when(wrong !== undefined, () =>
    complaint(
      pathOf(index, 'wall'),
      `is ${show(wall)} and ${wrong ?? ''}`,
      least < most
        ? `${show(least)} to ${shape.plan.slope ? 'less than ' : ''}${show(most)} at this front and slope${shape.plan.slope ? ', or no slope, for one to the ridge' : ''}`
        : 'a front nearer to the eave, or a lower slope',
    ),
  );
};

const wholeRafter: Check = ({ plan, shape: { m, plan: dormer }, index, show }) => {
  const g = Math.sqrt(1 + m * m);
  const { depth } = plan.rafter;
  return when((dormer.seat * m) / g >= depth - hair, () =>
    complaint(
      pathOf(index, 'seat'),
      `is ${show(dormer.seat)} and cuts the rafter through`,
      `less than ${show((depth * g) / m)}`,
    ),
  );
};

/** Both headers and a seat between them. */
const roomForHeaders: Check = ({ plan, shape, index, show }) => {
  const { header, front, seat } = shape.plan;
  const clad = cladOf(plan);
  const least = shape.run - (shape.toRidge ? shape.shortening : 0);
  const taken = (shape.toRidge ? 0 : 1) + (front > 0 ? 2 : 0);
  const most = Math.min((least - clad) / Math.max(taken, 1), shape.toRidge ? Infinity : least - seat);
  return when(header.thickness >= most - hair || least - seat <= hair, () =>
    complaint(
      pathOf(index, 'header.thickness'),
      `is ${show(header.thickness)} and leaves no rafter between the front wall and its top`,
      `less than ${show(Math.max(0, most))}`,
    ),
  );
};

const checks: readonly Check[] = [
  onRoof,
  clearOfLookouts,
  wideEnough,
  frontStands,
  seatOnPlate,
  lowerSlope,
  wallStands,
  wholeRafter,
  roomForHeaders,
];
