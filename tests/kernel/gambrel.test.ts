import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import type { Vec3 } from '../../src/core/geometry/vector';
import { figure } from '../../src/core/roof/figure';
import type { GambrelPlan } from '../../src/core/roof/plan';
import type { Timber } from '../../src/core/roof/timber';
import { timbersOf } from '../../src/core/roof/timbers';
import { readRoof } from '../../src/content/readRoof';
import { gambrelPlan, mitered, rafterIn } from '../roof/gambrels';
import { contact, freeSolids, heightsAbovePlane, overlap, sizesInPlane, solidOf } from './support/kernel';
import { clashesOf, overlapsOf } from './support/overlaps';

/** Gambrels as solids, on purlins and with gussets: the kernel is told of members' sides and cuts, and where they come to bear. */

/** Of each kind for each law; `SOLIDS=200 npx vitest run --project jobs tests/kernel` asks for more. */
const plans = Number(process.env['SOLIDS'] ?? 10);

afterEach(freeSolids);

const tenths = (min: number, max: number) =>
  fc.integer({ min: Math.round(min * 10), max: Math.round(max * 10) }).map((n) => n / 10);

const shared = {
  rise: fc.integer({ min: 12, max: 34 }),
  upperRise: fc.integer({ min: 3, max: 11 }),
  span: tenths(140, 400),
  share: tenths(0.2, 0.7),
  length: tenths(60, 160),
  overhang: tenths(0, 20),
  spacing: fc.constantFrom(12, 16, 19.2, 24),
  reference: fc.constantFrom('plate' as const, 'sheathing' as const),
  ridge: tenths(1, 3.5).map((thickness) => ({ thickness, depth: 14 })),
  depth: fc.constantFrom(5.5, 7.25, 9.25),
  seat: tenths(1, 2.5),
};

type Shared = {
  readonly [K in keyof typeof shared]: (typeof shared)[K] extends fc.Arbitrary<infer T> ? T : never;
};

const fileOf = ({ rise, upperRise, share, depth, ...rest }: Shared) => ({
  format: 'tack-and-true/roof@1',
  kind: 'gambrel',
  slope: { rise, run: 12 },
  upperSlope: { rise: upperRise, run: 12 },
  breakIn: (share * rest.span) / 2,
  rafter: { thickness: 1.5, depth },
  plate: { width: 5.5 },
  ...rest,
});

const onPurlins = fc
  .record({ ...shared, thickness: tenths(1.5, 5.5), deep: tenths(5, 12), part: tenths(0.3, 1) })
  .map(({ thickness, deep, part, ...rest }) => ({
    ...fileOf(rest),
    purlin: { thickness, depth: deep, seat: part * thickness },
  }));

const withGussets = fc
  .record({ ...shared, thickness: fc.constantFrom(0.5, 0.75), reach: tenths(8, 24) })
  .map(({ thickness, reach, ...rest }) => ({
    ...fileOf(rest),
    breakOn: 'gussets',
    gussets: { thickness, reach },
  }));

const every = (files: fc.Arbitrary<object>, holds: (plan: GambrelPlan) => void): void =>
  fc.assert(
    fc.property(files, (file) => {
      const read = readRoof(file);
      fc.pre(read.ok && read.value.kind === 'gambrel');
      if (read.ok && read.value.kind === 'gambrel') holds(read.value);
      freeSolids();
    }),
    { numRuns: plans },
  );

const slopeOf = ({ rise, run }: GambrelPlan['slope']): number => rise / run;
const half = ({ span, reference, sheathing }: GambrelPlan): number =>
  span / 2 + (reference === 'sheathing' ? sheathing : 0);

/**
 * The planes of both slopes on a side, from the plan and by no figured height: the steep one lies the rafter's depth over
 * the inner end of its seat, and the flat one comes to it over the break.
 */
const planesOf = (plan: GambrelPlan, side: 'street' | 'yard') => {
  const [m, flat] = [slopeOf(plan.slope), slopeOf(plan.upperSlope)];
  const sign = side === 'street' ? -1 : 1;
  const over = plan.rafter.depth * Math.sqrt(1 + m * m) - plan.seat * m;
  const out = half(plan);
  const at = (slope: number, height: number, from: number) => ({
    normal: [0, sign * slope, 1] as const,
    reach: height + slope * from,
  });
  return {
    lower: at(m, over, out),
    upper: at(flat, over + m * plan.breakIn, out - plan.breakIn),
  };
};

const named = (timbers: readonly Timber[], start: string): readonly Timber[] =>
  timbers.filter(({ id }) => id.startsWith(start));

/** A member of a side in the middle of the roof, and where it bears. */
const oneOf = (timbers: readonly Timber[], start: string): Timber => {
  const all = named(timbers, start);
  return all[Math.floor(all.length / 2)] as Timber;
};

/** Square inches: a push of 1/10,000 in makes wedges at the edges of a face, and the kernel rounds. */
const slack = 0.01;
const expectArea = (found: number, wanted: number): void =>
  expect(Math.abs(found - wanted), `${found} for ${wanted}`).toBeLessThan(slack);

describe.each([
  ['on purlins', onPurlins],
  ['with gussets', withGussets],
] as const)('a gambrel %s as solids', (_, files) => {
  it('has no two members in the same place', () => {
    every(files, (plan) => expect(clashesOf(overlapsOf(timbersOf(plan)), 1e-6)).toEqual([]));
  });

  it('has the top edges of its rafters in their planes', () => {
    every(files, (plan) => {
      const timbers = timbersOf(plan);
      for (const side of ['street', 'yard'] as const)
        for (const part of ['lower', 'upper'] as const)
          for (const timber of named(timbers, `rafter.${part}.${side}.`))
            for (const height of heightsAbovePlane(timber, planesOf(plan, side)[part]))
              expect(Math.abs(height)).toBeLessThan(1e-6);
    });
  });

  it('bears on its plates and its ridge as figured', () => {
    every(files, (plan) => {
      const timbers = timbersOf(plan);
      const thick = plan.rafter.thickness;
      const ridge = solidOf(oneOf(timbers, 'ridge'));
      const upper = rafterIn(figure(plan), 'common.upper');
      const bearing = plan.seat - (half(plan) - plan.span / 2);
      for (const side of ['street', 'yard'] as const) {
        const inward = side === 'street' ? 1 : -1;
        const low = solidOf(oneOf(timbers, `rafter.lower.${side}`));
        const high = solidOf(oneOf(timbers, `rafter.upper.${side}`));
        const plate = solidOf(oneOf(timbers, `plate.lower.${side}`));
        expectArea(contact(low, plate, { toward: [0, 0, -1] }), bearing * thick);
        const cut = Math.min(upper.plumbCutLength, plan.ridge.depth);
        expectArea(contact(high, ridge, { toward: [0, inward, 0] }), cut * thick);
      }
    });
  });

  it('comes out of boards of its stock lengths', () => {
    every(files, (plan) => {
      if (plan.overhang === 0) return;
      const timbers = timbersOf(plan);
      const roof = figure(plan);
      const sizes = (part: 'lower' | 'upper') =>
        sizesInPlane(oneOf(timbers, `rafter.${part}.street`), planesOf(plan, 'street')[part]);
      const [, lower, deep] = sizes('lower');
      expect(lower).toBeCloseTo(rafterIn(roof, 'common.lower').stockLength, 7);
      expect(deep).toBeCloseTo(plan.rafter.depth, 7);
      const [, upper] = sizes('upper');
      const stock = rafterIn(roof, 'common.upper').stockLength;
      if (plan.breakOn.what === 'gussets') expect(upper).toBeCloseTo(stock, 7);
      // A foot without a tail leaves some of its board.
      else expect(upper).toBeLessThan(stock + 1e-7);
    });
  });
});

describe('a break on a purlin', () => {
  it('has the upper rafter on the purlin, the lower one against both', () => {
    every(onPurlins, (plan) => {
      if (plan.breakOn.what !== 'purlin') return;
      const timbers = timbersOf(plan);
      const roof = figure(plan);
      const thick = plan.rafter.thickness;
      const { purlin, seat } = plan.breakOn;
      const least = roof.purlins![0]!.leastDepth;
      const { jointLength } = roof.breaks![0]!;
      for (const side of ['street', 'yard'] as const) {
        const toward: Vec3 = [0, side === 'street' ? 1 : -1, 0];
        const low = solidOf(oneOf(timbers, `rafter.lower.${side}`));
        const high = solidOf(oneOf(timbers, `rafter.upper.${side}`));
        const beam = solidOf(oneOf(timbers, `purlin.${side}`));
        expectArea(contact(high, beam, { toward: [0, 0, -1] }), seat * thick);
        expectArea(contact(low, high, { toward }), jointLength * thick);
        expectArea(contact(low, beam, { toward }), Math.min(least, purlin.depth) * thick);
        expect(roof.purlins![0]!.bearsFully).toBe(least <= purlin.depth + 1e-6);
      }
    });
  });
});

describe('a mitered break', () => {
  it('has both cuts on each other over their whole length, and gussets on both rafters', () => {
    every(withGussets, (plan) => {
      if (plan.breakOn.what !== 'gussets') return;
      const timbers = timbersOf(plan);
      const { breaks, gussets } = figure(plan);
      expect(named(timbers, 'gusset.')).toHaveLength(gussets![0]!.count);
      const { jointLength, lowerCut } = breaks![0]!;
      const { depth, thickness: thick } = plan.rafter;
      const [m, flat] = [slopeOf(plan.slope), slopeOf(plan.upperSlope)];
      const [g, h] = [Math.sqrt(1 + m * m), Math.sqrt(1 + flat * flat)];
      const turn = lowerCut.rise / lowerCut.run;
      // Each leg is its reach long on top; below, the miter takes off twice the triangle over half of the turn.
      const leg = depth * plan.breakOn.reach - (depth * depth * turn) / 2;
      for (const side of ['street', 'yard'] as const) {
        const inward = side === 'street' ? 1 : -1;
        const lower = oneOf(timbers, `rafter.lower.${side}`);
        const low = solidOf(lower);
        const high = solidOf(oneOf(timbers, `rafter.upper.${side}`));
        const toward: Vec3 = [0, inward * (1 / g + 1 / h), m / g + flat / h];
        expectArea(contact(low, high, { toward }), jointLength * thick);
        const gusset = named(timbers, `gusset.${side}.${lower.origin[0]}.`).map(solidOf)[0]!;
        const sideways =
          contact(gusset, low, { toward: [1, 0, 0] }) + contact(gusset, low, { toward: [-1, 0, 0] });
        expectArea(sideways, leg);
        const above =
          contact(gusset, high, { toward: [1, 0, 0] }) + contact(gusset, high, { toward: [-1, 0, 0] });
        expectArea(above, leg);
      }
    });
  });
});

/** On the street side of end A, under the end rafters and as deep as those are thick. */
const studsOf = (plan: GambrelPlan): readonly Timber[] => {
  const { gableStuds } = figure(plan);
  const { spacing = 16, thickness = 1.5 } = plan.gableStuds ?? {};
  const across = plan.rafter.thickness;
  return (gableStuds ?? []).flatMap(({ id, lengths, bevel }) =>
    lengths.flatMap((length, i): readonly Timber[] => {
      const inner = id.startsWith('stud.upper') ? 1 : firstOut(plan, spacing, thickness);
      const out = (inner + lengths.length - 1 - i) * spacing;
      const fall = thickness * (bevel.rise / bevel.run);
      // Beside the wall one may be a mere wedge.
      if (length <= fall) return [];
      return [
        {
          id: `${id}.${i}`,
          origin: [across / 2, 0],
          direction: [0, -1],
          outline: [
            [out - thickness / 2, 0],
            [out + thickness / 2, 0],
            [out + thickness / 2, length - fall],
            [out - thickness / 2, length],
          ],
          thickness: across,
          cuts: [],
        },
      ];
    }),
  );
};

/** Of the studs under the lower rafter, which from the ridge out the innermost is. */
const firstOut = (plan: GambrelPlan, spacing: number, thickness: number): number => {
  const joint = half(plan) - plan.breakIn;
  const { depth } = plan.rafter;
  const [m, flat] = [slopeOf(plan.slope), slopeOf(plan.upperSlope)];
  const [g, h] = [Math.sqrt(1 + m * m), Math.sqrt(1 + flat * flat)];
  const inside =
    plan.breakOn.what === 'purlin' ? 0 : (depth * (m / g + flat / h)) / (1 + (1 + m * flat) / (g * h));
  return Math.floor((joint - inside + thickness / 2) / spacing) + 1;
};

describe.each([
  ['purlins', onPurlins],
  ['gussets', withGussets],
] as const)('gable studs beside %s', (_, files) => {
  it('come up to the end rafters and into nothing', () => {
    every(files, (plan) => {
      const framed = { ...plan, gableStuds: { spacing: 16, thickness: 1.5 } } as GambrelPlan;
      const studs = studsOf(framed);
      expect(studs.length).toBeGreaterThan(0);
      const timbers = timbersOf(plan);
      const gussets = named(timbers, 'gusset.');
      const others = timbers.filter((one) => !gussets.includes(one));
      const rafters = ['lower', 'upper'].map(
        (part) => [part, named(others, `rafter.${part}.street.0.75`)[0]!] as const,
      );
      expect(clashesOf(overlapsOf([...studs, ...others]), 1e-6)).toEqual([]);
      for (const [part, rafter] of rafters)
        for (const stud of studs.filter(({ id }) => id.startsWith(`stud.${part}`)))
          expectArea(contact(solidOf(stud), solidOf(rafter), { toward: [0, 0, 1] }), 1.5 * 1.5);
    });
  });
});

describe('ties from break to break', () => {
  it('end over the breaks, their upper corners in the flat planes', () => {
    every(fc.oneof(onPurlins, withGussets), (plan) => {
      const tie = figure(plan).ties.find(({ kind }) => kind === 'breakTie')!;
      const { upper } = planesOf(plan, 'street');
      const flat = slopeOf(plan.upperSlope);
      expect(tie.length).toBeCloseTo(2 * (half(plan) - plan.breakIn), 9);
      const corner = tie.height + plan.rafter.depth - tie.clip;
      const plane = upper.reach - (flat * tie.length) / 2;
      if (tie.clip > 0) expect(corner).toBeCloseTo(plane, 9);
      else expect(corner).toBeLessThan(plane + 1e-9);
    });
  });
});

it('is told by the kernel when a purlin stands too high, or a miter is cut to another slope', () => {
  const up = (timber: Timber, by: number): Timber => ({
    ...timber,
    outline: timber.outline.map(([along, z]) => [along, z + by] as const),
  });
  const timbers = timbersOf(gambrelPlan());
  const rafter = solidOf(oneOf(timbers, 'rafter.upper.street'));
  const purlin = oneOf(timbers, 'purlin.street');
  expect(overlap(rafter, solidOf(purlin))).toBeLessThan(1e-6);
  expect(overlap(rafter, solidOf(up(purlin, 1 / 16)))).toBeGreaterThan(0.1);
  const low = oneOf(timbersOf(gambrelPlan(mitered)), 'rafter.lower.street');
  const other = oneOf(
    timbersOf(gambrelPlan({ ...mitered, upperSlope: { rise: 4, run: 12 } })),
    'rafter.upper.street',
  );
  expect(overlap(solidOf(low), solidOf(other))).toBeGreaterThan(0.1);
});
