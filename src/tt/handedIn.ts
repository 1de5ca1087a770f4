import { seedFor, type Assignment } from '../content/assignment';
import type { AttemptFile } from '../content/attemptFile';

/** Why an attempt is not the one that was asked for: of another assignment, by another learner, on another seed. */
export const whyNotTheirs = (
  {
    assignment,
    learner,
  }: { readonly assignment: Assignment | undefined; readonly learner: string | undefined },
  handed: AttemptFile,
): string | undefined => {
  if (learner !== undefined && handed.learner !== learner)
    return `handed in by ${handed.learner ?? 'nobody'}, not ${learner}`;
  if (assignment === undefined) return undefined;
  if (handed.assignment !== assignment.id)
    return `made for ${handed.assignment ?? 'no assignment'}, not ${assignment.id}`;
  if (!assignment.levels.includes(handed.level.id)) return `${handed.level.id} is not in the assignment`;
  if (handed.mode !== assignment.mode) return `played as ${handed.mode}, not ${assignment.mode}`;
  if (handed.learner === undefined) return 'handed in by nobody';
  return handed.seed === seedFor(assignment, handed.level.id, handed.learner)
    ? undefined
    : 'played on a seed that is not this learner’s';
};
