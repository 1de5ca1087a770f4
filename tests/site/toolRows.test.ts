import { describe, expect, it } from 'vitest';
import { drifts } from '../../src/core/faults/rows';
import { tools, type Misuse, type ToolRow } from '../../src/core/instruments/rows';
import { evolve } from '../../src/core/site/evolve';
import type { SiteEvent } from '../../src/core/site/event';
import { initialSite } from '../../src/core/site/initial';
import type { Reach } from '../../src/core/site/readings/reach';
import { shows } from '../../src/core/site/shows';
import type { Level } from '../../src/core/level/level';
import { eventsOf } from '../../src/present/framed';
import { trueLevel } from './levels';

/** Every way of holding a tool wrong, and every way of catching it, that the table of tools names, shown to do what it says. */

const base = trueLevel('hay-barn');
const erring: Level = {
  ...base,
  asFound: {
    ...base.asFound,
    ranges: {
      ...base.asFound.ranges,
      tapeHook: 0.125,
      levelBias: 0.125,
      waterBias: 0.25,
      squareBias: 0.125,
      lineSlack: 0.9,
    },
  },
};
const string: SiteEvent = { type: 'lined', line: 'string.yard', side: 'yard', off: 0.75 };
const bare: SiteEvent = { ...string, off: 0 };
const shim: SiteEvent = { type: 'wallMended', wall: 'plate.yard.mid', how: 'shim', by: 0.5 };

/** What a tool shows on the whole frame, after so much more was told. */
const shown = (level: Level, reach: Reach, more: readonly SiteEvent[] = []): number => {
  const site = [...eventsOf(level), ...more].reduce(evolve, initialSite);
  return Number(shows({ level, seed: 4, site }, reach));
};
/** How far two readings of the same thing are apart. */
const apart = (a: number, b: number): number => Math.abs(a - b);
const across: Reach = { tool: 'tape', at: 'width.A' };
const ridge = (from: 'A' | 'B'): Reach => ({ tool: 'level', at: 'ridge', from });
const square: Reach = { tool: 'square', at: 'board.4' };
const middle: Reach = { tool: 'string', at: 'plane.yard.9' };
const start: Reach = { tool: 'waterLevel', at: 'plate.street.A' };
const bob: Reach = { tool: 'bob', at: 'ridge.A.plumb' };
const turn: SiteEvent = { type: 'spent', minutes: 0 };

const pole: Reach = { tool: 'storyPole', at: 'ridge.A.height' };
const leans = Array.from({ length: 10 }, (_, n) => Array.from({ length: n }, () => turn));

/** How far a reading taken this wrong way is off, inches; what it is off from is known, since nothing else errs. */
const wrong: Readonly<Record<Misuse, () => number>> = {
  // Sighted, a plate that is out by an eighth is called straight.
  coarse: () => {
    const out: SiteEvent = { type: 'wallMended', wall: 'plate.yard.mid', how: 'pull', by: 0.11 };
    const at = 'plate.yard.mid';
    return apart(shown(base, { tool: 'eye', at }, [out]), shown(base, { tool: 'string', at }, [out]));
  },
  hooked: () => apart(shown(erring, across), base.plan.span),
  hopped: () => {
    const at = 'layout.yard.9';
    return apart(shown(erring, { tool: 'tape', at, from: 'last' }), shown(base, { tool: 'tape', at }));
  },
  oneWay: () => Math.min(Math.abs(shown(erring, ridge('A'))), Math.abs(shown(erring, square))),
  apart: () => Math.abs(shown(erring, { tool: 'waterLevel', at: 'plate.yard.B' })),
  slack: () => apart(shown(erring, middle, [string]), shown(base, middle, [string])),
  // Of its neighbour to a rafter that lifts the line, beside what the same line says on blocks.
  touching: () => {
    const near: Reach = { tool: 'string', at: 'plane.yard.6' };
    return apart(shown(base, near, [shim, bare, bare]), shown(base, near, [shim, string, string]) - 0.75);
  },
  swinging: () => apart(shown(base, bob, [turn]), shown(base, { ...bob, from: 'still' }, [turn])),
  // Over three rafters a plate that rises evenly to its middle looks straight; the string finds it.
  short: () => {
    const at = 'plane.yard.5';
    const seen = shown(base, { tool: 'straightedge', at }, [shim]);
    return apart(seen, 0.75 - shown(base, { tool: 'string', at }, [shim, string, string]));
  },
  // Ten poles held by eye: what the worst of them says of a ridge at its height.
  leaning: () => Math.max(...leans.map((turns) => Math.abs(shown(base, pole, turns)))),
  byTail: () => apart(shown(base, { tool: 'pattern', at: 'board.4', from: 'tail' }), 0),
};

/** What is left of a tool's own error once it was caught this way, and how large it was. */
const caught: Readonly<Partial<Record<NonNullable<ToolRow['caught']>, () => readonly [number, number]>>> = {
  inch: () => [apart(shown(erring, { ...across, from: 'inch' }) - 1, base.plan.span), wrong.hooked()],
  B: () => [
    Math.abs(shown(erring, ridge('A')) + shown(erring, ridge('B'))) / 2,
    Math.abs(shown(erring, ridge('A'))),
  ],
  turned: () => [
    Math.abs(shown(erring, square) + shown(erring, { ...square, from: 'turned' })) / 2,
    Math.abs(shown(erring, square)),
  ],
  together: () => {
    const far: Reach = { tool: 'waterLevel', at: 'plate.yard.B' };
    return [apart(shown(erring, far), shown(erring, start)), Math.abs(shown(erring, far))];
  },
  stretchedAgain: () => {
    const truth = shown(base, middle, [string, string]);
    return [
      apart(shown(erring, middle, [string, string]), truth),
      apart(shown(erring, middle, [string]), truth),
    ];
  },
  plumb: () => [
    Math.max(...leans.map((turns) => Math.abs(shown(base, { ...pole, from: 'plumb' }, turns)))),
    wrong.leaning(),
  ],
  still: () => [Math.abs(shown(base, { ...bob, from: 'still' }, [turn])), wrong.swinging()],
};

const rows = Object.values(tools);
/** Two readings' noise and the grid they are kept on, inches. */
const noise = 2 * (1 / 64) + 1 / 128;

describe('a tool', () => {
  it.each(rows.flatMap(({ id, misuse }) => misuse.map((way) => [id, way] as const)))(
    '%s, %s, misleads',
    (_, way) => {
      expect(wrong[way]()).toBeGreaterThan(noise);
    },
  );

  it.each(rows.flatMap(({ id, caught: how }) => (how === undefined ? [] : [[id, how] as const])))(
    '%s is caught: %s',
    (_, how) => {
      const [left, error] = caught[how]?.() ?? [1, 0];
      expect(error).toBeGreaterThan(noise);
      expect(left).toBeLessThan(noise);
    },
  );

  it.each(rows.filter(({ bias }) => bias !== undefined))(
    '$id that errs is among what drifts, and finds itself',
    ({ id }) => {
      const own = drifts.filter(({ where, finds }) => where === 'tool' && finds.includes(id));
      expect(own.some(({ shows: signs }) => signs.includes('twoReadings'))).toBe(true);
    },
  );
});
