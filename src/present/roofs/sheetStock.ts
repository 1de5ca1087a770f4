import { fastenings, type Fastening } from '../../core/advice/fastening';
import { peopleFor } from '../../core/advice/lifting';
import type { FiguredBoards, FiguredLists } from '../../core/roof/figuredLists';
import { tapedText, textFigure } from './figures';
import { roofSaid } from './said';
import type { SheetAsked, SheetPart, SheetRow } from './sheetShape';
import { boardName } from './title';
import { lengthText } from '../words/numbers';

/** What to buy, who lifts it, what holds it, and what to mind. */

export const stockPart = (asked: SheetAsked): SheetPart => {
  const { lists, words } = asked;
  const { part, note } = words.roofs;
  return {
    key: 'stock',
    title: part.stock,
    rows: stacked(lists.cutList.boards).map((one, i) => boardsRow(asked, one, i)),
    notes: lists.cutList.bought.map(
      (one) => `${boardName(one.stock, asked)}: ${note.waste(percent(one.wasteShare))}.`,
    ),
  };
};

type Weighed = FiguredLists['weights']['sticks'][number];

type Boards = Pick<FiguredBoards, 'stock' | 'length' | 'special'> & { readonly count: number };

/** Boards alike, however they are cut. */
const stacked = (boards: readonly FiguredBoards[]): readonly Boards[] => {
  const all = new Map<string, Boards>();
  for (const one of boards) {
    const key = `${one.stock.nominal}/${one.length}`;
    all.set(key, { ...one, count: (all.get(key)?.count ?? 0) + one.count });
  }
  return [...all.values()];
};

const boardsRow = (asked: SheetAsked, { stock, length, count, special }: Boards, i: number): SheetRow => ({
  id: `board.${i + 1}`,
  name: boardName(stock, asked),
  count,
  figures: [{ ...textFigure(asked, 'length', lengthText(length, asked.units)), inches: length }],
  notes: special ? [asked.words.roofs.note.special] : [],
});

const percent = (share: number): string => `${Math.round(share * 100)}%`;

/** Sticks that are more than one person's lift, heaviest first; the rest in one sum. */
export const weightsPart = (asked: SheetAsked): SheetPart => {
  const { lists, words } = asked;
  const { part, note, unit } = words.roofs;
  const { weights } = lists;
  const names = namesOf(asked);
  const heavy = alike(weights.sticks.filter(({ each }) => peopleFor(each) > 1)).sort(
    (a, b) => b.each - a.each,
  );
  return {
    key: 'weights',
    title: part.weights,
    rows: heavy.map((one, i): SheetRow => ({
      id: `weight.${i + 1}`,
      name: names(one.kind),
      count: one.count,
      figures: [textFigure(asked, 'each', `${Math.round(one.each)} ${unit.pounds}`)],
      notes: [peopleFor(one.each) > 2 ? note.people(peopleFor(one.each)) : note.twoPeople],
    })),
    notes: [
      note.heaviest(
        names(
          weights.sticks.find(({ member }) => member === weights.heaviest.member)?.kind ?? 'common',
        ).toLowerCase(),
        `${Math.round(weights.heaviest.each)} ${unit.pounds}`,
      ),
      note.weighEstimate,
      ...(heavy.length > 0 ? [note.weighSource] : []),
    ],
  };
};

/** Sticks of one kind that weigh the same, in one. */
const alike = (sticks: readonly Weighed[]): Weighed[] => {
  const all = new Map<string, Weighed>();
  for (const one of sticks) {
    const key = `${one.kind}/${Math.round(one.each)}`;
    all.set(key, { ...one, count: (all.get(key)?.count ?? 0) + one.count });
  }
  return [...all.values()];
};

/** What a stick is called by its kind. */
const namesOf =
  ({ words: { roofs } }: SheetAsked) =>
  (kind: string): string => {
    const names: Readonly<Record<string, string>> = { ...roofs.member, jack: roofs.part.jacks };
    return names[kind] ?? kind;
  };

export const nailsPart = (asked: SheetAsked): SheetPart => ({
  key: 'nails',
  title: asked.words.roofs.part.nails,
  rows: fastenings.filter((one) => isThere(asked, one)).map((one, i) => nailRow(asked, one, i)),
  notes: [asked.words.roofs.note.askPlans],
});

const isThere = ({ roof }: SheetAsked, { joint }: Fastening): boolean => {
  const has = (kind: string): boolean => roof.ties.some((tie) => tie.kind === kind);
  switch (joint) {
    case 'blockToPlate':
    case 'blockToRafter':
      return roof.blocks.length > 0;
    case 'joistToPlate':
    case 'joistLap':
    case 'joistToRafter':
      return has('joist');
    case 'collarToRafter':
      return has('collar');
    case 'rafterToRidge':
    case 'oppositeRafterToRidge':
      return roof.ridges.length > 0;
    case 'hipToPlate':
    case 'jackToHip':
      return roof.hips !== undefined;
    case 'valley':
      return roof.valleys !== undefined;
    case 'rafterToPlate':
      return true;
  }
};

/** The first way that was read with a count; where a table has none that was read, the plans have it. */
const nailRow = (asked: SheetAsked, { joint, source, ways }: Fastening, i: number): SheetRow => {
  const { nail: names, how, note } = asked.words.roofs;
  const way = ways.find(({ nails, sure }) => nails !== undefined && sure === 'read');
  const text = way ? `${way.nails} × ${way.nail}, ${how[way.how]}` : note.askPlans;
  return {
    id: `nail.${i + 1}`,
    name: names[joint],
    figures: [textFigure(asked, 'each', text)],
    notes: [note.nailSource(`${source.document} ${source.section}`)],
  };
};

export const cautionsPart = (asked: SheetAsked): SheetPart => ({
  key: 'cautions',
  title: asked.words.roofs.part.cautions,
  rows: [],
  notes: [
    ...new Set(
      asked.roof.cautions.map(({ text }) => tapedText(roofSaid(asked.words.lang, text), asked.units)),
    ),
  ],
});
