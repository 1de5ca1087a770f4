import { cladOf } from '../core/roof/forms/common';
import type { GablePlan, Standing } from '../core/roof/plan';
import { standingBearing, standingSlope } from '../core/roof/standing';
import { inch, type Inch } from '../core/units/inch';
import { slopeOf } from './fileLengths';
import type { RoofLength } from './roofLimits';
import type { RoofFile } from './roofSchema';

type Sizes = (path: RoofLength) => Inch;

/** The standing roof of a file found right, what is left out taken from the new one. */
export const standingOf = (file: RoofFile, size: Sizes): Standing | undefined => {
  const { standing } = file;
  if (!standing) return undefined;
  const or = (said: unknown, path: RoofLength, usual: RoofLength): Inch =>
    size(said === undefined ? usual : path);
  return {
    end: standing.end,
    heightAbovePlate: size('standing.heightAbovePlate'),
    ...(standing.ridgeTop !== undefined && { ridgeTop: size('standing.ridgeTop') }),
    ridgeThickness: or(standing.ridgeThickness, 'standing.ridgeThickness', 'ridge.thickness'),
    lastRafter: size('standing.lastRafter'),
    rafterDepth: or(standing.rafterDepth, 'standing.rafterDepth', 'rafter.depth'),
    nominal: slopeOf(file.slope, file.units),
  };
};

type Main = Pick<GablePlan, 'span' | 'rafter' | 'reference' | 'sheathing'>;

/** The slope that stands and the seat that brings the new rafters to the height of the old ones. */
export const fromStanding = (
  main: Main,
  standing: Standing | undefined,
): Partial<Pick<GablePlan, 'slope' | 'seat'>> => {
  if (!standing) return {};
  const slope = standingSlope({ span: main.span, standing });
  const bearing = standingBearing(main.rafter, { slope, heightAbovePlate: standing.heightAbovePlate });
  return { slope, seat: inch(bearing + cladOf(main)) };
};
