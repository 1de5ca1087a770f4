import { hair } from '../units/hair';

/** So many pieces of one length. Inches. */
export type Pieces = { readonly length: number; readonly count: number };

/** A piece of a spliced stick is at least so long, inches: it lies over two bays of the usual spacing. Ours. */
export const leastPiece = 48;

/**
 * A stick longer than any board, as pieces end to end: as few as can be, nearly alike, and their joints at marks. Where
 * joints may come anywhere they are alike. A piece is longer than the longest board only where no mark lies within reach.
 * Inches from the stick's first end, marks in order; neighboring pieces of one length are told as one entry.
 */
export const spliced = (
  length: number,
  marks: readonly number[] | 'anywhere',
  longest: number,
): readonly Pieces[] => {
  if (length <= longest + hair) return [{ length, count: 1 }];
  if (marks === 'anywhere') {
    const count = Math.ceil((length - hair) / longest);
    return [{ length: length / count, count }];
  }
  const usable = marks.filter((mark) => mark >= leastPiece && length - mark >= leastPiece);
  const pieces: { readonly length: number; count: number }[] = [];
  let [from, next] = [0, 0];
  while (from < length - hair) {
    const { to, at } = nextJoint({ from, next, length }, usable, longest);
    const last = pieces.at(-1);
    if (last && Math.abs(last.length - (to - from)) < hair) last.count += 1;
    else pieces.push({ length: to - from, count: 1 });
    [from, next] = [to, at];
  }
  return pieces;
};

type Reached = { readonly from: number; readonly next: number; readonly length: number };

/** The first mark past an even share of what is left, the last one in reach, or the next one at all; then the end. */
const nextJoint = (
  { from, next, length }: Reached,
  marks: readonly number[],
  longest: number,
): { readonly to: number; readonly at: number } => {
  const left = length - from;
  if (left <= longest + hair) return { to: length, at: next };
  const share = from + left / Math.ceil((left - hair) / longest);
  let at = next;
  while ((marks[at] ?? Infinity) <= from + hair) at++;
  const inReach = (i: number): boolean => (marks[i] ?? Infinity) <= from + longest + hair;
  while ((marks[at] ?? Infinity) < share - hair && inReach(at + 1)) at++;
  return { to: marks[at] ?? length, at: at + 1 };
};
