import { describe, expect, it } from 'vitest';
import type { Verdict } from '../../src/core/order/judged';
import type { OrderRuleId } from '../../src/core/order/rules';
import { minutesUsed, orderBeforeFloor, partWeights, passLine, scoreOf } from '../../src/core/score/scored';
import type { Part } from '../../src/core/score/score';
import type { Action } from '../../src/core/site/action';
import { begin } from '../../src/core/site/take';
import { cleanActs, told, type } from '../order/story';
import { trueLevel } from '../site/levels';

const hut = trueLevel('garden-hut');
const clean = cleanActs(hut);
const verdict = (rule: OrderRuleId, lost: Verdict['lost'], instance = 'x'): Verdict => ({
  rule,
  instance,
  lost,
  step: 1,
  fact: 'x',
});

describe('the order part, by hand', () => {
  // O1 costs 40 and luck breaks it half the time; O5 24, luck 0.75; O8 33 for two sides, luck 0.8.
  const chance = { O1: 0.5, O5: 0.75, O8: 0.8 };

  it('is 1 when all is kept, whatever luck would do', () => {
    expect(orderBeforeFloor(chance, [verdict('O1', 0), verdict('O8', 0, 'street')])).toBe(1);
  });

  it('is nothing to measure where no later step was done', () => {
    expect(orderBeforeFloor(chance, [])).toBeUndefined();
  });

  // Lost 40·0 + 24·1 + 33·(1 + 0)/2 = 40.5; by luck 40·0.5 + 24·0.75 + 33·0.8 = 64.4; 1 − 40.5/64.4.
  it('shares the weight of a rule among its instances', () => {
    const told = [verdict('O1', 0), verdict('O5', 1), verdict('O8', 1, 'street'), verdict('O8', 0, 'yard')];
    expect(orderBeforeFloor(chance, told)).toBeCloseTo(1 - 40.5 / 64.4, 12);
  });

  // Lost 40·0.4 + 24·0.7 = 32.8; by luck 40·0.5 + 24·0.75 = 38.
  it('forgives a part of what was mended', () => {
    expect(orderBeforeFloor(chance, [verdict('O1', 0.4), verdict('O5', 0.7)])).toBeCloseTo(1 - 32.8 / 38, 12);
  });

  // Everything broken: 1 − (40 + 24)/(20 + 18) is under 0 before the floor.
  it('falls under nothing before the floor', () => {
    expect(orderBeforeFloor(chance, [verdict('O1', 1), verdict('O5', 1)])).toBeCloseTo(1 - 64 / 38, 12);
  });
});

describe('the total', () => {
  const score = scoreOf(told(hut, clean));

  it('is a hundred times the done share times the weighted parts', () => {
    const parts = Object.entries(score.parts) as [Part, number][];
    const weight = parts.reduce((sum, [part]) => sum + partWeights[part], 0);
    const mean = parts.reduce((sum, [part, value]) => sum + partWeights[part] * value, 0) / weight;
    expect(score.total).toBeCloseTo(100 * score.done * mean, 2);
    expect(Object.values(partWeights).reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12);
  });

  it('leaves out a part that has nothing to measure, and shares its weight', () => {
    // A true hut has no faults to find: no eye part, and the other 0.80 of weight stand for all.
    expect(score.parts).not.toHaveProperty('eye');
    expect(score.parts.order).toBe(1);
    expect(score.parts.checks).toBe(1);
    const { fit = 0, economy = 0 } = score.parts;
    expect(score.total).toBeCloseTo((100 * (0.3 + 0.25 + 0.2 * fit + 0.05 * economy)) / 0.8, 2);
  });

  it('passes a clean Check-off and nothing else', () => {
    expect(score.pass).toBe(true);
    for (const mode of ['own', 'list', 'nudge', 'watch'] as const) {
      const practice = scoreOf(told(hut, clean, { mode }));
      expect(practice.total).toBe(score.total);
      expect(practice.pass).toBe(false);
    }
  });

  it('is 0 before anything is done', () => {
    const nothing = scoreOf(begin(hut, 1, 'check-off'));
    expect(nothing).toMatchObject({ total: 0, done: 0, sound: false, pass: false, cap: undefined });
  });

  it('names something done well', () => {
    expect(score.findings.filter(({ kind }) => kind === 'good')).toHaveLength(1);
  });

  it('has a step for every check that was missed, to go back to', () => {
    const { findings } = scoreOf(
      told(
        hut,
        clean.filter((act) => act.type !== 'read'),
      ),
    );
    const checks = findings.filter(({ kind }) => kind === 'check');
    expect(checks.length).toBeGreaterThanOrEqual(5);
    for (const { step, minutes, numbers } of checks) {
      expect(step).toBeGreaterThanOrEqual(0);
      expect(minutes).toBeGreaterThan(0);
      expect(numbers['missed']).toBeGreaterThan(0);
    }
  });
});

describe('done and sound', () => {
  it.each([
    ['a joint left on tacks', type('nailOff', /"heel:rafter\.street\.4"/), 'T1'],
    ['a collar end not nailed', type('nailOff', /"collarEnd:collar\.3\.yard"/), 'T2'],
    ['a block left out', type('place', /block\.yard\.2"/), 'T2'],
    ['no brace along the ridge', type('brace', /along/), 'T2'],
  ])('%s is neither', (_name, which, rule) => {
    const score = scoreOf(
      told(
        hut,
        clean.filter((act) => !which(act)),
      ),
    );
    expect(score.sound).toBe(false);
    expect(score.pass).toBe(false);
    expect(score.done).toBeLessThan(1);
    expect(score.findings.map(({ code }) => code)).toContain(rule);
  });

  // 18 joints of one side's blocks and heels missing is more than the two in a hundred a pass allows.
  it('a side left on tacks takes the total down by what is missing', () => {
    const all = scoreOf(told(hut, clean));
    const half = scoreOf(
      told(
        hut,
        clean.filter((act) => !type('nailOff', /"(heel|heelTie|ridge):rafter\.yard/)(act)),
      ),
    );
    expect(half.done).toBeLessThan(passLine.done);
    expect(half.total).toBeLessThan(all.total * half.done + 0.01);
  });
});

describe('economy', () => {
  it('is par over minutes, and 1 at most', () => {
    const { parts, minutes } = scoreOf(told(hut, clean));
    expect(parts.economy).toBeCloseTo(Math.min(1, minutes.par / minutes.used), 12);
    const slow: readonly Action[] = [
      ...Array.from({ length: 100 }, (): Action => ({
        type: 'read',
        tool: 'tape',
        at: 'width.A',
        said: 144,
      })),
      ...clean,
    ];
    const late = scoreOf(told(hut, slow));
    expect(late.minutes.used).toBeCloseTo(minutes.used + 100, 9);
    expect(late.parts.economy).toBeCloseTo(late.minutes.par / late.minutes.used, 12);
  });

  it('is nothing for who does not check', () => {
    expect(
      scoreOf(
        told(
          hut,
          clean.filter((act) => act.type !== 'read'),
        ),
      ).parts.economy,
    ).toBe(0);
  });

  it.each([
    ['one act', [{ type: 'trim', member: 'board.3', cut: 'plumb', by: 0.125 }]],
    [
      'a run of acts',
      [
        { type: 'setTie', kind: 'joist', station: 1 },
        { type: 'carryOn', like: [0, 0], to: 9 },
      ],
    ],
  ] as const)('counts what was taken back: %s', (_name, acts) => {
    const once = told(hut, acts, { mode: 'own' });
    const back = told(hut, [...acts, { type: 'undo', step: acts.length - 1 }], { mode: 'own' });
    expect(back.site.minutes).toBeLessThan(once.site.minutes);
    expect(minutesUsed(back)).toBe(minutesUsed(once));
  });
});
