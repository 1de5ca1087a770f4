import type { Vec3 } from '../core/geometry/vector';
import { lerp } from '../core/geometry/vector';
import { postX, roofOf, stationsOf } from '../core/level/layout';
import { sides, signOf } from '../core/roof/side';
import type { Attempt } from '../core/site/attempt';
import { placeOf } from '../core/site/ids';
import { loadsOf, type Loads } from '../core/site/loads';
import { pairLoads, type PairLoads, type RafterEnds } from '../core/site/pairLoads';
import type { Messages } from './words/messages';
import { memberName } from './words/names';

/** How what weighs on the frame gets down, ready to be drawn and said. */

export type LoadKind = 'push' | 'pull' | 'down' | 'out';

/** An arrow on a member: it points the way the member presses or pulls on what it meets. Inches, pounds. */
export type LoadArrow = {
  readonly member: string;
  readonly kind: LoadKind;
  readonly from: Vec3;
  readonly to: Vec3;
  readonly pounds: number;
};

export type LoadPath = { readonly pairs: readonly PairLoads[]; readonly arrows: readonly LoadArrow[] };

/** So many pairs are shown together; of more only the chosen one. Ours. */
const mostPairs = 3;
/** Less than this is not worth an arrow, pounds. Ours. */
const least = 0.5;

/** Undefined as long as nothing carries anything yet. */
export const loadPathOf = (attempt: Attempt, selected: string | undefined): LoadPath | undefined => {
  const stations = stationsOf(attempt.level).map((_, i) => i + 1);
  const pairs = stations.flatMap((n) => {
    const pair = pairLoads(attempt, n);
    return pair && Object.keys(pair.rafters).length > 0 ? [pair] : [];
  });
  if (pairs.length === 0) return undefined;
  const shown = pairs.length <= mostPairs ? pairs : [chosenOf(pairs, placeOf(selected ?? '').station)];
  const arrows = [
    ...shown.flatMap((pair) => arrowsOf(pair)),
    ...postArrows(attempt),
    ...studArrows(attempt, shown),
  ];
  return { pairs: shown, arrows: arrows.filter(({ pounds }) => pounds >= least) };
};

const chosenOf = (pairs: readonly PairLoads[], station: number | undefined): PairLoads =>
  pairs.find((pair) => pair.station === station) ?? (pairs[Math.floor(pairs.length / 2)] as PairLoads);

const arrowsOf = ({ rafters, ties }: PairLoads): readonly LoadArrow[] => [
  ...sides.flatMap((side) => {
    const one = rafters[side];
    return one ? rafterArrows(one, { sign: signOf(side), tied: ties.some(({ pull }) => pull > least) }) : [];
  }),
  ...ties.flatMap((tie) => tieArrows({ rafters, ties: [tie] })),
];

/** Shares of a rafter's length at which its arrows begin and end, from its heel; ours. */
const foot = [0.36, 0.07] as const;
const head = [0.64, 0.93] as const;
/** From the plate down, and out from the wall, inches; ours. */
const drop = { from: 3, to: 33 };
const thrust = { from: 8, to: 32 };

const alongOf = (along: number): LoadKind => (along >= 0 ? 'push' : 'pull');

/** Points to its end for a push, away from it for a pull. */
const pointing = (member: string, [tail, tip]: readonly [Vec3, Vec3], along: number): LoadArrow => ({
  member,
  kind: alongOf(along),
  from: along >= 0 ? tail : tip,
  to: along >= 0 ? tip : tail,
  pounds: Math.abs(along),
});

const rafterArrows = (
  { id, heel, top, atHeel, atTop, down, out }: RafterEnds,
  { sign, tied }: { readonly sign: number; readonly tied: boolean },
): readonly LoadArrow[] => {
  const at = (t: number): Vec3 => lerp(heel, top, t);
  const [x, y] = heel;
  const outward: LoadArrow = {
    member: id,
    kind: 'out',
    from: [x, y + sign * thrust.from, 0],
    to: [x, y + sign * thrust.to, 0],
    pounds: out,
  };
  return [
    pointing(id, [at(foot[0]), at(foot[1])], atHeel.along),
    pointing(id, [at(head[0]), at(head[1])], atTop.along),
    { member: id, kind: 'down', from: [x, y, -drop.from], to: [x, y, -drop.to], pounds: down },
    ...(tied ? [] : [outward]),
  ];
};

/** Beside the rafters it ties, inches: half of both. */
const beside = 1.5;

/** At each end, toward the middle for a pull and toward the ends for a push. */
const tieArrows = ({ rafters, ties }: Omit<PairLoads, 'station'>): readonly LoadArrow[] =>
  ties.flatMap(({ member, pull, height }) =>
    sides.flatMap((side): readonly LoadArrow[] => {
      const one = rafters[side];
      if (!one) return [];
      const t = Math.min(1, Math.max(0, (height - one.heel[2]) / (one.top[2] - one.heel[2])));
      const [x, y] = lerp(one.heel, one.top, t);
      const [end, inner]: readonly [Vec3, Vec3] = [
        [x + beside, y * 0.94, height],
        [x + beside, y * 0.5, height],
      ];
      return [pointing(member, [inner, end], -pull)];
    }),
  );

const postArrows = (attempt: Attempt): readonly LoadArrow[] => {
  const loads = loadsOf(attempt);
  if (!loads || loads === 'falls') return [];
  return Object.entries(loads.supports).flatMap(([member, pounds]): readonly LoadArrow[] => {
    const [kind, n] = member.split('.');
    if (kind !== 'post') return [];
    const x = postX(attempt.level, Number(n));
    return [{ member, kind: 'down', from: [x, 0, 40], to: [x, 0, 12], pounds }];
  });
};

/** Of the joints of a ledger those at the pairs that are shown; all as long as they are few. */
const studsShown = (
  { studs }: Loads,
  pairs: readonly PairLoads[],
): readonly (readonly [string, number])[] => {
  const all = Object.entries(studs);
  if (all.length <= mostPairs) return all;
  return all.filter(([joint]) => pairs.some(({ station }) => station === placeOf(joint).station));
};

/** Down the wall from under the ledger, inches; ours. Before rafters load it, its ends may lift. */
const studDrop = { from: 2, to: 32 };

const studArrows = (attempt: Attempt, pairs: readonly PairLoads[]): readonly LoadArrow[] => {
  const loads = loadsOf(attempt);
  if (!loads || loads === 'falls') return [];
  const { level } = attempt;
  const { thickness, depth } = level.plan.ridge;
  const under = (roofOf(level).ridges[0]?.topHeight ?? 0) - depth;
  return studsShown(loads, pairs).map(([member, pounds]): LoadArrow => {
    const x = stationsOf(level)[(placeOf(member).station ?? 1) - 1] ?? 0;
    const at = (drop: number): Vec3 => [x, thickness / 2, under - drop];
    const [high, low] = [at(studDrop.from), at(studDrop.to)];
    return pounds < 0
      ? { member, kind: 'pull', from: low, to: high, pounds: -pounds }
      : { member, kind: 'down', from: high, to: low, pounds };
  });
};

/** To the pound; from a hundred on to 5 pounds. */
export const roundPounds = (pounds: number): number =>
  pounds < 100 ? Math.round(pounds) : Math.round(pounds / 5) * 5;

/** A neat number of pounds near the largest, for the printed scale of the arrows' width. */
export const keyPounds = (most: number): number =>
  [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000].findLast((n) => n <= most) ?? 1;

/** The arrows with what each says on its chip of paper; a tie says it once for both its ends. */
export const labeled = (
  { views }: Messages,
  arrows: readonly LoadArrow[],
): readonly (LoadArrow & { readonly label: string })[] =>
  arrows.map((arrow, i) => {
    const { kind, pounds, member } = arrow;
    const twin = arrows.findIndex((other) => other.member === member);
    const once = placeOf(member).side === undefined && twin < i;
    return { ...arrow, label: once ? '' : `${views.loads.kind[kind]} ${roundPounds(pounds)} lb` };
  });

/** The same in words, member by member, and what all of it comes to. */
export const loadLines = (words: Messages, attempt: Attempt, { pairs }: LoadPath): readonly string[] => {
  const { loads: said } = words.views;
  const lb = (pounds: number): string => `${roundPounds(Math.abs(pounds))} lb`;
  const pressed = (along: number): string => `${said.kind[alongOf(along)]} ${lb(along)}`;
  const lines = pairs.flatMap(({ rafters, ties }) => [
    ...sides.flatMap((side) => {
      const one = rafters[side];
      if (!one) return [];
      const { id, atTop, atHeel, down, out } = one;
      return [
        said.rafter(memberName(words, id), pressed(atTop.along), pressed(atHeel.along)),
        said.heel(
          `${lb(down)} ${said.way[down < 0 ? 'up' : 'down']}`,
          `${lb(out)} ${said.way[out < 0 ? 'in' : 'out']}`,
        ),
      ];
    }),
    ...ties.map(({ member, pull }) =>
      said[pull >= 0 ? 'pulls' : 'pushes'](memberName(words, member), lb(pull)),
    ),
  ]);
  const all = loadsOf(attempt);
  if (!all || all === 'falls') return lines;
  const posts = Object.entries(all.supports).map(([id, down]) =>
    id.startsWith('post.') ? said.carries(memberName(words, id), lb(down)) : said.held(lb(down)),
  );
  const wall = studLines(words, all, pairs);
  return [
    ...lines,
    ...posts,
    ...wall,
    said.whole(lb(all.weight), lb(all.weight - sum(Object.values(all.supports)))),
  ];
};

/** What a ledger gives to the studs shown, and to all of them. */
const studLines = (words: Messages, loads: Loads, pairs: readonly PairLoads[]): readonly string[] => {
  const { loads: said } = words.views;
  const ledger = memberName(words, 'ridge');
  const line = (name: string, pounds: number): string =>
    pounds < 0
      ? said.pulls(name, `${roundPounds(-pounds)} lb ${said.way.up}`)
      : said.carries(name, `${roundPounds(pounds)} lb`);
  const all = Object.values(loads.studs);
  if (all.length === 0) return [];
  return [
    ...studsShown(loads, pairs).map(([joint, pounds]) =>
      line(`${ledger} ${placeOf(joint).station ?? 1}, ${words.trade.joint.ledger}`, pounds),
    ),
    line(ledger, sum(all)),
  ];
};

const sum = (all: readonly number[]): number => all.reduce((a, b) => a + b, 0);
