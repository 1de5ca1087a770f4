/** What the crew agrees before it starts. Choosing another accepted method switches rules; it breaks none. */
export type Methods = {
  readonly hang: 'machine' | 'posts' | 'hand';
  readonly ties: 'joistsFirst' | 'byPair';
  readonly stack: 'oneSide' | 'alternate';
  readonly upper: 'collars' | 'straps';
  readonly ridgeLength: 'cut' | 'wild';
  readonly tails: 'first' | 'snapped';
};
/** `signals` is agreed too, but is no choice of method: it makes the crew ready for a machine. */
export type Topic = keyof Methods | 'signals';

/** What each level accepts, the usual way first. */
export type AcceptedMethods = { readonly [K in keyof Methods]: readonly Methods[K][] };

export const methodTopics = [
  'hang',
  'ties',
  'stack',
  'upper',
  'ridgeLength',
  'tails',
] as const satisfies readonly (keyof Methods)[];

/** Whether tails may be left long at all: where they may not, they are as figured and nobody looks at them. */
export const asksForTails = ({ tails }: AcceptedMethods): boolean => tails.includes('snapped');

/** What there is to agree on a level. */
export const topicsOf = (methods: AcceptedMethods): readonly (keyof Methods)[] =>
  methodTopics.filter((topic) => topic !== 'tails' || asksForTails(methods));
