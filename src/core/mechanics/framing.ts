import { dot, scale, type Vec3 } from '../geometry/vector';
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
  /** Those so far. */
  readonly nodes: () => Nodes;
  /** Notes what is added meanwhile, so that it can be added again to another frame. */
  readonly noted: <T>(add: () => T) => { readonly piece: Piece; readonly first: number; readonly told: T };
  /** Adds what was noted; returns the number of its first link. */
  readonly again: (piece: Piece) => number;
  readonly done: () => Frame;
};

/** Beams, links, loads and grips of one part of a frame. Its grips number its links from 0. */
export type Piece = {
  readonly beams: readonly Beam[];
  readonly links: readonly Link[];
  readonly grips: readonly Grip[];
  readonly loads: readonly Load[];
};

type Load = { readonly row: Row; readonly force: number; readonly kind: 'weight' | 'push' };

/** Nodes and the number of their unknowns. */
export type Nodes = Pick<Frame, 'nodes' | 'free'>;

/** An unknown of a node that something outside the frame holds fast. */
export type Held = 'x' | 'y' | 'z' | 'turnX' | 'turnY' | 'turnZ';

export type BeamOptions = { readonly stiffness: Stiffness; readonly unstressed?: Float64Array };

const unknowns: readonly Held[] = ['x', 'y', 'z', 'turnX', 'turnY', 'turnZ'];

/** A frame without anything in it, or with the nodes of one before. */
export const startFraming = (before?: Nodes): Framing => {
  const nodes: Node[] = before ? [...before.nodes] : [];
  const beams: Beam[] = [];
  const links: Link[] = [];
  const grips: Grip[] = [];
  const props: Prop[] = [];
  const loads: Load[] = [];
  let free = before?.free ?? 0;
  const load = (row: Row, force: number): void => void loads.push({ row, force, kind: 'weight' });
  return {
    node: (name, at, held = []) => {
      const from = free;
      const dofs =
        held.length === 0
          ? [from, from + 1, from + 2, from + 3, from + 4, from + 5]
          : unknowns.map((one) => (held.includes(one) ? -1 : free++));
      if (held.length === 0) free += unknowns.length;
      const node = { name, at, dofs };
      nodes.push(node);
      return node;
    },
    beam: (name, ends, { stiffness, unstressed }) => {
      const { axes, block } = formOf(ends, stiffness);
      const beam = { name, dofs: dofsOf(ends), axes, stiffness, block, unstressed };
      beams.push(beam);
      return beam;
    },
    // Written out, so that engines see one shape of link whoever made it.
    link: ({ joint, what, row, stiffness, rest, acts, apart, ground }) =>
      links.push({ joint, what, row, stiffness, rest, acts, apart, ground }) - 1,
    grip: (grip) => void grips.push(grip),
    prop: (prop) => void props.push(prop),
    load,
    weigh: ({ dofs, axes }, poundsAnInch) => {
      load({ dofs, coefs: evenOf(axes) }, -poundsAnInch * axes.length);
    },
    pushOn: (row, force) => void loads.push({ row, force, kind: 'push' }),
    nodes: () => ({ nodes: [...nodes], free }),
    ...piecewise({ beams, links, grips, loads }),
    done: () => {
      const [weights, push] = [new Float64Array(free), new Float64Array(free)];
      for (const { row, force, kind } of loads) addForce(kind === 'weight' ? weights : push, row, force);
      return { nodes, free, beams, links, grips, props, weights, push };
    },
  };
};

type Lists = {
  readonly beams: Beam[];
  readonly links: Link[];
  readonly grips: Grip[];
  readonly loads: Load[];
};

const piecewise = ({ beams, links, grips, loads }: Lists): Pick<Framing, 'noted' | 'again'> => ({
  noted: (add) => {
    const [b, first, g, l] = [beams.length, links.length, grips.length, loads.length];
    const told = add();
    const piece = {
      beams: beams.slice(b),
      links: links.slice(first),
      grips: grips.slice(g).map((grip) => numbered(grip, -first)),
      loads: loads.slice(l),
    };
    return { piece, first, told };
  },
  again: (piece) => {
    const first = links.length;
    for (const beam of piece.beams) beams.push(beam);
    for (const link of piece.links) links.push(link);
    for (const grip of gripsFrom(piece, first)) grips.push(grip);
    for (const one of piece.loads) loads.push(one);
    return first;
  },
});

/** Grips of a piece whose first link has this number: those of last time where it had it then. */
const gripsFrom = (piece: Piece, first: number): readonly Grip[] => {
  const last = counted.get(piece);
  if (last?.first === first) return last.grips;
  const grips = piece.grips.map((grip) => numbered(grip, first));
  counted.set(piece, { first, grips });
  return grips;
};
const counted = new WeakMap<Piece, { readonly first: number; readonly grips: readonly Grip[] }>();

/** A grip whose links are counted from another. */
const numbered = ({ joint, links, cap }: Grip, by: number): Grip => ({
  joint,
  links: links.map((n) => n + by),
  cap,
});

type Ends = readonly [Node, Node];

const dofsOf = ([from, to]: Ends): Int32Array => {
  const dofs = new Int32Array(12);
  for (let i = 0; i < 6; i++) {
    dofs[i] = from.dofs[i] as number;
    dofs[6 + i] = to.dofs[i] as number;
  }
  return dofs;
};

/** Upward pound spread evenly over a beam, kept for beams alike. */
const evenOf = (axes: Axes): Float64Array => {
  const known = evens.get(axes) ?? spreadOver(axes, [0, 0, 1]);
  evens.set(axes, known);
  return known;
};
const evens = new WeakMap<Axes, Float64Array>();

/** A pound spread evenly over a beam, along a direction of length 1. */
export const evenRow = ({ dofs, axes }: Pick<Beam, 'dofs' | 'axes'>, way: Vec3): Row => ({
  dofs,
  coefs: spreadOver(axes, way),
});

/** As a beam's shape functions share it between the ends: half each, and l/12 of turning. */
const spreadOver = ({ length: l, across, up }: Axes, way: Vec3): Float64Array => {
  const [v, w] = [dot(across, way), dot(up, way)];
  const half: Vec3 = scale(way, 1 / 2);
  const turn = ([x, y, z]: Vec3, [a, b, c]: Vec3, by: number): Vec3 => [
    by * (v * x - w * a),
    by * (v * y - w * b),
    by * (v * z - w * c),
  ];
  return Float64Array.from([...half, ...turn(up, across, l / 12), ...half, ...turn(up, across, -l / 12)]);
};

/** What a beam is by its direction, length and stiffness alone. */
type Form = { readonly way: Vec3; readonly axes: Axes; readonly block: Float64Array };

/** Beams alike in size and direction share one form: making it is most of what a frame costs. */
const formOf = ([{ at: from }, { at: to }]: Ends, stiffness: Stiffness): Form => {
  const known = forms.get(stiffness) ?? [];
  const [x, y, z] = [to[0] - from[0], to[1] - from[1], to[2] - from[2]];
  const alike = known.find(({ way }) => way[0] === x && way[1] === y && way[2] === z);
  if (alike) return alike;
  const axes = axesOf(from, to);
  const form: Form = { way: [x, y, z], axes, block: beamStiffness(axes, stiffness) };
  forms.set(stiffness, [...known.slice(-mostForms), form]);
  return form;
};
const forms = new WeakMap<Stiffness, readonly Form[]>();
/** Of one stick: a ridge or plate has a few lengths of bay, rafters lie two ways. */
const mostForms = 30;
