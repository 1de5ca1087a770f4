import { lineCount, textWidth, type Face } from './textSize';

/** Sizes on a set card, in points: figures are read at arm's length on a tailgate. */

export const papers = {
  letter: { width: 612, height: 792 },
  a4: { width: 595, height: 841 },
} as const;

export type Paper = keyof typeof papers;

/** Blank at all four edges: no printer needs more. */
export const margin = 28;

export const type = {
  word: { size: 11, line: 13.5, face: 'word' },
  strong: { size: 11, line: 13.5, face: 'strong' },
  figure: { size: 15, line: 18, face: 'narrow' },
  title: { size: 21, line: 24, face: 'strong' },
} as const satisfies Readonly<Record<string, { size: number; line: number; face: Face }>>;

export type TypeName = keyof typeof type;

/** Other faces than ours may stand in, and browsers round: lines are counted as if they were this much shorter. */
const slack = 0.965;

export const heightOf = (text: string, width: number, name: TypeName): number => {
  const { size, line, face } = type[name];
  return lineCount(text, width * slack, { size, face }) * line;
};

export const widthOf = (text: string, name: TypeName): number =>
  textWidth(text, type[name].size, type[name].face) / slack;

export const inside = (paper: Paper): number => papers[paper].width - 2 * margin;
