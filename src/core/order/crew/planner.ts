import { isOver } from '../../site/state';
import { beyond, wholeJob } from '../../level/stages';
import { sidesOf } from '../../level/layout';
import { rafterId } from '../../site/ids';
import type { Level } from '../../level/level';
import type { Attempt } from '../../site/attempt';
import { methodsOf } from '../../site/required';
import { groundTasks } from './groundTasks';
import { setUp } from './pairs';
import { ridgeTasks } from './ridgeTasks';
import { stackTasks } from './stackTasks';
import { onItsRidge } from '../rules';
import { stageOf, type Task, type Wait, type WorkCode } from './task';
import { topTasks } from './topTasks';
import { held, stands, viewOf, type Manner, type PlannedAction, type View } from './view';

/** Every line a crew list can have, in the order a crew would write it. */
export const allTasks: readonly Task[] = [...groundTasks, ...ridgeTasks, ...stackTasks, ...topTasks];

/** A job as it stands: what is left of it and what it still waits for. */
export type Standing = {
  readonly task: Task;
  readonly left: readonly PlannedAction[];
  readonly waitsFor: readonly Wait[];
};

/** All jobs of the way the crew builds, with what is left of each. */
export const jobsOf = (view: View): readonly Standing[] => {
  const tasks = allTasks.filter((task) => isPartOf(view, task));
  const left = new Map(tasks.map((task) => [task, task.acts(view)]));
  const open = (on: Wait): boolean =>
    tasks.some(
      (task) =>
        task.code === on.on &&
        (on.side === undefined || task.side === on.side) &&
        (left.get(task)?.length ?? 0) > 0,
    );
  return tasks.map((task) => ({ task, left: left.get(task) ?? [], waitsFor: task.waits(view).filter(open) }));
};

/** Part of the way this crew builds, and not for others to do after it has handed over. */
const isPartOf = ({ seen: { level }, methods }: View, { code, side, applies }: Task): boolean =>
  (side === undefined || sidesOf(level).includes(side)) &&
  (code === 'handOver' || !beyond(level.stages ?? wholeJob, stageOf[code])) &&
  (applies === undefined || applies(methods, level));

/** Whatever the usual way of a level has on its list, those before and after the learner's part as well. */
export const tasksOn = (level: Level): readonly WorkCode[] => {
  const methods = methodsOf(level, {});
  const codes = allTasks
    .filter(({ applies }) => applies === undefined || applies(methods, level))
    .map(({ code }) => code);
  return [...new Set(codes)].filter((code) => code !== 'handOver');
};

/** One good next step: the act, the job it belongs to, and the rules it serves or closes. */
export type PlannedStep = {
  readonly code: Task['code'];
  readonly side?: Task['side'];
  readonly action: PlannedAction;
  readonly serves: Task['serves'];
  readonly closes: Task['closes'];
};

/** What may come next in an accepted order: the first act of every open job, or several where their order is free. */
export const nextSteps = (attempt: Attempt, manner?: Manner): readonly PlannedStep[] => {
  const view = viewOf(attempt, manner);
  return openJobs(view).flatMap(({ task, left }) =>
    left
      .filter((act) => possible(view, act))
      .slice(0, task.anyOrder ? few : 1)
      .map((action) => stepOf(view, task, action)),
  );
};

/** How many of equals are worth showing at once. */
const few = 4;

const stepOf = (
  { seen }: View,
  { code, side, serves, closes }: Task,
  action: PlannedAction,
): PlannedStep => ({
  code,
  ...(side === undefined ? {} : { side }),
  action,
  serves: onItsRidge(seen.level, serves),
  closes: onItsRidge(seen.level, closes),
});

/** Jobs with something left that wait for nothing. A rafter held by hand is tacked before anything else is touched. */
export const openJobs = (view: View): readonly Standing[] => {
  if (isOver(view.seen.site)) return [];
  const ready = jobsOf(view).filter(({ left, waitsFor }) => left.length > 0 && waitsFor.length === 0);
  const hanging = handHeld(view);
  return hanging.length > 0 ? ready.slice(0, 1).map((job) => ({ ...job, left: hanging })) : ready;
};

const handHeld = (view: View): readonly PlannedAction[] => {
  const ids = sidesOf(view.seen.level).flatMap((side) => view.stations.map((_, i) => rafterId(side, i + 1)));
  const loose = ids.filter((id) => stands(view, id) && !held(view, `ridge:${id}`));
  return setUp(view, loose).filter((act) => possible(view, act));
};

/** Whether an act can be done here and now; a reading where its tool shows anything at all. */
export const possible = ({ seen }: View, act: PlannedAction): boolean =>
  act.type === 'read' ? seen.look(act) !== undefined : seen.would(act).ok;
