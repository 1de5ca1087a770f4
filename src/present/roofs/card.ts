import { alsoBlock, layoutBlock, ridgeBlock } from './cardNotes';
import { cautionsBlock, orderBlock } from './cardOrderBlock';
import { figuresBlock } from './cardFigures';
import { jacksBlock } from './cardJacks';
import { fitted, type Block, type Variant } from './cardFit';
import { codeOf } from './cardQr';
import { heightOf, inside, margin, papers, type Paper } from './cardSizes';
import { commonMember } from './cutMembers';
import { cutDrawing } from './drawCuts';
import { drawingSvg, set } from './drawSvg';
import { roofSheet } from './sheet';
import type { SheetAsked } from './sheetShape';
import { lengthText } from '../words/numbers';

/** The set card: all that a crew wants from a roof on one page, black on white, to be read at arm's length. */

export type CardAsked = SheetAsked & {
  readonly paper: Paper;
  /** What the crew calls the roof. */
  readonly name?: string;
  /** Whether one lifts the ridge; told as if it did unless said. */
  readonly machine?: boolean;
  /** What the code on it holds: an address that opens the roof, or the roof file's own text. */
  readonly carried: { readonly kind: 'link' | 'file'; readonly text: string };
};

export type Card = {
  /** One `article`, which `cardStyle` makes a page of. */
  readonly html: string;
  /** What the card leaves to the sheet, in words. */
  readonly left: readonly string[];
  /** Whether all of it is on the page, as its texts were measured. */
  readonly fits: boolean;
};

/** Left over: browsers break lines a little otherwise than they were measured. Points. */
const spare = 6;

/** Between parts, with the rule that divides them. Points. */
const gap = 5;

/** Who gives way first. What has to be cut and set gives way last. */
const ease = [
  ...['layout', 'order', 'drawing', 'drawing', 'order', 'ridge', 'drawing', 'also', 'cautions', 'order'],
  ...['drawing', 'layout', 'also', 'order', 'cautions', 'also', 'ridge', 'order', 'jacks', 'cautions'],
  ...['figures', 'jacks', 'figures'],
];

export const cardBody = (asked: CardAsked): Card => {
  const { words, units, paper } = asked;
  const { card, part } = words.roofs;
  const width = inside(paper);
  const sheet = roofSheet(asked);
  const on = { sheet, width };
  const always = [part.stock, part.weights, part.nails].map((one) => one.toLowerCase());
  const foot = units === 'mm' ? card.footMm : card.foot;
  const figures = figuresBlock(asked, width);
  const isStrip = figures.variants[0].html.includes('strip');
  const blocks: readonly Block[] = [
    headBlock(asked, { title: sheet.title, name: asked.name, facts: sheet.facts, width }),
    drawingBlock(asked, width),
    figures,
    jacksBlock(asked, width),
    ridgeBlock(asked, on, !isStrip || asked.roof.blocks.length > 2),
    alsoBlock(asked, on),
    layoutBlock(asked, on),
    cautionsBlock(asked, width),
    orderBlock({ plan: asked.plan, words, width, machine: asked.machine ?? true }),
  ];
  const leftText = (left: readonly string[]): string =>
    card.onSheet([...new Set([...left, ...always])].join(', '));
  const footHeight =
    heightOf(leftText([part.gables, part.dormers, part.jacks]), width, 'word') +
    heightOf(`${card.practice}   ${foot}`, width, 'word') +
    4;
  const room = papers[paper].height - 2 * margin - footHeight - gap - spare;
  const all = fitted(blocks, { room, gap, ease });
  const parts = all.blocks
    .map(({ key, html, height }) => `<div class="part ${key}" data-h="${Math.round(height)}">${html}</div>`)
    .join('');
  const footer = `<footer><p>${set(leftText(all.left))}</p><p class="ends"><span>${set(card.practice)}</span><span>${set(foot)}</span></p></footer>`;
  return {
    html: `<article class="set-card ${paper}" lang="${words.lang}">${parts}${footer}</article>`,
    left: [...all.left, ...always],
    fits: all.fits,
  };
};

type Head = {
  readonly title: string;
  readonly name?: string | undefined;
  readonly facts: readonly string[];
  readonly width: number;
};

const headBlock = ({ words, carried }: CardAsked, { title, name, facts, width }: Head): Block => {
  const { card } = words.roofs;
  const code = codeOf(carried.text, set(carried.kind === 'link' ? card.scan : card.scanText));
  const how = code === undefined ? card.noScan : carried.kind === 'link' ? card.scan : card.scanText;
  const note = `${card.title}. ${how}`;
  const side = width - (code ? code.size + 12 : 0);
  const text =
    heightOf(name ?? title, side, 'title') +
    (name === undefined ? 0 : heightOf(title, side, 'strong')) +
    facts.reduce((sum, one) => sum + heightOf(one, side, 'figure'), 0) +
    heightOf(note, side, 'word');
  return {
    key: 'head',
    variants: [
      {
        html: `<div><h1>${set(name ?? title)}</h1>${name === undefined ? '' : `<p><b>${set(title)}</b></p>`}${facts.map((one) => `<p class="fig">${set(one)}</p>`).join('')}<p>${set(note)}</p></div>${code?.svg ?? ''}`,
        height: Math.max(code?.size ?? 0, text),
      },
    ],
  };
};

const drawingBlock = (asked: CardAsked, width: number): Block => {
  const { roof, words, units, lists } = asked;
  const { card } = words.roofs;
  const [first] = roof.commonRafters;
  if (!first) return { key: 'drawing', variants: [{ html: '', height: 0 }] };
  const member = commonMember(asked, first);
  const board = lists.cutList.boards.find(({ cuts }) => cuts.some(({ of }) => of.includes(first.id)));
  const name = `${card.cut(first.count, member.name.toLowerCase())}${board ? `, ${card.boards(lengthText(board.length, units))}` : ''}.`;
  const variant = (deep: number, low = false): Variant => {
    const drawing = cutDrawing(asked, member, {
      width,
      figure: 15,
      word: 12,
      deep,
      ...(low && { low: true as const }),
    });
    return {
      html: `<h2 class="wide"><span class="fig">${set(name)}</span><small>${set(card.tryTwo)}</small></h2>${drawingSvg(drawing)}`,
      height: heightOf(`${name} ${card.tryTwo}`, width, 'figure') + drawing.height,
    };
  };
  return {
    key: 'drawing',
    variants: [variant(56), variant(46), variant(38), variant(38, true), variant(28, true)],
  };
};
