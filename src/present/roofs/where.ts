import type { RoofMessages } from '../words/roofMessages';

/** Where on the roof something is, from what the figures call it: `wing 2`, `street side`, `dormer, yard side`. */
export const whereText = ({ roofs: { where } }: RoofMessages, side: string, part?: string): string => {
  const [, of = '', number = ''] = /^([a-z]+)(\d*)$/.exec(part ?? '') ?? [];
  const names: Readonly<Record<string, string>> = where;
  const named = names[of] === undefined ? undefined : `${names[of]} ${number}`.trim();
  const at = names[side] ?? side;
  if (named === undefined) return at;
  return side === 'both' || side === 'all' ? named : `${named}, ${at}`;
};

/** The part of the roof that an id names: `common.wing2` → `wing2`; nothing where it is a side or a number. */
export const partOfId = (id: string): string | undefined =>
  /\.((?:wing|dormer|section)\d*|lower|upper)/.exec(id)?.[1];
