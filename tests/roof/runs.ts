import fc from 'fast-check';
import { readRoof } from '../../src/content/readRoof';
import { figure } from '../../src/core/roof/figure';
import type { FiguredRidge, FiguredRoof } from '../../src/core/roof/figured';
import type { RoofSection, SteppedPlan } from '../../src/core/roof/plan';
import { sample, type Changes } from './roofs';

/** Runs of gables with ridges at several heights. */

/** The sample's gable 40 ft long: 16 ft of it 18 ft wide with plates a foot lower, its ridge in a pocket of the rest. */
export const runFile = (changes: Changes = {}, sections: readonly object[] = lowAndHigh): object => ({
  ...sample,
  kind: 'stepped',
  length: 480,
  sections,
  ...changes,
});

export const lowAndHigh: readonly object[] = [{ length: 192, span: 216, plateHeight: -12 }, {}];

export const planFrom = (file: unknown): SteppedPlan | undefined => {
  const read = readRoof(file);
  return read.ok && read.value.kind === 'stepped' ? read.value : undefined;
};

export const runRoof = (changes: Changes = {}, sections: readonly object[] = lowAndHigh): FiguredRoof => {
  const read = readRoof(runFile(changes, sections));
  if (!read.ok) throw new Error(read.complaints.map((c) => JSON.stringify(c)).join('\n'));
  return figure(read.value);
};

export const ridgeIn = ({ ridges }: FiguredRoof, section: number): FiguredRidge => {
  const found = ridges.find(({ id }) => id === `ridge.section${section}`);
  if (!found) throw new Error(`no ridge of section ${section}`);
  return found;
};

/** Top of a section's ridge from the geometry alone: the underside leaves the plate at the inner end of the seat. */
export const topFrom = (plan: SteppedPlan, section: RoofSection): number => {
  const m = section.slope.rise / section.slope.run;
  const clad = plan.reference === 'sheathing' ? plan.sheathing : 0;
  const toFace = section.span / 2 + clad - section.seat - section.ridge.thickness / 2;
  return section.plateHeight + toFace * m + plan.rafter.depth * Math.sqrt(1 + m * m);
};

const tenths = (min: number, max: number) =>
  fc.integer({ min: Math.round(min * 10), max: Math.round(max * 10) }).map((n) => n / 10);
const maybe = <T>(usual: fc.Arbitrary<T>) => fc.option(usual, { nil: undefined });

const section = fc
  .record({
    length: tenths(40, 160),
    span: maybe(tenths(140, 340)),
    rise: maybe(fc.integer({ min: 3, max: 12 })),
    plateHeight: tenths(-80, 100),
    overhang: maybe(tenths(0, 20)),
    seat: maybe(tenths(2, 4)),
    ridge: maybe(
      fc.record({
        thickness: fc.constantFrom(1.5, 1.75, 3.5),
        depth: fc.constantFrom(9.25, 11.25, 14),
      }),
    ),
    stepOverhang: fc.constantFrom(0, 0, 8),
    bearing: maybe(
      fc.record({
        on: fc.constantFrom('pocket', 'wall'),
        length: tenths(1, 5.5),
        below: fc.constantFrom(0, 96),
        clearance: fc.constantFrom(0, 0.5),
      }),
    ),
  })
  .map(({ rise, ...rest }) => ({ ...rest, ...(rise !== undefined && { slope: { rise, run: 12 } }) }));

/** Runs that a crew may meet, of two to four sections; where one would stick out of a higher one the reader refuses it. */
export const someRun = fc
  .record({
    rise: fc.integer({ min: 3, max: 12 }),
    span: tenths(160, 360),
    overhang: tenths(0, 20),
    spacing: fc.constantFrom(12, 16, 19.2, 24),
    reference: fc.constantFrom('plate', 'sheathing'),
    datum: fc.constantFrom('endA', 'endB', 'centre'),
    rakeOverhang: fc.constantFrom(0, 8),
    sections: fc.array(section, { minLength: 2, maxLength: 4 }),
  })
  .map(({ rise, sections, ...rest }) => ({
    format: 'tack-and-true/roof@1',
    kind: 'stepped',
    slope: { rise, run: 12 },
    length: sections.reduce((sum, one) => sum + one.length, 0),
    rafter: { thickness: 1.5, depth: 7.25 },
    ridge: { thickness: 1.5, depth: 11.25 },
    plate: { width: 5.5 },
    seat: 2.5,
    gableStuds: {},
    sections,
    ...rest,
  }));
