import { useState } from 'preact/hooks';
import { backupText, readBackup } from '../../content/backupFile';
import { complaintLine } from '../../present/words/refusalMessages';
import { backupOf, bringIn } from '../../records/backup';
import type { Desk } from '../desk';
import { classWordsOf } from './classWords';
import type { Offered } from '../saveFile';
import { ExportSheet } from './exportSheet';
import { FilePick } from './filePick';
import { forget, loadClasses } from './takenActs';

/** All of this device in one file, and back; and the way to be rid of it. */
export const KeepSafe = ({ desk }: { readonly desk: Desk }) => {
  const { lang, classes } = classWordsOf(desk);
  const { keep: words, notice11 } = classes;
  const [file, setFile] = useState<Offered>();
  const [said, say] = useState('');
  const make = async (): Promise<void> =>
    setFile({
      name: 'tack-and-true.backup.json',
      text: backupText(await backupOf(desk.store)),
      type: 'application/json',
    });
  const load = async ([first]: readonly File[]): Promise<void> => {
    if (!first) return;
    const read = readBackup(await first.text());
    const [wrong] = read.ok ? [] : read.complaints;
    if (!read.ok) return say(wrong ? complaintLine(first.name, wrong, lang) : first.name);
    say(words.brought(await bringIn(desk.store, read.value)));
    await refreshed(desk);
  };
  return (
    <div class="sheets">
      <section class="paper sheetOf">
        <h2>{words.title}</h2>
        <p>{words.says}</p>
        <p>{words.adds}</p>
        <div class="others">
          <button type="button" class="btn" id="makeBackup" onClick={() => void make()}>
            {words.make}
          </button>
          <FilePick id="loadBackup" text={words.load} take={(files) => void load(files)} />
        </div>
        <p role="status" id="brought">
          {said}
        </p>
        {file && <ExportSheet desk={desk} file={file} close={() => setFile(undefined)} />}
      </section>
      <section class="paper sheetOf">
        <p class="first">{notice11}</p>
        <EraseAll desk={desk} />
      </section>
    </div>
  );
};

/** What the store has now is what the page shows. */
const refreshed = async (desk: Desk): Promise<void> => {
  desk.heads.value = await desk.store.runs();
  await loadClasses(desk);
  // Fetched and played again when the results are opened next.
  desk.classes.files.value = undefined;
};

/** In two steps. */
const EraseAll = ({ desk }: { readonly desk: Desk }) => {
  const { keep: words } = classWordsOf(desk).classes;
  const [step, setStep] = useState<'ask' | 'sure' | 'gone'>('ask');
  const erase = async (): Promise<void> => {
    if (step !== 'sure') return setStep('sure');
    await desk.store.erase();
    desk.heads.value = [];
    desk.session.value = undefined;
    forget(desk);
    setStep('gone');
  };
  return (
    <>
      <button type="button" class="btn" id="eraseAll" onClick={() => void erase()}>
        {step === 'sure' ? words.sure : words.erase}
      </button>
      <p role="status">{step === 'gone' ? words.erased : ''}</p>
    </>
  );
};
