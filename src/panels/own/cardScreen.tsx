import { useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import { answerOf } from '../../content/draft/roofDraft';
import { listsOf } from '../../core/roof/lists';
import { cardBody, type CardAsked } from '../../present/roofs/card';
import { cardPage } from '../../present/roofs/cardPage';
import { papers, type Paper } from '../../present/roofs/cardSizes';
import { cardStyle } from '../../present/roofs/cardStyle';
import type { Desk } from '../desk';
import { roofWordsOf } from './roofWords';
import { Radios } from '../radios';
import { offer } from '../saveFile';
import { PageHeader } from '../pageHeader';
import { useSignal } from '../useSignal';
import { draftOn, linkTo, ownRoofOf, unitsFor } from './ownRoof';
import { fileNameOf } from './roofActions';

/** The set card as it will lie on the tailgate: one page, seen whole, then printed. */
export const CardScreen = ({ desk }: { readonly desk: Desk }) => {
  const words = roofWordsOf(desk);
  const { lang } = useSignal(desk.settings);
  useSignal(desk.draft);
  const draft = draftOn(desk);
  const [paper, setPaper] = useState<Paper>(lang === 'es' ? 'a4' : 'letter');
  const asked = useMemo(() => askedFor(desk, paper), [draft, paper, lang, desk.settings.value.units]);
  return (
    <div class="page ownPage cardPage">
      <PageHeader desk={desk} id="cardBack" to="roof" text={words.own.cardBack} />
      <main>
        <div class="cardActs">
          <h1>{words.own.card}</h1>
          <Radios
            small
            label={words.own.paper}
            options={(['letter', 'a4'] as const).map((one) => ({ value: one, text: words.own[one] }))}
            value={paper}
            set={(one) => setPaper(one === 'a4' ? 'a4' : 'letter')}
          />
          {asked && (
            <>
              <button type="button" class="btn main" id="printCard" onClick={() => print()}>
                {words.own.print}
              </button>
              <button
                type="button"
                class="btn small"
                id="saveCard"
                onClick={() =>
                  offer({
                    name: fileNameOf(draft).replace('.roof.json', '.card.html'),
                    type: 'text/html',
                    text: cardPage(asked),
                  })
                }
              >
                {words.own.saveCard}
              </button>
            </>
          )}
        </div>
        {asked ? <CardSheet asked={asked} /> : <p role="alert">{words.own.refusedTitle}</p>}
      </main>
    </div>
  );
};

const askedFor = (desk: Desk, paper: Paper): CardAsked | undefined => {
  const { draft, read, roof } = ownRoofOf(draftOn(desk));
  if (!read.ok || !roof) return undefined;
  const name = (draft.typed['name'] ?? '').trim();
  return {
    plan: read.value,
    roof,
    lists: listsOf(read.value, roof),
    words: roofWordsOf(desk),
    units: unitsFor(desk, draft),
    ...(name !== '' && { name }),
    machine: answerOf(draft.typed, 'site.machine') === 'yes',
    paper,
    carried: { kind: 'link', text: linkTo(draft, location.href) },
  };
};

/** Shrunk until all of it is seen; on paper it has its own size. */
const CardSheet = ({ asked }: { readonly asked: CardAsked }) => {
  const host = useRef<HTMLDivElement>(null);
  const [scale, setScale] = useState(1);
  const sheet = useRef<HTMLDivElement>(null);
  const { html } = useMemo(() => cardBody(asked), [asked]);
  // Apart from the page's own style sheets: the card looks the same here, on paper and saved.
  useLayoutEffect(() => {
    const root = sheet.current?.shadowRoot ?? sheet.current?.attachShadow({ mode: 'open' });
    if (root) root.innerHTML = `<style>:host{all:initial;display:block}${cardStyle}</style>${html}`;
  }, [html]);
  const points = papers[asked.paper];
  useLayoutEffect(() => {
    const element = host.current;
    if (!element) return;
    const fit = (): void => setScale(Math.min(1.4, element.clientWidth / (points.width * pixelsInPoint)));
    fit();
    const watch = new ResizeObserver(fit);
    watch.observe(element);
    return () => watch.disconnect();
  }, [asked.paper]);
  return (
    <div class="cardHost" ref={host} style={{ height: `${points.height * pixelsInPoint * scale}px` }}>
      <style>{`@page{size:${asked.paper === 'a4' ? 'A4' : 'letter'};margin:0}`}</style>
      <div
        class="cardSheet"
        style={{ width: `${points.width}pt`, transform: `scale(${scale})` }}
        ref={sheet}
      />
    </div>
  );
};

const pixelsInPoint = 4 / 3;
