import { useEffect, useRef, useState } from 'preact/hooks';
import type { Action } from '../core/site/action';
import type { Attempt, Decision } from '../core/site/attempt';
import { captionFor, standingCaption, type Caption } from '../present/caption';
import type { StageCorner, StagePort, StageView } from '../present/stagePort';
import { spotsFor } from '../present/work/spots';
import { toolset } from '../present/work/toolset';
import type { Messages } from '../present/words/messages';
import type { Session } from '../session/session';
import { CrewPanel } from './crewPanel';
import { wordsOf, type Desk } from './desk';
import { TopBar } from './topBar';
import { ToolIcon } from './toolIcons';
import { useSignal } from './useSignal';
import { WorkPanel } from './workPanel';

/** The site: tools, drawing, the work in hand, the crew list. */
export const SiteScreen = ({ desk, session }: { readonly desk: Desk; readonly session: Session }) => {
  const attempt = useSignal(session.attempt);
  const settings = useSignal(desk.settings);
  const keeps = useSignal(session.keeps);
  const words = wordsOf(desk);
  const [caption, setCaption] = useState<Caption>();
  const act = (action: Action): Decision => {
    const outcome = session.do(action);
    setCaption(captionFor(words, { action, outcome }, settings.units));
    if (session.attempt.value.site.handedOver || session.attempt.value.site.down !== undefined)
      desk.screen.value = 'debrief';
    return outcome;
  };
  const undo = (): void => {
    const outcome = session.undo();
    if (outcome)
      setCaption(captionFor(words, { action: { type: 'undo', step: 0 }, outcome }, settings.units));
  };
  useKeys(desk, undo);
  const said = caption ?? standingCaption(words, attempt, settings.units);
  return (
    <div class={`site ${settings.hand}`}>
      <TopBar desk={desk} attempt={attempt} undo={undo} keeps={keeps} />
      <ToolRail desk={desk} />
      <main class="view" aria-label={words.ui.site.work}>
        <ViewTabs desk={desk} />
        <StageHost desk={desk} attempt={attempt} />
        <CaptionBar words={words} caption={said} />
      </main>
      <aside class="sheet">
        <WorkPanel desk={desk} attempt={attempt} onAct={act} />
        <CrewPanel desk={desk} attempt={attempt} />
      </aside>
    </div>
  );
};

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

const corners: readonly StageCorner[] = ['yard', 'B', 'street', 'A'];
const views: readonly StageView[] = ['overview', 'section', 'side', 'joint'];

const ViewTabs = ({ desk }: { readonly desk: Desk }) => {
  const words = wordsOf(desk);
  useSignal(desk.settings);
  const view = useSignal(desk.view);
  const corner = useSignal(desk.corner);
  const turn = (): void => {
    desk.view.value = 'overview';
    desk.corner.value = corners[(corners.indexOf(corner) + 1) % corners.length] ?? 'yard';
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
        {words.ui.site.corner[corner]} ↻
      </button>
    </div>
  );
};

/** The drawing. Its content stands as words beside it, in the lists; here it is one named picture. */
const StageHost = ({ desk, attempt }: { readonly desk: Desk; readonly attempt: Attempt }) => {
  const host = useRef<HTMLDivElement>(null);
  const [stage, setStage] = useState<StagePort>();
  const { theme, lang } = useSignal(desk.settings);
  const view = useSignal(desk.view);
  const corner = useSignal(desk.corner);
  const spot = useSignal(desk.spot);
  const tool = useSignal(desk.tool);
  useEffect(() => {
    let gone = false;
    let port: StagePort | undefined;
    if (host.current)
      void desk.drawings.stage(host.current).then((made) => {
        if (gone) return made.destroy();
        port = made;
        made.onPick((id) => choosePicked(desk, id));
        setStage(made);
      });
    return () => {
      gone = true;
      port?.destroy();
    };
  }, []);
  const list = spotsFor(attempt, tool);
  const selected = (list.find(({ id }) => id === spot) ?? list[0])?.member;
  const jointId = (list.find(({ id }) => id === spot) ?? list[0])?.id;
  useEffect(() => {
    stage?.show({
      attempt,
      view,
      corner,
      selected,
      theme,
      lang,
      ...(jointId?.includes(':') ? { joint: jointId } : {}),
    });
  }, [stage, attempt, view, corner, selected, jointId, theme, lang]);
  return (
    <div class="stage">
      <div ref={host} role="img" aria-label={wordsOf(desk).ui.site.work} />
    </div>
  );
};

/** A member touched on the drawing takes up its place in the list of the tool in hand. */
const choosePicked = (desk: Desk, picked: string): void => {
  const attempt = desk.session.value?.attempt.value;
  if (!attempt) return;
  const spots = spotsFor(attempt, desk.tool.value);
  const own = spots.filter(({ id, member }) => id === picked || member === picked);
  const now = own.findIndex(({ id }) => id === desk.spot.value);
  const next = own[(now + 1) % Math.max(1, own.length)];
  if (next) desk.spot.value = next.id;
};

const CaptionBar = ({ words, caption }: { readonly words: Messages; readonly caption: Caption }) => (
  <div class={`caption ${caption.tone === 'stop' ? 'stop' : ''}`}>
    <p aria-live="polite">
      {caption.tone !== 'stop' && (
        <>
          <b>{caption.who}</b> {caption.text}
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
      else if (key === 'enter' && tagName !== 'BUTTON') document.getElementById('main-act')?.click();
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
