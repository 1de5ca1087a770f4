import type { Dormer, GablePlan } from '../core/roof/plan';
import { inch, type Inch } from '../core/units/inch';
import { sizeOf, slopeOf, unitsOf } from './fileLengths';
import { roofDefaults } from './roofLimits';
import type { RoofFile } from './roofSchema';

/** One dormer of a file found right, what is left out taken from the main roof and the side it stands in. */
export const dormerOf = (
  file: RoofFile,
  index: number,
  main: Pick<GablePlan, 'overhang' | 'seat' | 'ridge' | 'yard'>,
): Dormer => {
  const dormer = (file.dormers ?? [])[index] as NonNullable<RoofFile['dormers']>[number];
  const units = unitsOf(file);
  const size = (value: number | string | undefined, usual: Inch): Inch => sizeOf(value, units) ?? usual;
  const must = (value: number | string): Inch => size(value, inch(NaN));
  const { header, studs } = dormer;
  const host = dormer.side === 'yard' && main.yard ? main.yard : main;
  return {
    kind: dormer.kind,
    side: dormer.side,
    at: must(dormer.at),
    width: must(dormer.width),
    front: must(dormer.front),
    wall: must(dormer.wall),
    ...(dormer.slope && { slope: slopeOf(dormer.slope, units) }),
    overhang: size(dormer.overhang, host.overhang),
    seat: size(dormer.seat, host.seat),
    header: header ? { thickness: must(header.thickness), depth: must(header.depth) } : main.ridge,
    studs: {
      spacing: size(studs?.spacing, inch(roofDefaults['gableStuds.spacing'])),
      thickness: size(studs?.thickness, inch(roofDefaults['gableStuds.thickness'])),
    },
  };
};
