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

export const methodTopics: readonly string[] = ['hang', 'ties', 'stack', 'upper', 'ridgeLength', 'tails'];
