import { startFraming, type Held } from '../../src/core/mechanics/framing';
import { pointRow, valueOf, type Node } from '../../src/core/mechanics/frame';
import type { Stiffness } from '../../src/core/mechanics/section';
import { settle, type Settled } from '../../src/core/mechanics/settle';
import type { Vec3 } from '../../src/core/geometry/vector';

/** A straight level beam over supports: places in inches, what each holds, and what it carries, lb/in and pounds. */
export type BeamCase = {
  readonly at: readonly number[];
  readonly held: readonly (readonly Held[])[];
  readonly stiffness: Stiffness;
  readonly even?: number;
  /** Down at a place, by its number. */
  readonly point?: readonly [place: number, pounds: number];
};

export const all: readonly Held[] = ['x', 'y', 'z', 'turnX', 'turnY', 'turnZ'];
export const pin: readonly Held[] = ['x', 'y', 'z', 'turnX'];
export const roller: readonly Held[] = ['y', 'z', 'turnX'];
const up: Vec3 = [0, 0, 1];

export const settledBeam = ({
  at,
  held,
  stiffness,
  even = 0,
  point,
}: BeamCase): { readonly nodes: readonly Node[]; readonly settled: Settled } => {
  const framing = startFraming();
  const nodes = at.map((x, i) => framing.node(`n${i}`, [x, 0, 0], held[i] ?? []));
  for (let i = 1; i < nodes.length; i++)
    framing.weigh(framing.beam('b', [nodes[i - 1] as Node, nodes[i] as Node], { stiffness }), even);
  if (point) {
    const node = nodes[point[0]] as Node;
    framing.load(pointRow(node, node.at, up), -point[1]);
  }
  return { nodes, settled: settle(framing.done(), { firstOrder: true }) };
};

/** How far a place of it moves up, inches. */
export const lift = (node: Node, { u }: Settled): number => valueOf(pointRow(node, node.at, up), u);

/** How far a place of it sinks, by its number, inches. */
export const sunk = (beam: BeamCase, place: number): number => {
  const { nodes, settled } = settledBeam(beam);
  return -lift(nodes[place] as Node, settled);
};
