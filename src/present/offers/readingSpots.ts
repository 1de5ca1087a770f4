import { roofOf, stationsOf } from '../../core/level/layout';
import type { Level } from '../../core/level/level';
import type { ToolId } from '../../core/instruments/tool';
import { ends, sides } from '../../core/roof/side';
import { rafterId } from '../../core/site/ids';
import { figuredTop } from '../../core/site/posed';
import type { Observation } from '../../core/site/observe';
import type { Offer, Spot } from './offer';

/** Places where a tool shows something now: what cannot be reached or is not built yet is not there. */

type At = { readonly tool: ToolId; readonly at: string; readonly from?: string };

/** A reading spot, when the tool shows anything there. */
const spot = (
  seen: Observation,
  reading: At,
  more: { readonly member: string; readonly start?: number; readonly signed?: boolean },
): readonly Spot[] => {
  const shown = seen.look(reading);
  if (shown === undefined) return [];
  const picker: Offer['picker'] =
    reading.tool === 'eye' && reading.at !== 'punch'
      ? {
          kind: 'choice',
          label: ['act', 'see'],
          options: ['clean', 'crownDown', 'split', 'twist'].map((value) => ({
            value,
            label: ['seen', value],
          })),
        }
      : { kind: 'reading', start: more.start ?? 0, signed: more.signed ?? false };
  const read: Offer = {
    id: 'read',
    label: ['act', 'read'],
    picker,
    act: (said) => ({ type: 'read', ...reading, said }),
  };
  const id = `${reading.tool}@${reading.at}${reading.from === undefined ? '' : `@${reading.from}`}`;
  return [{ id, member: more.member, offers: [read], reading }];
};

const whole = (value: number): number => Math.floor(value);
const numbers = (level: Level): readonly number[] => stationsOf(level).map((_, i) => i + 1);

export const tapeSpots = (seen: Observation): readonly Spot[] => {
  const { level } = seen;
  const { span, length, ridge } = level.plan;
  const diagonal = whole(Math.sqrt(span * span + length * length));
  const figured = roofOf(level);
  return [
    ...['A', 'mid', 'B'].flatMap((at) =>
      spot(seen, { tool: 'tape', at: `width.${at}` }, { member: 'plate.street', start: whole(span) }),
    ),
    ...['1', '2'].flatMap((which) =>
      spot(seen, { tool: 'tape', at: `diagonal.${which}` }, { member: 'plate.yard', start: diagonal }),
    ),
    ...spot(
      seen,
      { tool: 'tape', at: 'board.ridge' },
      { member: 'board.ridge', start: whole(figured.ridges[0]?.length ?? 0) },
    ),
    ...ends.flatMap((end) => [
      ...spot(
        seen,
        { tool: 'tape', at: `ridge.${end}.height` },
        { member: 'ridge', start: whole(figuredTop(level)) },
      ),
      ...spot(
        seen,
        { tool: 'tape', at: `ridge.${end}.centre` },
        { member: 'ridge', start: whole(span / 2 - ridge.thickness / 2) },
      ),
    ]),
    ...sides.flatMap((side) =>
      numbers(level).flatMap((n) => [
        ...spot(
          seen,
          { tool: 'tape', at: `layout.${side}.${n}` },
          {
            member: rafterId(side, n),
            start: whole(
              Math.max(0, (figured.layout.stations[n - 1] ?? 0) - level.plan.rafter.thickness / 2),
            ),
          },
        ),
        ...spot(
          seen,
          { tool: 'tape', at: `bay.${side}.${n}` },
          { member: `block.${side}.${n}`, start: whole(level.plan.spacing - level.plan.rafter.thickness) },
        ),
      ]),
    ),
  ];
};

export const levelSpots = (seen: Observation): readonly Spot[] => [
  ...sides.flatMap((side) =>
    ['A', 'mid', 'B'].flatMap((at) =>
      spot(
        seen,
        { tool: 'waterLevel', at: `plate.${side}.${at}` },
        { member: `plate.${side}`, signed: true },
      ),
    ),
  ),
  ...ends.flatMap((from) =>
    spot(seen, { tool: 'level', at: 'ridge', from }, { member: 'ridge', signed: true }),
  ),
];

export const stringReadings = (seen: Observation): readonly Spot[] => [
  ...spot(seen, { tool: 'string', at: 'ridge.straight' }, { member: 'ridge', signed: true }),
  ...sides.flatMap((side) =>
    spot(seen, { tool: 'string', at: `plate.${side}.mid` }, { member: `plate.${side}`, signed: true }),
  ),
  ...sides.flatMap((side) =>
    numbers(seen.level).flatMap((n) =>
      spot(seen, { tool: 'string', at: `plane.${side}.${n}` }, { member: rafterId(side, n) }),
    ),
  ),
];

export const ruleSpots = (seen: Observation): readonly Spot[] =>
  sides.flatMap((side) =>
    numbers(seen.level).flatMap((n) => {
      const id = rafterId(side, n);
      return [
        ...['heel', 'heelCut', 'ridge', 'ridgeTop'].flatMap((kind) =>
          spot(seen, { tool: 'rule', at: `${kind}:${id}` }, { member: id }),
        ),
        ...spot(
          seen,
          { tool: 'rule', at: `blockEnd:block.${side}.${n}.far` },
          { member: `block.${side}.${n}` },
        ),
      ];
    }),
  );

export const patternSpots = (seen: Observation): readonly Spot[] =>
  seen.boards.all.flatMap((board) =>
    spot(seen, { tool: 'pattern', at: board }, { member: board, signed: true }),
  );

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

/** Boards and walls are looked at and called; the round with the punch list ends the job. */
export const lookSpots = (seen: Observation): readonly Spot[] => [
  ...sides.map((side): Spot => ({
    id: `judge@plate.${side}`,
    member: `plate.${side}`,
    offers: [judge(`plate.${side}`)],
  })),
  ...[...seen.boards.all, 'board.ridge' as const].flatMap((board) =>
    spot(seen, { tool: 'eye', at: board }, { member: board }).map((so) => ({
      ...so,
      offers: [...so.offers, judge(board)],
    })),
  ),
  ...spot(seen, { tool: 'eye', at: 'punch' }, { member: 'site' }),
];
