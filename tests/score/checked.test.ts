import { describe, expect, it } from 'vitest';
import { checksOf, type Checked } from '../../src/core/score/checked';
import type { Action } from '../../src/core/site/action';
import type { Attempt } from '../../src/core/site/attempt';
import { cleanActs, putOff, told, type, usual, type Which } from '../order/story';
import { trueLevel } from '../site/levels';

const hut = trueLevel('garden-hut');
const clean = cleanActs(hut);

const creditOf = (attempt: Attempt, rule: string, part = ''): number => {
  const own = checksOf(attempt).filter((c) => c.rule === rule && c.part.startsWith(part));
  const weight = own.reduce((sum, c) => sum + c.weight, 0);
  return own.reduce((sum, c) => sum + c.weight * c.credit, 0) / weight;
};
const whysOf = (attempt: Attempt, rule: string, part = ''): readonly Checked['why'][] => [
  ...new Set(
    checksOf(attempt)
      .filter((c) => c.rule === rule && c.part.startsWith(part))
      .map(({ why }) => why),
  ),
];
const without = (which: Which): Attempt =>
  told(
    hut,
    clean.filter((act) => !which(act)),
  );
const misread = (which: Which, by: number): Attempt =>
  told(
    hut,
    clean.map((act) =>
      act.type === 'read' && which(act) && typeof act.said === 'number'
        ? { ...act, said: act.said + by }
        : act,
    ),
  );

const reads = {
  C1: type('read', /width|diagonal|"plate\./),
  C2: type('read', /"ridge\.[AB]\.(height|centre)"|"heel:/),
  C3: type('read', /"level"/),
  C5: type('read', /"plane\./),
  C6: type('read', /"layout\./),
  C7: type('read', /"punch"/),
};
const named = Object.entries(reads) as [keyof typeof reads, Which][];

/** What makes each check too late, and where its readings come then. */
const lateAfter: Readonly<Record<keyof typeof reads, Which>> = {
  C1: type('place', /"ridge"/),
  C2: type('nailOff', /"heel:rafter\.(street|yard)\.(1|9)"/),
  C3: type('nailOff', /"heel:rafter\.(street|yard)\.(1|9)"/),
  C5: type('nailOff', /"heel:/),
  C6: type('nailOff', /"heel:/),
  C7: type('handOver'),
};

describe('checks', () => {
  it('are all made in a clean run, none twice over', () => {
    const checked = checksOf(told(hut, clean));
    expect(checked.filter(({ credit }) => credit < 1)).toEqual([]);
    expect([...new Set(checked.map(({ rule }) => rule))].sort()).toEqual([
      'C1',
      'C2',
      'C3',
      'C5',
      'C6',
      'C7',
    ]);
    // A 16 ft ridge is not strung (C4); the others weigh 5 + 5 + 4 + 5 + 3 + 3.
    expect(checked.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(25, 9);
  });

  it.each(named)('%s is worth nothing when nobody reads', (rule, which) => {
    const attempt = without(which);
    expect(creditOf(attempt, rule)).toBe(0);
    for (const other of named) if (other[0] !== rule) expect(creditOf(attempt, other[0]), other[0]).toBe(1);
  });

  it.each(named.filter(([rule]) => rule !== 'C7'))(
    '%s is worth a quarter when it comes late',
    (rule, which) => {
      const attempt = told(hut, putOff(clean, which, lateAfter[rule]));
      const heels = rule === 'C5' ? 'plane' : '';
      expect(whysOf(attempt, rule, heels)).toEqual(['late']);
      expect(creditOf(attempt, rule, heels)).toBe(0.25);
    },
  );

  it('a walk after handing over cannot happen, so a late one is none', () => {
    const attempt = told(hut, putOff(clean, reads.C7, lateAfter.C7));
    expect(creditOf(attempt, 'C7')).toBe(0);
  });

  it.each(named.filter(([rule]) => rule !== 'C7'))('%s misread is worth half', (rule, which) => {
    expect(creditOf(misread(which, 0.5), rule)).toBe(0.5);
  });

  it('repeats add nothing', () => {
    const twice = clean.flatMap((act): readonly Action[] => (act.type === 'read' ? [act, act] : [act]));
    expect(checksOf(told(hut, twice)).map(({ credit }) => credit)).toEqual(
      checksOf(told(hut, clean)).map(({ credit }) => credit),
    );
  });

  it('a right word does not mend a wrong one at another place', () => {
    const attempt = misread(type('read', /"ridge\.A\.height"|"heel:/), 0.5);
    expect(creditOf(attempt, 'C2', 'height.A')).toBe(0.5);
    expect(creditOf(attempt, 'C2', 'height.B')).toBe(1);
  });

  it('the wrong tool shows nothing and checks nothing', () => {
    const wrong = clean.map((act): Action =>
      act.type === 'read' && act.at.startsWith('plane') ? { ...act, tool: 'waterLevel' } : act,
    );
    const attempt = told(hut, wrong);
    expect(creditOf(attempt, 'C5')).toBe(0);
    expect(attempt.steps.some(({ outcome }) => !outcome.ok && outcome.why === 'toolCannotShow')).toBe(true);
  });

  it('what was read before the string was stretched again is stale', () => {
    const last = clean.findLastIndex(type('read', /plane\.street/));
    const heel = clean.findIndex(
      (act, i) => i > last && type('nailOff', /"heel:rafter\.street\.[2-8]"/)(act),
    );
    const lined = clean.find(type('line', /street/)) as Action;
    const restrung: readonly Action[] = [
      ...clean.slice(0, heel),
      { type: 'takeOut', member: 'string.street' },
      lined,
      ...clean.slice(heel),
    ];
    expect(whysOf(told(hut, restrung), 'C5', 'plane.street')).toContain('stale');
    expect(whysOf(told(hut, restrung), 'C5', 'plane.yard')).toEqual(['well']);
  });

  it('the level laid from one end only is half a check', () => {
    expect(creditOf(without(type('read', /"level".*"from":"B"/)), 'C3')).toBe(0.5);
  });

  it('every other rafter at the string is enough, two unread neighbours are not', () => {
    const even = without(type('read', /plane\.street\.[357]"/));
    expect(creditOf(even, 'C5', 'plane.street')).toBe(1);
    // Six pairs of neighbours on the seven inner rafters; 2 and 3 unread leave one pair open.
    const gap = without(type('read', /plane\.street\.[23]"/));
    expect(creditOf(gap, 'C5', 'plane.street')).toBeCloseTo(5 / 6, 9);
  });

  it('the height may be found by both birdsmouths instead of the tape', () => {
    const rule = without(type('read', /"ridge\.[AB]\.height"/));
    expect(creditOf(rule, 'C2', 'height')).toBe(1);
  });

  it('a ridge read low and nailed low is half a check', () => {
    const raised = clean.findLastIndex(type('read', /"ridge\.B\.height"/));
    const low: readonly Action[] = [
      ...clean.slice(0, raised),
      { type: 'raise', end: 'both', by: -0.5 },
      ...clean.slice(raised),
    ];
    const attempt = told(hut, low);
    expect(whysOf(attempt, 'C2', 'height')).toEqual(['wrong']);
    expect(creditOf(attempt, 'C2', 'height')).toBe(0.5);
  });

  it('never stretching a string loses the check it was for', () => {
    const attempt = without(type('line', /"string"/));
    expect(creditOf(attempt, 'C5')).toBe(0);
  });

  it('never asks for what the run has not come to', () => {
    const begun = told(hut, clean.slice(0, clean.findIndex(type('place', /"ridge"/))), {});
    expect([...new Set(checksOf(begun).map(({ rule }) => rule))]).toEqual(['C1']);
  });

  it('asks a crew on straps for the same checks', () => {
    const checked = checksOf(told(hut, cleanActs(hut, { ...usual, upper: 'straps', stack: 'alternate' })));
    expect(checked.every(({ credit }) => credit === 1)).toBe(true);
  });
});
