import { describe, expect, it } from 'vitest';
import { dormerIn } from '../roof/dormers';
import { bare, gableDormer, ridgeIn, walled } from '../roof/gableDormers';

/**
 * Published rules of ridges that come to a double header: NAVEDTRA 14044, Builder 3 & 2, vol. 2, ch. 2, p. 2-34, figs. 2-55
 * and 2-56. They hold for a small gable as steep as the main roof, and give no numbers of their own: they are sums, held here
 * without rounding on dormers in a roof 24 ft wide, at several slopes and with headers of several thicknesses.
 */

const slopes = [6, 8, 12] as const;
const headers = [1.5, 1.75] as const;
const each = slopes.flatMap((rise) => headers.map((thickness) => [rise, thickness] as const));
/** The seat keeps its notch shallow at every one of these slopes. */
const main = (rise: number) => ({ slope: { rise, run: 12 }, seat: 2.5 });
const header = (thickness: number) => ({ thickness, depth: 14 });

describe('W34: ridges of dormers', () => {
  it.each(each)(
    'at %i in 12 to members of %f in, without side walls: half the span less half the inside member',
    (rise, thickness) => {
      const roof = gableDormer({ ...bare, header: header(thickness) }, main(rise));
      expect(ridgeIn(roof).length).toBeCloseTo(bare.width / 2 - thickness / 2, 9);
      expect(ridgeIn(roof).lineLength).toBeCloseTo(bare.width / 2, 9);
    },
  );

  it.each(each)(
    'at %i in 12 to members of %f in, with side walls: the length of the plates more',
    (rise, thickness) => {
      const { slope: _, ...same } = walled;
      const wall = 16 + 4 * rise;
      const roof = gableDormer({ ...same, wall, seat: 2.5, header: header(thickness) }, main(rise));
      // As far in as plates as high as these stand over the main rafters' line, less the front: wall·12/rise − 16.
      const plates = (wall * 12) / rise - walled.front;
      expect(dormerIn(roof).sidePlates?.[0]?.lineLength).toBeCloseTo(plates, 9);
      expect(ridgeIn(roof).length).toBeCloseTo(plates + walled.width / 2 - thickness / 2, 9);
    },
  );
});

// An addition of this sort is figured where its walls stand over the roof: from over the main wall, as far as its plates go.
describe('W33: the ridge of an addition that comes to a double header', () => {
  it.each(each)(
    'at %i in 12 to members of %f in: plates and half the span less half the inside member',
    (rise, thickness) => {
      const { slope: _, ...same } = walled;
      const wall = 16 + 4 * rise;
      const addition = { ...same, wall, front: 0, seat: 2.5, header: header(thickness) };
      const plates = (wall * 12) / rise;
      const ridge = ridgeIn(gableDormer(addition, main(rise)));
      expect(ridge.lineLength).toBeCloseTo(plates + walled.width / 2, 9);
      expect(ridge.length).toBeCloseTo(plates + walled.width / 2 - thickness / 2, 9);
    },
  );
});
