import { cross, lengthOf, sub, unit, type Vec3 } from '../../core/geometry/vector';
import type { Corner3, MeshTriangle } from '../ink/mesh';

/** Rounded bodies for people and tools: balls, and tapered limbs with round ends. Inches. */

export type Basis = readonly [Vec3, Vec3, Vec3];
const upright: Basis = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];

export type Ball = {
  readonly at: Vec3;
  readonly radii: Vec3;
  readonly basis?: Basis;
  /** Part of it from the top, 1 the whole ball. */
  readonly upTo?: number;
  readonly fine?: readonly [number, number];
};

const norm = (v: Vec3): Vec3 => unit(v) ?? [0, 0, 1];

/** Corners of a ball of radius 1 and which three of them make each triangle. */
type Grid = { readonly corners: readonly Vec3[]; readonly triples: readonly (readonly number[])[] };

const grids = new Map<string, Grid>();

/** Reckoned once for each fineness: so many corners around, so many rows from the top. */
const gridOf = (around: number, down: number, upTo: number): Grid => {
  const key = `${around} ${down} ${upTo}`;
  const known = grids.get(key);
  if (known) return known;
  const corners = Array.from({ length: around * (down + 1) }, (_, k): Vec3 => {
    const a = ((k % around) / around) * Math.PI * 2;
    const b = (Math.floor(k / around) / down) * upTo * Math.PI;
    return [Math.sin(b) * Math.cos(a), Math.sin(b) * Math.sin(a), Math.cos(b)];
  });
  const triples: number[][] = [];
  for (let v = 0; v < down; v++)
    for (let u = 0; u < around; u++) {
      const next = (u + 1) % around;
      const [a, b, c, d] = [u, next, next + around, u + around].map((k) => k + v * around) as [
        number,
        number,
        number,
        number,
      ];
      // At a pole two corners are one.
      if (v > 0) triples.push([a, b, c]);
      if (v < down - 1 || upTo < 1) triples.push([a, c, d]);
    }
  const grid = { corners, triples };
  grids.set(key, grid);
  return grid;
};

const trianglesOn = (corners: readonly Corner3[], triples: Grid['triples']): readonly MeshTriangle[] =>
  triples.map(([a = 0, b = 0, c = 0]) => [corners[a], corners[b], corners[c]] as unknown as MeshTriangle);

export const ball = ({
  at,
  radii,
  basis = upright,
  upTo = 1,
  fine = [11, 7],
}: Ball): readonly MeshTriangle[] => {
  const grid = gridOf(fine[0], fine[1], upTo);
  const [f, l, u] = basis;
  const turned = (x: number, y: number, z: number): Vec3 => [
    f[0] * x + l[0] * y + u[0] * z,
    f[1] * x + l[1] * y + u[1] * z,
    f[2] * x + l[2] * y + u[2] * z,
  ];
  const corners = grid.corners.map(([x, y, z]): Corner3 => {
    const to = turned(x * radii[0], y * radii[1], z * radii[2]);
    return {
      p: [at[0] + to[0], at[1] + to[1], at[2] + to[2]],
      n: norm(turned(x / radii[0], y / radii[1], z / radii[2])),
    };
  });
  return trianglesOn(corners, grid.triples);
};

export type Limb = {
  readonly from: Vec3;
  readonly to: Vec3;
  readonly radii: readonly [number, number];
  readonly sides?: number;
};

/** A tube with half a ball on either end. */
export const limb = ({ from, to, radii, sides = 10 }: Limb): readonly MeshTriangle[] => {
  const along = norm(sub(to, from));
  const x = norm(cross(along, Math.abs(along[2]) < 0.9 ? [0, 0, 1] : [1, 0, 0]));
  const y = cross(along, x);
  const lean = (radii[0] - radii[1]) / Math.max(lengthOf(sub(to, from)), 0.01);
  const rim = gridOf(sides, 2, 0.5).corners.slice(2 * sides);
  const ring = (at: Vec3, r: number): readonly Corner3[] =>
    rim.map(([s, t]) => {
      const d: Vec3 = [x[0] * s + y[0] * t, x[1] * s + y[1] * t, x[2] * s + y[2] * t];
      return {
        p: [at[0] + d[0] * r, at[1] + d[1] * r, at[2] + d[2] * r],
        n: norm([d[0] + along[0] * lean, d[1] + along[1] * lean, d[2] + along[2] * lean]),
      };
    });
  const cap = (at: Vec3, r: number, way: 1 | -1): readonly MeshTriangle[] =>
    ball({
      at,
      radii: [r, r, r],
      basis: [x, y, way === 1 ? along : [-along[0], -along[1], -along[2]]],
      upTo: 0.5,
      fine: [sides, 2],
    });
  const tube = trianglesOn([...ring(from, radii[0]), ...ring(to, radii[1])], tubeOf(sides));
  return [...tube, ...cap(from, radii[0], -1), ...cap(to, radii[1], 1)];
};

const tubes = new Map<number, Grid['triples']>();

const tubeOf = (sides: number): Grid['triples'] => {
  const known = tubes.get(sides);
  if (known) return known;
  const triples = Array.from({ length: sides }, (_, i) => {
    const next = (i + 1) % sides;
    return [
      [i, next, next + sides],
      [i, next + sides, i + sides],
    ];
  }).flat();
  tubes.set(sides, triples);
  return triples;
};
