import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readRoof } from '../../src/content/readRoof';
import { figure } from '../../src/core/roof/figure';
import type { FiguredRoof } from '../../src/core/roof/figured';
import { listsOf } from '../../src/core/roof/lists';
import type { RoofPlan, SteppedPlan } from '../../src/core/roof/plan';
import { planFrom, ridgeIn, runFile, someRun, topFrom } from './runs';
import { inMm, sample } from './roofs';
import { english } from '../content/english';

/** Laws of runs: what is true of any of them. */

type Run = typeof someRun extends fc.Arbitrary<infer T> ? T : never;

const everyRun = (holds: (plan: SteppedPlan, file: Run) => void, numRuns = 150): void =>
  fc.assert(
    fc.property(someRun, (file) => {
      const plan = planFrom(file);
      fc.pre(plan !== undefined);
      holds(plan, file);
    }),
    { numRuns },
  );

const numbers = (value: unknown): readonly number[] => {
  if (typeof value === 'number') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(numbers) : [];
};
const expectAlike = (a: unknown, b: unknown, digits = 8): void => {
  const [one, other] = [numbers(a), numbers(b)];
  expect(one).toHaveLength(other.length);
  one.forEach((value, i) => expect(value).toBeCloseTo(other[i] as number, digits));
};

const gableOf = (file: object): FiguredRoof => {
  const read = readRoof(file);
  if (!read.ok) throw new Error(JSON.stringify(read.complaints));
  return figure(read.value);
};

const stationsIn = ({ layout }: FiguredRoof): readonly (readonly number[])[] =>
  layout.eaves?.map(({ stations }) => stations) ?? [];

describe('sections that are alike', () => {
  const alike = fc.record({
    rise: fc.integer({ min: 3, max: 12 }),
    span: fc.integer({ min: 120, max: 360 }),
    lengths: fc.array(fc.integer({ min: 30, max: 200 }), { minLength: 2, maxLength: 4 }),
    spacing: fc.constantFrom(12, 16, 19.2, 24),
    datum: fc.constantFrom('endA', 'endB', 'centre'),
    reference: fc.constantFrom('plate', 'sheathing'),
  });

  it('are one plain gable, but for end rafters on both sides of the walls between them', () => {
    fc.assert(
      fc.property(alike, ({ rise, lengths, ...rest }) => {
        const length = lengths.reduce((sum, one) => sum + one, 0);
        const main = { ...sample, ...rest, slope: { rise, run: 12 }, length, seat: 2.5, rakeOverhang: 8 };
        const whole = gableOf(main);
        const sections = lengths.map((one) => ({ length: one, bearing: { on: 'wall' } }));
        const run = gableOf({ ...main, kind: 'stepped', sections });
        const [common] = whole.commonRafters;
        for (const { id: _, count: __, ...rafter } of run.commonRafters)
          expect(rafter).toEqual({ ...rafter, ...common, id: undefined, count: undefined });
        for (const { topHeight } of run.ridges) expect(topHeight).toBe(whole.ridges[0]?.topHeight);
        expect(run.ridges.reduce((sum, ridge) => sum + ridge.length, 0)).toBeCloseTo(length + 16, 9);
        for (const { rise: up } of run.steps ?? []) expect(up).toBe(0);
        const walls = (run.steps ?? []).map(({ at }) => at);
        const marks = stationsIn(run).flat();
        const clear = (x: number): boolean => walls.every((at) => Math.abs(x - at) >= 0.75 + 3 - 1e-6);
        expect(marks.filter(clear)).toEqual(whole.layout.stations.filter(clear));
        for (const at of walls)
          expect(marks.filter((x) => Math.abs(x - at) < 0.8)).toEqual([
            expect.closeTo(at - 0.75, 9),
            expect.closeTo(at + 0.75, 9),
          ]);
        for (const kind of ['joist', 'collar'])
          for (const { height, length: long } of run.ties.filter((tie) => tie.kind === kind)) {
            const tie = whole.ties.find((one) => one.kind === kind);
            expect([height, long]).toEqual([expect.closeTo(tie!.height, 9), expect.closeTo(tie!.length, 9)]);
          }
      }),
    );
  });
});

describe('a run', () => {
  it('has in each section the rafters, ridge and ties of a gable of that size by itself, so much higher', () => {
    everyRun((plan, { sections, ...main }) => {
      const roof = figure(plan);
      sections.forEach((own, i) => {
        const name = `section${i + 1}`;
        const { plateHeight, stepOverhang: _, bearing: __, ...sizes } = own;
        const given = Object.fromEntries(Object.entries(sizes).filter(([, value]) => value !== undefined));
        const alone = gableOf({ ...main, ...given, kind: 'gable' });
        const rafter = roof.commonRafters.find(({ id }) => id === `common.${name}`);
        expect({ ...rafter, id: '', count: 0 }).toEqual({ ...alone.commonRafters[0], id: '', count: 0 });
        const ridge = ridgeIn(roof, i + 1);
        expect(ridge.topHeight).toBeCloseTo((alone.ridges[0]?.topHeight ?? 0) + plateHeight, 9);
        expect(ridge.leastDepth).toBe(alone.ridges[0]?.leastDepth);
        for (const tie of alone.ties) {
          const found = roof.ties.find(({ id }) => id === `${tie.kind}.${name}`);
          expectAlike([found?.height, found?.length, found?.clip], [tie.height, tie.length, tie.clip]);
        }
        const studs = roof.gableStuds?.find(({ id }) => id === `stud.${name}.1`);
        if (studs) expectAlike(studs.lengths, alone.gableStuds?.[0]?.lengths);
      });
    });
  });

  it('has the higher ridge of two over the lower one, from the geometry alone', () => {
    everyRun((plan) => {
      const tops = plan.sections.map((section) => topFrom(plan, section));
      (figure(plan).steps ?? []).forEach(({ rise, higher, lower }, i) => {
        expect([higher, lower].sort()).toEqual([`section${i + 1}`, `section${i + 2}`]);
        expect(rise).toBeCloseTo(Math.abs((tops[i] as number) - (tops[i + 1] as number)), 8);
      });
    });
  });

  it('adds up: sections to the run, rafters and clear bays to each section', () => {
    everyRun((plan) => {
      const roof = figure(plan);
      const { thickness } = plan.rafter;
      let from = 0;
      plan.sections.forEach(({ length, bearing }, i) => {
        const own = stationsIn(roof)[i] as readonly number[];
        const lower = (roof.steps ?? []).filter((step) => step.lower === `section${i + 1}`);
        const clear = (at: number): number =>
          lower.some((step) => Math.abs(step.at - at) < 1e-6) ? bearing.clearance : 0;
        expect(own[0]).toBeCloseTo(from + thickness / 2 + clear(from), 8);
        from += length;
        expect(own.at(-1)).toBeCloseTo(from - thickness / 2 - clear(from), 8);
        const blocks = roof.blocks.filter(({ part }) => part === `section${i + 1}`);
        const filled = blocks.reduce(
          (sum, { length: long, count }) => sum + (long + plan.blockAllowance) * (count / 2),
          0,
        );
        const span = (own.at(-1) as number) - (own[0] as number);
        expect(filled + (own.length - 1) * thickness).toBeCloseTo(span, 7);
      });
      expect(from).toBeCloseTo(plan.length, 9);
    });
  });

  it('with its last length left out is the same', () => {
    everyRun((plan, file) => {
      const { length: _, ...last } = file.sections.at(-1) as Run['sections'][number];
      const left = planFrom({ ...file, sections: [...file.sections.slice(0, -1), last] });
      expectAlike(figure(left as RoofPlan), figure(plan));
    });
  });

  it('turned end for end is its own mirror image', () => {
    everyRun((plan, file) => {
      const roof = figure(plan);
      // Of two ridges at one height, that nearer to A has the gable.
      fc.pre((roof.steps ?? []).every(({ rise }) => rise > 1e-6));
      const ends: Readonly<Record<string, string>> = { endA: 'endB', endB: 'endA' };
      const turned = figure(
        planFrom({
          ...file,
          datum: ends[file.datum] ?? file.datum,
          sections: [...file.sections].reverse(),
        }) as RoofPlan,
      );
      const back = (x: number): number => plan.length - x;
      const last = plan.sections.length;
      plan.sections.forEach((_, i) => {
        const [a, b] = [ridgeIn(roof, i + 1), ridgeIn(turned, last - i)];
        expectAlike([a.length, a.topHeight], [b.length, b.topHeight]);
        expectAlike([a.lies!.from, a.lies!.to], [back(b.lies!.to), back(b.lies!.from)]);
        expectAlike(stationsIn(roof)[i], [...(stationsIn(turned)[last - 1 - i] ?? [])].reverse().map(back));
      });
      const told = (one: FiguredRoof) => one.steps ?? [];
      told(roof).forEach(({ at, rise, bearing }, i) => {
        const other = told(turned)[last - 2 - i]!;
        const { from, to, ...rest } = other.bearing;
        expectAlike([at, rise], [back(other.at), other.rise]);
        expectAlike({ ...rest, from: back(to), to: back(from) }, { ...rest, ...bearing });
      });
      expectAlike(
        roof.gableStuds?.map(({ count }) => count).sort((a, b) => a - b),
        turned.gableStuds?.map(({ count }) => count).sort((a, b) => a - b),
      );
    });
  });

  const doubled = (value: unknown, key = ''): unknown => {
    if (typeof value === 'number') return key === 'every' ? value : value * 2;
    if (Array.isArray(value)) return value.map((one) => doubled(one));
    if (typeof value !== 'object' || value === null || key === 'slope') return value;
    return Object.fromEntries(Object.entries(value).map(([name, one]) => [name, doubled(one, name)]));
  };

  it('twice as large has everything twice as long, and bears on four times as much', () => {
    everyRun((plan) => {
      const small = figure(plan);
      const twice = figure(doubled(plan) as RoofPlan);
      expectAlike(
        twice.ridges.map(({ length, topHeight, lies }) => [length, topHeight, lies]),
        doubled(small.ridges.map(({ length, topHeight, lies }) => [length, topHeight, lies])),
      );
      expectAlike(stationsIn(twice), doubled(stationsIn(small)));
      expectAlike(
        twice.commonRafters.map(({ bodyLength, count }) => [bodyLength, 2 * count]),
        doubled(small.commonRafters.map(({ bodyLength, count }) => [bodyLength, count])),
      );
      const bearing = ({ steps = [] }: Pick<FiguredRoof, 'steps'>, by: number) =>
        steps.map(({ bearing: { area, ...rest } }) => [area / by / by, { ...rest }]);
      const [big, usual] = [bearing(twice, 2), bearing(small, 1)];
      expectAlike(
        big.map(([area]) => area),
        usual.map(([area]) => area),
      );
      expectAlike(
        big.map(([, rest]) => rest),
        doubled(usual.map(([, rest]) => rest)),
      );
      expectAlike(
        twice.gableStuds?.map(({ lengths }) => lengths),
        doubled(small.gableStuds?.map(({ lengths }) => lengths)),
      );
    });
  });

  it('is the same in millimetres', () => {
    everyRun((plan, file) => {
      const metric = planFrom(inMm(file));
      expectAlike({ ...figure(metric as RoofPlan), cautions: [] }, { ...figure(plan), cautions: [] }, 6);
    });
  });

  it('has every ridge and post in what is bought, ridges no shorter than figured', () => {
    everyRun((plan) => {
      const roof = figure(plan);
      const { cutList } = listsOf(plan, roof);
      for (const { id, length } of roof.ridges) {
        const own = cutList.sticks.filter(({ member }) => member === id);
        expect(own.reduce((sum, stick) => sum + stick.length * stick.count, 0)).toBeGreaterThan(
          length - 1e-6,
        );
      }
      for (const { id } of roof.posts ?? [])
        expect(cutList.sticks.filter(({ member }) => member === id)).toHaveLength(1);
    }, 40);
  });
});

describe('what a refusal accepts', () => {
  it('is accepted: plates so low that the lower roof stays behind the higher gable', () => {
    let mended = 0;
    fc.assert(
      fc.property(
        fc.integer({ min: 13, max: 60 }),
        fc.integer({ min: 3, max: 5 }),
        fc.integer({ min: 140, max: 300 }),
        (plateHeight, rise, span) => {
          const sections = (height: number) => [
            { length: 192, span, plateHeight: height, slope: { rise, run: 12 }, bearing: { on: 'wall' } },
            {},
          ];
          const read = readRoof(runFile({}, sections(plateHeight)));
          fc.pre(!read.ok);
          if (read.ok) return;
          const [found] = read.complaints;
          if (found?.path !== 'sections.0.plateHeight') return;
          const most = Number(/at most (-?[\d.]+) in/.exec(english(found.accepted))?.[1]);
          const again = readRoof(runFile({}, sections(most - 0.001)));
          expect(again.ok ? [] : again.complaints).toEqual([]);
          mended += 1;
        },
      ),
    );
    expect(mended).toBeGreaterThan(10);
  });

  it('is accepted: a step that lets the lower ridge pass under the higher one', () => {
    let mended = 0;
    fc.assert(
      fc.property(
        fc.integer({ min: 250, max: 288 }),
        fc.constantFrom(1.5, 3.5),
        fc.constantFrom(7.25, 9.25, 14),
        (span, thickness, depth) => {
          const ridge = { thickness, depth: 9.25 };
          const sections = (height: number) => [{ length: 192, span, plateHeight: height, ridge }, {}];
          const main = { ridge: { thickness: 1.5, depth }, posts: { at: [0], below: 90 } };
          const read = readRoof(runFile(main, sections(-0.01)));
          if (read.ok) return;
          const [found] = read.complaints;
          expect(found?.path).toBe('sections.0.bearing');
          const step = Number(/pocket (-?[\d.]+) in/.exec(english(found?.wrong ?? ''))?.[1]);
          const least = Number(/at least ([\d.]+) in/.exec(english(found?.accepted ?? ''))?.[1]);
          const again = readRoof(runFile(main, sections(step - least - 0.012)));
          expect(again.ok ? [] : again.complaints).toEqual([]);
          mended += 1;
        },
      ),
    );
    expect(mended).toBeGreaterThan(10);
  });
});
