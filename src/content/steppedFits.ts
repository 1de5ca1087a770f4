import { sectionRun, sectionTop, stepsOf, woodOverPocket, type Step } from '../core/roof/forms/stepped';
import type { RoofSection, SteppedPlan } from '../core/roof/plan';
import { hair, isOver } from '../core/units/hair';
import { gradient } from '../core/units/slope';
import { complaint, type Complaint } from './complaint';
import type { RoofFile } from './roofSchema';
import { lengthWanted } from './roofSchemaParts';
import { manySections } from './roofSchemaRun';
import { when, type Show } from './saidSizes';

/** What does not go together in a run of sections. */

/** The last section alone may leave its length to what is left. */
export const missingSections = ({ sections }: RoofFile): readonly Complaint[] =>
  sections === undefined
    ? [complaint('sections', 'is missing', manySections)]
    : sections
        .slice(0, -1)
        .flatMap(({ length }, i) =>
          when(length === undefined, () => complaint(`sections.${i}.length`, 'is missing', lengthWanted)),
        );

/** Lengths first: without them nothing can be laid out. */
export const steppedFits = (plan: SteppedPlan, show: Show): readonly Complaint[] => {
  const lengths = lengthFits(plan, show);
  if (lengths.length > 0) return lengths;
  return [...pocketsFit(plan, show), ...bearingsFit(plan, show), ...stepsFit(plan, show)];
};

const lengthFits = (plan: SteppedPlan, show: Show): readonly Complaint[] => {
  const last = plan.sections.length - 1;
  const sum = plan.sections.reduce((all, { length }) => all + length, 0);
  const over = sum - plan.length;
  const own = plan.sections[last]?.length ?? 0;
  return [
    ...plan.sections.flatMap((section, i) => {
      const least = 2 * plan.rafter.thickness;
      return when(section.length < least - hair && i < last, () =>
        complaint(
          `sections.${i}.length`,
          `is ${show(section.length)}, too short for two rafters`,
          `at least ${show(least)}`,
        ),
      );
    }),
    ...when(Math.abs(over) <= sumsTo && own < 2 * plan.rafter.thickness - hair, () =>
      complaint(
        'length',
        `is ${show(plan.length)} and leaves ${own > 0 ? show(own) : 'nothing'} for the last section`,
        `at least ${show(plan.length - own + 2 * plan.rafter.thickness)}`,
      ),
    ),
    ...when(Math.abs(over) > sumsTo, () =>
      complaint(
        `sections.${last}.length`,
        `is ${show(own)} and makes the run ${show(sum)} long, not ${show(plan.length)}`,
        own - over > 0 ? `${show(own - over)}, or left out for that` : 'shorter sections before it',
      ),
    ),
  ];
};

/** Lengths are told to thousandths, and the sum of some may be off by that; ours. Inches. */
const sumsTo = 1e-3;

/** The sections a step has on its two sides. */
const sidesOf = (
  { sections }: SteppedPlan,
  { higher, lower }: Step,
): { readonly over: RoofSection; readonly under: RoofSection } => ({
  over: sections[higher] ?? sections[0],
  under: sections[lower] ?? sections[0],
});

const named = (index: number): string => `section ${index + 1}`;

/** What comes into a section, or stands in it, leaves room for its rafters. */
const pocketsFit = (plan: SteppedPlan, show: Show): readonly Complaint[] => {
  const steps = stepsOf(plan);
  return steps.flatMap((step) => {
    const { over, under } = sidesOf(plan, step);
    const { on, length } = under.bearing;
    const path = `sections.${step.lower}.bearing.length`;
    const host = on === 'pocket' ? over : under;
    const shared = steps.filter((one) =>
      on === 'pocket' ? one.higher === step.higher : one.lower === step.lower,
    );
    const room = Math.min(host.length / shared.length, on === 'pocket' ? plan.plate.width : Infinity);
    return [
      ...when(length > room + hair, () =>
        complaint(
          path,
          on === 'pocket'
            ? `is ${show(length)} into a wall of ${show(plan.plate.width)}`
            : `is ${show(length)} in a section of ${show(host.length)}`,
          `at most ${show(room)}`,
        ),
      ),
    ];
  });
};

const bearingsFit = (plan: SteppedPlan, show: Show): readonly Complaint[] => {
  const steps = stepsOf(plan);
  return plan.sections.flatMap(({ bearing, length }, i) => {
    const ends = steps.filter(({ lower }) => lower === i).length;
    const taken = ends * bearing.clearance + 2 * plan.rafter.thickness;
    const over = steps
      .filter(({ lower }) => lower === i)
      .reduce((sum, step) => sum + sidesOf(plan, step).over.stepOverhang, 0);
    const first = steps.find(({ lower }) => lower === i);
    return [
      ...when(isOver(taken, length), () =>
        complaint(
          `sections.${i}.bearing.clearance`,
          `is ${show(bearing.clearance)} and leaves no two rafters in ${show(length)}`,
          `at most ${show(Math.max(0, (length - 2 * plan.rafter.thickness) / ends))}`,
        ),
      ),
      ...when(isOver(over, length), () =>
        complaint(
          `sections.${first?.higher ?? 0}.stepOverhang`,
          `runs past all of ${named(i)}, which is ${show(length)} long`,
          `at most ${show(length / ends)}`,
        ),
      ),
    ];
  });
};

/** Where both reference planes stand at a distance from the middle line. Inches. */
const lineAt = (plan: SteppedPlan, section: RoofSection, out: number): number =>
  section.plateHeight + (sectionRun(plan, section) - out) * gradient(section.slope);

const stepsFit = (plan: SteppedPlan, show: Show): readonly Complaint[] =>
  stepsOf(plan).flatMap((step) => {
    const hidden = behindHigher(plan, step, show);
    return hidden.length > 0
      ? hidden
      : [pocketRoom, roomUnder, overLower].flatMap((check) => check(plan, step, show));
  });

/** The lower roof stays behind the higher gable: over the narrower one's walls it is no higher. */
const behindHigher = (plan: SteppedPlan, step: Step, show: Show): readonly Complaint[] => {
  const { over, under } = sidesOf(plan, step);
  const out = Math.min(sectionRun(plan, over), sectionRun(plan, under));
  const off = lineAt(plan, under, out) - lineAt(plan, over, out);
  return when(isOver(off, 0), () =>
    complaint(
      `sections.${step.lower}.plateHeight`,
      `is ${show(under.plateHeight)}: at the walls its roof comes ${show(off)} over that of ${named(step.higher)}, whose ridge is the higher one`,
      `at most ${show(under.plateHeight - off)} with these spans and slopes`,
    ),
  );
};

/** A ridge in a pocket passes under the ridge and the end rafters of the higher section. */
const pocketRoom = (plan: SteppedPlan, step: Step, show: Show): readonly Complaint[] => {
  const { over, under } = sidesOf(plan, step);
  if (under.bearing.on !== 'pocket') return [];
  const tops = topsOf(plan, step);
  const least = woodOverPocket(plan, over, under);
  return when(isOver(least, tops.over - tops.under), () =>
    complaint(
      `sections.${step.lower}.bearing`,
      `is a pocket ${show(tops.over - tops.under)} under the top of the ridge of ${named(step.higher)}: the lower ridge comes up into that one's ridge or end rafters`,
      `a step of at least ${show(least)}, or "on": "wall"`,
    ),
  );
};

const topsOf = (plan: SteppedPlan, step: Step): { readonly over: number; readonly under: number } => {
  const { over, under } = sidesOf(plan, step);
  return { over: sectionTop(plan, over), under: sectionTop(plan, under) };
};

/** What carries the lower ridge's end stands under it. */
const roomUnder = (plan: SteppedPlan, step: Step, show: Show): readonly Complaint[] => {
  const { over, under } = sidesOf(plan, step);
  const { on, below } = under.bearing;
  const underside = topsOf(plan, step).under - under.ridge.depth;
  const room = underside - under.plateHeight + below;
  const onHigher = on === 'pocket' && underside >= over.plateHeight;
  return when(!onHigher && isOver(0, room), () =>
    complaint(
      `sections.${step.lower}.bearing.below`,
      `is ${show(below)} and leaves nothing to stand under the ridge`,
      `at least ${show(below - room)}`,
    ),
  );
};

/** A higher ridge that runs out over the lower roof clears its ridge. */
const overLower = (plan: SteppedPlan, step: Step, show: Show): readonly Complaint[] => {
  const { over } = sidesOf(plan, step);
  const tops = topsOf(plan, step);
  const gap = tops.over - over.ridge.depth - tops.under;
  return when(isOver(over.stepOverhang, 0) && isOver(0, gap), () =>
    complaint(
      `sections.${step.higher}.stepOverhang`,
      `is ${show(over.stepOverhang)} and runs into the ridge of ${named(step.lower)}`,
      `0, or a step of at least ${show(over.ridge.depth)}`,
    ),
  );
};
