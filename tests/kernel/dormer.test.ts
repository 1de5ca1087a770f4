import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import { readRoof } from '../../src/content/readRoof';
import type { Vec3 } from '../../src/core/geometry/vector';
import { dormersOn, type DormerOn } from '../../src/core/roof/dormers';
import { expand } from '../../src/core/roof/expand';
import { figure } from '../../src/core/roof/figure';
import type { FiguredDormer } from '../../src/core/roof/figured';
import { bearingOf, type Eave } from '../../src/core/roof/form';
import { heightOver } from '../../src/core/roof/heightOver';
import type { RoofPlan } from '../../src/core/roof/plan';
import type { Timber } from '../../src/core/roof/timber';
import { planeCut } from '../../src/core/roof/timberParts';
import { timbersOf } from '../../src/core/roof/timbers';
import { contact, freeSolids, heightsAbovePlane, solidOf } from './support/kernel';
import { clashesOf, overlapsOf } from './support/overlaps';

/** Gables with shed dormers as solids, judged by the kernel. */

/** For each law; `SOLIDS=200 npx vitest run --project jobs tests/kernel` asks for more. */
const plans = Number(process.env['SOLIDS'] ?? 10);

afterEach(freeSolids);

const tenths = (min: number, max: number) =>
  fc.integer({ min: Math.round(min * 10), max: Math.round(max * 10) }).map((n) => n / 10);
const slopeOf = (min: number, max: number) => fc.integer({ min, max }).map((rise) => ({ rise, run: 12 }));

const dormer = fc.record(
  {
    kind: fc.constant('shed'),
    side: fc.constantFrom('street', 'yard'),
    at: tenths(140, 260),
    width: tenths(60, 200),
    front: fc.oneof(fc.constant(0), tenths(6, 30)),
    wall: tenths(60, 110),
    slope: slopeOf(1, 5),
    overhang: tenths(0, 14),
    seat: tenths(1.8, 4),
    header: fc.record({ thickness: fc.constantFrom(1.5, 1.75), depth: fc.constantFrom(7.25, 14) }),
  },
  { requiredKeys: ['kind', 'side', 'at', 'width', 'front', 'wall'] },
);

const files = fc
  .record({
    slope: slopeOf(9, 18),
    span: tenths(240, 360),
    length: tenths(380, 440),
    overhang: tenths(0, 20),
    spacing: fc.constantFrom(12, 16, 19.2, 24),
    reference: fc.constantFrom('plate', 'sheathing'),
    datum: fc.constantFrom('endA', 'endB', 'centre'),
    yard: fc.option(
      fc.record({ slope: slopeOf(9, 16), plateHeight: tenths(-10, 10), seat: tenths(1.8, 3) }),
      { nil: undefined },
    ),
    ridge: tenths(1, 3.5).map((thickness) => ({ thickness, depth: 14 })),
    dormers: fc.array(dormer, { minLength: 1, maxLength: 2 }),
  })
  .map((one) => ({
    format: 'tack-and-true/roof@1',
    kind: 'gable',
    rafter: { thickness: 1.5, depth: 7.25 },
    plate: { width: 5.5 },
    seat: 2.5,
    ...one,
  }));

const every = (holds: (plan: RoofPlan) => void): void =>
  fc.assert(
    fc.property(files, (file) => {
      const read = readRoof(file);
      fc.pre(read.ok);
      holds(read.value);
      freeSolids();
    }),
    { numRuns: plans },
  );

type So = {
  readonly plan: RoofPlan;
  readonly on: DormerOn;
  readonly told: FiguredDormer;
  readonly named: (start: string) => readonly Timber[];
};

const everyDormer = (holds: (so: So) => void): void =>
  every((plan) => {
    const timbers = timbersOf(plan);
    const told = figure(plan).dormers ?? [];
    const named = (start: string) => timbers.filter(({ id }) => id.startsWith(start));
    const all = dormersOn(expand(plan));
    expect(all).toHaveLength(told.length);
    all.forEach((on, i) => holds({ plan, on, told: told[i] as FiguredDormer, named }));
  });

/** Square inches: a push of 1/10,000 in makes wedges at the edges of a face, and the kernel rounds. */
const slack = 0.01;
const down: Vec3 = [0, 0, -1];

const bearing = (a: Timber, b: Timber, toward: Vec3): number => contact(solidOf(a), solidOf(b), { toward });

const bears = (found: number, told: number): void => expect(Math.abs(found - told)).toBeLessThan(slack);

/** Level, up the plane of an eave. */
const up = ({ plane }: Eave): Vec3 => [plane.up[0], plane.up[1], 0];
const downhill = (eave: Eave): Vec3 => {
  const [x, y] = eave.plane.up;
  return [-x, -y, 0];
};

const only = (timbers: readonly Timber[]): Timber => {
  expect(timbers).toHaveLength(1);
  return timbers[0] as Timber;
};

describe('a shed dormer as solids', () => {
  it('has no two members in the same place', () => {
    every((plan) => expect(clashesOf(overlapsOf(timbersOf(plan)), 1e-6)).toEqual([]));
  });

  it('has the top edges of its rafters in its plane, and of those it interrupts in the main one', () => {
    everyDormer(({ plan, on, named }) => {
      const flush = (timbers: readonly Timber[], eave: Eave): void => {
        for (const timber of timbers)
          for (const height of heightsAbovePlane(
            timber,
            planeCut(eave.plane, heightOver(plan.rafter.depth, eave)),
          ))
            expect(Math.abs(height)).toBeLessThan(1e-6);
      };
      const own = [...named(`rafter.${on.name}.`), ...named(`end.${on.name}.`)];
      expect(own).toHaveLength(on.eave.stations.length);
      flush(own, on.eave);
      const cut = [...named(`lower.${on.name}.`), ...named(`upper.${on.name}.`)];
      const parts = (on.shape.toRidge ? 0 : 1) + (on.shape.plan.front > 0 ? 1 : 0);
      expect(cut).toHaveLength(parts * on.shape.inner.length);
      flush(cut, on.host);
    });
  });

  it('bears on its plate with its seats, and on the trimmers with tapers and side studs', () => {
    everyDormer(({ plan, on, told, named }) => {
      const { thickness } = plan.rafter;
      const plate = only(named(`plate.${on.name}.`));
      for (const rafter of [...named(`rafter.${on.name}.`), ...named(`end.${on.name}.`)])
        bears(bearing(rafter, plate, down), bearingOf(on.eave) * thickness);
      const [end] = told.endRafters;
      on.shape.ends.forEach((at) => {
        const trimmer = only(named(`rafter.${on.host.side}.${at}`).filter(({ id }) => id.endsWith(`.${at}`)));
        const rafter = only(named(`end.${on.name}.${at}`));
        const tapered = (end?.run ?? 0) - (end?.shortening ?? 0) - (end?.taperFrom ?? 0);
        bears(bearing(rafter, trimmer, down), tapered * thickness);
        const studs = named(`stud.${on.name}.${at}.`);
        expect(studs).toHaveLength(told.sideStuds[0]?.lengths.length ?? 0);
        for (const stud of studs) {
          bears(bearing(stud, trimmer, down), on.shape.plan.studs.thickness * thickness);
          bears(bearing(stud, rafter, [0, 0, 1]), on.shape.plan.studs.thickness * thickness);
        }
      });
    });
  });

  it('has its rafters and those it interrupts against the headers and the ridge as figured', () => {
    everyDormer(({ plan, on, told, named }) => {
      const { thickness } = plan.rafter;
      const at = (part: string) => told.headers.find(({ id }) => id.endsWith(part));
      const faced = (member: Timber, [id, toward]: readonly [string, Vec3], height: number): void =>
        bears(bearing(member, only(named(id).filter((one) => one.id === id)), toward), height * thickness);
      const shared = (top: number, long: number, header: FiguredDormer['headers'][number]): number =>
        Math.min(top, header.topHeight) - Math.max(top - long, header.topHeight - header.section.depth);
      const { m } = on.eave;
      const plumb = plan.rafter.depth * Math.sqrt(1 + m * m);
      const mainPlumb = plan.rafter.depth * Math.sqrt(1 + on.host.m * on.host.m);
      const upper = at('.upper');
      const lower = at('.lower');
      if (upper) {
        const half = upper.section.thickness;
        for (const rafter of named(`rafter.${on.name}.`))
          faced(rafter, [upper.id, up(on.host)], shared(told.meetHeight - m * half, plumb, upper));
        for (const rafter of named(`upper.${on.name}.`))
          faced(
            rafter,
            [upper.id, downhill(on.host)],
            shared(told.meetHeight + on.host.m * half, mainPlumb, upper),
          );
      }
      if (lower)
        for (const rafter of named(`lower.${on.name}.`))
          faced(rafter, [lower.id, up(on.host)], shared(lower.topHeight, mainPlumb, lower));
      for (const header of told.headers)
        for (const trimmer of on.shape.trimmers.slice(1, 3)) {
          const member = only(
            named(`rafter.${on.host.side}.`).filter(({ id }) => id === `rafter.${on.host.side}.${trimmer}`),
          );
          const away: Vec3 = [trimmer < on.shape.plan.at ? -1 : 1, 0, 0];
          expect(bearing(only(named(header.id)), member, away)).toBeGreaterThan(0);
        }
    });
  });
});
