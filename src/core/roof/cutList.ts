import { boardsFor, kerf, longestBoard, useOf, type CutBoards } from '../stock/boards';
import { hair, isOver } from '../units/hair';
import type { Bought, CutList, FiguredBoards, FiguredStick, Stock } from './figuredLists';
import type { Sticks } from './sticks';

/** The boards to buy for a roof's sticks, section by section in the order the members come, and what is cut from each. */
export const cutListOf = ({ sticks, splices }: Sticks): CutList => {
  const told = sticks.map(({ volume: _, wood: __, ...stick }) => stick);
  const boards = bySection(told).map(boardsOfSection);
  return {
    kerf,
    sticks: told,
    ...(splices.length > 0 && { splices }),
    boards: boards.flat(),
    bought: boards.flatMap(sumOf),
  };
};

const bySection = (sticks: readonly FiguredStick[]): readonly (readonly FiguredStick[])[] => {
  const sections = new Map<string, FiguredStick[]>();
  for (const stick of sticks) {
    const key = `${stick.stock.thickness}×${stick.stock.depth}`;
    const section = sections.get(key);
    if (section) section.push(stick);
    else sections.set(key, [stick]);
  }
  return [...sections.values()];
};

const boardsOfSection = (sticks: readonly FiguredStick[]): readonly FiguredBoards[] => {
  const [first] = sticks;
  if (!first) return [];
  const names = namesOf(sticks);
  return boardsFor(sticks).map((board) => boardOf(first.stock, board, names));
};

const boardOf = (
  stock: Stock,
  board: CutBoards,
  namesFor: (length: number) => readonly string[],
): FiguredBoards => {
  const { kerfs, waste } = useOf(board);
  return {
    stock,
    length: board.length,
    count: board.count,
    ...(isOver(board.length, longestBoard) && { special: true }),
    cuts: board.cuts.map(({ length, count }) => ({ length, count, of: namesFor(length) })),
    kerfs,
    waste,
    wasteShare: waste / board.length,
  };
};

/** The members with sticks of a length. Lengths nearer than a hair are one, as in the boards. */
const namesOf = (sticks: readonly FiguredStick[]): ((length: number) => readonly string[]) => {
  const rows: { readonly length: number; readonly names: Set<string> }[] = [];
  for (const { length, member } of [...sticks].sort((a, b) => b.length - a.length)) {
    const last = rows.at(-1);
    if (last && last.length - length < hair) last.names.add(member);
    else rows.push({ length, names: new Set([member]) });
  }
  const byLength = new Map(rows.map(({ length, names }) => [length, [...names]]));
  return (length) => byLength.get(length) ?? [];
};

const sumOf = (boards: readonly FiguredBoards[]): readonly Bought[] => {
  const [first] = boards;
  if (!first) return [];
  const sum = (of: (board: FiguredBoards) => number): number =>
    boards.reduce((all, board) => all + board.count * of(board), 0);
  const bought = sum(({ length }) => length);
  const waste = sum((board) => board.waste);
  return [
    {
      stock: first.stock,
      boards: sum(() => 1),
      bought,
      used: sum((board) => useOf(board).used),
      kerfs: sum(({ kerfs }) => kerfs),
      waste,
      wasteShare: waste / bought,
    },
  ];
};
