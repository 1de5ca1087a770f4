import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readRoof } from '../../src/content/readRoof';
import { figure } from '../../src/core/roof/figure';
import type { FiguredRoof } from '../../src/core/roof/figured';
import { sample, type Changes } from './roofs';

/** A gable that goes on from one that stands, in its planes. */

const { seat: _seat, ...noSeat } = sample;
const measured = { end: 'A', heightAbovePlate: 6.375, lastRafter: 0.75 };
const file = (standing: Changes = {}, changes: Changes = {}) => ({
  ...noSeat,
  ...changes,
  standing: { ...measured, ...standing },
});
const figured = (one: unknown): FiguredRoof => {
  const read = readRoof(one);
  if (!read.ok) throw new Error(JSON.stringify(read.complaints));
  return figure(read.value);
};
const refused = (one: unknown) => {
  const read = readRoof(one);
  return read.ok ? [] : read.complaints;
};
const caution = ({ cautions }: FiguredRoof, code: string) => cautions.find((one) => one.code === code);
const numbers = (value: unknown): readonly number[] => {
  if (typeof value === 'number') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(numbers) : [];
};
const expectAlike = (a: unknown, b: unknown, digits = 9): void => {
  const [one, other] = [numbers(a), numbers(b)];
  expect(one).toHaveLength(other.length);
  one.forEach((value, i) => expect(value).toBeCloseTo(other[i] as number, digits));
};

describe('worked by hand', () => {
  // What stands: span 24 ft, ridge 1 1/2 in, heights over the plate 7 3/4 in and 115 3/16 in.
  // Run to the ridge's face 144 - 3/4 = 143 1/4; (115 3/16 - 7 3/4) / 143 1/4 = 3/4: 9 in 12, though 8 was said. g = 5/4.
  const roof = figured(
    file(
      { heightAbovePlate: 7.75, ridgeTop: 115.1875, rafterDepth: 6 },
      { slope: { rise: 8, run: 12 }, rafter: { thickness: 1.5, depth: 8 }, rakeOverhang: 10 },
    ),
  );

  it('the seat follows from the height: (8 x 5/4 - 7 3/4) / (3/4) = 3', () => {
    const [rafter] = roof.commonRafters;
    expect(rafter?.seat).toBeCloseTo(3, 9);
    expect(rafter?.heightAbovePlate).toBeCloseTo(7.75, 9);
    expect(rafter?.bodyLength).toBeCloseTo(143.25 * 1.25, 9);
    expect(rafter?.plumbCutLength).toBeCloseTo(10, 9);
    expect(roof.ridges[0]?.topHeight).toBeCloseTo(115.1875, 9);
  });

  it('the ridge butts the old one and has its rake at the free gable alone', () => {
    expect(roof.ridges[0]?.length).toBeCloseTo(312 + 10, 9);
  });

  it('what 8 in 12 would have come to: 11 15/16 in less by the ridge, a gap of 8 / 12 / (5/4)', () => {
    expect(roof.standing?.riseOffNominal).toBeCloseTo(143.25 / 12, 9);
    expect(roof.standing?.nominalGap).toBeCloseTo(8 / 15, 9);
    const { text = '', at } = caution(roof, 'standingSlope') ?? {};
    expect(at).toBe('standing.ridgeTop');
    for (const part of ['9 in 12', '8 in 12', '11.938 in more', '0.533 in open at the top'])
      expect(text).toContain(part);
  });

  it('8 in stock beside 6 in: undersides 2 x 5/4 in lower', () => {
    expect(roof.standing?.underside).toBeCloseTo(2.5, 9);
    expect(caution(roof, 'standingStock')?.text).toContain('2.5 in lower');
  });

  it('the first new rafter stands 24 in from the old one, 22 1/2 in clear, and only the free gable has one flush', () => {
    expect(roof.layout.stations.slice(0, 3)).toEqual([23.25, 47.25, 71.25]);
    expect(roof.layout.stations.slice(-2)).toEqual([287.25, 311.25]);
    expect(roof.standing).toMatchObject({ end: 'A', lastRafter: -0.75, firstBay: 22.5 });
    expect(roof.layout.datum).toBe('standing');
    // Old rafter to last: thirteen bays a side, the one over the joint line among them.
    expect(roof.blocks.reduce((sum, { count }) => sum + count, 0)).toBe(26);
  });
});

const tenth = (min: number, max: number) => fc.integer({ min: min * 10, max: max * 10 }).map((n) => n / 10);
const some = fc.record({
  rise: tenth(3, 12),
  span: tenth(160, 360),
  seat: tenth(2, 4),
  ridge: fc.constantFrom(1.5, 3.5),
  reference: fc.constantFrom('plate', 'sheathing'),
});

describe('a roof measured on a gable', () => {
  it('has the rafters of that gable, whichever slope it was said to have', () => {
    fc.assert(
      fc.property(some, fc.constantFrom(5, 8), ({ rise, span, seat, ridge, reference }, said) => {
        const shared = { span, reference, ridge: { thickness: ridge, depth: 16 } };
        const old = figured({ ...sample, ...shared, seat, slope: { rise, run: 12 } });
        const [rafter] = old.commonRafters;
        const over = rafter!.heightAbovePlate + (reference === 'sheathing' ? (0.5 * rise) / 12 : 0);
        const built = (nominal: number, top: object) =>
          figured(file({ heightAbovePlate: over, ...top }, { ...shared, slope: { rise: nominal, run: 12 } }));
        const followed = built(said, { ridgeTop: old.ridges[0]!.topHeight });
        for (const roof of [followed, built(rise, {})]) {
          expectAlike({ ...roof.commonRafters[0], count: 0 }, { ...rafter, count: 0 }, 8);
          expect(roof.ridges[0]?.topHeight).toBeCloseTo(old.ridges[0]!.topHeight, 8);
        }
      }),
    );
  });

  it('is the same from the other end, its layout in the mirror', () => {
    fc.assert(
      fc.property(
        tenth(60, 400),
        tenth(1, 15),
        fc.constantFrom(16, 19.2, 24),
        (length, lastRafter, spacing) => {
          const [a, b] = ['A', 'B'].map((end) => figured(file({ end, lastRafter }, { length, spacing })));
          expectAlike(a?.commonRafters, b?.commonRafters);
          expectAlike(a?.ridges, b?.ridges);
          expectAlike(
            a?.layout.stations,
            [...(b?.layout.stations ?? [])].reverse().map((x) => length - x),
          );
          const blocks = (roof?: FiguredRoof) => roof?.blocks.map(({ length: long, count }) => long * count);
          const sum = (all: readonly number[] = []) => all.reduce((s, one) => s + one, 0);
          expect(sum(blocks(a))).toBeCloseTo(sum(blocks(b)), 9);
        },
      ),
    );
  });

  it('has bays that add up from the old rafter to the free gable, each but the last one spacing', () => {
    fc.assert(
      fc.property(tenth(60, 400), tenth(1, 15), (length, lastRafter) => {
        const { layout, standing } = figured(file({ lastRafter }, { length }));
        const all = [-lastRafter, ...layout.stations];
        const bays = all.slice(1).map((x, i) => x - (all[i] as number));
        expect(bays.reduce((sum, bay) => sum + bay, 0)).toBeCloseTo(length + lastRafter - 0.75, 9);
        for (const bay of bays.slice(0, -1)) expect(bay).toBeCloseTo(24, 9);
        expect(standing?.firstBay).toBeCloseTo((bays[0] as number) - 1.5, 9);
      }),
    );
  });

  it('is figured alike in millimetres', () => {
    const metric = {
      ...file({ heightAbovePlate: 6.375 * 25.4, ridgeTop: 79.5 * 25.4, lastRafter: 0.75 * 25.4 }),
      units: 'mm',
      span: 288 * 25.4,
      length: 312 * 25.4,
      overhang: 14 * 25.4,
      spacing: 24 * 25.4,
      rafter: { thickness: 38.1, depth: 184.15 },
      ridge: { thickness: 38.1, depth: 234.95 },
      plate: { width: 139.7 },
    };
    const { cautions: _a, ...one } = figured(metric);
    const { cautions: _b, ...other } = figured(file({ ridgeTop: 79.5 }));
    expectAlike(one, other, 7);
  });
});

describe('what it is told', () => {
  it('nothing, where what stands is what was said', () => {
    // 6 in 12: 6.375 + 143.25 / 2.
    expect(figured(file({ ridgeTop: 78 })).cautions).toEqual([]);
    expect(caution(figured(file({ ridgeTop: 78.1 })), 'standingSlope')).toBeDefined();
  });

  it('a flatter one would stay open at the bottom', () => {
    expect(caution(figured(file({ ridgeTop: 76 })), 'standingSlope')?.text).toMatch(
      /2 in less.*open at the bottom/,
    );
  });

  it('gable studs and rafters flush with a gable are those of the free end alone', () => {
    const studs = (roof: FiguredRoof) => roof.gableStuds?.reduce((sum, { count }) => sum + count, 0) ?? 0;
    const free = figured({ ...sample, gableStuds: {} });
    expect(studs(free)).toBeGreaterThan(0);
    expect(studs(figured(file({}, { gableStuds: {} }))) * 2).toBe(studs(free));
  });

  it('a short seat is told where its height was measured', () => {
    expect(caution(figured(file({ heightAbovePlate: 7.8 })), 'bearingShort')?.at).toBe(
      'standing.heightAbovePlate',
    );
  });
});

describe('a standing roof that is refused', () => {
  it.each([
    [{ heightAbovePlate: 9 }, 'standing.heightAbovePlate', '5.356 in to less than 8.106 in'],
    [{ heightAbovePlate: 5.3 }, 'standing.heightAbovePlate', '5.356 in to less than 8.106 in'],
    // 6.375 + 143.25 / 12 and 6.375 + 3 x 143.25.
    [{ ridgeTop: 8 }, 'standing.ridgeTop', '18.313 in to 436.125 in'],
    [{ lastRafter: 0.7 }, 'standing.lastRafter', '0.75 in to 23.25 in'],
    [{ lastRafter: 24 }, 'standing.lastRafter', '0.75 in to 23.25 in'],
    [{ end: 'C' }, 'standing.end', '"A", "B"'],
  ])('with %j at %s', (changes, path, accepted) => {
    const found = refused(file(changes));
    expect(found.map((one) => one.path)).toEqual([path]);
    expect(found[0]?.accepted).toContain(accepted);
  });

  it.each([
    [{ seat: 3.5 }, 'seat'],
    [{ datum: 'endA' }, 'datum'],
    [{ yard: {} }, 'yard'],
  ])('beside %j, which it gives itself', (changes, path) => {
    expect(refused(file({}, changes)).map((one) => one.path)).toEqual([path]);
  });

  it('on another kind, and a seat is still asked for without one', () => {
    const { ridge: _ridge, ...bare } = sample;
    const shed = { ...bare, kind: 'shed', ledger: sample.ridge, standing: measured };
    expect(refused(shed).map(({ path }) => path)).toContain('standing');
    expect(refused(noSeat).map(({ path }) => path)).toEqual(['seat']);
  });
});
