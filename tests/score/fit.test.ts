import { describe, expect, it } from 'vitest';
import { boardIds } from '../../src/core/level/planted';
import { uniform } from '../../src/core/level/draw';
import { stationsOf, upperStations } from '../../src/core/level/layout';
import type { Level } from '../../src/core/level/level';
import { sides } from '../../src/core/roof/side';
import { fitOf, measuredOn, quality } from '../../src/core/score/fit';
import { evolve } from '../../src/core/site/evolve';
import type { SiteEvent } from '../../src/core/site/event';
import { initialSite } from '../../src/core/site/initial';
import type { Standing } from '../../src/core/site/standing';
import { levelOf, trueLevel } from '../site/levels';

describe('quality of one measure', () => {
  // Tolerance 1/8, half a division 1/32: r = (|off| − 1/32) / (1/8); 1 − 0.2 r to r = 1, then 0.8 − 1.6 (r − 1).
  it.each([
    [0, 1],
    [1 / 32, 1],
    [-1 / 32, 1],
    [1 / 8, 1 - 0.2 * 0.75],
    [5 / 32, 0.8],
    [7 / 32, 0.8 - 1.6 * 0.5],
    [-3 / 16, 0.8 - 1.6 * 0.25],
    [1, 0],
  ])('%f in off is worth %f', (off, worth) => {
    expect(quality({ off, allowed: 1 / 8 })).toBeCloseTo(worth, 12);
  });
});

/** How far from its place a thing may be and still count as up: what `ridge up` means. Inches. */
const wildly = 2;

/** Everything up, nothing set with care: each thing anywhere within 2 in of its place, boards as they lie. */
const wild = (level: Level, seed: number): Standing => {
  const off = (what: string): number => (uniform(seed, what, 'wild') * 2 - 1) * wildly;
  const xs = stationsOf(level);
  const boards = [...boardIds(level)];
  const events: readonly SiteEvent[] = [
    {
      type: 'ridgeLanded',
      on: 'posts',
      high: { A: off('high.A'), B: off('high.B') },
      aside: { A: off('aside.A'), B: off('aside.B') },
    },
    ...sides.flatMap((side) =>
      xs.map((x, i): SiteEvent => ({
        type: 'placed',
        member: `rafter.${side}.${i + 1}`,
        at: 'mark',
        board: boards.pop() ?? 'board.1',
        x: x + off(`${side}.${i}`),
      })),
    ),
    ...sides.flatMap((side) =>
      xs.slice(1).map((_, i): SiteEvent => ({
        type: 'placed',
        member: `block.${side}.${i + 1}`,
        at: 'drive',
        x: (xs[i] ?? 0) + 0.75 + off(`${side}.${i}`),
      })),
    ),
    ...upperStations(level).map((n): SiteEvent => ({
      type: 'placed',
      member: `collar.${n}`,
      at: 'mark',
      x: 0,
      off: off(`collar.${n}`),
    })),
  ];
  return { level, seed, site: events.reduce(evolve, initialSite) };
};

describe('fit', () => {
  it('is nothing to measure where nothing stands', () => {
    expect(fitOf({ level: levelOf('garden-hut'), seed: 1, site: initialSite })).toBeUndefined();
  });

  it.each(['garden-hut', 'boathouse'] as const)('gives wild placement under 0.30 on the %s', (id) => {
    const level = levelOf(id);
    const fits = Array.from({ length: 60 }, (_, i) => fitOf(wild(level, i + 1)) ?? 1);
    expect(fits.reduce((a, b) => a + b, 0) / fits.length).toBeLessThan(0.3);
  });

  it('is 1 for a true frame', () => {
    const level = trueLevel('garden-hut');
    const xs = stationsOf(level);
    const events: readonly SiteEvent[] = [
      { type: 'ridgeLanded', on: 'posts', high: { A: 0, B: 0 }, aside: { A: 0, B: 0 } },
      ...sides.flatMap((side) =>
        xs.map((x, i): SiteEvent => ({
          type: 'placed',
          member: `rafter.${side}.${i + 1}`,
          at: 'mark',
          board: `board.${i + 1}`,
          x,
        })),
      ),
    ];
    expect(fitOf({ level, seed: 1, site: events.reduce(evolve, initialSite) })).toBeCloseTo(1, 9);
  });

  it('takes a pair for as good as the worse of its two rafters', () => {
    const level = trueLevel('garden-hut');
    const events: readonly SiteEvent[] = [
      { type: 'ridgeLanded', on: 'posts', high: { A: 0, B: 0 }, aside: { A: 0, B: 0 } },
      { type: 'placed', member: 'rafter.street.1', at: 'mark', board: 'board.1', x: 0.75 },
      { type: 'placed', member: 'rafter.yard.1', at: 'mark', board: 'board.2', x: 0.75 },
      { type: 'trimmed', member: 'board.2', cut: 'plumb', by: 0.5 },
    ];
    const cuts = measuredOn({ level, seed: 1, site: events.reduce(evolve, initialSite) }).filter(
      ({ feature }) => feature === 'plumbCut',
    );
    expect(cuts).toHaveLength(1);
    // Half an inch along a 9 in 12 slope is 0.4 in level: 0.5 × 12/15.
    expect(cuts[0]).toMatchObject({ at: 'rafter.yard.1' });
    expect(cuts[0]?.off).toBeCloseTo(0.4, 9);
  });
});
