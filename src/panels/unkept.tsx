import type { Session } from '../session/session';
import { wordsOf, type Desk } from './desk';
import { saveFile } from './saveFile';
import { useSignal } from './useSignal';

/** Said while the device keeps less than was done: what it means, and the way to keep it oneself. */
export const Unkept = ({ desk, session }: { readonly desk: Desk; readonly session: Session }) => {
  const keeps = useSignal(session.keeps);
  useSignal(desk.settings);
  const words = wordsOf(desk);
  return (
    <div role="status" class="unkept">
      {!keeps && (
        <div class="paper">
          <p>{words.states.unkept}</p>
          <button type="button" class="btn small" id="saveNow" onClick={() => saveFile(session)}>
            {words.states.save}
          </button>
        </div>
      )}
    </div>
  );
};
