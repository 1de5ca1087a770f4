import { describe, expect, it } from 'vitest';
import { pointRow } from '../../src/core/mechanics/frame';
import { startFraming } from '../../src/core/mechanics/framing';
import { forceOf, pullIn, pushOnNode, weightOf } from '../../src/core/mechanics/loadPath';
import { stiffnessOf } from '../../src/core/mechanics/section';
import { settle } from '../../src/core/mechanics/settle';
import { poundsAnInch } from '../../src/core/stock/lumber';
import { engineered, sawn } from '../../src/core/stock/wood';
import { settledGable, wholeGable } from './testGable';

describe('forces read from a frame at rest', () => {
  it('a stick held at one end and pulled by 100 lb along itself pulls 100 lb, and its end holds 100 lb', () => {
    const framing = startFraming();
    const all = ['x', 'y', 'z', 'turnX', 'turnY', 'turnZ'] as const;
    const from = framing.node('from', [0, 0, 0], all);
    const to = framing.node('to', [30, 0, 40]);
    const beam = framing.beam('stick', [from, to], {
      stiffness: stiffnessOf({ thickness: 1.5, depth: 5.5 }, sawn),
    });
    framing.load(pointRow(to, to.at, [0.6, 0, 0.8]), 100);
    const { u } = settle(framing.done());
    expect(pullIn(beam, u)).toBeCloseTo(100, 9);
  });

  it('a stick cut long between two walls pushes by strain times stiffness', () => {
    const framing = startFraming();
    const all = ['x', 'y', 'z', 'turnX', 'turnY', 'turnZ'] as const;
    const ends = [framing.node('a', [0, 0, 0], all), framing.node('b', [100, 0, 0], all)] as const;
    const stiffness = stiffnessOf({ thickness: 1.5, depth: 5.5 }, sawn);
    const long = new Float64Array(12);
    long[6] = 0.01;
    const beam = framing.beam('stick', ends, { stiffness, unstressed: long });
    // E 1.4e6 psi × 8.25 in² × 0.01 / 100.
    expect(pullIn(beam, new Float64Array(0))).toBeCloseTo(-1155, 6);
  });

  // Statics of a pair of rafters tied at its feet, taken about the seat: any text on simple trusses. What nails and the
  // depth of the plumb cut take up of it is the margin.
  it('a tied pair: pull in the tie is weight times its arm over the height, within an eighth', () => {
    const gable = wholeGable(11);
    const { parts, settled } = settledGable(gable);
    const one = parts.rows.street[5];
    if (!one) throw new Error('no rafter');
    const { shape } = gable;
    const [r, h] = [one.top.at[1] - one.heel.at[1], one.top.at[2] - 3.6];
    const perLevel = poundsAnInch(shape.rafter, sawn) * Math.sqrt(1 + shape.m * shape.m);
    const tail = shape.overhang + shape.seat / 2;
    const ridge = (poundsAnInch(shape.ridge, engineered) * 24) / 2;
    const pull = ((perLevel * r * r) / 2 + ridge * r - (perLevel * tail * tail) / 2) / h;
    const found =
      forceOf(settled, ({ joint }) => joint === 'joist.6') +
      Math.abs(pushOnNode(settled, one.rafter.heel.joint, one.heel)[1]);
    expect(found / pull).toBeGreaterThan(7 / 8);
    expect(found / pull).toBeLessThan(9 / 8);
    // The push along the rafter is that, turned into its slope.
    expect((-pullIn(one.beam, settled.u) * 2) / Math.sqrt(5) / pull).toBeGreaterThan(7 / 8);
  });

  it('both sides of a true row push alike, and seats carry all that weighs', () => {
    const { parts, settled } = settledGable(wholeGable(8));
    let down = 0;
    for (const one of parts.rafters.values()) down += pushOnNode(settled, one.rafter.heel.joint, one.heel)[2];
    expect(down / weightOf(settled.frame)).toBeCloseTo(1, 9);
    for (const [i, street] of parts.rows.street.entries()) {
      const yard = parts.rows.yard[i];
      if (!street || !yard) throw new Error('no pair');
      expect(pullIn(street.beam, settled.u)).toBeCloseTo(pullIn(yard.beam, settled.u), 6);
    }
  });
});
