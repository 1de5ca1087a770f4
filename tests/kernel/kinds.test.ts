import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import { readRoof } from '../../src/content/readRoof';
import { heightOver } from '../../src/core/roof/heightOver';
import { expand } from '../../src/core/roof/expand';
import type { RoofPlan } from '../../src/core/roof/plan';
import { planeCut } from '../../src/core/roof/timberParts';
import { timbersOf } from '../../src/core/roof/timbers';
import { freeSolids, heightsAbovePlane } from './support/kernel';
import { clashesOf, overlapsOf } from './support/overlaps';

/** Gables with two different sides and sheds as solids, judged by the kernel. */

/** Of each kind for each law; `SOLIDS=200 npx vitest run --project jobs tests/kernel` asks for more. */
const plans = Number(process.env['SOLIDS'] ?? 10);

afterEach(freeSolids);

const tenths = (min: number, max: number) =>
  fc.integer({ min: Math.round(min * 10), max: Math.round(max * 10) }).map((n) => n / 10);
const slope = fc.integer({ min: 3, max: 12 }).map((rise) => ({ rise, run: 12 }));

const shared = {
  slope,
  span: tenths(120, 360),
  length: tenths(90, 300),
  overhang: tenths(0, 20),
  spacing: fc.constantFrom(12, 16, 19.2, 24),
  reference: fc.constantFrom('plate' as const, 'sheathing' as const),
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
    yard: fc.record({ slope, plateHeight: tenths(-20, 20), seat: tenths(1.8, 3), overhang: tenths(0, 16) }),
    ridge: tenths(1, 3.5).map((thickness) => ({ thickness, depth: 14 })),
  })
  .map((one) => ({ ...bare, ...one, kind: 'gable', joists: false, collars: false }));

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

describe.each([
  ['a gable with two different sides', gables],
  ['a shed', sheds],
] as const)('%s as solids', (_, files) => {
  it('has no two members in the same place', () => {
    every(files, (plan) => expect(clashesOf(overlapsOf(timbersOf(plan)), 1e-6)).toEqual([]));
  });

  it('has the top edges of its rafters in their planes', () => {
    every(files, (plan) => {
      const timbers = timbersOf(plan);
      for (const eave of expand(plan).eaves)
        for (const timber of timbers.filter(({ id }) => id.startsWith(`rafter.${eave.side}.`)))
          for (const height of heightsAbovePlane(
            timber,
            planeCut(eave.plane, heightOver(plan.rafter.depth, eave)),
          ))
            expect(Math.abs(height)).toBeLessThan(1e-6);
    });
  });
});
