import { useEffect, useRef, useState } from 'preact/hooks';
import type { Attempt, Decision } from '../core/site/attempt';
import type { Action } from '../core/site/action';
import { partsOfJoint, type JointId } from '../core/site/ids';
import { shows } from '../core/site/shows';
import type { ToolId } from '../core/instruments/tool';
import type { Offer, Picked, Spot } from '../present/work/offer';
import { spotsFor } from '../present/work/spots';
import type { Tool } from '../present/work/toolset';
import { labelText, pick, spotName } from '../present/words/spotNames';
import { lengthText, type Units } from '../present/words/numbers';
import type { Messages } from '../present/words/messages';
import { wordsOf, type Desk } from './desk';
import { PickerField } from './picker';
import { Picture } from './picture';
import { useSignal } from './useSignal';

type Props = { readonly desk: Desk; readonly attempt: Attempt; readonly onAct: (action: Action) => Decision };

/** The tool in hand: where it can be put, what it can do there, and the one filled button. */
export const WorkPanel = ({ desk, attempt, onAct }: Props) => {
  const words = wordsOf(desk);
  const tool = useSignal(desk.tool);
  const chosen = useSignal(desk.spot);
  const spots = spotsFor(attempt, tool);
  const at = Math.max(
    0,
    spots.findIndex(({ id }) => id === chosen),
  );
  const spot = spots[at];
  return (
    <section class="work paper" aria-labelledby="work-title">
      <h2 id="work-title">{words.trade.tool[tool]}</h2>
      {spots.length === 0 ? (
        <p class="dim">{words.ui.site.none}</p>
      ) : (
        <SpotList
          words={words}
          spots={spots}
          at={at}
          attempt={attempt}
          units={desk.settings.value.units}
          choose={(id) => (desk.spot.value = id)}
        />
      )}
      {spot && (
        <SpotWork
          key={`${tool} ${spot.id}`}
          desk={desk}
          attempt={attempt}
          spot={spot}
          onAct={(action) => follow({ desk, spots, at, tool }, onAct(action))}
        />
      )}
    </section>
  );
};

/** After an act the next place in the list is taken up, so that a row of them is one key after another. */
const follow = (
  {
    desk,
    spots,
    at,
    tool,
  }: { readonly desk: Desk; readonly spots: readonly Spot[]; readonly at: number; readonly tool: Tool },
  decision: Decision,
): void => {
  const attempt = desk.session.value?.attempt.value;
  if (!decision.ok || !attempt || desk.tool.value !== tool) return;
  const here = spots[at]?.id;
  const now = spotsFor(attempt, tool);
  const still = now.findIndex(({ id }) => id === here);
  if (still >= 0 && here !== undefined && !here.includes('@')) return;
  desk.spot.value = now[still >= 0 ? Math.min(still + 1, now.length - 1) : Math.min(at, now.length - 1)]?.id;
};

type ListProps = {
  readonly words: Messages;
  readonly spots: readonly Spot[];
  readonly at: number;
  readonly attempt: Attempt;
  readonly units: Units;
  readonly choose: (id: string) => void;
};

const SpotList = ({ words, spots, at, attempt, units, choose }: ListProps) => {
  const host = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const row = host.current?.querySelector<HTMLElement>('[aria-selected="true"]');
    if (row && host.current)
      host.current.scrollTop =
        row.offsetTop - host.current.offsetTop - host.current.clientHeight / 2 + row.clientHeight / 2;
  }, [at, spots.length]);
  const onKey = (event: KeyboardEvent): void => {
    const to = { ArrowDown: at + 1, ArrowUp: at - 1, Home: 0, End: spots.length - 1 }[event.key];
    const next = to === undefined ? undefined : spots[Math.min(spots.length - 1, Math.max(0, to))];
    if (!next) return;
    event.preventDefault();
    choose(next.id);
  };
  return (
    <div
      class="spots"
      role="listbox"
      tabIndex={0}
      ref={host}
      aria-label={words.ui.site.spots}
      aria-activedescendant={`spot-${at}`}
      onKeyDown={onKey}
    >
      {spots.map((spot, i) => (
        <div
          role="option"
          id={`spot-${i}`}
          key={spot.id}
          data-spot={spot.id}
          aria-selected={i === at}
          onClick={() => choose(spot.id)}
        >
          <span>{spotName(words, spot)}</span>
          <span class="state">{spotState(words, { attempt, spot, units })}</span>
        </div>
      ))}
    </div>
  );
};

/** What is seen there: nails, the last reading said, what a board was called. */
const spotState = (
  words: Messages,
  { attempt, spot, units }: { readonly attempt: Attempt; readonly spot: Spot; readonly units: Units },
): string => {
  const { site } = attempt;
  if (spot.reading) {
    const { tool, at, from } = spot.reading;
    const judged = site.judged[at]?.call;
    if (judged) return pick(words.trade.call, judged).split(':')[0] ?? '';
    const last = site.readings
      .filter((r) => r.tool === tool && r.at === at && (from === undefined || r.from === from))
      .at(-1);
    return last === undefined
      ? ''
      : typeof last.said === 'number'
        ? lengthText(last.said, units)
        : pick(words.trade.seen, last.said);
  }
  if (spot.id.startsWith('judge@'))
    return pick(words.trade.call, site.judged[spot.member]?.call ?? '').split(':')[0] ?? '';
  if (!spot.id.includes(':')) return '';
  const so = site.joints[spot.id as JointId];
  return so && so.tacks > 0
    ? `${so.tacks} · ${words.trade.tool.tack}`
    : so && so.nails > 0
      ? `${so.nails}`
      : pick(words.trade.joint, partsOfJoint(spot.id).kind) && '';
};

type WorkProps = {
  readonly desk: Desk;
  readonly attempt: Attempt;
  readonly spot: Spot;
  readonly onAct: (action: Action) => void;
};

const SpotWork = ({ desk, attempt, spot, onAct }: WorkProps) => {
  const words = wordsOf(desk);
  const { units } = useSignal(desk.settings);
  const [offerAt, setOffer] = useState(0);
  const offer = spot.offers[Math.min(offerAt, spot.offers.length - 1)] as Offer;
  const [picks, setPicks] = useState<Readonly<Record<string, Picked>>>({});
  const usual = usualPick(offer);
  const kept = picks[offer.id];
  const fits =
    kept === undefined ||
    offer.picker?.kind !== 'choice' ||
    offer.picker.options.some(({ value }) => value === kept);
  const picked = fits && kept !== undefined ? kept : usual;
  return (
    <div class="act">
      {spot.reading && <ReadingPicture desk={desk} attempt={attempt} spot={spot} />}
      {spot.offers.length > 1 && (
        <div class="choice" role="radiogroup" aria-label={words.ui.site.acts}>
          {spot.offers.map((one, i) => (
            <button
              type="button"
              class="btn small"
              role="radio"
              key={one.id}
              data-offer={one.id}
              aria-checked={one === offer}
              onClick={() => setOffer(i)}
            >
              {labelText(words, one.label)}
            </button>
          ))}
        </div>
      )}
      {offer.picker && (
        <PickerField
          picker={offer.picker}
          value={picked}
          set={(value) => setPicks({ ...picks, [offer.id]: value })}
          words={words}
          units={units}
        />
      )}
      <button
        type="button"
        class="btn main"
        id="main-act"
        data-act={offer.id}
        onClick={() => onAct(offer.act(picked))}
      >
        {labelText(words, offer.id === 'judge' ? ['act', 'read'] : offer.label)}
      </button>
    </div>
  );
};

const usualPick = ({ picker }: Offer): Picked => {
  if (!picker) return '';
  return picker.kind === 'choice' ? (picker.options[0]?.value ?? '') : picker.start;
};

/** The tool's own picture: the learner takes the reading off it. */
const ReadingPicture = ({
  desk,
  attempt,
  spot,
}: {
  readonly desk: Desk;
  readonly attempt: Attempt;
  readonly spot: Spot;
}) => {
  const { theme, lang } = useSignal(desk.settings);
  const reading = spot.reading as { tool: ToolId; at: string; from?: string };
  const shown = shows(attempt, reading);
  if (shown === undefined || reading.at === 'punch') return null;
  const label = spotName(wordsOf(desk), spot);
  return (
    <Picture
      label={label}
      deps={[shown, theme, lang, spot.id]}
      draw={(canvas) => desk.drawings.reading(canvas, { attempt, ...reading, shown, theme, lang })}
    />
  );
};
