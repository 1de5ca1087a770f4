import { attemptFile, attemptText } from '../content/attemptFile';
import { scoreOf } from '../core/score/scored';
import type { Attempt } from '../core/site/attempt';
import { saveText } from './saveText';

/** Offers a run as a file, over or not: its acts and what is claimed of them. */
export const saveFile = (attempt: Attempt): void =>
  saveText({
    name: `${attempt.level.id}-${attempt.seed}.attempt.json`,
    type: 'application/json',
    text: attemptText(attemptFile(attempt, scoreOf(attempt))),
  });
