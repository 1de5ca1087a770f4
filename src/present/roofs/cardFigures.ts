import type { CommonRafter } from '../../core/roof/figured';
import type { Cheek, FiguredHip } from '../../core/roof/figuredSlants';
import { fractionText, toFraction } from '../../core/units/fraction';
import { measureOf } from '../words/numbers';
import { heightOf, type } from './cardSizes';
import type { Block, Variant } from './cardFit';
import { set } from './drawSvg';
import { degreesText, tapeText, type Told } from './figures';
import type { SheetAsked } from './sheetShape';
import { partOfId, whereText } from './where';

/** The figures of a card: one row of large ones for a roof of one kind of rafter, else a table with a line for each. */

export const figuresBlock = (asked: SheetAsked, width: number): Block => {
  const { roof } = asked;
  const alone = roof.commonRafters.length === 1 && !roof.hips && !roof.valleys && !roof.jacks;
  const [first] = roof.commonRafters;
  if (alone && first) return { key: 'figures', variants: [strip(asked, first)] };
  const rows = tableRows(asked);
  return {
    key: 'figures',
    variants: [
      tableOf(asked, rows, { width, cuts: true }),
      tableOf(asked, rows, { width, cuts: false }),
      tableOf(asked, rows.slice(0, 4), { width, cuts: false, more: rows.length - 4 }),
    ],
  };
};

type Cell = { readonly name: string; readonly inches: number; readonly note: string };

const strip = (asked: SheetAsked, one: CommonRafter): Variant => {
  const { roof, plan, words, units } = asked;
  const { card, draw } = words.roofs;
  const tape = (inches: number): string => tapeText(inches, units);
  const [ridge] = roof.ridges;
  const [ledger] = roof.ledgers ?? [];
  const [high] = roof.highPlates ?? [];
  const blocks = [...roof.blocks].sort((a, b) => b.count - a.count);
  const [block, ...others] = blocks;
  const top: readonly Cell[] = ridge
    ? [{ name: words.roofs.part.ridge, inches: ridge.topHeight, note: draw.ridgeOver }]
    : ledger
      ? [{ name: words.roofs.member.ledger, inches: ledger.topHeight, note: draw.ridgeOver }]
      : high
        ? [{ name: words.roofs.member.highPlate, inches: high.height, note: draw.abovePlate }]
        : [];
  const cells: readonly Cell[] = [
    ...top,
    {
      name: card.plumbCut,
      inches: one.plumbCutLength,
      note: ridge
        ? card.ridgeIs(tape(ridge.section.depth))
        : ledger
          ? card.ledgerIs(tape(ledger.section.depth))
          : '',
    },
    { name: card.body, inches: one.bodyLength, note: ridge ? card.ridgeOff : ledger ? card.ledgerOff : '' },
    { name: card.seat, inches: one.seat, note: card.heelIs(tape(one.heelCut)) },
    ...(one.tailLength > 0
      ? [{ name: card.tail, inches: one.tailLength, note: card.level(tape(plan.overhang)) }]
      : []),
    ...(block
      ? [
          {
            name: card.block,
            inches: block.length,
            note: others
              .slice(0, 1)
              .map(({ count, length }) => card.joinedCount(count, tape(length)))
              .join(''),
          },
        ]
      : []),
  ];
  const html = cells
    .map(
      ({ name, inches, note }) =>
        `<div class="cell"><b>${set(name)}</b>${stacked(inches, asked)}<span class="fig">${set(note)}</span></div>`,
    )
    .join('');
  return { html: `<div class="strip">${html}</div>`, height: type.word.line + 34 + type.figure.line };
};

/** Whole inches large, the fraction stacked beside them. */
const stacked = (inches: number, { units }: Told): string => {
  const { fraction, plain } = measureOf(inches, { units });
  const text = plain ?? `${fractionText(toFraction(inches))}"`;
  if (plain !== undefined) return `<span class="big">${set(plain)}</span>`;
  const { whole, num, den } = fraction;
  const part = num === 0 ? '' : `<span class="stack"><span>${num}</span><span>${den}</span></span>`;
  return `<span class="big" role="img" aria-label="${set(text)}">${whole === 0 && num > 0 ? '' : whole}${part}&quot;</span>`;
};

type Row = {
  readonly name: string;
  readonly count: number;
  /** Plumb cut, body, seat, tail, over plate, board. */
  readonly figures: readonly (number | undefined)[];
  readonly below: readonly string[];
  readonly key: string;
};

const tableRows = (asked: SheetAsked): readonly Row[] => {
  const { roof, words } = asked;
  const { member } = words.roofs;
  const commons = roof.commonRafters.map((one): Row => ({
    key: one.id,
    name:
      roof.commonRafters.length > 1
        ? `${member.common}, ${whereText(words, one.side, partOfId(one.id))}`
        : member.common,
    count: one.count,
    figures: [
      one.plumbCutLength,
      one.bodyLength,
      one.seat,
      one.tailLength,
      one.heightAbovePlate,
      one.stockLength,
    ],
    below: [],
  }));
  const slants = [
    ...(roof.hips ?? []).map((one) => slantRow(asked, one, member.hip)),
    ...(roof.valleys ?? []).map((one) => slantRow(asked, one, member.valley)),
  ];
  const rows = [...commons, ...joined(slants, words.roofs.card.pairs)];
  // What is alike is told once, under the last of them.
  return rows.map((row, i) => {
    const next = rows[i + 1];
    return next && next.below.join() === row.below.join() ? { ...row, below: [] } : row;
  });
};

const slantRow = (asked: SheetAsked, one: FiguredHip, name: string): Row => {
  const { words, units, lists } = asked;
  const { draw, figure } = words.roofs;
  const { rise, run } = one.slope;
  const boards = lists.cutList.sticks.filter(({ member }) => member === one.id).map(({ length }) => length);
  const backing = [...new Set(one.backing.map(degreesText))];
  const isHip = name === words.roofs.member.hip;
  return {
    key: `${name}/${[one.bodyLength, one.tailLength, one.seat].map((x) => x.toFixed(6)).join('/')}`,
    name,
    count: one.count,
    figures: [
      (one.section.depth * Math.sqrt(rise * rise + run * run)) / run,
      one.bodyLength,
      one.seat,
      one.tailLength,
      one.heightAbovePlate,
      boards.length > 0 ? Math.max(...boards) : undefined,
    ],
    below: [
      ...cheekTexts(asked, one.cheeks),
      ...(isHip ? [`${draw.backing} ${[...backing].sort().join(', ')}`] : []),
      ...(isHip && one.drop > 0 ? [`${figure.drop.toLowerCase()} ${tapeText(one.drop, units)}`] : []),
    ],
  };
};

/** Each end once: `top: cheek 34.9°, saw 53.1°; cheek 51.1°, saw 36.9°`. */
export const cheekTexts = ({ words }: Told, cheeks: readonly Cheek[]): readonly string[] => {
  const { draw, note } = words.roofs;
  return (['top', 'bottom'] as const).flatMap((end) => {
    const cuts = cheeks
      .filter((one) => one.end === end)
      .sort((a, b) => a.cheekAngle.rise / a.cheekAngle.run - b.cheekAngle.rise / b.cheekAngle.run)
      .map(
        ({ cheekAngle, sawBevel }) =>
          `${draw.cheek} ${degreesText(cheekAngle)}, ${draw.saw} ${degreesText(sawBevel)}`,
      );
    return cuts.length === 0 ? [] : [`${note[end]}: ${[...new Set(cuts)].join('; ')}`];
  });
};

/** Rows that are cut alike but for the hand are one. */
const joined = (rows: readonly Row[], pairs: string): readonly Row[] => {
  const all = new Map<string, Row>();
  for (const row of rows) {
    const twin = all.get(row.key);
    all.set(
      row.key,
      twin ? { ...twin, count: twin.count + row.count, below: [...new Set([...twin.below, pairs])] } : row,
    );
  }
  return [...all.values()];
};

type Shown = { readonly width: number; readonly cuts: boolean; readonly more?: number };

/** Widths of the six columns of figures. */
const column = 60;

const tableOf = (asked: SheetAsked, rows: readonly Row[], { width, cuts, more = 0 }: Shown): Variant => {
  const { words, units } = asked;
  const { card } = words.roofs;
  const heads = [card.plumbCut, card.body, card.seat, card.tail, card.over, card.board];
  const named = width - 6 * column - 8;
  const head = `<tr><th></th>${heads.map((name) => `<th>${set(name)}</th>`).join('')}</tr>`;
  const body = rows
    .map(({ name, count, figures, below }) => {
      const cells = figures.map(
        (inches) => `<td>${inches === undefined || inches === 0 ? '–' : set(tapeText(inches, units))}</td>`,
      );
      const second =
        cuts && below.length > 0
          ? `<tr class="below"><td colspan="7">${set(below.join(' · '))}</td></tr>`
          : '';
      return `<tr><th>${count} × ${set(name)}</th>${cells.join('')}</tr>${second}`;
    })
    .join('');
  const height = rows.reduce(
    (sum, { name, count, below }) =>
      sum +
      Math.max(type.figure.line, heightOf(`${count} × ${name}`, named, 'strong')) +
      2 +
      (cuts && below.length > 0 ? heightOf(below.join(' · '), width, 'figure') : 0),
    Math.max(...heads.map((name) => heightOf(name, column - 4, 'word'))) + 2,
  );
  return {
    html: `<table class="figures"><thead>${head}</thead><tbody>${body}</tbody></table>`,
    height,
    ...(more > 0
      ? { left: card.more(more) }
      : !cuts && rows.some(({ below }) => below.length > 0)
        ? { left: card.anglesOf(words.roofs.part.slants.toLowerCase()) }
        : {}),
  };
};
