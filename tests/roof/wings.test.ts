import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readRoof } from '../../src/content/readRoof';
import { figure } from '../../src/core/roof/figure';
import type { FiguredRoof } from '../../src/core/roof/figured';
import type { FiguredHip } from '../../src/core/roof/figuredSlants';
import { inMm, roofOf, type Changes } from './roofs';
import { jacksOfKind, valleysOf, wingRidge, wingRoof, wingSample } from './wings';
import { english } from '../content/english';

/** Laws of wings: what is true of any of them. */

const rise = fc.integer({ min: 3, max: 12 });
const wing = fc.record({
  at: fc.integer({ min: 190, max: 290 }),
  span: fc.integer({ min: 60, max: 220 }),
  length: fc.integer({ min: 20, max: 200 }),
  framing: fc.constantFrom('longValley', 'suspendedRidge', 'overSheathing'),
});
const main = fc.record({ rise, up: rise, spacing: fc.constantFrom(12, 16, 24) });
type Main = { readonly rise: number; readonly up: number; readonly spacing: number };

const changesOf = ({ rise, spacing }: Main): Changes => ({
  slope: { rise, run: 12 },
  spacing,
  seat: 2.5,
  length: 520,
});
const slopeOf = ({ up }: Main) => ({ slope: { rise: up, run: 12 } });

/** Nothing where the plan is refused: a wing higher than the roof, or a valley that would run out of it. */
const figuredOr = (file: object): FiguredRoof | undefined => {
  const read = readRoof(file);
  return read.ok ? figure(read.value) : undefined;
};

describe('a wing', () => {
  it('is the same on either side of the roof', () => {
    const told = (roof: FiguredRoof): unknown => ({
      valleys: roof.valleys
        ?.map(({ run, bodyLength, tailLength, seat }) => [run, bodyLength, tailLength, seat])
        .sort(),
      ridges: roof.ridges.map(({ length, topHeight }) => [length, topHeight]),
      jacks: roof.jacks?.map(({ kind, count, lengths }) => [kind, count, lengths]).sort(),
      commons: roof.commonRafters.map(({ count, edgeLength }) => [count, edgeLength]),
    });
    fc.assert(
      fc.property(main, wing, (roof, one) => {
        const on = (side: string) =>
          figuredOr(wingSample({ ...one, ...slopeOf(roof), side }, changesOf(roof)));
        const [yard, street] = [on('yard'), on('street')];
        fc.pre(yard !== undefined && street !== undefined);
        const [a, b] = [JSON.stringify(told(yard)), JSON.stringify(told(street))];
        expect(JSON.parse(b, rounded)).toEqual(JSON.parse(a, rounded));
      }),
    );
  });

  it('with the long valley from the other side is the mirror image', () => {
    fc.assert(
      fc.property(main, wing, (roof, one) => {
        const framing = 'longValley';
        const at = (place: number, longFrom: string) =>
          figuredOr(wingSample({ ...one, ...slopeOf(roof), framing, at: place, longFrom }, changesOf(roof)));
        const [left, right] = [at(one.at, 'A'), at(520 - one.at, 'B')];
        expect(left === undefined).toBe(right === undefined);
        fc.pre(left !== undefined && right !== undefined);
        valleysOf(left).forEach((valley, i) => {
          const mirrored = valleysOf(right)[i]!;
          expect(mirrored.bodyLength).toBeCloseTo(valley.bodyLength, 8);
          expect(mirrored.cheeks.map(({ cheekAngle }) => cheekAngle.rise)).toHaveLength(valley.cheeks.length);
          const bevels = ({ backing }: FiguredHip) =>
            backing.map(({ rise, run }) => rise / run).sort((a, b) => a - b);
          expect(bevels(mirrored)).toEqual(bevels(valley).map((one) => expect.closeTo(one, 8)));
        });
      }),
    );
  });

  it('is the same in millimetres', () => {
    fc.assert(
      fc.property(main, wing, (roof, one) => {
        const file = wingSample({ ...one, ...slopeOf(roof) }, changesOf(roof));
        const inches = figuredOr(file);
        const metric = figuredOr(inMm(file));
        expect(metric === undefined).toBe(inches === undefined);
        fc.pre(inches !== undefined && metric !== undefined);
        const told = JSON.stringify({ ...inches, cautions: [] });
        expect(JSON.parse(JSON.stringify({ ...metric, cautions: [] }), rounded)).toEqual(
          JSON.parse(told, rounded),
        );
      }),
    );
  });

  it('twice as large has members twice as long', () => {
    fc.assert(
      fc.property(main, wing, (roof, one) => {
        const small = figuredOr(wingSample({ ...one, ...slopeOf(roof) }, changesOf(roof)));
        const twice = figuredOr({
          ...wingSample({}, changesOf(roof)),
          ...{ span: 576, length: 1040, overhang: 28, spacing: 2 * roof.spacing, seat: 5 },
          rafter: { thickness: 3, depth: 14.5 },
          ridge: { thickness: 3, depth: 18.5 },
          plate: { width: 11 },
          wings: [
            {
              side: 'yard',
              ...{ ...one, ...slopeOf(roof), at: 2 * one.at, span: 2 * one.span, length: 2 * one.length },
              over: { sheathing: 1, sleeper: { thickness: 3, depth: 18.5 } },
            },
          ],
        });
        fc.pre(small !== undefined && twice !== undefined);
        small.valleys?.forEach((valley, i) =>
          expect(twice.valleys![i]!.bodyLength).toBeCloseTo(2 * valley.bodyLength, 7),
        );
        small.jacks?.forEach((jacks, i) =>
          expect(twice.jacks![i]!.lengths).toEqual(jacks.lengths.map((one) => expect.closeTo(2 * one, 7))),
        );
        expect(wingRidge(twice).length).toBeCloseTo(2 * wingRidge(small).length, 7);
      }),
    );
  });

  it('leaves the rafters of the main roof that it does not reach as they were', () => {
    fc.assert(
      fc.property(main, wing, (roof, one) => {
        const { wings: _, ...alone } = wingSample({}, changesOf(roof)) as { wings: unknown };
        const whole = figuredOr(wingSample({ ...one, ...slopeOf(roof) }, changesOf(roof)));
        fc.pre(whole !== undefined);
        const usual = figuredOr(alone)!.commonRafters[0]!;
        const found = whole.commonRafters.find(({ run, tailLength }) => run === usual.run && tailLength > 0)!;
        expect({ ...found, id: '', count: 0, side: '' }).toEqual({ ...usual, id: '', count: 0, side: '' });
      }),
    );
  });

  it('over sheathing leaves every rafter of the main roof, some without a tail', () => {
    const alone = roofOf({ length: 480 }).commonRafters[0]!.count;
    const whole = wingRoof({ framing: 'overSheathing' });
    const counts = whole.commonRafters.filter(({ run }) => run === 144).map(({ count }) => count);
    expect(counts.reduce((sum, one) => sum + one, 0)).toBe(alone);
    expect(whole.jacks!.every(({ kind }) => kind === 'blindJack')).toBe(true);
  });
});

/** Rounds to a millionth of an inch: what two ways to the same figure may differ by. */
const rounded = (_: string, value: unknown): unknown =>
  typeof value === 'number' ? Math.round(value * 1e6) / 1e6 + 0 : value;

describe('a wing as wide and as steep as the roof', () => {
  it('has two valleys alike, as long as a hip of that roof, and jacks like it', () => {
    const roof = wingRoof({ span: 288, at: 240 });
    expect(roof.valleys).toHaveLength(1);
    const [valley] = valleysOf(roof);
    // 144·√2 by 72 high: 216 in, less half the 45° thickness of 1 1/2 at 6 in 16.97.
    expect(valley).toMatchObject({ count: 2, side: 'both' });
    expect(valley!.lineLength).toBeCloseTo(216, 9);
    expect(valley!.bodyLength).toBeCloseTo(216 - 0.75 * Math.SQRT2 * Math.sqrt(1 + 1 / 8), 9);
    expect(valley!.cheeks).toHaveLength(2);
    expect(jacksOfKind(roof, 'valleyCripple')).toEqual([]);
  });

  it('tends to it as it grows', () => {
    const nearly = valleysOf(wingRoof({ span: 287.9999, at: 240 }));
    const [whole] = valleysOf(wingRoof({ span: 288, at: 240 }));
    for (const { lineLength } of nearly) expect(Math.abs(lineLength - whole!.lineLength)).toBeLessThan(1e-3);
  });
});

describe('where the layout puts a rafter on a corner', () => {
  it('it is told to be cut in place, and has no figures', () => {
    // The corners of the sample are at 216 − 96 and 216 + 96, both stations; the wing has stations on the wall's line too.
    const { cutInPlace = [] } = wingRoof();
    const main = cutInPlace.filter(({ part }) => part === undefined).map(({ at }) => at);
    expect(main).toEqual(expect.arrayContaining([120, 312]));
    expect(cutInPlace.filter(({ part }) => part === 'wing').map(({ at }) => at)).toContain(144);
  });
});

describe('wings that cannot be', () => {
  const refused = (one: Changes, more: Changes = {}): readonly string[] => {
    const read = readRoof(wingSample(one, more));
    return read.ok ? [] : read.complaints.map(({ path, accepted }) => `${path} (${english(accepted)})`);
  };

  it.each([
    [{ at: 40 }, 'wings.0.at (96 in to 384 in)'],
    [{ span: 300 }, 'wings.0.span (at most 288 in at these slopes)'],
    [{ slope: { rise: 12, run: 12 } }, 'wings.0.span (at most 144 in at these slopes)'],
    [{ at: 400 - 48, span: 96, length: 60, longFrom: 'A' }, []],
    [{ at: 430, span: 90 }, 'wings.0.longFrom (the other side, or framing "suspendedRidge")'],
    [{ at: 430, span: 90, longFrom: 'B' }, []],
    [{ at: 430, span: 90, framing: 'suspendedRidge' }, []],
    [{ side: 'A' }, 'wings.0.side ("street", "yard")'],
    [{ length: 'far' }, expect.stringMatching(/^wings\.0\.length \(a length such as/)],
    [{ tower: 1 }, expect.stringMatching(/^wings\.0\.tower/)],
  ] as const)('%j', (one, wanted) => {
    expect(refused(one)).toEqual(
      typeof wanted === 'string' ? [wanted] : Array.isArray(wanted) ? wanted : [wanted],
    );
  });

  it('names the wing that stands in the way', () => {
    const beside = { side: 'yard', at: 300, span: 100, length: 60 };
    const read = readRoof({
      ...wingSample(),
      wings: [{ side: 'yard', at: 216, span: 192, length: 120 }, beside],
    });
    expect(read.ok ? [] : read.complaints.map(({ wrong }) => wrong)).toContain(
      'is 300 in, where wing 1 stands on the same side',
    );
  });
});
