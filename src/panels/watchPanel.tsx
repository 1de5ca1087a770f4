import { useEffect, useRef } from 'preact/hooks';
import { crewStep, sameJob, type CrewStep } from '../core/hands/crewStep';
import type { Action } from '../core/site/action';
import { isOver } from '../core/site/state';
import { stepText } from '../present/stepText';
import { taskName } from '../present/words/names';
import { pick } from '../present/words/spotNames';
import type { Messages } from '../present/words/messages';
import type { Session } from '../session/session';
import { wordsOf, type Desk } from './desk';
import { useSignal } from './useSignal';

type Props = {
  readonly desk: Desk;
  readonly session: Session;
  readonly onAct: (action: Action) => void;
};

/** More steps than one job has: whatever goes round in a circle ends here. */
const enough = 400;

/** What the crew does next, what for and why now. It goes on when it is asked to, never by itself. */
export const WatchPanel = ({ desk, session, onAct }: Props) => {
  const attempt = useSignal(session.attempt);
  const words = wordsOf(desk);
  const next = useRef<HTMLButtonElement>(null);
  useEffect(() => next.current?.focus({ preventScroll: true }), []);
  const step = crewStep(attempt);
  if (!step) return null;
  const { code, side } = step.planned;
  const { thing, does } = stepText(words, step.planned.action);
  const wholeJob = (): void => {
    let now: CrewStep | undefined = step;
    for (let i = 0; i < enough && now && sameJob(now, step); i++) {
      onAct(now.action);
      if (isOver(session.attempt.value.site)) return;
      now = crewStep(session.attempt.value);
    }
  };
  return (
    <section class="work paper watch" aria-labelledby="work-title">
      <h2 id="work-title">{taskName(words, { code, side })}</h2>
      <p class="step">
        <span class="dim">{words.ui.watch.title}</span>
        <b>{thing}</b>
        <span>{does}</span>
      </p>
      <div class="act">
        <button type="button" class="btn main" id="watchNext" ref={next} onClick={() => onAct(step.action)}>
          {words.ui.watch.next}
        </button>
        <button type="button" class="btn" id="watchJob" onClick={wholeJob}>
          {words.ui.watch.job}
        </button>
      </div>
      <Reasons words={words} step={step} />
    </section>
  );
};

/** Rules the job serves, and rules it is too late for once it is begun. */
const Reasons = ({ words, step }: { readonly words: Messages; readonly step: CrewStep }) => {
  const { code, serves, closes } = step.planned;
  const plain = words.ui.watch.plain[code];
  return (
    <div class="reasons">
      {(serves.length > 0 || plain) && <h3>{words.ui.watch.why}</h3>}
      {serves.length === 0 && plain && <p>{plain}</p>}
      {serves.map((id) => (
        <p key={id}>
          <b>{words.rules[id]?.name}.</b> {words.rules[id]?.why}
        </p>
      ))}
      {closes.length > 0 && (
        <>
          <h3>{words.ui.watch.closes}</h3>
          <ul class="rows">
            {closes.map((id) => (
              <li key={id}>
                <span>{pick(words.rules, id, 'name')}</span>
              </li>
            ))}
          </ul>
        </>
      )}
    </div>
  );
};
