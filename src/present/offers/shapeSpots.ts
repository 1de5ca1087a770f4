import { againstWall, roofOf, sidesOf, stationsOf } from '../../core/level/layout';
import { ends, type End, type Side } from '../../core/roof/side';
import { gaugeBlock } from '../../core/instruments/rows';
import type { Cut } from '../../core/site/action';
import { leavesTailsLong } from '../../core/site/required';
import { rafterId, type BoardId, type MemberId } from '../../core/site/ids';
import type { Observation } from '../../core/site/observe';
import type { Offer, Spot } from './offer';

/** What is cut, marked, strung and moved. Amounts are picked by sixteenths. */

const amount = (to: number): NonNullable<Offer['picker']> => ({
  kind: 'length',
  from: 1 / 16,
  to,
  start: 1 / 16,
  label: ['act', 'by'],
});

const trimOffer = (member: MemberId | BoardId, cut: Cut, to = 2): Offer => ({
  id: `trim.${cut}`,
  label: ['act', 'trim', cut],
  picker: amount(to),
  act: (by) => ({ type: 'trim', member, cut, by: Number(by) }),
});

export const trimSpots = (seen: Observation): readonly Spot[] => [
  ...tailSpots(seen),
  ...sidesOf(seen.level).flatMap((side) => ['A', 'mid', 'B'].map((at) => wallSpot(side, at))),
  { id: 'board.ridge', member: 'board.ridge', offers: [trimOffer('board.ridge', 'end', 24)] },
  ...seen.boards.all.map((board): Spot => ({
    id: board,
    member: board,
    offers: (['plumb', 'wedge', 'seat', 'heel'] as const).map((cut) => trimOffer(board, cut)),
  })),
  ...sidesOf(seen.level).flatMap((side) =>
    stationsOf(seen.level)
      .slice(0, -1)
      .map((_, i): Spot => ({
        id: `block.${side}.${i + 1}`,
        member: `block.${side}.${i + 1}`,
        offers: [trimOffer(`block.${side}.${i + 1}`, 'end')],
      })),
  ),
];

const wallSpot = (side: Side, at: string): Spot => {
  const wall = `plate.${side}.${at}`;
  const mend = (how: 'shim' | 'plane' | 'pull'): Offer => ({
    id: how,
    label: ['act', how],
    picker: amount(1),
    act: (by) => ({ type: 'mendWall', wall, how, by: Number(by) }),
  });
  return { id: wall, member: wall, offers: [mend('shim'), mend('plane'), mend('pull')] };
};

/** From end rafter to end rafter of a side, on blocks or on the work itself; undefined before both stand. */
const pull = (seen: Observation, side: Side): ((id: string, off: number) => Offer) | undefined => {
  const last = stationsOf(seen.level).length;
  const [from, to] = [rafterId(side, 1), rafterId(side, last)];
  if (seen.members[from] === undefined || seen.members[to] === undefined) return undefined;
  return (id, off) => ({
    id,
    label: ['act', id],
    act: () => ({ type: 'line', kind: 'string', from, to, off }),
  });
};

const stringOffers = (seen: Observation, side: Side): readonly Offer[] => {
  const pulled = pull(seen, side);
  const hangs = seen.site.lines[`string.${side}`];
  if (!hangs) return pulled ? [pulled('stretch', gaugeBlock), pulled('stretchBare', 0)] : [];
  const down: Offer = {
    id: 'takeOut',
    label: ['act', 'takeDown'],
    act: () => ({ type: 'takeOut', member: `string.${side}` }),
  };
  return pulled ? [pulled('pullAgain', hangs.off), down] : [down];
};

export const stretchSpots = (seen: Observation): readonly Spot[] =>
  sidesOf(seen.level).flatMap((side) => {
    const offers = stringOffers(seen, side);
    return offers.length === 0 ? [] : [{ id: `string.${side}`, member: `string.${side}`, offers }];
  });

const datums = { endA: 'fromA', endB: 'fromB', last: 'hop' } as const;

export const markSpots = (seen: Observation): readonly Spot[] => [
  ...[...sidesOf(seen.level).map((side) => `plate.${side}` as const), 'ridge' as const].map((on): Spot => {
    const offer: Offer = {
      id: 'mark',
      label: ['act', 'mark'],
      picker: {
        kind: 'choice',
        label: ['act', 'mark'],
        options: Object.entries(datums).map(([value, label]) => ({ value, label: ['act', label] })),
      },
      act: (datum) => ({
        type: 'mark',
        on,
        datum: datum as 'endA',
        spacing: seen.level.plan.spacing,
        faces: 2,
      }),
    };
    return { id: `mark@${on}`, member: on, offers: [offer] };
  }),
  ...sidesOf(seen.level).flatMap((side) => [...chalkSpot(seen, side), ...tailSpot(seen, side)]),
];

/** The line that tails are cut to, at the plan's overhang. */
const tailSpot = (seen: Observation, side: Side): readonly Spot[] => {
  const { level, members, site } = seen;
  const [from, to] = [rafterId(side, 1), rafterId(side, stationsOf(level).length)];
  const open = leavesTailsLong(level, site.agreed) && !site.lines[`tail.${side}`];
  if (!open || members[from] === undefined || members[to] === undefined) return [];
  const off = level.plan.overhang;
  const act: Offer['act'] = () => ({ type: 'line', kind: 'tail', from, to, off });
  return [
    {
      id: `tail.${side}`,
      member: `tail.${side}`,
      offers: [{ id: 'snapTails', label: ['act', 'snap'], act }],
    },
  ];
};

/** Rafters that stand with their tails left long. */
const tailSpots = ({ level, members, site }: Observation): readonly Spot[] =>
  !leavesTailsLong(level, site.agreed)
    ? []
    : sidesOf(level).flatMap((side) =>
        stationsOf(level).flatMap((_, i): readonly Spot[] => {
          const id = rafterId(side, i + 1);
          const board = members[id];
          if (board === undefined || site.trims[board]?.tail !== undefined) return [];
          const act: Offer['act'] = () => ({ type: 'cutTail', member: id });
          return [
            { id: `tail@${id}`, member: id, offers: [{ id: 'cutTail', label: ['act', 'cutTail'], act }] },
          ];
        }),
      );

const chalkSpot = (seen: Observation, side: Side): readonly Spot[] => {
  const last = stationsOf(seen.level).length;
  const [from, to] = [rafterId(side, 1), rafterId(side, last)];
  if (againstWall(seen.level)) return [];
  if (seen.members[from] === undefined || seen.members[to] === undefined || seen.site.lines[`chalk.${side}`])
    return [];
  const height = roofOf(seen.level).ties.find(({ kind }) => kind === 'collar')?.height ?? 0;
  return [
    {
      id: `chalk.${side}`,
      member: `chalk.${side}`,
      offers: [
        {
          id: 'snap',
          label: ['act', 'snap'],
          act: () => ({ type: 'line', kind: 'chalk', from, to, off: Math.round(height * 16) / 16 }),
        },
      ],
    },
  ];
};

export const moveSpots = (seen: Observation): readonly Spot[] => {
  // A ledger goes up and down its wall only.
  const wall = againstWall(seen.level);
  const ridge =
    seen.ridgeOn === undefined
      ? []
      : [
          ...(['both', ...ends] as const).map((end): Spot => ({
            id: `ridge.${end}`,
            member: 'ridge',
            offers: [...lifts(end), ...(wall ? [] : pushes(end))],
          })),
          ...(wall ? [] : [{ id: 'ridge.mid', member: 'ridge', offers: pushes('mid') }]),
        ];
  const heels = sidesOf(seen.level).flatMap((side) =>
    stationsOf(seen.level).flatMap((_, i): readonly Spot[] => {
      const id = rafterId(side, i + 1);
      return seen.members[id] === undefined
        ? []
        : [{ id: `slide@${id}`, member: id, offers: [slide(id, 'toB', 1), slide(id, 'toA', -1)] }];
    }),
  );
  return [...ridge, ...heels];
};

const lifts = (end: End | 'both'): readonly Offer[] => {
  const raise = (id: 'raise' | 'lower', sign: 1 | -1): Offer => ({
    id,
    label: ['act', id],
    picker: amount(4),
    act: (by) => ({ type: 'raise', end, by: sign * Number(by) }),
  });
  return [raise('raise', 1), raise('lower', -1)];
};

const pushes = (at: End | 'both' | 'mid'): readonly Offer[] => {
  const push = (id: 'toYard' | 'toStreet', sign: 1 | -1): Offer => ({
    id,
    label: ['act', id],
    picker: amount(4),
    act: (by) => ({ type: 'shift', member: 'ridge', at, by: sign * Number(by) }),
  });
  return [push('toYard', 1), push('toStreet', -1)];
};

const slide = (member: MemberId, id: 'toB' | 'toA', sign: 1 | -1): Offer => ({
  id,
  label: ['act', id],
  picker: amount(2),
  act: (by) => ({ type: 'shift', member, at: 'heel', by: sign * Number(by) }),
});
