import type { Vec3 } from '../geometry/vector';
import type { Axes } from './beam';
import type { Stiffness } from './section';

/** A half-built roof as its mechanics sees it: nodes, beams between them, and links that carry force one way or both. */
export type Frame = {
  readonly nodes: readonly Node[];
  /** Number of unknowns. */
  readonly free: number;
  readonly beams: readonly Beam[];
  readonly links: readonly Link[];
  readonly grips: readonly Grip[];
  readonly props: readonly Prop[];
  /** Weights as loads on the unknowns, pounds and inch-pounds, and the level push that stands in for what is never quite plumb. */
  readonly weights: Float64Array;
  readonly push: Float64Array;
};

/** A point with up to six unknowns: three moves, three turns, building axes. −1 where it is held fast. */
export type Node = { readonly name: string; readonly at: Vec3; readonly dofs: readonly number[] };

export type Beam = {
  readonly name: string;
  readonly dofs: Int32Array;
  readonly axes: Axes;
  readonly stiffness: Stiffness;
  /** 12 × 12 in building axes. */
  readonly block: Float64Array;
  /** Moves and turns of its ends at which it would be free of stress: a bow, a crown, a length cut wrong. */
  readonly unstressed: Float64Array | undefined;
};

/** A combination of unknowns: how far two points part along a direction, or how far they turn apart. */
export type Row = { readonly dofs: ArrayLike<number>; readonly coefs: Float64Array };

/** A spring on one row. It is free of force at `rest`; one that only pushes is free beyond it too. */
export type Link = {
  readonly joint: string;
  readonly what: string;
  readonly row: Row;
  /** lb/in, or in-lb/rad. */
  readonly stiffness: number;
  readonly rest: number;
  readonly acts: 'both' | 'push';
  /** A face: about how far it would stand off if nothing gave. Only where the search for faces that touch begins. */
  readonly apart?: number | undefined;
  /** Stands on something outside the frame in this direction, so that its force is a reaction. */
  readonly ground?: 'x' | 'y' | 'z' | undefined;
};

/** The nails of one joint: links (by number) that give together once their force together is more than the cap, pounds. */
export type Grip = { readonly joint: string; readonly links: readonly number[]; readonly cap: number };

/** A post under load leans its head over: its thrust (the force of link `thrust`) over its height, both level ways. */
export type Prop = { readonly thrust: number; readonly height: number; readonly rows: readonly Row[] };

/** Keeps what counts of a row: unknowns that are free and coefficients that are not zero. Most are neither. */
const kept = (from: ArrayLike<number>, all: ArrayLike<number>): Row => {
  let count = 0;
  for (let i = 0; i < all.length; i++) if ((from[i] as number) >= 0 && all[i] !== 0) count++;
  const dofs = new Array<number>(count);
  const coefs = new Float64Array(count);
  let at = 0;
  for (let i = 0; i < all.length; i++) {
    if ((from[i] as number) < 0 || all[i] === 0) continue;
    dofs[at] = from[i] as number;
    coefs[at++] = all[i] as number;
  }
  return { dofs, coefs };
};

/** Where a point rigidly fixed to a node moves along a direction. */
export const pointRow = (node: Node, point: Vec3, way: Vec3): Row =>
  kept(node.dofs, shared(shares, { node, point, way }));

type Point = { readonly node: Node; readonly point: Vec3; readonly way: Vec3 };

/** Written over by every row that is made: they are made by the thousand. */
const shares = new Float64Array(6);
const sharesAlong = new Float64Array(12);

/** The part that each of a node's moves and turns has in how far the point moves that way. */
const shared = (into: Float64Array, { node: { at }, point, way }: Point): Float64Array => {
  const [x, y, z] = [point[0] - at[0], point[1] - at[1], point[2] - at[2]];
  into[0] = way[0];
  into[1] = way[1];
  into[2] = way[2];
  into[3] = y * way[2] - z * way[1];
  into[4] = z * way[0] - x * way[2];
  into[5] = x * way[1] - y * way[0];
  return into;
};

/** How far it moves that way. */
export const pointMoves = (
  node: Node,
  { point, way }: { readonly point: Vec3; readonly way: Vec3 },
  u: Float64Array,
): number => {
  const by = shared(shares, { node, point, way });
  let sum = 0;
  for (let i = 0; i < 6; i++) {
    const dof = node.dofs[i] as number;
    if (dof >= 0 && by[i] !== 0) sum += (by[i] as number) * (u[dof] as number);
  }
  return sum;
};

/** How far a node turns about a direction. */
export const turnRow = ({ dofs }: Node, about: Vec3): Row => kept(dofs, [0, 0, 0, ...about]);

/** Where a point on a beam, a share `t` of the way along it, moves along a direction: the beam's own shape functions. */
export const alongRow = ({ dofs, axes }: Pick<Beam, 'dofs' | 'axes'>, t: number, way: Vec3): Row => {
  const { length: l, along, across, up } = axes;
  const a = partAlong(along, way);
  const v = partAlong(across, way);
  const w = partAlong(up, way);
  const s = 1 - t;
  const ends = [
    { moves: s * s * (1 + 2 * t), turns: l * t * s * s, axial: a * s },
    { moves: t * t * (3 - 2 * t), turns: -l * t * t * s, axial: a * t },
  ];
  for (let end = 0; end < 2; end++) {
    const { moves, turns, axial } = ends[end] as (typeof ends)[number];
    for (let i = 0; i < 3; i++) {
      const [x, y, z] = [along[i] as number, across[i] as number, up[i] as number];
      sharesAlong[6 * end + i] = axial * x + moves * (v * y + w * z);
      sharesAlong[6 * end + 3 + i] = turns * (v * z - w * y);
    }
  }
  return kept(dofs, sharesAlong);
};

const partAlong = (axis: Vec3, way: Vec3): number => axis[0] * way[0] + axis[1] * way[1] + axis[2] * way[2];

/** One row less another: how far the first point parts from the second. */
export const less = (a: Row, b: Row): Row => {
  const [n, m] = [a.dofs.length, b.dofs.length];
  const dofs = new Array<number>(n + m);
  const coefs = new Float64Array(n + m);
  for (let i = 0; i < n; i++) {
    dofs[i] = a.dofs[i] as number;
    coefs[i] = a.coefs[i] as number;
  }
  for (let i = 0; i < m; i++) {
    dofs[n + i] = b.dofs[i] as number;
    coefs[n + i] = -(b.coefs[i] as number);
  }
  return { dofs, coefs };
};

/** What a row comes to for given moves. */
export const valueOf = ({ dofs, coefs }: Row, u: Float64Array): number => {
  let sum = 0;
  for (let i = 0; i < dofs.length; i++) {
    const dof = dofs[i] as number;
    if (dof >= 0) sum += (coefs[i] as number) * (u[dof] as number);
  }
  return sum;
};

/** Adds a force along a row to a load. */
export const addForce = (load: Float64Array, { dofs, coefs }: Row, force: number): void => {
  for (let i = 0; i < dofs.length; i++) {
    const dof = dofs[i] as number;
    if (dof >= 0) load[dof] = (load[dof] as number) + force * (coefs[i] as number);
  }
};
