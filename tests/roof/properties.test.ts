import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { figure } from '../../src/core/roof/figure';
import type { FiguredRoof } from '../../src/core/roof/figured';
import type { GablePlan } from '../../src/core/roof/plan';
import { inch, mmPerInch } from '../../src/core/units/inch';
import { planOf, rafterOf, roofOf, sample } from './roofs';

const some = fc.record({
  rise: fc.double({ min: 1, max: 36, noNaN: true }),
  span: fc.double({ min: 40, max: 900, noNaN: true }),
  length: fc.double({ min: 12, max: 1200, noNaN: true }),
  overhang: fc.double({ min: 0, max: 48, noNaN: true }),
  spacing: fc.double({ min: 8, max: 96, noNaN: true }),
  seat: fc.double({ min: 0.5, max: 5.5, noNaN: true }),
  reference: fc.constantFrom('plate', 'sheathing'),
  datum: fc.constantFrom('endA', 'endB', 'centre'),
  blockStands: fc.constantFrom('plumb', 'square'),
});
type Some = typeof some extends fc.Arbitrary<infer T> ? T : never;
const changesOf = ({ rise, seat, ...rest }: Some) => ({
  ...rest,
  slope: { rise, run: 12 },
  seat: seat + (rest.reference === 'sheathing' ? 0.51 : 0),
  rafter: { thickness: 1.5, depth: 9.25 },
  plate: { width: 6 },
});

/** Every length of a plan times k; what counts or names stays. */
const scaled = (plan: GablePlan, k: number): GablePlan => {
  const by = (value: unknown): unknown => {
    if (typeof value === 'number') return value * k;
    if (typeof value !== 'object' || value === null) return value;
    return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, by(inner)]));
  };
  const all = by(plan) as GablePlan;
  return {
    ...all,
    slope: plan.slope,
    collars: plan.collars,
    joists: plan.joists && { every: plan.joists.every, height: inch(plan.joists.height * k) },
  };
};

/** Every number of a figured roof by its place, cautions and counts apart: they do not scale. */
const lengthsOf = ({ cautions: _, ...roof }: FiguredRoof): readonly (readonly [string, number])[] => {
  const walk = (value: unknown, path: string): readonly (readonly [string, number])[] => {
    if (typeof value === 'number') return [[path, value]];
    if (typeof value !== 'object' || value === null) return [];
    return Object.entries(value)
      .filter(([key]) => key !== 'count' && key !== 'bevel')
      .flatMap(([key, inner]) => walk(inner, `${path}.${key}`));
  };
  return walk(roof, '');
};

const expectNear = (found: FiguredRoof, wanted: FiguredRoof, k = 1): void => {
  const [a, b] = [lengthsOf(found), lengthsOf(wanted)];
  expect(a.map(([path]) => path)).toEqual(b.map(([path]) => path));
  b.forEach(([path, value], i) => {
    const [, got] = a[i] as readonly [string, number];
    expect(Math.abs(got - value * k), path).toBeLessThan(1e-9 * k * Math.max(1, Math.abs(value)));
  });
};

describe('what holds for every roof', () => {
  it('all lengths grow alike', () => {
    fc.assert(
      fc.property(some, fc.constantFrom(0.5, 2, 4), (roof, k) => {
        const plan = planOf(changesOf(roof));
        // Powers of two change no mantissa, so a mark at the very limit falls the same way.
        const { stations } = figure(plan).layout;
        const same = figure(scaled(plan, k));
        if (same.layout.stations.length === stations.length) expectNear(same, figure(plan), k);
      }),
    );
  });

  it('a roof in millimetres is the same roof', () => {
    const mm = (value: unknown): unknown => (typeof value === 'number' ? value * mmPerInch : value);
    fc.assert(
      fc.property(some, (roof) => {
        const { slope, rafter, plate, ...rest } = changesOf(roof);
        const metric = {
          ...Object.fromEntries(Object.entries(rest).map(([key, value]) => [key, mm(value)])),
          units: 'mm',
          slope,
          rafter: { thickness: mm(rafter.thickness), depth: mm(rafter.depth) },
          plate: { width: mm(plate.width) },
          ridge: { thickness: mm(sample.ridge.thickness), depth: mm(sample.ridge.depth) },
        };
        expectNear(roofOf(metric), roofOf(changesOf(roof)));
      }),
    );
  });

  it('a roof written in feet and inches is the same roof', () => {
    expect(
      roofOf({
        span: `24'`,
        length: `26 ft`,
        overhang: `1' 2"`,
        spacing: `2'`,
        rafter: { thickness: `1-1/2"`, depth: `7 1/4"` },
        ridge: { thickness: '1.5', depth: `9¼"` },
        plate: { width: `5 1/2` },
        seat: `3½"`,
        slope: { rise: '6', run: `12"` },
      }),
    ).toEqual(roofOf());
  });

  it('datum A and datum B have the same blocks, ties and rafters', () => {
    const byLength = ({ blocks }: FiguredRoof): readonly string[] =>
      blocks.map(({ length, count }) => `${count} of ${length.toFixed(6)}`).sort();
    fc.assert(
      fc.property(some, (roof) => {
        const a = roofOf({ ...changesOf(roof), datum: 'endA' });
        const b = roofOf({ ...changesOf(roof), datum: 'endB' });
        expect(byLength(a)).toEqual(byLength(b));
        expect([a.commonRafters, a.ridges, a.ties]).toEqual([b.commonRafters, b.ridges, b.ties]);
      }),
    );
  });

  it('the figures of a rafter agree with each other', () => {
    fc.assert(
      fc.property(some, (roof) => {
        const { commonRafters, ridges } = roofOf(changesOf(roof));
        for (const r of commonRafters) {
          expect(r.lineLength ** 2).toBeCloseTo(r.run ** 2 + r.rise ** 2, 5);
          expect(r.edgeLength).toBeCloseTo(r.bodyLength + r.tailLength, 9);
          expect(r.heightAbovePlate + r.heelCut).toBeCloseTo(r.plumbCutLength, 9);
          expect(r.notchDepth ** 2 * (1 + (r.run / r.rise) ** 2)).toBeCloseTo(r.seat ** 2, 7);
          expect(ridges[0]?.topHeight).toBeCloseTo(
            r.heightAbovePlate + r.rise * (1 - r.shortening / r.run),
            7,
          );
        }
      }),
    );
  });

  it('more overhang, span or slope never makes a rafter shorter, and a deeper seat never makes it higher', () => {
    const more = fc.double({ min: 0.01, max: 4, noNaN: true });
    fc.assert(
      fc.property(some, more, (roof, by) => {
        const changes = changesOf({ ...roof, rise: Math.min(roof.rise, 32), seat: Math.min(roof.seat, 1.4) });
        const was = rafterOf(changes);
        expect(rafterOf({ ...changes, overhang: changes.overhang + by }).edgeLength).toBeGreaterThan(
          was.edgeLength,
        );
        expect(rafterOf({ ...changes, span: changes.span + by }).edgeLength).toBeGreaterThan(was.edgeLength);
        const steeper = { rise: changes.slope.rise + by, run: 12 };
        expect(rafterOf({ ...changes, slope: steeper }).edgeLength).toBeGreaterThan(was.edgeLength);
        const deeper = rafterOf({ ...changes, seat: changes.seat + by });
        expect(deeper.heightAbovePlate).toBeLessThan(was.heightAbovePlate);
        expect(deeper.maxSeat).toBe(was.maxSeat);
      }),
    );
  });

  it('a higher tie is never longer, and every tie is shorter than the eaves are apart', () => {
    fc.assert(
      fc.property(some, fc.double({ min: 0, max: 0.9, noNaN: true }), (roof, share) => {
        const changes = changesOf(roof);
        const top = roofOf(changes).ridges[0]?.topHeight ?? 0;
        const at = (height: number) => roofOf({ ...changes, joists: { height } }).ties[0]?.length ?? NaN;
        const height = Math.min(share * top, 220);
        // Cut to the sheathing's face a tie may reach past the plates by the sheathing, and no farther.
        const widest = planOf(changes).span + (changes.reference === 'sheathing' ? 1 : 0);
        expect(at(height)).toBeLessThanOrEqual(widest + 1e-9);
        expect(at(height * 1.05)).toBeLessThanOrEqual(Math.max(at(height), widest) + 1e-9);
        expect(at(height)).toBeGreaterThan(0);
      }),
    );
  });

  it('has nothing in it but finite numbers', () => {
    fc.assert(
      fc.property(some, (roof) => {
        for (const [path, value] of lengthsOf(roofOf(changesOf(roof))))
          expect(Number.isFinite(value) && value >= 0, path).toBe(true);
      }),
    );
  });
});
