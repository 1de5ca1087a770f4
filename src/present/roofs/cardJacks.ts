import type { FiguredJacks } from '../../core/roof/figuredSlants';
import { cheekTexts } from './cardFigures';
import type { Block, Variant } from './cardFit';
import { heightOfPieces, type Piece } from './cardSizes';
import { set } from './drawSvg';
import { degreesText, tapeText } from './figures';
import type { SheetAsked } from './sheetShape';
import { whereText } from './where';

/** Jacks on a card: those with the same cuts and step in one line, a row of lengths for each place they stand at. */
export const jacksBlock = (asked: SheetAsked, width: number): Block => {
  const { part, card } = asked.words.roofs;
  const left = part.jacks.toLowerCase();
  const groups = grouped(asked);
  if (groups.length === 0) return { key: 'jacks', variants: [{ html: '', height: 0 }] };
  return {
    key: 'jacks',
    variants: [
      linesOf(groups, width, true),
      { ...linesOf(groups, width, false), left: card.anglesOf(left) },
      { html: '', height: 0, left },
    ],
  };
};

type Group = { readonly name: string; readonly lengths: string; readonly cuts: string };

const grouped = (asked: SheetAsked): readonly Group[] => {
  const all = new Map<string, FiguredJacks[]>();
  for (const one of asked.roof.jacks ?? []) {
    const key = `${one.kind}/${cheekTexts(asked, one.cheeks).join()}/${one.lengths.length > 1 ? one.difference.toFixed(5) : ''}`;
    const alike = one.lengths.length > 1 ? key : ([...all.keys()].find((has) => has.startsWith(key)) ?? key);
    all.set(alike, [...(all.get(alike) ?? []), one]);
  }
  return [...all.values()].map((jacks) => groupOf(asked, jacks));
};

const groupOf = (asked: SheetAsked, jacks: readonly FiguredJacks[]): Group => {
  const { words, units } = asked;
  const { member, note, card, draw } = words.roofs;
  const [first] = jacks;
  if (!first) return { name: '', lengths: '', cuts: '' };
  const count = jacks.reduce((sum, one) => sum + one.count, 0);
  const rows = new Map<string, Set<string>>();
  for (const one of jacks) {
    const text = one.lengths.map((length) => tapeText(length, units)).join(' · ');
    rows.set(text, (rows.get(text) ?? new Set()).add(whereText(words, one.side)));
  }
  const lengths = [...rows].map(([text, sides]) => `${[...sides].join(', ')}: ${text}`).join('; ');
  const stepped = jacks.find((one) => one.lengths.length > 1);
  const hands = (['left', 'right'] as const).flatMap((hand) => {
    const own = jacks.filter((one) => (one.hipSide ?? one.valleySide) === hand);
    const n = own.reduce((sum, one) => sum + one.count, 0);
    return n === 0 || n === count ? [] : [`${n} ${note.hand[hand]}`];
  });
  return {
    name: `${count} × ${member[first.kind]},`,
    lengths,
    cuts: `${[
      ...(stepped ? [card.eachBy(tapeText(stepped.difference, units))] : []),
      ...cheekTexts(asked, first.cheeks),
      ...(first.foot
        ? [`${note.bottom}: ${draw.level}, ${draw.saw} ${degreesText(first.foot.sawTilt)}`]
        : []),
      ...(hands.length > 0 ? [hands.join(', ')] : []),
      ...(first.seat > 0 ? [card.tailAsCommon] : []),
    ].join(' · ')}.`,
  };
};

const linesOf = (groups: readonly Group[], width: number, cuts: boolean): Variant => {
  const pieces = ({ name, lengths, cuts: how }: Group): readonly Piece[] => [
    { text: name, as: 'strong' },
    { text: cuts ? `${lengths}; ${how}` : `${lengths}.`, as: 'figure' },
  ];
  return {
    html: groups
      .map(
        ({ name, lengths, cuts: how }) =>
          `<p class="fig"><b>${set(name)}</b> ${set(cuts ? `${lengths}; ${how}` : `${lengths}.`)}</p>`,
      )
      .join(''),
    height: groups.reduce((sum, group) => sum + heightOfPieces(pieces(group), width), 0),
  };
};
