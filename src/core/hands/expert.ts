import { isOver } from '../site/state';
import type { Methods } from '../level/method';
import { openJobs, possible, type Standing } from '../order/crew/planner';
import type { Task } from '../order/crew/task';
import { viewOf, type PlannedAction, type View } from '../order/crew/view';
import type { Action } from '../site/action';
import type { Attempt } from '../site/attempt';
import { shuffled, type Dice } from './dice';
import type { Hand } from './hand';
import { said } from './said';
import { wayOf } from './ways';

/** How often a crew stays at the job it is on while that can go on. Ours. */
const staying = 0.9;

/** Does open jobs in a random accepted order, checks in their windows and acts on what it reads. */
export const expert: Hand = { name: 'expert', player: (dice, wanted) => worker({ dice, wanted }) };

/** The right order, but nothing read, proved or judged. */
export const readsNothing: Hand = {
  name: 'reads-nothing',
  player: (dice, wanted) => worker({ dice, wanted, careless: true }),
};

type Character = {
  readonly dice: Dice;
  readonly wanted: Partial<Methods> | undefined;
  readonly careless?: true;
};

const worker = ({ dice, wanted, careless }: Character): ((attempt: Attempt) => Action | undefined) => {
  let way: Methods | undefined;
  let on: Task | undefined;
  return (attempt) => {
    way ??= wayOf(attempt.level, dice, wanted);
    if (isOver(attempt.site)) return undefined;
    const view = viewOf(attempt, { wanted: way, ...(careless ? { careless } : { refits: true }) });
    const jobs = openJobs(view);
    const staysOn = jobs.filter(({ task }) => task === on && dice.chance(staying));
    for (const job of [...staysOn, ...shuffled(dice, jobs)]) {
      const act = firstOf(view, job, dice);
      if (!act) continue;
      on = job.task;
      return again(attempt, job) ?? said(view, act) ?? { type: 'handOver' };
    }
    return { type: 'handOver' };
  };
};

/** An act of a job that can be done now: any of them, or the first where they have an order. */
const firstOf = (view: View, { task, left }: Standing, dice: Dice): PlannedAction | undefined =>
  (task.anyOrder ? shuffled(dice, left) : left).find((act) => possible(view, act));

/** A tie shown once is carried on to the end. */
const again = ({ steps }: Attempt, { left }: Standing): Action | undefined => {
  const last = steps.at(-1);
  const next = left[0];
  if (
    last?.action.type !== 'setTie' ||
    next?.type !== 'setTie' ||
    next.station !== last.action.station + 1 ||
    left.length < 2
  )
    return undefined;
  return { type: 'carryOn', like: [steps.length - 1, steps.length - 1], to: next.station + left.length - 1 };
};
