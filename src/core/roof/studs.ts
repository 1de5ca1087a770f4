import { hair, isOver } from '../units/hair';
import type { FiguredStuds } from './figured';
import { bearsAt, type Frame } from './form';
import type { GableStuds } from './plan';
import type { RoofPlane } from './planes';

/** Studs that fill the gables, from the plates' top to the underside of the end rafters. */

/**
 * One entry for each side that differs, told once for all gables of that part of the roof. They stand every so far from the ridge's centre line, or
 * from the wall of a shed; in the middle itself a post or a vent stands.
 */
export const figuredStuds = (
  gableStuds: GableStuds,
  planes: readonly RoofPlane[],
  { gables, name, foot }: Pick<Frame, 'gables' | 'name'> & { readonly foot?: Foot },
): readonly FiguredStuds[] => {
  const rows = planes
    .map((plane) => rowOf(gableStuds, plane, foot))
    .filter(({ lengths }) => lengths.length > 0);
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

/** What studs stand on: plates, or of a small gable behind its header, flush with its lower edge; and the least that shows over it. */
export type Foot = { readonly at: number; readonly least: number };

const onPlates: Foot = { at: 0, least: 0 };

/** Long points of one side's studs, shortest first: of those whose short point, too, is over what they stand on. */
const rowOf = (
  { spacing, thickness }: GableStuds,
  { eave, cuts }: RoofPlane,
  foot = onPlates,
): Omit<FiguredStuds, 'id' | 'count'> => {
  const under = (inFrom: number): number =>
    bearsAt(eave) + cuts.heightAbovePlate + eave.m * inFrom - cuts.plumbCutLength;
  const { run, beyond = 0, open: [from, to] = [eave.clad, run] } = eave;
  const many = Math.ceil((run + beyond) / spacing);
  const lengths = Array.from({ length: many }, (_, k) => run + beyond - (k + 1) * spacing)
    .filter((inFrom) => isOver(inFrom - thickness / 2, from))
    .filter((inFrom) => (beyond === 0 && to === run) || isOver(to, inFrom + thickness / 2))
    .map((inFrom) => under(inFrom) + (thickness / 2) * eave.m - foot.at)
    .filter((length) => isOver(length - thickness * eave.m, foot.least))
    .reverse();
  return {
    side: eave.side,
    spacing,
    difference: spacing * eave.m,
    bevel: { rise: eave.m, run: 1 },
    lengths,
  };
};
