import type { GablePlan, Section, Wing } from '../core/roof/plan';
import { inch, type Inch } from '../core/units/inch';
import { sizeOf, slopeOf, unitsOf } from './fileLengths';
import { roofDefaults } from './roofLimits';
import type { RoofFile } from './roofSchema';

/** One wing of a file found right, what is left out taken from the main roof and the side it stands against. */
export const wingOf = (
  file: RoofFile,
  index: number,
  main: Pick<GablePlan, 'slope' | 'overhang' | 'rakeOverhang' | 'ridge' | 'yard'>,
): Wing => {
  const wing = (file.wings ?? [])[index] as NonNullable<RoofFile['wings']>[number];
  const units = unitsOf(file);
  const size = (value: number | string | undefined, usual: Inch): Inch => sizeOf(value, units) ?? usual;
  const must = (value: number | string): Inch => size(value, inch(NaN));
  const section = (value: typeof wing.ridge, usual: Section): Section =>
    value ? { thickness: must(value.thickness), depth: must(value.depth) } : usual;
  const host = wing.side === 'yard' && main.yard ? main.yard : main;
  return {
    side: wing.side,
    at: must(wing.at),
    span: must(wing.span),
    length: must(wing.length),
    slope: wing.slope ? slopeOf(wing.slope, units) : host.slope,
    overhang: size(wing.overhang, host.overhang),
    rakeOverhang: size(wing.rakeOverhang, main.rakeOverhang),
    ridge: section(wing.ridge, main.ridge),
    valley: section(wing.valley, main.ridge),
    over: {
      sheathing: size(wing.over?.sheathing, inch(roofDefaults['wings.*.over.sheathing'])),
      sleeper: section(wing.over?.sleeper, {
        thickness: inch(roofDefaults['wings.*.over.sleeper.thickness']),
        depth: inch(roofDefaults['wings.*.over.sleeper.depth']),
      }),
    },
    framing: wing.framing ?? 'longValley',
    longFrom: wing.longFrom ?? 'A',
  };
};
