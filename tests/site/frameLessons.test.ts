import { describe, expect, it } from 'vitest';
import type { Level } from '../../src/core/level/level';
import type { Action } from '../../src/core/site/action';
import { pose } from '../../src/core/site/posed';
import { shows } from '../../src/core/site/shows';
import { begin, take } from '../../src/core/site/take';
import type { Attempt } from '../../src/core/site/attempt';
import { cleanActs, putOff, told, type, usual, type Which } from '../order/story';
import { levelOf, trueLevel } from './levels';

/** Whole attempts, told with one thing put off or left out: what the site does then is nobody's script. */

const patience = 60_000;
const long = trueLevel('hay-barn');
const short = trueLevel('boathouse');

/** Told up to the first act of a kind; that act is not done. */
const before = (level: Level, acts: readonly Action[], which: Which): Attempt => {
  let attempt = begin(level, 1, 'own');
  for (const act of acts) {
    if (which(act)) return attempt;
    attempt = take(attempt, act);
  }
  throw new Error('that act never came');
};

/** How far the middle of the ridge stands off the line of its ends. */
const bowOf = (attempt: Attempt): number => {
  const { ridge } = pose(attempt);
  if (!ridge) throw new Error('no ridge');
  return Math.abs(ridge.mid.y - (ridge.A.y + ridge.B.y) / 2);
};

/** A clean run in which everything at the middle pair waits until the first side stands. */
const unlocked = (level: Level, middle: number): readonly Action[] => {
  const acts = cleanActs(level, usual);
  const first = acts.find(type('place', /rafter\.(street|yard)\.2"/));
  const side = JSON.stringify(first).includes('yard') ? 'yard' : 'street';
  const atMiddle = middlePair(middle);
  return putOff(
    acts,
    (act) => act.type !== 'read' && atMiddle(act),
    type('tack', new RegExp(`heel:rafter\\.${side}\\.\\d+"`)),
  );
};

const middlePair =
  (station: number): Which =>
  (act) =>
    new RegExp(`"(?:\\w+:)?rafter\\.(street|yard)\\.${station}"`).test(JSON.stringify(act));

describe('one side stacked', { timeout: patience }, () => {
  const setMiddle = (station: number): Which => {
    const there = middlePair(station);
    return (act) => act.type === 'place' && there(act);
  };
  /** Light at the heel cut of the second rafter of a pair put up where the ridge has gone. */
  const tooLong = (level: Level, station: number): number => {
    const bowed = before(level, unlocked(level, station), setMiddle(station));
    const pair = (['street', 'yard'] as const).map((side) => `rafter.${side}.${station}` as const);
    const up = pair.reduce((so, member) => take(so, { type: 'place', member, at: 'mark' }), bowed);
    return Math.max(...pair.map((id) => pose(up).rafters[id]?.gaps.heelCut ?? 0));
  };

  it('bows a 34 ft ridge that nothing locks; locked first it stays straight', () => {
    const bowed = before(long, unlocked(long, 9), setMiddle(9));
    const other = cleanActs(long, usual).filter(type('place', /rafter\.(street|yard)\.2"/))[1];
    const locked = before(long, cleanActs(long, usual), (act) => act === other);
    expect(bowOf(bowed)).toBeGreaterThan(1 / 8);
    expect(bowOf(locked)).toBeLessThan(bowOf(bowed) / 2);
    // And a string along it shows it, to within what a string reads.
    const shown = shows(bowed, { tool: 'string', at: 'ridge.straight' });
    expect(Math.abs(Math.abs(Number(shown)) - bowOf(bowed))).toBeLessThan(1 / 16);
  });

  it('leaves no room for the mate at 34 ft, and hardly minds at 20 ft', () => {
    expect(bowOf(before(short, unlocked(short, 6), setMiddle(6)))).toBeLessThan(1 / 16);
    expect(tooLong(long, 9)).toBeGreaterThan(1 / 8);
    expect(tooLong(short, 6)).toBeLessThan(1 / 8);
  });
});

describe('a row', { timeout: patience }, () => {
  const leanOf = (attempt: Attempt): number => Math.abs(pose(attempt).ridge?.A.x ?? 0);

  it('that nothing braces along its ridge leans more than an inch once its posts are out', () => {
    const unbraced = cleanActs(long, usual).filter((act) => !type('brace', /along/)(act));
    expect(leanOf(before(long, unbraced, type('handOver')))).toBeGreaterThan(1);
  });

  it('stands plumb to the end with one brace along it', () => {
    const braced = before(long, cleanActs(long, usual), type('handOver'));
    expect(braced.site.down).toBeUndefined();
    expect(leanOf(braced)).toBeLessThan(1 / 4);
  });

  it('comes down along its ridge on tacks without a brace', () => {
    const acts = cleanActs(long, usual).filter(
      (act) => !type('brace', /along/)(act) && !type('nailOff', /"(ridge|heel):/)(act),
    );
    const over = told(long, acts);
    expect(over.site.down).toBe('alongTheRidge');
    expect(pose(over).fallen).toMatchObject({ way: 'along', loose: expect.stringMatching(/^(ridge|heel):/) });
  });
});

describe('ties left to the end', { timeout: patience }, () => {
  const late = putOff(cleanActs(long, usual), type('setTie'), type('takeOut', /post/));
  const width = (attempt: Attempt): number => {
    const { street, yard } = pose(attempt).plates;
    return yard.mid.y - street.mid.y;
  };

  it('let long walls move out; set first they hold them', () => {
    const spread = before(long, late, type('setTie'));
    const held = told(long, cleanActs(long, usual));
    expect(width(held) - long.plan.span).toBeLessThan(0.03);
    expect(width(spread) - long.plan.span).toBeGreaterThan(0.06);
  });
});

describe('what slips', { timeout: patience }, () => {
  it('keeps its new place, and asking before the deed changes nothing', () => {
    const level = levelOf('hay-barn');
    const acts = cleanActs(level, usual).slice(0, 260);
    const story = told(level, acts);
    const again = told(level, acts);
    expect(again.site).toEqual(story.site);
  });
});
