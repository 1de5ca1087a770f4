import { attemptFile, attemptText } from '../content/attemptFile';
import type { Score } from '../core/score/score';
import type { Session } from '../session/session';
import { openProof, startRun, wordsOf, type Desk } from './desk';

type EndingProps = { readonly desk: Desk; readonly session: Session; readonly score: Score };

/** What can be done with the run besides going on, and what it is worth. */
export const Ending = ({ desk, session, score }: EndingProps) => {
  const words = wordsOf(desk);
  const { level, mode, seed } = session.attempt.value;
  const again = (): void => {
    desk.seed.value = seed;
    void startRun(desk, level, mode);
  };
  return (
    <>
      <div class="others">
        {mode !== 'check-off' && (
          <button type="button" class="btn small" id="again" onClick={again}>
            {words.ui.debrief.again}
          </button>
        )}
        <button type="button" class="btn small" id="save" onClick={() => saveFile(session, score)}>
          {words.ui.debrief.file}
        </button>
        <button type="button" class="btn small" id="print" onClick={() => print()}>
          {words.ui.debrief.print}
        </button>
      </div>
      <p class="dim worth">
        {words.ui.debrief.validity}{' '}
        <button type="button" class="link" id="worth" onClick={() => openProof(desk)}>
          {words.proof.title}
        </button>
      </p>
    </>
  );
};

/** Offers the run as a file: its acts and what is claimed of them. */
const saveFile = (session: Session, score: Score): void => {
  const text = attemptText(attemptFile(session.attempt.value, score));
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  link.download = `${session.attempt.value.level.id}-${session.attempt.value.seed}.attempt.json`;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 1000);
};
