import { hair } from '../units/hair';

/** Which boards to buy for sticks of one section, and what is cut from each. Inches. */

/** What one pass of a saw takes. Ours: a framing blade's cut, rounded to the eighth that crews reckon with. */
export const kerf = 1 / 8;

const foot = 12;
/** Boards come by the even foot. Common practice, no source. */
const step = 2 * foot;
export const shortestBoard = 8 * foot;
export const longestBoard = 24 * foot;

const stocked: readonly number[] = Array.from(
  { length: (longestBoard - shortestBoard) / step + 1 },
  (_, i) => shortestBoard + i * step,
);

/** Sticks of one length. */
export type Sticks = { readonly length: number; readonly count: number };

/** Boards of one length that are cut alike: how many, and what comes out of each, longest first. */
export type CutBoards = { readonly length: number; readonly count: number; readonly cuts: readonly Sticks[] };

/** What becomes of one board: `length` = `used` + `kerfs` + `waste`. */
export type BoardUse = { readonly used: number; readonly kerfs: number; readonly waste: number };

/** The shortest board that a stick comes out of; past the longest that is stocked, the next even foot. */
export const boardFor = (length: number): number =>
  Math.max(shortestBoard, Math.ceil((length - hair) / step) * step);

/** The last cut takes what is left where that is less than a kerf; a stick as long as its board takes none. */
export const useOf = ({ length, cuts }: Omit<CutBoards, 'count'>): BoardUse => {
  const used = cuts.reduce((sum, cut) => sum + cut.length * cut.count, 0);
  const sticks = cuts.reduce((sum, { count }) => sum + count, 0);
  const left = Math.max(0, length - used);
  const kerfs = Math.min(sticks * kerf, left);
  return { used, kerfs, waste: left - kerfs };
};

/** Boards with what is still to be had from one: a kerf is off for each stick already in it. */
type Open = CutBoards & { readonly rest: number };

/** How many sticks of a length come out of a rest: there is a kerf between them, none after the last. */
const fitting = (rest: number, length: number): number =>
  Math.max(0, Math.floor((rest + kerf + hair) / (length + kerf)));

/**
 * First fit, longest sticks first: each goes in the first board with room, in the order they were opened; what finds none
 * opens new boards, as few feet as sticks of that length alone can do with, or has one that is there bought longer where
 * that is less. Boards cut alike are one entry, so that the work grows with how many lengths differ and not with how many
 * sticks there are.
 */
export const boardsFor = (sticks: readonly Sticks[]): readonly CutBoards[] =>
  alike(
    sameLengths(sticks).reduce<readonly Open[]>((open, row) => {
      const { boards, left } = filled(open, row);
      if (left === 0) return boards;
      const more = { length: row.length, count: left };
      const fresh = opened(more);
      return lengthened(boards, more, totalOf(fresh)) ?? [...boards, ...fresh];
    }, []),
  );

const totalOf = (boards: readonly CutBoards[]): number =>
  boards.reduce((sum, { length, count }) => sum + length * count, 0);

/**
 * One board bought longer, so that all of some sticks come out of it too: by the fewest feet, of such the shortest. Nothing
 * where that is no less than new boards.
 */
const lengthened = (boards: readonly Open[], sticks: Sticks, cost: number): readonly Open[] | undefined => {
  const needs = sticks.count * (sticks.length + kerf) - kerf;
  let [least, at] = [cost, -1];
  boards.forEach(({ length, rest }, i) => {
    const longer = boardFor(length - rest + needs);
    const more = longer - length;
    const shorter = more === least && at >= 0 && length < (boards[at] as Open).length;
    if (longer <= longestBoard && (more < least || shorter)) [least, at] = [more, i];
  });
  const board = boards[at];
  if (!board) return undefined;
  const { length, count, rest } = board;
  const longer = { ...board, length: length + least, rest: rest + least };
  return [
    ...boards.slice(0, at),
    withMore(longer, sticks, 1),
    ...(count > 1 ? [{ ...board, count: count - 1 }] : []),
    ...boards.slice(at + 1),
  ];
};

/** Longest first; lengths nearer than a hair are one, the longer. */
const sameLengths = (sticks: readonly Sticks[]): readonly Sticks[] => {
  const rows: { readonly length: number; count: number }[] = [];
  for (const { length, count } of [...sticks].sort((a, b) => b.length - a.length)) {
    const last = rows.at(-1);
    if (count <= 0) continue;
    if (last && last.length - length < hair) last.count += count;
    else rows.push({ length, count });
  }
  return rows;
};

const withMore = ({ length, cuts, rest }: Open, more: Sticks, count: number): Open => {
  const last = cuts.at(-1);
  const same = last?.length === more.length ? last.count : 0;
  return {
    length,
    count,
    cuts: [...(same > 0 ? cuts.slice(0, -1) : cuts), { length: more.length, count: same + more.count }],
    rest: rest - more.count * (more.length + kerf),
  };
};

/** Puts sticks where there is room for them: boards before one of an entry are filled before it. */
const filled = (
  open: readonly Open[],
  { length, count }: Sticks,
): { readonly boards: readonly Open[]; readonly left: number } => {
  let left = count;
  const boards = open.flatMap((board): readonly Open[] => {
    const room = left > 0 ? fitting(board.rest, length) : 0;
    if (room === 0) return [board];
    const whole = Math.min(board.count, Math.floor(left / room));
    const some = whole < board.count ? left - whole * room : 0;
    left -= whole * room + some;
    const untouched = board.count - whole - (some > 0 ? 1 : 0);
    return [
      ...(whole > 0 ? [withMore(board, { length, count: room }, whole)] : []),
      ...(some > 0 ? [withMore(board, { length, count: some }, 1)] : []),
      ...(untouched > 0 ? [{ ...board, count: untouched }] : []),
    ];
  });
  return { boards, left };
};

/** Boards of a size and how many sticks of one length each holds. */
type Size = { readonly size: number; readonly holds: number };

const sizesFor = (length: number): readonly Size[] => {
  const least = boardFor(length);
  const sizes = least > longestBoard ? [least] : stocked.filter((size) => size >= least);
  return sizes.map((size) => ({ size, holds: fitting(size, length) }));
};

/** So many times what the thriftiest board holds are weighed against other boards, the rest is cut from that one. Ours. */
const weighed = 4;

/** New boards for sticks of one length, least total length; of boards as thrifty the shorter. */
const opened = ({ length, count }: Sticks): readonly Open[] => {
  if (count === 0) return [];
  const sizes = sizesFor(length);
  const best = sizes.reduce((a, b) => (b.size * a.holds < a.size * b.holds ? b : a));
  const bulk = Math.max(0, Math.floor(count / best.holds) - (weighed - 1));
  const board = ({ size }: Size, each: number, many: number): Open =>
    withMore({ length: size, count: many, cuts: [], rest: size }, { length, count: each }, many);
  return [
    ...(bulk > 0 ? [board(best, best.holds, bulk)] : []),
    ...thriftiest(sizes, count - bulk * best.holds).map(({ size, each }) =>
      board({ size, holds: each }, each, 1),
    ),
  ];
};

/** Board sizes that hold so many sticks with the least total length, each with how many it takes. */
const thriftiest = (
  sizes: readonly Size[],
  count: number,
): readonly { readonly size: number; readonly each: number }[] => {
  const cost = [0];
  const last: (Size | undefined)[] = [undefined];
  for (let n = 1; n <= count; n++) {
    const costs = sizes.map(({ size, holds }) => size + (cost[Math.max(0, n - holds)] as number));
    cost[n] = Math.min(...costs);
    last[n] = sizes[costs.indexOf(cost[n] as number)];
  }
  const boards: { readonly size: number; readonly each: number }[] = [];
  for (let n = count; n > 0;) {
    const { size, holds } = last[n] as Size;
    boards.push({ size, each: Math.min(n, holds) });
    n -= holds;
  }
  return boards;
};

/** Entries cut alike told as one, longest boards first. */
const alike = (boards: readonly CutBoards[]): readonly CutBoards[] => {
  const byCuts = new Map<
    string,
    { readonly length: number; count: number; readonly cuts: CutBoards['cuts'] }
  >();
  for (const { length, count, cuts } of boards) {
    const key = `${length}|${cuts.map((cut) => `${cut.count}×${cut.length}`).join('|')}`;
    const same = byCuts.get(key);
    if (same) same.count += count;
    else byCuts.set(key, { length, count, cuts });
  }
  return [...byCuts.values()].sort((a, b) => b.length - a.length);
};
