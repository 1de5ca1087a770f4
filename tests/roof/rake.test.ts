import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readRoof } from '../../src/content/readRoof';
import { figure } from '../../src/core/roof/figure';
import type { FiguredRoof } from '../../src/core/roof/figured';
import type { FiguredLookouts } from '../../src/core/roof/figuredRake';
import type { GablePlan } from '../../src/core/roof/plan';
import { inch, mmPerInch } from '../../src/core/units/inch';
import { codesOf, planOf, roofOf, sample, type Changes } from './roofs';
import { english } from '../content/english';

/** Rake rafters and lookouts. */

const raked = { rakeOverhang: 16, rake: {} } as const;
const lookouts = (changes: Changes) => ({ rake: { lookouts: changes } });
const marksOf = (changes: Changes): readonly number[] | undefined =>
  roofOf({ ...raked, ...changes }).lookouts?.[0]?.marks;

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

/** Gables of 2×8 with a rake, from the flattest to steep ones. */
const some = fc.record({
  rise: fc.double({ min: 2, max: 18, noNaN: true }),
  span: fc.double({ min: 100, max: 400, noNaN: true }),
  length: fc.double({ min: 130, max: 400, noNaN: true }),
  overhang: fc.double({ min: 0, max: 30, noNaN: true }),
  rakeOverhang: fc.double({ min: 2, max: 40, noNaN: true }),
  spacing: fc.constantFrom(12, 16, 19.2, 24),
  reference: fc.constantFrom('plate', 'sheathing'),
  blockStands: fc.constantFrom('plumb', 'square'),
  rake: fc.record({
    rafter: fc.record({ thickness: fc.constantFrom(0.75, 1.5), depth: fc.constantFrom(5.5, 9.25) }),
    lookouts: fc.record({
      spacing: fc.double({ min: 8, max: 48, noNaN: true }),
      thickness: fc.constantFrom(0.75, 1.5),
      width: fc.constantFrom(2.5, 3.5),
      back: fc.constantFrom(1, 2),
    }),
  }),
});
type Some = typeof some extends fc.Arbitrary<infer T> ? T : never;
const changesOf = ({ rise, ...rest }: Some): Changes => ({
  ...rest,
  slope: { rise, run: 12 },
  seat: 2,
  joists: false,
  collars: false,
});

type Raked = Pick<FiguredRoof, 'rakeRafters' | 'lookouts'>;
const rakeIn = ({ rakeRafters, lookouts: rows }: FiguredRoof): Raked => ({
  ...(rakeRafters && { rakeRafters }),
  ...(rows && { lookouts: rows }),
});

/** The same but for rounding: every number times k, counts as they are. */
const expectNear = (found: unknown, wanted: unknown, k = 1): void => {
  if (typeof wanted === 'number')
    expect(Math.abs((found as number) - wanted * k)).toBeLessThan(1e-9 * k * Math.max(1, wanted));
  else if (typeof wanted === 'object' && wanted !== null) {
    expect(Object.keys(found as object)).toEqual(Object.keys(wanted));
    for (const [key, value] of Object.entries(wanted)) {
      const got = (found as Record<string, unknown>)[key];
      expectNear(got, value, key === 'count' || key === 'notchedRafters' ? 1 : k);
    }
  } else expect(found).toBe(wanted);
};

describe('a rake worked by hand', () => {
  // 6 in 12: g = √1.25 = 1.118034. 24 ft span, 2×8, 14 in of tail, 16 in past the gables, 2×4 lookouts at 24 in.
  const roof = roofOf({ ...raked, ...lookouts({ spacing: 24, thickness: 1.5, width: 3.5 }) });

  it('has the rake rafters of its commons', () => {
    const [rake] = roof.rakeRafters!;
    expect(roof.rakeRafters).toHaveLength(1);
    expect(rake).toMatchObject({ id: 'rake', count: 4, side: 'both', run: 144, rise: 72, shortening: 0.75 });
    // 16 − 1 1/2 / 2.
    expect(rake!.past).toBe(15.25);
    // 144 × 1.118034; (144 − 0.75) × 1.118034; 14 × 1.118034; their sum; + 7 1/4 × 6/12; 7 1/4 × 1.118034.
    expect(rake!.lineLength).toBeCloseTo(160.9969, 4);
    expect(rake!.bodyLength).toBeCloseTo(160.1584, 4);
    expect(rake!.tailLength).toBeCloseTo(15.6525, 4);
    expect(rake!.edgeLength).toBeCloseTo(175.8108, 4);
    expect(rake!.stockLength).toBeCloseTo(179.4358, 4);
    expect(rake!.plumbCutLength).toBeCloseTo(8.1057, 4);
  });

  it('has lookouts from the rake rafters to the second rafters', () => {
    // Back: second rafter at 24 − 3/4 = 23 1/4, and 312 − 288 − 3/4 at B. Out: 16 − 1 1/2 = 14 1/2. In all 37 3/4.
    // Up to 175.8108 − 1 1/2 × 6/12 (notch, at its floor) − 3 1/2 (wood left) − 1 3/4 = 169.8108: seven marks.
    expect(roof.lookouts).toEqual([
      {
        id: 'lookout',
        count: 28,
        side: 'both',
        section: { thickness: 1.5, depth: 3.5 },
        end: 'ends',
        spacing: 24,
        length: 37.75,
        reach: 14.5,
        back: 23.25,
        notchDepth: 1.5,
        notchWidth: 3.5,
        notchedRafters: 4,
        marks: [24, 48, 72, 96, 120, 144, 168],
        markedFrom: 'tailCut',
      },
    ]);
  });

  it('raises the mark that would lie in the block and over the birdsmouth', () => {
    // 20 in of tail: the heel is 22.3607 up the edge; block and seat take 22.3607 − 3/4 = 21.6107 to 23 1/2 × 1.118034 =
    // 26.2738. The lookout at 24 would lie at 22 1/4 to 25 3/4, and goes up to 26.2738 + 1 3/4 = 28.0238.
    const [first, second, third] = marksOf({ overhang: 20 })!;
    expect(first).toBeCloseTo(28.0238, 4);
    expect([second, third]).toEqual([48, 72]);
    // Every 12 in: the first stays, the next at 36 is 7.98 from the raised one.
    const close = marksOf({ overhang: 20, ...lookouts({ spacing: 12 }) })!;
    expect(close.slice(0, 3).map((mark) => mark.toFixed(4))).toEqual(['12.0000', '28.0238', '36.0000']);
    // Every 8 in: the one at 32 would be 3.98 from the raised one, less than half the spacing, and serves for it.
    expect(marksOf({ overhang: 20, ...lookouts({ spacing: 8 }) })!.slice(0, 4)).toEqual([8, 16, 32, 40]);
  });

  it('has one row of lookouts for each gable where the bays beside them differ', () => {
    // 300 in from end A: the last inner rafter at 288 leaves 300 − 288 − 3/4 = 11 1/4 at B.
    const [a, b] = roofOf({ ...raked, length: 300 }).lookouts!;
    expect(a).toMatchObject({ id: 'lookout.A', end: 'A', count: 14, back: 23.25, length: 37.75 });
    expect(b).toMatchObject({ id: 'lookout.B', end: 'B', count: 14, back: 11.25, length: 25.75 });
  });

  it('runs back over one more rafter where it is told so', () => {
    // Third rafter at 48: 48 − 3/4.
    const [row] = roofOf({ ...raked, ...lookouts({ back: 2 }) }).lookouts!;
    expect(row).toMatchObject({ back: 47.25, length: 61.75, notchedRafters: 8, count: 28 });
  });
});

describe('a rake of a shed', () => {
  it('is cut as its commons are, and the ledger runs past to carry it', () => {
    const { rakeRafters, lookouts: rows, commonRafters, ledgers } = shedOf(raked);
    const [common] = commonRafters;
    expect(rakeRafters).toMatchObject([
      { id: 'rake', count: 2, side: 'street', shortening: 1.5, edgeLength: common!.edgeLength },
    ]);
    expect(rows).toMatchObject([{ id: 'lookout', end: 'ends', count: 14, length: 37.75 }]);
    expect(ledgers?.[0]?.length).toBe(312 + 2 * 16);
    expect(shedOf({ rakeOverhang: 16 }).ledgers?.[0]?.length).toBe(312);
  });
});

describe('what holds for every rake', () => {
  const every = (holds: (changes: Changes) => void): void =>
    fc.assert(
      fc.property(some, (roof) => {
        fc.pre(readRoof({ ...sample, ...changesOf(roof) }).ok);
        holds(changesOf(roof));
      }),
    );

  it('changes nothing else of a gable', () => {
    every((changes) => {
      const { rakeRafters, lookouts: rows, cautions, ...rest } = roofOf(changes);
      const { cautions: usual, ...without } = roofOf({ ...changes, rake: undefined });
      expect(rest).toEqual(without);
      expect(cautions.slice(0, usual.length)).toEqual(usual);
      expect([rakeRafters, rows]).not.toContain(undefined);
      expect(Object.keys(without)).not.toContain('rakeRafters');
    });
  });

  it('has its marks in order, no two nearer than half the spacing, and all on the rafter', () => {
    every((changes) => {
      const { rakeRafters, lookouts: rows = [] } = roofOf(changes);
      for (const { marks, spacing, notchWidth, count, end } of rows) {
        marks.slice(1).forEach((mark, i) => expect(mark - marks[i]!).toBeGreaterThan(spacing / 2));
        expect(marks[0]! - notchWidth / 2).toBeGreaterThan(0);
        expect(marks.at(-1)! + notchWidth).toBeLessThan(rakeRafters![0]!.edgeLength);
        expect(count).toBe(marks.length * (end === 'ends' ? 4 : 2));
      }
    });
  });

  it('trades the gables when the layout starts from the other end', () => {
    every((changes) => {
      const [one, two] = (['endA', 'endB'] as const).map((datum) => roofOf({ ...changes, datum }));
      const other = { A: 'B', B: 'A', ends: 'ends' } as const;
      const byEnd = (rows: readonly FiguredLookouts[]) => [...rows].sort((a, b) => (a.end < b.end ? -1 : 1));
      const traded = two!.lookouts!.map((row) => ({
        ...row,
        end: other[row.end],
        id: row.end === 'ends' ? row.id : `lookout.${other[row.end]}`,
      }));
      expectNear(byEnd(one!.lookouts!), byEnd(traded));
      expect(one!.rakeRafters).toEqual(two!.rakeRafters);
    });
  });

  it('is the mirror image when the sides change places', () => {
    const rise = fc.integer({ min: 3, max: 12 });
    fc.assert(
      fc.property(rise, rise, fc.constantFrom(0, 6, 12), (up, other, high) => {
        fc.pre(up !== other);
        const [street, yard] = [up, other].map((one) => ({ rise: one, run: 12 }));
        const usual = { ...raked, seat: 2, span: 400, joists: false, collars: false };
        const one = roofOf({ ...usual, slope: street, yard: { slope: yard, plateHeight: high } });
        const two = roofOf({ ...usual, slope: yard, yard: { slope: street, plateHeight: -high } });
        const [trade, keep] = [
          { street: 'yard', yard: 'street', both: 'both' },
          { street: 'street', yard: 'yard', both: 'both' },
        ] as const;
        const rows = (roof: FiguredRoof, sides: typeof trade | typeof keep) =>
          [...roof.rakeRafters!, ...roof.lookouts!]
            .map((row) => ({ ...row, id: row.id.split('.')[0]!, side: sides[row.side] }))
            .sort((a, b) => (a.id + a.side < b.id + b.side ? -1 : 1));
        expect(rows(one, keep)).toHaveLength(4);
        expectNear(rows(one, keep), rows(two, trade));
      }),
    );
  });

  it('grows as the roof grows', () => {
    fc.assert(
      fc.property(some, fc.constantFrom(0.5, 2, 4), (roof, k) => {
        const file = { ...sample, ...changesOf(roof) };
        fc.pre(readRoof(file).ok);
        const plan = planOf(changesOf(roof));
        const same = figure(scaled(plan, k));
        fc.pre(same.layout.stations.length === figure(plan).layout.stations.length);
        expectNear(rakeIn(same), rakeIn(figure(plan)), k);
      }),
    );
  });

  it('in millimetres is the same rake', () => {
    fc.assert(
      fc.property(some, (roof) => {
        const changes = changesOf(roof);
        fc.pre(readRoof({ ...sample, ...changes }).ok);
        const metric = inMm({ ...sample, ...changes }) as Changes;
        expectNear(rakeIn(roofOf(metric)), rakeIn(roofOf(changes)));
      }),
    );
  });
});

/** Every length of a plan times k; what counts stays, and so does a slope. */
const scaled = (plan: GablePlan, k: number): GablePlan => {
  const by = (value: unknown, key: string): unknown => {
    if (key === 'slope' || key === 'back') return value;
    if (typeof value === 'number') return inch(value * k);
    if (typeof value !== 'object' || value === null) return value;
    return Object.fromEntries(Object.entries(value).map(([name, inner]) => [name, by(inner, name)]));
  };
  return by(plan, '') as GablePlan;
};

const inMm = (value: unknown, key = ''): unknown => {
  if (key === 'slope' || key === 'back') return value;
  if (typeof value === 'number') return value * mmPerInch;
  if (typeof value !== 'object' || value === null) return value;
  const inner = Object.entries(value).map(([name, one]) => [name, inMm(one, name)]);
  return { ...Object.fromEntries(inner), ...(key === '' && { units: 'mm' }) };
};

describe('a rake that is unwise', () => {
  const deep = { ...raked, rafter: { thickness: 1.5, depth: 9.25 }, gableStuds: {} };
  const tail = { ...deep, rafter: { thickness: 1.5, depth: 5.5 }, overhang: 20 };

  const onRidge = { ...deep, ridge: { thickness: 1.5, depth: 11.125 } };

  /** Code, place, the last plan that is all right and the first that is not; the text has to hold these numbers. */
  const rows: readonly (readonly [string, string, Changes, Changes, readonly string[]])[] = [
    [
      // IRC R802.7.1, read second hand: a sixth of the depth, 9 1/4 / 6 = 1.542.
      'lookoutNotchDeep',
      'rake.lookouts.thickness',
      { ...deep, ...lookouts({ thickness: 1.54 }) },
      { ...deep, ...lookouts({ thickness: 1.55 }) },
      ['1.55 in', '1.542 in'],
    ],
    // The middle third of the run is 62 × 1.118034 = 69.318 to 110 × 1.118034 = 122.984 up the edge: 72, 96, 120.
    ['lookoutNotchMiddle', 'rake.lookouts', deep, { ...deep, gableStuds: undefined }, ['3 of', 'studs']],
    ['lookoutNotchMiddle', 'rake.lookouts', deep, { ...deep, ...lookouts({ back: 2 }) }, ['3 of']],
    [
      // IRC R802.7.1.1, read second hand: 3 1/2 in left of a tail.
      'lookoutTailThin',
      'rake.lookouts.thickness',
      { ...tail, ...lookouts({ spacing: 12, thickness: 2 }) },
      { ...tail, ...lookouts({ spacing: 12, thickness: 2.1 }) },
      ['3.4 in', '3.5 in'],
    ],
    [
      'lookoutsShort',
      'rake.lookouts.back',
      { ...deep, rakeOverhang: 23.25 },
      { ...deep, rakeOverhang: 23.5 },
      ['23.5 in', '23.25 in', 'no source'],
    ],
    [
      // (75 − 3/4 + 14) × 1.118034 = 98.666; 3/4 and 5 1/4 less, 92.67.
      'lookoutsNone',
      'rake.lookouts.spacing',
      { ...deep, span: 150, ...lookouts({ spacing: 92 }) },
      { ...deep, span: 150, ...lookouts({ spacing: 93 }) },
      ['98.666 in'],
    ],
    [
      'rakeShallow',
      'rake.rafter.depth',
      { ...deep, rake: { rafter: { thickness: 1.5, depth: 1.5 } } },
      { ...deep, rake: { rafter: { thickness: 1.5, depth: 1.4 } } },
      ['1.4 in', '1.5 in'],
    ],
    [
      // 9.9 × 1.118034 = 11.069 and 10 × 1.118034 = 11.180 on a ridge of 11 1/8.
      'rakeOffBoard',
      'rake.rafter.depth',
      { ...onRidge, rake: { rafter: { thickness: 1.5, depth: 9.9 }, lookouts: false } },
      { ...onRidge, rake: { rafter: { thickness: 1.5, depth: 10 }, lookouts: false } },
      ['11.125 in', '11.18 in', '0.055 in'],
    ],
  ];

  it.each(rows)('%s at %s', (code, at, good, bad, texts) => {
    expect(codesOf(good)).not.toContain(code);
    const found = roofOf(bad).cautions.filter((caution) => caution.code === code);
    expect(found).toMatchObject([{ at }]);
    for (const text of texts) expect(found[0]!.text).toContain(text);
  });

  it('is told once, though both sides are so', () => {
    const both = { ...deep, gableStuds: undefined, yard: { slope: { rise: 7, run: 12 } }, joists: false };
    expect(codesOf(both).filter((code) => code === 'lookoutNotchMiddle')).toHaveLength(1);
  });
});

describe('a rake that cannot be', () => {
  const refused = (file: unknown): readonly string[] => {
    const read = readRoof(file);
    return read.ok ? [] : read.complaints.map(({ path, accepted }) => `${path}: ${english(accepted)}`);
  };
  const thin = { rafter: { thickness: 0.75, depth: 5.5 } };

  it.each<[Changes, readonly string[]]>([
    [{ rakeOverhang: 0 }, ['rakeOverhang: at least 1.5 in, and more than that with lookouts']],
    [{ rakeOverhang: 1.5 }, ['rakeOverhang: more than 1.5 in, or "lookouts": false']],
    [{ rakeOverhang: 1.5, rake: { lookouts: false } }, []],
    [{ rakeOverhang: 0.5, rake: thin }, ['rakeOverhang: at least 0.75 in, and more than that with lookouts']],
    [lookouts({ thickness: 7.25 }), ['rake.lookouts.thickness: less than 7.25 in']],
    [lookouts({ spacing: 6.9 }), ['rake.lookouts.spacing: at least 7 in']],
    [lookouts({ spacing: 5 }), ['rake.lookouts.spacing: 6 to 96 in']],
    [lookouts({ back: 6 }), []],
    [lookouts({ back: 7 }), ['rake.lookouts.back: at most 6 with 14 rafters a side']],
    [{ length: 20 }, ['rake.lookouts.back: only with a rafter between the gables']],
    [lookouts({ back: 0 }), ['rake.lookouts.back: a whole number, 1 to 100']],
    [{ rake: { laid: 'flat' } }, ['rake.laid: rafter, lookouts']],
    [{ rake: { rafter: { thickness: 100, depth: 5 } } }, ['rake.rafter.thickness: 0.25 to 96 in']],
  ])('%j', (changes, wanted) => {
    expect(refused({ ...sample, ...raked, ...changes })).toEqual(wanted);
    expect(refused(shedFile({ ...raked, ...changes }))).toEqual(wanted);
  });

  it('on a hip roof', () => {
    expect(refused({ ...sample, kind: 'hip', length: 480, rake: {} })).toEqual([
      'rake: only with kind "gable", "shed"',
    ]);
  });
});
