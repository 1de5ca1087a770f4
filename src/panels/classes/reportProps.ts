import type { Assignment } from '../../content/assignment';
import type { Report } from '../../records/report';
import type { Desk } from '../desk';

/** What every part of a report is made from. */
export type ReportProps = {
  readonly desk: Desk;
  readonly report: Report;
  readonly assignment: Assignment | undefined;
  /** Points from which a run is at the pass line. */
  readonly line: number;
};
