import { fileAcceptedSayings, fileWrongSayings } from './fileSayings';
import { heedSayings } from './heedSayings';
import { acceptedSayings, wrongSayings } from './refusalSayings';
import type { Saying } from './saying';

/** All of them, from the narrowest to the widest of each list. */
export const sayings: readonly Saying[] = [
  ...heedSayings,
  ...fileWrongSayings,
  ...wrongSayings,
  ...fileAcceptedSayings,
  ...acceptedSayings,
];
