import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import type { Vec3 } from '../../src/core/geometry/vector';
import { expand } from '../../src/core/roof/expand';
import { figure } from '../../src/core/roof/figure';
import type { FiguredRoof } from '../../src/core/roof/figured';
import type { FiguredStep } from '../../src/core/roof/figuredSteps';
import type { RoofSection, SteppedPlan } from '../../src/core/roof/plan';
import type { Timber } from '../../src/core/roof/timber';
import { timbersOf } from '../../src/core/roof/timbers';
import { planFrom, someRun, topFrom } from '../roof/runs';
import { boxOf, contact, freeSolids, heightsAbovePlane, overlap, solidOf } from './support/kernel';
import { clashesOf, overlapsOf } from './support/overlaps';

/** Runs of sections as solids: the kernel is told of members' sides and cuts, and of walls made from the plan alone. */

/** For each law; `SOLIDS=200 npx vitest run --project jobs tests/kernel` asks for more. */
const plans = Number(process.env['SOLIDS'] ?? 10);

afterEach(freeSolids);

type Run = { readonly plan: SteppedPlan; readonly timbers: readonly Timber[]; readonly roof: FiguredRoof };

const everyRun = (holds: (run: Run) => void): void =>
  fc.assert(
    fc.property(someRun, (file) => {
      const plan = planFrom(file);
      fc.pre(plan !== undefined);
      holds({ plan, timbers: timbersOf(plan), roof: figure(plan) });
      freeSolids();
    }),
    { numRuns: plans },
  );

const named = ({ timbers }: Run, id: string): Timber => {
  const found = timbers.find((timber) => timber.id === id);
  if (!found) throw new Error(`no ${id}`);
  return found;
};

const sectionOf = ({ plan }: Run, name: string): RoofSection =>
  plan.sections[Number(name.replace('section', '')) - 1] as RoofSection;

/** Square inches: a push of 1/10,000 in makes wedges at the edges of a face, and the kernel rounds. */
const slack = 0.01;

/** Underside of a lower ridge, from the plan and by no figured height. */
const undersideOf = (run: Run, { lower }: FiguredStep): number => {
  const section = sectionOf(run, lower);
  return topFrom(run.plan, section) - section.ridge.depth;
};

/** Wider than any ridge, from the higher wall's face so far into it, or before it for one that ends there. */
const sillOf = (run: Run, step: FiguredStep): Timber => {
  const { on, length } = sectionOf(run, step.lower).bearing;
  const way = (step.higher > step.lower ? 1 : -1) * (on === 'pocket' ? 1 : -1);
  const top = undersideOf(run, step);
  const ends = [0, way * length].sort((a, b) => a - b);
  return {
    id: 'sill',
    origin: [step.at, 0],
    direction: [1, 0],
    outline: [
      [ends[0] as number, top - 2],
      [ends[1] as number, top - 2],
      [ends[1] as number, top],
      [ends[0] as number, top],
    ],
    thickness: 12,
    cuts: [],
  };
};

describe('a run of sections as solids', () => {
  it('has no two members in the same place', () => {
    everyRun(({ timbers }) => expect(clashesOf(overlapsOf(timbers), 1e-6)).toEqual([]));
  });

  it('has its top edges in the planes of each section', () => {
    everyRun((run) => {
      run.plan.sections.forEach((section, i) => {
        const m = section.slope.rise / section.slope.run;
        const reach = topFrom(run.plan, section) + (section.ridge.thickness / 2) * m;
        for (const [side, sign] of [
          ['street', -1],
          ['yard', 1],
        ] as const) {
          const own = run.timbers.filter(({ id }) => id.startsWith(`rafter.section${i + 1}.${side}.`));
          expect(own.length).toBeGreaterThan(1);
          for (const timber of own)
            for (const height of heightsAbovePlane(timber, { normal: [0, sign * m, 1], reach }))
              expect(Math.abs(height)).toBeLessThan(1e-6);
        }
      });
    });
  });

  it('bears on plates and ridges as figured', () => {
    everyRun((run) => {
      const { plan, roof } = run;
      const clad = plan.reference === 'sheathing' ? plan.sheathing : 0;
      for (const eave of expand(plan).eaves) {
        const name = `section${(eave.section ?? 0) + 1}`;
        const cuts = roof.commonRafters.find(({ id }) => id === `common.${name}`);
        const ridge = roof.ridges.find(({ id }) => id === `ridge.${name}`);
        const rafter = solidOf(named(run, `rafter.${name}.${eave.side}.${eave.stations[0]}`));
        const seat = contact(rafter, solidOf(named(run, `plate.${name}.${eave.side}`)), {
          toward: [0, 0, -1],
        });
        expect(Math.abs(seat - (cuts!.seat - clad) * plan.rafter.thickness)).toBeLessThan(slack);
        const toward: Vec3 = [eave.plane.up[0], eave.plane.up[1], 0];
        const plumb = contact(rafter, solidOf(named(run, `ridge.${name}`)), { toward });
        const deep = Math.min(cuts!.plumbCutLength, ridge!.section.depth);
        expect(Math.abs(plumb - deep * plan.rafter.thickness)).toBeLessThan(slack);
      }
    });
  });

  it('its lower ridges bear where and as much as figured, at the height the plan gives', () => {
    everyRun((run) => {
      expect(run.roof.steps).toHaveLength(run.plan.sections.length - 1);
      for (const step of run.roof.steps ?? []) {
        const ridge = solidOf(named(run, `ridge.${step.lower}`));
        const sill = solidOf(sillOf(run, step));
        expect(step.bearing.height).toBeCloseTo(undersideOf(run, step), 9);
        expect(overlap(ridge, sill)).toBeLessThan(1e-6);
        const area = contact(ridge, sill, { toward: [0, 0, -1] });
        expect(Math.abs(area - step.bearing.area)).toBeLessThan(slack);
        const { from, to } = step.bearing;
        expect(boxOf(sill).min[0]).toBeCloseTo(from, 5);
        expect(boxOf(sill).max[0]).toBeCloseTo(to, 5);
      }
    });
  });

  it('its posts carry that area, from where they are said to stand', () => {
    everyRun((run) => {
      (run.roof.steps ?? []).forEach((step, i) => {
        const { stands, area, overLower, overHigher, height } = step.bearing;
        if (!stands) return;
        const post = solidOf(named(run, `post.step${i + 1}`));
        const bears = contact(solidOf(named(run, `ridge.${step.lower}`)), post, { toward: [0, 0, -1] });
        expect(Math.abs(bears - area)).toBeLessThan(slack);
        const low =
          stands.on === 'higherPlates'
            ? height - overHigher
            : height - overLower - sectionOf(run, step.lower).bearing.below;
        expect(boxOf(post).min[2]).toBeCloseTo(low, 5);
        expect(run.roof.posts?.find(({ id }) => id === `post.step${i + 1}`)?.length).toBe(stands.length);
      });
    });
  });

  it('a ridge in a pocket can go up as far as figured and no farther', () => {
    everyRun((run) => {
      for (const { bearing, lower, higher } of run.roof.steps ?? []) {
        if (bearing.clear === undefined) continue;
        const ridge = solidOf(named(run, `ridge.${lower}`));
        const over = run.timbers.filter(
          ({ id }) => id === `ridge.${higher}` || id.startsWith(`rafter.${higher}.`),
        );
        const hits = (by: number): number =>
          over.reduce(
            (sum, timber) => sum + by * contact(ridge, solidOf(timber), { toward: [0, 0, 1], by }),
            0,
          );
        if (bearing.clear > 0.01) expect(hits(bearing.clear - 0.01)).toBeLessThan(1e-6);
        expect(hits(bearing.clear + 0.05)).toBeGreaterThan(1e-6);
      }
    });
  });

  it('the studs of its step walls reach from the higher plates to the end rafters, clear of what comes in', () => {
    everyRun((run) => {
      const { plan, roof, timbers } = run;
      const half = plan.rafter.thickness / 2;
      for (const [i, { at, higher, lower }] of (roof.steps ?? []).entries()) {
        const section = sectionOf(run, higher);
        const m = section.slope.rise / section.slope.run;
        const peak = topFrom(plan, section) + (section.ridge.thickness / 2) * m;
        const under = peak - plan.rafter.depth * Math.sqrt(1 + m * m);
        const way = higher > lower ? 1 : -1;
        const x = at + way * half;
        const rafter = solidOf(named(run, `rafter.${higher}.yard.${x}`));
        const others = timbers.filter(({ id }) => id === `ridge.${lower}` || id === `post.step${i + 1}`);
        const row = roof.gableStuds?.find(({ id }) => id === `stud.${higher}.1`);
        row?.lengths.forEach((length, k) => {
          const y = (row.lengths.length - k) * row.spacing;
          const stud: Timber = {
            id: 'stud',
            origin: [x, y],
            direction: [0, 1],
            outline: [
              [-0.75, section.plateHeight],
              [0.75, section.plateHeight],
              [0.75, section.plateHeight + length],
              [-0.75, section.plateHeight + length],
            ],
            thickness: plan.rafter.thickness,
            cuts: [{ normal: [0, m, 1], reach: under }],
          };
          const solid = solidOf(stud);
          expect(boxOf(solid).max[2]).toBeCloseTo(section.plateHeight + length, 5);
          expect(overlap(solid, rafter)).toBeLessThan(1e-6);
          const bears = contact(solid, rafter, { toward: [0, 0, 1] });
          // The outermost may stand under the seat in part.
          const clad = plan.reference === 'sheathing' ? plan.sheathing : 0;
          if (section.span / 2 + clad - y - 0.75 >= section.seat)
            expect(Math.abs(bears - 1.5 * plan.rafter.thickness)).toBeLessThan(slack);
          for (const other of others) expect(overlap(solid, solidOf(other))).toBe(0);
        });
      }
    });
  });

  it('its ridges lie from where to where they are said to', () => {
    everyRun((run) => {
      for (const { id, lies, length, topHeight } of run.roof.ridges) {
        const { min, max } = boxOf(solidOf(named(run, id)));
        expect(min[0]).toBeCloseTo(lies!.from, 5);
        expect(max[0]).toBeCloseTo(lies!.to, 5);
        expect(lies!.to - lies!.from).toBeCloseTo(length, 9);
        expect(max[2]).toBeCloseTo(topHeight, 5);
        expect(min[2]).toBeCloseTo(lies!.underside, 5);
      }
    });
  });
});
