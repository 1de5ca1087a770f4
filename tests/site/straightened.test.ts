import { describe, expect, it } from 'vitest';
import type { Level } from '../../src/core/level/level';
import { ridgeTruth } from '../../src/core/level/asFound';
import { checksOf } from '../../src/core/score/checked';
import { scoreOf } from '../../src/core/score/scored';
import type { Action } from '../../src/core/site/action';
import type { Attempt } from '../../src/core/site/attempt';
import { ridgeBowed } from '../../src/core/site/readings/string';
import { shows } from '../../src/core/site/shows';
import { replay } from '../../src/core/hands/opened';
import { take, would } from '../../src/core/site/take';
import { play } from '../../src/core/hands/play';
import { cleanActs, told, type, usual, type Which } from '../order/story';
import { trueLevel } from './levels';

/** A long ridge that lies bowed: found by the string, pushed out by hand, kept by the pair that locks it. */

const patience = 120_000;
const straight: Level = trueLevel('hay-barn');
const seed = 3;

/** The same site with a ridge that bows by this much when nothing forces it, to the yard (+). */
const bowedBy = (bow: number): Level => {
  const drawn = (range: number): Level => ({
    ...straight,
    asFound: { ...straight.asFound, ranges: { ...straight.asFound.ranges, ridgeBow: range } },
  });
  return drawn(bow / ridgeTruth({ level: drawn(1), seed }).bow);
};
const bowed = 0.45;
const level = bowedBy(bowed);

const at = 'ridge.straight';
const string = (attempt: Attempt): number => Number(shows(attempt, { tool: 'string', at }));
const push = (by: number): Action => ({ type: 'shift', member: 'ridge', at: 'mid', by });
const strings = type('read', /"string","at":"ridge.straight"/);
const pushes = type('shift', /"at":"mid"/);
const middle: Which = (act) => act.type === 'place' && /rafter\.(street|yard)\.9$/.test(act.member);
/** What a clean crew does where every ridge is straight. */
const acts = cleanActs(straight, usual).filter((act) => !strings(act) && !pushes(act));
const locks = acts.findIndex(middle);
/** Told up to the middle pair, with these acts put in before it, and the rest of the job after. */
const withThese = (...these: readonly Action[]): Attempt =>
  told(level, [...acts.slice(0, locks), ...these, ...acts.slice(locks)], { seed });
const atTheMiddle = replay({ level, seed, mode: 'own' }, acts.slice(0, locks));
const bow = string(atTheMiddle);

describe('a ridge bowed by 0.45 in', { timeout: patience }, () => {
  it('shows on the string once its ends are held, by as much as the board is bowed', () => {
    expect(bow).toBeGreaterThan(bowed - 1 / 16);
    expect(bow).toBeLessThan(bowed + 1 / 16);
  });

  it('goes straight under a hand and stays there while the hand does', () => {
    const pushed = take(atTheMiddle, push(-bow));
    expect(Math.abs(string(pushed))).toBeLessThan(1 / 32);
    expect(string(take(atTheMiddle, push(-bow - 0.5)))).toBeCloseTo(-0.5, 1);
  });

  it('goes back when the crew turns to stacking or moves the ridge, with no pair to keep it', () => {
    const pushed = take(atTheMiddle, push(-bow));
    const stacked = take(pushed, { type: 'place', member: 'rafter.yard.3', at: 'mark', board: 'board.30' });
    expect(Math.abs(string(stacked) - bow)).toBeLessThan(1 / 16);
  });

  it('is kept straight by a pair nailed there, and bowed where nobody pushed', () => {
    const locked = (...these: readonly Action[]): number => {
      const nail: Which = (act) => act.type === 'nailOff' && /rafter\.(street|yard)\.9$/.test(act.joint);
      const nailed = acts.findLastIndex((act, i) => nail(act) && i < locks + 40);
      const to = [...acts.slice(0, locks), ...these, ...acts.slice(locks, nailed + 1)];
      return Math.abs(ridgeBowed(told(level, to, { seed })) ?? 9);
    };
    expect(locked(push(-bow))).toBeLessThan(1 / 8);
    expect(locked()).toBeGreaterThan(1 / 4);
  });

  it('bowed further, leaves a plumb cut so far open that it cannot be nailed there', () => {
    const far = replay({ level: bowedBy(0.6), seed, mode: 'own' }, acts.slice(0, locks + 6));
    const nail: Action = { type: 'nailOff', joint: 'ridge:rafter.street.9' };
    expect(would(far, nail)).toMatchObject({ ok: false, why: 'nothingToNailInto' });
    const near = replay({ level: straight, seed, mode: 'own' }, acts.slice(0, locks + 6));
    expect(would(near, nail)).toMatchObject({ ok: true });
  });

  it('is not pushed any more once it is locked', () => {
    const locked = withThese(push(-bow));
    const after = would({ ...locked, site: { ...locked.site, handedOver: false } }, push(0.25));
    expect(after).toMatchObject({ ok: false, why: 'ridgeLocked' });
  });

  it('costs the check unless it is read and put right', () => {
    const read: Action = { type: 'read', tool: 'string', at, said: Math.round(bow * 16) / 16 };
    const why = (attempt: Attempt) => checksOf(attempt).find(({ rule }) => rule === 'C4')?.why;
    expect(why(withThese(read, push(-bow)))).toBe('well');
    expect(why(withThese(read))).toBe('wrong');
    expect(why(withThese(push(-bow)))).toBe('none');
  });

  it('bows to the other side as it was bowed to this one', () => {
    const mirrored = replay({ level: bowedBy(-bowed), seed, mode: 'own' }, acts.slice(0, locks));
    // What leans it to one side is the same on both: a sixteenth.
    expect(Math.abs(string(mirrored) + bow)).toBeLessThan(1 / 16);
  });
});

describe('a crew that checks', { timeout: patience }, () => {
  const wrong: Level = {
    ...level,
    asFound: {
      ...level.asFound,
      ranges: { ...level.asFound.ranges, tapeHook: 0.25, waterBias: 0.25, lineSlack: 0.9 },
    },
  };

  it('strings the ridge straight, and is not led astray by its own tape, hose and line', () => {
    for (const run of [1, 2, 3]) {
      const score = scoreOf(play(wrong, 'expert', { seed: run, wanted: { hang: 'posts' } }));
      expect(score.parts.checks).toBe(1);
      expect(score.total).toBeGreaterThan(98.5);
    }
  });

  it('sets the ridge by the inch mark once the hook was caught, and by the hook where it is true', () => {
    const taped = ({ steps }: Attempt, from: string | undefined): number =>
      steps.filter(
        ({ action }) =>
          action.type === 'read' &&
          action.tool === 'tape' &&
          /^ridge\./.test(action.at) &&
          action.from === from,
      ).length;
    const bent = play(wrong, 'expert', { seed: 1, wanted: { hang: 'posts' } });
    expect([taped(bent, undefined), taped(bent, 'inch') > 3]).toEqual([0, true]);
    const plain = play(straight, 'expert', { seed: 1, wanted: { hang: 'posts' } });
    expect([taped(plain, undefined) > 3, taped(plain, 'inch')]).toEqual([true, 0]);
  });
});
