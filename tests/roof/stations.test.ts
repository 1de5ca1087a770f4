import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { baysOf, clearBays, differentBays } from '../../src/core/roof/bays';
import { stations, type Row } from '../../src/core/roof/stations';
import { planOf, roofOf } from './roofs';

const row = (changes: Partial<Row> = {}): Row => ({
  length: 312,
  spacing: 24,
  thickness: 1.5,
  datum: 'endA',
  ...changes,
});

describe('stations', () => {
  it('measures from end B as from end A seen in a mirror', () => {
    expect(stations(row({ length: 100, datum: 'endA' }))).toEqual([0.75, 24, 48, 72, 96, 99.25]);
    expect(stations(row({ length: 100, datum: 'endB' }))).toEqual([0.75, 4, 28, 52, 76, 99.25]);
  });

  it('measures from the centre both ways', () => {
    expect(stations(row({ length: 100, datum: 'centre' }))).toEqual([0.75, 26, 50, 74, 99.25]);
    expect(stations(row({ length: 96, datum: 'centre' }))).toEqual([0.75, 24, 48, 72, 95.25]);
  });

  it.each([
    [96 + 3.75 - 0.01, [0.75, 24, 48, 72, 99]],
    [96 + 3.75, [0.75, 24, 48, 72, 96, 99]],
  ])('leaves out an inner one closer than two thicknesses to a flush one: %f in', (length, marks) => {
    expect(stations(row({ length }))).toEqual([...marks.slice(0, -1), length - 0.75]);
  });

  it('has only its two ends when it is shorter than a bay', () => {
    expect(stations(row({ length: 12 }))).toEqual([0.75, 11.25]);
    expect(stations(row({ length: 24 }))).toEqual([0.75, 23.25]);
    expect(stations(row({ length: 12, datum: 'centre' }))).toEqual([0.75, 6, 11.25]);
  });

  it('does not drift over two million inches', () => {
    const found = stations(row({ length: 2_000_000, spacing: 16 }));
    expect(found[1000]).toBe(16_000);
    expect(found).toHaveLength(125_001);
    expect(found[124_999]).toBe(1_999_984);
    expect(roofOf({ length: 2_000_000, spacing: 16 }).blocks.map(({ count }) => count)).toEqual([4, 249_996]);
  });
});

const rows = fc.record({
  length: fc.double({ min: 12, max: 4000, noNaN: true }),
  spacing: fc.double({ min: 6, max: 96, noNaN: true }),
  thickness: fc.double({ min: 0.5, max: 5, noNaN: true }),
  datum: fc.constantFrom('endA', 'endB', 'centre' as const),
});

describe('what holds for every row', () => {
  it('bays and rafters add up to the length, and no bay is tighter than a rafter or the spacing leaves', () => {
    fc.assert(
      fc.property(rows, (some) => {
        const found = stations(some);
        const bays = clearBays(found, some.thickness);
        const sum = bays.reduce((a, b) => a + b, 0) + found.length * some.thickness;
        expect(sum).toBeCloseTo(some.length, 6);
        const least = Math.min(some.thickness, some.spacing - some.thickness);
        if (found.length > 2) expect(Math.min(...bays)).toBeGreaterThan(least - 1e-5);
        // Only marks left out within two thicknesses of the flush rafters make a bay longer than the spacing.
        expect(Math.max(...bays) + some.thickness).toBeLessThan(some.spacing + 4 * some.thickness);
      }),
    );
  });

  it('datum A and datum B mirror each other, and centre mirrors itself', () => {
    const mirrored = (some: Row): readonly number[] =>
      stations(some)
        .map((x) => some.length - x)
        .reverse();
    fc.assert(
      fc.property(rows, (some) => {
        const other = { endA: 'endB', endB: 'endA', centre: 'centre' } as const;
        const twin = stations({ ...some, datum: other[some.datum] });
        expect(mirrored(some)).toHaveLength(twin.length);
        mirrored(some).forEach((x, i) => expect(x).toBeCloseTo(twin[i] as number, 8));
      }),
    );
  });
});

describe('bays', () => {
  it('tells the block of every bay in order', () => {
    const plan = planOf({ length: 100 });
    const bays = baysOf(stations(row({ length: 100 })), plan);
    expect(bays.map(({ clear }) => clear)).toEqual([21.75, 22.5, 22.5, 22.5, 1.75]);
    expect(bays.map(({ block }) => block)).toEqual([21.6875, 22.4375, 22.4375, 22.4375, 1.6875]);
  });

  it('has no block where the allowance eats the bay', () => {
    const plan = planOf({ length: 100, blockAllowance: 2 });
    expect(baysOf(stations(row({ length: 100 })), plan)[4]).toEqual({ clear: 1.75, block: 0 });
    expect(roofOf({ length: 100, blockAllowance: 2 }).blocks.map(({ length }) => length)).toEqual([
      19.75, 20.5,
    ]);
  });

  it('counts bays as equal that differ only by rounding', () => {
    const third = 1 / 3;
    const bays = [third, 1 - 2 / 3, 0.1 + 0.2 + third - 0.3].map((clear) => ({ clear, block: clear }));
    expect(differentBays(bays)).toEqual([{ clear: third, block: third, count: 3 }]);
  });

  it('counts every bay once for each eave', () => {
    fc.assert(
      fc.property(rows, ({ length, spacing, datum }) => {
        const { blocks, layout } = roofOf({ length, spacing, datum });
        expect(blocks.reduce((sum, { count }) => sum + count, 0)).toBe(2 * (layout.stations.length - 1));
      }),
      { numRuns: 60 },
    );
  });
});
