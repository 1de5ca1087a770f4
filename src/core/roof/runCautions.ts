import { isOver } from '../units/hair';
import { shortInches } from '../units/lengthText';
import { gradient } from '../units/slope';
import type { Checked } from './cautions';
import type { Caution, FiguredTie } from './figured';
import { postsUnder } from './forms/stepped';
import { limits } from './limits';
import type { RoofPlan, RoofSection, SteppedPlan } from './plan';
import type { StepOn } from './steps';

/** Cautions of a run of sections: those of each, by its own sizes, and what is unwise where two meet. */

const show = (value: number): string => `${shortInches(value)} in`;

/**
 * Each section with its own sizes and heights over its own plates. What all of them have wrong alike is told once, the rest
 * with its section, at the key that section has itself or the main one.
 */
export const eachSection = (
  plan: RoofPlan,
  all: readonly Checked[],
  check: (so: Checked) => readonly Caution[],
): readonly Caution[] => {
  if (plan.kind !== 'stepped') return all.flatMap(check);
  const told = all.flatMap((so) => {
    const index = so.eave.section ?? 0;
    const topHeight = so.topHeight - so.eave.plane.base;
    return check({ ...so, plan: asSection(plan, index), topHeight }).map((caution) => ({
      index,
      caution: { ...caution, at: sectionKey(plan, index, caution.at) },
    }));
  });
  return told.flatMap(({ index, caution }, i) => {
    const alike = told.filter((one) => isSame(one.caution, caution));
    if (alike.length < plan.sections.length)
      return [{ ...caution, text: `Section ${index + 1}: ${caution.text}` }];
    return told.findIndex((one) => isSame(one.caution, caution)) === i ? [caution] : [];
  });
};

const isSame = (a: Caution, b: Caution): boolean => a.code === b.code && a.at === b.at && a.text === b.text;

/** The plan with the sizes that one section has. */
export const asSection = (plan: SteppedPlan, index: number): SteppedPlan => {
  const { slope, span, overhang, seat, ridge } = plan.sections[index] ?? plan.sections[0];
  return { ...plan, slope, span, overhang, seat, ridge };
};

/** A key of the plan, or of a section that has it otherwise. */
export const sectionKey = (plan: SteppedPlan, index: number, key: string): string => {
  const section = plan.sections[index] ?? plan.sections[0];
  return own.some((one) => key.startsWith(one) && differs[one](plan, section))
    ? `sections.${index}.${key}`
    : key;
};

const own = ['slope', 'span', 'overhang', 'seat', 'ridge'] as const;

const differs: Readonly<Record<(typeof own)[number], (plan: SteppedPlan, section: RoofSection) => boolean>> =
  {
    slope: (plan, section) => gradient(plan.slope) !== gradient(section.slope),
    span: (plan, section) => plan.span !== section.span,
    overhang: (plan, section) => plan.overhang !== section.overhang,
    seat: (plan, section) => plan.seat !== section.seat,
    ridge: ({ ridge }, section) =>
      ridge.depth !== section.ridge.depth || ridge.thickness !== section.ridge.thickness,
  };

export const stepCautions = (
  plan: RoofPlan,
  steps: readonly StepOn[],
  ties: readonly FiguredTie[],
): readonly Caution[] => {
  if (plan.kind !== 'stepped') return [];
  return [
    ...bearsOnce(plan, steps),
    ...steps.flatMap((step) => [
      ...bearsLittle(step),
      ...inPlates(step),
      ...inTie(plan, step, ties),
      ...overhangClose(step),
    ]),
  ];
};

/** A beam bears at two places, posts or the walls of higher sections. */
const bearsOnce = (plan: SteppedPlan, steps: readonly StepOn[]): readonly Caution[] =>
  plan.sections.flatMap((_, i) => {
    const places = postsUnder(plan, i).length + steps.filter(({ step }) => step.lower === i).length;
    return plan.posts && places < 2
      ? [
          {
            code: 'ridgeUnsupported',
            at: 'posts.at',
            text: `The ridge of section ${i + 1} is to carry as a beam and bears at ${places === 1 ? 'one place' : 'no place'}: it needs two, posts or the walls of higher sections.`,
          },
        ]
      : [];
  });

const pathOf = ({ step }: StepOn, key: string): string => `sections.${step.lower}.${key}`;

const bearsLittle = (one: StepOn): readonly Caution[] => {
  const { length, on } = one.bearing;
  if (!isOver(limits.bearing, length)) return [];
  return [
    {
      code: 'ridgeBearingShort',
      at: pathOf(one, 'bearing.length'),
      text: `The ridge bears ${show(length)} ${on === 'pocket' ? 'in its pocket' : 'on the wall under it'}; ${show(limits.bearing)} is the least.`,
    },
  ];
};

/** Two plates of 1 1/2 in on every wall. Common practice, no source. */
const platesDeep = 3;

/** From the underside of a ridge in a pocket to its top, over the plates of the section it goes into. */
const inPocket = ({ lower, bearing: { on, overHigher } }: StepOn): readonly [number, number] | undefined =>
  on === 'pocket' ? [overHigher, overHigher + lower.figured.section.depth] : undefined;

const inPlates = (one: StepOn): readonly Caution[] => {
  const [low = 0, high = 0] = inPocket(one) ?? [];
  if (!isOver(high, -platesDeep) || !isOver(0, low) || high === low) return [];
  return [
    {
      code: 'pocketCutsPlates',
      at: pathOf(one, 'bearing'),
      text: `The pocket is at the height of the higher wall's top plates, ${show(-low)} down from their top to its bottom: it cuts them. Strap them across it, and carry what stands over it on a header.`,
    },
  ];
};

/** A tie lies beside the first pair of the higher section, where a ridge that goes past that pair comes in. */
const inTie = (plan: SteppedPlan, one: StepOn, ties: readonly FiguredTie[]): readonly Caution[] => {
  const band = inPocket(one);
  const { bearing, higher } = one;
  if (!band || !isOver(bearing.length, plan.rafter.thickness)) return [];
  const tie = ties.find(({ id, kind, height }) => {
    const deep = kind === 'collar' ? limits.collarDepth : plan.rafter.depth;
    const here = id.endsWith(`.${higher.frame.name ?? ''}`);
    return here && isOver(band[1], height) && isOver(height + deep, band[0]);
  });
  return tie
    ? [
        {
          code: 'pocketAtTie',
          at: pathOf(one, 'bearing'),
          text: `The ridge comes ${show(bearing.length)} into the wall at the height of the higher part's first ${tie.kind === 'collar' ? 'collar' : 'tie'}, which lies beside the end rafters: set that back to clear it.`,
        },
      ]
    : [];
};

/** Of a higher ridge that runs past its wall, over the lower roof: less than a hand and a tool have room in; ours. Inches. */
const leastOver = 6;

const overhangClose = (one: StepOn): readonly Caution[] => {
  const { higher, lower, step } = one;
  const end = step.higher > step.lower ? 'A' : 'B';
  const ends = higher.frame.section?.ends[end];
  if (ends?.what !== 'gable' || !isOver(ends.past, 0)) return [];
  const gap = higher.figured.topHeight - higher.figured.section.depth - lower.figured.topHeight;
  if (!isOver(leastOver, gap)) return [];
  return [
    {
      code: 'stepOverhangLow',
      at: `sections.${step.higher}.stepOverhang`,
      text: `The higher ridge runs out over the lower roof with ${show(gap)} between them; under ${show(leastOver)} nobody can sheathe and flash the lower roof there.`,
    },
  ];
};
