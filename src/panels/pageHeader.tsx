import { wordsOf, type Desk, type Screen } from './desk';
import { LanguageButton } from './topBar';

type Props = {
  readonly desk: Desk;
  readonly id: string;
  /** Where the way back leads, and what it is called. */
  readonly to: Screen;
  readonly text: string;
};

/** Of a page that is read or filled in: the way back, the settings, and the other language. */
export const PageHeader = ({ desk, id, to, text }: Props) => (
  <header>
    <button type="button" class="btn small" id={id} onClick={() => (desk.screen.value = to)}>
      ‹ {text}
    </button>
    <span class="grow" />
    <button type="button" class="btn small" onClick={() => (desk.overlay.value = 'settings')}>
      {wordsOf(desk).ui.site.settings}
    </button>
    <LanguageButton desk={desk} />
  </header>
);
