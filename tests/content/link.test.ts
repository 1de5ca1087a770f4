import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { linkOf, linkKinds, longestLink, readLink } from '../../src/content/link';
import { english } from './english';

const kinds = fc.constantFrom(...linkKinds);
const wrongIn = (fragment: string): string => {
  const read = readLink(fragment);
  if (!read || read.ok) throw new Error('was read');
  expect(read.complaints).toHaveLength(1);
  return english(read.complaints[0]?.wrong ?? '');
};

describe('a link', () => {
  it('gives back what was put in, whatever it is', () => {
    fc.assert(
      fc.property(kinds, fc.string({ unit: 'grapheme', maxLength: 2000 }), (kind, text) => {
        expect(readLink(linkOf({ kind, text }))).toEqual({ ok: true, value: { kind, text } });
      }),
    );
  });

  it('needs no character that an address would spell out', () => {
    fc.assert(
      fc.property(kinds, fc.string(), (kind, text) => {
        expect(linkOf({ kind, text })).toMatch(/^#[a-z]+=1\.[\w-]*\.[0-9a-f]{10}$/);
      }),
    );
  });

  it('is refused when a character of it is changed, or its end is lost', () => {
    const whole = linkOf({ kind: 'roof', text: '{"format":"tack-and-true/roof@1","span":"24\' 3-1/2\\""}' });
    for (let at = '#roof='.length; at < whole.length; at++) {
      const other = whole[at] === 'a' ? 'b' : 'a';
      expect(wrongIn(whole.slice(0, at) + other + whole.slice(at + 1))).toMatch(/cut|changed/);
      expect(wrongIn(whole.slice(0, at))).toMatch(/cut/);
    }
  });

  it('is not read as a link of another kind', () => {
    const roof = linkOf({ kind: 'roof', text: '{}' });
    expect(wrongIn(roof.replace('#roof', '#assignment'))).toMatch(/changed/);
    expect(readLink(roof.replace('#roof', '#other'))).toBeUndefined();
    expect(readLink('')).toBeUndefined();
  });

  it('says when it is newer than whoever reads it', () => {
    expect(wrongIn(linkOf({ kind: 'roof', text: '{}' }).replace('=1.', '=2.'))).toMatch(/newer/);
  });

  it('is refused unread when it is longer than any of ours', () => {
    expect(wrongIn(`#roof=1.${'A'.repeat(longestLink)}.0000000000`)).toMatch(/long/);
  });

  it('that would unpack to more than a file may hold is not unpacked', () => {
    expect(wrongIn(linkOf({ kind: 'roof', text: ' '.repeat(1_000_001) }))).toMatch(/unpacked/);
  });
});
