import { addForce, valueOf, type Beam, type Frame, type Link, type Node } from './frame';
import type { Settled } from './settle';

/** What a frame that came to rest carries, read from its links and beams. Pounds. */

/** Pull (+) or push (−) along a beam at its middle. */
export const pullIn = ({ dofs, axes, stiffness, unstressed }: Beam, u: Float64Array): number => {
  const [x, y, z] = axes.along;
  const stretch = valueOf({ dofs, coefs: Float64Array.from([-x, -y, -z, 0, 0, 0, x, y, z, 0, 0, 0]) }, u);
  const free = unstressed
    ? [x, y, z].reduce(
        (sum, part, i) => sum + part * ((unstressed[6 + i] as number) - (unstressed[i] as number)),
        0,
      )
    : 0;
  return (stiffness.axial / axes.length) * (stretch - free);
};

/** What a joint's links do to a node: along x, y and z of the building. */
export const pushOnNode = (
  { frame, forces }: Pick<Settled, 'frame' | 'forces'>,
  joint: string,
  { dofs }: Node,
): readonly [number, number, number] => {
  const load = new Float64Array(frame.free);
  frame.links.forEach((link, i) => {
    if (link.joint === joint) addForce(load, link.row, -(forces[i] as number));
  });
  const at = (way: 0 | 1 | 2): number =>
    (dofs[way] as number) < 0 ? 0 : (load[dofs[way] as number] as number);
  return [at(0), at(1), at(2)];
};

/** The forces of all links that are meant, together; + pulls. */
export const forceOf = (
  { frame, forces }: Pick<Settled, 'frame' | 'forces'>,
  meant: (link: Link) => boolean,
): number => frame.links.reduce((sum, link, i) => (meant(link) ? sum + (forces[i] as number) : sum), 0);

/** All that weighs on a frame, down. */
export const weightOf = ({ nodes, weights }: Frame): number =>
  nodes.reduce((sum, { dofs }) => {
    const up = dofs[2] as number;
    return up < 0 ? sum : sum - (weights[up] as number);
  }, 0);
