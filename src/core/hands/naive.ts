import { isOver } from '../site/state';
import type { Methods } from '../level/method';
import { jobsOf, possible } from '../order/crew/planner';
import type { TaskCode, Wait } from '../order/crew/task';
import { held, home, stands, viewOf, type PlannedAction, type View } from '../order/crew/view';
import { sidesOf } from '../level/layout';
import { rafterId, type JointId } from '../site/ids';
import type { Attempt } from '../site/attempt';
import { said } from './said';
import type { Hand } from './hand';
import { wayOf } from './ways';

/** Reads and judges, but does what shows first and what holds later: nails before it proves, stacks before it braces. */
export const nailsFirst: Hand = {
  name: 'nails-first',
  player: (dice, wanted) => {
    let way: Methods | undefined;
    return (attempt) => {
      way ??= wayOf(attempt.level, dice, wanted);
      if (isOver(attempt.site)) return undefined;
      const view = viewOf(attempt, { wanted: way });
      const tired = pushes(attempt) >= patience;
      const act = [...eagerNails(view), ...byEagerness(view)].find(
        (next) => !(tired && isPush(next)) && possible(view, next),
      );
      return (act && said(view, act)) ?? { type: 'handOver' };
    };
  },
};

/** A ridge that its nails hold where they were driven does not go where it is pushed: after so many tries it is left there. */
const patience = 12;

const isPush = ({ type }: PlannedAction): boolean => type === 'raise' || type === 'shift';

const pushes = ({ steps }: Attempt): number =>
  steps.filter(({ action }) => isPush(action as PlannedAction)).length;

/** What such a crew likes to see done, first things first. */
const eager: readonly TaskCode[] = [
  'agree',
  'makeReady',
  'lookOver',
  'proveWalls',
  'setPosts',
  'landRidge',
  'proveEnds',
  'nailEnds',
  'letGo',
  'propsOut',
  'stack',
  'string',
  'heels',
  'tails',
  'upper',
  'chalk',
  'lockMiddle',
  'fixLedger',
  'tieWalls',
  'braceRidge',
  'braceWalls',
  'layOut',
  'settleRidge',
  'handOver',
];

const byEagerness = (view: View): readonly PlannedAction[] =>
  [...jobsOf(view)]
    .filter(({ waitsFor, left }) => left.length > 0 && !waitsFor.some(physical))
    .sort((a, b) => eager.indexOf(a.task.code) - eager.indexOf(b.task.code))
    .flatMap(({ left }) => left);

/** What cannot be done otherwise, what hurts somebody, and finishing before handing over still hold. */
const physical = ({ why }: Wait): boolean => ['physics', 'S1', 'S2', 'S4', 'T1', 'T2'].includes(why);

/** The ridge joint of an end rafter and the first heel of a side are driven home as soon as they are tacked. */
const eagerNails = (view: View): readonly PlannedAction[] => {
  const sides = sidesOf(view.seen.level);
  const ends = sides.flatMap((side) => [1, view.last].map((n): JointId => `ridge:${rafterId(side, n)}`));
  const heels = sides.map((side): JointId => `heel:${rafterId(side, 2)}`);
  const loose = view.stations
    .flatMap((_, i) => sides.map((side) => rafterId(side, i + 1)))
    .filter((id) => stands(view, id) && !held(view, `ridge:${id}`));
  if (loose.length > 0) return loose.map((id) => ({ type: 'tack', joint: `ridge:${id}`, nails: 2 }));
  return [...ends, ...heels]
    .filter((joint) => held(view, joint) && !home(view, joint))
    .map((joint) => ({ type: 'nailOff', joint }));
};
