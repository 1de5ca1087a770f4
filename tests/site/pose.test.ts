import { describe, expect, it } from 'vitest';
import { evolve } from '../../src/core/site/evolve';
import { initialSite } from '../../src/core/site/initial';
import { pose } from '../../src/core/site/posed';
import type { SiteEvent } from '../../src/core/site/event';
import type { Standing } from '../../src/core/site/standing';
import { trueLevel } from './levels';

const level = trueLevel('garden-hut');
const m = 9 / 12;

const withRidge = (high: number, aside = 0, extra: readonly SiteEvent[] = []): Standing => {
  const events: readonly SiteEvent[] = [
    { type: 'ridgeLanded', on: 'posts', high: { A: high, B: high }, aside: { A: aside, B: aside } },
    { type: 'placed', member: 'rafter.yard.1', at: 'mark', board: 'board.1', x: 0.75 },
    { type: 'placed', member: 'rafter.street.1', at: 'mark', board: 'board.2', x: 0.75 },
    ...extra,
  ];
  return { level, seed: 1, site: events.reduce(evolve, initialSite) };
};
const gaps = (standing: Standing, side: 'yard' | 'street' = 'yard') => {
  const found = pose(standing).rafters[`rafter.${side}.1`];
  if (!found) throw new Error('no rafter');
  return found.gaps;
};

describe('where a rafter comes to rest', () => {
  it('sits everywhere on a true ridge', () => {
    const { seat, heelCut, plumbTop, plumbBottom } = gaps(withRidge(0));
    for (const gap of [seat, heelCut, plumbTop, plumbBottom]) expect(gap).toBeCloseTo(0, 9);
  });

  // Trade practice: a ridge high by d stands the seat off by d with the heel cut hard against the wall.
  it.each([1 / 16, 1 / 4, 1])('stands its seat off by what the ridge is high: %f in', (d) => {
    const found = gaps(withRidge(d));
    expect(found.seat).toBeCloseTo(d, 9);
    expect(found.heelCut).toBeCloseTo(0, 9);
  });

  // Trade practice: low by d, the seat bears and the heel cut stands off by d times the slope.
  it.each([1 / 16, 1 / 4, 1])('stands its heel cut off by the slope of what the ridge is low: %f in', (d) => {
    const found = gaps(withRidge(-d));
    expect(found.seat).toBeCloseTo(0, 9);
    expect(found.heelCut).toBeCloseTo(d * m, 9);
  });

  it('mirrors when the ridge is pushed the other way', () => {
    const over = withRidge(0.25, 0.125);
    const back = withRidge(0.25, -0.125);
    expect(gaps(over, 'yard').plumbBottom).toBeCloseTo(gaps(back, 'street').plumbBottom, 12);
    expect(gaps(over, 'street').seat).toBeCloseTo(gaps(back, 'yard').seat, 12);
  });

  it('stands open along the whole cut when the ridge is pushed away from it', () => {
    const found = gaps(withRidge(0, 0.25), 'street');
    expect(found.plumbTop).toBeCloseTo(0.25, 9);
    expect(found.plumbBottom).toBeCloseTo(0.25, 9);
  });

  it('opens at the bottom of the plumb cut when a low ridge lays the rafter flatter', () => {
    const found = gaps(withRidge(-0.5));
    expect(found.plumbTop).toBeCloseTo(0, 9);
    expect(found.plumbBottom).toBeGreaterThan(0);
    // Turning by 0.5 in over the level length of the body opens a 6.875 in cut by 0.5 × 6.875 / 71.25.
    expect(found.plumbBottom).toBeCloseTo((0.5 * 6.875) / 71.25, 6);
  });

  it('follows a cut: a rafter trimmed by a quarter falls short by that along the slope', () => {
    const standing = withRidge(0, 0, [{ type: 'trimmed', member: 'board.1', cut: 'plumb', by: 0.25 }]);
    expect(gaps(standing).plumbTop).toBeCloseTo(0.25 / Math.sqrt(1 + m * m), 9);
  });
});
