import { describe, expect, it } from 'vitest';
import type { Score } from '../../src/core/score/score';
import { verdictOn } from '../../src/core/score/verdict';

const scored = (total: number, more: Partial<Score> = {}): Score => ({
  total,
  pass: total >= 80,
  parts: {},
  done: 1,
  sound: true,
  cap: undefined,
  minutes: { used: 1, par: 1 },
  findings: [],
  ...more,
});

describe('a verdict on a Check-off', () => {
  // The bar is 80. With an error of 3 points one run cannot tell from 77 to 83.
  it.each([
    [76.9, 'notYet'],
    [77, 'borderline'],
    [80, 'borderline'],
    [83, 'borderline'],
    [83.1, 'pass'],
  ] as const)('at %f points, give or take 3, is %s', (total, verdict) => {
    expect(verdictOn(scored(total), 'check-off', 3)).toBe(verdict);
  });

  it('goes by the bar alone where the error is not known', () => {
    expect(verdictOn(scored(79.99), 'check-off', undefined)).toBe('notYet');
    expect(verdictOn(scored(80), 'check-off', undefined)).toBe('pass');
  });

  it('leaves no doubt after a danger or a fall', () => {
    expect(verdictOn(scored(69, { cap: 69, pass: false }), 'check-off', 12)).toBe('notYet');
  });

  it.each(['watch', 'list', 'nudge', 'own'] as const)('is none in mode %s', (mode) => {
    expect(verdictOn(scored(100), mode, 3)).toBe('practice');
  });
});
