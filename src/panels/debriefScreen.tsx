import { scoreOf } from '../core/score/scored';
import type { Session } from '../session/session';
import { openProof, startRun, wordsOf, type Desk } from './desk';
import { PunchRows } from './crewPanel';
import { costliest, Events } from './events';
import { Questions } from './questions';
import { saveFile } from './saveFile';
import { Strip } from './strip';
import { LanguageButton } from './topBar';
import { Total } from './total';
import { useSignal } from './useSignal';

/** The talk after work: the roof as it stood, what cost the most, what was done well, and the way back to each moment. */
export const DebriefScreen = ({ desk, session }: { readonly desk: Desk; readonly session: Session }) => {
  const words = wordsOf(desk);
  const attempt = useSignal(session.attempt);
  const { lang } = useSignal(desk.settings);
  const score = scoreOf(attempt);
  return (
    <div class="page">
      <header>
        <button type="button" class="btn small" onClick={() => (desk.screen.value = 'start')}>
          ‹ {words.ui.site.leave}
        </button>
        <h1>
          {attempt.level.title[lang]}: {words.ui.debrief.title}
        </h1>
        <span class="grow" />
        <span class="tn used">{words.ui.debrief.used(score.minutes.used, score.minutes.par)}</span>
        <LanguageButton desk={desk} />
      </header>
      <main>
        <Strip desk={desk} session={session} costly={costliest(score.findings)} />
        <div class="debrief">
          <div>
            <section class="paper told">
              <Events desk={desk} attempt={attempt} findings={score.findings} />
            </section>
            <section class="paper">
              <Questions desk={desk} run={session.id} />
            </section>
          </div>
          <section class="paper">
            <Total desk={desk} attempt={attempt} score={score} />
            <hr />
            <h2>{words.ui.debrief.punch}</h2>
            <PunchRows desk={desk} attempt={attempt} />
            <div class="go">
              <button
                type="button"
                class="btn"
                id="again"
                onClick={() => void startRun(desk, attempt.level, attempt.mode)}
              >
                {words.ui.debrief.again}
              </button>
              <button type="button" class="btn" id="save" onClick={() => saveFile(attempt)}>
                {words.ui.debrief.file}
              </button>
            </div>
            <p class="dim" style="margin-top:12px">
              {words.ui.debrief.validity}{' '}
              <button type="button" class="link" id="worth" onClick={() => openProof(desk)}>
                {words.proof.title}
              </button>
            </p>
          </section>
        </div>
      </main>
    </div>
  );
};
