import type { Standing } from '../order/crew/planner';
import type { PlannedAction, View } from '../order/crew/view';
import type { Action } from '../site/action';
import { dangerRow, type DangerRow } from '../site/dangers/rows';
import type { Decider } from './skill';

/**
 * One decision for each rule of safety. Whoever does not heed it does the dangerous thing once, when it comes up, is stopped,
 * and does it rightly from then on.
 */
export type Daring = (rule: DangerRow['rule']) => boolean;

export const daringOf = (view: View, decider: Decider): Daring => {
  const stopped = new Set(view.seen.site.stops.map(({ danger }) => dangerRow(danger)?.rule));
  return (rule) => !decider.right('danger', rule) && !stopped.has(rule);
};

/** What is left of a job for somebody who does not see the need of a part of it: the trigger, standing clear. */
export const withoutCare = (job: Standing, dares: Daring): Standing => {
  const needless = ({ ...act }: PlannedAction): boolean =>
    (act.type === 'makeReady' && act.what === 'gear' && dares('S4')) ||
    (act.type === 'stand' && act.where === 'clear' && dares('S2'));
  return { ...job, left: job.left.filter((act) => !needless(act)) };
};

/** The dangerous way of doing it, where there is one. */
export const dared = (view: View, act: Action, dares: Daring): Action => {
  if (act.type === 'makeReady' && act.what === 'anchor' && dares('S3')) return { ...act, at: 'ridge' };
  if (act.type === 'hookOn' && dares('S1')) return { ...act, hitch: 'one', tagLine: false };
  const lets = act.type === 'letGo' || (act.type === 'takeOut' && act.member.startsWith('post.'));
  return lets && view.seen.site.people.helper === 'clear' && dares('S2')
    ? { type: 'stand', who: 'helper', where: 'beside' }
    : act;
};

/** Whether a danger would stop it that this hand does not heed. */
export const wouldDare = (view: View, act: PlannedAction, dares: Daring): boolean => {
  if (act.type === 'read') return false;
  const outcome = view.seen.would(act);
  if (outcome.ok || !outcome.stop) return false;
  const row = dangerRow(outcome.why as DangerRow['id']);
  return row !== undefined && dares(row.rule);
};
