import { hair } from '../../units/hair';
import { gradient } from '../../units/slope';
import type { Eave, Frame, RoofForm, SectionEnd, SectionFrame } from '../form';
import { heightOver } from '../heightOver';
import type { RoofSection, SteppedPlan } from '../plan';
import { innerMarks } from '../stations';
import type { Body, Plane } from '../surface';
import { cladOf, gableEnds, inward } from './common';

/** Level, from the reference face of a section's walls to the line all ridges stand on. Inches. */
export const sectionRun = (plan: SteppedPlan, { span }: RoofSection): number => span / 2 + cladOf(plan);

/** Of a section's ridge: where the rafters' top edges come to its faces, over the plates' common height. Inches. */
export const sectionTop = (plan: SteppedPlan, section: RoofSection): number => {
  const m = gradient(section.slope);
  const over = heightOver(plan.rafter.depth, { m, seat: section.seat });
  return section.plateHeight + over + (sectionRun(plan, section) - section.ridge.thickness / 2) * m;
};

/**
 * Plumb, from the top of a higher ridge down to the lowest wood of its roof over a ridge in a pocket: its own ridge, or where
 * the lower one is thicker, its rafters over the faces of that. Inches.
 */
export const woodOverPocket = (
  { rafter: { depth } }: SteppedPlan,
  over: RoofSection,
  under: RoofSection,
): number => {
  const m = gradient(over.slope);
  const aside = (under.ridge.thickness - over.ridge.thickness) / 2;
  const toRafters = aside > hair ? depth * Math.sqrt(1 + m * m) + m * aside : 0;
  return Math.max(over.ridge.depth, toRafters);
};

/** Where two sections meet, from end A, and which of them is the higher; with ridges at one height, that nearer to end A. */
export type Step = { readonly at: number; readonly higher: number; readonly lower: number };

export const stepsOf = (plan: SteppedPlan): readonly Step[] => {
  const tops = plan.sections.map((section) => sectionTop(plan, section));
  return beginsOf(plan)
    .slice(1, -1)
    .map((at, i) => {
      const isUp = (tops[i + 1] as number) > (tops[i] as number) + hair;
      return isUp ? { at, higher: i + 1, lower: i } : { at, higher: i, lower: i + 1 };
    });
};

/** Where sections begin, from end A, and where the last one ends: the length of the run, without what sums leave over. */
const beginsOf = ({ sections, length }: SteppedPlan): readonly number[] => {
  const begins = sections.reduce<readonly number[]>(
    (all, section) => [...all, (all.at(-1) ?? 0) + section.length],
    [0],
  );
  return [...begins.slice(0, -1), length];
};

/** Posts that stand under a section's ridge; one right at a step is the higher's. From end A. */
export const postsUnder = (plan: SteppedPlan, index: number): readonly number[] => {
  const begins = beginsOf(plan);
  const [from, to] = [begins[index] ?? 0, begins[index + 1] ?? 0];
  const steps = stepsOf(plan);
  return (plan.posts?.at ?? []).filter((at) => {
    const step = steps.find((one) => Math.abs(one.at - at) < hair);
    return step ? step.higher === index : at > from - hair && at < to + hair;
  });
};

export const sectionName = (index: number): string => `section${index + 1}`;

/**
 * Marks of the whole run, so that they stand over one layout of the walls; each section has its own end rafters, flush with
 * its gables and so far clear of the walls it stands against.
 */
const marksOn = (plan: SteppedPlan, { bearing }: RoofSection, lies: SectionFrame): readonly number[] => {
  const { thickness } = plan.rafter;
  const clearAt = (end: SectionEnd): number =>
    end.what === 'higher' ? thickness / 2 + bearing.clearance : thickness / 2;
  const [first, last] = [lies.from + clearAt(lies.ends.A), lies.to - clearAt(lies.ends.B)];
  const clear = 2 * thickness - hair;
  const inner = innerMarks(plan).filter((x) => x - first >= clear && last - x >= clear);
  return last > first ? [first, ...inner, last] : [first];
};

const liesAt = (plan: SteppedPlan, index: number, section: RoofSection): SectionFrame => {
  const begins = beginsOf(plan);
  const steps = stepsOf(plan);
  const ending = (step: Step | undefined): SectionEnd => {
    if (!step) return { what: 'gable', past: plan.rakeOverhang };
    if (step.higher === index) return { what: 'gable', past: section.stepOverhang };
    return { what: 'higher', into: section.bearing.on === 'pocket' ? section.bearing.length : 0 };
  };
  return {
    from: begins[index] as number,
    to: begins[index + 1] as number,
    plates: section.plateHeight,
    ends: { A: ending(steps[index - 1]), B: ending(steps[index]) },
  };
};

const sectionOf = (
  plan: SteppedPlan,
  index: number,
  section: RoofSection,
): { readonly frame: Frame; readonly eaves: readonly Eave[] } => {
  const clad = cladOf(plan);
  const name = sectionName(index);
  const reach = sectionRun(plan, section);
  const lies = liesAt(plan, index, section);
  const planes = (['street', 'yard'] as const).map((wall): Plane & { readonly side: typeof wall } => ({
    side: wall,
    id: `${name}.${wall}`,
    foot: [0, wall === 'street' ? -reach : reach],
    up: inward[wall],
    base: section.plateHeight,
    m: gradient(section.slope),
  }));
  const limits = gableEnds(lies.to).map((limit) =>
    limit.id === 'A' ? { ...limit, reach: -lies.from } : limit,
  );
  const body: Body = { id: name, planes, limits };
  const stations = marksOn(plan, section, lies);
  const eaves = planes.map((plane): Eave => ({
    side: plane.side,
    plane,
    body,
    run: reach,
    m: plane.m,
    overhang: section.overhang,
    seat: section.seat,
    clad,
    stations,
    section: index,
  }));
  const gables = Object.values(lies.ends).filter(({ what }) => what === 'gable').length;
  const { span, ridge } = section;
  return { frame: { body, name, span, past: plan.rakeOverhang, gables, ridge, section: lies }, eaves };
};

/** Each section is a gable of its own; nothing of one lies over another. */
export const stepped = (plan: SteppedPlan): RoofForm => {
  const [start, ...rest] = plan.sections;
  const first = sectionOf(plan, 0, start);
  const others = rest.map((section, i) => sectionOf(plan, i + 1, section));
  return {
    bodies: [first, ...others].map(({ frame }) => frame.body),
    eaves: [first, ...others].flatMap(({ eaves }) => eaves),
    frames: [first.frame, ...others.map(({ frame }) => frame)],
  };
};
