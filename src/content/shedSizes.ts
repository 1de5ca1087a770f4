import { cladOf } from '../core/roof/forms/common';
import type { ShedPlan } from '../core/roof/plan';
import { inch, type Inch } from '../core/units/inch';
import type { RoofLength } from './roofLimits';
import type { RoofFile } from './roofSchema';

type Sizes = (path: RoofLength) => Inch;

/** The ledger or high plate of a file found right, what is left out of the plate taken from the low one. */
export const upperEndsOf = (file: RoofFile, size: Sizes): Pick<ShedPlan, 'ledger' | 'highPlate'> => {
  const { highPlate, ledger, reference = 'plate' } = file;
  if (ledger) return { ledger: { thickness: size('ledger.thickness'), depth: size('ledger.depth') } };
  if (!highPlate) return {};
  const clad = cladOf({ reference, sheathing: size('sheathing') });
  return {
    highPlate: {
      width: size(highPlate.width === undefined ? 'plate.width' : 'highPlate.width'),
      seat: highPlate.seat === undefined ? inch(size('seat') - clad) : size('highPlate.seat'),
      overhang: size('highPlate.overhang'),
    },
  };
};
