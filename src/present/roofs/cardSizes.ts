import { unbroken } from './drawSvg';
import { lineCount, type Face } from './textSize';

/** Sizes on a set card, in points: figures are read at arm's length on a tailgate. */

export const papers = {
  letter: { width: 612, height: 792 },
  a4: { width: 595, height: 841 },
} as const;

export type Paper = keyof typeof papers;

/** Blank at all four edges: no printer needs more. */
export const margin = 24;

export const type = {
  word: { size: 11, line: 13, face: 'word' },
  strong: { size: 11, line: 13, face: 'strong' },
  figure: { size: 14.5, line: 17, face: 'narrow' },
  title: { size: 21, line: 24, face: 'strong' },
} as const satisfies Readonly<Record<string, { size: number; line: number; face: Face }>>;

export type TypeName = keyof typeof type;

/** Other faces than ours may stand in, and browsers round: lines are counted as if they were this much shorter. */
const slack = 0.98;

export type Piece = { readonly text: string; readonly as: TypeName };

/** Of pieces that follow each other on the same lines. */
export const heightOfPieces = (pieces: readonly Piece[], width: number): number => {
  const runs = pieces.map(({ text, as }) => ({
    text: unbroken(text),
    size: type[as].size,
    face: type[as].face,
  }));
  return lineCount(runs, width * slack) * Math.max(...pieces.map(({ as }) => type[as].line));
};

export const heightOf = (text: string, width: number, as: TypeName): number =>
  heightOfPieces([{ text, as }], width);

export const inside = (paper: Paper): number => papers[paper].width - 2 * margin;
