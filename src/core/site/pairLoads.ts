import { sub, unit, type Vec3 } from '../geometry/vector';
import { apart, meetingAt, type Meeting } from '../mechanics/jointForces';
import type { RafterParts } from '../mechanics/gableParts';
import { sides, signOf, type Side } from '../roof/side';
import { framed, type Framed } from './framed';
import { loadsOf, type Loads } from './loads';
import type { RafterId } from './ids';
import type { Standing } from './standing';

/** How one pair carries what weighs on it down to the walls and into its ties, as the frame stands now. Pounds. */
export type PairLoads = {
  /** Counted from 1. */
  readonly station: number;
  readonly rafters: Readonly<Partial<Record<Side, RafterEnds>>>;
  readonly ties: readonly TieLoad[];
};

/** Pull (+) in what ties a pair; a joist's nails to plates and to rafters together. Height of its middle over the plates, inches. */
export type TieLoad = { readonly member: string; readonly pull: number; readonly height: number };

export type RafterEnds = {
  readonly id: RafterId;
  /** Its line: over the plate, and at the ridge's face. Inches. */
  readonly heel: Vec3;
  readonly top: Vec3;
  /** Push along itself (+) on what it meets, and square to itself, by which it carries its own weight as a beam. */
  readonly atHeel: { readonly along: number; readonly square: number };
  readonly atTop: { readonly along: number; readonly square: number };
  /** On its plate: down (+) and outward (+). */
  readonly down: number;
  readonly out: number;
};

/** What loads a rafter between its ends counts as the rafter's own at the ends: its weight, its tail, its collar. */
const ownAt = (met: Meeting, rafter: string): Vec3 => {
  let sum: Vec3 = [0, 0, 0];
  for (const [name, [x, y, z]] of met)
    if (name === rafter || name === 'weight' || name.startsWith('collar.'))
      sum = [sum[0] + x, sum[1] + y, sum[2] + z];
  return sum;
};

/** Undefined as long as nothing is fastened, or where it would not stand. */
export const pairLoads = (standing: Standing, station: number): PairLoads | undefined => {
  const frame = framed(standing);
  const loads = loadsOf(standing);
  if (!frame || !loads || loads === 'falls') return undefined;
  const ends = (one: RafterParts): RafterEnds => {
    const id = one.rafter.name as RafterId;
    const { heel, top } = { heel: one.heel.at, top: one.top.at };
    const up = unit(sub(top, heel)) ?? [0, 0, 1];
    const down: Vec3 = [-up[0], -up[1], -up[2]];
    const [, y, z] = meetingAt(frame.settled, one.heel).get(one.rafter.heel.joint) ?? [0, 0, 0];
    return {
      id,
      heel,
      top,
      atHeel: apart(ownAt(meetingAt(frame.settled, one.heel), id), down),
      atTop: apart(ownAt(meetingAt(frame.settled, one.top), id), up),
      down: z,
      out: -signOf(one.rafter.side) * y,
    };
  };
  const rafters: Partial<Record<Side, RafterEnds>> = {};
  for (const side of sides) {
    const one = frame.parts.rows[side][station - 1];
    if (one) rafters[side] = ends(one);
  }
  return { station, rafters, ties: tiesAt(frame, loads, station) };
};

const tiesAt = ({ gable }: Framed, { ties }: Loads, station: number): readonly TieLoad[] => {
  const own = gable.ties.filter((tie) => tie.station === station - 1);
  const low = own.find(({ kind }) => kind === 'plates')?.name ?? `joist.${station}`;
  const found = new Map<string, TieLoad>();
  for (const { name, kind, height } of own) {
    const member = kind === 'heels' ? low : name;
    found.set(member, { member, height, pull: (found.get(member)?.pull ?? 0) + (ties[name] ?? 0) });
  }
  return [...found.values()];
};
