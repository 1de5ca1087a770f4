import type { Level } from '../core/level/level';
import { lengthText } from '../present/words/numbers';
import { framed } from '../present/framed';
import { isReadable } from '../session/session';
import type { RunHead } from '../session/store';
import { jobStanding, usualLooks, type JobStanding } from '../session/jobState';
import type { Messages } from '../present/words/messages';
import { ClassLinks, TakenNotices } from './classes/classLinks';
import { openDebrief, openJob, openProof, runsOf, wordsOf, type Desk } from './desk';
import { removeOwnJob } from './own/ownJobList';
import { LanguageButton } from './topBar';
import { Picture } from './picture';
import { StartNotices } from './startNotices';
import { useSignal } from './useSignal';

/** The jobs, each on its tag: what it is, and how far this device has come with it. */
export const StartScreen = ({ desk }: { readonly desk: Desk }) => {
  const words = wordsOf(desk);
  useSignal(desk.settings);
  useSignal(desk.heads);
  useSignal(desk.own);
  return (
    <div class="page">
      <header>
        <span class="mark">
          Tack<b>&amp;</b>True
        </span>
        <span class="dim">{words.ui.motto}</span>
        <span class="grow" />
        <button type="button" class="btn small" onClick={() => (desk.overlay.value = 'words')}>
          {words.ui.site.words}
        </button>
        <button type="button" class="btn small" onClick={() => (desk.overlay.value = 'settings')}>
          {words.ui.site.settings}
        </button>
        <LanguageButton desk={desk} />
      </header>
      <main>
        <h1>{words.ui.start.title}</h1>
        <p class="lead">{words.ui.start.intro}</p>
        <p class="lead">{words.ui.start.know}</p>
        <StartNotices desk={desk} />
        <TakenNotices desk={desk} />
        <LastDebrief desk={desk} />
        <p class="lead going">
          <button type="button" class="btn" id="toRoof" onClick={() => (desk.screen.value = 'roof')}>
            {words.ui.start.ownRoof}
          </button>
        </p>
        <ul class="jobs">
          {desk.levels.map((level) => (
            <JobCard desk={desk} level={level} key={level.id} />
          ))}
        </ul>
        <p class="lead">
          <button type="button" class="link" id="worth" onClick={() => openProof(desk)}>
            {words.proof.title}
          </button>
        </p>
        <ClassLinks desk={desk} />
      </main>
    </div>
  );
};

/** The way back to the talk after the last run that ended. */
const LastDebrief = ({ desk }: { readonly desk: Desk }) => {
  const words = wordsOf(desk);
  const { lang } = useSignal(desk.settings);
  const ended = [...useSignal(desk.heads)]
    .sort((a, b) => b.order - a.order)
    .find((head) => canBeTalkedOver(desk, head));
  if (!ended) return null;
  const job = desk.levels.find(({ id }) => id === ended.level)?.title[lang] ?? '';
  return (
    <p class="lead going">
      <button type="button" class="btn" id="lastDebrief" onClick={() => void openDebrief(desk, ended.id)}>
        {words.ui.debrief.last(job)}
      </button>
    </p>
  );
};

/** A run that has ended, and can still be read. */
const canBeTalkedOver = (desk: Desk, head: RunHead): boolean => {
  const level = desk.levels.find(({ id }) => id === head.level);
  return head.state === 'done' && level !== undefined && isReadable(level, head);
};

const JobCard = ({ desk, level }: { readonly desk: Desk; readonly level: Level }) => {
  const words = wordsOf(desk);
  const { lang, theme } = desk.settings.value;
  const { span, length, slope } = level.plan;
  const looks = desk.settings.value.looks ?? usualLooks;
  const standing = jobStanding(runsOf(desk, level), { now: Date.now(), looks });
  const next = standingText(words, standing, lang);
  return (
    <li class="jobcard paper">
      <div class="tagline">
        <h2>{level.title[lang]}</h2>
        <span class={`state ${standing.state}`}>{words.ui.start.state[standing.state]}</span>
      </div>
      <Picture
        label={level.title[lang]}
        deps={[level.id, theme, lang]}
        waits
        draw={(canvas) =>
          desk.drawings.thumb(canvas, { attempt: framed(level), corner: 'street', theme, lang })
        }
      />
      <p class="tn">
        {words.ui.start.size(
          lengthText(span, 'feet'),
          lengthText(length, 'feet'),
          String((slope.rise * 12) / slope.run),
        )}
      </p>
      <p>{level.summary[lang]}</p>
      {next && <p class="dim">{next}</p>}
      <button type="button" class="btn main" data-level={level.id} onClick={() => void openJob(desk, level)}>
        {words.ui.start.open}
      </button>
      {desk.own.value.includes(level) && (
        <button
          type="button"
          class="link off"
          data-off={level.id}
          onClick={() => void removeOwnJob(desk, level.id)}
        >
          {words.ui.start.takeOff}
        </button>
      )}
    </li>
  );
};

/** What comes next by the calendar, and when. */
const standingText = (
  { ui: { start } }: Messages,
  { state, lookAt, secondFrom }: JobStanding,
  lang: string,
): string | undefined => {
  const date = (at: number): string =>
    new Intl.DateTimeFormat(lang, { day: 'numeric', month: 'long' }).format(at);
  if (lookAt !== undefined) return state === 'due' ? start.lookNow : start.lookAt(date(lookAt));
  if (secondFrom === undefined) return undefined;
  const time = new Intl.DateTimeFormat(lang, { weekday: 'long', hour: 'numeric', minute: '2-digit' });
  return start.secondFrom(time.format(secondFrom));
};
