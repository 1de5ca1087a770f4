import { useMemo, useRef } from 'preact/hooks';
import { cautionFields } from '../../content/draft/cautionFields';
import { askedOf } from '../../content/draft/roofDraft';
import { listsOf } from '../../core/roof/lists';
import { planDrawing, type DrawSize } from '../../present/roofs/drawPlan';
import { sectionDrawing } from '../../present/roofs/drawSection';
import { roofSaid } from '../../present/roofs/said';
import type { Desk } from '../desk';
import { roofWordsOf } from './roofWords';
import { PageHeader } from '../pageHeader';
import { useSignal } from '../useSignal';
import { Drawn } from './drawn';
import { draftOn, ownRoofOf, unitsFor, type OwnRoof } from './ownRoof';
import { SheetParts } from './sheetParts';
import { RoofActions, Unread } from './roofActions';
import { Refusals, RoofForm } from './roofForm';

/** Tomorrow's roof: typed on one side, drawn and figured on the other. */
export const RoofScreen = ({ desk }: { readonly desk: Desk }) => {
  const words = roofWordsOf(desk);
  useSignal(desk.settings);
  useSignal(desk.draft);
  const draft = draftOn(desk);
  const unread = useSignal(desk.unread);
  const own = useMemo(() => ownRoofOf(draft), [draft]);
  const good = useLastGood(own);
  return (
    <div class="page ownPage">
      <PageHeader desk={desk} id="roofBack" to="start" text={words.own.back} />
      <main>
        <h1>{words.own.title}</h1>
        <p class="lead">{words.own.lead}</p>
        <p class="first ownFirst">{words.own.first}</p>
        {unread && <Unread desk={desk} title={words.own.linkNot} why={unread} />}
        <div class="ownGrid">
          <RoofForm desk={desk} own={own} />
          <div class="ownSide">
            <Refusals desk={desk} own={own} />
            {good && <Views desk={desk} own={good} stale={!own.read.ok} />}
            <Heeds desk={desk} own={own} />
            <RoofActions desk={desk} own={own} />
            {good && <Sheet desk={desk} own={good} />}
          </div>
        </div>
        <Help desk={desk} />
      </main>
    </div>
  );
};

/** What is drawn while an answer is half typed: the last roof that could be framed. */
const useLastGood = (own: OwnRoof): OwnRoof | undefined => {
  const good = useRef<OwnRoof | undefined>(undefined);
  if (own.read.ok) good.current = own;
  return good.current;
};

const Sheet = ({ desk, own: { draft, read, roof } }: { readonly desk: Desk; readonly own: OwnRoof }) => {
  const plan = read.ok ? read.value : undefined;
  const lists = useMemo(() => plan && roof && listsOf(plan, roof), [plan, roof]);
  if (!plan || !roof || !lists) return null;
  return <SheetParts asked={{ plan, roof, lists, words: roofWordsOf(desk), units: unitsFor(desk, draft) }} />;
};

/** Plan and section as the answers stand. */
const Views = ({
  desk,
  own: { draft, read, roof },
  stale,
}: {
  readonly desk: Desk;
  readonly own: OwnRoof;
  readonly stale: boolean;
}) => {
  const words = roofWordsOf(desk);
  const plan = read.ok ? read.value : undefined;
  const units = unitsFor(desk, draft);
  const drawn = useMemo(
    () =>
      plan && roof
        ? {
            plan: planDrawing({ plan, words, units }, drawnSize()),
            section: sectionDrawing({ plan, roof, words, units }, drawnSize()),
          }
        : undefined,
    [plan, roof, words, units],
  );
  if (!drawn) return null;
  return (
    <section class={`paper ownViews${stale ? ' stale' : ''}`} id="drawn">
      {stale && <p class="wrong">{words.own.lastGood}</p>}
      <figure>
        <figcaption>{words.own.plan}</figcaption>
        <Drawn drawing={drawn.plan} />
      </figure>
      <figure>
        <figcaption>{words.own.section}</figcaption>
        <Drawn drawing={drawn.section} />
      </figure>
    </section>
  );
};

/** As large as they are seen, so that their texts are as large as the page's. */
const drawnSize = (): DrawSize =>
  matchMedia('(max-width: 699px)').matches
    ? { width: 330, height: 230, figure: 17, word: 14 }
    : { width: 640, height: 320, figure: 17, word: 14 };

/** What is to be thought of and stands beside no field. */
const Heeds = ({ desk, own }: { readonly desk: Desk; readonly own: OwnRoof }) => {
  const words = roofWordsOf(desk);
  const asked = new Set(askedOf(own.draft).map(({ id }) => id));
  const rest = own.heeds.filter(({ code }) => !asked.has(cautionFields[code] ?? ''));
  if (rest.length === 0) return null;
  return (
    <section class="paper heeds">
      <h2>{words.own.heedTitle}</h2>
      <ul class="cautions">
        {rest.map(({ code, text, source }) => (
          <li key={`${code} ${text}`}>
            {roofSaid(words.lang, text)} {source !== undefined && <small>{words.own.source(source)}</small>}
          </li>
        ))}
      </ul>
    </section>
  );
};

const Help = ({ desk }: { readonly desk: Desk }) => {
  const { own } = roofWordsOf(desk);
  return (
    <section class="paper ownHelp">
      <h2>{own.help}</h2>
      <ol>
        {own.helpRows.map((row) => (
          <li key={row}>{row}</li>
        ))}
      </ol>
    </section>
  );
};
