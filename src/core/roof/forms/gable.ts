import { gradient } from '../../units/slope';
import type { DormerShape, Eave, Frame, HostSide, Opening, RoofForm } from '../form';
import { heightOver } from '../heightOver';
import type { GablePlan } from '../plan';
import { standingLimit, standingRow } from '../standing';
import type { Body, Limit, Plane } from '../surface';
import { cladOf, gableEnds, inward, rowOf } from './common';
import { dormerOf, dormerShape, innerMarks, withTrimmers, type Taken } from './dormer';
import { gableDormerOf, openingOf } from './gableDormer';
import { wingOf } from './wing';

/**
 * Level runs of both planes to where they come to the same height. Without a side of its own the ridge is in the middle.
 * From equal heights there: m·run = plateHeight + m′·(span − run).
 */
export const gableRuns = (plan: GablePlan): Readonly<Record<'street' | 'yard', number>> => {
  const clad = cladOf(plan);
  if (!plan.yard) return { street: plan.span / 2 + clad, yard: plan.span / 2 + clad };
  const [m, other, over] = [gradient(plan.slope), gradient(plan.yard.slope), plan.span + 2 * clad];
  const street = (plan.yard.plateHeight + other * over) / (m + other);
  return { street, yard: over - street };
};

const endsOf = ({ length, standing }: GablePlan): readonly Limit[] =>
  gableEnds(length).map((limit) => (limit.id === standing?.end ? { ...limit, id: standingLimit } : limit));

/** Marks of the long walls; where a roof stands already they go on from its last rafter. */
const marksOf = (plan: GablePlan): Pick<Eave, 'stations' | 'standing'> =>
  plan.standing ? standingRow({ ...plan, standing: plan.standing }) : { stations: rowOf(plan) };

/** A side of the main roof as a dormer meets it. */
export const hostSide = (plan: GablePlan, side: 'street' | 'yard'): HostSide => {
  const { slope, seat, plateHeight } =
    side === 'yard' && plan.yard ? plan.yard : { slope: plan.slope, seat: plan.seat, plateHeight: 0 };
  const m = gradient(slope);
  const over = heightOver(plan.rafter.depth, { m, seat });
  return { run: gableRuns(plan)[side], base: plateHeight, m, over };
};

/** A dormer as it stands in the main roof. */
export type InRoof =
  | { readonly shape: DormerShape; readonly opening?: undefined }
  | { readonly opening: Opening; readonly shape?: undefined };

/** Each dormer with the marks of the main row that fall between its trimmers. */
export const dormersIn = (plan: GablePlan): readonly InRoof[] => {
  const { stations: marks } = marksOf(plan);
  const withMarks = <T extends Taken>(one: T): T => ({
    ...one,
    inner: innerMarks(one, marks, plan.rafter.thickness),
  });
  return (plan.dormers ?? []).map((dormer): InRoof => {
    const host = hostSide(plan, dormer.side);
    return dormer.kind === 'shed'
      ? { shape: withMarks(dormerShape(plan, dormer, host)) }
      : { opening: withMarks(openingOf(plan, dormer, host)) };
  });
};

type Row = { readonly marks: readonly number[]; readonly shapes: readonly (DormerShape | Opening)[] };

/** The row of a long wall, with the trimmers of its dormers. */
const rowOn = (
  { rafter }: GablePlan,
  side: 'street' | 'yard',
  { marks, shapes }: Row,
): Pick<Eave, 'stations' | 'through'> => {
  const on = shapes.filter((shape) => shape.plan.side === side);
  if (on.length === 0) return { stations: marks };
  const through = on.flatMap(({ trimmers }) => trimmers);
  return { stations: withTrimmers(marks, on, rafter.thickness), through };
};

/** Where tails end at the wall for wings that stand over the sheathing. */
const bareOn = (plan: GablePlan, side: 'street' | 'yard'): Pick<Eave, 'bare'> => {
  const bare = (plan.wings ?? [])
    .filter((wing) => wing.framing === 'overSheathing' && wing.side === side)
    .map(({ at, span, overhang }) => {
      const half = span / 2 + cladOf(plan) + overhang + plan.rafter.thickness / 2;
      return [at - half, at + half] as const;
    });
  return bare.length > 0 ? { bare } : {};
};

export const gable = (plan: GablePlan): RoofForm => {
  const clad = cladOf(plan);
  const runs = gableRuns(plan);
  const usual = { slope: plan.slope, plateHeight: 0, overhang: plan.overhang, seat: plan.seat };
  const sides = { street: usual, yard: plan.yard ?? usual };
  const planes = (['street', 'yard'] as const).map((wall): Plane & { readonly id: 'street' | 'yard' } => ({
    id: wall,
    foot: [0, wall === 'street' ? -runs.street : runs.yard],
    up: inward[wall],
    base: sides[wall].plateHeight,
    m: gradient(sides[wall].slope),
  }));
  const body: Body = { id: 'main', planes, limits: endsOf(plan) };
  const { stations: marks, ...row } = marksOf(plan);
  const inRoof = dormersIn(plan);
  const shapes = inRoof.map(({ shape, opening }) => shape ?? opening);
  const eaves = planes.map((plane) => ({
    side: plane.id,
    plane,
    body,
    run: runs[plane.id],
    m: plane.m,
    overhang: sides[plane.id].overhang,
    seat: sides[plane.id].seat,
    clad,
    ...row,
    ...rowOn(plan, plane.id, { marks, shapes }),
    ...bareOn(plan, plane.id),
  }));
  const main: Frame = {
    body,
    span: plan.span,
    past: plan.rakeOverhang,
    gables: plan.standing ? 1 : 2,
    ridge: plan.ridge,
  };
  const wings = (plan.wings ?? []).map((wing, i, all) =>
    wingOf(plan, {
      wing,
      host: main,
      wall: runs[wing.side] - clad,
      at: sides[wing.side],
      name: all.length > 1 ? `wing${i + 1}` : 'wing',
    }),
  );
  const dormers = inRoof.map(({ shape, opening }, i, all) => {
    const name = all.length > 1 ? `dormer${i + 1}` : 'dormer';
    if (opening) return gableDormerOf(plan, { opening, name, host: main });
    const { frame, eave } = dormerOf(plan, { shape, name });
    return { frame, eaves: [eave] };
  });
  const parts = [...wings, ...dormers].map(({ frame }) => frame);
  return {
    bodies: [body, ...parts.map((frame) => frame.body)],
    eaves: [...eaves, ...wings.flatMap((wing) => wing.eaves), ...dormers.flatMap((dormer) => dormer.eaves)],
    frames: [main, ...parts],
  };
};
