import { stationsOf } from '../level/layout';
import type { Vec3 } from '../geometry/vector';
import { addForce, pointRow, type Frame } from '../mechanics/frame';
import { evenRow } from '../mechanics/framing';
import type { GableShape } from '../mechanics/gable';
import type { RafterParts } from '../mechanics/gableParts';
import { forceOf, pullIn, pushOnNode, weightOf } from '../mechanics/loadPath';
import { settle, type Settled } from '../mechanics/settle';
import { sides, signOf, type Side } from '../roof/side';
import { framed, type Framed } from './framed';
import type { RafterId } from './ids';
import type { Standing } from './standing';

/** How loads get down through what stands, pounds. For the eye: it shows paths, it is no proof of strength. */
export type Loads = {
  /** All that weighs on the frame. */
  readonly weight: number;
  readonly rafters: Readonly<Record<RafterId, RafterLoad>>;
  /** Pull (+) in joists, rafter ties and collars by member. */
  readonly ties: Readonly<Record<string, number>>;
  /** Down on posts, slings and hands. */
  readonly supports: Readonly<Record<string, number>>;
  /** What braces of the ridge hold: toward the yard or toward B (+) is what they are pushed with. */
  readonly braces: Readonly<Record<string, number>>;
  /** Down (+) on the studs behind a ledger, by the joint that fastens it there. */
  readonly studs: Readonly<Record<string, number>>;
  /** What studs, braces and corners of an eave wall hold back, and the wall behind a ledger: outward (+). */
  readonly walls: Readonly<Record<Side, number>>;
};

/** Push along it (+) at its middle; down on its plate (+); outward on its plate (+). */
export type RafterLoad = { readonly along: number; readonly down: number; readonly out: number };

/** Loads that no framing job has yet, to be shown as what they are: a what-if. */
export type WhatIf = 'deck' | 'snow' | 'wind';

/** Pounds a square foot. All three ours, of the size that codes give for light roofs; the plans say what holds for a place. */
const rates = {
  /** Sheathing, on the slope. */
  deck: 3,
  /** On the level. */
  snow: 20,
  /** From the street, level, on the height of the street's slope. */
  wind: 10,
} as const satisfies Record<WhatIf, number>;

/** Undefined when nothing is fastened yet; `falls` when it would not stand. */
export const loadsOf = (standing: Standing, whatIf?: WhatIf): Loads | 'falls' | undefined => {
  const frame = framed(standing);
  if (!frame || standing.site.down !== undefined) return undefined;
  const settled = whatIf ? settle(loaded(frame, stationsOf(standing.level), whatIf)) : frame.settled;
  return settled.falls ? 'falls' : read(frame, settled);
};

const read = ({ gable, parts }: Framed, settled: Settled): Loads => {
  const named = <T extends { readonly name: string }>(all: readonly T[], load: (name: string) => number) =>
    Object.fromEntries(all.map(({ name }) => [name, load(name)] as const));
  const whole = (name: string): number => forceOf(settled, ({ joint }) => joint === name);
  const under = (name: string): number =>
    -forceOf(settled, ({ joint, what }) => joint === name && what === 'up');
  const holds = gable.wall ?? [];
  const wall = (side: Side): number =>
    signOf(side) * forceOf(settled, ({ joint, ground }) => joint === `wall.${side}` && ground === 'y');
  const behind = (): number =>
    forceOf(settled, ({ joint, what }) => what === 'off' && holds.some((hold) => hold.joint === joint)) -
    forceOf(settled, ({ what }) => what === 'wallTop' || what === 'wallBottom');
  const rafters = [...parts.rafters].map(([id, one]) => [id as RafterId, rafterLoad(settled, one)] as const);
  return {
    weight: weightOf(settled.frame),
    rafters: Object.fromEntries(rafters) as Loads['rafters'],
    ties: named(gable.ties, whole),
    supports: named(
      gable.supports.filter(({ high }) => high !== undefined),
      under,
    ),
    braces: named(gable.braces, whole),
    studs: Object.fromEntries(holds.map(({ joint }) => [joint, under(joint)])),
    walls: { street: wall('street'), yard: gable.wall ? behind() : wall('yard') },
  };
};

const rafterLoad = (settled: Settled, { rafter, beam, heel }: RafterParts): RafterLoad => {
  const [, y, z] = pushOnNode(settled, rafter.heel.joint, heel);
  return { along: -pullIn(beam, settled.u), down: z, out: -signOf(rafter.side) * y };
};

/** The same frame with a load on its rafters, each carrying half a bay to either side. */
const loaded = ({ gable, parts }: Framed, stations: readonly number[], whatIf: WhatIf): Frame => {
  const { frame } = parts;
  const weights = Float64Array.from(frame.weights);
  for (const one of sides.flatMap((side) => parts.rows[side])) {
    if (one) addLoad(weights, gable.shape, { one, share: bayAt(stations, one.rafter.station), whatIf });
  }
  return { ...frame, weights };
};

const bayAt = (stations: readonly number[], i: number): number => {
  const here = stations[i] as number;
  return ((stations[i + 1] ?? here) - (stations[i - 1] ?? here)) / 2;
};

type Bay = { readonly one: RafterParts; readonly share: number; readonly whatIf: WhatIf };

const addLoad = (weights: Float64Array, shape: GableShape, { one, share, whatIf }: Bay): void => {
  const { rafter, beam, heel, top } = one;
  if (whatIf === 'wind' && rafter.side !== 'street') return;
  const psi = rates[whatIf] / 144;
  const { m } = shape;
  const sign = signOf(rafter.side);
  const level = Math.abs(top.at[1] - heel.at[1]);
  const tail = shape.overhang + shape.seat / 2;
  const per = whatIf === 'deck' ? Math.sqrt(1 + m * m) : whatIf === 'wind' ? m : 1;
  const way: Vec3 = whatIf === 'wind' ? [0, -sign, 0] : [0, 0, -1];
  addForce(weights, evenRow(beam, way), psi * share * level * per);
  const middle: Vec3 = [heel.at[0], heel.at[1] + (sign * tail) / 2, heel.at[2] - (tail * m) / 2];
  addForce(weights, pointRow(heel, middle, way), psi * share * tail * per);
};
