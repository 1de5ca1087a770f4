import type { Dormer, GableDormer, GablePlan, Section } from '../core/roof/plan';
import { inch, type Inch } from '../core/units/inch';
import { complaint, type Complaint } from './complaint';
import { sizeOf, slopeOf, unitsOf } from './fileLengths';
import { roofDefaults } from './roofLimits';
import type { RoofFile } from './roofSchema';
import { lengthWanted } from './roofSchemaParts';
import { when } from './saidSizes';

type DormerFile = NonNullable<RoofFile['dormers']>[number];

/** Keys of the other kind, and of walls that a gable dormer does not have; and the wall of a shed. */
export const dormerKeys = ({ dormers }: RoofFile): readonly Complaint[] =>
  (dormers ?? []).flatMap((dormer, i) => {
    const stray = (
      keys: readonly (keyof DormerFile)[],
      wrong: string,
      accepted: string,
    ): readonly Complaint[] =>
      keys.flatMap((key) =>
        when(dormer[key] !== undefined, () => complaint(`dormers.${i}.${key}`, wrong, accepted)),
      );
    if (dormer.kind === 'shed')
      return [
        ...when(dormer.wall === undefined, () => complaint(`dormers.${i}.wall`, 'is missing', lengthWanted)),
        ...stray(
          ['rakeOverhang', 'ridge', 'valley'],
          'means nothing on a shed dormer',
          'only with kind "gable"',
        ),
      ];
    return dormer.wall === undefined
      ? stray(
          ['overhang', 'seat', 'studs'],
          'means nothing on a gable dormer without side walls',
          'only with wall, the height of their plates',
        )
      : [];
  });

type Main = Pick<GablePlan, 'overhang' | 'seat' | 'slope' | 'ridge' | 'yard'>;

/** One dormer of a file found right, what is left out taken from the main roof and the side it stands in. */
export const dormerOf = (file: RoofFile, index: number, main: Main): Dormer => {
  const dormer = (file.dormers ?? [])[index] as DormerFile;
  const units = unitsOf(file);
  const size = (value: number | string | undefined, usual: Inch): Inch => sizeOf(value, units) ?? usual;
  const must = (value: number | string | undefined): Inch => size(value, inch(NaN));
  const section = (value: DormerFile['header'], usual: Section): Section =>
    value ? { thickness: must(value.thickness), depth: must(value.depth) } : usual;
  const { studs, slope } = dormer;
  const host = dormer.side === 'yard' && main.yard ? main.yard : main;
  const place = {
    side: dormer.side,
    at: must(dormer.at),
    width: must(dormer.width),
    front: must(dormer.front),
    header: section(dormer.header, main.ridge),
  };
  const walls = {
    overhang: size(dormer.overhang, host.overhang),
    seat: size(dormer.seat, host.seat),
    studs: {
      spacing: size(studs?.spacing, inch(roofDefaults['gableStuds.spacing'])),
      thickness: size(studs?.thickness, inch(roofDefaults['gableStuds.thickness'])),
    },
  };
  if (dormer.kind === 'shed')
    return {
      kind: 'shed',
      ...place,
      ...walls,
      wall: must(dormer.wall),
      ...(slope && { slope: slopeOf(slope, units) }),
    };
  const gable: GableDormer = {
    kind: 'gable',
    ...place,
    slope: slope ? slopeOf(slope, units) : host.slope,
    rakeOverhang: size(dormer.rakeOverhang, inch(roofDefaults.rakeOverhang)),
    ridge: section(dormer.ridge, main.ridge),
    valley: section(dormer.valley, main.ridge),
  };
  return dormer.wall === undefined ? gable : { ...gable, walls: { ...walls, top: must(dormer.wall) } };
};
