import { attemptFile, attemptText } from '../content/attemptFile';
import { scoreOf } from '../core/score/scored';
import type { Attempt } from '../core/site/attempt';

/** Offers a run as a file, over or not: its acts and what is claimed of them. */
export const saveFile = (attempt: Attempt): void => {
  const text = attemptText(attemptFile(attempt, scoreOf(attempt)));
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  link.download = `${attempt.level.id}-${attempt.seed}.attempt.json`;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 1000);
};
