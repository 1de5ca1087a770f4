import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import { readRoof } from '../../src/content/readRoof';
import { expand } from '../../src/core/roof/expand';
import { figure } from '../../src/core/roof/figure';
import { heightOver } from '../../src/core/roof/heightOver';
import type { GablePlan } from '../../src/core/roof/plan';
import type { Timber } from '../../src/core/roof/timber';
import { planeCut } from '../../src/core/roof/timberParts';
import { timbersOf } from '../../src/core/roof/timbers';
import { contact, freeSolids, heightsAbovePlane, solidOf } from './support/kernel';
import { clashesOf, overlapsOf } from './support/overlaps';

/** A gable that stands and one built on to it, both as solids: all that the new one is told of the old are its heights. */

/** For each law; `SOLIDS=200 npx vitest run --project jobs tests/kernel` asks for more. */
const plans = Number(process.env['SOLIDS'] ?? 10);

afterEach(freeSolids);

const tenths = (min: number, max: number) =>
  fc.integer({ min: Math.round(min * 10), max: Math.round(max * 10) }).map((n) => n / 10);

const gable = (file: object): GablePlan | undefined => {
  const read = readRoof({
    format: 'tack-and-true/roof@1',
    kind: 'gable',
    plate: { width: 5.5 },
    joists: false,
    collars: false,
    ...file,
  });
  return read.ok && read.value.kind === 'gable' ? read.value : undefined;
};

type Both = { readonly old: GablePlan; readonly plan: GablePlan };

const some = fc.record({
  rise: tenths(3, 12),
  span: tenths(120, 360),
  oldLength: tenths(60, 200),
  length: tenths(24, 240),
  spacing: fc.constantFrom(12, 16, 19.2, 24),
  seat: tenths(2, 4),
  oldDepth: fc.constantFrom(7.25, 9.25),
  depth: fc.constantFrom(7.25, 9.25),
  oldRidge: fc.constantFrom(1.5, 1.75, 3.5),
  overhang: tenths(0, 20),
  reference: fc.constantFrom('plate', 'sheathing'),
  end: fc.constantFrom('A', 'B'),
  said: fc.constantFrom(4, 6, 9),
});

/** The old roof stands with its free gable at the joint line; the new one is said to have another slope than it has. */
const bothOf = (one: typeof some extends fc.Arbitrary<infer T> ? T : never): Both | undefined => {
  const shared = { span: one.span, overhang: one.overhang, spacing: one.spacing, reference: one.reference };
  const old = gable({
    ...shared,
    slope: { rise: one.rise, run: 12 },
    length: one.oldLength,
    rafter: { thickness: 1.5, depth: one.oldDepth },
    ridge: { thickness: one.oldRidge, depth: 24 },
    seat: one.seat,
  });
  if (!old) return undefined;
  const clad = one.reference === 'sheathing' ? 0.5 : 0;
  const stands = figure(old);
  const plan = gable({
    ...shared,
    slope: { rise: one.said, run: 12 },
    length: one.length,
    rafter: { thickness: 1.5, depth: one.depth },
    ridge: { thickness: 1.5, depth: 24 },
    standing: {
      end: one.end,
      heightAbovePlate: stands.commonRafters[0]!.heightAbovePlate + (clad * one.rise) / 12,
      ridgeTop: stands.ridges[0]!.topHeight,
      ridgeThickness: one.oldRidge,
      lastRafter: 0.75,
      rafterDepth: one.oldDepth,
    },
  });
  return plan && { old, plan };
};

const every = (holds: (both: Both) => void): void =>
  fc.assert(
    fc.property(some, (one) => {
      const both = bothOf(one);
      fc.pre(both !== undefined);
      holds(both);
      freeSolids();
    }),
    { numRuns: plans },
  );

/** Members of the old roof, moved along to where it stands beside the new one. */
const beside = ({ old, plan }: Both): readonly Timber[] => {
  const by = plan.standing?.end === 'A' ? -old.length : plan.length;
  return timbersOf(old).map((timber) => ({
    ...timber,
    id: `old.${timber.id}`,
    origin: [timber.origin[0] + by, timber.origin[1]],
    cuts: timber.cuts.map(({ normal, reach }) => ({ normal, reach: reach + normal[0] * by })),
  }));
};

describe('a gable built on to one that stands', () => {
  it('has no member in the place of another, of its own or of the old roof', () => {
    every((both) =>
      expect(clashesOf(overlapsOf([...timbersOf(both.plan), ...beside(both)]), 1e-6)).toEqual([]),
    );
  });

  it('has its top edges in the planes of the old rafters, whatever slope it was said to have', () => {
    every(({ old, plan }) => {
      const timbers = timbersOf(plan);
      for (const eave of expand(old).eaves)
        for (const timber of timbers.filter(({ id }) => id.startsWith(`rafter.${eave.side}.`)))
          for (const height of heightsAbovePlane(
            timber,
            planeCut(eave.plane, heightOver(old.rafter.depth, eave)),
          ))
            expect(Math.abs(height)).toBeLessThan(1e-6);
    });
  });

  it('bears with its seats and plumb cuts as figured, and its ridge butts the old one', () => {
    every((both) => {
      const { plan } = both;
      const timbers = timbersOf(plan);
      const named = (id: string) => solidOf(timbers.find((timber) => timber.id === id) as Timber);
      const [rafter] = figure(plan).commonRafters;
      const { thickness } = plan.rafter;
      const clad = plan.reference === 'sheathing' ? 0.5 : 0;
      for (const eave of expand(plan).eaves) {
        const solid = named(`rafter.${eave.side}.${eave.stations[0]}`);
        const seat = contact(solid, named(`plate.${eave.side}`), { toward: [0, 0, -1] });
        expect(Math.abs(seat - (rafter!.seat - clad) * thickness)).toBeLessThan(0.01);
        const plumb = contact(solid, named('ridge'), { toward: [...eave.plane.up, 0] });
        expect(Math.abs(plumb - rafter!.plumbCutLength * thickness)).toBeLessThan(0.01);
      }
      const ridges = beside(both).filter(({ id }) => id === 'old.ridge');
      const way = plan.standing?.end === 'A' ? -1 : 1;
      const butt = contact(named('ridge'), solidOf(ridges[0] as Timber), { toward: [way, 0, 0] });
      expect(butt).toBeGreaterThan(0.9 * 1.5 * 22);
    });
  });
});
