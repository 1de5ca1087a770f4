import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import { readRoof } from '../../src/content/readRoof';
import type { Vec2 } from '../../src/core/geometry/vector';
import { figure } from '../../src/core/roof/figure';
import type { FiguredTie } from '../../src/core/roof/figured';
import { limits } from '../../src/core/roof/limits';
import type { RoofPlan } from '../../src/core/roof/plan';
import type { Timber } from '../../src/core/roof/timber';
import { timbersOf } from '../../src/core/roof/timbers';
import { freeSolids } from './support/kernel';
import { clashesOf, overlapsOf } from './support/overlaps';

/** Ties of roofs other than plain gables as solids, beside their pairs, among everything else that stands there. */

/** Of each kind for each law; `SOLIDS=200 npx vitest run --project jobs tests/kernel` asks for more. */
const plans = Number(process.env['SOLIDS'] ?? 10);

afterEach(freeSolids);

const tenths = (min: number, max: number) =>
  fc.integer({ min: Math.round(min * 10), max: Math.round(max * 10) }).map((n) => n / 10);

const shared = {
  rise: fc.integer({ min: 4, max: 12 }),
  other: fc.integer({ min: 4, max: 12 }),
  span: tenths(160, 360),
  spacing: fc.constantFrom(16, 24),
  reference: fc.constantFrom('plate' as const, 'sheathing' as const),
  seat: tenths(1.8, 3),
  depth: fc.constantFrom(5.5, 7.25, 9.25),
  every: fc.constantFrom(1, 2),
};
type Shared = {
  readonly [K in keyof typeof shared]: (typeof shared)[K] extends fc.Arbitrary<infer T> ? T : never;
};
const some = fc.record(shared);

const common = ({ rise, span, spacing, reference, seat, depth, every }: Shared) => ({
  format: 'tack-and-true/roof@1',
  slope: { rise, run: 12 },
  span,
  overhang: 12,
  spacing,
  reference,
  seat,
  rafter: { thickness: 1.5, depth },
  ridge: { thickness: 1.5, depth: 11.25 },
  plate: { width: 5.5 },
  joists: { every, height: 0 },
  collars: false,
});

const gambrel = (roof: Shared) => ({
  ...common(roof),
  kind: 'gambrel',
  length: 120,
  slope: { rise: 12 + roof.other, run: 12 },
  upperSlope: { rise: roof.rise, run: 12 },
  breakIn: roof.span / 4,
  breakTies: { every: roof.every },
});

const kinds = {
  'a gable with two slopes': (roof: Shared) => ({
    ...common(roof),
    kind: 'gable',
    length: 120,
    yard: { slope: { rise: roof.other, run: 12 } },
  }),
  'a hip roof': (roof: Shared) => ({
    ...common(roof),
    kind: 'hip',
    length: roof.span + 80,
    hip: { thickness: 1.5, depth: 11.25 },
    collars: { every: 2 },
  }),
  'a gambrel on purlins': (roof: Shared) => ({
    ...gambrel(roof),
    purlin: { thickness: 3.5, depth: 9.25, seat: 2 },
  }),
  'a gambrel with gussets': (roof: Shared) => ({
    ...gambrel(roof),
    breakOn: 'gussets',
    gussets: { thickness: 0.5, reach: 12 },
  }),
} as const;

/** Level, from the ridge line to the upper end of a rafter: jacks end before. */
const endsAt = ({ origin, outline, direction }: Timber): number =>
  Math.abs(origin[1] + direction[1] * Math.max(...outline.map(([along]) => along)));

/** Places along the roof where a rafter stands on both sides and no hip comes in between. */
const pairsAt = (timbers: readonly Timber[], part: string): readonly number[] => {
  const hips = timbers.some(({ id }) => id.startsWith('hip.'));
  const at = (side: string): readonly number[] =>
    timbers
      .filter((one) => !hips || (one.cuts.length === 0 && endsAt(one) < 1))
      .map(({ id }) => new RegExp(`^rafter\\.${part}${side}\\.([\\d.]+)$`).exec(id)?.[1])
      .filter((x) => x !== undefined)
      .map(Number);
  const yard = at('yard');
  return at('street').filter((x) => yard.includes(x));
};

const least = (values: readonly number[]): number => Math.min(...values);

/** Level, from the ridge line to the inner face of the blocks of one side. */
const blocksAt = (timbers: readonly Timber[], part: string, side: string): number =>
  least(
    timbers
      .filter(({ id }) => id.startsWith(`block.${part}${side}.`))
      .map(({ origin, thickness }) => Math.abs(origin[1]) - thickness / 2),
  );

const everyOf = (plan: RoofPlan, { kind }: FiguredTie): number => {
  if (plan.kind === 'shed') return 1;
  const asked = kind === 'collar' ? plan.collars : plan.joists;
  if (kind === 'breakTie') return (plan.kind === 'gambrel' && plan.breakTies && plan.breakTies.every) || 1;
  return (asked && asked.every) || 1;
};

/** A tie at a mitered break lies against the gussets of its pair. */
const besideGussets = (plan: RoofPlan, { kind }: FiguredTie): number =>
  plan.kind === 'gambrel' && plan.breakOn.what === 'gussets' && kind === 'breakTie'
    ? plan.breakOn.thickness
    : 0;

/** Midway between the blocks of its two walls, or under the ridge where none are in its way. */
const placed = (plan: RoofPlan, timbers: readonly Timber[], tie: FiguredTie): readonly Timber[] => {
  const part = plan.kind !== 'gambrel' ? '' : tie.kind === 'joist' ? 'lower.' : 'upper.';
  const stations = pairsAt(timbers, part);
  const every = everyOf(plan, tie);
  const off = plan.rafter.thickness + besideGussets(plan, tie);
  const depth = tie.kind === 'collar' ? limits.collarDepth : plan.rafter.depth;
  const { length, clip } = tie.behindBlocks ?? { ...tie, clip: tie.kind === 'collar' ? depth : tie.clip };
  const [street, yard] = tie.behindBlocks
    ? [blocksAt(timbers, part, 'street'), blocksAt(timbers, part, 'yard')]
    : [0, 0];
  const slope = plan.kind === 'gambrel' && tie.kind !== 'joist' ? plan.upperSlope : plan.slope;
  const slopes = plan.kind === 'gable' ? [slope, plan.yard?.slope ?? slope] : [slope];
  const m = least(slopes.map(({ rise, run }) => rise / run));
  const [half, top] = [length / 2, tie.height + depth];
  const right: readonly Vec2[] = [
    [half, tie.height],
    ...(clip < depth ? [[half, top - clip] as const] : []),
    ...(clip > 0 ? [[half - clip / m, top] as const] : []),
  ];
  const outline = [...right.map(([y, z]): Vec2 => [-y, z]), ...[...right].reverse()];
  const { thickness } = plan.rafter;
  return stations.flatMap((x, i): readonly Timber[] =>
    i % every === 0 || i === stations.length - 1
      ? [
          {
            id: `${tie.id}.${i + 1}`,
            origin: [x < plan.length / 2 ? x + off : x - off, (yard - street) / 2],
            direction: [0, 1],
            outline,
            thickness,
            cuts: [],
          },
        ]
      : [],
  );
};

describe.each(Object.entries(kinds))('the ties of %s', (_, fileOf) => {
  it('lie in their bays and share no wood with anything', () => {
    fc.assert(
      fc.property(some, (roof) => {
        const read = readRoof(fileOf(roof));
        fc.pre(read.ok);
        const timbers = timbersOf(read.value);
        const { ties, cautions } = figure(read.value);
        fc.pre(!cautions.some(({ code }) => code === 'collarsTight'));
        const all = ties.flatMap((tie) => placed(read.value, timbers, tie));
        expect(all.length).toBe(ties.reduce((sum, { count }) => sum + count, 0));
        expect(ties[0]!.behindBlocks!.length).toBeLessThan(ties[0]!.length);
        expect(clashesOf(overlapsOf([...timbers, ...all]), 1e-6)).toEqual([]);
        freeSolids();
      }),
      { numRuns: plans },
    );
  });
});

it('would run into the blocks as long as they are outside to outside of the plates', () => {
  const read = readRoof(kinds['a hip roof']({ ...sampleOf, rise: 6 }));
  if (!read.ok) throw new Error('refused');
  const timbers = timbersOf(read.value);
  const [tie] = figure(read.value).ties;
  const { behindBlocks, ...whole } = tie!;
  expect(behindBlocks).toBeDefined();
  expect(clashesOf(overlapsOf([...timbers, ...placed(read.value, timbers, whole)]), 1e-6)).not.toEqual([]);
});

const sampleOf: Shared = {
  rise: 6,
  other: 6,
  span: 288,
  spacing: 24,
  reference: 'plate',
  seat: 3,
  depth: 7.25,
  every: 1,
};
