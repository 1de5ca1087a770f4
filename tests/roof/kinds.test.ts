import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readRoof } from '../../src/content/readRoof';
import { figure } from '../../src/core/roof/figure';
import type { FiguredRoof } from '../../src/core/roof/figured';
import { sample, roofOf, type Changes } from './roofs';

/** Gables with two different sides, ridges on posts, and sheds. */

const { ridge: _ridge, ...bare } = sample;
const shedFile = (changes: Changes = {}) => ({
  ...bare,
  kind: 'shed',
  span: 144,
  ledger: { thickness: 1.5, depth: 9.25 },
  ...changes,
});
const shedOf = (changes: Changes = {}): FiguredRoof => {
  const read = readRoof(shedFile(changes));
  if (!read.ok) throw new Error(JSON.stringify(read.complaints));
  return figure(read.value);
};
const refusedAt = (file: unknown): readonly string[] => {
  const read = readRoof(file);
  return read.ok ? [] : read.complaints.map(({ path }) => path);
};
/** Sides that happen to be alike share their rafters. */
const rafter = (roof: FiguredRoof, side: string) =>
  roof.commonRafters.find((one) => one.side === side || one.side === 'both')!;

const rise = fc.double({ min: 3, max: 12, noNaN: true });
const plateHeight = fc.double({ min: -30, max: 30, noNaN: true });

describe('a gable whose sides differ', () => {
  it('is the usual gable where they do not', () => {
    expect(roofOf({ yard: {} })).toEqual(roofOf());
  });

  it('has its ridge where both sides come to the same height', () => {
    fc.assert(
      fc.property(rise, rise, plateHeight, (up, other, high) => {
        const roof = roofOf({
          slope: { rise: up, run: 12 },
          yard: { slope: { rise: other, run: 12 }, plateHeight: high, seat: 2 },
          seat: 2,
          span: 400,
          joists: false,
          collars: false,
        });
        const [street, yard] = [rafter(roof, 'street'), rafter(roof, 'yard')];
        expect(street.run + yard.run).toBeCloseTo(400, 9);
        expect(street.rise).toBeCloseTo(high + yard.rise, 9);
      }),
    );
  });

  it('with equal slopes, a plate higher by h moves the ridge h / 2m toward it', () => {
    const roof = roofOf({ yard: { plateHeight: 12 } });
    // 6 in 12: 12 in of height are 24 in of run, half of it from each side.
    expect(rafter(roof, 'street').run).toBeCloseTo(144 + 12, 9);
    expect(rafter(roof, 'yard').run).toBeCloseTo(144 - 12, 9);
  });

  it('says whose rafters stand proud of the ridge, and by how much', () => {
    const roof = roofOf({ slope: { rise: 4, run: 12 }, yard: { slope: { rise: 12, run: 12 } } });
    const [ridge] = roof.ridges;
    const top = (side: string, m: number): number => {
      const { heightAbovePlate, run } = rafter(roof, side);
      return heightAbovePlate + (run - 0.75) * m;
    };
    const [street, yard] = [top('street', 4 / 12), top('yard', 1)];
    expect(ridge?.topHeight).toBeCloseTo(Math.min(street, yard), 9);
    expect(ridge?.proud?.by).toBeCloseTo(Math.abs(street - yard), 9);
    expect(ridge?.proud?.side).toBe(street > yard ? 'street' : 'yard');
    expect(roofOf().ridges[0]).not.toHaveProperty('proud');
  });

  it('is the mirror image when the sides change places', () => {
    fc.assert(
      fc.property(rise, rise, fc.double({ min: 0, max: 24, noNaN: true }), (up, other, high) => {
        const [slope, slope2] = [
          { rise: up, run: 12 },
          { rise: other, run: 12 },
        ];
        const one = roofOf({
          slope,
          yard: { slope: slope2, plateHeight: high },
          seat: 2,
          span: 400,
          joists: false,
        });
        const two = roofOf({
          slope: slope2,
          yard: { slope, plateHeight: -high },
          seat: 2,
          span: 400,
          joists: false,
        });
        for (const key of ['run', 'lineLength', 'edgeLength', 'heightAbovePlate'] as const) {
          expect(rafter(one, 'street')[key]).toBeCloseTo(rafter(two, 'yard')[key], 9);
          expect(rafter(one, 'yard')[key]).toBeCloseTo(rafter(two, 'street')[key], 9);
        }
        expect(one.ridges[0]!.topHeight - high).toBeCloseTo(two.ridges[0]!.topHeight, 9);
      }),
    );
  });

  it('has a tie that reaches both planes', () => {
    const roof = roofOf({ yard: { plateHeight: 12 }, joists: { height: 12 } });
    // On the higher plate; over the lower one 12 in up, where the plane has come in by (12 - heightAbovePlate) / m.
    const { heightAbovePlate } = rafter(roof, 'street');
    expect(roof.ties[0]?.length).toBeCloseTo(288 - (12 - heightAbovePlate) / 0.5, 9);
  });

  it('is refused where no ridge is left between the plates', () => {
    expect(refusedAt({ ...sample, yard: { plateHeight: 200 } })).toEqual(['yard.plateHeight']);
    // 6 in 12 both, over 288 in: a ridge 1 1/2 in inside a plate has the other 142 1/2 in higher or lower.
    const read = readRoof({ ...sample, yard: { plateHeight: 200 } });
    expect(read.ok ? '' : read.complaints[0]?.accepted).toBe('-142.5 in to 142.5 in at these slopes');
    expect(refusedAt({ ...sample, yard: { slope: { rise: 50, run: 12 } } })).toEqual(['yard.slope.rise']);
  });
});

describe('a ridge on posts', () => {
  const posts = { at: [1.75, `13'`, 310.25], below: 97.125 };

  it('has posts from what they stand on to its underside', () => {
    const [post] = roofOf({ posts }).posts ?? [];
    expect(post).toMatchObject({ count: 3, at: [1.75, 156, 310.25] });
    expect(post?.length).toBeCloseTo(77.9807 - 9.25 + 97.125, 3);
  });

  it('carries, so nothing is said of ties and low slopes', () => {
    const low = { slope: { rise: 2, run: 12 }, joists: false };
    const codes = (changes: Changes) => roofOf(changes).cautions.map(({ code }) => code);
    expect(codes(low)).toEqual(expect.arrayContaining(['tiesAbsent', 'slopeLow']));
    expect(codes({ ...low, posts })).not.toContain('tiesAbsent');
    expect(codes({ ...low, posts })).not.toContain('slopeLow');
  });

  it('is refused past the end of the roof', () => {
    expect(refusedAt({ ...sample, posts: { at: [400], below: 0 } })).toEqual(['posts.at']);
    expect(refusedAt({ ...sample, posts: { at: ['far'], below: 0 } })).toEqual(['posts.at.0']);
  });
});

describe('a shed', () => {
  it('has the rafters of half a gable, but for what the ledger takes', () => {
    const [shed, gable] = [shedOf().commonRafters[0]!, roofOf().commonRafters[0]!];
    expect(shed.lineLength).toBe(gable.lineLength);
    expect(shed.shortening).toBe(1.5);
    // Half a ridge more than half a gable: 3/4 in level, at 6 in 12.
    expect(gable.bodyLength - shed.bodyLength).toBeCloseTo(0.75 * Math.sqrt(1.25), 9);
    expect(shed.count * 2).toBe(gable.count);
  });

  it('has a ledger flush with the tops, no ridge and no ties', () => {
    const { ledgers, ridges, ties, blocks, cautions } = shedOf();
    expect(ridges).toEqual([]);
    expect(ties).toEqual([]);
    expect(ledgers).toMatchObject([{ count: 1, length: 312, bearsFully: true }]);
    expect(ledgers?.[0]?.topHeight).toBeCloseTo(6.3557 + (144 - 1.5) / 2, 3);
    expect(blocks.reduce((sum, { count }) => sum + count, 0)).toBe(13);
    expect(cautions).toEqual([]);
  });

  it('says that a ledger is too shallow for the cut', () => {
    const { ledgers, cautions } = shedOf({ ledger: { thickness: 1.5, depth: 7.25 } });
    expect(ledgers?.[0]?.bearsFully).toBe(false);
    expect(cautions).toMatchObject([{ code: 'ledgerShallow', at: 'ledger.depth' }]);
  });

  it.each([
    [{ ridge: { thickness: 1.5, depth: 9.25 } }, 'ridge'],
    [{ joists: false }, 'joists'],
    [{ ledger: undefined }, 'ledger'],
    [{ span: 3 }, 'span'],
  ])('with %j is refused at %s', (changes, path) => {
    expect(refusedAt(JSON.parse(JSON.stringify(shedFile(changes))))).toContain(path);
  });
});
