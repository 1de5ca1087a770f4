import type { Assignment } from '../content/assignment';
import { readAttempt } from '../content/attemptFile';
import { digestOf } from '../content/canonical';
import { complaint, type Complaint } from '../content/complaint';
import type { Level } from '../core/level/level';
import { modes, type Mode } from '../core/level/mode';
import { checksOf } from '../core/score/checked';
import { lookedAt } from '../core/score/eye';
import type { Part, Score } from '../core/score/score';
import type { Attempt } from '../core/site/attempt';
import { judgeFile, type Verdict } from './verdict';
import { why, type Why } from './why';

/** What a desk reads attempt files with: its levels, and the assignments it gave out. Plain data, so that a worker can have it. */
export type Shelf = { readonly levels: readonly Level[]; readonly assignments: readonly Assignment[] };

/** A file that is a run: who handed in what, whether it holds, and what its acts came to. */
export type Marked = {
  readonly digest: string;
  /** Fingerprint of what was done, whoever did it. */
  readonly acts: string;
  readonly level: string;
  readonly mode: Mode;
  readonly seed: number;
  readonly assignment?: string;
  readonly learner?: string;
  readonly holds: Verdict['holds'];
  readonly why?: Why;
  readonly told?: Told;
};

/** What a report needs of a run that was played again. */
export type Told = Pick<Score, 'total' | 'pass' | 'parts' | 'done' | 'sound'> & {
  readonly minutes: number;
  /** Order rules and dangers that it broke, each once. */
  readonly broken: readonly string[];
  /** Planted faults that it missed, one for each. */
  readonly missed: readonly string[];
  /** Faults that there were to find. */
  readonly planted: number;
  /** Checks of which not one was taken. */
  readonly unchecked: readonly string[];
};

/** Marked, or what is wrong with the file and where. */
export type Outcome =
  { readonly ok: true; readonly marked: Marked } | { readonly ok: false; readonly complaint: Complaint };

/** One attempt file's text, read, played again and summed up. */
export const markText = (shelf: Shelf, text: string): Outcome => {
  const read = readAttempt(text);
  if (!read.ok) return unread(read.complaints);
  const handed = read.value;
  const { level: of, mode, seed, assignment, learner, digest } = handed;
  const head = {
    digest,
    acts: digestOf(handed.actions),
    level: of.id,
    mode,
    seed,
    ...(assignment === undefined ? {} : { assignment }),
    ...(learner === undefined ? {} : { learner }),
  };
  const level = shelf.levels.find(({ id }) => id === of.id);
  if (!level) return { ok: true, marked: { ...head, holds: false, why: why('noLevel', of.id) } };
  const asked = shelf.assignments.find(({ id }) => id === assignment);
  const { played, ...verdict } = judgeFile({ level, assignment: asked, learner: undefined }, handed);
  return { ok: true, marked: { ...head, ...verdict, ...(played ? { told: toldOf(played) } : {}) } };
};

const unread = ([first]: readonly Complaint[]): Outcome => ({
  ok: false,
  complaint: first ?? complaint('$', ['cannotRead'], ['attemptFile']),
});

type Played = { readonly attempt: Attempt; readonly score: Score };

const toldOf = ({ attempt, score }: Played): Told => {
  const { total, pass, parts, done, sound, minutes, findings } = score;
  const codes = (kinds: readonly string[]): readonly string[] => [
    ...new Set(findings.filter(({ kind }) => kinds.includes(kind)).map(({ code }) => code)),
  ];
  const eyes = findings.filter(({ kind, code }) => kind === 'eye' && code !== 'falseAlarm');
  return {
    total,
    pass,
    parts,
    done,
    sound,
    minutes: minutes.used,
    broken: codes(['order', 'safety']),
    missed: eyes.map(({ code }) => code),
    planted:
      parts.eye === undefined ? 0 : lookedAt(attempt).filter(({ fault }) => fault !== undefined).length,
    unchecked: uncheckedIn(attempt),
  };
};

const uncheckedIn = (attempt: Attempt): readonly string[] => {
  const checked = checksOf(attempt);
  const taken = new Set(checked.filter(({ why: how }) => how !== 'none').map(({ rule }) => rule));
  return [...new Set(checked.map(({ rule }) => rule))].filter((rule) => !taken.has(rule));
};

/** Ways in which nothing is shown to the learner. */
export const isAlone = (mode: Mode): boolean => modes.indexOf(mode) >= modes.indexOf('own');

export const partNames: readonly Part[] = ['order', 'checks', 'fit', 'eye', 'economy'];
