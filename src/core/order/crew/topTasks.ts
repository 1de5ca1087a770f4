import { againstWall, ridgeCarries, upperStations } from '../../level/layout';
import type { Level } from '../../level/level';
import { sides, type Side } from '../../roof/side';
import type { JointId } from '../../site/ids';
import { gradient } from '../../units/slope';
import { rafterId } from '../../site/ids';
import { allClear } from './ridgeTasks';
import { stageOf, wait, type Task, type TaskCode } from './task';
import { home, stands, type PlannedAction, type View } from './view';

/** Collars or straps, props out, the walk with the punch list, handing over. */

/** A plan may leave them out; where its ridge is a board the list has a line for them all the same. */
const tiesUp = (level: Level): boolean =>
  !againstWall(level) && (!ridgeCarries(level) || level.plan.collars !== false);

const chalk: Task = {
  code: 'chalk',
  serves: ['O9'],
  closes: [],
  applies: ({ upper }, level) => upper === 'collars' && tiesUp(level),
  waits: () => sides.map((side) => wait('stack', 'physics', side)),
  acts: (view) =>
    sides
      .filter((side) => view.seen.site.lines[`chalk.${side}`] === undefined && !uppersUp(view))
      .map((side) => ({
        type: 'line',
        kind: 'chalk',
        from: rafterId(side, 1),
        to: rafterId(side, view.last),
        off: collarHeight(view),
      })),
};

/** Figured height of a collar's lower edge above the plates, to the sixteenth a tape gives; two thirds of the rise where the plan figures none. */
const collarHeight = ({ roof, seen }: View): number => {
  const figured =
    roof.ties.find(({ kind }) => kind === 'collar')?.height ??
    (seen.level.plan.span / 2) * gradient(seen.level.plan.slope) * (2 / 3);
  return Math.round(figured * 16) / 16;
};

const upperIds = (view: View): readonly (`collar.${number}` | `strap.${number}`)[] =>
  upperStations(view.seen.level).map((n) =>
    view.methods.upper === 'straps' ? (`strap.${n}` as const) : (`collar.${n}` as const),
  );

const uppersUp = (view: View): boolean => upperIds(view).every((id) => stands(view, id));

const upper: Task = {
  code: 'upper',
  serves: ['O10'],
  closes: ['O9'],
  applies: (_methods, level) => tiesUp(level),
  waits: ({ methods }) => [
    ...sides.map((side) => wait('stack', 'physics', side)),
    ...(methods.upper === 'collars' ? [wait('chalk', 'O9')] : []),
    wait('makeReady', 'S4'),
  ],
  acts: (view) =>
    upperIds(view).flatMap((id): readonly PlannedAction[] => {
      const at = id.startsWith('collar') && chalked(view) ? 'line' : 'mark';
      const nails = jointsOf(id)
        .filter((joint) => !home(view, joint))
        .map((joint): PlannedAction => ({ type: 'nailOff', joint }));
      return stands(view, id) ? nails : [{ type: 'place', member: id, at }, ...nails];
    }),
};

const chalked = ({ seen }: View): boolean =>
  sides.every((side) => seen.site.lines[`chalk.${side}`] !== undefined);

const jointsOf = (id: `collar.${number}` | `strap.${number}`): readonly JointId[] =>
  id.startsWith('collar')
    ? sides.map((side) => `collarEnd:${id as `collar.${number}`}.${side}` as const)
    : [`strap:${id as `strap.${number}`}`];

/** Heels home, a line from end to end, then every tail to it. */
const tailsTask = (side: Side): Task => ({
  code: 'tails',
  side,
  serves: ['O11'],
  closes: ['O11'],
  applies: ({ tails }) => tails === 'snapped',
  waits: () => [wait('stack', 'physics', side), wait('heels', 'O11', side), wait('makeReady', 'physics')],
  acts: (view) => {
    const uncut = view.stations
      .map((_, i) => rafterId(side, i + 1))
      .filter((id) => view.seen.site.trims[view.seen.members[id] ?? '']?.tail === undefined);
    const line: readonly PlannedAction[] =
      uncut.length === 0 || view.seen.site.lines[`tail.${side}`]
        ? []
        : [
            {
              type: 'line',
              kind: 'tail',
              from: rafterId(side, 1),
              to: rafterId(side, view.last),
              off: view.seen.level.plan.overhang,
            },
          ];
    return [...line, ...uncut.map((member): PlannedAction => ({ type: 'cutTail', member }))];
  },
});

const propsOut: Task = {
  code: 'propsOut',
  serves: [],
  closes: ['O2', 'O10'],
  applies: ({ hang }, level) => hang !== 'hand' && !ridgeCarries(level),
  waits: ({ methods, seen }) => [
    wait('tieWalls', 'O2'),
    ...(againstWall(seen.level) ? [wait('fixLedger', 'physics')] : []),
    ...sides.map((side) => wait('heels', 'O10', side)),
    wait('upper', 'O10'),
    ...(methods.hang === 'machine' ? [wait('letGo', 'physics')] : []),
  ],
  acts: (view) => {
    const posts = (['post.1', 'post.2'] as const).filter((post) => stands(view, post));
    if (posts.length > 0)
      return [...allClear(view), ...posts.map((member) => ({ type: 'takeOut', member }) as const)];
    return view.lastly('takenOut', 'post.1') < 0 && !view.seen.site.handedOver
      ? [{ type: 'takeOut', member: 'post.1' }]
      : [];
  },
};

const everyTask = Object.keys(stageOf) as readonly TaskCode[];

const handOver: Task = {
  code: 'handOver',
  serves: ['C7'],
  closes: ['C7', 'T1', 'T2'],
  waits: (view) => [
    ...sides.map((side) => wait('heels', 'T1', side)),
    wait('upper', 'T2'),
    wait('braceWalls', 'T2'),
    wait('braceRidge', 'T2'),
    wait('fixLedger', 'T2'),
    wait('tieWalls', 'T2'),
    wait('propsOut', 'way'),
    ...sides.map((side) => wait('tails', 'T2', side)),
    // Where others go on, all that is left of the part comes first; on a whole job it has come before the heels anyway.
    ...(view.seen.level.stages ? everyTask.map((on) => wait(on, 'way')) : []),
  ],
  acts: (view) => {
    if (view.seen.site.handedOver) return [];
    const walked = view.said('eye', 'punch');
    const since = Math.max(
      view.lastly('nailed'),
      view.lastly('takenOut'),
      view.lastly('braced'),
      view.lastly('tieSet'),
    );
    const walk: readonly PlannedAction[] =
      !view.careful || (walked && walked.step > since) ? [] : [{ type: 'read', tool: 'eye', at: 'punch' }];
    return [...walk, { type: 'handOver' }];
  },
};

export const topTasks: readonly Task[] = [chalk, upper, ...sides.map(tailsTask), propsOut, handOver];
