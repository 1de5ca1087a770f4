/**
 * What the gate has to say of a file: a code, and what it is filled with. Catalogues tell it in the language of the page.
 * What fits a roof and what does not is said by its readers in English sentences, which stand beside phrases.
 */
export type Said = string | Phrase;
export type Phrase = OnePhrase | readonly [code: 'either', ...all: readonly (string | OnePhrase)[]];
type OnePhrase = {
  readonly [Code in keyof Filled]: readonly [code: Code, ...values: Filled[Code]];
}[keyof Filled];

/** What a limit counts. */
export type Counted = 'entries' | 'characters';

type Filled = Wrongs & Accepteds;

type Wrongs = {
  readonly missing: [];
  readonly found: [what: string];
  readonly notAKey: [];
  readonly cannotRead: [];
  readonly tooLarge: [megabytes: number];
  readonly empty: [];
  readonly notJson: [];
  readonly tooDeep: [];
  readonly newer: [what: string];
  readonly digestOff: [];
  readonly noRun: [];
  readonly cannotReplay: [];
  readonly linkLong: [];
  readonly linkNewer: [];
  readonly linkShort: [];
  readonly linkChanged: [];
  readonly linkPacked: [];
  readonly kindNotPlayed: [kind: string];
  readonly notPlayed: [];
  readonly oneSided: [];
  readonly untied: [];
  readonly manyPairs: [pairs: number];
  readonly notFramed: [];
  readonly noForm: [];
  readonly noField: [];
};

type Accepteds = {
  /** As an engine words it. */
  readonly ownError: [error: string];
  /** As a file writes it, in any language. */
  readonly these: [text: string];
  readonly object: [];
  readonly array: [];
  readonly string: [];
  readonly number: [];
  readonly int: [];
  readonly boolean: [];
  readonly nonoptional: [];
  readonly otherValue: [];
  readonly otherText: [];
  readonly textLike: [pattern: string];
  readonly atLeast: [limit: number, of?: Counted];
  readonly atMost: [limit: number, of?: Counted];
  readonly moreThan: [limit: number, of?: Counted];
  readonly lessThan: [limit: number, of?: Counted];
  readonly day: [];
  readonly onlyKeys: [];
  readonly jsonObject: [];
  readonly fileAtMost: [megabytes: number];
  readonly levelsAtMost: [levels: number];
  readonly attemptFile: [];
  readonly levelFile: [];
  readonly asWritten: [];
  readonly linkAtMost: [characters: number];
  readonly linkOlder: [];
  readonly linkWhole: [];
  readonly plainRoof: [];
  readonly ledgerLifted: [];
  readonly ledgerWild: [];
  readonly postEachSide: [];
  readonly tied: [];
  readonly pairsAtMost: [pairs: number];
  readonly framable: [];
  readonly askedFor: [];
  readonly ofTheForm: [];
};
