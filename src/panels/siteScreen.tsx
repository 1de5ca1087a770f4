import { useState } from 'preact/hooks';
import type { Action } from '../core/site/action';
import type { Decision } from '../core/site/attempt';
import { captionFor, standingCaption } from '../present/caption';
import type { Session } from '../session/session';
import { CaptionBar } from './captionBar';
import { CrewPanel } from './crewPanel';
import { wordsOf, type Desk } from './desk';
import { canBeTagged, MemberTag } from './memberTag';
import { StageHost, type Found } from './stageHost';
import { TopBar } from './topBar';
import { ToolRail } from './toolRail';
import { useKeys } from './useKeys';
import { useRoom } from './useRoom';
import { useSignal } from './useSignal';
import { ViewTabs } from './viewTabs';
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
  const [at, setAt] = useState<Found>();
  const act = (action: Action): void => {
    const outcome = session.do(action);
    setLast({ action, outcome });
    follow(desk, working, outcome);
    if (session.attempt.value.site.handedOver) desk.screen.value = 'debrief';
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
        <ViewTabs desk={desk} down={attempt.site.down !== undefined} />
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
