import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import { readRoof } from '../../src/content/readRoof';
import type { Vec3 } from '../../src/core/geometry/vector';
import { handsOf } from '../../src/core/roof/edges';
import { headersOn, type Header } from '../../src/core/roof/headers';
import { heightOver } from '../../src/core/roof/heightOver';
import { tillOf } from '../../src/core/roof/hips';
import { jacksOf } from '../../src/core/roof/jacks';
import type { HipPlan } from '../../src/core/roof/plan';
import { commonsOf, isCommon } from '../../src/core/roof/planes';
import { settledFraming } from '../../src/core/roof/settled';
import type { Timber } from '../../src/core/roof/timber';
import { planeCut } from '../../src/core/roof/timberParts';
import { timbersOf } from '../../src/core/roof/timbers';
import { contact, freeSolids, heightsAbovePlane, solidOf } from './support/kernel';
import { clashesOf, overlapsOf } from './support/overlaps';

/** Hip roofs with small gables as solids: the kernel is told of each member's side and cuts, and of nothing else. */

/** Of each kind for each law; `SOLIDS=200 npx vitest run --project jobs tests/kernel` asks for more. */
const plans = Number(process.env['SOLIDS'] ?? 10);

afterEach(freeSolids);

const tenths = (min: number, max: number) => fc.integer({ min: min * 10, max: max * 10 }).map((n) => n / 10);

/** Roofs that a crew may meet, small gables at one end or both. */
const some = fc
  .record({
    rise: fc.integer({ min: 3, max: 12 }),
    endRise: fc.option(fc.integer({ min: 4, max: 12 }), { nil: undefined }),
    span: tenths(160, 360),
    ridge: tenths(30, 200),
    share: fc.integer({ min: 25, max: 90 }),
    overhang: tenths(0, 20),
    rakeOverhang: fc.constantFrom(0, 8),
    spacing: fc.constantFrom(12, 16, 19.2, 24),
    hipThick: fc.constantFrom(1.5, 1.75, 3.5),
    headerThick: fc.constantFrom(1.5, 3),
    hipTop: fc.constantFrom('betweenCommons' as const, 'againstRidge' as const),
    hipFit: fc.constantFrom('backed' as const, 'dropped' as const),
    reference: fc.constantFrom('plate' as const, 'sheathing' as const),
    ends: fc.constantFrom(['A'], ['B'], ['A', 'B']),
    doubled: fc.boolean(),
  })
  .map(({ rise, endRise = rise, ridge, share, hipThick, headerThick, ends, doubled, ...rest }) => ({
    format: 'tack-and-true/roof@1',
    kind: 'hip',
    slope: { rise, run: 12 },
    endSlope: { rise: endRise, run: 12 },
    length: (rest.span * rise) / endRise + ridge,
    rafter: { thickness: 1.5, depth: 7.25 },
    ridge: { thickness: 1.5, depth: 9.25 },
    hip: { thickness: hipThick, depth: 9.25 },
    gablet: {
      back: (share / 100) * ((rest.span * rise) / endRise / 2),
      ends,
      doubled,
      header: { thickness: headerThick, depth: 7.25 },
    },
    plate: { width: 5.5 },
    seat: 2.5,
    ...rest,
  }));

/** The plan, or nothing where it cannot be framed. */
const planFrom = (file: unknown): HipPlan | undefined => {
  const read = readRoof(file);
  return read.ok && read.value.kind === 'hip' ? read.value : undefined;
};

const everyRoof = (holds: (plan: HipPlan, timbers: readonly Timber[]) => void): void =>
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

/** Toward the small gable. */
const inTo = ({ eave }: Header): Vec3 => [eave.plane.up[0], eave.plane.up[1], 0];

/** What is under a line drawn through points, counted where it is over nothing. */
const areaUnder = (f: (s: number) => number, breaks: readonly number[]): number => {
  const at = [...breaks].sort((a, b) => a - b);
  return at.slice(1).reduce((sum, b, i) => {
    const a = at[i] as number;
    return sum + ((Math.max(0, f(a)) + Math.max(0, f(b))) / 2) * (b - a);
  }, 0);
};

const lookUp = (timbers: readonly Timber[]) => {
  const named = new Map(timbers.map((timber) => [timber.id, solidOf(timber)]));
  return (id: string) => named.get(id) as ReturnType<typeof solidOf>;
};

describe('a hip roof with small gables as solids', () => {
  it('has no two members in the same place', () => {
    everyRoof((_, timbers) => {
      expect(clashesOf(overlapsOf(timbers), shared)).toEqual([]);
    });
  });

  it('has the top edges of commons and jacks in their planes', () => {
    everyRoof((plan, timbers) => {
      for (const { plane, m, seat } of settledFraming(plan).form.eaves) {
        const top = planeCut(plane, heightOver(plan.rafter.depth, { m, seat }));
        const own = timbers.filter(({ id }) => id.startsWith(`rafter.${plane.id}.`));
        for (const timber of own)
          for (const height of heightsAbovePlane(timber, top)) expect(Math.abs(height)).toBeLessThan(1e-6);
      }
    });
  });

  it('bears on the plates with every seat', () => {
    everyRoof((plan, timbers) => {
      const solid = lookUp(timbers);
      const framing = settledFraming(plan);
      const thick = plan.rafter.thickness;
      const long = ({ run, shortening, top, piece }: ReturnType<typeof jacksOf>[number]): boolean =>
        run - shortening - (top ? thick * (top.skew.cos / top.skew.sin) : 0) >= piece.eave.seat;
      const pieces = [
        ...framing.pieces.filter(isCommon),
        ...jacksOf(plan, framing)
          .filter(long)
          .map(({ piece }) => piece),
      ];
      expect(pieces.length).toBeGreaterThan(4);
      for (const { eave, at } of pieces) {
        const bears = framing.form.eaves
          .map(({ side }) =>
            contact(solid(`rafter.${eave.side}.${at}`), solid(`plate.${side}`), { toward: [0, 0, -1] }),
          )
          .reduce((sum, one) => sum + one, 0);
        expect(Math.abs(bears - (eave.seat - eave.clad) * thick)).toBeLessThan(slack);
      }
    });
  });

  it('bears on its headers with the rafters of the ends and the hips, and these on the commons behind', () => {
    everyRoof((plan, timbers) => {
      const solid = lookUp(timbers);
      const framing = settledFraming(plan);
      const headers = headersOn(framing, commonsOf(framing, plan));
      expect(headers.length).toBe(plan.gablet?.ends.length);
      for (const header of headers) {
        const { eave, wood, hip: yh, end, m, topHeight } = header;
        const on = solid(`header.${eave.side}`);
        const toward = inTo(header);
        const cut = plan.rafter.depth * Math.sqrt(1 + eave.m * eave.m);
        for (const { at } of framing.pieces.filter((piece) => piece.eave === eave && isCommon(piece))) {
          const bears = contact(solid(`rafter.${eave.side}.${at}`), on, { toward });
          expect(Math.abs(bears - plan.rafter.thickness * Math.min(cut, wood.depth))).toBeLessThan(slack);
        }
        const hips = framing.edges.filter(
          (edge) => tillOf(edge) && edge.planes.some((of) => of.plane === eave.plane),
        );
        expect(hips).toHaveLength(2);
        for (const edge of plan.hipFit === 'backed' ? hips : []) {
          const wide = end - yh;
          const aside = Math.abs(edge.line.way[1]) / Math.abs(edge.line.way[0]);
          // The underside of the hip, slanting across the header: flatter along its line than square to it.
          const climb = (edge.m * Math.abs(edge.line.way[1]) * plan.hip.thickness) / 2 / wide;
          const deep = plan.hip.depth * Math.sqrt(1 + edge.m * edge.m);
          expect(aside).toBeGreaterThan(0);
          const high = (s: number): number => Math.min(0, -m * s) - Math.max(-wood.depth, -deep - climb * s);
          const kink = (wood.depth - deep) / climb;
          const area = areaUnder(high, [-wide, 0, wide, Math.max(-wide, Math.min(wide, kink))]);
          const { left, right } = handsOf(edge);
          const bears = contact(solid(`hip.${left.plane.id}.${right.plane.id}`), on, { toward });
          expect(Math.abs(bears - area)).toBeLessThan(slack);
        }
        // Over the seat of a common that the header comes so near to, the arithmetic below does not hold.
        const street = framing.form.eaves[0]!;
        if (end > street.run - street.seat) continue;
        const station = street.stations.filter((x) =>
          toward[0] > 0 ? x > eave.plane.till!.reach : x < -eave.plane.till!.reach,
        );
        const pair = toward[0] > 0 ? Math.min(...station) : Math.max(...station);
        const plumb = plan.rafter.depth * Math.sqrt(1 + m * m);
        const high = (s: number): number => Math.min(0, -m * s) - Math.max(-wood.depth, -m * s - plumb);
        const least = plan.ridge.thickness / 2 - yh;
        const breaks = [least, -plumb / m, (wood.depth - plumb) / m, 0, end - yh];
        const area = areaUnder(
          high,
          breaks.map((s) => Math.max(least, Math.min(end - yh, s))),
        );
        for (const side of ['street', 'yard']) {
          const bears = contact(on, solid(`rafter.${side}.${pair}`), { toward });
          expect(Math.abs(bears - area)).toBeLessThan(slack);
        }
        expect(topHeight - wood.depth).toBeGreaterThan(0);
      }
    });
  });
});
