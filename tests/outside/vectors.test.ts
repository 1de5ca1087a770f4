import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { figure } from '../../src/core/roof/figure';
import { readRoof } from '../../src/content/readRoof';
import type { HipPlan } from '../../src/core/roof/plan';
import { byVectors } from '../bench/byVectors';
import { hipSample } from '../roof/hips';

/** The line lengths of hips, jacks and commons against gl-matrix, a general library for vectors. */

const rises = fc.integer({ min: 3, max: 18 });
const hips = fc.record({
  slope: rises,
  endSlope: rises,
  span: fc.integer({ min: 120, max: 480 }),
  spacing: fc.constantFrom(12, 16, 19.2, 24),
});

type Drawn = {
  readonly slope: number;
  readonly endSlope: number;
  readonly span: number;
  readonly spacing: number;
};

/** Undefined where the two slopes leave no seat at one of the eaves. */
const planOf = ({ slope, endSlope, span, spacing }: Drawn): HipPlan | undefined => {
  const read = readRoof({
    ...hipSample,
    ...{ span, spacing, length: 3000, seat: 2.5 },
    slope: { rise: slope, run: 12 },
    endSlope: { rise: endSlope, run: 12 },
    rafter: { thickness: 1.5, depth: 9.25 },
    ridge: { thickness: 1.5, depth: 24 },
    hip: { thickness: 1.5, depth: 30 },
  });
  return read.ok && read.value.kind === 'hip' ? read.value : undefined;
};

/** Different ones, shortest first. */
const different = (lengths: readonly number[]): readonly number[] =>
  [...lengths].sort((a, b) => a - b).filter((length, i, all) => i === 0 || length - (all[i - 1] ?? 0) > 1e-6);

const figuredOf = (plan: HipPlan) => {
  const roof = figure(plan);
  const of = (ends: boolean): readonly number[] => [
    ...(roof.jacks ?? [])
      .filter(({ side }) => (side === 'ends') === ends)
      .flatMap(({ lineLengths }) => lineLengths),
    ...roof.commonRafters
      .filter(({ side }) => side === 'all' || (side === 'ends') === ends)
      .map((c) => c.lineLength),
  ];
  const along = roof.layout.stations;
  const across = roof.layout.eaves?.find(({ side }) => side === 'ends')?.stations ?? [];
  return { hip: roof.hips?.[0]?.lineLength, along: of(false), across: of(true), stations: { along, across } };
};

describe('a vector library', () => {
  it('finds the same hip, jacks and commons', () => {
    fc.assert(
      fc.property(hips, (of) => {
        const plan = planOf(of);
        fc.pre(plan !== undefined);
        const { stations, ...own } = figuredOf(plan);
        const other = byVectors({
          ...plan,
          endSlope: plan.endSlope ?? plan.slope,
          along: stations.along.filter((x) => x < 1500),
          across: stations.across,
        });
        expect(own.hip).toBeCloseTo(other.hip, 9);
        for (const wall of ['along', 'across'] as const) {
          const [ours, theirs] = [different(own[wall]), different(other[wall])];
          expect(ours).toHaveLength(theirs.length);
          ours.forEach((length, i) =>
            expect(Math.abs(length - (theirs[i] ?? NaN))).toBeLessThan(1e-9 * length),
          );
        }
      }),
      { numRuns: 100 },
    );
  });
});
