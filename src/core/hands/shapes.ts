import { gaugeBlock, levelAt } from '../instruments/rows';
import type { Hold } from '../instruments/tool';
import { againstWall, roofOf, sidesOf, stationsOf, upperStations } from '../level/layout';
import type { Level } from '../level/level';
import { asksForTails } from '../level/method';
import { topicsOn } from '../level/topics';
import { plateSpots } from '../level/planted';
import type { PlannedAction } from '../order/crew/view';
import { ends, type Side } from '../roof/side';
import { blockId, partsOfJoint, rafterId, type BlockId, type BoardId, type JointId } from '../site/ids';
import { jointRows } from '../site/jointRows';
import { postIds } from '../site/planPosts';
import { requiredFor } from '../site/required';

/** An act with its numbers and its said left open. */
export type Shape = PlannedAction;

/** Every act a screen could offer on a level, once each, whatever its order: what a random hand draws from. */
export const shapesOf = (level: Level, boards: readonly BoardId[]): readonly Shape[] => [
  ...crewShapes(level),
  ...readShapes(level, boards),
  ...judgeShapes(level, boards),
  ...groundShapes(level),
  ...memberShapes(level, boards),
  ...jointShapes(level),
  ...ridgeShapes(level),
  { type: 'handOver' },
];

const crewShapes = (level: Level): readonly Shape[] => [
  ...topicsOn(level).flatMap((topic) =>
    level.methods[topic].map((value): Shape => ({ type: 'agree', topic, value })),
  ),
  ...(['platform', 'ladder', 'openings', 'gear'] as const).map((what): Shape => ({
    type: 'makeReady',
    what,
    at: 'site',
  })),
  ...(['wall', 'joists', 'ridge', 'load', 'rafter'] as const).map((at): Shape => ({
    type: 'makeReady',
    what: 'anchor',
    at,
  })),
  ...(['lead', 'helper'] as const).flatMap((who) =>
    (['clear', 'beside', 'path', 'platform', 'ladder', 'plate'] as const).map((where): Shape => ({
      type: 'stand',
      who,
      where,
    })),
  ),
];

type Read = Extract<Shape, { type: 'read' }>;

const read = (tool: Read['tool'], at: string, from?: Hold): Read => ({
  type: 'read',
  tool,
  at,
  ...(from === undefined ? {} : { from }),
});

/** The tool held each of these ways, the usual one first. */
const readHeld = (tool: Read['tool'], at: string, holds: readonly Hold[]): readonly Shape[] => [
  read(tool, at),
  ...holds.map((from) => read(tool, at, from)),
];

const stationNumbers = (level: Level): readonly number[] => stationsOf(level).map((_, i) => i + 1);

const readShapes = (level: Level, boards: readonly BoardId[]): readonly Shape[] => [
  ...['width.A', 'width.mid', 'width.B', 'diagonal.1', 'diagonal.2', 'board.ridge'].flatMap((at) =>
    readHeld('tape', at, ['inch']),
  ),
  ...sidesOf(level).flatMap((side) => [
    ...plateSpots.map((spot) => read('waterLevel', `plate.${side}.${spot}`)),
    read('string', `plate.${side}.mid`),
    read('eye', `plate.${side}.mid`),
  ]),
  ...ridgeReads(level),
  ...boards.flatMap((board) => [
    read('eye', board),
    ...readHeld('pattern', board, ['tail']),
    ...readHeld('square', board, ['turned']),
    ...readHeld('tape', `${board}.depth`, ['inch']),
  ]),
  ...sidesOf(level).flatMap((side) => stationNumbers(level).flatMap((n) => rowReads(level, side, n))),
  read('eye', 'board.ridge'),
  read('eye', 'punch'),
];

const ridgeReads = (level: Level): readonly Shape[] => [
  ...ends.flatMap((end) => [
    ...readHeld('tape', `ridge.${end}.height`, ['inch']),
    ...(againstWall(level)
      ? []
      : [
          ...readHeld('tape', `ridge.${end}.centre`, ['inch']),
          ...readHeld('bob', `ridge.${end}.plumb`, ['still']),
        ]),
    ...readHeld('storyPole', `ridge.${end}.height`, ['plumb']),
    ...[...levelAt.keys()].map((at) => read('level', at, end)),
  ]),
  read('string', 'ridge.straight'),
  read('eye', 'ridge.straight'),
];

/** At one rafter: every station has it but what needs a bay before the next, or a neighbour on both sides. */
const rowReads = (level: Level, side: Side, n: number): readonly Shape[] => {
  const last = stationNumbers(level).length;
  const bay: readonly Shape[] =
    n < last ? [read('tape', `bay.${side}.${n}`), read('rule', `blockEnd:block.${side}.${n}.far`)] : [];
  return [
    ...['heel', 'heelCut', 'ridge', 'ridgeTop'].map((face) => read('rule', `${face}:rafter.${side}.${n}`)),
    read('string', `plane.${side}.${n}`),
    ...(n > 1 && n < last ? [read('straightedge', `plane.${side}.${n}`)] : []),
    ...readHeld('tape', `layout.${side}.${n}`, ['inch', 'last']),
    ...bay,
  ];
};

const judgeShapes = (level: Level, boards: readonly BoardId[]): readonly Shape[] =>
  [...boards, 'board.ridge', ...sidesOf(level).map((side) => `plate.${side}`)].flatMap((subject) =>
    (['sound', 'turn', 'swap', 'mend'] as const).map((call): Shape => ({ type: 'judge', subject, call })),
  );

const groundShapes = (level: Level): readonly Shape[] => [
  ...([...sidesOf(level).map((side) => `plate.${side}` as const), 'ridge'] as const).flatMap((on) =>
    (['endA', 'endB', 'last'] as const).map((datum): Shape => ({
      type: 'mark',
      on,
      datum,
      spacing: level.plan.spacing,
      faces: 2,
    })),
  ),
  ...sidesOf(level).flatMap((side) =>
    plateSpots.flatMap((spot) =>
      (['shim', 'plane', 'pull'] as const).map((how): Shape => ({
        type: 'mendWall',
        wall: `plate.${side}.${spot}`,
        how,
        by: 0,
      })),
    ),
  ),
  ...(againstWall(level)
    ? []
    : stationNumbers(level).map((station): Shape => ({ type: 'setTie', kind: 'joist', station }))),
  ...[...sidesOf(level), ...ends].map((from): Shape => ({ type: 'brace', kind: 'wall', from, to: 'ground' })),
  ...(againstWall(level)
    ? []
    : [
        ...ends.map((from): Shape => ({ type: 'brace', kind: 'across', from, to: 'floor' })),
        { type: 'brace', kind: 'along', from: 'ridge', to: 'floor' } as const,
      ]),
];

const memberShapes = (level: Level, boards: readonly BoardId[]): readonly Shape[] => [
  ...sidesOf(level).flatMap((side) => stationNumbers(level).flatMap((n) => rafterShapes(side, n))),
  ...bayIds(level).flatMap((member): readonly Shape[] => [
    { type: 'place', member, at: 'drop' },
    { type: 'place', member, at: 'drive' },
    { type: 'trim', member, cut: 'end', by: 0 },
    { type: 'takeOut', member },
  ]),
  ...upperStations(level).flatMap((n) => upperShapes(level, n)),
  ...sidesOf(level).flatMap((side) => lineShapes(level, side)),
  ...boards.flatMap((member) =>
    (['plumb', 'wedge', 'seat', 'heel'] as const).map((cut): Shape => ({ type: 'trim', member, cut, by: 0 })),
  ),
  ...standingParts(level).map((member): Shape => ({ type: 'takeOut', member })),
];

const standingParts = (level: Level) =>
  [
    'ridge',
    ...postIds(level),
    'brace.along.1',
    'brace.across.A',
    'brace.across.B',
    'string.street',
    'string.yard',
  ] as const;

const bayIds = (level: Level): readonly BlockId[] =>
  sidesOf(level).flatMap((side) =>
    stationNumbers(level)
      .slice(0, -1)
      .map((n) => blockId(side, n)),
  );

/** Any board may be swapped in: whoever fills the shape takes one. */
const rafterShapes = (side: Side, n: number): readonly Shape[] => {
  const member = rafterId(side, n);
  return [
    { type: 'place', member, at: 'mark' },
    ...(n > 1 ? [{ type: 'place', member, at: 'block' } as const] : []),
    { type: 'swap', member, board: 'board.1', turn: false },
    { type: 'takeOut', member },
    { type: 'shift', member, at: 'heel', by: 0 },
  ];
};

const upperShapes = ({ methods }: Level, n: number): readonly Shape[] =>
  methods.upper.flatMap((upper): readonly Shape[] =>
    upper === 'straps'
      ? [
          { type: 'place', member: `strap.${n}`, at: 'mark' },
          { type: 'takeOut', member: `strap.${n}` },
        ]
      : [
          { type: 'place', member: `collar.${n}`, at: 'line' },
          { type: 'place', member: `collar.${n}`, at: 'mark' },
          { type: 'takeOut', member: `collar.${n}` },
        ],
  );

/** A string on its blocks, or on the work itself; a chalk line where the collars go, and where tails are cut. */
const lineShapes = (level: Level, side: Side): readonly Shape[] => {
  const [from, to] = [rafterId(side, 1), rafterId(side, stationNumbers(level).length)];
  const collar = roofOf(level).ties.find(({ kind }) => kind === 'collar')?.height ?? 0;
  return [
    { type: 'line', kind: 'string', from, to, off: gaugeBlock },
    { type: 'line', kind: 'string', from, to, off: 0 },
    { type: 'line', kind: 'chalk', from, to, off: Math.round(collar * 16) / 16 },
    ...(asksForTails(level.methods) ? tailShapes(level, side) : []),
  ];
};

const tailShapes = (level: Level, side: Side): readonly Shape[] => {
  const all = stationNumbers(level).map((n) => rafterId(side, n));
  const [from = '', to = ''] = [all[0], all.at(-1)];
  return [
    { type: 'line', kind: 'tail', from, to, off: level.plan.overhang },
    ...all.map((member): Shape => ({ type: 'cutTail', member })),
  ];
};

const jointShapes = (level: Level): readonly Shape[] => {
  const joints = [
    ...new Set<JointId>(
      level.methods.upper.flatMap((upper) => requiredFor(level, { agreed: { upper }, members: {} }).joints),
    ),
  ];
  return joints.flatMap((joint): readonly Shape[] => {
    const { full, tack } = jointRows[partsOfJoint(joint).kind];
    return [
      { type: 'tack', joint, nails: tack },
      { type: 'nailOff', joint },
      ...[...new Set([1, tack, full])].map((nails): Shape => ({ type: 'draw', joint, nails })),
    ];
  });
};

/** Posts as figured: what a screen would offer. 0 is cut to fit. */
const postHeights = (level: Level): readonly number[] => [
  (roofOf(level).ridges[0]?.topHeight ?? 0) - level.plan.ridge.depth,
  0,
];

const ways = { machine: 'machine', posts: 'posts', hand: 'hands' } as const;

const ridgeShapes = (level: Level): readonly Shape[] => [
  ...level.methods.hang.map((way): Shape => ({
    type: 'place',
    member: 'ridge',
    at: ways[way],
    board: 'board.ridge',
  })),
  ...postIds(level).flatMap((_, i) =>
    postHeights(level).map((height): Shape => ({ type: 'setPost', at: i + 1, height, fixed: 'both' })),
  ),
  ...(['A', 'B', 'both'] as const).flatMap((end): readonly Shape[] => [
    { type: 'raise', end, by: 0 },
    { type: 'shift', member: 'ridge', at: end, by: 0 },
  ]),
  { type: 'shift', member: 'ridge', at: 'mid', by: 0 },
  { type: 'trim', member: 'board.ridge', cut: 'end', by: 0 },
  ...(level.machine ? machineShapes : []),
];

const machineShapes: readonly Shape[] = [
  { type: 'agree', topic: 'signals', value: 'standard' },
  ...(['twoPoint', 'choked', 'one'] as const).map((hitch): Shape => ({
    type: 'hookOn',
    hitch,
    tagLine: hitch !== 'one',
  })),
  ...(['hoist', 'lower'] as const).map((sign): Shape => ({ type: 'signal', sign, by: 0 })),
  { type: 'letGo' },
];
