import { levelAt } from '../../core/instruments/rows';
import { againstWall, roofOf, sidesOf, stationsOf, widthOf } from '../../core/level/layout';
import type { Level } from '../../core/level/level';
import { plateSpots } from '../../core/level/planted';
import { ends, type Side } from '../../core/roof/side';
import { rafterId } from '../../core/site/ids';
import { figuredTop } from '../../core/site/posed';
import type { Observation } from '../../core/site/observe';
import type { Offer, ReadAt, Spot } from './offer';
import { readAt } from './readAt';

/** Everything that can be read, tool by tool and each in walking order. One hand of the rail may hold two tools. */

const whole = (value: number): number => Math.floor(value);
const numbers = (level: Level): readonly number[] => stationsOf(level).map((_, i) => i + 1);

/** A tape is hooked, or held at its inch mark so that its hook has no say. */
const taped = { usual: 'hooked', others: ['inch'] } as const;
const tapedAlong = { usual: 'hooked', others: ['inch', 'last'] } as const;

export const tapeSpots = (seen: Observation): readonly Spot[] => {
  const { length } = seen.level.plan;
  const span = widthOf(seen.level);
  const otherWall = againstWall(seen.level) ? 'plate.street' : 'plate.yard';
  const tape = (at: string, member: string, start: number): readonly Spot[] =>
    readAt(seen, { tool: 'tape', at }, { member, start: whole(start), holds: taped });
  return [
    ...plateSpots.flatMap((at) => tape(`width.${at}`, 'plate.street', span)),
    ...['1', '2'].flatMap((which) =>
      tape(`diagonal.${which}`, otherWall, Math.sqrt(span * span + length * length)),
    ),
    ...tape('board.ridge', 'board.ridge', roofOf(seen.level).ridges[0]?.length ?? 0),
    ...ridgeTapes(seen),
    ...sidesOf(seen.level).flatMap((side) => rowTapes(seen, side)),
    ...seen.boards.all.flatMap((board) => tape(`${board}.depth`, board, seen.level.plan.rafter.depth)),
  ];
};

/** Heights and centre of the ridge by tape, and its height by the story pole. */
const ridgeTapes = (seen: Observation): readonly Spot[] => {
  const { span, ridge } = seen.level.plan;
  return ends.flatMap((end) => [
    ...readAt(
      seen,
      { tool: 'tape', at: `ridge.${end}.height` },
      { member: 'ridge', start: whole(figuredTop(seen.level)), holds: taped },
    ),
    ...readAt(
      seen,
      { tool: 'storyPole', at: `ridge.${end}.height` },
      { member: 'ridge', signed: true, holds: { usual: 'byEye', others: ['plumb'] } },
    ),
    ...readAt(
      seen,
      { tool: 'tape', at: `ridge.${end}.centre` },
      { member: 'ridge', start: whole(span / 2 - ridge.thickness / 2), holds: taped },
    ),
  ]);
};

const rowTapes = (seen: Observation, side: Side): readonly Spot[] => {
  const { rafter, spacing } = seen.level.plan;
  const { stations } = roofOf(seen.level).layout;
  return numbers(seen.level).flatMap((n) => [
    ...readAt(
      seen,
      { tool: 'tape', at: `layout.${side}.${n}` },
      {
        member: rafterId(side, n),
        start: whole(Math.max(0, (stations[n - 1] ?? 0) - rafter.thickness / 2)),
        holds: tapedAlong,
      },
    ),
    ...readAt(
      seen,
      { tool: 'tape', at: `bay.${side}.${n}` },
      { member: `block.${side}.${n}`, start: whole(spacing - rafter.thickness) },
    ),
  ]);
};

export const levelSpots = (seen: Observation): readonly Spot[] => [
  ...sidesOf(seen.level).flatMap((side) =>
    plateSpots.flatMap((at) =>
      readAt(
        seen,
        { tool: 'waterLevel', at: `plate.${side}.${at}` },
        { member: `plate.${side}`, signed: true },
      ),
    ),
  ),
  ...[...levelAt.keys()].flatMap((at) =>
    ends.flatMap((from) => readAt(seen, { tool: 'level', at, from }, { member: 'ridge', signed: true })),
  ),
  ...ends.flatMap((end) =>
    readAt(
      seen,
      { tool: 'bob', at: `ridge.${end}.plumb` },
      { member: 'ridge', signed: true, holds: { usual: 'swinging', others: ['still'] } },
    ),
  ),
];

export const stringReadings = (seen: Observation): readonly Spot[] => {
  const along = (tool: 'string' | 'straightedge', signed: boolean): readonly Spot[] =>
    sidesOf(seen.level).flatMap((side) =>
      numbers(seen.level).flatMap((n) =>
        readAt(seen, { tool, at: `plane.${side}.${n}` }, { member: rafterId(side, n), signed }),
      ),
    );
  return [
    ...readAt(seen, { tool: 'string', at: 'ridge.straight' }, { member: 'ridge', signed: true }),
    ...sidesOf(seen.level).flatMap((side) =>
      readAt(seen, { tool: 'string', at: `plate.${side}.mid` }, { member: `plate.${side}`, signed: true }),
    ),
    ...along('string', false),
    ...along('straightedge', true),
  ];
};

export const ruleSpots = (seen: Observation): readonly Spot[] =>
  sidesOf(seen.level).flatMap((side) =>
    numbers(seen.level).flatMap((n) => {
      const id = rafterId(side, n);
      const rule = (at: string, member: string): readonly Spot[] =>
        readAt(seen, { tool: 'rule', at }, { member });
      return [
        ...['heel', 'heelCut', 'ridge', 'ridgeTop'].flatMap((kind) => rule(`${kind}:${id}`, id)),
        ...rule(`blockEnd:block.${side}.${n}.far`, `block.${side}.${n}`),
      ];
    }),
  );

/** The pattern over the whole pile, then the square. */
export const patternSpots = (seen: Observation): readonly Spot[] => [
  ...seen.boards.all.flatMap((board) =>
    readAt(
      seen,
      { tool: 'pattern', at: board },
      { member: board, signed: true, holds: { usual: 'atNotch', others: ['tail'] } },
    ),
  ),
  ...seen.boards.all.flatMap((board) =>
    readAt(
      seen,
      { tool: 'square', at: board },
      { member: board, signed: true, holds: { usual: 'oneWay', others: ['turned'] } },
    ),
  ),
];

const calls = ['sound', 'swap', 'turn', 'mend'] as const;

const judge = (subject: string): Offer => ({
  id: 'judge',
  label: ['act', 'judge'],
  picker: {
    kind: 'choice',
    label: ['act', 'judge'],
    options: calls.map((value) => ({ value, label: ['call', value] })),
  },
  act: (call) => ({ type: 'judge', subject, call: call as (typeof calls)[number] }),
});

/** Boards and walls are looked at and called, lines are sighted along; the round with the punch list ends the job. */
export const lookSpots = (seen: Observation): readonly Spot[] => {
  const sight = (at: string, member: string): readonly Spot[] => {
    const reading: ReadAt = { tool: 'eye', at };
    return readAt(seen, reading, { member, signed: true });
  };
  return [
    ...sidesOf(seen.level).flatMap((side): readonly Spot[] => [
      { id: `judge@plate.${side}`, member: `plate.${side}`, offers: [judge(`plate.${side}`)] },
      ...sight(`plate.${side}.mid`, `plate.${side}`),
    ]),
    ...[...seen.boards.all, 'board.ridge' as const].flatMap((board) =>
      readAt(seen, { tool: 'eye', at: board }, { member: board }).map((so) => ({
        ...so,
        offers: [...so.offers, judge(board)],
      })),
    ),
    ...sight('ridge.straight', 'ridge'),
    ...readAt(seen, { tool: 'eye', at: 'punch' }, { member: 'site' }),
  ];
};
