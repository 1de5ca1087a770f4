import type { Block, Variant } from './cardFit';
import { heightOfPieces, type Piece } from './cardSizes';
import { set } from './drawSvg';
import { degreesText, tapeText } from './figures';
import type { RoofSheet, SheetAsked, SheetRow } from './sheetShape';

/** What stands on a card below its large figures: ridge and ties, marks, and what there is besides. */

type On = { readonly sheet: RoofSheet; readonly width: number };

/** A name in bold and what there is to say of it. */
type Line = readonly [name: string, text: string];

const lineHtml = ([name, text]: Line): string => `<b>${set(name)}</b> ${set(text)}`;

const piecesOf = ([name, text]: Line): readonly Piece[] => [
  { text: name, as: 'strong' },
  { text, as: 'figure' },
];

/** Each on lines of its own. */
const lines = (rows: readonly Line[], width: number): Variant => ({
  html: rows.map((row) => `<p class="fig">${lineHtml(row)}</p>`).join(''),
  height: rows.reduce((sum, row) => sum + heightOfPieces(piecesOf(row), width), 0),
});

/** One after another, to save paper. */
const runIn = (rows: readonly Line[], width: number): Variant => ({
  html: rows.length === 0 ? '' : `<p class="fig">${rows.map(lineHtml).join(' ')}</p>`,
  height: rows.length === 0 ? 0 : heightOfPieces(rows.flatMap(piecesOf), width),
});

const rowsOf = ({ parts }: RoofSheet, key: string): readonly SheetRow[] =>
  parts.find((part) => part.key === key)?.rows ?? [];

const told = ({ count, name }: SheetRow): string => (count === undefined ? name : `${count} × ${name}`);

/** Ridges, ties, and blocks where no large figure tells them. */
export const ridgeBlock = (asked: SheetAsked, { sheet, width }: On, withBlocks: boolean): Block => {
  const rows = [
    ...rowsOf(sheet, 'ridge').map((row): Line => [`${row.name}:`, ridgeText(asked, row)]),
    ...rowsOf(sheet, 'ties').map((row): Line => [`${told(row)}:`, tieText(asked, row)]),
    ...(withBlocks ? blockLines(asked) : []),
  ];
  const short = [
    ...rowsOf(sheet, 'ridge').map((row): Line => [`${row.name}:`, ridgeText(asked, row)]),
    ...rowsOf(sheet, 'ties').map((row): Line => [`${told(row)}:`, tieText(asked, row, true)]),
    ...(withBlocks ? blockLines(asked) : []),
  ];
  return { key: 'ridge', variants: [lines(rows, width), runIn(rows, width), runIn(short, width)] };
};

const ridgeText = ({ words }: SheetAsked, { figures, notes }: SheetRow): string => {
  const { card } = words.roofs;
  const of = (key: string): string | undefined => figures.find((one) => one.key === key)?.text;
  const [top, under, joists, floor, long] = [
    'ridgeTop',
    'ridgeUnder',
    'ridgeOverJoists',
    'ridgeOverFloor',
    'length',
  ].map(of);
  const all = [
    top && card.topAbove(top),
    under && card.under(under),
    joists && card.overJoists(joists),
    floor && card.overFloor(floor),
    long && card.ridgeLong(long),
  ].filter((one): one is string => one !== undefined && one !== '');
  return [`${all.join(', ')}.`, ...notes].join(' ');
};

/** In short: without what is cut off its corners and at which pairs. */
const tieText = ({ words }: SheetAsked, { figures, notes }: SheetRow, short = false): string => {
  const { card } = words.roofs;
  const height = figures.find(({ key }) => key === 'tieHeight');
  const long = figures.find(({ key }) => key === 'length' || key === 'behindBlocks');
  const clip = figures.find(({ key }) => key === 'clip');
  const all = [
    height?.inches === 0 ? card.onPlates : `${small(height?.name)} ${height?.text}`,
    card.ridgeLong(long?.text ?? ''),
    ...(long?.key === 'behindBlocks' ? [card.behindBlocks] : []),
    ...(clip && !short ? [`${small(clip.name)} ${clip.text}`] : []),
  ];
  return [`${all.join(', ')}.`, ...notes.slice(0, short ? 0 : 1)].join(' ');
};

const small = (name = ''): string => `${name.charAt(0).toLowerCase()}${name.slice(1)}`;

/** A row's figures in one line, names in small letters. */
const brief = ({ figures }: SheetRow): string =>
  `${figures.map(({ name, text }) => `${small(name)} ${text}`).join(', ')}.`;

const blockLines = ({ roof, words, units }: SheetAsked): readonly Line[] => {
  const { card, part, figure } = words.roofs;
  const sizes = new Map<string, number>();
  for (const { length, count } of roof.blocks) {
    const text = tapeText(length, units);
    sizes.set(text, (sizes.get(text) ?? 0) + count);
  }
  if (sizes.size === 0) return [];
  const text = [...sizes].map(([length, count]) => card.joinedCount(count, length)).join(', ');
  const bevels = [...new Set(roof.blocks.map(({ bevel }) => degreesText(bevel)))].join(', ');
  return [[`${part.blocks}:`, `${text}; ${small(figure.bevel)} ${bevels}.`]];
};

/** Marks in full; a long even row of them told by its step. */
export const layoutBlock = (asked: SheetAsked, { sheet, width }: On): Block => {
  const { words } = asked;
  const { part } = words.roofs;
  const own = sheet.parts.find(({ key }) => key === 'layout');
  const rows = own?.rows ?? [];
  // What has a figure in it is set as figures are.
  const [figured, hooks] = [true, false].map((has) =>
    (own?.notes ?? []).filter((note) => /\d/.test(note) === has),
  ) as [string[], string[]];
  const hook = hooks.join(' ');
  const made = (tell: (list: readonly number[], text: string) => string, inOne: boolean): Variant => {
    const marks = rows.map(({ name, figures: [figure] }): Line => [
      rows.length > 1 ? `${name}:` : '',
      `${tell(figure?.list ?? [], figure?.text ?? '')}.`,
    ]);
    const all = [...marks, ...figured.map((note): Line => ['', note])];
    const inner = inOne ? runIn(all, width) : lines(all, width);
    const head = `<p><b>${set(part.layout)}.</b> <span>${set(hook)}</span></p>`;
    const height = heightOfPieces(
      [
        { text: `${part.layout}.`, as: 'strong' },
        { text: hook, as: 'word' },
      ],
      width,
    );
    return { html: `${head}${inner.html}`, height: height + inner.height };
  };
  const full = made((_, text) => text, false);
  const brief = (list: readonly number[], text: string): string => shortMarks(asked, list) ?? text;
  const short = [made(brief, false), made(brief, true)] as const;
  const many = rows.some(({ count = 0 }) => count > 40);
  return { key: 'layout', variants: many ? short : [full, ...short] };
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
        shown.map((row): Line => [`${told(row)}:`, brief(row)]),
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
