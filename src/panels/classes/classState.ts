import { signal, type Signal } from '@preact/signals-core';
import type { Assignment } from '../../content/assignment';
import type { Complaint } from '../../content/complaint';
import type { Remark, TakenOn } from '../../content/classSchema';
import type { Outcome } from '../../records/marked';
import type { TakenFile } from '../../records/pool';
import type { Session } from '../../session/session';

/** Parts of the instructor's desk. */
export const classPages = ['out', 'results', 'keep', 'help'] as const;
export type ClassPage = (typeof classPages)[number];

/** A file on the desk, and how it was marked; not yet where that is absent. */
export type DeskFile = TakenFile & { readonly outcome: Outcome | undefined };

/** What of a class is to hand while the page is open: the learner's assignments, and the instructor's desk. */
export type Classes = {
  /** What this learner was given. */
  readonly taken: Signal<readonly TakenOn[]>;
  /** Id of the assignment that is open. */
  readonly open: Signal<string | undefined>;
  /** Why the last link or file could not be used. */
  readonly refused: Signal<Refused | undefined>;
  /** Id of the assignment that the talk is about. */
  readonly going: Signal<string | undefined>;
  /** What this instructor gave out. */
  readonly given: Signal<readonly Assignment[]>;
  readonly page: Signal<ClassPage>;
  /** Files taken in, by the digest of their text. Undefined until those that were kept have been fetched. */
  readonly files: Signal<ReadonlyMap<string, DeskFile> | undefined>;
  /** Files are being played again. */
  readonly marking: Signal<Progress | undefined>;
  /** Files that came meanwhile. */
  readonly waiting: File[];
  /** What came of the last files. */
  readonly intake: Signal<Intake | undefined>;
  readonly remarks: Signal<Readonly<Record<string, Remark>>>;
  /** Id of the assignment whose results are shown; empty for runs without one. */
  readonly shown: Signal<string | undefined>;
  /** Code of the learner whose sheet is open. */
  readonly learner: Signal<string | undefined>;
  /** A run that is only looked at. */
  readonly reading: Signal<Session | undefined>;
};

export type Progress = { readonly through: number; readonly of: number; readonly stop: () => void };

/** What the gate says of a file, by its name; of a link where there is none. */
export type Refused = { readonly from?: string; readonly complaint: Complaint };

/** Files that were read, those that had been here before, and what is wrong with the others. */
export type Intake = {
  readonly read: number;
  readonly of: number;
  readonly twice: number;
  readonly wrong: readonly Refused[];
  readonly kept: boolean;
};

export const noClasses = (): Classes => ({
  taken: signal<readonly TakenOn[]>([]),
  open: signal<string | undefined>(undefined),
  refused: signal<Refused | undefined>(undefined),
  going: signal<string | undefined>(undefined),
  given: signal<readonly Assignment[]>([]),
  page: signal<ClassPage>('out'),
  files: signal<ReadonlyMap<string, DeskFile> | undefined>(undefined),
  marking: signal<Progress | undefined>(undefined),
  waiting: [],
  intake: signal<Intake | undefined>(undefined),
  remarks: signal<Readonly<Record<string, Remark>>>({}),
  shown: signal<string | undefined>(undefined),
  learner: signal<string | undefined>(undefined),
  reading: signal<Session | undefined>(undefined),
});
