import type { Part } from '../core/score/score';
import { weakestPart, type Norm } from '../core/score/weakest';
import { anchorOf, competencies, type Anchor, type Competency } from './anchors';
import { partNames, type Marked, type Told } from './marked';
import { meanOf, trendOf, type Trend } from './trend';

/** A run on the desk: which file it came in, how old that was (ms since 1970), and how it was marked. */
export type Entry = {
  readonly key: string;
  readonly file: string;
  readonly when: number;
  readonly marked: Marked;
};

/** What is known of runs in general on a level. */
export type Known = {
  readonly errorOn: (level: string) => number | undefined;
  readonly normOn: (level: string) => Norm | undefined;
};

/** One learner, from the runs that hold. `code` is empty where a run names nobody. */
export type LearnerRow = {
  readonly code: string;
  readonly entries: readonly Entry[];
  /** Runs that hold and were not only watched. */
  readonly counted: readonly Entry[];
  readonly total: number | undefined;
  readonly parts: Partial<Readonly<Record<Part, number>>>;
  readonly weakest: Part | undefined;
  readonly trend: Trend | undefined;
  readonly unchecked: readonly Tallied[];
  readonly anchors: Readonly<Record<Competency, Anchor>>;
};

/** A code, and in how many runs it came up. */
export type Tallied = { readonly code: string; readonly runs: number };

export type Report = {
  readonly learners: readonly LearnerRow[];
  /** Runs that the sums of the class are made of. */
  readonly counted: number;
  readonly broken: readonly Tallied[];
  readonly missed: readonly Tallied[];
  readonly unchecked: readonly Tallied[];
  readonly twins: readonly Twins[];
};

/** Learners whose runs of a level are the same to the last act. On one site for all that may be a copy. */
export type Twins = { readonly level: string; readonly codes: readonly string[] };

/** Sums up a class. Learners stand in the order of their codes and in no other. */
export const reportOf = (entries: readonly Entry[], known: Known): Report => {
  const codes = [...new Set(entries.map(codeIn))].sort((a, b) => (a < b ? -1 : 1));
  const learners = codes.map((code) =>
    learnerRow(
      code,
      entries.filter((entry) => codeIn(entry) === code),
      known,
    ),
  );
  const all = entries.filter(counts).flatMap(({ marked: { told } }) => told ?? []);
  return {
    learners,
    counted: all.length,
    broken: tally(all, ({ broken }) => broken),
    missed: tally(all, ({ missed }) => missed),
    unchecked: tally(all, ({ unchecked }) => unchecked),
    twins: twinsIn(entries.filter(counts)),
  };
};

const twinsIn = (entries: readonly Entry[]): readonly Twins[] => {
  const same = new Map<string, readonly Entry[]>();
  for (const entry of entries) {
    const { level, acts } = entry.marked;
    same.set(`${level} ${acts}`, [...(same.get(`${level} ${acts}`) ?? []), entry]);
  }
  return [...same.values()]
    .map((all) => ({ level: all[0]?.marked.level ?? '', codes: [...new Set(all.map(codeIn))].sort() }))
    .filter(({ codes }) => codes.length > 1)
    .sort((a, b) => (`${a.level} ${a.codes}` < `${b.level} ${b.codes}` ? -1 : 1));
};

const codeIn = ({ marked }: Entry): string => marked.learner ?? '';

/** Only what the replay bears out is summed up, and nothing that the crew did. */
export const counts = ({ marked: { holds, mode, told } }: Entry): boolean =>
  holds === true && mode !== 'watch' && told !== undefined;

const learnerRow = (code: string, own: readonly Entry[], known: Known): LearnerRow => {
  const entries = [...own].sort((a, b) => a.when - b.when || (a.file < b.file ? -1 : 1));
  const counted = entries.filter(counts);
  const told = counted.flatMap(({ marked }) =>
    marked.told ? [{ ...marked.told, level: marked.level }] : [],
  );
  const parts = meansOf(told.map((one) => one.parts));
  return {
    code,
    entries,
    counted,
    total: told.length === 0 ? undefined : meanOf(told.map(({ total }) => total)),
    parts,
    weakest: weakestPart(parts, normOver(told.flatMap(({ level }) => known.normOn(level) ?? []))),
    trend: trendOf(
      told
        .map(({ total, level }) => ({ total, error: known.errorOn(level) }))
        .filter(({ error }) => error !== undefined),
    ),
    unchecked: tally(told, ({ unchecked }) => unchecked),
    anchors: Object.fromEntries(
      competencies.map((line) => [
        line,
        anchorOf(
          line,
          counted.map(({ marked }) => marked),
        ),
      ]),
    ) as Record<Competency, Anchor>,
  };
};

const meansOf = (all: readonly Partial<Record<Part, number>>[]): Partial<Record<Part, number>> =>
  Object.fromEntries(
    partNames.flatMap((part) => {
      const known = all.flatMap((parts) => parts[part] ?? []);
      return known.length === 0 ? [] : [[part, meanOf(known)]];
    }),
  );

/** The competent over several levels: means of means and of spreads. */
const normOver = (norms: readonly Norm[]): Norm =>
  Object.fromEntries(
    partNames.flatMap((part) => {
      const known = norms.flatMap((norm) => norm[part] ?? []);
      return known.length === 0
        ? []
        : [[part, { mean: meanOf(known.map(({ mean }) => mean)), sd: meanOf(known.map(({ sd }) => sd)) }]];
    }),
  );

/** Runs in which each code came up, most runs first; codes of as many runs stand by their names. */
const tally = (all: readonly Told[], codesOf: (told: Told) => readonly string[]): readonly Tallied[] => {
  const runs = new Map<string, number>();
  for (const told of all)
    for (const code of new Set(codesOf(told))) runs.set(code, (runs.get(code) ?? 0) + 1);
  return [...runs]
    .map(([code, count]) => ({ code, runs: count }))
    .sort((a, b) => b.runs - a.runs || (a.code < b.code ? -1 : 1));
};
