import { wholeJob, within } from '../../level/stages';
import type { Side } from '../../roof/side';
import type { Attempt } from '../../site/attempt';
import { onItsRidge, type RuleId } from '../rules';
import { jobsOf, openJobs } from './planner';
import { stageOf, type TaskCode } from './task';
import { viewOf } from './view';

/** One line of the crew list, in codes only: done, open now, or later and what for. */
export type CrewListRow = {
  readonly code: TaskCode;
  readonly side?: Side;
  readonly state: 'done' | 'now' | 'later';
  /** Acts still to do. */
  readonly left: number;
  /** Rules this job makes true, and rules it is too late for once it is begun: a point of no return where there are any. */
  readonly serves: readonly RuleId[];
  readonly closes: readonly RuleId[];
  readonly waitsFor: readonly { readonly on: TaskCode; readonly side?: Side; readonly why: string }[];
};

/** The lines that are the learner's, where a level is part of a job: all of them on a whole job. */
export const ownList = (attempt: Attempt): readonly CrewListRow[] => {
  const range = attempt.level.stages ?? wholeJob;
  return crewList(attempt).filter(({ code }) => code === 'handOver' || within(range, stageOf[code]));
};

/** The crew list of an attempt: every job in the order a crew would write it. */
export const crewList = (attempt: Attempt): readonly CrewListRow[] => {
  const view = viewOf(attempt);
  const open = new Set(openJobs(view).map(({ task }) => task));
  return jobsOf(view).map(({ task: job, left, waitsFor }) => ({
    code: job.code,
    ...(job.side === undefined ? {} : { side: job.side }),
    state: left.length === 0 ? 'done' : open.has(job) ? 'now' : 'later',
    left: left.length,
    serves: onItsRidge(attempt.level, job.serves),
    closes: onItsRidge(attempt.level, job.closes),
    waitsFor,
  }));
};
