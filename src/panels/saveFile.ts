import { attemptFile, attemptText } from '../content/attemptFile';
import { scoreOf } from '../core/score/scored';
import type { Session } from '../session/session';

/** A file that a page offers. */
export type Offered = { readonly name: string; readonly text: string; readonly type: string };

/** A run as a file, over or not: its acts, what is claimed of them, and for whom it was made. */
export const runFile = ({
  attempt: { value: attempt },
  handed,
}: Pick<Session, 'attempt' | 'handed'>): Offered => {
  const who = handed.learner === undefined ? '' : `${handed.learner}-`;
  return {
    name: `${who}${attempt.level.id}-${attempt.seed}.attempt.json`,
    text: attemptText(attemptFile(attempt, scoreOf(attempt), handed)),
    type: 'application/json',
  };
};

export const saveFile = (session: Session): void => offer(runFile(session));

/** Puts a file where the browser puts what was downloaded. */
export const offer = ({ name, text, type }: Offered): void => {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([text], { type }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 1000);
};
