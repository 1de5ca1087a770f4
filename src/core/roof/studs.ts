import { hair } from '../units/hair';
import type { FiguredStuds } from './figured';
import { bearsAt, type Frame } from './form';
import type { GablePlan, GambrelPlan, ShedPlan } from './plan';
import type { RoofPlane } from './planes';

/** Studs that fill the gables, from the plates' top to the underside of the end rafters. */

/**
 * One entry for each side that differs, told once for all gables of that part of the roof. They stand every so far from the ridge's centre line, or
 * from the wall of a shed; in the middle itself a post or a vent stands.
 */
export const figuredStuds = (
  { gableStuds }: GablePlan | ShedPlan | GambrelPlan,
  planes: readonly RoofPlane[],
  { gables, name }: Frame,
): readonly FiguredStuds[] => {
  if (!gableStuds) return [];
  const rows = planes.map((plane) => rowOf(gableStuds, plane)).filter(({ lengths }) => lengths.length > 0);
  const [one, other] = rows;
  const alike =
    one && other && one.lengths.every((length, i) => Math.abs(length - (other.lengths[i] ?? 0)) < hair);
  const told =
    alike && one.lengths.length === other.lengths.length ? [{ ...one, side: 'both' as const }] : rows;
  return told.map((row, i) => ({
    id: `stud.${name ? `${name}.` : ''}${i + 1}`,
    count: row.lengths.length * (row.side === 'both' ? 2 : 1) * gables,
    ...row,
  }));
};

/** Long points of one side's studs, shortest first. */
const rowOf = (
  { spacing, thickness }: NonNullable<GablePlan['gableStuds']>,
  { eave, cuts }: RoofPlane,
): Omit<FiguredStuds, 'id' | 'count'> => {
  const under = (inFrom: number): number =>
    bearsAt(eave) + cuts.heightAbovePlate + eave.m * inFrom - cuts.plumbCutLength;
  const { run, beyond = 0, open: [from, to] = [eave.clad, run] } = eave;
  const many = Math.ceil((run + beyond) / spacing);
  const lengths = Array.from({ length: many }, (_, k) => run + beyond - (k + 1) * spacing)
    .filter((inFrom) => inFrom - thickness / 2 > from && (beyond === 0 || inFrom + thickness / 2 < to))
    .map((inFrom) => under(inFrom) + (thickness / 2) * eave.m)
    .filter((length) => length > hair)
    .reverse();
  return {
    side: eave.side,
    spacing,
    difference: spacing * eave.m,
    bevel: { rise: eave.m, run: 1 },
    lengths,
  };
};
