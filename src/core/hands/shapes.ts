import { roofOf, stationsOf, upperStations } from '../level/layout';
import type { Level } from '../level/level';
import { methodTopics, type Methods } from '../level/method';
import type { PlannedAction } from '../order/crew/view';
import { ends, sides } from '../roof/side';
import { blockId, rafterId, type BoardId, type JointId, type MemberId } from '../site/ids';
import { requiredFor } from '../site/required';

/** An act with its numbers and its said left open. */
export type Shape = PlannedAction;

/** Every act a screen could offer on a level, once each, whatever its order: what a random hand draws from. */
export const shapesOf = (level: Level, boards: readonly BoardId[]): readonly Shape[] => [
  ...crewShapes(level),
  ...readShapes(level, boards),
  ...judgeShapes(boards),
  ...groundShapes(level),
  ...memberShapes(level, boards),
  ...jointShapes(level),
  ...ridgeShapes(level),
  { type: 'handOver' },
];

const crewShapes = (level: Level): readonly Shape[] => [
  ...(methodTopics as readonly (keyof Methods)[]).flatMap((topic) =>
    level.methods[topic].map((value): Shape => ({ type: 'agree', topic, value })),
  ),
  { type: 'agree', topic: 'signals', value: 'standard' },
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

const read = (tool: Extract<Shape, { type: 'read' }>['tool'], at: string, from?: string): Shape => ({
  type: 'read',
  tool,
  at,
  ...(from === undefined ? {} : { from }),
});

const stationNumbers = (level: Level): readonly number[] => stationsOf(level).map((_, i) => i + 1);

const readShapes = (level: Level, boards: readonly BoardId[]): readonly Shape[] => [
  ...['width.A', 'width.mid', 'width.B', 'diagonal.1', 'diagonal.2', 'board.ridge'].map((at) =>
    read('tape', at),
  ),
  ...sides.flatMap((side) => ['A', 'mid', 'B'].map((spot) => read('waterLevel', `plate.${side}.${spot}`))),
  ...sides.map((side) => read('string', `plate.${side}.mid`)),
  ...ends.flatMap((end) => [
    read('tape', `ridge.${end}.height`),
    read('tape', `ridge.${end}.centre`),
    read('level', 'ridge', end),
  ]),
  ...boards.flatMap((board) => [read('eye', board), read('pattern', board)]),
  ...sides.flatMap((side) =>
    stationNumbers(level).flatMap((n) => [
      ...['heel', 'heelCut', 'ridge', 'ridgeTop'].map((face) => read('rule', `${face}:rafter.${side}.${n}`)),
      read('string', `plane.${side}.${n}`),
      read('tape', `layout.${side}.${n}`),
    ]),
  ),
  read('eye', 'punch'),
];

const judgeShapes = (boards: readonly BoardId[]): readonly Shape[] =>
  [...boards, 'board.ridge', ...sides.map((side) => `plate.${side}`)].flatMap((subject) =>
    (['sound', 'turn', 'swap', 'mend'] as const).map((call): Shape => ({ type: 'judge', subject, call })),
  );

const groundShapes = (level: Level): readonly Shape[] => [
  ...([...sides.map((side) => `plate.${side}` as const), 'ridge'] as const).map((on): Shape => ({
    type: 'mark',
    on,
    datum: 'endA',
    spacing: level.plan.spacing,
    faces: 2,
  })),
  ...sides.flatMap((side) =>
    ['A', 'mid', 'B'].flatMap((spot) =>
      (['shim', 'plane', 'pull'] as const).map((how): Shape => ({
        type: 'mendWall',
        wall: `plate.${side}.${spot}`,
        how,
        by: 0,
      })),
    ),
  ),
  ...stationNumbers(level).map((station): Shape => ({ type: 'setTie', kind: 'joist', station })),
  ...[...sides, ...ends].map((from): Shape => ({ type: 'brace', kind: 'wall', from, to: 'ground' })),
  ...ends.map((from): Shape => ({ type: 'brace', kind: 'across', from, to: 'floor' })),
  { type: 'brace', kind: 'along', from: 'ridge', to: 'floor' },
];

const memberShapes = (level: Level, boards: readonly BoardId[]): readonly Shape[] => {
  const last = stationNumbers(level).length;
  const bays = sides.flatMap((side) =>
    stationNumbers(level)
      .slice(0, -1)
      .map((n) => blockId(side, n)),
  );
  return [
    ...sides.flatMap((side) =>
      stationNumbers(level).map((n): Shape => ({ type: 'place', member: rafterId(side, n), at: 'mark' })),
    ),
    ...bays.flatMap((member) =>
      (['drop', 'drive'] as const).map((at): Shape => ({ type: 'place', member, at })),
    ),
    ...upperStations(level).flatMap((n) =>
      ([`collar.${n}`, `strap.${n}`] as const).map((member): Shape => ({
        type: 'place',
        member,
        at: 'mark',
      })),
    ),
    ...sides.flatMap((side) =>
      (['string', 'chalk'] as const).map((kind): Shape => ({
        type: 'line',
        kind,
        from: rafterId(side, 1),
        to: rafterId(side, last),
        off: 0.75,
      })),
    ),
    ...[...boards, ...bays].map((member): Shape => ({
      type: 'trim',
      member,
      cut: member.startsWith('block') ? 'end' : 'plumb',
      by: 0,
    })),
    ...(
      [
        'post.1',
        'post.2',
        'brace.along.1',
        'brace.across.A',
        'brace.across.B',
        'string.street',
        'string.yard',
      ] as const
    ).map((member): Shape => ({ type: 'takeOut', member })),
  ];
};

const jointShapes = (level: Level): readonly Shape[] => {
  const joints = [
    ...new Set<JointId>([
      ...requiredFor(level, { upper: 'collars' }).joints,
      ...requiredFor(level, { upper: 'straps' }).joints,
    ]),
  ];
  return joints.flatMap((joint): readonly Shape[] => [
    { type: 'tack', joint, nails: 2 },
    { type: 'nailOff', joint },
    { type: 'draw', joint, nails: 1 },
  ]);
};

/** Posts as figured: what a screen would offer. */
const postHeight = (level: Level): number =>
  (roofOf(level).ridges[0]?.topHeight ?? 0) - level.plan.ridge.depth;

const ridgeShapes = (level: Level): readonly Shape[] => [
  ...(['machine', 'posts', 'hands'] as const).map((at): Shape => ({
    type: 'place',
    member: 'ridge' as MemberId,
    at,
    board: 'board.ridge',
  })),
  ...(['twoPoint', 'choked', 'one'] as const).map((hitch): Shape => ({
    type: 'hookOn',
    hitch,
    tagLine: true,
  })),
  ...([1, 2] as const).map((at): Shape => ({
    type: 'setPost',
    at,
    height: postHeight(level),
    fixed: 'both',
  })),
  ...(['A', 'B', 'both'] as const).flatMap((end): readonly Shape[] => [
    { type: 'raise', end, by: 0 },
    { type: 'shift', member: 'ridge', at: end, by: 0 },
  ]),
  ...(['hoist', 'lower', 'stop', 'swing'] as const).map((sign): Shape => ({ type: 'signal', sign, by: 0 })),
  { type: 'trim', member: 'board.ridge', cut: 'end', by: 0 },
  { type: 'letGo' },
];
