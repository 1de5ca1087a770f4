import { describe, expect, it } from 'vitest';
import type { Vec3 } from '../../src/core/geometry/vector';
import { pointRow, type Node } from '../../src/core/mechanics/frame';
import { startFraming, type Held } from '../../src/core/mechanics/framing';
import { stiffnessOf } from '../../src/core/mechanics/section';
import { sawn } from '../../src/core/stock/wood';
import { settle } from '../../src/core/mechanics/settle';
import { all, lift, pin, roller, settledBeam } from './evenBeam';

/** Standard statics of beams: exact expressions of any textbook, with rational or surd coefficients, not rounded constants. */

const joist = stiffnessOf({ thickness: 1.5, depth: 7.25 }, sawn);
const ei = joist.upright;
const up: Vec3 = [0, 0, 1];
const evenly = (at: readonly number[], held: readonly (readonly Held[])[], load: number) =>
  settledBeam({ at, held, stiffness: joist, even: load });

const close = (value: number, exact: number): void => {
  expect(Math.abs(value - exact)).toBeLessThanOrEqual(1e-9 * Math.abs(exact));
};

describe('beams of the textbook', () => {
  const [w, l] = [2.5, 96];

  it('simple: 5/384 wL⁴/EI in the middle', () => {
    const { nodes, settled } = evenly([0, l / 2, l], [pin, [], roller], w);
    close(-lift(nodes[1] as Node, settled), (5 * w * l ** 4) / (384 * ei));
  });

  it('fixed at one end: wL⁴/8EI at the tip', () => {
    const { nodes, settled } = evenly([0, l], [all, []], w);
    close(-lift(nodes[1] as Node, settled), (w * l ** 4) / (8 * ei));
  });

  it('propped: (39 + 55√33)/65536 wL⁴/EI at (15 − √33)/16 L from the fixed end', () => {
    const deepest = ((15 - Math.sqrt(33)) / 16) * l;
    const { nodes, settled } = evenly([0, deepest, l], [all, [], roller], w);
    close(-lift(nodes[1] as Node, settled), ((39 + 55 * Math.sqrt(33)) / 65536) * ((w * l ** 4) / ei));
  });

  it('over two spans: level over the middle support, 1/192 wL⁴/EI in the middle of each', () => {
    const { nodes, settled } = evenly([0, l / 2, l, 1.5 * l, 2 * l], [pin, [], roller, [], roller], w);
    close(-lift(nodes[1] as Node, settled), (w * l ** 4) / (192 * ei));
    expect(Math.abs(settled.u[(nodes[2] as Node).dofs[4] as number] as number)).toBeLessThan(1e-12);
  });

  it('loaded at its tip, leaning in space: bends across and shortens along', () => {
    const framing = startFraming();
    const tip: Vec3 = [60, 80, 30];
    const [from, to] = [framing.node('a', [0, 0, 0], all), framing.node('b', tip)];
    framing.beam('b', [from, to], { stiffness: joist });
    framing.load(pointRow(to, tip, up), 10);
    const long = Math.sqrt(10900);
    const [level, plumb] = [100 / long, 30 / long];
    close(
      lift(to, settle(framing.done(), { firstOrder: true })),
      (10 * level * level * long ** 3) / (3 * ei) + (10 * plumb * plumb * long) / joist.axial,
    );
  });
});

describe('supports on springs', () => {
  /** Load, stiffness of the three springs, exact shares of a rigid-ended continuous beam: 3/16, 10/16, 3/16 of wL for stiff ones. */
  it('carry 3/8, 10/8 and 3/8 of one span when they hardly give', () => {
    const [w, l, k] = [2.5, 96, 1e8];
    const framing = startFraming();
    const nodes = [0, l, 2 * l].map((x, i) =>
      framing.node(`n${i}`, [x, 0, 0], i === 0 ? ['x', 'y', 'turnX'] : ['y', 'turnX']),
    );
    for (const [a, b] of [
      [0, 1],
      [1, 2],
    ] as const)
      framing.weigh(framing.beam('b', [nodes[a] as Node, nodes[b] as Node], { stiffness: joist }), w);
    for (const node of nodes)
      framing.link({
        joint: node.name,
        what: 'up',
        row: pointRow(node, node.at, up),
        stiffness: k,
        rest: 0,
        acts: 'push',
        ground: 'z',
      });
    const { forces } = settle(framing.done(), { firstOrder: true });
    expect(-(forces[0] as number) / (w * l)).toBeCloseTo(3 / 8, 4);
    expect(-(forces[1] as number) / (w * l)).toBeCloseTo(10 / 8, 4);
    close((forces[0] as number) + (forces[1] as number) + (forces[2] as number), -2 * w * l);
  });

  it('let go of a beam that lifts off them', () => {
    const framing = startFraming();
    const nodes = [0, 48, 96].map((x, i) => framing.node(`n${i}`, [x, 0, 0], i === 1 ? pin : ['y', 'turnX']));
    for (const i of [0, 1]) framing.beam('b', [nodes[i] as Node, nodes[i + 1] as Node], { stiffness: joist });
    const far = nodes[2] as Node;
    framing.load(pointRow(far, far.at, up), -50);
    const first = nodes[0] as Node;
    for (const node of [first, far])
      framing.link({
        joint: node.name,
        what: 'up',
        row: pointRow(node, node.at, up),
        stiffness: 1000,
        rest: 0,
        acts: 'push',
      });
    const settled = settle(framing.done(), { firstOrder: true });
    expect(settled.forces[0]).toBe(0);
    close(settled.forces[1] as number, -50);
    expect(lift(first, settled)).toBeGreaterThan(0.04);
  });
});

describe('a column', () => {
  /** Euler: π²EI/4L² for one fixed at its foot. Eight elements of consistent stiffness come within a hundredth of a percent. */
  it('fixed at its foot falls at Euler’s load', () => {
    const [l, parts] = [120, 8];
    const post = stiffnessOf({ thickness: 1.5, depth: 3.5 }, sawn);
    const euler = (Math.PI * Math.PI * post.flat) / (4 * l * l);
    const framing = startFraming();
    const nodes = Array.from({ length: parts + 1 }, (_, i) =>
      framing.node(`n${i}`, [0, 0, (i * l) / parts], i === 0 ? all : []),
    );
    for (let i = 0; i < parts; i++)
      framing.beam('c', [nodes[i] as Node, nodes[i + 1] as Node], { stiffness: post });
    const top = nodes[parts] as Node;
    framing.load(pointRow(top, top.at, up), -euler);
    const frame = framing.done();
    expect(settle(frame, { loadFactor: 0.9999 }).falls).toBeUndefined();
    expect(settle(frame, { loadFactor: 1.0001 }).falls).toBeDefined();
  });
});
