import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import { digestOf } from '../../src/content/canonical';
import { fileKey } from '../../src/records/fileKey';

/** Two ways to the same digest: the browser's own SHA-256, and a library's where the browser has none to offer. */
describe('the key of a file', () => {
  it('is the digest of its text, whatever it holds', async () => {
    await fc.assert(
      fc.asyncProperty(fc.string({ unit: 'binary' }), async (text) => {
        expect(await fileKey(text)).toBe(digestOf(text));
      }),
    );
  });

  it('is the same on a page that may not ask the browser', async () => {
    const there = await fileKey('{"a":1}');
    vi.stubGlobal('crypto', {});
    expect(await fileKey('{"a":1}')).toBe(there);
    vi.unstubAllGlobals();
  });
});
