import type { RidgeBearing, RoofSection, Section, SteppedPlan } from '../core/roof/plan';
import { inch, type Inch } from '../core/units/inch';
import { sizeOf, slopeOf, unitsOf } from './fileLengths';
import { roofDefaults } from './roofLimits';
import type { RoofFile } from './roofSchema';

type FileSection = NonNullable<RoofFile['sections']>[number];

type Main = Pick<SteppedPlan, 'length' | 'span' | 'slope' | 'overhang' | 'seat' | 'ridge' | 'plate'>;

/** Sections of a file found right, what is left out taken from the main keys. */
export const sectionsOf = (file: RoofFile, main: Main): SteppedPlan['sections'] => {
  const units = unitsOf(file);
  const size = (value: number | string | undefined, usual: Inch): Inch => sizeOf(value, units) ?? usual;
  const must = (value: number | string): Inch => size(value, inch(NaN));
  const section = (value: FileSection['ridge'], usual: Section): Section =>
    value ? { thickness: must(value.thickness), depth: must(value.depth) } : usual;
  const bearingOf = ({ bearing }: FileSection): RidgeBearing => {
    const on = bearing?.on ?? 'pocket';
    const usual = on === 'pocket' ? main.plate.width : inch(roofDefaults['sections.*.bearing.length']);
    return {
      on,
      length: size(bearing?.length, usual),
      below: size(bearing?.below, inch(0)),
      clearance: size(bearing?.clearance, inch(0)),
    };
  };
  const all = file.sections ?? [];
  const rest = inch(
    all.slice(0, -1).reduce<number>((left, one) => left - size(one.length, inch(0)), main.length),
  );
  const sectionOf = (one: FileSection): RoofSection => ({
    length: size(one.length, rest),
    span: size(one.span, main.span),
    slope: one.slope ? slopeOf(one.slope, units) : main.slope,
    plateHeight: size(one.plateHeight, inch(0)),
    overhang: size(one.overhang, main.overhang),
    seat: size(one.seat, main.seat),
    ridge: section(one.ridge, main.ridge),
    stepOverhang: size(one.stepOverhang, inch(0)),
    bearing: bearingOf(one),
  });
  const [first = {}, ...others] = all;
  return [sectionOf(first), ...others.map(sectionOf)];
};
