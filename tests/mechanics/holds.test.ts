import { describe, expect, it } from 'vitest';
import type { Gable, GableBlock } from '../../src/core/mechanics/gable';
import { settle } from '../../src/core/mechanics/settle';
import { gableFrame } from '../../src/core/mechanics/gableFrame';
import { sides } from '../../src/core/roof/side';
import {
  alongBrace,
  bareGable,
  every,
  joistsOf,
  lastOf,
  loadFactor,
  middleOf,
  midRidge,
  nailed,
  pairOf,
  settledGable,
  tacked,
  type Framed,
} from './testGable';

/** Blocks between rafters and straps over the ridge: what they hold, and what they leave alone. */

const long = bareGable(408);
const row: Gable = { ...long, ties: joistsOf(long), rafters: every(long).flatMap((i) => pairOf(i)) };

const blocksOf = (gable: Gable, { end = nailed, plate = nailed } = {}): readonly GableBlock[] =>
  sides.flatMap((side) =>
    every(gable)
      .slice(1)
      .flatMap((i) => {
        const at = (station: number, which: string): GableBlock => {
          const name = `blockEnd:block.${side}.${i}.${which}`;
          return { name, side, station, end, plate };
        };
        return [at(i - 1, 'near'), at(i, 'far')];
      }),
  );

/** How far the heel in the middle of a row has rolled over along the ridge, radians. */
const rollOf = ({ parts, settled }: Framed): number => {
  const heel = parts.rows.street[middleOf(long)]?.heel;
  return Math.abs(settled.u[heel?.dofs[4] as number] as number);
};

describe('blocks', () => {
  const blocked: Gable = { ...row, blocks: blocksOf(row) };
  const [bare, held] = [settledGable(row), settledGable(blocked)];

  it('hold the heels of a row that leans against rolling over', () => {
    expect(rollOf(bare)).toBeGreaterThan(1e-3);
    expect(rollOf(held)).toBeLessThan(0.85 * rollOf(bare));
  });

  it('do not stand in for a brace along the ridge: heads lean on', () => {
    expect(midRidge(held).x).toBeLessThan(midRidge(bare).x);
    expect(midRidge(held).x).toBeGreaterThan(1);
    expect(loadFactor(blocked)).toBeGreaterThanOrEqual(loadFactor(row));
    const onTacks = { ...blocked, rafters: every(long).flatMap((i) => pairOf(i, tacked)) };
    expect(settledGable(onTacks).settled.falls).toBeDefined();
  });

  it('hold less on tacks than nailed', () => {
    const loose = settledGable({ ...row, blocks: blocksOf(row, { end: tacked, plate: tacked }) });
    expect(rollOf(loose)).toBeGreaterThan(rollOf(held));
    expect(rollOf(loose)).toBeLessThan(rollOf(bare));
  });

  it('leave a roof that stands plumb and level as it is', () => {
    // Plumb: no push along, nothing cut wrong; blocks hold only the hair by which a sagging ridge turns its pairs.
    const moves = (gable: Gable) => settle(gableFrame(gable).frame, { firstOrder: true });
    const [without, within] = [moves(row), moves(blocked)];
    within.u.forEach((x, i) => expect(Math.abs(x - (without.u[i] as number))).toBeLessThan(1e-4));
  });

  it('carry more the farther they were nailed off the place they are held to, until their nails give', () => {
    const off = (rest: number) => {
      const blocks = blocksOf(row).map((one, i) => (i === 8 ? { ...one, rest } : one));
      const { settled } = settledGable({ ...blocked, blocks, braces: [alongBrace(row)] });
      const at = settled.frame.links.findIndex(({ joint }) => joint === blocks[8]?.name);
      return { force: Math.abs(settled.forces[at] as number), gave: settled.gave };
    };
    expect(off(0.02).force).toBeGreaterThan(1.5 * off(0.01).force);
    expect(off(0.01).gave).toEqual([]);
    // Half of the plate's three nails hold an end: 1.5 × 120 lb.
    expect(off(1).force).toBeCloseTo(180, 6);
  });
});

describe('straps', () => {
  const braced: Gable = { ...row, braces: [alongBrace(row)] };
  const strapped = (rest: number) => {
    const straps = [{ name: 'strap:strap.9', station: 8, nails: 6, rest }];
    const framed = settledGable({ ...braced, straps });
    const at = framed.settled.frame.links.findIndex(({ joint }) => joint === 'strap:strap.9');
    return { ...framed, force: framed.settled.forces[at] as number };
  };

  it('pull when they are short, and hang slack when they are long', () => {
    expect(strapped(0.03).force).toBeLessThan(-50);
    expect(strapped(-0.1).force).toBe(0);
    const [slack, none] = [strapped(-0.1), settledGable(braced)];
    slack.settled.u.forEach((x, i) =>
      expect(Math.abs(x - (none.settled.u[i] as number))).toBeLessThan(1e-12),
    );
  });

  it('give at three nails a side, and keep that pull', () => {
    const short = strapped(1);
    expect(short.settled.gave.map(({ grip }) => grip.joint)).toContain('strap:strap.9');
    expect(-short.force).toBeCloseTo(360, 6);
  });
});

it('a frame with blocks and straps never gives more than without', () => {
  const give = (gable: Gable): number => {
    const { u, equations } = settle(gableFrame(gable).frame, { firstOrder: true, neverSlips: true });
    const { load } = equations();
    return u.reduce((sum, x, i) => sum + x * (load[i] as number), 0);
  };
  const one: Gable = {
    ...row,
    ties: [],
    rafters: row.rafters.filter(
      ({ side, station }) => side === 'street' || station === 0 || station === lastOf(row),
    ),
  };
  const straps = [{ name: 'strap:strap.1', station: 0, nails: 6 }];
  expect(give({ ...one, blocks: blocksOf(one), straps })).toBeLessThanOrEqual(give(one) * (1 + 1e-12));
});

describe('a tacked heel pulled until its tacks give', () => {
  // Every pair is tied and braced along; one heel was tacked while its rafter stood off the wall, and is drawn to it.
  const heel = `heel:rafter.street.${middleOf(long) + 1}`;
  const withRest = (rest: readonly number[]): Gable => ({
    ...row,
    braces: [alongBrace(row)],
    rafters: row.rafters.map((one) =>
      one.heel.joint === heel ? { ...one, heel: { ...tacked, joint: heel, rest } } : one,
    ),
  });
  const drawnTo = [0, 0.3, 0, 0, 0, 0];
  const drawn = settledGable(withRest(drawnTo));
  const gave = drawn.settled.gave.find(({ grip }) => grip.joint === heel);
  const nailsOf = ({ settled }: Framed): readonly number[] =>
    ['nailX', 'nailY', 'nailZ'].map((what) => {
      const at = settled.frame.links.findIndex((one) => one.joint === heel && one.what === what);
      return settled.forces[at] as number;
    });

  it('carries what its tacks can and no more', () => {
    expect(drawn.settled.gave).toHaveLength(1);
    // Two tacks at 60 lb.
    expect(Math.hypot(...nailsOf(drawn))).toBeCloseTo(120, 6);
  });

  it('still stands, and is held across the way it slips', () => {
    expect(drawn.settled.falls).toBeUndefined();
    const bare = { ...withRest([]), rafters: row.rafters.filter(({ heel: { joint } }) => joint !== heel) };
    expect(midRidge(drawn).x).toBeCloseTo(midRidge(settledGable(bare)).x, 2);
  });

  it('is at rest where it came to lie: settled again from there it slips no further', () => {
    // Without what leaning adds, which a joint that slips meets softer than one at rest.
    const [before, again] = [drawnTo, [...(gave?.rests ?? []), 0, 0, 0]].map(
      (rest) => settledGable(withRest(rest), { firstOrder: true }).settled,
    );
    expect(again?.gave).toEqual([]);
    again?.u.forEach((x, i) => expect(Math.abs(x - (before?.u[i] as number))).toBeLessThan(1e-9));
  });
});
