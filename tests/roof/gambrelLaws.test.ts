import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { edgesOf } from '../../src/core/roof/edges';
import { expand } from '../../src/core/roof/expand';
import type { FiguredRoof } from '../../src/core/roof/figured';
import { timbersOf } from '../../src/core/roof/timbers';
import { gambrelPlan, gambrelRoof, gambrelSample, mitered, rafterIn } from './gambrels';
import { roofOf, type Changes } from './roofs';

/** What holds of every gambrel, and the known roofs that some of them are. */

/** The number printed by hand, to its last figure. */
const near = (found: number | undefined, wanted: number): void => expect(found).toBeCloseTo(wanted, 4);

const lowerOf = (changes: Changes = {}) => rafterIn(gambrelRoof(changes), 'common.lower');
const upperOf = (changes: Changes = {}) => rafterIn(gambrelRoof(changes), 'common.upper');

/** Of a half circle of 100 in, its break an eighth of the circle up: half of a regular octagon. */
it('has rafters of one length, as high in the middle as half its span, where it fills half an octagon', () => {
  const root = Math.SQRT2;
  const octagon = {
    ...mitered,
    span: 200,
    breakIn: 100 * (1 - root / 2),
    slope: { rise: 1 + root, run: 1 },
    upperSlope: { rise: root - 1, run: 1 },
  };
  const [lower, upper] = [lowerOf(octagon), upperOf(octagon)];
  near(lower.lineLength, 100 * Math.sqrt(2 - root));
  near(upper.lineLength, lower.lineLength);
  near(lower.rise + upper.rise, 100);
  // A turn of 45°: either cut is 22 1/2° off square.
  const [one] = gambrelRoof(octagon).breaks ?? [];
  near(one!.lowerCut.rise / one!.lowerCut.run, root - 1);
});

/** 24 in 12 in a half circle of 100 in: 2 · 100 / 5 = 40 in and 80 up, then 20 up over 60, which is 4 in 12. */
it('has its break where the steep slope meets the half circle it is drawn in', () => {
  const circle = {
    halfCircle: true,
    slope: { rise: 24, run: 12 },
    upperSlope: undefined,
    breakIn: undefined,
  };
  const changes = { ...circle, span: 200, seat: 1.5 };
  const [lower, upper] = [lowerOf(changes), upperOf(changes)];
  near(lower.run, 40);
  near(lower.rise, 80);
  near(upper.run, 60);
  near(upper.rise, 20);
  fc.assert(
    fc.property(fc.double({ min: 14.2, max: 36, noNaN: true }), (rise) => {
      const plan = gambrelPlan({
        ...changes,
        ...mitered,
        slope: { rise, run: 12 },
        seat: 1,
        gussets: { reach: 8 },
      });
      const [x, z] = [100 - plan.breakIn, (plan.breakIn * rise) / 12];
      expect(x * x + z * z).toBeCloseTo(10_000, 7);
      const { rise: up, run } = plan.upperSlope;
      expect(z + (x * up) / run).toBeCloseTo(100, 9);
    }),
  );
});

const some = fc
  .record({
    rise: fc.integer({ min: 12, max: 30 }),
    upper: fc.integer({ min: 3, max: 11 }),
    breakIn: fc.integer({ min: 30, max: 90 }),
    on: fc.constantFrom<Changes>({}, mitered),
  })
  .map(({ rise, upper, breakIn, on }) => ({
    ...on,
    slope: { rise, run: 12 },
    upperSlope: { rise: upper, run: 12 },
    breakIn,
    seat: 1.5,
  }));
const every = (holds: (changes: Changes & { breakIn: number }) => void): void =>
  fc.assert(fc.property(some, holds), { numRuns: 60 });

const numbersIn = (value: unknown): readonly number[] => {
  if (typeof value === 'number') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(numbersIn) : [];
};
/** Lengths alone: what is counted or turned stays as it is when a roof grows. */
const lengthsIn = ({ commonRafters, ridges, ties, breaks, purlins, gussets }: FiguredRoof) =>
  numbersIn([
    commonRafters.map(({ count, ...rest }) => (count > 0 ? rest : [])),
    ridges.map(({ count, ...rest }) => (count > 0 ? rest : [])),
    ties.map(({ height, length, clip }) => [height, length, clip]),
    breaks?.map(({ run, height, length, jointLength }) => [run, height, length, jointLength]),
    purlins?.map(({ topHeight, leastDepth }) => [topHeight, leastDepth]),
    gussets?.map(({ length, width }) => [length, width]),
  ]);

describe('any gambrel', () => {
  it('has two breaks and a ridge, and nothing that is taken for a hip', () => {
    every((changes) => {
      const kinds = edgesOf(expand(gambrelPlan(changes))).map(({ kind }) => kind);
      expect([...kinds].sort()).toEqual(['break', 'break', 'ridge']);
      const { hips, jacks, valleys } = gambrelRoof(changes);
      expect([hips, jacks, valleys]).toEqual([undefined, undefined, undefined]);
    });
  });

  it('is its own mirror image across the ridge', () => {
    every((changes) => {
      const timbers = timbersOf(gambrelPlan(changes));
      const of = (side: string) => timbers.filter(({ id }) => id.includes(side));
      const [street, yard] = [of('street'), of('yard')];
      expect(street.length).toBeGreaterThan(50);
      expect(street.map(({ id }) => id.replace('street', 'yard'))).toEqual(yard.map(({ id }) => id));
      street.forEach(({ origin: [x, y], outline, thickness }, i) => {
        const other = yard[i]!;
        expect(other.origin[0]).toBeCloseTo(x, 9);
        expect(other.origin[1]).toBeCloseTo(-y, 9);
        expect([other.outline, other.thickness]).toEqual([outline, thickness]);
      });
    });
  });

  it('is below a gable as far in as its break, and above a gable that stands on its purlins', () => {
    every((changes) => {
      fc.pre(changes['breakOn'] === undefined);
      const roof = gambrelRoof(changes);
      const shared = { ...gambrelSample, ...changes, kind: 'gable', collars: false, joists: false };
      const bare = { ...shared, upperSlope: undefined, breakIn: undefined, purlin: undefined };
      const asGable = (one: Changes) => roofOf(JSON.parse(JSON.stringify({ ...bare, ...one })) as Changes);
      const below = asGable({ span: 2 * changes.breakIn, ridge: { thickness: 1.5, depth: 20 } });
      const above = asGable({
        span: 264 - 2 * changes.breakIn,
        slope: changes['upperSlope'],
        overhang: 0,
        seat: gambrelSample.purlin.seat,
      });
      const lower = rafterIn(roof, 'common.lower');
      const { shortening, bodyLength, edgeLength, stockLength, id, ...same } = below.commonRafters[0]!;
      expect(lower).toMatchObject(same);
      // A gable's ridge takes its half; the break takes nothing.
      const taken = lower.bodyLength - bodyLength;
      expect(taken * lower.run).toBeCloseTo(shortening * lower.lineLength, 6);
      expect(lower.edgeLength - edgeLength).toBeCloseTo(taken, 6);
      expect(lower.stockLength - stockLength).toBeCloseTo(taken, 6);
      expect({ ...rafterIn(roof, 'common.upper'), id }).toEqual(above.commonRafters[0]);
      const top = above.ridges[0]!.topHeight;
      expect(roof.ridges[0]?.topHeight).toBeCloseTo(roof.purlins![0]!.topHeight + top, 9);
    });
  });

  it('is a gable where its slopes are nearly one, its joint then square', () => {
    const flat = 6 - 0.002;
    for (const on of [{}, mitered])
      fc.assert(
        fc.property(fc.integer({ min: 30, max: 90 }), (breakIn) => {
          const slope = { rise: 6, run: 12 };
          const roof = gambrelRoof({ ...on, slope, upperSlope: { rise: flat, run: 12 }, breakIn });
          const gable = roofOf({ slope, span: 264, rafter: gambrelSample.rafter, seat: 2, overhang: 9 });
          const [whole] = gable.commonRafters;
          const [lower, upper] = [rafterIn(roof, 'common.lower'), rafterIn(roof, 'common.upper')];
          // 0.002 in 12 over at most 102 in is 0.017 in.
          expect(Math.abs(lower.bodyLength + upper.bodyLength - whole!.bodyLength)).toBeLessThan(0.02);
          expect(lower.tailLength).toBe(whole!.tailLength);
          expect(lower.heightAbovePlate).toBe(whole!.heightAbovePlate);
          expect(Math.abs(roof.ridges[0]!.topHeight - gable.ridges[0]!.topHeight)).toBeLessThan(0.02);
          const [one] = roof.breaks ?? [];
          if (one?.joint === 'miter') expect(one.lowerCut.rise / one.lowerCut.run).toBeLessThan(1e-4);
        }),
      );
  });

  it('comes as near as one likes to its steep gable as the break nears the ridge', () => {
    const steep = roofOf({
      slope: gambrelSample.slope,
      span: 264,
      rafter: gambrelSample.rafter,
      seat: 2,
      ridge: { thickness: 1.5, depth: 12 },
    });
    for (const short of [40, 20, 10]) {
      const { ridges } = gambrelRoof({ breakIn: 132 - short });
      // The flat slope is lower by 11/12 for each inch, from the break to the ridge's face.
      expect(steep.ridges[0]!.topHeight - ridges[0]!.topHeight).toBeCloseTo((11 / 12) * (short - 0.75), 9);
    }
  });

  it('grows with its lengths', () => {
    every((changes) => {
      const twice = (value: unknown): unknown => {
        if (typeof value === 'number') return 2 * value;
        return typeof value === 'object' && value !== null
          ? Object.fromEntries(Object.entries(value).map(([key, one]) => [key, twice(one)]))
          : value;
      };
      const file = gambrelPlanFile(changes);
      const once = lengthsIn(gambrelRoof(file));
      const big = lengthsIn(gambrelRoof(twice(file) as Changes));
      expect(big).toHaveLength(once.length);
      once.forEach((length, i) => expect(big[i]).toBeCloseTo(2 * length, 8));
    });
  });

  it('is the same in millimetres', () => {
    every((changes) => {
      const metric = (value: unknown): unknown => {
        if (typeof value === 'number') return value * 25.4;
        return typeof value === 'object' && value !== null
          ? Object.fromEntries(Object.entries(value).map(([key, one]) => [key, metric(one)]))
          : value;
      };
      const file = gambrelPlanFile(changes);
      const inches = lengthsIn(gambrelRoof(file));
      const read = lengthsIn(gambrelRoof({ units: 'mm', ...(metric(file) as Changes) }));
      inches.forEach((length, i) => expect(read[i]).toBeCloseTo(length, 8));
    });
  });
});

/** All its lengths said, so that nothing usual stays in inches. */
const gambrelPlanFile = (changes: Changes): Changes => ({
  ...gambrelSample,
  ...changes,
  ...(changes['breakOn'] === 'gussets' && { gussets: { thickness: 0.5, reach: 12 } }),
});
