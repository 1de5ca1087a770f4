import type { Level } from '../../core/level/level';
import type { Mode } from '../../core/level/mode';
import { pick } from '../../present/words/spotNames';
import { wordsOf, type Desk } from '../desk';
import { openTaken, startAssigned } from './takenActs';

type Props = { readonly desk: Desk; readonly level: Level; readonly mode: Mode };

/** The talk of a job that was assigned: how it is played is not for the learner to pick. */
export const BeginAssigned = ({ desk, level, mode }: Props) => {
  const words = wordsOf(desk);
  return (
    <>
      <h2>{words.ui.talk.mode}</h2>
      <p>{words.classDoor.fixed(pick(words.ui.mode, mode))}</p>
      <p class="dim">{pick(words.ui.modeSays, mode)}</p>
      <div class="go">
        <button type="button" class="btn main" id="begin" onClick={() => void startAssigned(desk, level)}>
          {words.ui.talk.begin}
        </button>
      </div>
    </>
  );
};

/** From the end of a run to the assignment it was made for, where this device has that. */
export const ToAssignment = ({ desk, id }: { readonly desk: Desk; readonly id: string }) =>
  desk.classes.taken.value.some(({ assignment }) => assignment.id === id) ? (
    <button type="button" class="btn small" id="toAssignment" onClick={() => openTaken(desk, id)}>
      {wordsOf(desk).classDoor.back}
    </button>
  ) : null;
