import type { Opening } from '../core/roof/form';
import { cladOf } from '../core/roof/forms/common';
import { heightOver } from '../core/roof/heightOver';
import { plateThick } from '../core/roof/timberParts';
import { hair } from '../core/units/hair';
import { gradient } from '../core/units/slope';
import { complaint, type Complaint } from './complaint';
import { clearOfLookouts, onRoof, pathOf, type Sited } from './dormerPlaces';
import { when } from './saidSizes';

/** What does not go together in a gable dormer: its front, its walls, and where its ridge and valleys come to. */

type Placed = Sited & { readonly opening: Opening };

type Check = (so: Placed) => readonly Complaint[];

const slopeOf = ({ opening }: Placed): number => gradient(opening.plan.slope);

/** Level, from the main reference face to the farthest that its ridge's line may come: past it the header, then some rafter to the ridge. */
const farthest = ({ plan, opening: { host, plan: dormer } }: Placed): number =>
  host.run - plan.ridge.thickness / 2 - 1.5 * dormer.header.thickness - plan.rafter.thickness;

/** With walls over the main one too; without them only so far in that main rafters below it keep their birdsmouths. */
const frontStands: Check = (so) => {
  const { plan, opening, index, show } = so;
  const { front, header, walls, side } = opening.plan;
  const main = side === 'yard' && plan.yard ? plan.yard.seat : plan.seat;
  const least = Math.max(plan.plate.width, main - cladOf(plan));
  const most = farthest(so) - cladOf(plan) - 2.5 * header.thickness;
  const over = walls && front === 0;
  return when(!over && (front < least + hair || front > most), () =>
    complaint(
      pathOf(index, 'front'),
      `is ${show(front)}`,
      [
        ...(walls ? ['0 for walls that begin over the main one'] : []),
        ...(most > least ? [`more than ${show(least)}, at most ${show(most)}`] : []),
      ].join(', or ') || 'thinner headers, or a wider main roof',
    ),
  );
};

/** Over the main wall the eave is open from trimmer to trimmer: there has to be a mark between them to leave out. */
const opensEave: Check = ({ plan, opening, index, show }) =>
  when(opening.plan.front === 0 && opening.inner.length === 0, () =>
    complaint(
      pathOf(index, 'width'),
      `is ${show(opening.plan.width)} and has no rafter's mark between its trimmers`,
      `at least ${show(plan.spacing + 7 * plan.rafter.thickness)}, a place over a rafter, or a front behind the main wall`,
    ),
  );

const seatFits: Check = (so) => {
  const { plan, opening, index, show } = so;
  const { walls } = opening.plan;
  if (!walls) return [];
  const clad = cladOf(plan);
  const m = slopeOf(so);
  const g = Math.sqrt(1 + m * m);
  const { seat } = walls;
  const whole = (plan.rafter.depth * g) / m;
  return [
    ...when(seat <= clad + hair || seat > plan.plate.width + clad + hair, () =>
      complaint(
        pathOf(index, 'seat'),
        `is ${show(seat)} on a plate of ${show(plan.plate.width)}`,
        `more than ${show(clad)}, at most ${show(plan.plate.width + clad)}`,
      ),
    ),
    ...when(seat >= whole - hair, () =>
      complaint(
        pathOf(index, 'seat'),
        `is ${show(seat)} and cuts the rafter through`,
        `less than ${show(whole)}`,
      ),
    ),
  ];
};

/** Plates lie over the main rafters for as long as they are wide at least; and its ridge stays under the main one. */
const wallsStand: Check = (so) => {
  const { plan, opening, index, show } = so;
  const { walls } = opening.plan;
  if (!walls) return [];
  const { host, front, covers } = opening;
  const m = slopeOf(so);
  const least = host.over + host.m * (front + plan.plate.width) + plateThick;
  const own = heightOver(plan.rafter.depth, { m, seat: walls.seat });
  const most = host.over + host.m * farthest(so) - own - (m * (covers[1] - covers[0])) / 2;
  const low = walls.top < least - hair;
  return when(low || walls.top > most + hair, () =>
    complaint(
      pathOf(index, 'wall'),
      `is ${show(walls.top)} and ${low ? 'puts its plates under the main roof' : 'brings its ridge over the main one, or leaves no room for its header under it'}`,
      least <= most
        ? `${show(least)} to ${show(most)} at this front, width and slope`
        : 'a narrower dormer, a lower slope, or a front nearer to the eave',
    ),
  );
};

/** From the middle out: half of what its ridge and header take of a valley above, what trimmers and a lower header do below, and both cheeks; or the plates and the ridge between them. */
const leastRun = (so: Placed): number => {
  const { plan, opening } = so;
  const { ridge, header, valley, walls } = opening.plan;
  const r = slopeOf(so) / opening.host.m;
  const sx = 1 / Math.sqrt(1 + r * r);
  const [first] = opening.faces;
  const below = Math.max(first - opening.covers[0], walls ? 0 : (2 * header.thickness) / r);
  const above = Math.max(ridge.thickness / 2, header.thickness / 2 / r);
  const inside = walls ? Math.max(walls.seat, plan.plate.width + cladOf(plan)) + ridge.thickness / 2 : 0;
  return Math.max(below + above + sx * valley.thickness * Math.max(r, 1 / r), inside);
};

const widthFits: Check = (so) => {
  const { opening, index, show } = so;
  const { width, walls } = opening.plan;
  const run = (opening.covers[1] - opening.covers[0]) / 2;
  const clad = run - width / 2;
  const least = 2 * (leastRun(so) - clad);
  const most = walls ? Infinity : (2 * (farthest(so) - opening.front) * opening.host.m) / slopeOf(so);
  const narrow = width <= least + hair;
  return when(narrow || width > most + hair, () =>
    complaint(
      pathOf(index, 'width'),
      `is ${show(width)} and ${narrow ? 'leaves no valley between its trimmers and its header' : 'brings its ridge over the main one, or leaves no room for its header under it'}`,
      walls
        ? `more than ${show(least)}`
        : least < most
          ? `more than ${show(least)}, at most ${show(most)}, at this front and slope`
          : 'thinner members, a lower slope, or a front nearer to the eave',
    ),
  );
};

/** Headers apart, and the lower one as thick as what stands on it. */
const headersFit: Check = ({ plan, opening, index, show }) => {
  const { header, front, walls } = opening.plan;
  const least = walls ? 0 : plan.rafter.thickness / 2;
  const most = front > 0 ? (opening.meet - opening.front) / 2.5 : Infinity;
  return when(header.thickness < least - hair || header.thickness >= most - hair, () =>
    complaint(
      pathOf(index, 'header.thickness'),
      `is ${show(header.thickness)} and ${header.thickness < least ? 'is thinner, doubled, than the rafters that stand on it' : 'leaves nothing between the two headers'}`,
      `at least ${show(least)}, less than ${show(Math.max(0, most))}`,
    ),
  );
};

/** Where plates are wider than the trimmers under them, valleys come to those beyond the plates' ends. */
const valleyPasses: Check = (so) => {
  const { plan, opening, index, show } = so;
  const { faces, covers, foot, plates } = opening;
  const { thickness } = opening.plan.valley;
  if (plates === undefined || plan.plate.width <= 2 * plan.rafter.thickness + hair) return [];
  const r = slopeOf(so) / opening.host.m;
  const most = (2 * (foot - plates + r * (faces[0] - covers[0]))) / Math.sqrt(1 + r * r);
  return when(thickness > most + hair, () =>
    complaint(
      pathOf(index, 'valley.thickness'),
      `is ${show(thickness)} and comes into the ends of the side plates`,
      most > 0 ? `at most ${show(most)}, or a smaller seat` : 'a smaller seat, or a narrower plate',
    ),
  );
};

/** At its front the ridge passes over the lower header. */
const ridgeOver: Check = (so) => {
  const { opening, index, show } = so;
  const { ridge, front, header, walls } = opening.plan;
  const top = opening.front + (walls ? 0 : 2 * header.thickness);
  const most = opening.host.m * (opening.meet - top) - (slopeOf(so) * ridge.thickness) / 2;
  return when(front > 0 && ridge.depth > most + hair, () =>
    complaint(
      pathOf(index, 'ridge.depth'),
      `is ${show(ridge.depth)} and comes down into the lower header`,
      most > 0 ? `at most ${show(most)}, or a wider dormer` : 'a wider dormer',
    ),
  );
};

export const openingChecks: readonly Check[] = [
  onRoof,
  clearOfLookouts,
  frontStands,
  opensEave,
  seatFits,
  wallsStand,
  widthFits,
  headersFit,
  ridgeOver,
  valleyPasses,
];
