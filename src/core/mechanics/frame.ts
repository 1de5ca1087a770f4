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
const kept = (from: readonly number[] | Int32Array, all: readonly number[]): Row => {
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
  kept(node.dofs, sharesOf(node, point, way));

const sharesOf = ({ at }: Node, point: Vec3, way: Vec3): readonly number[] => {
  const [x, y, z] = [point[0] - at[0], point[1] - at[1], point[2] - at[2]];
  return [way[0], way[1], way[2], y * way[2] - z * way[1], z * way[0] - x * way[2], x * way[1] - y * way[0]];
};

/** How far it moves that way. */
export const pointMoves = (
  node: Node,
  { point, way }: { readonly point: Vec3; readonly way: Vec3 },
  u: Float64Array,
): number => {
  const shares = sharesOf(node, point, way);
  let sum = 0;
  for (let i = 0; i < 6; i++) {
    const dof = node.dofs[i] as number;
    if (dof >= 0 && shares[i] !== 0) sum += (shares[i] as number) * (u[dof] as number);
  }
  return sum;
};

/** How far a node turns about a direction. */
export const turnRow = ({ dofs }: Node, about: Vec3): Row => kept(dofs, [0, 0, 0, ...about]);

/** Where a point on a beam, a share `t` of the way along it, moves along a direction: the beam's own shape functions. */
export const alongRow = ({ dofs, axes }: Pick<Beam, 'dofs' | 'axes'>, t: number, way: Vec3): Row => {
  const { length: l, along, across, up } = axes;
  const part = (axis: Vec3): number => axis[0] * way[0] + axis[1] * way[1] + axis[2] * way[2];
  const [a, v, w] = [part(along), part(across), part(up)];
  const s = 1 - t;
  const [h1, h2, h3, h4] = [s * s * (1 + 2 * t), l * t * s * s, t * t * (3 - 2 * t), -l * t * t * s];
  const moves = (axial: number, bent: number): Vec3 => [
    a * axial * along[0] + bent * (v * across[0] + w * up[0]),
    a * axial * along[1] + bent * (v * across[1] + w * up[1]),
    a * axial * along[2] + bent * (v * across[2] + w * up[2]),
  ];
  const turns = (bent: number): Vec3 => [
    bent * (v * up[0] - w * across[0]),
    bent * (v * up[1] - w * across[1]),
    bent * (v * up[2] - w * across[2]),
  ];
  return kept(dofs, [...moves(s, h1), ...turns(h2), ...moves(t, h3), ...turns(h4)]);
};

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
