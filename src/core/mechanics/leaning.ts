import { pressedInto } from './assembly';
import { tensionStiffness } from './beam';
import { forceIn, type Rest } from './contacts';
import { factored, type Factored } from './factor';
import type { Beam, Frame, Link } from './frame';
import { addBlock, addOuter } from './skyline';

/** Pull along a beam: what its far end feels along its own axis. */
const pullOf = ({ dofs, axes, stiffness, unstressed }: Beam, u: Float64Array): number => {
  const at = (i: number): number => {
    const dof = dofs[i] as number;
    return (dof < 0 ? 0 : (u[dof] as number)) - (unstressed?.[i] ?? 0);
  };
  const { along, length } = axes;
  let longer = 0;
  for (let i = 0; i < 3; i++) longer += (along[i] as number) * (at(6 + i) - at(i));
  return (stiffness.axial / length) * longer;
};

/** Factors once more with what axial forces do to sticks and posts that lean, in the matrix that was factored upright. */
export const leaned = (frame: Frame, rest: Rest, loadFactor: number): Factored => {
  const { base, closed } = rest;
  const stiffness = pressedInto(rest.factors.matrix, { frame, base, closed });
  for (const beam of frame.beams) {
    const pull = pullOf(beam, rest.u) * loadFactor;
    if (pull !== 0) addBlock(stiffness, { dofs: beam.dofs, block: tensionOf(beam) }, pull);
  }
  for (const { thrust, height, rows } of frame.props) {
    if (rest.closed[thrust] !== 1) continue;
    const push = Math.max(0, -forceIn(frame.links[thrust] as Link, rest.u)) * loadFactor;
    for (const row of rows) addOuter(stiffness, row, { times: -push / height });
  }
  return factored(stiffness);
};

const tensionOf = ({ block, axes }: Beam): Float64Array => {
  const known = tensions.get(block) ?? tensionStiffness(axes);
  tensions.set(block, known);
  return known;
};
const tensions = new WeakMap<Float64Array, Float64Array>();
