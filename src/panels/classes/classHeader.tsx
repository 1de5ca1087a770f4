import type { Desk } from '../desk';
import { classWordsOf } from './classWords';
import { LanguageButton } from '../topBar';
import { useSignal } from '../useSignal';

/** The way back to the jobs, and the other language. */
export const ClassHeader = ({ desk }: { readonly desk: Desk }) => {
  const words = classWordsOf(desk);
  useSignal(desk.settings);
  return (
    <header>
      <button type="button" class="btn small" id="toJobs" onClick={() => (desk.screen.value = 'start')}>
        ‹ {words.classes.back}
      </button>
      <span class="grow" />
      <button type="button" class="btn small" onClick={() => (desk.overlay.value = 'settings')}>
        {words.ui.site.settings}
      </button>
      <LanguageButton desk={desk} />
    </header>
  );
};
