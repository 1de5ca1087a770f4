import fc from 'fast-check';
import { readRoof } from '../../src/content/readRoof';
import { figure } from '../../src/core/roof/figure';
import type { FiguredRidge, FiguredRoof } from '../../src/core/roof/figured';
import { steep } from './dormers';
import { roofOf, type Changes } from './roofs';

/** In the middle of the street side of a 24 by 30 ft gable at 12 in 12 of 2×8: 6 ft wide, its front 30 in behind the wall. */
export const bare = {
  kind: 'gable',
  side: 'street',
  at: 180,
  width: 72,
  front: 30,
  header: { thickness: 1.5, depth: 14 },
} as const;
/** The same over side walls whose plates are 6 ft over the main one, at 8 in 12, its front 16 in behind the wall. */
export const walled = {
  ...bare,
  front: 16,
  wall: 72,
  slope: { rise: 8, run: 12 },
  overhang: 6,
  seat: 3,
  studs: { spacing: 16, thickness: 1.5 },
} as const;

export const gableDormer = (dormer: object, changes: Changes = {}): FiguredRoof =>
  roofOf({ ...steep, ...changes, dormers: [dormer] });

export const ridgeIn = ({ ridges }: FiguredRoof): FiguredRidge => {
  const found = ridges.find(({ id }) => id === 'ridge.dormer');
  if (!found) throw new Error('no ridge of a dormer');
  return found;
};

const tenths = (min: number, max: number) =>
  fc.integer({ min: Math.round(min * 10), max: Math.round(max * 10) }).map((n) => n / 10);
const slopeOf = (min: number, max: number) => fc.integer({ min, max }).map((rise) => ({ rise, run: 12 }));
const section = fc.record({
  thickness: fc.constantFrom(1.5, 1.75, 3.5),
  depth: fc.constantFrom(5.5, 7.25, 11.25),
});

const anyOne = {
  kind: fc.constant('gable' as const),
  side: fc.constantFrom('street' as const, 'yard' as const),
  at: tenths(140, 260),
  width: tenths(40, 110),
  slope: slopeOf(6, 16),
  rakeOverhang: tenths(0, 10),
  ridge: section,
  valley: section,
  header: fc.record({ thickness: fc.constantFrom(1.5, 1.75), depth: fc.constantFrom(7.25, 14) }),
};
const standing = fc.record({ ...anyOne, front: tenths(6, 50) });
const onWalls = fc.record({
  ...anyOne,
  front: fc.oneof(fc.constant(0), tenths(6, 30)),
  wall: tenths(40, 100),
  overhang: tenths(0, 14),
  seat: tenths(1.8, 4),
  studs: fc.record({ spacing: fc.constantFrom(12, 16, 24), thickness: fc.constant(1.5) }),
});

/** Any gable dormer without side walls, or with them. */
export const someDormer = { bare: standing, walled: onWalls } as const;

/** Any gable with dormers of a kind; what does not go together in them is for the reader to refuse. */
export const roofsWith = (dormer: fc.Arbitrary<object>, most = 1) =>
  fc
    .record({
      slope: slopeOf(7, 16),
      span: tenths(260, 400),
      overhang: tenths(0, 20),
      spacing: fc.constantFrom(12, 16, 19.2, 24),
      reference: fc.constantFrom('plate' as const, 'sheathing' as const),
      ridge: tenths(1, 3.5).map((thickness) => ({ thickness, depth: 14 })),
      dormers: fc.array(dormer, { minLength: 1, maxLength: most }),
    })
    .map((one) => ({
      ...{ format: 'tack-and-true/roof@1', kind: 'gable', length: 400, datum: 'centre' },
      rafter: { thickness: 1.5, depth: 7.25 },
      plate: { width: 5.5 },
      seat: 2.5,
      sheathing: 0.5,
      ...one,
    }));

export const figured = (file: unknown): FiguredRoof | undefined => {
  const read = readRoof(file);
  return read.ok ? figure(read.value) : undefined;
};
