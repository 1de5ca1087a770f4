import { describe, expect, it } from 'vitest';
import { rafterOutline } from '../../src/core/roof/rafterOutline';
import { roofOf, rafterOf } from './roofs';

describe('gable studs', () => {
  it('end under the rafter: the long point lies on its underside', () => {
    const [studs] = roofOf({ gableStuds: {} }).gableStuds ?? [];
    const outline = rafterOutline(rafterOf());
    // From the bottom of the plumb cut down to the inner end of the seat the underside is a straight line.
    const [[x0, z0], [x1, z1]] = [outline[1]!, outline[2]!];
    const under = (out: number): number => z0 + ((out - x0) / (x1 - x0)) * (z1 - z0);
    const lengths = [...(studs?.lengths ?? [])].reverse();
    expect(lengths).toHaveLength(8);
    // The side nearer to the ridge is the long one: half a stud nearer than its centre, 16 in and so on from the middle.
    lengths.forEach((length, k) => expect(length).toBeCloseTo(under(16 * (k + 1) - 0.75), 9));
  });

  it('are told for both ends and sides', () => {
    expect(roofOf({ gableStuds: {} }).gableStuds).toMatchObject([{ count: 32, side: 'both' }]);
    const unequal = roofOf({ gableStuds: {}, yard: { plateHeight: 12 } }).gableStuds ?? [];
    expect(unequal.map(({ side }) => side)).toEqual(['street', 'yard']);
    expect(roofOf()).not.toHaveProperty('gableStuds');
  });
});
