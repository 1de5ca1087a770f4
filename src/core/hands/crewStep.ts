import { nextSteps, type PlannedStep } from '../order/crew/planner';
import { viewOf } from '../order/crew/view';
import type { Action } from '../site/action';
import type { Attempt } from '../site/attempt';
import { methodsOf } from '../site/required';
import { said } from './said';

/** What a careful crew does next, and the job it is part of. */
export type CrewStep = { readonly planned: PlannedStep; readonly action: Action };

/** The first good step of the usual way, in the order of the crew list; undefined when nothing is left to do. */
export const crewStep = (attempt: Attempt): CrewStep | undefined => {
  const manner = { wanted: methodsOf(attempt.level, attempt.site.agreed) };
  const view = viewOf(attempt, manner);
  for (const planned of nextSteps(attempt, manner)) {
    const action = said(view, planned.action);
    if (action) return { planned, action };
  }
  return undefined;
};

/** Whether two steps are of one and the same job. */
export const sameJob = (one: CrewStep, other: CrewStep): boolean =>
  one.planned.code === other.planned.code && one.planned.side === other.planned.side;
