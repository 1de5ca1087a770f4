import type { Session } from '../session/session';
import { ToAssignment } from './classes/beginAssigned';
import { saveFile } from './saveFile';
import { openProof, startRun, wordsOf, type Desk } from './desk';

type EndingProps = { readonly desk: Desk; readonly session: Session };

/** What can be done with the run besides going on, and what it is worth. */
export const Ending = ({ desk, session }: EndingProps) => {
  const words = wordsOf(desk);
  const { level, mode, seed } = session.attempt.value;
  const again = (): void => {
    desk.seed.value = seed;
    void startRun(desk, level, mode);
  };
  return (
    <>
      <div class="others">
        {session.handed.assignment !== undefined && (
          <ToAssignment desk={desk} id={session.handed.assignment} />
        )}
        {mode !== 'check-off' && session.handed.assignment === undefined && (
          <button type="button" class="btn small" id="again" onClick={again}>
            {words.ui.debrief.again}
          </button>
        )}
        <button type="button" class="btn small" id="save" onClick={() => saveFile(session)}>
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
