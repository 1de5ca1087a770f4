import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { scoreOf } from '../core/score/scored';
import type { Score } from '../core/score/score';
import { afterWork, marksOf, type Mark } from '../present/afterWork';
import { framesOf } from '../present/strip';
import type { Session } from '../session/session';
import { keepDebrief, wordsOf, type Desk } from './desk';
import { Ending } from './ending';
import { Events } from './events';
import { Punch } from './punch';
import { Questions } from './questions';
import { drawnForPaper, Roof, type Here } from './roof';
import { LanguageButton } from './topBar';
import { Total } from './total';
import { usePrinting } from './usePrinting';
import { useSignal } from './useSignal';

/** Of the run that was done last. */
export const DebriefPage = ({ desk }: { readonly desk: Desk }) => {
  const session = useSignal(desk.session);
  return session ? <DebriefScreen desk={desk} session={session} /> : null;
};

/** The talk after work: the roof as it stood, what cost the most, what was done well, and the way back to each moment. */
export const DebriefScreen = ({ desk, session }: { readonly desk: Desk; readonly session: Session }) => {
  const words = wordsOf(desk);
  const attempt = useSignal(session.attempt);
  useSignal(desk.settings);
  const score = useMemo(() => scoreOf(attempt), [attempt]);
  const talk = useMemo(() => afterWork(attempt, score.findings), [attempt]);
  const marks = useMemo(() => marksOf(attempt, talk), [talk]);
  const frames = useMemo(() => {
    const shown = marks.map(({ shows }) => shows);
    return framesOf(attempt, shown);
  }, [attempt, marks]);
  const [here, setHere] = useState<Here>(() => begun(frames.length, marks, (n) => frameAt(frames, n)));
  const roof = useRef<HTMLElement>(null);
  const paper = usePrinting();
  useEffect(() => (desk.readOnly ? undefined : keepDebrief(desk, session.id)), [session.id]);
  const choose = (mark: Mark): void => {
    setHere({ frame: frameAt(frames, mark.shows), mark });
    intoSight(roof.current);
  };
  return (
    <div class="page talkPage">
      <Head desk={desk} session={session} score={score} />
      <main>
        <div class={`debrief ${talk.costly.length === 0 ? 'calm' : ''}`}>
          <section class="roof" ref={roof} aria-label={words.ui.debrief.strip}>
            <Roof {...{ desk, session, frames, marks, here, setHere, choose, paper }} />
          </section>
          <section class="paper told">
            <Events
              {...{ desk, attempt, talk, marks, choose }}
              chosen={here.mark}
              onPaper={paper ? drawnForPaper({ desk, session, frames }) : undefined}
              minutesAt={(steps) => frames[frameAt(frames, steps)]?.minutes}
            />
          </section>
          <section class="paper sum">
            <Total desk={desk} attempt={attempt} score={score} />
          </section>
          {!desk.readOnly && (
            <section class="paper asked">
              <Questions desk={desk} run={session.id} />
            </section>
          )}
          <section class="paper left">
            <h2>{words.ui.debrief.punch}</h2>
            <Punch desk={desk} attempt={attempt} />
            {!desk.readOnly && (
              <>
                <hr />
                <Ending desk={desk} session={session} />
              </>
            )}
          </section>
        </div>
      </main>
    </div>
  );
};

const Head = ({
  desk,
  session,
  score,
}: {
  readonly desk: Desk;
  readonly session: Session;
  readonly score: Score;
}) => {
  const words = wordsOf(desk);
  const { lang } = useSignal(desk.settings);
  const { level, mode } = session.attempt.value;
  return (
    <header>
      <button
        type="button"
        class="btn small"
        id="leave"
        onClick={() => {
          if (!desk.readOnly) keepDebrief(desk, undefined);
          desk.screen.value = desk.readOnly ? 'class' : 'start';
        }}
      >
        ‹ {desk.readOnly ? words.classDoor.toReport : words.ui.site.leave}
      </button>
      <h1 class={desk.readOnly ? 'wraps' : ''}>
        {level.title[lang]}:{' '}
        {desk.readOnly
          ? words.classDoor.reading(session.handed.learner ?? words.classDoor.nobody)
          : words.ui.debrief.title}
      </h1>
      <span class="grow" />
      <span class="used tn">
        {words.ui.mode[mode]} · {words.ui.debrief.used(score.minutes.used, score.minutes.par)}
      </span>
      <LanguageButton desk={desk} />
    </header>
  );
};

const frameAt = (frames: readonly { readonly steps: number }[], steps: number): number =>
  Math.max(
    0,
    frames.findLastIndex((frame) => frame.steps <= steps),
  );

/** The talk begins at what cost the most; where nothing did, at the roof as it was left. */
const begun = (count: number, marks: readonly Mark[], at: (steps: number) => number): Here => {
  const [first] = marks;
  if (!first || first.told.finding.kind === 'good') return { frame: count - 1, mark: undefined };
  return { frame: at(first.shows), mark: first };
};

const intoSight = (roof: HTMLElement | null): void => {
  if (!roof) return;
  const { top, bottom } = roof.getBoundingClientRect();
  const seen = Math.min(bottom, innerHeight) - Math.max(top, 0);
  if (seen > Math.min(bottom - top, innerHeight) * 0.6) return;
  const behavior = matchMedia('(prefers-reduced-motion: reduce)').matches ? 'instant' : 'smooth';
  roof.scrollIntoView({ block: 'start', behavior });
};
