import { againstWall, sidesOf, stationsOf, upperStations } from '../../core/level/layout';
import type { PlaceAt } from '../../core/site/action';
import { ends, type Side } from '../../core/roof/side';
import { blockId, rafterId, type BoardId, type MemberId } from '../../core/site/ids';
import { figuredPost } from '../../core/site/decidePost';
import { postIds } from '../../core/site/planPosts';
import type { Observation } from '../../core/site/observe';
import { methodsOf } from '../../core/site/required';
import type { Offer, Option, Spot } from './offer';

/** Everything that is put up, swapped or taken out: bay by bay, from end A. */
export const setSpots = (seen: Observation): readonly Spot[] => [
  ...wallSpots(seen),
  ...tieSpots(seen),
  ...postSpots(seen),
  ...ridgeSpots(seen),
  ...sidesOf(seen.level).flatMap((side) => sideSpots(seen, side)),
  ...upperSpots(seen),
];

const spot = (member: string, offers: readonly Offer[]): readonly Spot[] =>
  offers.length === 0 ? [] : [{ id: member, member, offers }];

const up = (seen: Observation, member: string): boolean => seen.members[member as MemberId] !== undefined;

const takeOut = (member: MemberId): Offer => ({
  id: 'takeOut',
  label: ['act', 'takeOut'],
  act: () => ({ type: 'takeOut', member }),
});

const wallSpots = (seen: Observation): readonly Spot[] =>
  [...sidesOf(seen.level), ...ends].flatMap((wall) => {
    const id = `brace.wall.${wall}` as const;
    return up(seen, id)
      ? []
      : spot(id, [
          {
            id: 'brace',
            label: ['act', 'brace'],
            act: () => ({ type: 'brace', kind: 'wall', from: wall, to: 'ground' }),
          },
        ]);
  });

const tieSpots = ({ level, members }: Observation): readonly Spot[] =>
  stationsOf(level).flatMap((_, i) => {
    const id = `joist.${i + 1}` as const;
    if (members[id] !== undefined || !level.plan.joists) return [];
    return spot(id, [
      {
        id: 'setTie',
        label: ['act', 'setTie'],
        act: () => ({ type: 'setTie', kind: 'joist', station: i + 1 }),
      },
    ]);
  });

const postSpots = (seen: Observation): readonly Spot[] =>
  postIds(seen.level).flatMap((id, i) => {
    const at = i + 1;
    const ridge = up(seen, 'ridge');
    const start = Math.round(figuredPost(seen) * 16) / 16;
    const fit: Offer = {
      id: 'postFit',
      label: ['act', 'postFit'],
      act: () => ({ type: 'setPost', at, height: 0, fixed: 'both' }),
    };
    const height: Offer = {
      id: 'post',
      label: ['act', 'post'],
      picker: {
        kind: 'length',
        from: start - 6,
        to: start + 6,
        start: Math.floor(start),
        label: ['act', 'postHeight'],
      },
      act: (picked) => ({ type: 'setPost', at, height: Number(picked), fixed: 'both' }),
    };
    if (up(seen, id)) return spot(id, [takeOut(id)]);
    return spot(id, [ridge ? fit : height]);
  });

const ridgeSpots = (seen: Observation): readonly Spot[] => {
  const free = againstWall(seen.level)
    ? []
    : (['brace.across.A', 'brace.across.B', 'brace.along.1'] as const);
  const braces = free.flatMap((id) => {
    const [, kind = 'along', end = ''] = id.split('.');
    const from = kind === 'along' ? 'ridge' : end;
    if (up(seen, id)) return spot(id, [takeOut(id)]);
    return up(seen, 'ridge')
      ? spot(id, [
          {
            id: 'brace',
            label: ['act', 'brace'],
            act: () => ({ type: 'brace', kind: kind as 'along', from, to: 'floor' }),
          },
        ])
      : [];
  });
  if (up(seen, 'ridge')) return [...spot('ridge', [takeOut('ridge')]), ...braces];
  const ways = { machine: 'machine', posts: 'posts', hand: 'hands' } as const;
  const usual = methodsOf(seen.level, seen.site.agreed).hang;
  const order = [usual, ...seen.level.methods.hang.filter((way) => way !== usual)];
  return [
    ...spot(
      'ridge',
      order.map((way) => place('ridge', ways[way])),
    ),
    ...braces,
  ];
};

const place = (member: MemberId, at: PlaceAt, label: string = at): Offer => ({
  id: `place.${at}`,
  label: ['act', 'place', label],
  act: () =>
    member === 'ridge' ? { type: 'place', member, at, board: 'board.ridge' } : { type: 'place', member, at },
});

/** Boards still on the pile, those called bad last. */
const boardOptions = (seen: Observation): readonly Option[] => {
  const bad = (board: BoardId): number =>
    ['swap', 'turn'].includes(seen.site.judged[board]?.call ?? '') ? 1 : 0;
  const free = [...seen.boards.free].sort((a, b) => bad(a) - bad(b));
  return free.map((board) => ({ value: board, label: ['board', board] }));
};

const withBoard = (seen: Observation, member: MemberId, at: 'mark' | 'block'): Offer => ({
  id: `place.${at}`,
  label: ['act', 'place', at],
  picker: { kind: 'choice', options: boardOptions(seen), label: ['act', 'board'] },
  act: (board) => ({ type: 'place', member, at, board: board as BoardId }),
});

const sideSpots = (seen: Observation, side: Side): readonly Spot[] => {
  const count = stationsOf(seen.level).length;
  return Array.from({ length: count }, (_, i) => i + 1).flatMap((n) => [
    ...spot(rafterId(side, n), rafterOffers(seen, side, n)),
    ...(n < count ? spot(blockId(side, n), blockOffers(seen, side, n)) : []),
  ]);
};

const rafterOffers = (seen: Observation, side: Side, n: number): readonly Offer[] => {
  const id = rafterId(side, n);
  if (!up(seen, 'ridge')) return [];
  if (!up(seen, id))
    return [
      withBoard(seen, id, 'mark'),
      ...(n > 1 && up(seen, rafterId(side, n - 1)) ? [withBoard(seen, id, 'block')] : []),
    ];
  const swap: Offer = {
    id: 'swap',
    label: ['act', 'swap'],
    picker: { kind: 'choice', options: boardOptions(seen), label: ['act', 'board'] },
    act: (board) => ({ type: 'swap', member: id, board: board as BoardId, turn: false }),
  };
  return [swap, takeOut(id)];
};

const blockOffers = (seen: Observation, side: Side, n: number): readonly Offer[] => {
  const id = blockId(side, n);
  if (up(seen, id)) return [takeOut(id)];
  return up(seen, rafterId(side, n)) ? [place(id, 'drop'), place(id, 'drive')] : [];
};

const upperSpots = (seen: Observation): readonly Spot[] =>
  upperStations(seen.level).flatMap((n) => {
    const straps = methodsOf(seen.level, seen.site.agreed).upper === 'straps';
    const id = straps ? (`strap.${n}` as const) : (`collar.${n}` as const);
    if (up(seen, id)) return spot(id, [takeOut(id)]);
    if (!sidesOf(seen.level).every((side) => up(seen, rafterId(side, n)))) return [];
    return spot(id, straps ? [place(id, 'mark')] : [place(id, 'line'), place(id, 'mark', 'eye')]);
  });
