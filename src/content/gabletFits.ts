import { edgesOf } from '../core/roof/edges';
import { expand } from '../core/roof/expand';
import { endRun, endSeat } from '../core/roof/forms/hip';
import { cladOf } from '../core/roof/forms/common';
import { framingOf } from '../core/roof/framing';
import { heightOver } from '../core/roof/heightOver';
import { hipCuts } from '../core/roof/hips';
import type { Gablet, HipPlan } from '../core/roof/plan';
import { hair } from '../core/units/hair';
import { gradient } from '../core/units/slope';
import { complaint, type Complaint } from './complaint';
import { when, type Show } from './saidSizes';

/** What does not go together in a small gable: how far back it stands, and what is left between the ends. */
export const gabletFits = (plan: HipPlan, gablet: Gablet, show: Show): readonly Complaint[] => {
  const room = lengthFits(plan, gablet, show);
  if (room.length > 0) return room;
  const [least, most] = [leastBack(plan, gablet), mostBack(plan, gablet)];
  const { back } = gablet;
  const accepted =
    least < most
      ? `more than ${show(least)} and less than ${show(most)}`
      : 'none at these sizes: a shallower header, a thinner hip or a wider span';
  return [
    ...when(back <= least + hair, () =>
      complaint('gablet.back', `is ${show(back)} and leaves no roof below the small gable`, accepted),
    ),
    ...when(back >= most - hair, () =>
      complaint('gablet.back', `is ${show(back)} and leaves no small gable to frame`, accepted),
    ),
  ];
};

/** The pairs at both ends stand clear of each other. */
const lengthFits = (plan: HipPlan, { back, ends, doubled }: Gablet, show: Show): readonly Complaint[] => {
  const pair = (doubled ? 2 : 1) * plan.rafter.thickness;
  const takes = (end: 'A' | 'B'): number =>
    (ends.includes(end) ? back + pair : endRun(plan) + pastHips(plan)) - cladOf(plan);
  const least = takes('A') + takes('B');
  return when(plan.length <= least + hair, () =>
    complaint(
      'length',
      `is ${show(plan.length)} and leaves no ridge between the small gable and the other end`,
      `more than ${show(least)}`,
    ),
  );
};

/** Level, past the end of the ridge's line: half of the commons there, or all that hips against the ridge's sides take of it. */
const pastHips = (plan: HipPlan): number => {
  if (plan.hipTop === 'betweenCommons') return plan.rafter.thickness / 2;
  const far = endRun(plan) / (plan.span / 2 + cladOf(plan));
  return (plan.ridge.thickness * far + plan.hip.thickness * Math.sqrt(1 + far * far)) / 2;
};

/**
 * The end's rafters and hips have wood between their seats and the header, which stands over the plates. What a hip's seat
 * and its cut take is the same wherever the small gable stands.
 */
const leastBack = (plan: HipPlan, gablet: Gablet): number => {
  const m = gradient(plan.endSlope);
  const seat = endSeat(plan);
  const { thickness, depth } = gablet.header;
  const over = heightOver(plan.rafter.depth, { m, seat });
  return Math.max(
    seat + thickness,
    thickness + (depth - over) / m,
    thickness + Math.max(0, ...hipsTake(plan)),
  );
};

/** Level and square to the end: a hip's seat and half of its slanting cut. */
const hipsTake = (plan: HipPlan): readonly number[] => {
  const framing = framingOf(expand(plan));
  return edgesOf(framing.form)
    .filter(({ kind }) => kind === 'hip')
    .flatMap((edge) => {
      const climbs = Math.abs(edge.line.way[0]);
      const aside = Math.abs(edge.line.way[1]);
      const seat = hipCuts(plan, framing, edge)?.seat ?? 0;
      return [seat * climbs + (plan.hip.thickness / 2) * aside];
    });
};

/** Both hips and a rafter between them have room on the header; a ridge that runs on past it has room over it. */
const mostBack = (plan: HipPlan, { header }: Gablet): number => {
  const far = endRun(plan);
  const run = plan.span / 2 + cladOf(plan);
  const [m, end] = [gradient(plan.slope), gradient(plan.endSlope)];
  const cheek = (plan.hip.thickness / 2) * Math.sqrt(1 + (run / far) * (run / far));
  const between = far - ((cheek + plan.rafter.thickness / 2) * far) / run;
  const under = far - ((plan.ridge.thickness / 2) * m + plan.ridge.depth) / end;
  return header.thickness + ((plan.rakeOverhang ?? 0) > 0 ? Math.min(between, under) : between);
};
