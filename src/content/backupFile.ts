import * as z from 'zod/mini';
import type { Action } from '../core/site/action';
import { canonicalText, digestOf } from './canonical';
import { complaint, type Read } from './complaint';
import { newerThan } from './newerThan';
import type { Phrase } from './phrase';
import { readJson } from './readJson';
import { readAct, readHead, type RunHead } from './runSchema';
import { readShape } from './shape';

/** All that a device keeps, in one file. What each value may be, its own reader says. */
export type Backup = {
  readonly runs: readonly KeptRun[];
  /** By the keys of the store. */
  readonly values: Readonly<Record<string, unknown>>;
};

export type KeptRun = {
  readonly head: RunHead;
  readonly actions: readonly Action[];
  /** What the learner said after work. */
  readonly answers?: unknown;
};

const format = 'tack-and-true/backup@1';
/** Larger backups than this are not read, bytes: thousands of runs. */
export const largestBackup = 100_000_000;

const said = z.optional(z.string().check(z.maxLength(20_000)));
const answered = z.nullable(z.strictObject({ intend: said, happened: said, next: said }));

const schema = z.strictObject({
  format: z.literal(format),
  runs: z.array(z.strictObject({ head: z.unknown(), actions: z.array(z.unknown()), answers: answered })),
  values: z.record(z.string().check(z.maxLength(500)), z.unknown()),
  digest: z.string(),
});

/** Canonical, so that the same keeping is the same bytes, with a digest over all the rest. */
export const backupText = ({ runs, values }: Backup): string => {
  const rest = { format, runs: runs.map((run) => ({ ...run, answers: run.answers ?? null })), values };
  return canonicalText({ ...rest, digest: digestOf(rest) });
};

/** A backup's text back, or what is wrong with it. One run that cannot be used refuses the whole: nothing is half brought in. */
export const readBackup = (text: string): Read<Backup> => {
  const json = readJson(text, largestBackup);
  if (!json.ok) return json;
  const newer = newerThan(format, json.value);
  if (newer) return newer;
  const shape = readShape(schema, json.value);
  if (!shape.ok) return shape;
  const { digest, ...rest } = shape.value;
  if (digestOf(rest) !== digest) return no('digest', ['digestOff']);
  const runs = shape.value.runs.map(({ head, actions, answers }) => ({
    head: readHead(head),
    actions: actions.map(readAct),
    answers,
  }));
  const bad = runs.findIndex(({ head, actions }) => !head || actions.some((act) => !act));
  if (bad >= 0) return no(`runs.${bad}`, ['noRun']);
  return { ok: true, value: { runs: runs as readonly KeptRun[], values: shape.value.values } };
};

const no = (path: string, wrong: Phrase): Read<never> => ({
  ok: false,
  complaints: [complaint(path, wrong, ['asWritten'])],
});
