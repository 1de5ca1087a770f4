import type { Action } from '../core/site/action';
import type { Attempt } from '../core/site/attempt';
import { expand } from '../core/site/carryOn';

/** The last act that stands: what the crew is at. A job carried on is told as its last act; an undo as itself. */
export const lastActOf = ({ steps }: Pick<Attempt, 'steps'>): Action | undefined => {
  for (let i = steps.length - 1; i >= 0; i--) {
    const step = steps[i];
    if (!step || step.undone || !step.outcome.ok) continue;
    if (step.action.type !== 'carryOn') return step.action;
    const acts = expand(steps, step.action);
    return acts?.[acts.length - 1];
  }
  return undefined;
};

/** Whether two acts put the crew to the same work: what was said of a reading, or by how much, moves nobody. */
export const sameWork = (a: Action | undefined, b: Action | undefined): boolean =>
  a === b || (a !== undefined && b !== undefined && workOf(a) === workOf(b));

const workOf = (action: Action): string =>
  JSON.stringify(action, (key, value: unknown) => (unseen.has(key) ? undefined : value));
const unseen = new Set(['said', 'call', 'why', 'value', 'spacing', 'nails', 'off']);
