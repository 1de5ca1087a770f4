import type { DormerShape } from '../core/roof/form';
import { cladOf, rowOf } from '../core/roof/forms/common';
import { dormerShapes } from '../core/roof/forms/gable';
import { heightOver } from '../core/roof/heightOver';
import { lookoutsOf } from '../core/roof/rake';
import type { GablePlan } from '../core/roof/plan';
import { hair } from '../core/units/hair';
import { shortInches } from '../core/units/lengthText';
import { complaint, type Complaint } from './complaint';
import { slopeLimits } from './roofLimits';
import { when, type Show } from './saidSizes';
import { wingTakes } from './wingFits';

/** What does not go together in a dormer: where it stands, how high its wall is, and where its plane comes to the main one. */

type Placed = {
  readonly plan: GablePlan;
  readonly shape: DormerShape;
  readonly index: number;
  readonly show: Show;
};

type Check = (so: Placed) => readonly Complaint[];

/** The first thing wrong with each: what comes later leans on it. */
export const dormerFits = (plan: GablePlan, show: Show): readonly Complaint[] => {
  const shapes = dormerShapes(plan);
  const first = shapes.flatMap((shape, index) => {
    const found = checks.map((check) => check({ plan, shape, index, show })).find(({ length }) => length > 0);
    return found ?? [];
  });
  return first.length > 0 ? first : shapes.flatMap((_, index) => apart(plan, { shapes, index, show }));
};

const pathOf = (index: number, key: string): string => `dormers.${index}.${key}`;

/** Trimmers stand two thicknesses clear of the end rafters, as rafters of the row do. */
const onRoof: Check = ({ plan, shape: { from, to, plan: dormer }, index, show }) => {
  const edge = 2 * plan.rafter.thickness;
  const [low, high] = [dormer.width / 2 + edge, plan.length - dormer.width / 2 - edge];
  return when(from < edge - hair || to > plan.length - edge + hair, () =>
    complaint(
      pathOf(index, 'at'),
      `is ${show(dormer.at)} and puts a dormer of ${show(dormer.width)} past the end of the roof`,
      low <= high ? `${show(low)} to ${show(high)}` : `a dormer of at most ${show(plan.length - 2 * edge)}`,
    ),
  );
};

/** Lookouts butt against the trimmers at the most: past them the rafters are cut short. */
const clearOfLookouts: Check = ({ plan, shape, index, show }) => {
  const lookouts = lookoutsOf(plan);
  if (!lookouts) return [];
  const marks = rowOf(plan);
  const { trimmers, plan: dormer } = shape;
  const [first, last] = [trimmers[0] ?? 0, trimmers.at(-1) ?? 0];
  const before = marks.filter((at) => at < first - 2 * plan.rafter.thickness + hair).length;
  const after = marks.filter((at) => at > last + 2 * plan.rafter.thickness - hair).length;
  return when(Math.min(before, after) < lookouts.back, () =>
    complaint(
      pathOf(index, 'at'),
      `is ${show(dormer.at)} and cuts rafters that lookouts run back to`,
      `${lookouts.back} main rafter${lookouts.back > 1 ? 's' : ''} or more between it and each end`,
    ),
  );
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

type Among = { readonly shapes: readonly DormerShape[]; readonly index: number; readonly show: Show };

/** Beside other dormers and wings of its side. */
const apart = (plan: GablePlan, { shapes, index, show }: Among): readonly Complaint[] => {
  const shape = shapes[index];
  if (!shape) return [];
  const { side, at } = shape.plan;
  const clear = 2 * plan.rafter.thickness;
  const other = shapes.findIndex(
    (one, i) =>
      i < index &&
      one.plan.side === side &&
      one.from < shape.to + clear - hair &&
      one.to > shape.from - clear + hair,
  );
  const wing = (plan.wings ?? []).findIndex((one) => {
    const [from, to] = wingTakes(plan, one);
    const beside = 2 * one.valley.thickness + clear;
    return one.side === side && from < shape.to + beside && to > shape.from - beside;
  });
  const accepted = `a place at least ${show(clear)} beside it, or the other side`;
  return [
    ...when(other >= 0, () =>
      complaint(pathOf(index, 'at'), `is ${show(at)}, where dormer ${other + 1} stands`, accepted),
    ),
    ...when(wing >= 0, () =>
      complaint(
        pathOf(index, 'at'),
        `is ${show(at)}, where wing ${wing + 1} or its long valley comes in`,
        'a place beside it, or the other side',
      ),
    ),
  ];
};
