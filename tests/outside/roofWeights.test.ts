import { describe, expect, it } from 'vitest';
import { figure } from '../../src/core/roof/figure';
import { listsOf } from '../../src/core/roof/lists';
import { planOf, type Changes } from '../roof/roofs';

/** What a roof's sticks weigh, against a published table of softwood dimensions: dry wood at 35 lb per cubic foot. */

const weightsFor = (changes: Changes = {}) => {
  const plan = planOf(changes);
  return listsOf(plan, figure(plan)).weights;
};

describe('published weights', () => {
  // Table of softwood lumber dimensions (read): 2×8 2.64 and 2×4 1.28 lb per foot, to the hundredth.
  it.each([
    ['joist', 2.64, 284.875 / 12],
    ['collar', 1.28, 105.47432855791567 / 12],
  ])('a %s weighs %f lb a foot', (member, pounds, feet) => {
    const row = weightsFor().sticks.find((stick) => stick.member === member);
    expect((row?.each ?? 0) / feet).toBeGreaterThan(pounds - 0.005);
    expect((row?.each ?? 0) / feet).toBeLessThan(pounds + 0.005);
  });

  // Reckoned anew from the same table: a 16 ft 2×10 about 54 lb, to the pound.
  it('a ridge of 16 ft weighs about 54 lb', () => {
    const ridge = weightsFor({ length: 192 }).sticks.find(({ kind }) => kind === 'ridge');
    expect(Math.round(ridge?.each ?? 0)).toBe(54);
  });

  // PS 20, from a published reprint of its table (read): dry is at most 19 percent.
  it('are of wood that is sold as dry', () => {
    expect(weightsFor().moisture).toBe(19);
    expect(weightsFor().density.sawn).toBe(35);
  });
});
