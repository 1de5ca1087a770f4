import { hair } from '../../units/hair';
import { gradient } from '../../units/slope';
import type { Eave, Frame, RoofForm, WingFrame } from '../form';
import type { GablePlan, Wing } from '../plan';
import { signOf } from '../side';
import type { Body, Plane } from '../surface';
import { cladOf, inward, seatFor } from './common';

type Place = {
  readonly wing: Wing;
  readonly host: Frame;
  /** Level, from the host's ridge line to the outside of its plate. Inches. */
  readonly wall: number;
  /** The host's side that the wing stands against. */
  readonly at: Pick<GablePlan, 'slope' | 'seat'> & { readonly plateHeight: number };
  readonly name: string;
};

/**
 * A gable that stands square to the main roof and runs into it as far as the main ridge's line. Its plates are as high as
 * those it comes to, and its rafters stand as high over them, so that tops meet on the line where the planes do.
 */
export const wingOf = (
  plan: GablePlan,
  place: Place,
): { readonly frame: Frame; readonly eaves: RoofForm['eaves'] } => {
  const { wing, host, at, name } = place;
  const clad = cladOf(plan);
  const sign = signOf(wing.side);
  const gable = place.wall + wing.length;
  const m = gradient(wing.slope);
  const run = wing.span / 2 + clad;
  const planes = (['A', 'B'] as const).map((wall): Plane & { readonly id: string } => ({
    id: `${name}.${wall}`,
    foot: [wing.at - inward[wall][0] * run, 0],
    up: inward[wall],
    base: at.plateHeight,
    m,
  }));
  const body: Body = {
    id: name,
    planes,
    limits: [
      { id: 'gable', normal: [0, sign], reach: gable },
      { id: 'host', normal: [0, -sign], reach: 0 },
    ],
  };
  const marks = fromGable(plan, gable).map((d) => sign * (gable - d));
  const stations = sign > 0 ? [...marks].reverse() : marks;
  const seat = wingSeat(plan, wing, at.seat);
  const eaves = planes.map((plane, i): Eave => ({
    side: i === 0 ? 'A' : 'B',
    plane,
    body,
    run,
    m,
    overhang: wing.overhang,
    seat,
    clad,
    stations,
  }));
  const frame: Frame = {
    body,
    name,
    span: wing.span,
    past: wing.rakeOverhang,
    gables: 1,
    ridge: wing.ridge,
    wing: {
      host,
      valley: wing.valley,
      framing: wing.framing === 'suspendedRidge' ? 'suspendedRidge' : 'longValley',
      ...(wing.framing === 'overSheathing' && { over: deckOn(wing, host) }),
      isLong: ([x]) => x < wing.at === (wing.longFrom === 'A'),
    },
  };
  return { frame, eaves };
};

/** The host's planes as high as the tops of sleepers on its sheathing. */
const deckOn = ({ over: { sheathing, sleeper } }: Wing, { body }: Frame): NonNullable<WingFrame['over']> => ({
  sleeper,
  deck: {
    ...body,
    id: `${body.id}.deck`,
    planes: body.planes.map((plane) => ({
      ...plane,
      base: plane.base + (sheathing + sleeper.thickness) * Math.sqrt(1 + plane.m * plane.m),
    })),
  },
});

/** Seat of a wing's rafters, that they stand as high over the plate as those they meet in the valley. Inches. */
export const wingSeat = (plan: GablePlan, { side, slope }: Wing, seat: number): number => {
  const host = side === 'yard' && plan.yard ? plan.yard : plan;
  return seatFor({ slope: host.slope, seat, rafter: plan.rafter }, gradient(slope));
};

/** Distances in from the gable to the host's ridge line: one flush, then every so far, none that crowds the flush one. */
export const fromGable = ({ rafter, spacing }: GablePlan, reach: number): readonly number[] => {
  const first = rafter.thickness / 2;
  const marks = Array.from({ length: Math.floor(reach / spacing) }, (_, i) => (i + 1) * spacing);
  return [first, ...marks.filter((d) => d - first >= 2 * rafter.thickness - hair)];
};
