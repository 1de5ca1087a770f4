import { useState } from 'preact/hooks';
import type { TakenOn } from '../../content/classSchema';
import type { Desk } from '../desk';
import { classWordsOf } from './classWords';
import { offer, type Offered } from '../saveFile';
import { useSignal } from '../useSignal';
import { filesOf, runsFor } from './takenActs';

/** The runs that have ended, as files: handed to whatever the device shares with, or saved. */
export const HandIn = ({ desk, taken }: { readonly desk: Desk; readonly taken: TakenOn }) => {
  const { hand } = classWordsOf(desk).classes;
  const ended = runsFor(useSignal(desk.heads), taken).filter(({ state }) => state === 'done');
  const [said, say] = useState('');
  const handOver = async (how: (files: readonly Offered[]) => Promise<string>): Promise<void> => {
    const files = await filesOf(desk, ended);
    const lost = ended.length - files.length;
    const done = files.length === 0 ? '' : await how(files);
    say([done, lost > 0 ? hand.lost(lost) : ''].join(' ').trim());
  };
  const save = async (files: readonly Offered[]): Promise<string> => {
    files.forEach(offer);
    return hand.saved(files.length);
  };
  const share = async (files: readonly Offered[]): Promise<string> => {
    const passed = await navigator.share({ files: files.map(asFile) }).then(
      () => true,
      () => false,
    );
    return passed ? hand.shared : '';
  };
  return (
    <>
      <h2>{hand.title}</h2>
      <p>{ended.length === 0 ? hand.none : hand.says}</p>
      {ended.length > 0 && (
        <div class="others">
          {sharesFiles() && (
            <button type="button" class="btn" id="share" onClick={() => void handOver(share)}>
              {hand.share}
            </button>
          )}
          <button type="button" class="btn" id="saveRuns" onClick={() => void handOver(save)}>
            {hand.save}
          </button>
        </div>
      )}
      <p role="status">{said}</p>
    </>
  );
};

const asFile = ({ name, text, type }: Offered): File => new File([text], name, { type });

/** Whether this device passes files on at all. */
const sharesFiles = (): boolean =>
  typeof navigator.canShare === 'function' &&
  navigator.canShare({ files: [asFile({ name: 'a.json', text: '{}', type: 'application/json' })] });
