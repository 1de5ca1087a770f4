import type { Said } from '../../src/content/phrase';
import { phraseTold } from '../../src/present/words/refusalMessages';

/** What a complaint says, in the words of the command line. */
export const english = (said: Said): string => phraseTold('en', said);
