import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import { readRoof } from '../../src/content/readRoof';
import type { Vec3 } from '../../src/core/geometry/vector';
import { figure } from '../../src/core/roof/figure';
import { expand } from '../../src/core/roof/expand';
import type { Eave } from '../../src/core/roof/form';
import { heightOver } from '../../src/core/roof/heightOver';
import type { RoofPlan } from '../../src/core/roof/plan';
import { topOf as topHeight } from '../../src/core/roof/planes';
import { planesOf } from '../../src/core/roof/settled';
import { lookoutsOf, rakeOf } from '../../src/core/roof/rake';
import { rakeTimbers } from '../../src/core/roof/rakeTimbers';
import type { Timber } from '../../src/core/roof/timber';
import { planeCut } from '../../src/core/roof/timberParts';
import { timbersOf } from '../../src/core/roof/timbers';
import { gableTimbers } from './support/gableTimbers';
import { boxOf, contact, freeSolids, heightsAbovePlane, solidOf, type Solid } from './support/kernel';
import { clashesOf, overlapsOf } from './support/overlaps';

/** Gables and sheds with rake rafters and lookouts as solids, judged by the kernel. */

/** Of each kind for each law; `SOLIDS=200 npx vitest run --project jobs tests/kernel` asks for more. */
const plans = Number(process.env['SOLIDS'] ?? 10);

afterEach(freeSolids);

const tenths = (min: number, max: number) =>
  fc.integer({ min: Math.round(min * 10), max: Math.round(max * 10) }).map((n) => n / 10);
const slope = fc.integer({ min: 3, max: 14 }).map((rise) => ({ rise, run: 12 }));

const shared = {
  slope,
  span: tenths(120, 300),
  length: tenths(90, 240),
  overhang: fc.oneof(fc.constant(0), tenths(1, 30)),
  rakeOverhang: tenths(4, 24),
  spacing: fc.constantFrom(12, 16, 19.2, 24),
  reference: fc.constantFrom('plate', 'sheathing'),
  datum: fc.constantFrom('endA', 'endB', 'centre'),
  blockStands: fc.constantFrom('plumb', 'square'),
  rake: fc.record(
    {
      rafter: fc.record({ thickness: fc.constantFrom(0.75, 1.5), depth: tenths(3, 11.25) }),
      lookouts: fc.record(
        {
          spacing: tenths(11, 32),
          thickness: tenths(0.7, 3),
          width: tenths(2, 5.5),
          back: fc.constantFrom(1, 1, 2),
        },
        { requiredKeys: [] },
      ),
    },
    { requiredKeys: [] },
  ),
};
const bare = {
  format: 'tack-and-true/roof@1',
  rafter: { thickness: 1.5, depth: 7.25 },
  plate: { width: 5.5 },
  seat: 2.5,
};

const gables = fc
  .record({
    ...shared,
    yard: fc.option(fc.record({ slope, plateHeight: tenths(-12, 12), overhang: tenths(0, 16) }), {
      nil: undefined,
    }),
    ridge: tenths(1, 3.5).map((thickness) => ({ thickness, depth: 14 })),
  })
  .map(({ yard, ...one }) => ({
    ...bare,
    ...one,
    ...(yard && { yard }),
    kind: 'gable',
    joists: false,
    collars: false,
  }));

const sheds = fc
  .record({ ...shared, ledger: tenths(1.5, 3.5).map((thickness) => ({ thickness, depth: 11.25 })) })
  .map((one) => ({ ...bare, ...one, kind: 'shed' }));

const every = (files: fc.Arbitrary<object>, holds: (plan: RoofPlan) => void): void =>
  fc.assert(
    fc.property(files, (file) => {
      const read = readRoof(file);
      fc.pre(read.ok);
      holds(read.value);
      freeSolids();
    }),
    { numRuns: plans },
  );

/** Share of the smaller member that two may both lay claim to. */
const least = 1e-6;

/** Inches that a top may be off its plane. */
const flush = 1e-6;

/** Square inches: a push of 1/10,000 in makes wedges at the edges of a face, and the kernel rounds. */
const slack = 0.01;

const topOf = (plan: RoofPlan, eave: Eave) => planeCut(eave.plane, heightOver(plan.rafter.depth, eave));

/** The rafters of an eave that lookouts of an end pass through in notches, and the one they butt against. */
const inFrom = ({ stations }: Eave, end: string, nth: number): number =>
  stations[end === 'A' ? nth : stations.length - 1 - nth] as number;

describe.each([
  ['a gable', gables],
  ['a shed', sheds],
] as const)('%s with a rake, as solids', (_, files) => {
  it('has no two members in the same place', () => {
    every(files, (plan) => {
      const timbers = timbersOf(plan);
      expect(timbers.filter(({ id }) => id.startsWith('rake.'))).toHaveLength(2 * expand(plan).eaves.length);
      expect(clashesOf(overlapsOf(timbers), least)).toEqual([]);
    });
  });

  it('has rake rafters, lookouts and commons flush with the planes, and notches as deep as lookouts are thick', () => {
    every(files, (plan) => {
      const timbers = timbersOf(plan);
      const { thickness, back } = lookoutsOf(plan)!;
      for (const eave of expand(plan).eaves) {
        const through = ['A', 'B'].flatMap((end) =>
          Array.from({ length: back }, (_one, i) => `rafter.${eave.side}.${inFrom(eave, end, i)}`),
        );
        const own = (id: string): boolean => new RegExp(`^(rake|lookout|rafter)\\.${eave.side}\\.`).test(id);
        for (const timber of timbers.filter(({ id }) => own(id)))
          for (const height of heightsAbovePlane(timber, topOf(plan, eave))) {
            const off = through.includes(timber.id) && height < -thickness / 2 ? height + thickness : height;
            expect(Math.abs(off), timber.id).toBeLessThan(flush);
          }
      }
    });
  });

  it('has every lookout bear in its notches in full, and its ends butt on the rake rafter and on a common', () => {
    let seen = 0;
    every(files, (plan) => {
      const { thickness, width, back } = lookoutsOf(plan)!;
      const timbers = timbersOf(plan);
      const solids = new Map<string, Solid>(timbers.map((timber) => [timber.id, solidOf(timber)]));
      const solid = (id: string): Solid => solids.get(id)!;
      for (const eave of expand(plan).eaves) {
        const [x, y, z] = topOf(plan, eave).normal;
        const down: Vec3 = [-x, -y, -z];
        for (const { id } of timbers.filter((one) => one.id.startsWith(`lookout.${eave.side}.`))) {
          const end = id.split('.')[2] as string;
          const out: Vec3 = [end === 'A' ? -1 : 1, 0, 0];
          const rafter = (nth: number): Solid => solid(`rafter.${eave.side}.${inFrom(eave, end, nth)}`);
          for (let nth = 0; nth < back; nth += 1) {
            const bears = contact(solid(id), rafter(nth), { toward: down });
            expect(Math.abs(bears - plan.rafter.thickness * width)).toBeLessThan(slack);
          }
          const inner = contact(solid(id), rafter(back), { toward: [-out[0], 0, 0] });
          expect(Math.abs(inner - thickness * width)).toBeLessThan(slack);
          const outer = contact(solid(id), solid(`rake.${eave.side}.${end}`), { toward: out });
          expect(Math.abs(outer - Math.min(thickness, rakeOf(plan)!.rafter.depth) * width)).toBeLessThan(
            slack,
          );
          seen += 1;
        }
      }
    });
    expect(seen).toBeGreaterThan(0);
  });

  it('ends at the rake overhang, and its rake rafters bear on the ridge or ledger with all of their plumb cut that meets it', () => {
    every(files, (plan) => {
      if (plan.kind === 'hip') return;
      const timbers = timbersOf(plan);
      const along = timbers.map((timber) => boxOf(solidOf(timber)));
      expect(Math.min(...along.map(({ min }) => min[0]))).toBeCloseTo(-plan.rakeOverhang, 9);
      expect(Math.max(...along.map(({ max }) => max[0]))).toBeCloseTo(plan.length + plan.rakeOverhang, 9);
      const [bearer, wood] = plan.kind === 'shed' ? ['ledger', plan.ledger] : ['ridge', plan.ridge];
      const { depth } = wood!;
      const board = timbers.find(({ id }) => id === bearer)!;
      const boardTop = Math.max(...board.outline.map(([, z]) => z));
      const { rafter } = rakeOf(plan)!;
      for (const plane of planesOf(plan)) {
        const { eave } = plane;
        const [top, plumb] = [topHeight(plane), rafter.depth * Math.sqrt(1 + eave.m * eave.m)];
        const high = Math.min(top, boardTop) - Math.max(top - plumb, boardTop - depth);
        for (const timber of timbers.filter(({ id }) => id.startsWith(`rake.${eave.side}.`))) {
          const bears = contact(solidOf(timber), solidOf(board), { toward: [...eave.plane.up, 0] });
          expect(Math.abs(bears - rafter.thickness * high)).toBeLessThan(slack);
        }
      }
    });
  });

  it('has as many of each as was figured, and as long', () => {
    every(files, (plan) => {
      const { rakeRafters = [], lookouts = [] } = figure(plan);
      const timbers = timbersOf(plan);
      const lengths = (some: readonly Timber[]): readonly string[] =>
        some.map(({ thickness }) => thickness.toFixed(6)).sort();
      const told = lookouts.flatMap(({ count, length }) =>
        Array.from({ length: count }, () => length.toFixed(6)),
      );
      expect(lengths(timbers.filter(({ id }) => id.startsWith('lookout.')))).toEqual(told.sort());
      expect(rakeRafters.reduce((sum, { count }) => sum + count, 0)).toBe(
        timbers.filter(({ id }) => id.startsWith('rake.')).length,
      );
    });
  });
});

/** Gables on which the first lookout is marked near the heel, a hand's width to either side. */
const nearHeel = fc
  .record({
    rise: fc.integer({ min: 3, max: 14 }),
    overhang: tenths(10, 24),
    off: tenths(-6, 6),
    seat: fc.constantFrom(1, 2.5),
    lookouts: fc.record({ thickness: tenths(0.7, 2.5), width: fc.constantFrom(2.5, 3.5) }),
    blockStands: shared.blockStands,
    reference: shared.reference,
  })
  .map(({ rise, overhang, off, lookouts, ...one }) => ({
    ...bare,
    ...one,
    kind: 'gable',
    slope: { rise, run: 12 },
    span: 240,
    length: 60,
    overhang,
    rakeOverhang: 12,
    spacing: 24,
    ridge: { thickness: 1.5, depth: 14 },
    rake: {
      lookouts: {
        ...lookouts,
        spacing: Math.max(6, 2 * lookouts.width, overhang * Math.sqrt(1 + (rise / 12) ** 2) + off),
      },
    },
  }));

describe('lookouts marked near the heel', () => {
  it('keep off the blocks, plumb or square, and their notches off the birdsmouth', () => {
    fc.assert(
      fc.property(nearHeel, (file) => {
        const read = readRoof(file);
        if (!read.ok || read.value.kind !== 'gable') throw new Error(JSON.stringify(file));
        const plan = read.value;
        const lookouts = rakeTimbers(plan, expand(plan), planesOf(plan)).filter(({ id }) =>
          id.startsWith('lookout.'),
        );
        expect(clashesOf(overlapsOf([...gableTimbers(plan).blocks, ...lookouts]), least)).toEqual([]);
        for (const { outline } of lookouts) {
          const along = outline.map(([u]) => u);
          expect(Math.max(...along) < 1e-6 || Math.min(...along) > plan.seat - 1e-6).toBe(true);
        }
        freeSolids();
      }),
      { numRuns: Math.max(60, plans) },
    );
  });
});
