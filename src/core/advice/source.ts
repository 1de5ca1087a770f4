/**
 * How sure a published figure is: read in a copy of it, read in a page that quotes it, reckoned anew from a published formula
 * whose figures were read, or from memory. What is from memory is told as such, and a printed copy has to be asked.
 */
export type Sure = 'read' | 'secondHand' | 'recalculated' | 'memory';

export type Source = { readonly document: string; readonly section: string; readonly sure: Sure };

const manners: Readonly<Record<Sure, string>> = {
  read: 'read',
  secondHand: 'read second hand',
  recalculated: 'reckoned anew',
  memory: 'from memory, not checked: ask the plans',
};

/** `IRC R802.5.2 (read second hand)`: a source as it is told beside what it says. */
export const sourceText = ({ document, section, sure }: Source): string =>
  `${document} ${section} (${manners[sure]})`;
