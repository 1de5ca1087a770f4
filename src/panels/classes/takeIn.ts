import { readFileHeads, readRemarks, type FileHead, type Remark } from '../../content/classSchema';
import { largestFile, tooLarge } from '../../content/readJson';
import { filesMerge, keys } from '../../records/backup';
import { fileKey } from '../../records/fileKey';
import { markAll, type TakenFile } from '../../records/pool';
import type { Entry } from '../../records/report';
import type { Desk } from '../desk';
import type { DeskFile, Intake, Refused } from './classState';

/** Files come in: read, played again by workers, kept. Whatever is kept is played again when the desk is opened next. */

/** Brings back the files that are kept here, once. */
export const fetchFiles = async (desk: Desk): Promise<void> => {
  const { classes, store } = desk;
  if (classes.files.value) return;
  classes.files.value = new Map();
  const heads = readFileHeads(await store.get(keys.files).catch(() => undefined));
  const files = await Promise.all(heads.map((head) => fetched(desk, head)));
  const all = files.flatMap((file) => file ?? []);
  const { through } = await marked(desk, all);
  if (through < all.length)
    classes.intake.value = { read: through, of: all.length, twice: 0, wrong: [], kept: true };
  await takeWaiting(desk);
};

const fetched = async ({ store }: Desk, { key, name, when }: FileHead): Promise<TakenFile | undefined> => {
  const text = await store.get(keys.fileText(key)).catch(() => undefined);
  return typeof text === 'string' ? { key, name, when, text } : undefined;
};

/** Takes files in. What comes while others are being played again waits for its turn. */
export const takeIn = async (desk: Desk, files: readonly File[]): Promise<void> => {
  const { classes } = desk;
  if (classes.marking.value || !classes.files.value) {
    classes.waiting.push(...files);
    return;
  }
  classes.intake.value = await took(desk, files, classes.files.value);
  await takeWaiting(desk);
};

/** Those that waited are told together with those before them. One who stops what goes on stops them too. */
const takeWaiting = async (desk: Desk): Promise<void> => {
  const { classes } = desk;
  const files = classes.waiting.splice(0);
  const before = classes.intake.value;
  if (files.length === 0 || !classes.files.value) return;
  if (before && before.read < before.of) {
    classes.intake.value = { ...before, of: before.of + files.length };
    return;
  }
  const came = await took(desk, files, classes.files.value);
  classes.intake.value = before
    ? {
        read: before.read + came.read,
        of: before.of + came.of,
        twice: before.twice + came.twice,
        wrong: [...before.wrong, ...came.wrong],
        kept: before.kept && came.kept,
      }
    : came;
  await takeWaiting(desk);
};

const took = async (
  desk: Desk,
  files: readonly File[],
  known: ReadonlyMap<string, DeskFile>,
): Promise<Intake> => {
  const { classes } = desk;
  const read = await loaded(desk, files);
  const taken = read.flatMap((one) => ('text' in one ? [one] : []));
  const fresh = new Map(taken.map((file) => [file.key, file]));
  for (const key of known.keys()) fresh.delete(key);
  const came = await marked(desk, [...fresh.values()]);
  const wrong = [...read.flatMap((one) => ('complaint' in one ? [one] : [])), ...came.wrong];
  classes.shown.value = came.last ?? classes.shown.value;
  const kept = await keepFiles(desk);
  return {
    read: came.through,
    of: fresh.size + files.length - read.length,
    twice: taken.length - fresh.size,
    wrong,
    kept,
  };
};

/** Their texts, one after the other: thousands at once would hold up the page. */
const loaded = async ({ classes }: Desk, files: readonly File[]): Promise<readonly Read[]> => {
  const read: Read[] = [];
  let stopped = false;
  const stop = (): void => void (stopped = true);
  classes.marking.value = { through: 0, of: files.length, stop };
  for (const file of files) if (!stopped) read.push(await textOf(file));
  classes.marking.value = undefined;
  return stopped ? [] : read;
};

type Read = TakenFile | Refused;

/** What is too large is not even loaded. */
const textOf = async (file: File): Promise<Read> => {
  if (file.size <= largestFile) {
    const text = await file.text();
    return { key: await fileKey(text), name: file.name, when: file.lastModified, text };
  }
  return { from: file.name, complaint: tooLarge() };
};

type Came = {
  readonly through: number;
  readonly wrong: readonly Refused[];
  /** The assignment of the last run that came in. */
  readonly last: string | undefined;
};

/** Plays files again and lays those that are runs on the desk. */
const marked = async (desk: Desk, files: readonly TakenFile[]): Promise<Came> => {
  const { classes, levels } = desk;
  if (files.length === 0) return { through: 0, wrong: [], last: undefined };
  const of = files.length;
  const told = (through: number): void => {
    classes.marking.value = { through, of, stop };
  };
  const { done, stop } = markAll({ shelf: { levels, assignments: classes.given.value }, files, told });
  told(0);
  const outcomes = await done;
  classes.marking.value = undefined;
  const pairs = files.map((file, i): DeskFile => ({ ...file, outcome: outcomes[i] }));
  const runs = pairs.filter(({ outcome }) => outcome?.ok);
  classes.files.value = new Map([
    ...(classes.files.value ?? []),
    ...runs.map((file) => [file.key, file] as const),
  ]);
  const last = runs.at(-1)?.outcome;
  return {
    through: pairs.filter(({ outcome }) => outcome !== undefined).length,
    wrong: pairs.flatMap(({ name, outcome }) =>
      outcome && !outcome.ok ? [{ from: name, complaint: outcome.complaint }] : [],
    ),
    last: last?.ok ? shelfOf(desk, last.marked.assignment) : undefined,
  };
};

/** Under which assignment a run is shown: one that was given out here, or none. */
const shelfOf = ({ classes }: Desk, assignment: string | undefined): string =>
  classes.given.value.find(({ id }) => id === assignment)?.id ?? '';

const keepFiles = async ({ store, classes }: Desk): Promise<boolean> => {
  try {
    // What is kept stays kept, also where its playing again was stopped.
    const before = readFileHeads(await store.get(keys.files));
    const fresh = [...(classes.files.value ?? [])].filter(([key]) => !before.some((one) => one.key === key));
    await Promise.all(fresh.map(([key, { text }]) => store.put(keys.fileText(key), text)));
    const heads = fresh.map(([key, { name, when }]): FileHead => ({ key, name: name.slice(-400), when }));
    await store.change(keys.files, (kept) => filesMerge(kept, heads).kept);
    return store.lasts;
  } catch {
    return false;
  }
};

/** The runs on the desk that belong to an assignment, or to none of its own. */
export const entriesOf = (desk: Desk, shown: string): readonly Entry[] =>
  [...(desk.classes.files.value ?? [])].flatMap(([key, { name, when, outcome }]) =>
    outcome?.ok && shelfOf(desk, outcome.marked.assignment) === shown
      ? [{ key, file: name, when, marked: outcome.marked }]
      : [],
  );

const remarkKey = (assignment: string, learner: string): string => `${assignment} ${learner}`.slice(0, 400);

export const remarkOn = ({ classes }: Desk, assignment: string, learner: string): Remark =>
  classes.remarks.value[remarkKey(assignment, learner)] ?? { note: '' };

type About = { readonly assignment: string; readonly learner: string };

export const putRemark = ({ classes, store }: Desk, { assignment, learner }: About, remark: Remark): void => {
  const key = remarkKey(assignment, learner);
  classes.remarks.value = { ...classes.remarks.value, [key]: remark };
  void store.change(keys.remarks, (kept) => ({ ...readRemarks(kept), [key]: remark })).catch(() => undefined);
};
