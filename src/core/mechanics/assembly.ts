import { addForce, type Frame, type Grip, type Link } from './frame';
import { addBlock, addOuter, emptySkyline, type Skyline } from './skyline';

/** The equations of a frame: stiffness · moves = load. */
export type Equations = { readonly stiffness: Skyline; readonly load: Float64Array };

/** Joints whose nails gave, each with the force its links keep. */
export type Given = ReadonlyMap<Grip, readonly number[]>;

/** Stiffness and load of everything that always acts. Nails that gave act as the force they kept. */
export const lasting = (frame: Frame, given: Given): Equations => {
  const groups = [...frame.beams.map(({ dofs }) => dofs), ...frame.links.map(({ row }) => row.dofs)];
  const stiffness = emptySkyline(frame.free, groups);
  const load = frame.weights.slice();
  for (const { dofs, block, unstressed } of frame.beams) {
    addBlock(stiffness, { dofs, block });
    if (unstressed) addMisfit(load, { dofs, block, unstressed });
  }
  const kept = new Set([...given.keys()].flatMap(({ links }) => links));
  frame.links.forEach((link, i) => {
    if (link.acts === 'both' && !kept.has(i)) addLink({ stiffness, load }, link);
  });
  for (const [{ links }, forces] of given)
    links.forEach((n, i) => {
      addForce(load, (frame.links[n] as Link).row, -(forces[i] as number));
    });
  return { stiffness, load };
};

/** Adds a link to both sides of the equations. */
export const addLink = (to: Equations, { row, stiffness, rest }: Link): void => {
  addOuter(to.stiffness, row, stiffness);
  if (rest !== 0) addForce(to.load, row, stiffness * rest);
};

const addMisfit = (
  load: Float64Array,
  {
    dofs,
    block,
    unstressed,
  }: { readonly dofs: Int32Array; readonly block: Float64Array; readonly unstressed: Float64Array },
): void => {
  for (let i = 0; i < 12; i++) {
    const dof = dofs[i] as number;
    if (dof < 0) continue;
    let sum = 0;
    for (let j = 0; j < 12; j++) sum += (block[i * 12 + j] as number) * (unstressed[j] as number);
    load[dof] = (load[dof] as number) + sum;
  }
};
