import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { seedFor, type Assignment } from '../../src/content/assignment';
import { attemptFile, attemptText, type AttemptFile } from '../../src/content/attemptFile';
import { digestOf } from '../../src/content/canonical';
import { play } from '../../src/core/hands/play';
import { replay } from '../../src/core/hands/opened';
import { rulesVersion } from '../../src/core/order/version';
import { scoreOf } from '../../src/core/score/scored';
import { markText, type Outcome } from '../../src/records/marked';
import { complaintLine } from '../../src/present/words/refusalMessages';
import { levelOf } from '../site/levels';

/** Whatever is done to a file, it holds only if its claim is what the replay gives, on the site of who hands it in. */

const level = levelOf('pump-house');
const assignment: Assignment = { id: 'week3', levels: [level.id], mode: 'own' };
const shelf = { levels: [level], assignments: [assignment] };
const seed = seedFor(assignment, level.id, 'R7');
const attempt = play(level, 'competent', { seed, mode: 'own' });
const handed = { assignment: assignment.id, learner: 'R7' };
const honest = attemptFile(attempt, scoreOf(attempt), handed);
const text = attemptText(honest);

const sealed = (change: Partial<AttemptFile>): string => {
  const { digest: _digest, ...rest } = { ...honest, ...change };
  return attemptText({ ...rest, digest: digestOf(rest) });
};
const holds = (outcome: Outcome): unknown => outcome.ok && outcome.marked.holds;
const mark = (file: string): Outcome => markText(shelf, file);
const lineOf = (file: string): string => {
  const outcome = mark(file);
  if (outcome.ok) throw new Error('was taken for a run');
  return complaintLine('r7.json', outcome.complaint);
};
const why = (file: string): string | undefined => {
  const outcome = mark(file);
  return outcome.ok ? outcome.marked.why?.code : undefined;
};

describe('a file of a run', () => {
  it('holds as it was written, and tells what the replay found', () => {
    const outcome = mark(text);
    expect(holds(outcome)).toBe(true);
    const told = outcome.ok ? outcome.marked.told : undefined;
    expect(told).toMatchObject({ total: honest.claimed.total, parts: honest.claimed.parts });
  });

  it('does not hold with any one byte of it changed', () => {
    const place = fc.nat({ max: text.length - 1 });
    const letter = fc.integer({ min: 32, max: 126 }).map((code) => String.fromCharCode(code));
    fc.assert(
      fc.property(place, letter, (at, other) => {
        fc.pre(text[at] !== other);
        expect(holds(mark(text.slice(0, at) + other + text.slice(at + 1)))).toBe(false);
      }),
      { numRuns: 400 },
    );
  });

  it('does not hold cut off anywhere', () => {
    fc.assert(
      fc.property(fc.nat({ max: text.length - 1 }), (at) => {
        expect(mark(text.slice(0, at)).ok).toBe(false);
      }),
    );
  });

  const { total, parts } = honest.claimed;
  it.each<readonly [string, Partial<AttemptFile>, string]>([
    ['more points', { claimed: { total: total + 0.01, parts } }, 'total'],
    ['a better part', { claimed: { total, parts: { ...parts, checks: 1 } } }, 'part'],
    ['a part left out', { claimed: { total, parts: {} } }, 'part'],
    ['fewer acts', { actions: honest.actions.slice(0, 10) }, 'total'],
    ['a level that is not here', { level: { id: 'no-such', digest: honest.level.digest } }, 'noLevel'],
    ['another text of the level', { level: { id: level.id, digest: '0' } }, 'changedLevel'],
    ['a classmate’s code', { learner: 'Q2' }, 'otherSite'],
    ['another seed', { seed: seed + 1 }, 'otherSite'],
    ['another way of playing', { mode: 'list' }, 'otherMode'],
  ])('sealed anew with %s does not hold, and why is named', (_what, change, code) => {
    expect(holds(mark(sealed(change)))).toBe(false);
    expect(why(sealed(change))).toBe(code);
  });

  it('sealed anew holds when its claim is what its own acts give', () => {
    const shorter = honest.actions.slice(0, 20);
    const again = replay({ level, seed, mode: 'own' }, shorter);
    expect(holds(mark(attemptText(attemptFile(again, scoreOf(again), handed))))).toBe(true);
    expect(holds(mark(sealed({ actions: shorter })))).toBe(false);
  });

  it('of other rules is said to be so', () => {
    expect(holds(mark(sealed({ rules: rulesVersion + 1, claimed: { total: 3, parts: {} } })))).toBe(
      'otherRules',
    );
  });
});

describe('a hostile file', () => {
  const deep = `${'{"a":'.repeat(200)}1${'}'.repeat(200)}`;
  it.each([
    ['too large', `"${'x'.repeat(1_000_001)}"`, /\$: the file is over 1 MB/],
    ['empty', '', /\$: the file is empty/],
    ['no JSON', '{"format":', /\$: is not JSON/],
    [
      'a reach into the language',
      text.replace('{', '{"__proto__":{"holds":true},'),
      /__proto__: is not a key/,
    ],
    [
      'a reach deeper in',
      text.replace('"claimed":{', '"claimed":{"constructor":{},'),
      /claimed\.constructor: is not/,
    ],
    ['nested deep', text.replace('{', `{"x":${deep},`), /nested too deep/],
    ['another version', text.replace('attempt@1', 'attempt@2'), /format: is .*newer version/],
    ['a seed that is no whole number', text.replace(/"seed":\d+/, '"seed":1.5'), /seed: is 1\.5/],
    ['an act there is not', text.replace('"actions":[', '"actions":[{"type":"fly"},'), /actions\.0/],
  ])('%s is told in one line that names the place', (_what, file, line) => {
    const said = lineOf(file);
    expect(said).toMatch(line);
    expect(said).toMatch(/^r7\.json: \S+: .+ \(.+\)$/);
  });

  it('with a script for a name keeps it a text, on one line', () => {
    const name = '<img src=x onerror=alert(1)>\n\u202e=cmd()';
    const said = markText(shelf, '{');
    expect(said.ok ? '\n' : complaintLine(name, said.complaint)).not.toMatch(/[\n\u202e]/);
    const marked = mark(sealed({ learner: '<script>' }));
    expect(marked.ok && marked.marked.learner).toBe('<script>');
    expect(holds(marked)).toBe(false);
  });
});
