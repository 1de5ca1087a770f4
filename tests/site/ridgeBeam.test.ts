import { describe, expect, it } from 'vitest';
import { chanceBroken } from '../../src/core/order/chance';
import { crewList } from '../../src/core/order/crew/crewList';
import { judgeOrder } from '../../src/core/order/judged';
import { itemsOf } from '../../src/core/order/orderList';
import type { Action } from '../../src/core/site/action';
import type { Attempt } from '../../src/core/site/attempt';
import { loadsOf, type Loads } from '../../src/core/site/loads';
import { ridgeHigh, ridgeLine } from '../../src/core/site/posed';
import { openItems } from '../../src/core/site/punch';
import { begin, take, would } from '../../src/core/site/take';
import { cleanActs, told, type, usual, type Which } from '../order/story';
import { beamFile, smallBeam, trueJobOn } from './beams';
import { levelOf } from './levels';

/** Whole jobs on a ridge that carries, with a post left out, loose, short or taken away. */

const patience = 120_000;
const level = trueJobOn({ ...smallBeam, site: { machine: true } });
const byMachine = { ...usual, hang: 'machine' } as const;
const clean = cleanActs(level);
const open = clean.filter((act) => act.type !== 'handOver');
const done = told(level, open);

const sets = (n: number): Which => type('setPost', new RegExp(`"at":${n}\\b`));
const without = (n: number): readonly Action[] => open.filter((act) => !sets(n)(act));
const otherwise = (n: number, more: Partial<Extract<Action, { type: 'setPost' }>>): readonly Action[] =>
  open.map((act) => (act.type === 'setPost' && act.at === n ? { ...act, ...more } : act));

const up = (attempt: Attempt, x: number): number => ridgeLine(attempt, [x])[0]?.z ?? NaN;
const middle = (attempt: Attempt): number => up(attempt, 120);
const loads = (attempt: Attempt): Loads => {
  const all = loadsOf(attempt);
  if (!all || all === 'falls') throw new Error('it does not stand');
  return all;
};
const pushed = (attempt: Attempt): number => loads(attempt).walls.street + loads(attempt).walls.yard;
const broken = (attempt: Attempt): readonly string[] =>
  judgeOrder(attempt).flatMap(({ rule, lost }) => (lost > 0 ? [rule] : []));
const why = (attempt: Attempt, act: Action): string | undefined => {
  const outcome = would(attempt, act);
  return outcome.ok ? undefined : outcome.why;
};
const clear: readonly Action[] = [
  { type: 'stand', who: 'lead', where: 'clear' },
  { type: 'stand', who: 'helper', where: 'clear' },
];

describe('a clean run on a ridge beam', { timeout: patience }, () => {
  it.each([
    ['posts', usual],
    ['machine', byMachine],
  ] as const)(
    'by %s sets and fixes every post before a rafter and leaves them in, without ties',
    (_, way) => {
      const acts = cleanActs(level, way);
      const attempt = told(level, acts);
      const first = acts.findIndex(type('place', /rafter\./));
      expect(acts.slice(0, first).filter(type('setPost')).length).toBe(3);
      expect(acts.findIndex(type('place', /"ridge"/))).toBeGreaterThan(acts.findLastIndex(type('setPost')));
      expect(acts.some(type('takeOut'))).toBe(false);
      expect(acts.some((act) => act.type === 'setTie' || type('place', /collar|strap/)(act))).toBe(false);
      expect(openItems(attempt)).toEqual([]);
      expect(broken(attempt)).toEqual([]);
      expect(attempt.site.down).toBeUndefined();
    },
  );

  it('has no line for ties, collars or props, and none says that pairs push or props come out', () => {
    const rows = crewList(done);
    const codes = rows.map(({ code }) => code);
    for (const code of ['tieWalls', 'chalk', 'upper', 'propsOut']) expect(codes).not.toContain(code);
    const rules = rows.flatMap(({ serves, closes }) => [...serves, ...closes]);
    expect(rules).toContain('O12');
    expect(rules.filter((rule) => rule === 'O2' || rule === 'O10')).toEqual([]);
  });

  it('keeps the lines for ties and collars that its plan has', () => {
    const { joists: _joists, collars: _collars, ...tied } = smallBeam as Record<string, unknown>;
    const codes = crewList(begin(trueJobOn(tied), 1, 'own')).map(({ code }) => code);
    for (const code of ['tieWalls', 'chalk', 'upper']) expect(codes).toContain(code);
    expect(codes).not.toContain('propsOut');
  });

  it('names its rule on no ridge board', () => {
    const rows = crewList(begin(levelOf('garden-hut'), 1, 'own'));
    const rules = rows.flatMap(({ serves, closes }) => [...serves, ...closes]);
    expect(rules).not.toContain('O12');
    expect(rules).toEqual(expect.arrayContaining(['O2', 'O10']));
  });
});

describe('the ridge', { timeout: patience }, () => {
  const atLanding = open.findIndex(type('place', /"ridge"/));
  const before = told(level, open.slice(0, atLanding));
  const landing: Action = { type: 'place', member: 'ridge', at: 'posts', board: 'board.ridge' };
  const upTo = (acts: readonly Action[]): Attempt =>
    told(level, acts.slice(0, acts.findIndex(type('place', /"ridge"/))));

  it('is not laid where it would tip off, and is on two posts with its middle between them', () => {
    expect(why(before, landing)).toBeUndefined();
    const one = upTo(open.filter((act) => !sets(2)(act) && !sets(3)(act)));
    expect(why(one, landing)).toBe('postsMissing');
    expect(why(upTo(without(2)), landing)).toBeUndefined();
  });

  it('is lowered by the machine onto posts that stand, just as it is lifted onto them', () => {
    const machine = cleanActs(level, byMachine);
    const lowered = told(level, machine.slice(0, machine.findIndex(type('place', /"ridge"/)) + 1));
    expect(ridgeHigh(lowered)).toEqual(ridgeHigh(take(before, landing)));
  });

  it('comes down with all clear when its post goes and nothing else carries it yet', () => {
    const lies = [...clear].reduce(take, take(before, landing));
    const gone = take(lies, { type: 'takeOut', member: 'post.1' });
    expect(gone.site.down).toBe('nothingCarriesTheRidge');
  });

  it('stops whoever would take that post from over somebody', () => {
    const lies = take(before, landing);
    const beside = take(lies, { type: 'stand', who: 'helper', where: 'beside' });
    expect(why(beside, { type: 'takeOut', member: 'post.1' })).toBe('propWithSomeoneUnder');
  });
});

describe('a post', { timeout: patience }, () => {
  it('carries its share as long as it stands; taken out, the ridge sinks and the walls are pushed', () => {
    expect(loads(done).supports['post.2']).toBeGreaterThan(100);
    const out = take(done, { type: 'takeOut', member: 'post.2' });
    expect(middle(out)).toBeLessThan(middle(done) - 0.03);
    expect(pushed(out)).toBeGreaterThan(3 * pushed(done));
    expect(openItems(out)).toEqual([{ what: 'missing', at: 'post.2' }]);
  });

  it('that nobody set lets the ridge sag under its rafters, out of order, and stays on the punch list', () => {
    const skipped = told(level, without(2));
    expect(middle(skipped)).toBeLessThan(middle(done) - 0.05);
    expect(broken(skipped)).toEqual(['O12']);
    expect(openItems(skipped)).toEqual([{ what: 'missing', at: 'post.2' }]);
  });

  it('fitted late takes the ridge where it hangs and does not lift it', () => {
    const skipped = told(level, without(2));
    const late = take(skipped, { type: 'setPost', at: 2, height: 0, fixed: 'both' });
    expect(openItems(late)).toEqual([]);
    expect(Math.abs(middle(late) - middle(skipped))).toBeLessThan(0.01);
    expect(broken(late)).toEqual(['O12']);
  });

  it('cut short carries nothing, cut long carries it all and lifts the ridge off the others', () => {
    const short = told(level, otherwise(2, { height: figured(2) - 0.5 }));
    expect(loads(short).supports['post.2']).toBeCloseTo(0);
    expect(middle(short)).toBeLessThan(middle(done) - 0.05);
    const long = told(level, otherwise(2, { height: figured(2) + 0.25 }));
    expect(loads(long).supports['post.2']).toBeGreaterThan(1.5 * (loads(done).supports['post.2'] ?? 0));
  });

  it('fixed at one end only is loose: out of order, on the punch list, and held once the other is fixed too', () => {
    const loose = told(level, otherwise(3, { fixed: 'foot' }));
    expect(broken(loose)).toEqual(['O12']);
    expect(openItems(loose)).toEqual([{ what: 'loose', at: 'post.3' }]);
    const held = take(loose, { type: 'setPost', at: 3, height: 0, fixed: 'head' });
    expect(openItems(held)).toEqual([]);
  });

  it('is where the plan has it: there is no number more', () => {
    const bare = begin(level, 1, 'own');
    const set = (at: number): Action => ({ type: 'setPost', at, height: figured(at), fixed: 'both' });
    expect([1, 2, 3].map((at) => why(bare, set(at)))).toEqual([undefined, undefined, undefined]);
    expect(why(bare, set(4))).toBe('noSuchPlace');
    expect(why(begin(levelOf('garden-hut'), 1, 'own'), set(3))).toBe('noSuchPlace');
  });
});

const figured = (at: number): number => {
  const set = clean.find(sets(at));
  return set?.type === 'setPost' ? set.height : NaN;
};

describe('random complete orders of such a job', () => {
  const job = { level, methods: usual };

  it('set every post, take none out, and break its rule more often than not', () => {
    const facts = itemsOf(job).map(({ fact }) => fact);
    for (const n of [1, 2, 3])
      expect(facts).toEqual(expect.arrayContaining([`post.${n}`, `fixed:post.${n}`]));
    expect(facts.filter((fact) => /^(out:|joist|collar|heelTie)/.test(fact))).toEqual([]);
    const broken = chanceBroken(job, { runs: 200, seed: 1 });
    expect(broken['O12']).toBeGreaterThan(0.5);
    expect(broken['O2'] ?? broken['O10']).toBeUndefined();
  });
});

describe('posts of the plan', () => {
  it('are numbered from end A however they were written', () => {
    const mixed = trueJobOn({ ...beamFile, posts: { at: [310.25, "13'", 1.75], below: 97.125 } });
    const acts = cleanActs(mixed).slice(0, 200);
    const attempt = told(mixed, acts.slice(0, acts.findIndex(type('place', /rafter\./)) + 2));
    const { supports } = loads(attempt);
    expect(Object.keys(supports).filter((name) => name.startsWith('post.'))).toEqual([
      'post.1',
      'post.2',
      'post.3',
    ]);
  });
});
