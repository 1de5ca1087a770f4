import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leastPiece, spliced, type Pieces } from '../../src/core/stock/splices';

const longest = 288;
const sumOf = (pieces: readonly Pieces[]): number =>
  pieces.reduce((sum, { length, count }) => sum + length * count, 0);
const jointsOf = (pieces: readonly Pieces[]): readonly number[] => {
  const each = pieces.flatMap(({ length, count }) => Array.from({ length: count }, () => length));
  return each.slice(0, -1).map((_, i) => each.slice(0, i + 1).reduce((sum, one) => sum + one, 0));
};

const marked = fc.record({
  length: fc.double({ min: 10, max: 4000, noNaN: true }),
  spacing: fc.constantFrom(12, 16, 19.2, 24, 48),
  first: fc.double({ min: 0, max: 24, noNaN: true }),
});
const marksOf = ({ length, spacing, first }: { length: number; spacing: number; first: number }) =>
  Array.from({ length: Math.floor((length - first) / spacing) + 1 }, (_, i) => first + i * spacing).filter(
    (mark) => mark <= length,
  );

describe('a stick longer than any board', () => {
  it('is its pieces, none longer than a board, with every joint on a mark and none of it a stub', () => {
    fc.assert(
      fc.property(marked, (so) => {
        const marks = marksOf(so);
        const pieces = spliced(so.length, marks, longest);
        const joints = jointsOf(pieces);
        // Pieces within a millionth of each other are told as one, each of them so far off at most.
        const off = 1e-6 * joints.length + 1e-9;
        expect(Math.abs(sumOf(pieces) - so.length)).toBeLessThan(off);
        for (const { length } of pieces) expect(length).toBeLessThanOrEqual(longest + 1e-6);
        for (const joint of joints) {
          expect(Math.min(...marks.map((mark) => Math.abs(mark - joint)))).toBeLessThan(off);
          expect(Math.min(joint, so.length - joint)).toBeGreaterThan(leastPiece - off);
        }
      }),
    );
  });

  it('is of equal pieces, as few as can be, where joints may come anywhere', () => {
    expect(spliced(600, 'anywhere', longest)).toEqual([{ length: 200, count: 3 }]);
    expect(spliced(576, 'anywhere', longest)).toEqual([{ length: 288, count: 2 }]);
  });

  it('stays whole where it fits, and where no mark lies within reach', () => {
    expect(spliced(288, [144], longest)).toEqual([{ length: 288, count: 1 }]);
    expect(spliced(312, [1.75, 310.25], longest)).toEqual([{ length: 312, count: 1 }]);
    expect(spliced(700, [350], longest)).toEqual([{ length: 350, count: 2 }]);
  });

  it('is cut past the middle rather than at the end of the longest board', () => {
    const marks = Array.from({ length: 14 }, (_, i) => 24 * i);
    expect(spliced(312, marks, longest)).toEqual([
      { length: 168, count: 1 },
      { length: 144, count: 1 },
    ]);
  });
});
