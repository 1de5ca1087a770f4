import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import { readRoof } from '../../src/content/readRoof';
import { expand } from '../../src/core/roof/expand';
import { figure } from '../../src/core/roof/figure';
import { heightOver } from '../../src/core/roof/heightOver';
import type { ShedPlan } from '../../src/core/roof/plan';
import type { Timber } from '../../src/core/roof/timber';
import { planeCut } from '../../src/core/roof/timberParts';
import { timbersOf } from '../../src/core/roof/timbers';
import { boxOf, contact, freeSolids, heightsAbovePlane, solidOf } from './support/kernel';
import { clashesOf, overlapsOf } from './support/overlaps';

/** Sheds from a low wall to a high one, and between side walls, as solids. */

/** For each law; `SOLIDS=200 npx vitest run --project jobs tests/kernel` asks for more. */
const plans = Number(process.env['SOLIDS'] ?? 10);

afterEach(freeSolids);

const tenths = (min: number, max: number) =>
  fc.integer({ min: Math.round(min * 10), max: Math.round(max * 10) }).map((n) => n / 10);
const maybe = <T>(one: fc.Arbitrary<T>) => fc.option(one, { nil: undefined });

const some = fc
  .record({
    rise: fc.integer({ min: 1, max: 12 }),
    span: tenths(80, 300),
    length: tenths(60, 240),
    overhang: tenths(0, 20),
    spacing: fc.constantFrom(12, 16, 19.2, 24),
    seat: tenths(2, 4),
    reference: fc.constantFrom('plate', 'sheathing'),
    highPlate: fc.record({ width: tenths(3.5, 7.5), seat: maybe(tenths(1.5, 3.5)), overhang: tenths(0, 20) }),
    clearance: maybe(tenths(0, 2)),
  })
  .map(({ rise, clearance, ...one }) => ({
    format: 'tack-and-true/roof@1',
    kind: 'shed',
    slope: { rise, run: 12 },
    rafter: { thickness: 1.5, depth: 7.25 },
    plate: { width: 5.5 },
    ...(clearance !== undefined && { between: { clearance } }),
    ...one,
  }));

const every = (holds: (plan: ShedPlan, timbers: readonly Timber[]) => void): void =>
  fc.assert(
    fc.property(some, (file) => {
      const read = readRoof(file);
      fc.pre(read.ok && read.value.kind === 'shed');
      const plan = (read as { value: ShedPlan }).value;
      holds(plan, timbersOf(plan));
      freeSolids();
    }),
    { numRuns: plans },
  );

describe('a shed on two walls', () => {
  it('has no two members in the same place', () => {
    every((_, timbers) => expect(clashesOf(overlapsOf(timbers), 1e-6)).toEqual([]));
  });

  it('has the top edges of rafters and blocks in its plane', () => {
    every((plan, timbers) => {
      const eave = expand(plan).eaves[0]!;
      const plane = planeCut(eave.plane, heightOver(plan.rafter.depth, eave));
      for (const timber of timbers.filter(({ id }) => /^(rafter|block)/.test(id)))
        for (const height of heightsAbovePlane(timber, plane)) expect(Math.abs(height)).toBeLessThan(1e-6);
    });
  });

  it('bears on both plates with its seats, and against them with its heel cuts', () => {
    every((plan, timbers) => {
      const named = (id: string) => solidOf(timbers.find((timber) => timber.id === id) as Timber);
      const [{ seat, heelCut, high } = { seat: 0, heelCut: 0, high: undefined }] = figure(plan).commonRafters;
      const clad = plan.reference === 'sheathing' ? 0.5 : 0;
      const { thickness } = plan.rafter;
      for (const at of expand(plan).eaves[0]!.stations) {
        const rafter = named(`rafter.street.${at}`);
        const low = contact(rafter, named('plate.street'), { toward: [0, 0, -1] });
        expect(Math.abs(low - (seat - clad) * thickness)).toBeLessThan(0.01);
        const upper = contact(rafter, named('plate.high'), { toward: [0, 0, -1] });
        expect(Math.abs(upper - high!.seat * thickness)).toBeLessThan(0.01);
        // Plates are drawn 1 1/2 in thick, and a shallow low heel over sheathing touches none of its plate.
        const push = { toward: [0, 1, 0] } as const;
        const inner = contact(rafter, named('plate.high'), push);
        expect(Math.abs(inner - Math.min(1.5, high!.heelCut) * thickness)).toBeLessThan(0.01);
        if (clad > 0 || plan.overhang === 0) continue;
        const outer = contact(rafter, named('plate.street'), push);
        expect(Math.abs(outer - Math.min(1.5, heelCut) * thickness)).toBeLessThan(0.01);
      }
    });
  });

  it('has blocks as high as figured, their outer faces over the outer face of the plate', () => {
    every((plan, timbers) => {
      const blocks = figure(plan).blocks.filter(({ side }) => side === 'yard');
      const solids = timbers.filter(({ id }) => id.startsWith('block.high.'));
      expect(solids).toHaveLength(blocks.reduce((sum, { count }) => sum + count, 0));
      for (const one of solids) {
        const { min, max } = boxOf(solidOf(one));
        expect(max[2] - min[2]).toBeCloseTo(blocks[0]!.height, 6);
        expect(max[1]).toBeCloseTo(plan.highPlate!.width, 6);
      }
    });
  });

  it('leaves what it should at side walls, and its rafters reach past neither', () => {
    every((plan, timbers) => {
      const boxes = timbers.map((timber) => ({ id: timber.id, box: boxOf(solidOf(timber)) }));
      const rafters = boxes.filter(({ id }) => id.startsWith('rafter'));
      const clear = plan.between?.clearance ?? 0;
      expect(Math.min(...rafters.map(({ box }) => box.min[0]))).toBeCloseTo(clear, 6);
      expect(Math.max(...rafters.map(({ box }) => box.max[0]))).toBeCloseTo(plan.length - clear, 6);
    });
  });
});
