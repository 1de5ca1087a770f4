import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readRoof } from '../../src/content/readRoof';
import { figure } from '../../src/core/roof/figure';
import { endRun } from '../../src/core/roof/forms/hip';
import { degreesOf } from '../../src/present/degrees';
import { firstHip, gabletPlan, gabletRoof, gabletSample, headerOf, movedTo } from './gablets';
import { hipPlan, hipRoof, onlyHip } from './hips';
import { roofOf, type Changes } from './roofs';
import { english } from '../content/english';

const common = (side: string, changes: Changes = {}) =>
  gabletRoof(changes).commonRafters.find((one) => one.side === side)!;

/*
 * By hand, 6 in 12: a slope's length is √(1 + 1/4) = 1.118034 of its run, a hip's √(1 + 1 + 1/4) = 3/2 of a common's.
 * Rafters 7 1/4 deep: plumb 7.25 · 1.118034 = 8.105746, over the plate 8.105746 − 3.5 / 2 = 6.355746.
 */
describe('the sample hip roof with small gables 96 in back, worked by hand', () => {
  it('has end rafters from the plate to the header', () => {
    // 96 · 1.118034, and (96 − 1.5) · 1.118034.
    expect(common('ends').lineLength).toBeCloseTo(107.3313, 4);
    expect(common('ends').bodyLength).toBeCloseTo(105.6542, 4);
    expect(common('ends').shortening).toBe(1.5);
    // Hips leave 49.5 − 1.06066 = 48.44 of the header to each side. Rafters at 0 and 24 have room; one at 48 takes up to 48.75.
    expect(common('ends').count).toBe(6);
    expect(gabletRoof().cutInPlace?.map(({ at, run }) => [Math.abs(at), run])).toEqual(
      Array.from({ length: 4 }, () => [48, 96]),
    );
  });

  it('has hips that end at the header with one cheek', () => {
    const { run, lineLength, bodyLength, shorteningTop, cheeks } = firstHip(gabletRoof());
    // 96 · √2; 96 · 3/2; 1.5 · √2 come off its run, so 94.5 · 3/2 is left.
    expect(run).toBeCloseTo(135.7645, 4);
    expect(lineLength).toBeCloseTo(144, 9);
    expect(shorteningTop).toBeCloseTo(2.1213, 4);
    expect(bodyLength).toBeCloseTo(141.75, 9);
    expect(cheeks).toHaveLength(1);
    // 45° in plan: tan of the angle on the top edge is 1 / √(1 + 1/8).
    expect(degreesOf(cheeks[0]!.cheekAngle)).toBeCloseTo(43.3139, 4);
  });

  it('has a header flush with the end rafters, as long as both cheeks ask for', () => {
    // Its top: 6.355746 + 94.5 / 2. Hips come to it 144 − 94.5 from the middle, and take 0.75 · √2 more to each side.
    expect(headerOf(gabletRoof())).toMatchObject({
      count: 2,
      side: 'ends',
      section: { thickness: 1.5, depth: 9.25 },
    });
    expect(headerOf(gabletRoof()).topHeight).toBeCloseTo(53.6057, 4);
    expect(headerOf(gabletRoof()).length).toBeCloseTo(2 * (49.5 + 1.06066), 4);
    // 1.06066 in past the hip the long plane is half as much lower.
    expect(headerOf(gabletRoof()).clip).toBeCloseTo(0.5303, 4);
  });

  it('runs its ridge on to the small gables, and past them where asked', () => {
    expect(gabletRoof().ridges[0]).toMatchObject({ lineLength: 288, length: 288 });
    expect(gabletRoof({ rakeOverhang: 8 }).ridges[0]).toMatchObject({ lineLength: 304, length: 304 });
  });

  it('is laid out from the outer rafters of the pairs there', () => {
    const { stations } = gabletRoof().layout;
    expect(stations).toEqual(expect.arrayContaining([24.75, 48.75, 72.75, 96.75, 120.75, 383.25, 407.25]));
    const doubled = gabletRoof({ gablet: { back: 96, doubled: true } }).layout.stations;
    expect(doubled).toEqual(expect.arrayContaining([96.75, 98.25, 120.75, 381.75, 383.25]));
    const joists = (changes: Changes) => gabletRoof(changes).ties.find(({ kind }) => kind === 'joist')?.count;
    expect(joists({ gablet: { back: 96, doubled: true } })).toBe(joists({}));
  });

  it('has studs from the lower edge of the header to the end rafters', () => {
    // 16 in from the middle the underside is at 6.355746 − 8.105746 + 128 / 2; the long point 3/8 higher.
    const [studs] = gabletRoof({ gableStuds: {} }).gableStuds ?? [];
    expect(studs?.lengths.at(-1)).toBeCloseTo(62.25 + 0.375 - (53.6057 - 9.25), 3);
    expect(studs?.lengths.every((length) => length > 9.25)).toBe(true);
    expect(studs?.count).toBe(4 * (studs?.lengths.length ?? 0));
  });

  it('has blocks in every bay of all four walls', () => {
    const { blocks, layout } = gabletRoof();
    const bays = 2 * (layout.stations.length - 1) + 2 * ((layout.eaves?.[0]?.stations ?? []).length - 1);
    expect(blocks.reduce((sum, { count }) => sum + count, 0)).toBe(bays);
  });

  it('at one end only, tells which hips are whose', () => {
    const { hips = [] } = gabletRoof({ gablet: { back: 96, ends: ['A'] } });
    const at = (end: string) => hips.filter((hip) => hip.end === end);
    expect(at('A').reduce((sum, { count }) => sum + count, 0)).toBe(2);
    expect(at('B')).toMatchObject([{ count: 2, bodyLength: onlyHip().bodyLength }]);
    expect(at('A').every(({ bodyLength }) => Math.abs(bodyLength - 141.75) < 1e-9)).toBe(true);
  });

  it('at one end only, leaves the other as a plain hip has it', () => {
    const one = gabletRoof({ gablet: { back: 96, ends: ['A'] } });
    // Of the plain one's 20 commons the end B keeps its one in the middle, the long walls theirs and 3 pairs more at A.
    expect(one.cutInPlace?.every(({ side }) => side === 'A')).toBe(true);
    expect(one.commonRafters.find(({ side }) => side === 'A')?.count).toBe(3);
    const { stations } = one.layout;
    expect(stations.filter((x) => x >= 336)).toEqual([336, 360, 384, 408, 432, 456]);
    const long = stations.filter((x) => x > 96 && x <= 336);
    expect(one.commonRafters.find(({ run }) => run === 144)?.count).toBe(2 * long.length + 1);
  });
});

const refusedAt = (changes: Changes): readonly string[] => {
  const read = readRoof(JSON.parse(JSON.stringify({ ...gabletSample, ...changes })));
  return read.ok ? [] : read.complaints.map(({ path }) => path);
};

describe('small gables that do not go together', () => {
  it.each([
    [{ gablet: { back: 5 } }, 'gablet.back'],
    [{ gablet: { back: 143.9 } }, 'gablet.back'],
    [{ gablet: { back: 300 }, length: 900 }, 'gablet.back'],
    [{ gablet: { back: 128 }, rakeOverhang: 6 }, 'gablet.back'],
    [{ gablet: { back: 96 }, length: 190 }, 'length'],
    [{ gablet: { back: 0 } }, 'gablet.back'],
    [{ gablet: { back: 96, ends: [] } }, 'gablet.ends'],
    [{ gablet: { back: 96, ends: ['street'] } }, 'gablet.ends.0'],
    [{ gablet: { back: 96, header: { thickness: 0, depth: 9 } } }, 'gablet.header.thickness'],
    [{ gablet: undefined, rakeOverhang: 6 }, 'rakeOverhang'],
    [{ gablet: undefined, gableStuds: {} }, 'gableStuds'],
    [{ kind: 'gable' }, 'gablet'],
  ])('%j is refused at %s', (changes, path) => {
    expect(refusedAt(changes)).toContain(path);
  });

  it('needs a length for the pairs at both ends, or for one and the hips of the other', () => {
    // Both: 2 · (96 + 1.5). One, and hips between commons: 96 + 1.5 + 144 + 0.75.
    const one = { gablet: { back: 96, ends: ['B'] } };
    // Hips against the ridge reach past its end by 0.75, half of the ridge, and 0.75 · √2, half of their own cheek.
    const against = { ...one, hipTop: 'againstRidge' };
    for (const [changes, least] of [
      [{}, 195],
      [one, 242.25],
      [against, 241.5 + 0.75 + 1.06066],
    ] as const) {
      expect(refusedAt({ ...changes, length: least - 0.01 })).toEqual(['length']);
      expect(refusedAt({ ...changes, length: least + 0.01 })).toEqual([]);
    }
  });

  it('tells a range that holds: the sample between its seats and where the hips crowd each other', () => {
    const read = readRoof({ ...gabletSample, gablet: { back: 5 } });
    const told = read.ok ? '' : english(read.complaints[0]?.accepted ?? '');
    const [least = NaN, most = NaN] = [...told.matchAll(/[\d.]+/g)].map(Number);
    expect(least).toBeLessThan(most);
    for (const back of [least - 0.01, most + 0.01])
      expect(refusedAt({ gablet: { back } })).toEqual(['gablet.back']);
    for (const back of [least + 0.01, most - 0.01]) expect(refusedAt({ gablet: { back } })).toEqual([]);
  });
});

describe('small gables that are unwise', () => {
  it.each([
    [{}, []],
    [{ gablet: { back: 96, header: { thickness: 1.5, depth: 7.25 } } }, ['headerShallow']],
    [{ gablet: { back: 130 } }, ['gabletLow']],
    [{ endSlope: { rise: 8, run: 12 }, gablet: { back: 60 } }, []],
    [{ hip: { thickness: 1.5, depth: 7.25 } }, ['hipShallow']],
  ])('%j: %j', (changes, codes) => {
    const found = gabletRoof(changes).cautions.map(({ code }) => code);
    expect(found.filter((code) => /^(hipS|header|gablet|ridge)/.test(code))).toEqual(codes);
  });
});

const size = fc.double({ min: 160, max: 400, noNaN: true });
const rise = fc.double({ min: 3, max: 12, noNaN: true });
const endRise = fc.oneof(rise, fc.constant(undefined));
const share = fc.double({ min: 0.45, max: 0.75, noNaN: true });
const depths = { hip: { thickness: 1.5, depth: 7.25 }, seat: 1 };

/** Files of which most can be framed: the ends' slope within what leaves their rafters a seat. */
const some = fc
  .record({ span: size, up: rise, end: endRise, at: share })
  .map(({ span, up, end = up, at }) => ({
    ...depths,
    span,
    length: (span * up) / end + 150,
    slope: { rise: up, run: 12 },
    endSlope: { rise: end, run: 12 },
    gablet: { back: (at * span * up) / end / 2, header: { thickness: 1.5, depth: 7.25 } },
  }));

const each = (holds: (changes: typeof some extends fc.Arbitrary<infer T> ? T : never) => void): void =>
  fc.assert(
    fc.property(some, (changes) => {
      fc.pre(readRoof({ ...gabletSample, ...changes }).ok);
      holds(changes);
    }),
    { numRuns: 30 },
  );

describe('laws of small gables', () => {
  it('leave to hips all but their length', () => {
    each((changes) => {
      const { gablet: _, ...plain } = changes;
      const [hip, whole] = [firstHip(gabletRoof(changes)), firstHip(hipRoof(plain))];
      for (const key of ['drop', 'seat', 'heightAbovePlate', 'tailLength'] as const)
        expect(hip[key]).toBeCloseTo(whole[key], 9);
      expect(hip.lineLength / whole.lineLength).toBeCloseTo(changes.gablet.back / endRun(hipPlan(plain)), 9);
    });
  });

  it('as far back as the end of the ridge come to the plain hip, but for what it ends at', () => {
    each((changes) => {
      const { gablet: _, ...plain } = changes;
      const [plan, far] = [gabletPlan(changes), endRun(hipPlan(plain))];
      const [near, whole] = [figure(movedTo(plan, far - 1e-5)), hipRoof(plain)];
      const [hip, plainHip] = [firstHip(near), firstHip(whole)];
      const per = hip.lineLength / hip.run;
      expect(Math.abs(hip.run - plainHip.run)).toBeLessThan(1e-3);
      expect(Math.abs(hip.lineLength - plainHip.lineLength)).toBeLessThan(1e-3);
      const ends = (plainHip.shorteningTop - hip.shorteningTop) * per;
      expect(Math.abs(hip.bodyLength - plainHip.bodyLength - ends)).toBeLessThan(1e-3);
      expect(Math.abs(near.ridges[0]!.lineLength - whole.ridges[0]!.lineLength)).toBeLessThan(1e-3);
      // The middle rafter goes as far as in the plain hip; where the hips crowd it at the header it is cut in place.
      const middle =
        near.commonRafters.find(({ side }) => side === 'ends') ??
        near.cutInPlace?.find(({ side, at }) => side === 'A' && at === 0);
      expect(middle?.run).toBeCloseTo(far, 3);
      // Of the header nothing but its own thickness and the hips' cheeks is left.
      const { thickness } = headerOf(near).section;
      const { slope, endSlope } = plan;
      const k = (endSlope.rise * slope.run) / (endSlope.run * slope.rise);
      expect(headerOf(near).length / 2 - thickness * k).toBeCloseTo(0.75 * Math.sqrt(1 + k * k), 3);
    });
  });

  it('over the wall itself come to a gable', () => {
    each((changes) => {
      const { span, slope, length } = changes;
      const near = figure(movedTo(gabletPlan(changes), 1e-5));
      const gable = roofOf({ span, slope, length, seat: 1 });
      const { id: _id, count: _count, side: _side, ...cuts } = gable.commonRafters[0]!;
      expect(near.commonRafters.find(({ side }) => side === 'both')).toMatchObject(cuts);
      expect(near.ridges[0]!.lineLength).toBeCloseTo(gable.ridges[0]!.lineLength, 3);
      expect(near.ridges[0]!.topHeight).toBeCloseTo(gable.ridges[0]!.topHeight, 9);
      expect(near.ridges[0]!.leastDepth).toBe(gable.ridges[0]!.leastDepth);
      const { stations } = near.layout;
      expect(stations[0]).toBeCloseTo(0.75, 3);
      expect(stations.at(-1)).toBeCloseTo(length - 0.75, 3);
      expect(Math.max(...(near.hips ?? []).map((hip) => hip.lineLength))).toBeLessThan(1e-3);
    });
  });

  it('leave only those rafters to be cut in place that come to the header beside a hip, and stubs at a corner', () => {
    each((changes) => {
      const roof = gabletRoof(changes);
      const { length, clip } = headerOf(roof);
      const reach = (clip * 12) / changes.slope.rise;
      // A rafter whose line would meet the hip's within the thickness of the header is left out too, though the header ends it.
      const within = (1.5 * changes.endSlope.rise) / changes.slope.rise;
      for (const { side, at, run } of roof.cutInPlace ?? []) {
        // Hip and rafter, both 1 1/2 in thick, are in each other's way as long as that.
        if (run < 6) continue;
        expect(['A', 'B']).toContain(side);
        const past = Math.abs(at) - (length / 2 - reach);
        expect(past).toBeLessThan(reach + 0.75 + 1e-6);
        expect(-past).toBeLessThan(Math.max(reach + 0.75, within) + 1e-6);
      }
    });
  });

  it('at one end or the other are mirror images', () => {
    each((changes) => {
      const at = (end: 'A' | 'B') => gabletRoof({ ...changes, gablet: { ...changes.gablet, ends: [end] } });
      const [a, b] = [at('A'), at('B')];
      const mirrored = b.layout.stations.map((x) => changes.length - x).reverse();
      // Marks run from A: those between the ends fall otherwise, those past them do not.
      expect(a.layout.stations[0]).toBeCloseTo(mirrored[0]!, 9);
      const lengths = ({ hips = [] }: typeof a) =>
        hips.map(({ bodyLength }) => bodyLength).sort((x, y) => x - y);
      lengths(a).forEach((length, i) => expect(length).toBeCloseTo(lengths(b)[i]!, 9));
      expect(headerOf(a).length).toBeCloseTo(headerOf(b).length, 9);
      expect(a.ridges[0]!.length).toBeCloseTo(b.ridges[0]!.length, 9);
      const both = gabletRoof(changes);
      expect(headerOf(both).count).toBe(headerOf(a).count + headerOf(b).count);
    });
  });

  it('grow alike in all lengths, and are the same in millimeters', () => {
    const grown = (k: number, said: (inches: number) => unknown = (x) => x) => ({
      span: said(288 * k),
      length: said(480 * k),
      spacing: said(24 * k),
      seat: said(3.5 * k),
      overhang: said(14 * k),
      rafter: { thickness: said(1.5 * k), depth: said(7.25 * k) },
      ridge: { thickness: said(1.5 * k), depth: said(9.25 * k) },
      plate: { width: said(5.5 * k) },
      endSlope: { rise: 7, run: 12 },
      gablet: { back: said(80 * k) },
    });
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 2, noNaN: true }), (k) => {
        const [one, other] = [gabletRoof(grown(1)), gabletRoof(grown(k))];
        expect(firstHip(other).bodyLength / firstHip(one).bodyLength).toBeCloseTo(k, 9);
        expect(headerOf(other).length / headerOf(one).length).toBeCloseTo(k, 9);
        expect(other.layout.stations.length).toBe(one.layout.stations.length);
        const metric = gabletRoof(grown(k, (inches) => `${inches * 25.4} mm`));
        expect(headerOf(metric).length).toBeCloseTo(headerOf(other).length, 9);
        expect(firstHip(metric).bodyLength).toBeCloseTo(firstHip(other).bodyLength, 9);
      }),
    );
  });
});
