import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readRoof } from '../../src/content/readRoof';
import { figure } from '../../src/core/roof/figure';
import type { FiguredRoof } from '../../src/core/roof/figured';
import { mmPerInch } from '../../src/core/units/inch';
import { commonOf, dormerIn, steep } from './dormers';

/** What holds of every shed dormer. */

const some = fc.record({
  rise: fc.integer({ min: 9, max: 18 }),
  span: fc.double({ min: 240, max: 400, noNaN: true }),
  at: fc.double({ min: 110, max: 250, noNaN: true }),
  width: fc.double({ min: 70, max: 200, noNaN: true }),
  front: fc.oneof(fc.constant(0), fc.double({ min: 6, max: 30, noNaN: true })),
  wall: fc.double({ min: 60, max: 110, noNaN: true }),
  slope: fc.option(
    fc.integer({ min: 1, max: 5 }).map((rise) => ({ rise, run: 12 })),
    { nil: undefined },
  ),
  side: fc.constantFrom('street' as const, 'yard' as const),
  reference: fc.constantFrom('plate', 'sheathing'),
});
type Some = typeof some extends fc.Arbitrary<infer T> ? T : never;

const fileOf = ({ rise, span, reference, ...dormer }: Some) => ({
  ...{ format: 'tack-and-true/roof@1', kind: 'gable', overhang: 14, spacing: 24 },
  ...steep,
  rafter: { thickness: 1.5, depth: 7.25 },
  slope: { rise, run: 12 },
  span,
  reference,
  datum: 'centre',
  dormers: [{ kind: 'shed', studs: { spacing: 16, thickness: 1.5 }, ...dormer }],
});

const figured = (file: unknown): FiguredRoof | undefined => {
  const read = readRoof(file);
  return read.ok ? figure(read.value) : undefined;
};

/** A law of every dormer that can be figured. */
const always = (holds: (roof: FiguredRoof, one: Some) => void): void =>
  fc.assert(
    fc.property(some, (one) => {
      const roof = figured(fileOf(one));
      fc.pre(roof !== undefined);
      holds(roof, one);
    }),
  );

const close = (a: unknown, b: unknown, path = ''): void => {
  if (typeof a === 'number' && typeof b === 'number')
    expect(Math.abs(a - b) / Math.max(1, Math.abs(a)), path).toBeLessThan(1e-8);
  else if (typeof a === 'object' && a !== null && typeof b === 'object' && b !== null) {
    expect(Object.keys(a)).toEqual(Object.keys(b));
    for (const [key, value] of Object.entries(a))
      close(value, (b as Record<string, unknown>)[key], `${path}.${key}`);
  } else expect(a, path).toBe(b);
};

describe('laws of shed dormers', () => {
  it('leave the ridge and the commons as they are without', () => {
    always((roof, one) => {
      const { dormers: __, ...file } = fileOf(one);
      const plain = figured(file);
      expect(roof.ridges).toEqual(plain?.ridges);
      const { count: ___, ...cuts } = roof.commonRafters.find(({ id }) => id === 'common.both') ?? {
        count: 0,
      };
      expect(plain?.commonRafters[0]).toMatchObject({ ...cuts, id: 'common' });
    });
  });

  it('are the same on the other side of the roof, and from the other end', () => {
    always((roof, one) => {
      const across = figured(fileOf({ ...one, side: one.side === 'yard' ? 'street' : 'yard' }));
      const turned = figured(fileOf({ ...one, at: steep.length - one.at }));
      const bare = (of: FiguredRoof | undefined): unknown =>
        of &&
        JSON.parse(
          JSON.stringify({
            d: dormerIn(of),
            c: of.commonRafters.filter(({ id }) => id !== 'common.both'),
          }).replace(/yard/g, 'street'),
        );
      close(bare(across), bare(roof));
      const { trimmers, ...rest } = dormerIn(roof);
      const { trimmers: other, ...same } = turned ? dormerIn(turned) : dormerIn(roof);
      close(same, rest);
      close(
        [...other.at].reverse().map((at) => steep.length - at),
        trimmers.at,
      );
    });
  });

  it('divide the run of the main roof between the three', () => {
    always((roof, one) => {
      const dormer = dormerIn(roof);
      const upper = dormer.meets === 'ridge' ? 0 : (dormer.upperRafters[0]?.run ?? NaN);
      const run = commonOf(roof, 'common.both')?.run ?? NaN;
      expect(one.front + dormer.run + upper).toBeCloseTo(run, 6);
      expect(dormer.lowerRafters).toHaveLength(one.front > 0 ? 1 : 0);
    });
  });

  it('shorten side studs by the spacing times the difference of the slopes', () => {
    always((roof, one) => {
      const dormer = dormerIn(roof);
      const m = dormer.slope.rise / dormer.slope.run;
      for (const { lengths, difference, spacing } of dormer.sideStuds) {
        expect(difference).toBeCloseTo(spacing * (one.rise / 12 - m), 9);
        lengths
          .slice(1)
          .forEach((length, i) => expect((lengths[i] ?? 0) - length).toBeCloseTo(difference, 9));
      }
    });
  });

  it('are those of a roof twice as large, and of one in millimeters', () => {
    always((roof, one) => {
      const large = (file: unknown, by: number): unknown => {
        if (typeof file === 'number') return file * by;
        if (Array.isArray(file)) return file.map((each) => large(each, by));
        if (typeof file !== 'object' || file === null) return file;
        return Object.fromEntries(
          Object.entries(file).map(([key, value]) => [key, key === 'slope' ? value : large(value, by)]),
        );
      };
      const twice = figured(large({ ...fileOf(one), sheathing: 0.5 }, 2));
      const metric = figured({ ...(large(fileOf(one), mmPerInch) as object), units: 'mm' });
      const lengthsOf = (of: FiguredRoof | undefined) => {
        const { endRafters, sideStuds, headers, run, meetHeight } = dormerIn(of ?? roof);
        return {
          all: [run, meetHeight, ...endRafters.map(({ taperLength }) => taperLength)],
          studs: sideStuds.flatMap(({ lengths }) => lengths),
          headers: headers.map(({ topHeight, length }) => [topHeight, length]),
        };
      };
      expect(twice).toBeDefined();
      close(lengthsOf(twice), large(lengthsOf(roof), 2));
      if (metric) close(dormerIn(metric), dormerIn(roof));
    });
  });

  it('over the main wall to the ridge are one side of a gable with two different sides', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 9, max: 18 }),
        fc.double({ min: 240, max: 360, noNaN: true }),
        fc.double({ min: 50, max: 130, noNaN: true }),
        (rise, span, wall) => {
          const [main, run, depth] = [rise / 12, span / 2, 7.25];
          const m = (main * run - wall) / run;
          // The seat with which both stand equally high over their plates.
          const over = depth * Math.sqrt(1 + main * main) - 2.5 * main;
          const seat = (depth * Math.sqrt(1 + m * m) - over) / m;
          fc.pre(m > 1 / 12 && seat > 0.3 && seat < 3.4);
          const slope = { rise: 12 * m, run: 12 };
          const file = fileOf({
            ...{ rise, span, at: 180, width: 140, front: 0, wall, slope: undefined },
            ...{ side: 'street', reference: 'plate' },
          });
          const dormer = figured({ ...file, seat: 2.5, dormers: [{ ...file.dormers[0], seat }] });
          const two = figured({
            ...{ ...file, dormers: undefined, joists: false, collars: false, slope, seat },
            yard: { slope: file.slope, plateHeight: -wall, seat: 2.5 },
          });
          fc.pre(dormer !== undefined);
          const { count: _a, id: _b, ...cuts } = commonOf(dormer, 'common.dormer.street') ?? {};
          const { count: _c, id: _d, ...known } = (two && commonOf(two, 'common.street')) ?? {};
          close(cuts, known);
        },
      ),
    );
  });

  it('come to the ridge with the slope that was worked out for it', () => {
    always((roof, one) => {
      fc.pre(one.slope === undefined);
      const { rise, run } = dormerIn(roof).slope;
      const written = figured(fileOf({ ...one, slope: { rise, run } }));
      expect(written && dormerIn(written).meets).toBe('ridge');
      close(written && dormerIn(written), dormerIn(roof));
    });
  });
});
