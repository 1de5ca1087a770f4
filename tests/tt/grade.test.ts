import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { seedFor } from '../../src/content/assignment';
import { attemptFile, attemptText, type AttemptFile } from '../../src/content/attemptFile';
import { digestOf } from '../../src/content/canonical';
import { play } from '../../src/core/hands/play';
import { rulesVersion } from '../../src/core/order/version';
import { scoreOf } from '../../src/core/score/scored';
import { gradeVerb } from '../../src/tt/grade';
import { playVerb } from '../../src/tt/play';
import { levelOf } from '../site/levels';

const folder = mkdtempSync(join(tmpdir(), 'grade-'));
const level = levelOf('garden-hut');
const assignment = {
  format: 'tack-and-true/assignment@1',
  id: 'week-3',
  levels: ['garden-hut'],
  mode: 'check-off',
};
const seed = seedFor(assignment, 'garden-hut', 'R7');
const attempt = play(level, 'reads-nothing', { seed, wanted: { hang: 'hand' } });
const honest = attemptFile(attempt, scoreOf(attempt), { assignment: 'week-3', learner: 'R7' });

const sealed = (change: Partial<AttemptFile>): AttemptFile => {
  const { digest: _digest, ...rest } = { ...honest, ...change };
  return { ...rest, digest: digestOf(rest) };
};
let count = 0;
const kept = (text: string): string => {
  const file = join(folder, `${count++}.json`);
  writeFileSync(file, text);
  return file;
};
const asFile = (file: AttemptFile): string => kept(attemptText(file));

afterEach(() => {
  vi.restoreAllMocks();
});

const run = async (verb: typeof gradeVerb, args: readonly string[]) => {
  const out: string[] = [];
  const err: string[] = [];
  vi.spyOn(process.stdout, 'write').mockImplementation((text) => out.push(String(text)) > 0);
  vi.spyOn(process.stderr, 'write').mockImplementation((text) => err.push(String(text)) > 0);
  const code = await verb(args);
  vi.restoreAllMocks();
  return {
    code,
    printed: out
      .join('')
      .split('\n')
      .filter(Boolean)
      .map((line) => JSON.parse(line) as Record<string, unknown>),
    err: err.join(''),
  };
};

describe('grade', () => {
  it('holds what is true, and scores it afresh', async () => {
    const file = asFile(honest);
    const { code, printed } = await run(gradeVerb, [
      'garden-hut',
      file,
      '--learner',
      'R7',
      '--assignment',
      kept(JSON.stringify(assignment)),
    ]);
    expect(code).toBe(0);
    expect(printed).toHaveLength(1);
    expect(printed[0]).toMatchObject({
      file,
      holds: true,
      total: honest.claimed.total,
      parts: honest.claimed.parts,
    });
  });

  it.each<readonly [string, Partial<AttemptFile>, RegExp]>([
    [
      'a better total than its acts give',
      { claimed: { ...honest.claimed, total: 93 } },
      /claims 93, its acts give/,
    ],
    [
      'a better part',
      { claimed: { ...honest.claimed, parts: { ...honest.claimed.parts, checks: 1 } } },
      /claims 1 for checks/,
    ],
    ['an act more', { actions: honest.actions.slice(0, -20) }, /its acts give/],
    ['another level', { level: { ...honest.level, id: 'boathouse' } }, /played on level boathouse/],
    ['another version of the level', { level: { ...honest.level, digest: 'f00' } }, /another version/],
    ['another assignment', { assignment: 'week-4' }, /made for week-4/],
    ['no assignment', { assignment: undefined as unknown as string }, /no assignment|digest/],
    ['another learner', { learner: 'Q2' }, /handed in by Q2/],
    ['another seed', { seed: seed + 1 }, /seed/],
    ['another mode', { mode: 'own' }, /played as own/],
  ])('does not hold with %s', async (_what, change, why) => {
    const { code, printed } = await run(gradeVerb, [
      'garden-hut',
      asFile(sealed(change)),
      '--learner',
      'R7',
      '--assignment',
      kept(JSON.stringify(assignment)),
    ]);
    expect(printed[0]).toMatchObject({ holds: false });
    expect(printed[0]?.['why']).toMatch(why);
    expect(code).toBe(1);
  });

  it('does not hold when the file was changed under its digest', async () => {
    const { code, printed } = await run(gradeVerb, [
      'garden-hut',
      asFile({ ...honest, seed: honest.seed + 1 }),
    ]);
    expect(printed[0]).toMatchObject({ holds: false, why: 'the digest does not fit the rest of the file' });
    expect(code).toBe(1);
  });

  it('says so when it was made under other rules, and does not call it false', async () => {
    const { code, printed } = await run(gradeVerb, [
      'garden-hut',
      asFile(sealed({ rules: rulesVersion + 1, claimed: { total: 3, parts: {} } })),
    ]);
    expect(printed[0]).toMatchObject({ holds: 'otherRules', total: honest.claimed.total });
    expect(code).toBe(0);
  });

  it('prints one line a file and ends with the worst of them', async () => {
    const files = [asFile(honest), asFile(sealed({ claimed: { ...honest.claimed, total: 93 } }))];
    const { code, printed } = await run(gradeVerb, ['garden-hut', ...files]);
    expect(printed.map(({ holds }) => holds)).toEqual([true, false]);
    expect(code).toBe(1);
  });

  it.each([
    ['no file', () => ['garden-hut']],
    ['no level of that name', () => ['no-such-level', asFile(honest)]],
    ['a file that is not there', () => ['garden-hut', join(folder, 'none.json')]],
    ['a file that is no JSON', () => ['garden-hut', kept('{')]],
    ['a file that is no attempt', () => ['garden-hut', kept('{"format":"tack-and-true/attempt@1"}')]],
    ['an assignment that is none', () => ['garden-hut', asFile(honest), '--assignment', kept('{}')]],
    ['an option there is not', () => ['garden-hut', asFile(honest), '--loud']],
  ])('cannot use %s', async (_what, args) => {
    const { code, printed, err } = await run(gradeVerb, args());
    expect(code).toBe(2);
    expect(printed).toEqual([]);
    expect(err.trim().length).toBeGreaterThan(0);
  });
});

describe('play', () => {
  it('prints one result, and its file holds', async () => {
    const file = join(folder, 'played.json');
    const played = await run(playVerb, ['garden-hut', '--hand', 'expert', '--seed', '11', '--out', file]);
    expect(played.code).toBe(0);
    expect(played.printed).toHaveLength(1);
    expect(played.printed[0]).toMatchObject({
      level: 'garden-hut',
      hand: 'expert',
      seed: 11,
      pass: true,
      done: 1,
      sound: true,
    });
    const graded = await run(gradeVerb, ['garden-hut', file]);
    expect(graded.printed[0]).toMatchObject({ holds: true, total: played.printed[0]?.['total'] });
  });

  it.each([
    [['garden-hut']],
    [['garden-hut', '--hand', 'nobody']],
    [['garden-hut', '--hand', 'idle', '--seed', 'x']],
    [['garden-hut', '--hand', 'idle', '--mode', 'loud']],
    [['no-such-level', '--hand', 'idle']],
  ])('refuses %j', async (args) => {
    const { code, printed } = await run(playVerb, args);
    expect(code).toBe(2);
    expect(printed).toEqual([]);
  });
});
