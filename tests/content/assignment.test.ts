import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  assignmentText,
  bareText,
  codeOf,
  isDay,
  readAssignment,
  seedFor,
  type Assignment,
} from '../../src/content/assignment';
import { linkOf, readLink } from '../../src/content/link';
import { modes } from '../../src/core/level/mode';
import { complaintLine } from '../../src/present/words/refusalMessages';

/** What is given out comes back as it was, or is refused with the place. */

const text = (maxLength: number) => fc.string({ unit: 'grapheme', minLength: 1, maxLength });
const days = fc
  .date({ min: new Date('2000-01-01'), max: new Date('2999-12-31'), noInvalidDate: true })
  .map((day) => day.toISOString().slice(0, 10));

const assignments: fc.Arbitrary<Assignment> = fc.record(
  {
    id: text(20),
    label: text(40),
    levels: fc.array(text(20), { minLength: 1, maxLength: 10 }),
    mode: fc.constantFrom(...modes),
    seeds: fc.constantFrom('each', 'same'),
    due: days,
    passLine: fc.integer({ min: 0, max: 100 }),
  },
  { requiredKeys: ['id', 'levels', 'mode'] },
);

const wrongIn = (file: string): string => {
  const read = readAssignment(file);
  if (read.ok) throw new Error('was read');
  return complaintLine('a.json', read.complaints[0]!);
};

describe('an assignment', () => {
  it('comes back from its file and from its link as it was', () => {
    fc.assert(
      fc.property(assignments, (assignment) => {
        expect(readAssignment(assignmentText(assignment))).toEqual({ ok: true, value: assignment });
        const linked = readLink(linkOf({ kind: 'assignment', text: bareText(assignment) }));
        if (!linked?.ok) throw new Error('the link was not read');
        expect(readAssignment(linked.value.text)).toEqual({ ok: true, value: assignment });
      }),
    );
  });

  it('reads what was written before there were sites, a day, a line and a digest', () => {
    const old = '{"format":"tack-and-true/assignment@1","id":"week-3","levels":["a"],"mode":"own"}';
    expect(readAssignment(old)).toEqual({ ok: true, value: { id: 'week-3', levels: ['a'], mode: 'own' } });
  });

  it('is refused when any character of its file is changed or its end is lost', () => {
    const whole = assignmentText({ id: 'w3', levels: ['garden-hut'], mode: 'own', passLine: 75 });
    for (let at = 0; at < whole.length; at++) {
      const other = whole[at] === '7' ? '8' : '7';
      expect(readAssignment(whole.slice(0, at) + other + whole.slice(at + 1)).ok, `at ${at}`).toBe(false);
      expect(readAssignment(whole.slice(0, at)).ok).toBe(false);
    }
  });

  it.each([
    ['a newer version', { format: 'tack-and-true/assignment@2' }, /format: .*newer version/],
    ['another kind of file', { format: 'tack-and-true/attempt@1' }, /format: is/],
    ['a day there is not', { due: '2031-02-30' }, /due: .*a day like/],
    ['a line past all points', { passLine: 101 }, /passLine: is 101 \(at most 100\)/],
    ['sites for some', { seeds: 'some' }, /seeds: .*"each", "same"/],
    ['no levels', { levels: [] }, /levels: .*at least 1 entries/],
    ['a key of nobody', { teacher: 'x' }, /teacher: is not a key here/],
  ])('names the place where it has %s', (_what, change, line) => {
    const whole = { format: 'tack-and-true/assignment@1', id: 'w3', levels: ['a'], mode: 'own', ...change };
    expect(wrongIn(JSON.stringify(whole))).toMatch(line);
  });
});

describe('the sites of an assignment', () => {
  const codes = fc.stringMatching(/^[A-Z0-9]{2,12}$/);
  it('are one for all where it says so, and otherwise hang on the code, the level and the assignment', () => {
    fc.assert(
      fc.property(codes, codes, text(12), text(12), (one, other, id, level) => {
        const same = { id, seeds: 'same' } as const;
        expect(seedFor(same, level, one)).toBe(seedFor(same, level, other));
        expect(seedFor({ id }, level, one)).toBe(seedFor({ id, seeds: 'each' }, level, one));
        if (one !== other) expect(seedFor({ id }, level, one)).not.toBe(seedFor({ id }, level, other));
        expect(seedFor({ id }, level, one)).not.toBe(seedFor({ id }, `${level}2`, one));
        expect(seedFor({ id }, level, one)).not.toBe(seedFor({ id: `${id}2` }, level, one));
        expect(Number.isInteger(seedFor({ id }, level, one))).toBe(true);
      }),
    );
  });
});

describe('a learner’s code', () => {
  it.each([
    ['r7', 'R7'],
    [' Q2 ', 'Q2'],
    ['ABCDEF123456', 'ABCDEF123456'],
  ])('%j is %s', (typed, code) => expect(codeOf(typed)).toBe(code));

  it.each(['', 'R', 'R 7', 'Ñ7', '=R7', 'ABCDEF1234567', '<b>', 'R7\n8', '٣٣'])('%j is none', (typed) =>
    expect(codeOf(typed)).toBeUndefined(),
  );
});

it('knows a day of the calendar', () => {
  expect(['2031-04-30', '2028-02-29'].map(isDay)).toEqual([true, true]);
  expect(['2031-04-31', '2031-2-03', '2027-02-29', 'tomorrow', ''].some(isDay)).toBe(false);
});
