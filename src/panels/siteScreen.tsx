import { useEffect, useState } from 'preact/hooks';
import type { Action } from '../core/site/action';
import type { Decision } from '../core/site/attempt';
import { captionFor, standingCaption, type Caption } from '../present/caption';
import type { StageCorner, StageView } from '../present/stagePort';
import { toolset } from '../present/work/toolset';
import type { Messages } from '../present/words/messages';
import type { Session } from '../session/session';
import { CrewPanel } from './crewPanel';
import { wordsOf, type Desk } from './desk';
import { FiguredText } from './figuredText';
import { canBeTagged, MemberTag } from './memberTag';
import { StageHost, type Point } from './stageHost';
import { TopBar } from './topBar';
import { ToolIcon } from './toolIcons';
import { useRoom } from './useRoom';
import { useSignal } from './useSignal';
import { follow, useWorking } from './working';
import { WorkPanel } from './workPanel';

/** The site: tools, drawing, the work in hand, the crew list. */
export const SiteScreen = ({ desk, session }: { readonly desk: Desk; readonly session: Session }) => {
  const attempt = useSignal(session.attempt);
  const settings = useSignal(desk.settings);
  const keeps = useSignal(session.keeps);
  const words = wordsOf(desk);
  const view = useSignal(desk.view);
  const working = useWorking(desk, attempt);
  const [last, setLast] = useState<Done>();
  const [at, setAt] = useState<Point>();
  const act = (action: Action): void => {
    const outcome = session.do(action);
    setLast({ action, outcome });
    follow(desk, working, outcome);
    const { handedOver, down } = session.attempt.value.site;
    if (handedOver || down !== undefined) desk.screen.value = 'debrief';
  };
  const undo = (): void => {
    const outcome = session.undo();
    if (outcome) setLast({ action: { type: 'undo', step: 0 }, outcome });
  };
  useKeys(desk, undo);
  const room = useRoom(settings.text);
  const tagged = room.tag && view === 'overview' && canBeTagged(working.spot);
  const said = last
    ? captionFor(words, last, settings.units)
    : standingCaption(words, attempt, settings.units);
  return (
    <div class={`site ${settings.hand} ${room.width} ${room.low ? 'low' : ''} ${room.broad ? 'broad' : ''}`}>
      <TopBar desk={desk} attempt={attempt} undo={undo} keeps={keeps} />
      <ToolRail desk={desk} />
      <main class="view" aria-label={words.ui.site.work}>
        <ViewTabs desk={desk} />
        <StageHost desk={desk} attempt={attempt} working={working} found={setAt} />
        <CaptionBar words={words} caption={said} />
      </main>
      <aside class="sheet">
        <WorkPanel desk={desk} attempt={attempt} working={working} tagged={tagged} onAct={act} undo={undo} />
        {tagged && working.spot && (
          <MemberTag
            key={working.tool}
            desk={desk}
            attempt={attempt}
            spot={working.spot}
            at={at}
            onAct={act}
          />
        )}
        <CrewPanel desk={desk} attempt={attempt} />
      </aside>
    </div>
  );
};

/** What was done last: told in the words of the moment, so that it changes language with the rest. */
type Done = { readonly action: Action; readonly outcome: Decision };

const ToolRail = ({ desk }: { readonly desk: Desk }) => {
  const tool = useSignal(desk.tool);
  const { keys } = useSignal(desk.settings);
  const words = wordsOf(desk);
  const take = (index: number): void => {
    const next = toolset[(index + toolset.length) % toolset.length];
    if (!next) return;
    desk.tool.value = next.tool;
    desk.spot.value = undefined;
    document.querySelector<HTMLElement>(`[data-tool="${next.tool}"]`)?.focus();
  };
  const onKey = (event: KeyboardEvent): void => {
    const at = toolset.findIndex((row) => row.tool === tool);
    const by = { ArrowDown: 1, ArrowRight: 1, ArrowUp: -1, ArrowLeft: -1 }[event.key];
    if (by === undefined) return;
    event.preventDefault();
    take(at + by);
  };
  return (
    <div class="rail" role="radiogroup" aria-label={words.ui.site.tools} onKeyDown={onKey}>
      {toolset.map((row, i) => (
        <button
          type="button"
          role="radio"
          key={row.tool}
          data-tool={row.tool}
          class={`tool ${i > 0 && toolset[i - 1]?.group !== row.group ? 'first' : ''}`}
          aria-checked={tool === row.tool}
          tabIndex={tool === row.tool ? 0 : -1}
          {...(keys ? { 'aria-keyshortcuts': row.key } : {})}
          onClick={() => take(i)}
        >
          <ToolIcon tool={row.tool} />
          <span>{words.trade.tool[row.tool]}</span>
        </button>
      ))}
    </div>
  );
};

const corners: readonly StageCorner[] = ['street', 'B', 'yard', 'A'];
const views: readonly StageView[] = ['overview', 'section', 'side', 'joint'];

const ViewTabs = ({ desk }: { readonly desk: Desk }) => {
  const words = wordsOf(desk);
  useSignal(desk.settings);
  const view = useSignal(desk.view);
  const corner = useSignal(desk.corner);
  const turn = (): void => {
    desk.view.value = 'overview';
    desk.corner.value = corners[(corners.indexOf(corner) + 1) % corners.length] ?? 'street';
  };
  const names: Readonly<Partial<Record<StageView, string>>> = {
    overview: words.ui.site.overview,
    section: words.ui.site.section,
    side: words.ui.site.side,
    joint: words.ui.site.joint,
  };
  return (
    <div class="views">
      <div role="tablist" aria-label={words.ui.site.overview}>
        {views.map((name) => (
          <button
            type="button"
            role="tab"
            class="tab"
            key={name}
            data-view={name}
            aria-selected={view === name}
            onClick={() => (desk.view.value = name)}
          >
            {names[name]}
          </button>
        ))}
      </div>
      <button
        type="button"
        class="btn small turn"
        onClick={turn}
        aria-label={`${words.ui.site.turn}: ${words.ui.site.corner[corner]}`}
      >
        <span>{words.ui.site.corner[corner]}</span>
        <TurnMark />
      </button>
    </div>
  );
};

/** Walk round: a quarter turn to the next corner. */
const TurnMark = () => (
  <svg width="16" height="16" viewBox="0 0 16 16" aria-hidden="true">
    <path d="M13 8a5 5 0 1 1-2-4M11 1v3.500H7.500" fill="none" stroke="currentColor" stroke-width="1.800" />
  </svg>
);

const CaptionBar = ({ words, caption }: { readonly words: Messages; readonly caption: Caption }) => (
  <div class={`caption ${caption.tone === 'stop' ? 'stop' : ''}`}>
    <p aria-live="polite">
      {caption.tone !== 'stop' && (
        <>
          <b>{caption.who}</b> <FiguredText text={caption.text} />
        </>
      )}
    </p>
    <p role="alert" aria-live="assertive">
      {caption.tone === 'stop' && (
        <>
          <b>{words.ui.caption.lead}</b> {caption.text}
        </>
      )}
    </p>
  </div>
);

/** A choice in the work panel: Enter there does the act it belongs to. */
const inWork = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement &&
  target.getAttribute('role') === 'radio' &&
  target.closest('.work, .tag') !== null;

/** Letters pick tools, U takes back. Off where somebody types, and where the settings say so. */
const useKeys = (desk: Desk, undo: () => void): void => {
  useEffect(() => {
    const onKey = (event: KeyboardEvent): void => {
      const { tagName } = event.target as HTMLElement;
      if (!desk.settings.value.keys || event.ctrlKey || event.metaKey || event.altKey || desk.overlay.value)
        return;
      if (tagName === 'INPUT' || tagName === 'TEXTAREA' || tagName === 'SELECT') return;
      const key = event.key.toLowerCase();
      const row = toolset.find((one) => one.key === key);
      if (key === 'u') undo();
      else if (key === 'enter' && (tagName !== 'BUTTON' || inWork(event.target)))
        document.getElementById('main-act')?.click();
      else if (row) {
        desk.tool.value = row.tool;
        desk.spot.value = undefined;
        setTimeout(() => document.querySelector<HTMLElement>('.spots')?.focus());
      } else return;
      event.preventDefault();
    };
    document.addEventListener('keydown', onKey);
    return () => document.removeEventListener('keydown', onKey);
  }, []);
};
