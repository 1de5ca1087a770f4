import { describe, expect, it } from 'vitest';
import type { Action } from '../../src/core/site/action';
import { figuredPost } from '../../src/core/site/decidePost';
import { clearBay, pose } from '../../src/core/site/posed';
import { replay } from '../../src/core/hands/opened';
import { take } from '../../src/core/site/take';
import { boardIds, plantedAt } from '../../src/core/level/planted';
import { stationsOf } from '../../src/core/level/layout';
import { levelOf, trueLevel } from './levels';
import type { Level } from '../../src/core/level/level';

/** What skipping a step really does here: geometry and counting, nothing scripted. */

const hut = trueLevel('garden-hut');
const grown = (inches: number): Level => ({
  ...hut,
  asFound: { ...hut.asFound, ranges: { ...hut.asFound.ranges, growth: inches } },
});
const post = Math.round(figuredPost({ level: hut }) * 64) / 64;

const up: readonly Action[] = [
  { type: 'makeReady', what: 'platform', at: 'site' },
  { type: 'makeReady', what: 'gear', at: 'site' },
  { type: 'setPost', at: 1, height: post, fixed: 'both' },
  { type: 'setPost', at: 2, height: post, fixed: 'both' },
  { type: 'place', member: 'ridge', at: 'posts' },
];
const marks: readonly Action[] = (['plate.street', 'plate.yard', 'ridge'] as const).map((on) => ({
  type: 'mark',
  on,
  datum: 'endA',
  spacing: 24,
  faces: 2,
}));
const rafter = (n: number, at: 'mark' | 'block' = 'mark'): Action => ({
  type: 'place',
  member: `rafter.yard.${n}`,
  at,
});
const run = (level: Level, ...actions: readonly Action[]) => replay({ level, seed: 5, mode: 'own' }, actions);
const xOf = (attempt: ReturnType<typeof run>, n: number): number =>
  attempt.site.members[`rafter.yard.${n}`]?.x ?? Number.NaN;

describe('layout', () => {
  it('lands on its marks when it was marked, and off them by eye when it was not', () => {
    const figured = stationsOf(hut)[2] as number;
    expect(xOf(run(hut, ...up, ...marks, rafter(3)), 3)).toBe(figured);
    expect(Math.abs(xOf(run(hut, ...up, rafter(3)), 3) - figured)).toBeGreaterThan(1 / 64);
  });

  it('grows unseen bay by bay when each rafter is set tight to its block', () => {
    const level = grown(1 / 8);
    const attempt = run(level, ...up, rafter(1), ...[2, 3, 4, 5, 6].map((n) => rafter(n, 'block')));
    const figured = stationsOf(level);
    const off = [2, 3, 4, 5, 6].map((n) => xOf(attempt, n) - (figured[n - 1] as number));
    const step = off.slice(1).map((x, i) => x - (off[i] as number));
    // Every bay grows by what the stock stands thicker less what the block is cut short; the sum shows from the datum.
    step.forEach((by) => expect(by).toBeCloseTo(step[0] as number, 9));
    expect(off[4]).toBeCloseTo((off[0] as number) + 4 * (step[0] as number), 9);
    expect(clearBay(attempt, 'yard', 4)).toBeCloseTo(24 - 1.5 - 1 / 16, 9);
  });

  it('a fat block does not drop in; driven, it pushes the next rafter off its mark', () => {
    const level = grown(1 / 4);
    const before = run(level, ...up, ...marks, rafter(3), rafter(4));
    const tried = take(before, { type: 'place', member: 'block.yard.3', at: 'drop' });
    expect(tried.steps.at(-1)?.outcome).toEqual({ ok: false, why: 'blockTooLong' });
    const driven = take(before, { type: 'place', member: 'block.yard.3', at: 'drive' });
    expect(xOf(driven, 4)).toBeGreaterThan(xOf(before, 4));
    const trimmed = [
      { type: 'trim', member: 'block.yard.3', cut: 'end', by: 0.25 } as const,
      { type: 'place', member: 'block.yard.3', at: 'drop' } as const,
    ].reduce(take, before);
    expect(trimmed.steps.at(-1)?.outcome.ok).toBe(true);
    expect(xOf(trimmed, 4)).toBe(xOf(before, 4));
  });
});

describe('the ridge', () => {
  it('comes down when its posts go and nothing else holds it', () => {
    const attempt = run(hut, ...up, { type: 'takeOut', member: 'post.1' });
    expect(attempt.site.down).toBe('nothingCarriesTheRidge');
    expect(pose(attempt).fallen).toMatchObject({ way: 'downward' });
    // The run has ended: a fall is not taken back.
    const back = take(attempt, { type: 'undo', step: attempt.steps.length - 1 });
    expect(back.steps.at(-1)?.outcome).toEqual({ ok: false, why: 'over' });
    expect(back.site.down).toBe('nothingCarriesTheRidge');
  });

  it('is not pulled from under somebody', () => {
    const attempt = run(
      hut,
      ...up,
      { type: 'stand', who: 'helper', where: 'platform' },
      { type: 'takeOut', member: 'post.1' },
    );
    expect(attempt.steps.at(-1)?.outcome).toEqual({ ok: false, why: 'propWithSomeoneUnder', stop: true });
    expect(attempt.site.down).toBeUndefined();
    expect(attempt.site.stops).toHaveLength(1);
  });

  it('does not move any more once an end pair is nailed home', () => {
    const pair = (['street', 'yard'] as const).flatMap((side): Action[] => [
      { type: 'place', member: `rafter.${side}.1`, at: 'mark' },
      { type: 'tack', joint: `ridge:rafter.${side}.1`, nails: 2 },
      { type: 'nailOff', joint: `ridge:rafter.${side}.1` },
      { type: 'nailOff', joint: `heel:rafter.${side}.1` },
    ]);
    const attempt = run(hut, ...up, ...pair, { type: 'raise', end: 'A', by: 0.25 });
    expect(attempt.steps.at(-1)?.outcome).toEqual({ ok: false, why: 'ridgeNailed' });
  });

  it('hangs too high to nail: a heel an inch off the plate takes no tack', () => {
    const attempt = run(hut, ...up, { type: 'raise', end: 'both', by: 1 }, rafter(1), {
      type: 'tack',
      joint: 'heel:rafter.yard.1',
      nails: 2,
    });
    expect(attempt.steps.at(-1)?.outcome).toEqual({ ok: false, why: 'nothingToNailInto' });
  });
});

describe('boards', () => {
  const level = levelOf('garden-hut');
  it('a crown-down board dips below the plane of a sound one', () => {
    const planted: Level = {
      ...hut,
      asFound: { ...hut.asFound, planted: [{ fault: 'crownDown', at: 'board.1', by: 0.5 }] },
    };
    const attempt = run(planted, ...up, rafter(2));
    expect(pose(attempt).rafters['rafter.yard.2']?.crown).toBe(-0.5);
  });

  it('a plumb cut a quarter long stands its heel off the wall until it is trimmed', () => {
    const planted: Level = {
      ...hut,
      asFound: { ...hut.asFound, planted: [{ fault: 'plumbCutLong', at: 'board.1', by: 0.25 }] },
    };
    const gap = (...extra: readonly Action[]): number =>
      pose(run(planted, ...up, ...extra, rafter(2))).rafters['rafter.yard.2']?.gaps.heelCut ?? -1;
    expect(gap()).toBeGreaterThan(0.1);
    expect(gap({ type: 'trim', member: 'board.1', cut: 'plumb', by: 0.25 })).toBeCloseTo(0, 9);
  });

  it('are planted in other places on another seed, never two faults on one board', () => {
    const places = (seed: number): readonly string[] =>
      boardIds(level).filter((board) => plantedAt({ level, seed }, board) !== undefined);
    const seeds = Array.from({ length: 40 }, (_, i) => i + 1);
    seeds.forEach((seed) => expect(places(seed)).toHaveLength(3));
    expect(new Set(seeds.map((seed) => places(seed).join())).size).toBeGreaterThan(20);
  });
});

describe('nailing', () => {
  it('is stopped toward a hand: the mate holds its rafter with nothing in it yet', () => {
    const attempt = run(
      hut,
      ...up,
      { type: 'place', member: 'rafter.street.1', at: 'mark' },
      { type: 'place', member: 'rafter.yard.1', at: 'mark' },
      { type: 'tack', joint: 'ridge:rafter.street.1', nails: 2 },
    );
    expect(attempt.steps.at(-1)?.outcome).toEqual({ ok: false, why: 'handBehind', stop: true });
  });

  it('is stopped on a bump trigger', () => {
    const attempt = run(
      hut,
      { type: 'makeReady', what: 'platform', at: 'site' },
      { type: 'place', member: 'ridge', at: 'hands' },
      rafter(1),
      {
        type: 'nailOff',
        joint: 'ridge:rafter.yard.1',
      },
    );
    expect(attempt.steps.at(-1)?.outcome).toEqual({ ok: false, why: 'bumpTrigger', stop: true });
  });
});
