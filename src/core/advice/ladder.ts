import type { Source } from './source';

export const ladderSource: Source = { document: '29 CFR', section: '1926.1053(b)', sure: 'secondHand' };

/** Foot out from the wall, as a part of the working length; a job-built ladder with spliced rails stands steeper. */
const footShares = { bought: 1 / 4, spliced: 1 / 8 } as const;
export type Ladder = keyof typeof footShares;

/** How far its rails go over the landing, inches. */
export const railsOver = 36;

/** Foot from the wall for a working length, foot to upper rest; the same unit. */
export const footOut = (working: number, ladder: Ladder = 'bought'): number => working * footShares[ladder];

/** Working length that leans so against a landing, and how high over the ground the rails end. Inches. */
export const ladderTo = (
  landing: number,
  ladder: Ladder = 'bought',
): { readonly working: number; readonly foot: number; readonly railsAt: number } => {
  const share = footShares[ladder];
  const working = landing / Math.sqrt(1 - share * share);
  return { working, foot: footOut(working, ladder), railsAt: landing + railsOver };
};
