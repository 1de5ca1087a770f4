import type { Level } from '../core/level/level';
import { lengthText } from '../present/words/numbers';
import { framed } from '../present/framed';
import { wordsOf, enter, type Desk } from './desk';
import { LanguageButton } from './topBar';
import { Picture } from './picture';
import { resumeRun } from '../session/session';
import { useSignal } from './useSignal';

/** The jobs, each on its tag: what it is, and how far this device has come with it. */
export const StartScreen = ({ desk }: { readonly desk: Desk }) => {
  const words = wordsOf(desk);
  useSignal(desk.settings);
  const heads = useSignal(desk.heads);
  const open = heads.filter(({ state }) => state === 'open').sort((a, b) => b.order - a.order)[0];
  const resume = async (): Promise<void> => {
    const session = await resumeRun(desk.store, desk.levels);
    if (session) await enter(desk, session);
  };
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
        {desk.troubles.map((line) => (
          <p class="first" role="alert" key={line}>
            {line}
          </p>
        ))}
        {open && (
          <p class="lead">
            <button type="button" class="btn" id="resume" onClick={() => void resume()}>
              {words.ui.start.resume}
            </button>
          </p>
        )}
        <ul class="jobs">
          {desk.levels.map((level) => (
            <JobCard desk={desk} level={level} key={level.id} />
          ))}
        </ul>
      </main>
    </div>
  );
};

const JobCard = ({ desk, level }: { readonly desk: Desk; readonly level: Level }) => {
  const words = wordsOf(desk);
  const { lang, theme } = desk.settings.value;
  const { span, length, slope } = level.plan;
  const own = desk.heads.value.filter((head) => head.level === level.id);
  const state = own.some((head) => head.state === 'done') ? 'framed' : own.length > 0 ? 'open' : 'fresh';
  const openJob = (): void => {
    desk.level.value = level;
    desk.screen.value = 'talk';
  };
  return (
    <li class="jobcard paper">
      <div class="tagline">
        <h2>{level.title[lang]}</h2>
        <span class="state">{words.ui.start.state[state]}</span>
      </div>
      <Picture
        label={level.title[lang]}
        deps={[level.id, theme, lang]}
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
      <button type="button" class="btn main" data-level={level.id} onClick={openJob}>
        {words.ui.start.open}
      </button>
    </li>
  );
};
