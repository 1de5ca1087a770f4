import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import { readRoof } from '../../src/content/readRoof';
import { handsOf } from '../../src/core/roof/edges';
import { expand } from '../../src/core/roof/expand';
import { framingOf } from '../../src/core/roof/framing';
import { heightOver } from '../../src/core/roof/heightOver';
import { jacksOf } from '../../src/core/roof/jacks';
import type { HipPlan } from '../../src/core/roof/plan';
import type { Timber } from '../../src/core/roof/timber';
import { timbersOf } from '../../src/core/roof/timbers';
import { contact, freeSolids, heightsAbovePlane, solidOf } from './support/kernel';
import { clashesOf, overlapsOf } from './support/overlaps';

/** Hip roofs as solids: the kernel is told of each member's side and cuts, and of nothing that was figured from them. */

/** Of each kind for each law; `SOLIDS=200 npx vitest run --project jobs tests/kernel` asks for more. */
const plans = Number(process.env['SOLIDS'] ?? 10);

afterEach(freeSolids);

const tenths = (min: number, max: number) => fc.integer({ min: min * 10, max: max * 10 }).map((n) => n / 10);

/** Roofs that a crew may meet, with equal ends and others. */
const some = fc
  .record({
    rise: fc.integer({ min: 3, max: 12 }),
    endRise: fc.option(fc.integer({ min: 4, max: 12 }), { nil: undefined }),
    span: tenths(120, 360),
    ridge: tenths(30, 200),
    overhang: tenths(0, 20),
    spacing: fc.constantFrom(12, 16, 19.2, 24),
    hipThick: fc.constantFrom(1.5, 1.75, 3.5),
    hipTop: fc.constantFrom('betweenCommons' as const, 'againstRidge' as const),
    hipFit: fc.constantFrom('backed' as const, 'dropped' as const),
  })
  .map(({ rise, endRise = rise, span, ridge, overhang, spacing, hipThick, hipTop, hipFit }) => ({
    format: 'tack-and-true/roof@1',
    kind: 'hip',
    slope: { rise, run: 12 },
    endSlope: { rise: endRise, run: 12 },
    span,
    length: (span * rise) / endRise + ridge,
    overhang,
    spacing,
    rafter: { thickness: 1.5, depth: 7.25 },
    ridge: { thickness: 1.5, depth: 14 },
    hip: { thickness: hipThick, depth: 9.25 },
    hipTop,
    hipFit,
    plate: { width: 5.5 },
    seat: 2.5,
  }));

/** The plan, or nothing where the ends would ask for a seat that no plate has. */
const planFrom = (file: unknown): HipPlan | undefined => {
  const read = readRoof(file);
  return read.ok && read.value.kind === 'hip' ? read.value : undefined;
};

const everyHip = (holds: (plan: HipPlan, timbers: readonly Timber[]) => void): void =>
  fc.assert(
    fc.property(some, (file) => {
      const plan = planFrom(file);
      fc.pre(plan !== undefined);
      holds(plan, timbersOf(plan));
      freeSolids();
    }),
    { numRuns: plans },
  );

/** Square inches: a push of 1/10,000 in makes wedges at the edges of a face, and the kernel rounds. */
const slack = 0.01;

/** Share of the smaller member that two may both lay claim to. */
const shared = 1e-6;

describe('a hip roof as solids', () => {
  it('has no two members in the same place', () => {
    everyHip((_, timbers) => {
      expect(clashesOf(overlapsOf(timbers), shared)).toEqual([]);
    });
  });

  it('has the top edges of commons and jacks in their planes', () => {
    everyHip((plan, timbers) => {
      for (const eave of expand(plan).eaves) {
        const { plane } = eave;
        const over = heightOver(plan.rafter.depth, eave);
        const [x, y] = plane.up;
        const top = {
          normal: [-plane.m * x, -plane.m * y, 1] as const,
          reach: over - plane.m * (x * plane.foot[0] + y * plane.foot[1]),
        };
        for (const timber of timbers.filter(({ id }) => id.startsWith(`rafter.${plane.id}.`)))
          for (const height of heightsAbovePlane(timber, top)) expect(Math.abs(height)).toBeLessThan(1e-6);
      }
    });
  });

  it('bears on the plates with every seat, and on the hips with every jack', () => {
    everyHip((plan, timbers) => {
      const named = new Map(timbers.map((timber) => [timber.id, solidOf(timber)]));
      const solid = (id: string) => named.get(id) as ReturnType<typeof solidOf>;
      const form = expand(plan);
      const thick = plan.rafter.thickness;
      const plates = form.eaves.map(({ side }) => `plate.${side}`);
      const jacks = jacksOf(plan, framingOf(form));
      // Near the corner a jack's cheek and its seat take some of each other.
      const short = jacks.filter(
        ({ piece, top, run, shortening }) =>
          run - shortening - thick * (top!.skew.cos / top!.skew.sin) < piece.eave.seat,
      );
      const isShort = (plane: string, at: number): boolean =>
        short.some(({ piece }) => piece.eave.plane.id === plane && piece.at === at);
      for (const { plane, seat, stations } of form.eaves)
        for (const at of stations.filter((one) => !isShort(plane.id, one))) {
          // Beside a corner a seat lies on the long wall's plate as well.
          const bears = plates
            .map((plate) => contact(solid(`rafter.${plane.id}.${at}`), solid(plate), { toward: [0, 0, -1] }))
            .reduce((sum, one) => sum + one, 0);
          expect(Math.abs(bears - seat * thick)).toBeLessThan(slack);
        }
      if (plan.hipFit === 'dropped') return;
      for (const { piece, top, run, shortening } of jacks) {
        const { edge: hip, hand: hipSide, skew } = top!;
        const { m, seat, plane } = piece.eave;
        // Near the corner a jack's own seat takes some of its cheek.
        if (run - shortening - thick * (skew.cos / skew.sin) < seat) continue;
        const { left, right } = handsOf(hip);
        const [x, y] = hip.line.way;
        const fall = (plan.hip.thickness / 2) * m * skew.sin;
        const deep = plan.hip.depth * Math.sqrt(1 + hip.m * hip.m) - fall;
        const high = Math.min(plan.rafter.depth * Math.sqrt(1 + m * m), deep);
        const bears = contact(
          solid(`rafter.${plane.id}.${piece.at}`),
          solid(`hip.${left.plane.id}.${right.plane.id}`),
          { toward: hipSide === 'right' ? [-y, x, 0] : [y, -x, 0] },
        );
        expect(Math.abs(bears - (thick / skew.sin) * high)).toBeLessThan(slack);
      }
    });
  });
});
