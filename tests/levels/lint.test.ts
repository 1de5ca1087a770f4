import { describe, expect, it } from 'vitest';
import type { Level } from '../../src/core/level/level';
import { provedComplaints } from '../../src/tt/lint/proved';
import { writtenComplaints } from '../../src/tt/lint/written';
import { checkRules, orderRules } from '../../src/core/order/rules';
import { otherRules } from '../../src/core/order/stateRules';
import { courseFiles, loadLevel } from '../../src/tt/levelFiles';
import { levelOf } from '../site/levels';

const pathsOf = (level: Level): readonly string[] => writtenComplaints(level).map(({ path }) => path);
const hut = levelOf('garden-hut');

/** Milliseconds a machine with much else to do may take over a few runs. */
const patient = 120_000;

describe('the course', { timeout: patient }, () => {
  it.each(courseFiles())('%s has nothing to complain of', (file) => {
    const level = loadLevel(file);
    if (!level.ok) throw new Error(JSON.stringify(level.complaints));
    expect(writtenComplaints(level.value)).toEqual([]);
    expect(provedComplaints(level.value, 1)).toEqual([]);
  });

  it('introduces every rule once, in the level the rule names', () => {
    const said = courseFiles().flatMap((file) => {
      const level = loadLevel(file);
      return level.ok ? level.value.introduces.map((rule) => `${rule} ${level.value.id}`) : [];
    });
    const wanted = [...orderRules, ...checkRules, ...otherRules].flatMap(({ id, introducedBy }) =>
      introducedBy === undefined ? [] : [`${id} ${introducedBy}`],
    );
    // Only a rule about a ridge that no level has may be left out.
    const left = orderRules.filter(({ introducedBy }) => introducedBy === undefined);
    expect(left.map(({ ridge }) => ridge)).toEqual([['beam'], ['ledger']]);
    expect([...said].sort()).toEqual([...wanted].sort());
  });
});

describe('a level that is not fit to ship', { timeout: patient }, () => {
  it.each<readonly [string, string, Level]>([
    ['names a rule there is not', 'introduces.0', { ...hut, introduces: ['O99'] }],
    [
      'leaves out a caution',
      'cautions',
      { ...hut, cautions: hut.cautions.filter((id) => id !== 'topPlate') },
    ],
    [
      'begins on what the crew has done, with a choice left open',
      'methods.hang',
      { ...hut, stages: { from: 'ridge', to: 'ridge' } },
    ],
    [
      'lifts by machine without its cautions',
      'cautions',
      { ...hut, methods: { ...hut.methods, hang: ['machine'] } },
    ],
    [
      'wants what no tool can tell',
      'tolerances.seat',
      { ...hut, tolerances: { ...hut.tolerances, seat: 1 / 16 } },
    ],
    [
      'has too little to find',
      'asFound.planted',
      { ...hut, asFound: { ...hut.asFound, planted: hut.asFound.planted.slice(0, 2) } },
    ],
    ['has no board to spare', 'asFound.spareBoards', { ...hut, asFound: { ...hut.asFound, spareBoards: 1 } }],
    ['has no machine to lift with', 'machine', { ...hut, methods: { ...hut.methods, hang: ['machine'] } }],
    ['has no par', 'par.hand', { ...hut, par: { posts: 500 } }],
    [
      'has no chances stored',
      'roof',
      { ...hut, plan: { ...hut.plan, length: 216 as Level['plan']['length'] } },
    ],
  ])('%s', (_what, path, level) => {
    expect(pathsOf(level)).toContain(path);
  });

  it('has a par no clean run comes near', () => {
    expect(provedComplaints({ ...hut, par: { posts: 200, hand: 200 } }, 2).map(({ path }) => path)).toEqual([
      'par.posts',
      'par.hand',
    ]);
  });

  it('cannot be finished: too few boards for its rafters', () => {
    const { planted } = hut.asFound;
    const split = { fault: 'splitAtNotch', at: 'board.any', by: 1 } as const;
    const complaints = provedComplaints(
      { ...hut, asFound: { ...hut.asFound, planted: [...planted, split, split, split] } },
      1,
    );
    expect(complaints[0]?.wrong).toMatch(/does not pass/);
  });

  it('is told apart by its path or its id', () => {
    expect(loadLevel('garden-hut').ok).toBe(true);
    expect(loadLevel('levels/first-gable/garden-hut.json').ok).toBe(true);
    expect(loadLevel('no-such-level').ok).toBe(false);
  });
});
