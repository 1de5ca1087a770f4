import { describe, expect, it } from 'vitest';
import { freshSite, isReturn, jobStanding, usualLooks } from '../../src/session/jobState';
import type { RunHead } from '../../src/session/store';

/** Hours since the first Monday of a season. */
const at = (days: number, hours = 0): number => 1_700_000_000_000 + (days * 24 + hours) * 3_600_000;

let order = 0;
const run = (part: Partial<RunHead>): RunHead => ({
  id: `run-${++order}`,
  level: 'hut',
  levelDigest: '0',
  rules: 3,
  seed: 1,
  mode: 'check-off',
  state: 'done',
  order,
  framed: true,
  ...part,
});
const passOn = (seed: number, ended: number): RunHead => run({ seed, ended, pass: true });
const stateAt = (runs: readonly RunHead[], now: number, looks = usualLooks) =>
  jobStanding(runs, { now, looks }).state;

describe('a job', () => {
  it('is fresh, then open, then framed', () => {
    expect(stateAt([], at(0))).toBe('fresh');
    expect(stateAt([run({ state: 'open' })], at(0))).toBe('open');
    expect(stateAt([run({ mode: 'own', ended: at(0) })], at(0))).toBe('framed');
  });

  it.each([
    ['watched', { mode: 'watch' }],
    ['with the list', { mode: 'list' }],
    ['with a nudge', { mode: 'nudge' }],
    ['a branch', { mode: 'own', branch: true }],
    ['left unfinished or down', { mode: 'own', framed: false }],
  ] as const)('is not framed by a run that was %s', (_name, part) => {
    expect(stateAt([run({ ...part, ended: at(0) })], at(1))).toBe('open');
  });

  it.each([
    ['one pass', [passOn(1, at(0))], 'framed'],
    ['two on one site', [passOn(1, at(0)), passOn(1, at(2))], 'framed'],
    ['two within 19 hours', [passOn(1, at(0)), passOn(2, at(0, 19))], 'framed'],
    ['two 20 hours apart', [passOn(1, at(0)), passOn(2, at(0, 20))], 'checkedOff'],
    [
      'a third far enough from the first',
      [passOn(1, at(0)), passOn(2, at(0, 3)), passOn(3, at(0, 21))],
      'checkedOff',
    ],
  ] as const)('with %s is %s', (_name, runs, state) => {
    expect(stateAt(runs, at(3))).toBe(state);
  });

  it('says from when on a second pass counts', () => {
    expect(jobStanding([passOn(1, at(0))], { now: at(0, 1), looks: usualLooks }).secondFrom).toBe(at(0, 20));
  });

  // Checked off on day 1: due on day 8. A look on day 10: 30 days on, day 40. On day 41: 90 on. Then 180, again and again.
  it('is due 7, 30, 90, 180 days after the look before', () => {
    const runs = [passOn(1, at(0)), passOn(2, at(1))];
    expect([7.9, 8].map((now) => stateAt(runs, at(now)))).toEqual(['checkedOff', 'due']);
    runs.push(passOn(3, at(10)));
    expect([10, 39.9, 40].map((now) => stateAt(runs, at(now)))).toEqual(['checkedOff', 'checkedOff', 'due']);
    runs.push(passOn(4, at(41)));
    expect([130.9, 131].map((now) => stateAt(runs, at(now)))).toEqual(['checkedOff', 'due']);
    runs.push(passOn(5, at(131)), passOn(6, at(311)));
    expect([490.9, 491].map((now) => stateAt(runs, at(now)))).toEqual(['checkedOff', 'due']);
  });

  it('does not move its look by a pass that comes early, and stays due after a run that does not pass', () => {
    const runs = [passOn(1, at(0)), passOn(2, at(1)), passOn(3, at(4))];
    expect(stateAt(runs, at(8))).toBe('due');
    expect(stateAt([...runs, run({ seed: 4, ended: at(9), pass: false })], at(9))).toBe('due');
  });

  it('goes by the days it is given', () => {
    const runs = [passOn(1, at(0)), passOn(2, at(1))];
    expect([2.9, 3].map((now) => stateAt(runs, at(now), [2]))).toEqual(['checkedOff', 'due']);
  });
});

it('a Check-off gets a site that none had before', () => {
  expect(freshSite([], 5)).toBe(5);
  expect(freshSite([run({ seed: 5, mode: 'own' })], 5)).toBe(5);
  expect(freshSite([run({ seed: 5 }), run({ seed: 6 }), run({ seed: 8 })], 5)).toBe(7);
});

describe('a return', () => {
  it('is after a day, once', () => {
    const runs = [run({ mode: 'list', ended: at(0) })];
    expect(isReturn([], undefined, at(5))).toBe(false);
    expect(isReturn([run({ state: 'open' })], undefined, at(5))).toBe(false);
    expect(isReturn(runs, undefined, at(0, 23))).toBe(false);
    expect(isReturn(runs, undefined, at(1))).toBe(true);
    expect(isReturn(runs, at(1), at(1, 23))).toBe(false);
    expect(isReturn(runs, at(1), at(2))).toBe(true);
  });
});
