import { addForce, type Frame, type Link } from './frame';
import { addGiven, type Given } from './given';
import {
  addBlock,
  addOuter,
  apartTops,
  emptyIn,
  meet,
  meetIn,
  refilled,
  shapeWith,
  type Equations,
  type Room,
  type Shape,
  type Skyline,
} from './skyline';

/** Stiffness and load of everything that always acts. */
export const lasting = (frame: Frame, given: Given, room?: Room): Equations => {
  const stiffness = emptyIn(shapeOf(frame), room);
  const load = frame.weights.slice();
  for (const { dofs, block, unstressed } of frame.beams) {
    addBlock(stiffness, { dofs, block });
    if (unstressed) addMisfit(load, { dofs, block, unstressed });
  }
  const apart = linksOf(given);
  const to = { stiffness, load };
  for (let i = 0; i < frame.links.length; i++) {
    const link = frame.links[i] as Link;
    if (link.acts === 'both' && !apart.has(i)) addLink(to, link);
  }
  addGiven(to, frame, given);
  return to;
};

/** Links of joints that gave, by number. */
export const linksOf = (given: Given): ReadonlySet<number> =>
  new Set([...given.keys()].flatMap(({ links }) => links));

/** Room for all that touches in a frame, found once. */
const shapeOf = (frame: Frame): Shape => {
  const known = shapes.get(frame);
  if (known) return known;
  const { free, beams, links, grips } = frame;
  const top = apartTops(free);
  for (const { dofs } of beams) meetIn(top, dofs);
  for (const { row } of links) meetIn(top, row.dofs);
  for (const grip of grips) {
    // Those of one link meet already.
    if (grip.links.length > 1)
      meet(
        top,
        grip.links.map((n) => (links[n] as Link).row.dofs),
      );
  }
  const shape = shapeWith(top);
  shapes.set(frame, shape);
  return shape;
};
const shapes = new WeakMap<Frame, Shape>();

/** Adds a link to both sides of the equations. */
const addLink = (to: Equations, { row, stiffness, rest }: Link): void => {
  addOuter(to.stiffness, row, { times: stiffness });
  if (rest !== 0) addForce(to.load, row, stiffness * rest);
};

type Pressed = {
  readonly frame: Frame;
  readonly base: Equations;
  readonly closed: Uint8Array;
  /** Columns before this one are left as they are. */
  readonly from?: number;
};

/** Fills a matrix with what always acts and the faces that touch. */
export const pressedInto = (matrix: Skyline, { frame, base, closed, from = 0 }: Pressed): Skyline => {
  refilled(matrix, base.stiffness, from);
  for (let i = 0; i < closed.length; i++) {
    if (closed[i] !== 1) continue;
    const { row, stiffness } = frame.links[i] as Link;
    addOuter(matrix, row, { times: stiffness, from });
  }
  return matrix;
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
