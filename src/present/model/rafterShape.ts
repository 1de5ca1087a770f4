import type { Vec2, Vec3 } from '../../core/geometry/vector';
import type { RafterPose } from '../../core/site/pose';
import { signOf } from '../../core/roof/side';
import { prism } from './prism';
import type { Scheme } from './scheme';
import type { Solid } from './solid';

/** One rafter as it stands, and the building it stands in. */
export type StandingRafter = {
  readonly id: string;
  readonly rafter: RafterPose;
  readonly scheme: Scheme;
  readonly thickness: number;
  /** Taken off the seat so far, inches. */
  readonly seatTrim: number;
  readonly overhang: number;
};

/** Below this a crown is not worth drawing, inches; ours: a third of a pixel in the overview. */
const crownShown = 0.1;

/** Slope of a rafter as it stands, and heights of its two edges at a distance from the center line. */
export const edgesOfRafter = (
  { top, heel, crown }: RafterPose,
  plumb: number,
): {
  readonly m: number;
  readonly over: (out: number) => number;
  readonly under: (out: number) => number;
} => {
  const m = (top.z - heel.z) / (heel.out - top.out);
  const over = (out: number): number => {
    const u = Math.min(1, Math.max(0, (out - top.out) / (heel.out - top.out)));
    return top.z - m * (out - top.out) + 4 * crown * u * (1 - u);
  };
  return { m, over, under: (out) => over(out) - plumb };
};

/** The ridge face a rafter's plumb cut looks at: distance from the center line. */
export const faceBehind = ({ top, gaps }: RafterPose): number =>
  top.out - Math.min(gaps.plumbTop, gaps.plumbBottom);

/** Outline of a rafter in its own plane: distance from the center line, height above the plates. */
export const rafterOutline = ({ rafter, scheme, seatTrim, overhang }: StandingRafter): readonly Vec2[] => {
  const { top, heel, gaps, crown } = rafter;
  const plumb = scheme.common.plumbCutLength;
  const { over, under } = edgesOfRafter(rafter, plumb);
  const face = faceBehind(rafter);
  const seat = heel.z - (scheme.common.heightAbovePlate - seatTrim);
  const tail = heel.out + overhang + rafter.tail;
  const inner = seatInside(rafter, { plumb, seat });
  const bend = Math.abs(crown) > crownShown ? [0.25, 0.5, 0.75] : [];
  const at = (u: number): number => top.out + (heel.out - top.out) * u;
  const lower = bend.map((u): Vec2 => [at(1 - u), under(at(1 - u))]).filter(([out]) => out < inner - 1);
  return [
    [tail, under(tail)],
    [heel.out, under(heel.out)],
    [heel.out, seat],
    [inner, seat],
    ...lower,
    [face + gaps.plumbBottom, under(face + gaps.plumbBottom)],
    [face + gaps.plumbTop, over(face + gaps.plumbTop)],
    ...bend.map((u): Vec2 => [at(u), over(at(u))]),
    [tail, over(tail)],
  ];
};

/** Where the seat cut runs out at the rafter's lower edge. */
const seatInside = (rafter: RafterPose, { plumb, seat }: { plumb: number; seat: number }): number => {
  const { m } = edgesOfRafter(rafter, plumb);
  return Math.min(rafter.heel.out - 0.25, rafter.top.out + (rafter.top.z - plumb - seat) / m);
};

export const rafterSolid = (standing: StandingRafter): Solid => {
  const { id, rafter, scheme, thickness } = standing;
  const { top, heel, x } = rafter;
  const sign = signOf(rafter.side);
  const xAt = (out: number): number =>
    x.ridge + ((x.heel - x.ridge) * (out - top.out)) / (heel.out - top.out);
  const { m } = edgesOfRafter(rafter, scheme.common.plumbCutLength);
  const g = Math.sqrt(1 + m * m);
  const along: Vec3 = [0, -sign / g, m / g];
  const middle = (top.out + heel.out) / 2;
  return prism(
    { id, role: 'rafter', selectable: true, seed: seedOfBoard(rafter.board) },
    {
      outline: rafterOutline(standing),
      place: ([out, z], k) => [xAt(out) + (k - 0.5) * thickness, sign * out, z],
      frame: {
        origin: [xAt(middle), sign * middle, (top.z + heel.z) / 2 - scheme.common.plumbCutLength / 2],
        along,
        across: [0, (sign * m) / g, 1 / g],
        through: [1, 0, 0],
      },
    },
  );
};

const seedOfBoard = (board: string): number => 100 + Number(/\d+$/.exec(board)?.[0] ?? 0) * 7;
