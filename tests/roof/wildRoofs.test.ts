import fc from 'fast-check';
import { expect, it } from 'vitest';
import { tryRoof, wildRoof } from './wildRoofs';

it('any file is refused in words or figured in numbers', () => {
  let figured = 0;
  fc.assert(
    fc.property(wildRoof, (file) => {
      const tried = tryRoof(file);
      figured += tried.figured ? 1 : 0;
      expect(tried.wrong).toEqual([]);
    }),
    { numRuns: 1500, endOnFailure: true },
  );
  // Files that are all refused would prove nothing.
  expect(figured).toBeGreaterThan(150);
});
