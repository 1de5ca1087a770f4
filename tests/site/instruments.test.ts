import { describe, expect, it } from 'vitest';
import type { Level } from '../../src/core/level/level';
import { evolve } from '../../src/core/site/evolve';
import type { SiteEvent } from '../../src/core/site/event';
import { initialSite } from '../../src/core/site/initial';
import { figuredTop } from '../../src/core/site/posed';
import { offPlane } from '../../src/core/site/readings/string';
import type { Reach } from '../../src/core/site/readings/reach';
import { shows } from '../../src/core/site/shows';
import type { Standing } from '../../src/core/site/standing';
import { eventsOf } from '../../src/present/framed';
import { trueLevel } from './levels';

/** Each tool's own error, planted alone on a site where everything else is true, and how a learner catches it. */

const planted = (ranges: Partial<Level['asFound']['ranges']>): Level => {
  const level = trueLevel('hay-barn');
  return { ...level, asFound: { ...level.asFound, ranges: { ...level.asFound.ranges, ...ranges } } };
};

const seeds = [1, 2, 3, 4, 5, 6, 7, 8];
/** Noise of one reading of tape or water level, and the grid readings are kept on, inches. */
const near = 1 / 64 + 1 / 256;

/** The whole frame where it was figured, with more told after it. */
const framedSite = (level: Level, seed: number, more: readonly SiteEvent[] = []): Standing => ({
  level,
  seed,
  site: [...eventsOf(level), ...more].reduce(evolve, initialSite),
});

const reader =
  (standing: Standing) =>
  (tool: Reach['tool'], at: string, from?: string): number =>
    Number(shows(standing, from === undefined ? { tool, at } : { tool, at, from }));

describe('the tape', () => {
  const level = planted({ tapeHook: 0.125 });
  it.each(seeds)(
    'held at its inch mark shows an inch more than hooked, but for its hook (seed %i)',
    (seed) => {
      const read = reader({ level, seed, site: initialSite });
      const bias = read('tape', 'width.A') - level.plan.span;
      expect(Math.abs(bias)).toBeGreaterThanOrEqual(1 / 16 - near);
      expect(read('tape', 'width.A', 'inch') - 1).toBeCloseTo(level.plan.span, 1);
      // The same error wherever it is hooked, so that what was caught once can be taken off ever after.
      const other = read('tape', 'width.B') - (read('tape', 'width.B', 'inch') - 1);
      expect(Math.abs(other - bias)).toBeLessThan(3 * near);
    },
  );
  it('and a story pole, which has no hook, finds a ridge at its height', () => {
    const standing = framedSite(level, 3);
    const read = reader(standing);
    expect(Math.abs(read('tape', 'ridge.A.height') - figuredTop(level))).toBeGreaterThan(1 / 32);
    expect(Math.abs(read('storyPole', 'ridge.A.height', 'plumb'))).toBeLessThan(near);
  });
});

describe('the level', () => {
  it.each(seeds)('turned end for end shows its own error with the other sign (seed %i)', (seed) => {
    const level = planted({ levelBias: 0.125 });
    const read = reader(framedSite(level, seed));
    const [a, b] = [read('level', 'ridge', 'A'), read('level', 'ridge', 'B')];
    expect(Math.abs(a - b)).toBeGreaterThanOrEqual(2 * (1 / 16) - 1 / 64);
    expect(Math.abs(a + b) / 2).toBeLessThan(1 / 128);
  });
});

describe('the short level', () => {
  const low: SiteEvent = { type: 'ridgeMoved', high: { A: 0, B: 2 }, aside: { A: 0, B: 0 } };
  it.each(seeds)(
    'tells half the fall of a long one, with half its error, by the same marks (seed %i)',
    (seed) => {
      const read = reader(framedSite(planted({ levelBias: 0.125 }), seed, [low]));
      const both = (at: string): readonly [number, number] => {
        const [a, b] = [read('level', at, 'A'), read('level', at, 'B')];
        return [(a + b) / 2, (a - b) / 2];
      };
      const [[fall, error], [less, own]] = [both('ridge'), both('ridge.short')];
      expect(Math.abs(fall)).toBeGreaterThan(1 / 16);
      expect(less / fall).toBeCloseTo(0.5, 1);
      expect(own).toBeCloseTo(error / 2, 2);
    },
  );
});

it.each(['toString', 'constructor', 'ridge.long'])(
  'a level at %s shows nothing: there is no such place',
  (at) => {
    expect(shows(framedSite(planted({}), 1), { tool: 'level', at, from: 'A' })).toBeUndefined();
  },
);

describe('the story pole', () => {
  it('held by eye only ever says that the ridge is high, and never twice the same', () => {
    const turn: SiteEvent = { type: 'spent', minutes: 0 };
    const said = Array.from({ length: 12 }, (_, n) => {
      const more = Array.from({ length: n }, () => turn);
      return reader(framedSite(planted({}), 5, more))('storyPole', 'ridge.B.height');
    });
    expect(Math.min(...said)).toBeGreaterThan(-near);
    expect(Math.max(...said)).toBeGreaterThan(1 / 32);
    expect(new Set(said).size).toBeGreaterThan(5);
  });
});

describe('the pattern', () => {
  it('laid to tails nobody cut finds boards long that are not; in its notch it does not', () => {
    const read = reader(framedSite(planted({}), 5));
    const boards = Array.from({ length: 12 }, (_, n) => `board.${String(n + 1)}`);
    expect(Math.max(...boards.map((board) => Math.abs(read('pattern', board))))).toBeLessThan(near);
    expect(Math.max(...boards.map((board) => Math.abs(read('pattern', board, 'tail'))))).toBeGreaterThan(
      1 / 8,
    );
  });
});

describe('the water level', () => {
  it.each(seeds)(
    'held together at the start shows the air in its hose, the same as anywhere (seed %i)',
    (seed) => {
      const read = reader({ level: planted({ waterBias: 0.25 }), seed, site: initialSite });
      const air = read('waterLevel', 'plate.street.A');
      expect(Math.abs(air)).toBeGreaterThanOrEqual(1 / 8 - near);
      expect(Math.abs(read('waterLevel', 'plate.yard.B') - air)).toBeLessThan(2 * near);
    },
  );
});

describe('the square', () => {
  it.each(seeds)('turned over shows its own error with the other sign (seed %i)', (seed) => {
    const read = reader({ level: planted({ squareBias: 0.125 }), seed, site: initialSite });
    const [one, other] = [read('square', 'board.4'), read('square', 'board.4', 'turned')];
    expect(Math.abs(one)).toBeGreaterThan(1 / 64);
    expect(one + other).toBeCloseTo(0, 2);
  });
});

describe('a string', () => {
  const level = planted({ lineSlack: 0.9 });
  const stretched: SiteEvent = { type: 'lined', line: 'string.yard', side: 'yard', off: 0.75 };
  const middle = 'plane.yard.9';
  it.each(seeds)('that is new hangs lower than once it was pulled again (seed %i)', (seed) => {
    const slack = reader(framedSite(level, seed, [stretched]))('string', middle);
    const taut = reader(framedSite(level, seed, [stretched, stretched]))('string', middle);
    expect(taut - slack).toBeGreaterThan(1 / 32);
    expect(taut).toBeLessThan(0.75);
  });
  it('sags by w·L²/8T: four times as much at twice the length', () => {
    // Over the quarter of its length a parabola hangs three quarters of what it does in its middle.
    const read = reader(framedSite(level, 5, [stretched]));
    const [quarter, half] = ['plane.yard.5', middle].map((at) => 0.75 - read('string', at));
    expect((quarter as number) / (half as number)).toBeGreaterThan(0.7);
    expect((quarter as number) / (half as number)).toBeLessThan(0.8);
  });
  it('that a high rafter lifts tells its neighbours wrong; on gauge blocks it clears it', () => {
    const site = planted({});
    const bent = (off: number): Standing => {
      const mends: SiteEvent[] = [{ type: 'wallMended', wall: 'plate.yard.mid', how: 'shim', by: 0.5 }];
      return framedSite(site, 1, [...mends, { ...stretched, off }, { ...stretched, off }]);
    };
    const [bare, clear] = [bent(0), bent(0.75)];
    const high = Math.max(...[8, 9, 10].map((n) => offPlane(bare, 'yard', n) ?? 0));
    expect(high).toBeGreaterThan(0.2);
    // Bare, the string lies on the high one and shows nothing there; its neighbours seem low by as much as it stands up.
    expect(Math.min(...[8, 9, 10].map((n) => reader(bare)('string', `plane.yard.${n}`)))).toBeCloseTo(0, 2);
    const [honest, lifted] = [clear, bare].map((s) => reader(s)('string', 'plane.yard.3'));
    const truth = -(offPlane(clear, 'yard', 3) ?? 0);
    expect(Math.abs((honest as number) - 0.75 - truth)).toBeLessThan(1 / 16);
    expect(Math.abs((lifted as number) - truth)).toBeLessThan(high);
  });
});

describe('the bob', () => {
  it('read while it swings tells another thing each time; brought to rest, one', () => {
    const read = (after: number, from?: string): number => {
      const said: SiteEvent = { type: 'spent', minutes: 0 };
      return reader(framedSite(planted({}), 2, Array<SiteEvent>(after).fill(said)))(
        'bob',
        'ridge.A.plumb',
        from,
      );
    };
    const swinging = new Set([0, 1, 2, 3].map((n) => read(n)));
    expect(swinging.size).toBeGreaterThan(2);
    expect(new Set([0, 1, 2, 3].map((n) => read(n, 'still'))).size).toBe(1);
  });
});
