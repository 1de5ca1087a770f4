import type { Vec3 } from '../geometry/vector';
import { axesOf, beamStiffness, type Axes } from './beam';
import {
  addForce,
  type Beam,
  type Frame,
  type Grip,
  type Link,
  type Node,
  type Prop,
  type Row,
} from './frame';
import type { Stiffness } from './section';

/** Collects a frame piece by piece. Nodes come first and in walking order, so that neighbours stay near in the matrix. */
export type Framing = {
  readonly node: (name: string, at: Vec3, held?: readonly Held[]) => Node;
  readonly beam: (name: string, ends: readonly [Node, Node], options: BeamOptions) => Beam;
  /** Returns the link's number. */
  readonly link: (link: Link) => number;
  readonly grip: (grip: Grip) => void;
  readonly prop: (prop: Prop) => void;
  readonly load: (row: Row, force: number) => void;
  /** Down along the whole length of a beam, pounds an inch of it. */
  readonly weigh: (beam: Beam, poundsAnInch: number) => void;
  readonly pushOn: (row: Row, force: number) => void;
  readonly done: () => Frame;
};

/** An unknown of a node that something outside the frame holds fast. */
export type Held = 'x' | 'y' | 'z' | 'turnX' | 'turnY' | 'turnZ';

export type BeamOptions = { readonly stiffness: Stiffness; readonly unstressed?: Float64Array };

const unknowns: readonly Held[] = ['x', 'y', 'z', 'turnX', 'turnY', 'turnZ'];

export const startFraming = (): Framing => {
  const nodes: Node[] = [];
  const beams: Beam[] = [];
  const links: Link[] = [];
  const grips: Grip[] = [];
  const props: Prop[] = [];
  const loads: { readonly row: Row; readonly force: number; readonly kind: 'weight' | 'push' }[] = [];
  let free = 0;
  const load = (row: Row, force: number): void => void loads.push({ row, force, kind: 'weight' });
  return {
    node: (name, at, held = []) => {
      const dofs = unknowns.map((one) => (held.length > 0 && held.includes(one) ? -1 : free++));
      const node = { name, at, dofs };
      nodes.push(node);
      return node;
    },
    beam: (name, [from, to], { stiffness, unstressed }) => {
      const axes = axesOf(from.at, to.at);
      const dofs = Int32Array.from([...from.dofs, ...to.dofs]);
      const beam = { name, dofs, axes, stiffness, block: blockOf(axes, stiffness), unstressed };
      beams.push(beam);
      return beam;
    },
    link: (link) => links.push(link) - 1,
    grip: (grip) => void grips.push(grip),
    prop: (prop) => void props.push(prop),
    load,
    weigh: (beam, poundsAnInch) => {
      load(evenRow(beam), -poundsAnInch * beam.axes.length);
    },
    pushOn: (row, force) => void loads.push({ row, force, kind: 'push' }),
    done: () => {
      const [weights, push] = [new Float64Array(free), new Float64Array(free)];
      for (const { row, force, kind } of loads) addForce(kind === 'weight' ? weights : push, row, force);
      return { nodes, free, beams, links, grips, props, weights, push };
    },
  };
};

/** Upward pound spread evenly over a beam, as its shape functions share it between the ends: half each, and l/12 of turning. */
const evenRow = ({ dofs, axes }: Beam): Row => {
  const { length: l, across, up } = axes;
  const [v, w] = [across[2], up[2]];
  const turn = ([x, y, z]: Vec3, [a, b, c]: Vec3, by: number): Vec3 => [
    by * (v * x - w * a),
    by * (v * y - w * b),
    by * (v * z - w * c),
  ];
  return {
    dofs: [...dofs],
    coefs: [0, 0, 1 / 2, ...turn(up, across, l / 12), 0, 0, 1 / 2, ...turn(up, across, -l / 12)],
  };
};

/** Beams alike in size and direction share one block: making it is most of what a frame costs. */
const blockOf = (axes: Axes, stiffness: Stiffness): Float64Array => {
  const key = `${axes.length}|${axes.along.join('|')}|${stiffness.axial}|${stiffness.upright}|${stiffness.flat}`;
  const known = blocks.get(key);
  if (known) return known;
  if (blocks.size >= mostBlocks) blocks.clear();
  const block = beamStiffness(axes, stiffness);
  blocks.set(key, block);
  return block;
};
const blocks = new Map<string, Float64Array>();
const mostBlocks = 2000;
