import { dot, scale, sub, type Vec3 } from '../geometry/vector';
import type { Beam, Link, Node } from './frame';
import type { Settled } from './settle';

/** What meets at a node of a frame at rest, and what each does to it. Pounds, building axes. */

/** Parts by name, each with its force on the node. */
export type Meeting = ReadonlyMap<string, Vec3>;

/** A beam's force on the node at one of its ends (0 the first), less what lies on the beam: that is told with the node's weights. */
export const endForce = ({ dofs, block, unstressed }: Beam, u: Float64Array, end: 0 | 1): Vec3 => {
  const moved = Float64Array.from(
    dofs,
    (dof, i) => (dof < 0 ? 0 : (u[dof] as number)) - (unstressed?.[i] ?? 0),
  );
  const held = (row: number): number => {
    let sum = 0;
    for (let i = 0; i < 12; i++) sum += (block[row * 12 + i] as number) * (moved[i] as number);
    return -sum;
  };
  return [held(6 * end), held(6 * end + 1), held(6 * end + 2)];
};

/** A link's force on a node it takes hold of. */
const linkForce = ({ row }: Link, force: number, { dofs }: Node): Vec3 => {
  const part = (way: 0 | 1 | 2): number => {
    const dof = dofs[way] as number;
    let sum = 0;
    for (let i = 0; i < row.dofs.length; i++)
      if (dof >= 0 && row.dofs[i] === dof) sum -= force * (row.coefs[i] as number);
    return sum;
  };
  return [part(0), part(1), part(2)];
};

/** All forces at a node: each joint's links together, each beam's end, what weighs there as `weight`, the level push as `lean`. */
export const meetingAt = ({ frame, u, forces }: Settled, node: Node): Meeting => {
  const met = new Map<string, Vec3>();
  const add = (name: string, force: Vec3): void => {
    const [x, y, z] = met.get(name) ?? [0, 0, 0];
    met.set(name, [x + force[0], y + force[1], z + force[2]]);
  };
  frame.links.forEach((link, i) => {
    const force = linkForce(link, forces[i] as number, node);
    if (force.some((part) => part !== 0)) add(link.joint, force);
  });
  const first = node.dofs[0] as number;
  for (const beam of frame.beams)
    for (const end of [0, 1] as const)
      if (first >= 0 && beam.dofs[6 * end] === first) add(beam.name, endForce(beam, u, end));
  const on = (load: Float64Array, way: 0 | 1 | 2): number =>
    (node.dofs[way] as number) < 0 ? 0 : (load[node.dofs[way] as number] as number);
  const loads = { weight: frame.weights, lean: frame.push };
  for (const [name, load] of Object.entries(loads)) add(name, [on(load, 0), on(load, 1), on(load, 2)]);
  return met;
};

/** A force apart: along a direction of length 1 (+), and square to it. */
export const apart = (force: Vec3, way: Vec3): { readonly along: number; readonly square: number } => {
  const along = dot(force, way);
  const rest = sub(force, scale(way, along));
  return { along, square: Math.sqrt(dot(rest, rest)) };
};
