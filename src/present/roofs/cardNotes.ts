import type { Block, Variant } from './cardFit';
import { checksOf, orderOf } from './cardOrder';
import { heightOf, type } from './cardSizes';
import { escaped } from './drawSvg';
import { tapeText } from './figures';
import { roofSaid } from './said';
import type { RoofSheet, SheetAsked, SheetRow } from './sheet';

/** What stands on a card beside its figures: ridge and ties, marks, order, checks, and what to mind. */

type On = { readonly sheet: RoofSheet; readonly width: number };

/** `Name: what. More.` in the type of figures. */
const lineHtml = (name: string, text: string): string =>
  `<p class="fig"><b>${escaped(name)}: </b>${escaped(text)}</p>`;

const lines = (rows: readonly (readonly [string, string])[], width: number): Variant => ({
  html: rows.map(([name, text]) => lineHtml(name, text)).join(''),
  height: rows.reduce((sum, [name, text]) => sum + heightOf(`${name}: ${text}`, width, 'figure'), 0),
});

const rowsOf = ({ parts }: RoofSheet, key: string): readonly SheetRow[] =>
  parts.find((part) => part.key === key)?.rows ?? [];

const told = ({ count, name }: SheetRow): string => (count === undefined ? name : `${count} × ${name}`);

export const ridgeBlock = (asked: SheetAsked, { sheet, width }: On): Block => {
  const { card } = asked.words.roofs;
  const text = (row: SheetRow): string => {
    const of = (key: string): string | undefined => row.figures.find((one) => one.key === key)?.text;
    const [top, under, joists, floor, long] = [
      'ridgeTop',
      'ridgeUnder',
      'ridgeOverJoists',
      'ridgeOverFloor',
      'length',
    ].map(of);
    const all = [
      top && `${card.ridgeTop.toLowerCase()} ${top}`,
      under && card.under(under),
      joists && card.overJoists(joists),
      floor && card.overFloor(floor),
      long && card.ridgeLong(long),
    ].filter((one): one is string => one !== undefined && one !== '');
    return [`${all.join(', ')}.`, ...row.notes].join(' ');
  };
  const ridges = rowsOf(sheet, 'ridge').map((row): readonly [string, string] => [row.name, text(row)]);
  const ties = rowsOf(sheet, 'ties').map((row): readonly [string, string] => [told(row), brief(row)]);
  return { key: 'ridge', variants: [lines([...ridges, ...ties], width)] };
};

/** A row's figures in one line, names in small letters. */
const brief = ({ figures, notes }: SheetRow): string =>
  [
    `${figures.map(({ name, text }) => `${name.charAt(0).toLowerCase()}${name.slice(1)} ${text}`).join(', ')}.`,
    ...notes.slice(0, 1),
  ].join(' ');

/** Blocks that are not in the row of large figures. */
export const blocksBlock = (asked: SheetAsked, { width }: On): Block => {
  const { roof, words, units } = asked;
  const { card, part, figure } = words.roofs;
  const sizes = new Map<string, number>();
  for (const { length, count } of roof.blocks) {
    const text = tapeText(length, units);
    sizes.set(text, (sizes.get(text) ?? 0) + count);
  }
  if (sizes.size === 0) return { key: 'blocks', variants: [{ html: '', height: 0 }] };
  const text = [...sizes].map(([length, count]) => card.joinedCount(count, length)).join(', ');
  const bevels = [...new Set(bevelTexts(asked))].join(', ');
  return {
    key: 'blocks',
    variants: [lines([[part.blocks, `${text}; ${figure.bevel.toLowerCase()} ${bevels}.`]], width)],
  };
};

const bevelTexts = ({ roof }: SheetAsked): readonly string[] =>
  roof.blocks.map(({ bevel }) => `${((Math.atan2(bevel.rise, bevel.run) * 180) / Math.PI).toFixed(1)}°`);

/** Marks in full; a long even row of them told by its step. */
export const layoutBlock = (asked: SheetAsked, { sheet, width }: On): Block => {
  const { words } = asked;
  const { part } = words.roofs;
  const own = sheet.parts.find(({ key }) => key === 'layout');
  const rows = own?.rows ?? [];
  const hook = (own?.notes ?? []).join(' ');
  const made = (tell: (list: readonly number[], text: string) => string): Variant => {
    const all = rows.map(({ name, figures: [figure] }): readonly [string, string] => [
      rows.length > 1 ? name : words.roofs.figure.marks,
      tell(figure?.list ?? [], figure?.text ?? ''),
    ]);
    const inner = lines(all, width);
    const head = `<p class="hook"><b>${escaped(part.layout)}. </b>${escaped(hook)}</p>`;
    return {
      html: `${head}${inner.html}`,
      height: heightOf(`${part.layout}. ${hook}`, width, 'word') + 2 + inner.height,
    };
  };
  const full = made((_, text) => text);
  const short = made((list, text) => shortMarks(asked, list) ?? text);
  const many = rows.some(({ count = 0 }) => count > 40);
  return { key: 'layout', variants: many ? [short] : [full, short] };
};

/** `0", then 23 1/4" and every 24" to 287 1/4" · 310 1/2"`: where most are a step apart. */
const shortMarks = ({ words, units, plan }: SheetAsked, list: readonly number[]): string | undefined => {
  const step = plan.spacing;
  const out: string[] = [];
  let i = 0;
  while (i < list.length) {
    let j = i;
    while (j + 1 < list.length && Math.abs((list[j + 1] ?? 0) - (list[j] ?? 0) - step) < 0.01) j += 1;
    const from = tapeText(list[i] ?? 0, units);
    if (j - i >= 3)
      out.push(words.roofs.card.every(from, tapeText(step, units), tapeText(list[j] ?? 0, units)));
    else for (let k = i; k <= j; k += 1) out.push(tapeText(list[k] ?? 0, units));
    i = j + 1;
  }
  return out.length < list.length ? out.join(' · ') : undefined;
};

/** Left over: what carries, dormers, gables. In full, or on the sheet. */
export const alsoBlock = ({ words }: SheetAsked, { sheet, width }: On): Block => {
  const keys = ['carries', 'dormers', 'gables'] as const;
  const rows = keys.map((key) => ({ key, rows: rowsOf(sheet, key) })).filter((one) => one.rows.length > 0);
  const variant = (kept: readonly string[]): Variant => {
    const shown = rows.filter(({ key }) => kept.includes(key)).flatMap((one) => one.rows);
    const left = rows
      .filter(({ key }) => !kept.includes(key))
      .map(({ key }) => words.roofs.part[key].toLowerCase());
    return {
      ...lines(
        shown.map((row): readonly [string, string] => [told(row), brief({ ...row, notes: [] })]),
        width,
      ),
      ...(left.length > 0 && { left: left.join(', ') }),
    };
  };
  return {
    key: 'also',
    variants: [variant(keys), variant(['carries', 'dormers']), variant(['carries']), variant([])],
  };
};

/** Two columns; the order gives way to nothing, checks to their first ones. */
export const orderBlock = ({ plan, words }: SheetAsked, { width }: On): Block => {
  const { card } = words.roofs;
  const rows = orderOf(plan, words);
  const checks = checksOf(plan, words);
  const [wide, other] = [width * 0.57, width * 0.39];
  let n = 0;
  const items = rows.map((row) => {
    if ('noReturn' in row) {
      return { html: `<li class="stop"><b>${escaped(row.noReturn)}</b></li>`, height: type.strong.line + 2 };
    }
    n += 1;
    return {
      html: `<li><b>${n}</b><span>${escaped(row.step)}</span></li>`,
      height: heightOf(row.step, wide - 20, 'word') + 1.5,
    };
  });
  const order = items.reduce((sum, { height }) => sum + height, 0);
  const variant = (most: number): Variant => {
    const shown = checks.slice(0, most);
    const list = shown.reduce((sum, text) => sum + heightOf(`${text} ______`, other - 18, 'word') + 3, 0);
    return {
      html: `<div class="columns"><section><h2>${escaped(card.order)} <small>${escaped(card.noWayBack)}</small></h2><ol>${items.map(({ html }) => html).join('')}</ol></section><section><h2>${escaped(card.checks)}</h2><ul>${shown.map((text) => `<li><i></i><span>${escaped(text)}</span></li>`).join('')}</ul></section></div>`,
      height: type.strong.line + 4 + Math.max(order, list),
    };
  };
  return { key: 'order', variants: [variant(8), variant(5)] };
};

/** Of this roof first, then what holds for every one. The first words are those of code, plans and license. */
export const cautionsBlock = ({ roof, words }: SheetAsked, { width }: On): Block => {
  const { cautions, roofs } = words;
  const own = [...new Set(roof.cautions.map(({ text }) => roofSaid(words.lang, text)))];
  const keys = ['fall', 'anchor', 'load', 'lifting', 'nailGun', 'night'];
  const variant = (of: readonly string[], count: number): Variant => {
    const all = keys
      .slice(0, count)
      .flatMap((key) => cautions[key] ?? [])
      .join(' ');
    const safety = `${roofs.card.safety}: ${cautions['localCode'] ?? ''}`;
    const left = own.length > of.length ? roofs.part.cautions.toLowerCase() : undefined;
    return {
      html: `<p class="safety">${escaped(safety)}</p>${of.map((text) => `<p class="fig warn">${escaped(text)}</p>`).join('')}<p>${escaped(all)}</p>`,
      height:
        heightOf(safety, width, 'strong') +
        of.reduce((sum, text) => sum + heightOf(text, width - 14, 'figure'), 0) +
        heightOf(all, width, 'word') +
        3,
      ...(left !== undefined && { left }),
    };
  };
  return {
    key: 'cautions',
    variants: [
      variant(own, 6),
      variant(own, 4),
      variant(own, 3),
      variant(own.slice(0, 2), 3),
      variant(own.slice(0, 1), 2),
    ],
  };
};
