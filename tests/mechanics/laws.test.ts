import { Matrix, solve } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { test as property, fc } from '@fast-check/vitest';
import type { Gable, GableRafter } from '../../src/core/mechanics/gable';
import { gableFrame } from '../../src/core/mechanics/gableFrame';
import { factored, solved } from '../../src/core/mechanics/factor';
import { settle } from '../../src/core/mechanics/settle';
import { multiplied, rowNorm } from '../../src/core/mechanics/skyline';
import { dense } from './dense';
import { unbalanced } from '../site/balanced';
import {
  alongBrace,
  bareGable,
  joistsOf,
  lastOf,
  middleOf,
  moved,
  oneSide,
  pairOf,
  rafterOf,
  settledGable,
  tacked,
  wholeGable,
} from './testGable';

/** Laws that hold for every frame, and a second opinion on its equations. */

const largest = (x: ArrayLike<number>): number =>
  Array.from(x).reduce((most, one) => Math.max(most, Math.abs(one)), 0);

describe('equations', () => {
  it.each([11, 31, 60])(
    'of %i stations are solved like a general library solves them',
    (stations) => {
      const { u, equations: asked } = settle(gableFrame(wholeGable(stations)).frame, { firstOrder: true });
      const equations = asked();
      const other = solve(dense(equations.stiffness), Matrix.columnVector([...equations.load])).to1DArray();
      const apart = other.map((x, i) => x - (u[i] as number));
      expect(largest(u)).toBeGreaterThan(1e-3);
      expect(largest(apart) / largest(u)).toBeLessThan(1e-9);
    },
    60_000,
  );

  it.each([11, 60, 200, 1000])('of %i stations leave next to nothing over', (stations) => {
    const { u, equations } = settle(gableFrame(wholeGable(stations)).frame, { firstOrder: true });
    const { stiffness, load } = equations();
    const over = multiplied(stiffness, u).map((f, i) => f - (load[i] as number));
    expect(largest(over) / (rowNorm(stiffness) * largest(u) + largest(load))).toBeLessThanOrEqual(1e-14);
  });
});

const someRafters = (gable: Gable) =>
  fc
    .array(fc.tuple(fc.boolean(), fc.constantFrom(0, 1, 2), fc.boolean()), {
      minLength: gable.stations.length,
      maxLength: gable.stations.length,
    })
    .map((stations) =>
      stations.flatMap(([home, sides, late], i): readonly GableRafter[] => {
        if (i === 0 || i === lastOf(gable)) return pairOf(i, home ? undefined : tacked);
        const so = home ? undefined : tacked;
        return sides === 2 ? pairOf(i, so) : sides === 1 ? [rafterOf(late ? 'yard' : 'street', i, so)] : [];
      }),
    );

const small = bareGable(144);
const errors = fc.record({
  long: fc.double({ min: -0.25, max: 0.25, noNaN: true }),
  open: fc.double({ min: -0.25, max: 0.25, noNaN: true }),
  bow: fc.double({ min: -0.5, max: 0.5, noNaN: true }),
  up: fc.double({ min: -0.25, max: 0.25, noNaN: true }),
});

const wronged = (
  rafters: readonly GableRafter[],
  { long, open, bow, up }: { long: number; open: number; bow: number; up: number },
): Gable => ({
  ...small,
  ridge: { bow, crown: up },
  rafters: rafters.map((one, i) => (i % 3 === 1 ? { ...one, long, open } : one)),
  plates: { ...small.plates, yard: small.stations.map((_, i) => ({ up: (up * i) / 6, out: long / 2 })) },
  ties: joistsOf(small),
  braces: [alongBrace(small)],
});

describe('any half-built row', () => {
  property.prop([someRafters(small), errors], { numRuns: 60 })(
    'is solved to the same bits when it is factored from the start as when it took over what had not changed',
    (rafters, error) => {
      const { equations, falls, u } = settle(gableFrame(wronged(rafters, error)).frame, {
        firstOrder: true,
      });
      const { stiffness, load } = equations();
      if (!falls) expect(solved(factored(stiffness), load)).toEqual(u);
    },
  );

  property.prop([someRafters(small), errors], { numRuns: 150 })(
    'rests with all its weight on what carries it',
    (rafters, error) => {
      const { settled } = settledGable(wronged(rafters, error));
      if (!settled.falls) expect(Math.abs(unbalanced(settled))).toBeLessThan(1e-9);
    },
  );

  property.prop([someRafters(small), errors], { numRuns: 60 })(
    'moves as its mirror image moves',
    (rafters, error) => {
      const gable = wronged(rafters, error);
      const [here, there] = [gable, mirrored(gable)].map((one) => settledGable(one));
      if (!here || !there) throw new Error('two were settled');
      expect(there.settled.falls === undefined).toBe(here.settled.falls === undefined);
      if (here.settled.falls) return;
      here.parts.ridge.forEach((node, i) => {
        const [a, b] = [moved(node, here.settled), moved(there.parts.ridge[i] as typeof node, there.settled)];
        expect(Math.abs(a.x - b.x)).toBeLessThan(1e-9);
        expect(Math.abs(a.y + b.y)).toBeLessThan(1e-9);
        expect(Math.abs(a.z - b.z)).toBeLessThan(1e-9);
      });
    },
  );
});

const otherSide = { street: 'yard', yard: 'street' } as const;

/** The same gable seen in a mirror along its ridge. */
const mirrored = (gable: Gable): Gable => ({
  ...gable,
  ridge: { ...gable.ridge, bow: -gable.ridge.bow },
  plates: { street: gable.plates.yard, yard: gable.plates.street },
  walls: {
    ...gable.walls,
    braces: { street: gable.walls.braces.yard, yard: gable.walls.braces.street },
  },
  rafters: gable.rafters.map((one) => {
    const side = otherSide[one.side];
    const name = `rafter.${side}.${one.station + 1}`;
    const joint = (kind: string, was: GableRafter['top']) => ({ ...was, joint: `${kind}:${name}` });
    return { ...one, side, name, top: joint('ridge', one.top), heel: joint('heel', one.heel) };
  }),
});

describe('less support', () => {
  /** Work of the loads: twice the energy; it cannot fall when something that holds is taken away. */
  const give = (gable: Gable): number => {
    const { u, equations } = settle(gableFrame(gable).frame, { firstOrder: true, neverSlips: true });
    const { load } = equations();
    return u.reduce((sum, x, i) => sum + x * (load[i] as number), 0);
  };

  it('never makes a frame stiffer', () => {
    const gable = { ...wholeGable(11), rafters: oneSide(bareGable(240)) };
    const before = give(gable);
    for (const less of [
      { ...gable, braces: [] },
      { ...gable, ties: gable.ties.slice(0, -1) },
      { ...gable, walls: { ...gable.walls, corners: ['A' as const] } },
      { ...gable, walls: { ...gable.walls, braces: { street: [], yard: [] } } },
    ])
      expect(give(less)).toBeGreaterThanOrEqual(before * (1 - 1e-12));
    expect(give({ ...gable, ties: [] })).toBeGreaterThan(before);
  });
});

it('posts that nothing reaches carry nothing', () => {
  const gable = wholeGable(11);
  const post = { name: 'post.1', kind: 'post' as const, x: 120, high: -2, aside: 0, fixed: true };
  const { settled } = settledGable({ ...gable, supports: [post] });
  const at = settled.frame.links.findIndex(({ joint, what }) => joint === 'post.1' && what === 'up');
  expect(settled.forces[at]).toBe(0);
  const lifted = settledGable({ ...gable, supports: [{ ...post, high: 0.125 }] });
  expect(-(lifted.settled.forces[at] as number)).toBeGreaterThan(100);
  expect(middleOf(gable)).toBe(5);
});
