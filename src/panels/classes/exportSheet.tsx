import { useEffect, useRef } from 'preact/hooks';
import type { Desk } from '../desk';
import { classWordsOf } from './classWords';
import { offer, type Offered } from '../saveFile';

type Props = { readonly desk: Desk; readonly file: Offered; readonly close: () => void };

/** What is about to leave the device, whole, before it does. */
export const ExportSheet = ({ desk, file, close }: Props) => {
  const { sheet } = classWordsOf(desk).classes;
  const host = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    host.current?.showModal();
    // Read from its head, not from where the caret happens to stand.
    const text = host.current?.querySelector('textarea');
    text?.setSelectionRange(0, 0);
    text?.scrollTo(0, 0);
  }, []);
  return (
    <dialog class="paper exportSheet" ref={host} onClose={close} aria-labelledby="export-title">
      <h2 id="export-title">{file.name}</h2>
      <p>
        {sheet.whole} <span class="dim">{sheet.size(String(file.text.length))}</span>
      </p>
      <textarea id="exportText" readOnly rows={12} value={file.text} aria-label={file.name} wrap="off" />
      <div class="go">
        <button
          type="button"
          class="btn main"
          id="saveExport"
          onClick={() => {
            offer(file);
            host.current?.close();
          }}
        >
          {sheet.save}
        </button>
        <button type="button" class="btn" onClick={() => host.current?.close()}>
          {sheet.close}
        </button>
      </div>
    </dialog>
  );
};
