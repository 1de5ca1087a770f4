import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { draftOf } from '../../src/content/draft/roofDraft';
import { linkOf, longestLink, readLink } from '../../src/content/link';
import { readJson } from '../../src/content/readJson';
import type { Complaint } from '../../src/content/complaint';
import { sampleOf } from '../../src/content/draft/samples';
import { fileOf } from '../../src/content/draft/roofDraft';

/** Files and links as somebody hostile, or a bad connection, makes them. Each is told in a sentence with its place, or is a roof. */

const good = JSON.stringify({ ...fileOf(sampleOf('wing')), name: 'Reed shed' });

const nested = (depth: number): string => `${'{"a":'.repeat(depth)}1${'}'.repeat(depth)}`;

const hostile: fc.Arbitrary<string> = fc.oneof(
  fc.integer({ min: 0, max: good.length }).map((at) => good.slice(0, at)),
  fc
    .tuple(fc.integer({ min: 0, max: good.length }), fc.string({ maxLength: 3 }))
    .map(([at, text]) => good.slice(0, at) + text + good.slice(at + 1)),
  fc.integer({ min: 20, max: 5000 }).map(nested),
  fc
    .constantFrom('__proto__', 'constructor', 'prototype')
    .map((key) => good.replace('{', `{"${key}":{"polluted":1},`)),
  fc
    .constantFrom('tack-and-true/roof@2', 'tack-and-true/level@1', '', '<script>')
    .map((format) => good.replace('tack-and-true/roof@1', format)),
  fc
    .constantFrom('<script>alert(1)</script>', '"><img src=x onerror=alert(1)>', '\u202e', 'x'.repeat(5000))
    .map((name) => good.replace('"Reed shed"', JSON.stringify(name))),
  fc.json({ maxDepth: 6 }),
  fc.constant(`{"a":"${'x'.repeat(1_100_000)}"}`),
);

const complaintsOf = (text: string): readonly Complaint[] => {
  const json = readJson(text);
  const draft = json.ok ? draftOf(json.value) : json;
  return draft.ok ? [] : draft.complaints;
};

const isSentence = ({ path, wrong, accepted }: Complaint): boolean =>
  path !== '' && wrong !== '' && accepted !== '' && path.length < 400;

describe('what is no roof of ours', () => {
  it('is refused by place and reason as a file, and leaves nothing behind', () => {
    fc.assert(
      fc.property(hostile, (text) => {
        expect(complaintsOf(text).every(isSentence)).toBe(true);
        expect(({} as { polluted?: number }).polluted).toBeUndefined();
      }),
      { numRuns: 700 },
    );
  });

  it('is refused so as a link', () => {
    fc.assert(
      fc.property(hostile, fc.integer({ min: 0, max: 400 }), fc.boolean(), (text, at, cut) => {
        const whole =
          text.length > 100_000 ? `#roof=1.${'A'.repeat(longestLink)}.0` : linkOf({ kind: 'roof', text });
        const link = cut ? whole.slice(0, '#roof='.length + at) : whole;
        const read = readLink(link);
        if (!read) throw new Error('not seen as ours');
        const complaints = read.ok ? complaintsOf(read.value.text) : read.complaints;
        expect(complaints.every(isSentence)).toBe(true);
      }),
      { numRuns: 300 },
    );
  });

  it('never gets by where its kind, its version or its keys are not ours', () => {
    for (const [from, to] of [
      ['tack-and-true/roof@1', 'tack-and-true/roof@2'],
      ['"kind":"gable"', '"kind":"tower"'],
      ['"span"', '"spam"'],
    ] as const)
      expect(complaintsOf(good.replace(from, to)).length).toBeGreaterThan(0);
    expect(complaintsOf(good)).toEqual([]);
  });
});
