import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readRoof } from '../../src/content/readRoof';
import { degreesOf } from '../../src/present/degrees';
import { hipRoof, hipSample, jacksOn, onlyHip } from './hips';
import { roofOf } from './roofs';

describe('the sample hip roof: 288 by 480 in, 6 in 12, all 1 1/2 in thick', () => {
  it.each([
    ['run', 203.6468],
    ['lineLength', 216],
    ['bodyLength', 214.875],
    ['drop', 0.2652],
    ['heightAbovePlate', 6.3557],
  ] as const)('hip: %s is %f', (name, value) => {
    expect(onlyHip()[name]).toBeCloseTo(value, 4);
  });

  it('has four hips alike, with their angles', () => {
    const { count, slope, backing } = onlyHip();
    expect(count).toBe(4);
    expect(degreesOf(slope)).toBeCloseTo(19.4712, 4);
    expect(backing.map(degreesOf).map((a) => a.toFixed(4))).toEqual(['18.4349', '18.4349']);
  });

  it('has its ridge between the commons, and jacks that differ by 26.8328', () => {
    const { ridges, commonRafters } = hipRoof();
    expect(ridges[0]).toMatchObject({ lineLength: 192, length: 193.5 });
    expect(commonRafters[0]?.lineLength).toBeCloseTo(160.9969, 4);
    expect(jacksOn('ends').difference).toBeCloseTo(26.8328, 4);
  });

  it.each(['betweenCommons', 'againstRidge'])(
    'has blocks in every bay of all four walls, hips %s',
    (hipTop) => {
      const { blocks, layout } = hipRoof({ hipTop });
      const ends = layout.eaves?.[0]?.stations ?? [];
      const bays = 2 * (layout.stations.length - 1) + 2 * (ends.length - 1);
      expect(ends.length).toBeGreaterThan(5);
      expect(blocks.reduce((sum, { count }) => sum + count, 0)).toBe(bays);
    },
  );

  it('drops a hip by what its edges stand out', () => {
    expect(onlyHip({ hipFit: 'dropped' }).heightAbovePlate).toBeCloseTo(6.3557 - 0.2652, 3);
  });
});

describe('hip roofs that do not go together', () => {
  it.each([
    [{ length: 289 }, 'length'],
    [{ endSlope: { rise: 1.5, run: 12 }, length: 1300 }, 'endSlope.rise'],
    [{ rakeOverhang: 6 }, 'rakeOverhang'],
    [{ datum: 'endA' }, 'datum'],
    [{ kind: 'gable', hipFit: 'backed' }, 'hipFit'],
    [{ endSlope: { rise: 'steep', run: 12 } }, 'endSlope.rise'],
    [{ hip: { thickness: 0, depth: 9 } }, 'hip.thickness'],
  ])('%j is refused at %s', (changes, path) => {
    const read = readRoof({ ...hipSample, ...changes });
    expect(read.ok ? [] : read.complaints.map((c) => c.path)).toContain(path);
  });
});

describe('hip roofs that are unwise', () => {
  it.each([
    [{}, []],
    [{ ridge: { thickness: 1.5, depth: 9.25 }, hip: { thickness: 1.5, depth: 7.25 } }, ['hipShallow']],
    [{ hip: { thickness: 1.5, depth: 5.5 } }, ['hipShallow', 'hipBearing']],
    [{ endSlope: { rise: 7, run: 12 } }, ['tailsApart']],
  ])('%j: %j', (changes, codes) => {
    const found = hipRoof(changes).cautions.map(({ code }) => code);
    expect(found.filter((code) => /^(hip|tailsApart)/.test(code))).toEqual(codes);
  });
});

const size = fc.double({ min: 100, max: 500, noNaN: true });
const rise = fc.double({ min: 2.5, max: 12, noNaN: true });
const spacing = fc.constantFrom(12, 16, 19.2, 24);

describe('laws of hip roofs', () => {
  it('ends of the same slope, said or not, come out the same', () => {
    fc.assert(
      fc.property(size, rise, spacing, (span, up, every) => {
        const slope = { rise: up, run: 12 };
        const changes = { span, length: span + 150, slope, spacing: every, seat: 2 };
        expect(hipRoof({ ...changes, endSlope: { rise: up * 2, run: 24 } })).toEqual(hipRoof(changes));
      }),
    );
  });

  it('nearly equal ends come nearly to the equal ones', () => {
    fc.assert(
      fc.property(size, rise, (span, up) => {
        const changes = { span, length: span + 150, slope: { rise: up, run: 12 }, seat: 2 };
        const near = hipRoof({ ...changes, endSlope: { rise: up * (1 + 1e-7), run: 12 } }).hips ?? [];
        const equal = onlyHip(changes);
        for (const hip of near) {
          expect(Math.abs(hip.lineLength - equal.lineLength)).toBeLessThan(1e-3);
          expect(Math.abs(hip.drop - equal.drop)).toBeLessThan(1e-5);
        }
      }),
    );
  });

  it('between its hips it has the commons of the gable', () => {
    fc.assert(
      fc.property(size, rise, spacing, (span, up, every) => {
        const changes = { span, length: span + 400, slope: { rise: up, run: 12 }, spacing: every, seat: 2 };
        const { id: _id, count: _count, side: _side, ...gable } = roofOf(changes).commonRafters[0]!;
        expect(hipRoof(changes).commonRafters[0]).toMatchObject(gable);
      }),
    );
  });

  it('grows alike in all lengths', () => {
    fc.assert(
      fc.property(size, rise, fc.double({ min: 0.5, max: 2, noNaN: true }), (span, up, by) => {
        const grown = (k: number) => ({
          span: span * k,
          length: (span + 150) * k,
          slope: { rise: up, run: 12 },
          spacing: 24 * k,
          seat: 2 * k,
          overhang: 14 * k,
          rafter: { thickness: 1.5 * k, depth: 7.25 * k },
          ridge: { thickness: 1.5 * k, depth: 9.25 * k },
          plate: { width: 5.5 * k },
        });
        const [one, other] = [onlyHip(grown(1)), onlyHip(grown(by))];
        expect(other.bodyLength / one.bodyLength).toBeCloseTo(by, 9);
        expect(other.seat / one.seat).toBeCloseTo(by, 9);
      }),
    );
  });

  it('is the same the other way round: what one end has, the other has', () => {
    fc.assert(
      fc.property(size, rise, rise, (span, up, endUp) => {
        const slopes = { slope: { rise: up, run: 12 }, endSlope: { rise: endUp, run: 12 } };
        const changes = { span, length: (span * up) / endUp + 150, seat: 1, ...slopes };
        const read = readRoof({ ...hipSample, ...changes });
        fc.pre(read.ok);
        const { hips = [], jacks = [] } = hipRoof(changes);
        expect(hips.reduce((sum, { count }) => sum + count, 0)).toBe(4);
        const counts = (side: string) => jacks.filter((one) => one.side === side).map(({ count }) => count);
        expect(new Set(counts('both')).size).toBeLessThan(2);
        expect(new Set(counts('ends')).size).toBeLessThan(2);
      }),
    );
  });

  it('millimetres and inches are the same roof', () => {
    const mm = (inches: number): string => `${inches * 25.4} mm`;
    const told = { span: mm(288), length: mm(480), spacing: mm(24), overhang: mm(14), seat: mm(3.5) };
    expect(onlyHip(told).bodyLength).toBeCloseTo(onlyHip().bodyLength, 9);
    expect(jacksOn('both', told).lengths).toHaveLength(jacksOn('both').lengths.length);
  });
});
