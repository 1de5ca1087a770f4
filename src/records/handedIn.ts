import { seedFor, type Assignment } from '../content/assignment';
import type { AttemptFile } from '../content/attemptFile';
import { why, type Why } from './why';

type Asked = { readonly assignment: Assignment | undefined; readonly learner: string | undefined };

/** Why an attempt is not the one that was asked for: of another assignment, by another learner, on another seed. */
export const whyNotTheirs = ({ assignment, learner }: Asked, handed: AttemptFile): Why | undefined => {
  if (learner !== undefined && handed.learner !== learner)
    return handed.learner === undefined ? why('byNobody') : why('byOther', handed.learner, learner);
  if (assignment === undefined) return undefined;
  if (handed.assignment === undefined) return why('forNone', assignment.id);
  if (handed.assignment !== assignment.id) return why('forOther', handed.assignment, assignment.id);
  if (!assignment.levels.includes(handed.level.id)) return why('notAsked', handed.level.id);
  if (handed.mode !== assignment.mode) return why('otherMode', handed.mode, assignment.mode);
  if (handed.learner === undefined) return why('byNobody');
  return handed.seed === seedFor(assignment, handed.level.id, handed.learner) ? undefined : why('otherSite');
};
