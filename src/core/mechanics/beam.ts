import { cross, dot, scale, sub, unit, type Vec3 } from '../geometry/vector';
import type { Stiffness } from './section';

/**
 * Stiffness of a straight three-dimensional Euler–Bernoulli beam between two nodes with six unknowns each: three moves in
 * inches, three turns in radians, in building axes. Textbook matrices (any standard text on matrix structural analysis).
 */
export type Axes = {
  readonly length: number;
  readonly along: Vec3;
  readonly across: Vec3;
  readonly up: Vec3;
};

/** A beam's own axes: along it, then level across it, then up from it. A beam that stands plumb takes y for across. */
export const axesOf = (from: Vec3, to: Vec3): Axes => {
  const way = sub(to, from);
  const length = Math.sqrt(dot(way, way));
  const along = scale(way, 1 / length);
  const across = unit(cross([0, 0, 1], along)) ?? [0, 1, 0];
  return { length, along, across, up: cross(along, across) };
};

/** 12 × 12, row by row, of the unbent beam. */
export const beamStiffness = (axes: Axes, stiffness: Stiffness): Float64Array => {
  const { length: l } = axes;
  const local = new Float64Array(144);
  pair(local, [0, 6], stiffness.axial / l);
  pair(local, [3, 9], stiffness.turning / l);
  bending(local, { move: 1, turn: 5, sign: 1 }, bendingTerms(stiffness.flat, l));
  bending(local, { move: 2, turn: 4, sign: -1 }, bendingTerms(stiffness.upright, l));
  return turned(local, axes);
};

/** 12 × 12 of what an axial force of one pound (tension) adds against bending sideways; the same consistent shape functions. */
export const tensionStiffness = (axes: Axes): Float64Array => {
  const { length: l } = axes;
  const terms = { ends: 6 / (5 * l), mixed: 1 / 10, near: (2 * l) / 15, far: -l / 30 };
  const local = new Float64Array(144);
  bending(local, { move: 1, turn: 5, sign: 1 }, terms);
  bending(local, { move: 2, turn: 4, sign: -1 }, terms);
  return turned(local, axes);
};

type Terms = { readonly ends: number; readonly mixed: number; readonly near: number; readonly far: number };

const bendingTerms = (ei: number, l: number): Terms => ({
  ends: (12 * ei) / (l * l * l),
  mixed: (6 * ei) / (l * l),
  near: (4 * ei) / l,
  far: (2 * ei) / l,
});

const pair = (k: Float64Array, [i, j]: readonly [number, number], by: number): void => {
  k[i * 12 + i] = by;
  k[j * 12 + j] = by;
  k[i * 12 + j] = -by;
  k[j * 12 + i] = -by;
};

/** One plane of bending. `sign` is −1 where a turn that lifts the far end counts against the turn's axis. */
const bending = (
  k: Float64Array,
  { move, turn, sign }: { readonly move: number; readonly turn: number; readonly sign: 1 | -1 },
  { ends, mixed, near, far }: Terms,
): void => {
  const at = [move, turn, move + 6, turn + 6];
  const m = sign * mixed;
  const rows = [
    [ends, m, -ends, m],
    [m, near, -m, far],
    [-ends, -m, ends, -m],
    [m, far, -m, near],
  ];
  rows.forEach((row, a) => {
    row.forEach((value, b) => {
      k[(at[a] as number) * 12 + (at[b] as number)] = value;
    });
  });
};

/** From the beam's own axes into the building's, three unknowns at a time. */
const turned = (local: Float64Array, { along, across, up }: Axes): Float64Array => {
  const axes = [along, across, up] as const;
  const out = new Float64Array(144);
  for (let a = 0; a < 12; a += 3) {
    for (let b = 0; b < 12; b += 3) turnBlock(local, out, { a, b, axes });
  }
  return out;
};

const turnBlock = (
  local: Float64Array,
  out: Float64Array,
  { a, b, axes }: { readonly a: number; readonly b: number; readonly axes: readonly [Vec3, Vec3, Vec3] },
): void => {
  for (let p = 0; p < 3; p++) {
    for (let q = 0; q < 3; q++) {
      const k = local[(a + p) * 12 + b + q] as number;
      if (k === 0) continue;
      const [u, v] = [axes[p] as Vec3, axes[q] as Vec3];
      for (let i = 0; i < 3; i++) {
        for (let j = 0; j < 3; j++) {
          const at = (a + i) * 12 + b + j;
          out[at] = (out[at] as number) + (u[i] as number) * k * (v[j] as number);
        }
      }
    }
  }
};
