import { useState } from 'preact/hooks';
import { attemptFile, attemptText } from '../content/attemptFile';
import { scoreOf, passLine } from '../core/score/scored';
import type { Finding, Part, Score } from '../core/score/score';
import { tellFinding } from '../present/findingWords';
import { stripOf } from '../present/strip';
import type { Session } from '../session/session';
import { goBackTo, startRun, stoodAt, wordsOf, type Desk } from './desk';
import { PunchRows } from './crewPanel';
import { Picture } from './picture';
import { Questions } from './questions';
import { LanguageButton } from './topBar';
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
        <span class="tn">{words.ui.debrief.used(String(score.minutes.used), String(score.minutes.par))}</span>
        <LanguageButton desk={desk} />
      </header>
      <main>
        <Strip desk={desk} session={session} />
        <div class="debrief">
          <section class="paper">
            <Events desk={desk} findings={score.findings} />
          </section>
          <section class="paper">
            <Total desk={desk} score={score} mode={attempt.mode} />
            <hr />
            <h2>{words.ui.debrief.punch}</h2>
            <PunchRows desk={desk} attempt={attempt} />
            <hr />
            <Questions desk={desk} run={session.id} />
            <div class="go">
              <button
                type="button"
                class="btn"
                id="again"
                onClick={() => void startRun(desk, attempt.level, attempt.mode)}
              >
                {words.ui.debrief.again}
              </button>
              <button type="button" class="btn" id="save" onClick={() => saveFile(session, score)}>
                {words.ui.debrief.file}
              </button>
            </div>
            <p class="dim" style="margin-top:12px">
              {words.ui.debrief.validity}
            </p>
          </section>
        </div>
      </main>
    </div>
  );
};

/** Offers the run as a file: its acts and what is claimed of them. */
const saveFile = (session: Session, score: Score): void => {
  const text = attemptText(attemptFile(session.attempt.value, score));
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  link.download = `${session.attempt.value.level.id}-${session.attempt.value.seed}.attempt.json`;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 1000);
};

/** The states of the roof, to slide along. */
const Strip = ({ desk, session }: { readonly desk: Desk; readonly session: Session }) => {
  const words = wordsOf(desk);
  const { theme, lang } = useSignal(desk.settings);
  const attempt = session.attempt.value;
  const shots = stripOf(attempt);
  const [at, setAt] = useState(shots.length - 1);
  return (
    <section class="strip" aria-label={words.ui.debrief.strip}>
      <div class="shots">
        {shots.map((shot, i) => (
          <button type="button" key={shot.steps} aria-pressed={i === at} onClick={() => setAt(i)}>
            <Picture
              label={`${words.ui.debrief.step(shot.steps)}`}
              deps={[shot.steps, theme, lang]}
              draw={(canvas) =>
                desk.drawings.thumb(canvas, {
                  attempt: stoodAt(session, shot.steps),
                  corner: 'street',
                  theme,
                  lang,
                })
              }
            />
            <span class="tn">
              {shot.minutes} · {words.tasks[shot.task]}
            </span>
          </button>
        ))}
      </div>
      <div style="display:flex;gap:10px;align-items:center;flex-wrap:wrap">
        <label style="flex:1;min-width:200px">
          <span class="hidden">{words.ui.debrief.strip}</span>
          <input
            type="range"
            min={0}
            max={shots.length - 1}
            value={at}
            onInput={(event) => setAt(Number(event.currentTarget.value))}
          />
        </label>
        <button
          type="button"
          class="btn small"
          id="strip-back"
          onClick={() => void goBackTo(desk, shots[at]?.steps ?? 0)}
        >
          {words.ui.debrief.back}
        </button>
      </div>
    </section>
  );
};

/** How many costly events are told: the rest is in the punch list and in the parts. */
const eventsTold = 3;

const Events = ({ desk, findings }: { readonly desk: Desk; readonly findings: readonly Finding[] }) => {
  const words = wordsOf(desk);
  const costly = [...findings]
    .filter(({ kind }) => kind !== 'good')
    .sort((a, b) => Number(b.kind === 'safety') - Number(a.kind === 'safety') || b.minutes - a.minutes)
    .slice(0, eventsTold);
  const good = findings.find(({ kind }) => kind === 'good');
  return (
    <>
      <h2>{words.ui.debrief.cost}</h2>
      {costly.length === 0 && <p>{words.ui.debrief.nothing}</p>}
      {costly.map((finding, i) => (
        <Event desk={desk} finding={finding} key={i} />
      ))}
      {good && <Event desk={desk} finding={good} />}
    </>
  );
};

const Event = ({ desk, finding }: { readonly desk: Desk; readonly finding: Finding }) => {
  const words = wordsOf(desk);
  const { units } = useSignal(desk.settings);
  const { title, why } = tellFinding(words, finding, units);
  const good = finding.kind === 'good';
  const { step } = finding;
  return (
    <article class={`event ${good ? 'good' : ''}`} data-code={finding.code}>
      {good ? (
        <svg viewBox="0 0 34 34" aria-hidden="true">
          <path d="M4 18l8 10L30 5" fill="none" stroke="var(--done)" stroke-width="4" />
        </svg>
      ) : (
        <div class="cost tn">
          {finding.kind === 'safety' ? `≤${finding.numbers['cap'] ?? ''}` : finding.minutes}
          <small>{finding.kind === 'safety' ? '' : words.ui.site.minutes}</small>
        </div>
      )}
      <div>
        <h3>
          {good ? `${words.ui.debrief.good}: ` : ''}
          {title}
        </h3>
        <p class="dim">{why}</p>
      </div>
      {step !== undefined && (
        <button type="button" class="btn" onClick={() => void goBackTo(desk, step)}>
          {good ? words.ui.debrief.see : words.ui.debrief.back}
        </button>
      )}
    </article>
  );
};

const order: readonly Part[] = ['order', 'checks', 'fit', 'eye', 'economy'];
const lines: Readonly<Partial<Record<Part, number>>> = {
  order: passLine.order,
  checks: passLine.checks,
  fit: passLine.fit,
  eye: passLine.eye,
};

const Total = ({
  desk,
  score,
  mode,
}: {
  readonly desk: Desk;
  readonly score: Score;
  readonly mode: string;
}) => {
  const words = wordsOf(desk);
  const { debrief } = words.ui;
  return (
    <>
      <div class="total">
        <div class="number tn" id="total">
          {Math.round(score.total)}
        </div>
        <div>
          <b>{mode === 'check-off' ? (score.pass ? debrief.pass : debrief.notYet) : debrief.practice}</b>
          <p>
            {debrief.done(String(Math.round(score.done * 100)))}
            {score.cap === undefined ? '' : `. ${debrief.capped(String(score.cap))}`}
          </p>
        </div>
      </div>
      {order.map((part) => {
        const value = score.parts[part];
        if (value === undefined) return null;
        const line = lines[part];
        return (
          <div class="part" key={part}>
            <span>{debrief.parts[part]}</span>
            <PartScale value={value} line={line} />
            <b class="tn">{Math.round(value * 100)}</b>
            <span class="dim">
              {line === undefined ? '' : value >= line ? debrief.toStandard : debrief.below}
            </span>
          </div>
        );
      })}
    </>
  );
};

/** A ruled scale with the pass line dashed and the score chalked. */
const PartScale = ({ value, line }: { readonly value: number; readonly line: number | undefined }) => (
  <svg viewBox="0 0 100 20" preserveAspectRatio="none" aria-hidden="true">
    <path
      d="M0 18H100M0 14v4M25 15v3M50 14v4M75 15v3M100 14v4"
      stroke="currentColor"
      fill="none"
      stroke-width="1"
      vector-effect="non-scaling-stroke"
    />
    {line !== undefined && (
      <path
        d={`M${line * 100} 1v17`}
        stroke="currentColor"
        stroke-dasharray="3 2"
        stroke-width="1.5"
        vector-effect="non-scaling-stroke"
      />
    )}
    <path
      d={`M${value * 100} 3v15`}
      stroke="var(--chalk)"
      stroke-width="5"
      vector-effect="non-scaling-stroke"
    />
  </svg>
);
