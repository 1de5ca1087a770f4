import { nextSteps } from '../core/order/crew/planner';
import type { Attempt } from '../core/site/attempt';
import { isOver } from '../core/site/state';
import { stepMember } from './stepText';

/** What the next good steps are about, where the list is shown: members, and the plate of a wall for its brace. */
export const nextMembers = (attempt: Attempt): readonly string[] => {
  if (attempt.mode !== 'list' || isOver(attempt.site)) return [];
  const all = nextSteps(attempt).map(({ action }) => stepMember(action).replace(/^brace\.wall/, 'plate'));
  return [...new Set(all)];
};
