import { jobsOf, type Standing } from '../order/crew/planner';
import type { Task, TaskCode, Wait } from '../order/crew/task';
import type { View } from '../order/crew/view';
import type { Fact } from '../order/fact';
import { orderRules } from '../order/rules';
import type { Action } from '../site/action';
import type { Decider } from './skill';

/** Jobs as a hand takes them up: those it may do next, first things first, and those it puts off until nothing else is left. */

/** What is left of a job for this hand, and which jobs it cannot get on with. */
export type Situation = {
  readonly decider: Decider;
  readonly left: (job: Standing) => Standing;
  readonly stuck: ReadonlySet<Task>;
  /** Rules broken already, by instance: what they wanted is done at the next turn. */
  readonly broken: ReadonlySet<string>;
};

/**
 * Where a rule of order is not kept, what it wants first is put off and nothing waits for it, until what should have come
 * later has begun: one wrong turn, noticed then.
 */
export const takenUp = (view: View, situation: Situation): readonly Standing[] => {
  const { decider, left, stuck } = situation;
  const jobs = jobsOf(view).map(left);
  const off = putOff(view, situation, jobs);
  const isOff = (on: Wait): boolean => off.some((wait) => sameJob(wait, on)) && !atTheEnd(on);
  const holdsUp = (on: Wait): boolean =>
    !isOff(on) && jobs.some((job) => concerns(on, job) && job.left.length > 0 && !stuck.has(job.task));
  const open = jobs.filter(
    (job) => job.left.length > 0 && !stuck.has(job.task) && !waitsOf(job).some(holdsUp),
  );
  const rank = ({ task }: Standing): number => decider.how(`rank ${task.code} ${task.side ?? ''}`);
  const late = (job: Standing): boolean => off.some((wait) => concerns(wait, job));
  return [...open].sort((a, b) => Number(late(a)) - Number(late(b)) || rank(a) - rank(b));
};

const sameJob = (a: Wait, b: Wait): boolean =>
  a.on === b.on && (a.side === undefined || b.side === undefined || a.side === b.side);

const atTheEnd = ({ why }: Wait): boolean => /^T/.test(why);

/** Waits that stand for jobs put off: one decision for each rule, or each side of it where it has sides. */
const putOff = (view: View, { decider, broken }: Situation, jobs: readonly Standing[]): readonly Wait[] =>
  jobs.flatMap(({ task }) =>
    task
      .waits(view)
      .filter(({ why }) => /^O\d+$/.test(why))
      .filter(
        (wait) => !decider.right('order', instanceOf(task, wait)) && !broken.has(instanceOf(task, wait)),
      ),
  );

const instanceOf = (task: Task, { why, side }: Wait): string =>
  side !== undefined && side === task.side ? `${why} ${side}` : why;

/** Whoever takes the props out too soon still does so only once the ridge hangs on nailed ends. */
const least: Partial<Record<TaskCode, TaskCode>> = { propsOut: 'nailEnds' };

const waitsOf = ({ task, waitsFor }: Standing): readonly Wait[] => {
  const first = least[task.code];
  return first === undefined ? waitsFor : [...waitsFor, { on: first, why: 'physics' }];
};

const concerns = ({ on, side }: Wait, { task }: Standing): boolean =>
  task.code === on && (side === undefined || side === task.side);

/** Instances of the rules whose later step an act is. */
export const latersOf = (view: View, act: Action): readonly string[] => {
  const fact = factOfAct(act);
  const job = { level: view.seen.level, methods: view.methods };
  if (fact === undefined) return [];
  return orderRules.flatMap(({ id, after }) => {
    const instance = after(fact, job);
    return instance === undefined ? [] : sided.test(instance) ? [`${id} ${instance}`] : [id];
  });
};

const sided = /^(street|yard)$/;

const factOfAct = (act: Action): Fact | undefined => {
  switch (act.type) {
    case 'place':
      return act.member;
    case 'nailOff':
      return act.joint;
    case 'takeOut':
      return `out:${act.member}`;
    case 'letGo':
      return 'unhooked';
    default:
      return undefined;
  }
};
