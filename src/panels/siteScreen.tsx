import { useState } from 'preact/hooks';
import type { Action } from '../core/site/action';
import type { Decision } from '../core/site/attempt';
import { isOver } from '../core/site/state';
import {
  freshCaption,
  promptCaption,
  standingCaption,
  undoneCaption,
  type Caption,
} from '../present/caption';
import type { Spot } from '../present/offers/offer';
import type { Messages } from '../present/words/messages';
import type { Session } from '../session/session';
import { CaptionBar } from './captionBar';
import { CrewPanel } from './crewPanel';
import { wordsOf, type Desk } from './desk';
import { Exaggerated } from './exaggerated';
import { LoadList } from './loadList';
import { canBeTagged, MemberTag } from './memberTag';
import { KeyHelp } from './keyHelp';
import { RoofWords } from './roofWords';
import { StageHost, type Found } from './stageHost';
import { Teaching } from './teaching';
import { TopBar } from './topBar';
import { ToolRail } from './toolRail';
import { Unkept } from './unkept';
import { useKeys } from './useKeys';
import { useRoom, type Room } from './useRoom';
import { useSignal } from './useSignal';
import { ViewTabs } from './viewTabs';
import { follow, useWorking, type Working } from './working';
import { WatchPanel } from './watchPanel';
import { WorkPanel } from './workPanel';

/** The site: tools, drawing, the work in hand, the crew list. */
export const SiteScreen = ({ desk, session }: { readonly desk: Desk; readonly session: Session }) => {
  const attempt = useSignal(session.attempt);
  const settings = useSignal(desk.settings);
  const words = wordsOf(desk);
  const watching = attempt.mode === 'watch';
  const own = useWorking(desk, attempt);
  const working = watching ? { ...own, spots: [], spot: undefined } : own;
  const [last, setLast] = useState<Done>();
  const [at, setAt] = useState<Found>();
  const tell = (done: Omit<Done, 'turn'>): void =>
    setLast((before) => ({ ...done, turn: (before?.turn ?? 0) + 1 }));
  const act = (action: Action): void => {
    const outcome = session.do(action);
    tell({ action, outcome });
    follow(desk, working, outcome);
    if (session.attempt.value.site.handedOver) desk.screen.value = 'debrief';
  };
  /** Where nothing is left open, a tool let go at its place does its work there. */
  const drop = (spot: Spot): void => {
    const [offer, another] = spot.offers;
    if (offer && !another && !offer.picker && !offer.reading && !spot.reading) act(offer.act(''));
  };
  const undo = (): void => {
    const outcome = session.undo();
    const back = attempt.site.minutes - session.attempt.value.site.minutes;
    if (outcome) tell({ action: { type: 'undo', step: 0 }, outcome, back });
  };
  useKeys(desk, undo);
  const room = useRoom(settings.text);
  const told =
    last?.back !== undefined
      ? undoneCaption(words, last.back)
      : last
        ? freshCaption(words, last, settings.units)
        : standingCaption(words, attempt, settings.units);
  // What the lead says of an act is said over what is heard of it.
  const said = watching ? byCrew(words, told) : { ...told, ...promptCaption(words, attempt) };
  return (
    <div class={roomClass(settings.hand, room, watching)}>
      <TopBar desk={desk} attempt={attempt} undo={undo} />
      <main class="view" aria-label={words.ui.site.work}>
        <RoofWords desk={desk} attempt={attempt} />
        <ViewTabs desk={desk} down={attempt.site.down !== undefined} />
        <StageHost desk={desk} attempt={attempt} working={working} found={setAt} bare={close(room)} />
        {!small(room) && <Exaggerated desk={desk} attempt={attempt} />}
        <Unkept desk={desk} session={session} />
        <CaptionBar words={words} caption={said} turn={last?.turn ?? 0} />
      </main>
      <Sheet desk={desk} session={session} working={working} at={at} room={room} onAct={act} undo={undo} />
      {!watching && <ToolRail desk={desk} onDrop={drop} />}
      <KeyHelp desk={desk} />
    </div>
  );
};

/** The drawing has no room for anything that lies over it. */
const close = ({ width, low }: Room): boolean => width === 'narrow' || low;

/** Too low for a strip under the drawing: it hangs on the sheet. */
const small = ({ width, low, tag }: Room): boolean => width === 'narrow' || low || !tag;

const roomClass = (hand: string, room: Room, watching: boolean): string =>
  ['site', hand, room.width, ...shapes.filter((shape) => room[shape]), watching && 'watching']
    .filter(Boolean)
    .join(' ');

const shapes = ['low', 'broad', 'short', 'tall'] as const;

type SheetProps = {
  readonly desk: Desk;
  readonly session: Session;
  readonly working: Working;
  readonly at: Found | undefined;
  readonly room: Room;
  readonly onAct: (action: Action) => void;
  readonly undo: () => void;
};

/** The work in hand, on the sheet or on a tag at its member, and the crew list. */
const Sheet = ({ desk, session, working, at, room, onAct, undo }: SheetProps) => {
  const attempt = useSignal(session.attempt);
  const view = useSignal(desk.view);
  const strip = useSignal(desk.strip);
  // A strip under the drawing takes up a tag's room.
  const tagged = room.tag && !strip && view === 'overview' && canBeTagged(working.spot);
  return (
    <aside class="sheet">
      {attempt.mode === 'watch' && !isOver(attempt.site) ? (
        <WatchPanel desk={desk} session={session} onAct={onAct} />
      ) : (
        <WorkPanel
          desk={desk}
          attempt={attempt}
          working={working}
          tagged={tagged}
          onAct={onAct}
          undo={undo}
        />
      )}
      {tagged && working.spot && (
        <MemberTag
          key={working.tool}
          desk={desk}
          attempt={attempt}
          spot={working.spot}
          at={at}
          onAct={onAct}
        />
      )}
      {close(room) && <Teaching desk={desk} />}
      {small(room) && <Exaggerated desk={desk} attempt={attempt} />}
      <LoadList desk={desk} attempt={attempt} working={working} />
      <CrewPanel desk={desk} attempt={attempt} />
    </aside>
  );
};

/** Who is watched does it, not who looks on. */
const byCrew = (words: Messages, caption: Caption): Caption =>
  caption.who === words.ui.caption.you ? { ...caption, who: words.ui.caption.crew } : caption;

/** What was done last: told in the words of the moment, so that it changes language with the rest. */
type Done = {
  readonly action: Action;
  readonly outcome: Decision;
  /** Counts what was told. */
  readonly turn: number;
  /** Crew-minutes of work taken back. */
  readonly back?: number;
};
