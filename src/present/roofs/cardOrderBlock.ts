import { ledgerCatalogues } from '../words/ledgerWords';
import type { RoofPlan } from '../../core/roof/plan';
import type { RoofMessages } from '../words/roofMessages';
import type { Block, Variant } from './cardFit';
import { checksOf, orderOf, type OrderLine } from './cardOrder';
import { heightOf, heightOfPieces, type, type Piece } from './cardSizes';
import { set } from './drawSvg';
import { tapedText } from './figures';
import { roofSaid } from './said';
import type { SheetAsked } from './sheetShape';

/** Order of work, checks, and what holds for every roof: in two columns, or run in where a roof has much to tell besides. */

type On = {
  readonly plan: RoofPlan;
  readonly words: RoofMessages;
  readonly width: number;
  readonly machine: boolean;
};

/** Safety words that a card has room for, most needed first. */
const kept = ['fall', 'anchor', 'load', 'lifting', 'nailGun', 'night'];

export const orderBlock = (on: On): Block => ({
  key: 'order',
  variants: [
    columns(on, 4),
    columns(on, 2),
    runIn(on, { checks: 8, words: 4 }),
    runIn(on, { checks: 8, words: 2 }),
    runIn(on, { checks: 8, words: 1 }),
    runIn(on, { checks: 5, words: 0 }),
  ],
});

/** The first words are those of code, plans and license. */
const safetyOf = ({ plan, words }: On, count: number): readonly [string, string] => {
  const { cautions } = plan.kind === 'shed' ? ledgerCatalogues[words.lang] : words;
  return [
    `${words.roofs.card.safety}: ${cautions['localCode'] ?? ''}`,
    kept
      .slice(0, count)
      .flatMap((key) => cautions[key] ?? [])
      .join(' '),
  ];
};

const columns = (on: On, count: number): Variant => {
  const { plan, words, width } = on;
  const { card } = words.roofs;
  const [wide, other] = [width * 0.52, width * 0.44];
  const lines = numbered(orderOf(plan, words, on.machine));
  const checks = checksOf(plan, words);
  const [safety, more] = safetyOf(on, count);
  const order = lines.map(({ n, text }) =>
    n === undefined
      ? { html: `<li class="stop"><b>${set(text)}</b></li>`, height: type.strong.line + 2 }
      : {
          html: `<li><b>${n}</b><span>${set(text)}</span></li>`,
          height: heightOf(text, wide - 20, 'word') + 1,
        },
  );
  const left = order.reduce((sum, { height }) => sum + height, 0);
  const right =
    checks.reduce((sum, text) => sum + heightOf(text, other - 18, 'word') + 2, 0) +
    6 +
    heightOf(safety, other, 'strong') +
    heightOf(more, other, 'word');
  return {
    html: `<div class="columns"><section><h2>${set(card.order)} <small>${set(card.noWayBack)}</small></h2><ol>${order.map(({ html }) => html).join('')}</ol></section><section><h2>${set(card.checks)}</h2><ul>${checks.map((text) => `<li><i></i><span>${set(text)}</span></li>`).join('')}</ul><p class="safety">${set(safety)}</p><p>${set(more)}</p></section></div>`,
    height: type.strong.line + 3 + Math.max(left, right),
  };
};

const numbered = (rows: readonly OrderLine[]): readonly { readonly n?: number; readonly text: string }[] => {
  let n = 0;
  return rows.map((row) => {
    if ('noReturn' in row) return { text: row.noReturn };
    n += 1;
    return { n, text: row.step };
  });
};

type Kept = { readonly checks: number; readonly words: number };

const runIn = (on: On, { checks, words: count }: Kept): Variant => {
  const { plan, words, width } = on;
  const { card } = words.roofs;
  const lines = numbered(orderOf(plan, words, on.machine));
  const shown = checksOf(plan, words).slice(0, checks);
  const [safety, more] = safetyOf(on, count);
  const order = lines.map(({ n, text }) =>
    n === undefined ? `<b class="bars">${set(text)}</b>` : `<b>${n}</b>&nbsp;${set(text)}`,
  );
  // Bars and boxes are as wide as a letter or two.
  const orderPieces: readonly Piece[] = [
    { text: `${card.order} (${card.noWayBack})`, as: 'strong' },
    ...lines.flatMap(({ n, text }): readonly Piece[] =>
      n === undefined
        ? [{ text: `MM${text}MM`, as: 'strong' }]
        : [
            { text: `${n}`, as: 'strong' },
            { text, as: 'word' },
          ],
    ),
  ];
  const checkPieces: readonly Piece[] = [
    { text: card.checks, as: 'strong' },
    ...shown.map((text): Piece => ({ text: `MM ${text}`, as: 'word' })),
  ];
  const safetyPieces: readonly Piece[] = [
    { text: safety, as: 'strong' },
    { text: more, as: 'word' },
  ];
  return {
    html: `<p><b>${set(card.order)}</b> <small>(${set(card.noWayBack)})</small> ${order.join(' ')}</p><p class="boxes"><b>${set(card.checks)}</b> ${shown.map((text) => `<span class="box"><i></i>${set(text)}</span>`).join(' ')}</p><p><b>${set(safety)}</b> ${set(more)}</p>`,
    height: [orderPieces, checkPieces, safetyPieces].reduce(
      (sum, pieces) => sum + heightOfPieces(pieces, width),
      4,
    ),
  };
};

/** What this roof asks to be minded; where there is no room for all of it, the rest is on the sheet. */
export const cautionsBlock = ({ roof, words, units }: SheetAsked, width: number): Block => {
  const own = [...new Set(roof.cautions.map(({ text }) => tapedText(roofSaid(words.lang, text), units)))];
  const variant = (count: number): Variant => {
    const shown = own.slice(0, count);
    return {
      html: shown.map((text) => `<p class="fig warn">${set(text)}</p>`).join(''),
      height: shown.reduce((sum, text) => sum + heightOf(text, width - 14, 'figure'), 0),
      ...(own.length > count && { left: words.roofs.card.moreCautions(own.length - count) }),
    };
  };
  return { key: 'cautions', variants: [variant(own.length), variant(2), variant(1), variant(0)] };
};
