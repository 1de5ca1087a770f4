import { ownMinutes } from '../core/score/scored';
import { isOver } from '../core/site/state';
import type { Attempt } from '../core/site/attempt';
import { pick } from '../present/words/spotNames';
import { change, wordsOf, type Desk } from './desk';
import { useSignal } from './useSignal';

type Props = {
  readonly desk: Desk;
  readonly attempt: Attempt;
  readonly undo: () => void;
};

/** Job, way of playing, minutes, and the few things that are always to hand. */
export const TopBar = ({ desk, attempt, undo }: Props) => {
  const words = wordsOf(desk);
  const { lang } = useSignal(desk.settings);
  const minutes = ownMinutes({ site: attempt.site, found: attempt.found });
  return (
    <header class="top">
      <button
        type="button"
        class="btn small"
        aria-label={words.ui.site.leave}
        onClick={() => (desk.screen.value = 'start')}
      >
        ‹<span class="hide-small">{words.ui.site.leave}</span>
      </button>
      <span class="mark wide hide-small" aria-hidden="true">
        Tack<b>&amp;</b>True
      </span>
      <span class="bar wide hide-small" />
      <h1 class="job" style="font-size:0.9375rem">
        {attempt.level.title[lang]}
        <span class="under tn">
          {minutes} {words.ui.site.minutes(minutes)}
        </span>
      </h1>
      <span class="grow" />
      <span class="said hide-small wide">{pick(words.ui.mode, attempt.mode)}</span>
      <span class="bar hide-small wide" />
      <span class="said tn hide-small">
        <b>{minutes}</b> {words.ui.site.minutes(minutes)}
      </span>
      {attempt.mode !== 'check-off' && !isOver(attempt.site) && (
        <button type="button" class="btn small undo" id="undo" onClick={undo}>
          {words.ui.site.undo}
        </button>
      )}
      <button type="button" class="btn small hide-small" onClick={() => (desk.overlay.value = 'words')}>
        {words.ui.site.words}
      </button>
      <button type="button" class="btn small" onClick={() => (desk.overlay.value = 'settings')}>
        {words.ui.site.settings}
      </button>
      <LanguageButton desk={desk} />
    </header>
  );
};

/** The other language, one touch away, in the middle of anything. */
export const LanguageButton = ({ desk }: { readonly desk: Desk }) => {
  const { lang } = useSignal(desk.settings);
  const other = lang === 'en' ? 'es' : 'en';
  return (
    <button
      type="button"
      class="btn small"
      id="language"
      lang={other}
      onClick={() => change(desk, { lang: other })}
      aria-label={other === 'es' ? 'Español' : 'English'}
    >
      {other.toUpperCase()}
    </button>
  );
};
