import type { Backup, KeptRun } from '../content/backupFile';
import { digestOf } from '../content/canonical';
import {
  keptGiven,
  keptTaken,
  readFileHeads,
  readGiven,
  readRemarks,
  readTaken,
} from '../content/classSchema';
import { readSettings } from '../content/settingsSchema';
import { levelOf, mostKept, ownJobsKept, readOwnJobs } from '../session/ownJobs';
import type { Store } from '../session/store';

/** Keys under which a store keeps what belongs to classes, and what else goes into a backup. */
export const keys = {
  taken: 'class taken',
  given: 'class given',
  files: 'class files',
  remarks: 'class remarks',
  settings: 'settings',
  ownRoof: 'own roof',
  ownJobs: ownJobsKept,
  fileText: (key: string): string => `class file ${key}`,
  answers: (run: string): string => `answers ${run}`,
} as const;

const wholes = [
  keys.taken,
  keys.given,
  keys.files,
  keys.remarks,
  keys.settings,
  keys.ownRoof,
  keys.ownJobs,
] as const;

/** All that a store keeps. */
export const backupOf = async (store: Store): Promise<Backup> => {
  const runs = await Promise.all(
    (await store.runs()).map(async (head): Promise<KeptRun> => ({
      head,
      actions: await store.actions(head.id),
      answers: await store.get(keys.answers(head.id)),
    })),
  );
  const files = readFileHeads(await store.get(keys.files)).map(({ key }) => keys.fileText(key));
  const named = await Promise.all(
    [...wholes, ...files].map(async (key) => [key, await store.get(key)] as const),
  );
  return { runs, values: Object.fromEntries(named.filter(([, value]) => value !== undefined)) };
};

/** Adds a backup to what a store keeps; what is in both stays as the store has it. Returns how many things came in. */
export const bringIn = async (store: Store, backup: Backup): Promise<number> => {
  const came = [
    await runsIn(store, backup.runs),
    await listIn(store, backup, { key: keys.taken, merge: takenMerge }),
    await listIn(store, backup, { key: keys.given, merge: givenMerge }),
    await listIn(store, backup, { key: keys.ownJobs, merge: ownJobsMerge }),
    await ownRoofIn(store, backup),
    await filesIn(store, backup),
    await listIn(store, backup, { key: keys.remarks, merge: remarksMerge }),
    await settingsIn(store, backup),
  ];
  return came.reduce((sum, count) => sum + count, 0);
};

/** Runs are known again by what they are, not by their number: every device counts from one. */
const runsIn = async (store: Store, runs: readonly KeptRun[]): Promise<number> => {
  const heads = await store.runs();
  const own = await Promise.all(
    heads.map(async (head) => selfOf({ head, actions: await store.actions(head.id) })),
  );
  const known = new Set(own);
  let order = Math.max(0, ...heads.map((head) => head.order));
  const fresh = [...runs]
    .sort((a, b) => a.head.order - b.head.order)
    .filter((run) => !known.has(selfOf(run)));
  for (const { head, actions, answers } of fresh) {
    order += 1;
    const id = `run-${order}`;
    await store.append(id, 0, actions);
    await store.putRun({ ...head, id, order });
    if (answers !== null && answers !== undefined) await store.put(keys.answers(id), answers);
  }
  return fresh.length;
};

const selfOf = ({ head: { id: _id, order: _order, ...head }, actions }: KeptRun): string =>
  digestOf({ head, actions });

type Merge = (here: unknown, there: unknown) => { readonly kept: unknown; readonly came: number };

/** Two lists of things with names of their own. */
const merged =
  <T>(
    read: (kept: unknown) => readonly T[],
    keep: (all: readonly T[]) => unknown,
    nameOf: (one: T) => string,
  ): Merge =>
  (here, there) => {
    const own = read(here);
    const names = new Set(own.map(nameOf));
    const fresh = read(there).filter((one) => !names.has(nameOf(one)));
    return { kept: keep([...own, ...fresh]), came: fresh.length };
  };

const takenMerge = merged(readTaken, keptTaken, ({ assignment }) => assignment.id);
const givenMerge = merged(readGiven, keptGiven, ({ id }) => id);

const ownJobsMerge = merged(
  readOwnJobs,
  (all) => all.slice(0, mostKept),
  (job) => levelOf(job)?.id ?? '',
);

/** Files taken in on a desk, each once. */
export const filesMerge = merged(
  readFileHeads,
  (all) => all,
  ({ key }) => key,
);

const remarksMerge: Merge = (here, there) => {
  const [own, others] = [readRemarks(here), readRemarks(there)];
  const fresh = Object.keys(others).filter((key) => !Object.hasOwn(own, key));
  return { kept: { ...others, ...own }, came: fresh.length };
};

/** The form holds one roof: the one that is here stays. */
const ownRoofIn = async (store: Store, { values }: Backup): Promise<number> => {
  const there = values[keys.ownRoof];
  if (there === undefined || (await store.get(keys.ownRoof)) !== undefined) return 0;
  await store.put(keys.ownRoof, there);
  return 1;
};

type List = { readonly key: string; readonly merge: Merge };

const listIn = async (store: Store, { values }: Backup, { key, merge }: List): Promise<number> => {
  let came = 0;
  await store.change(key, (here) => {
    const both = merge(here, values[key]);
    came = both.came;
    return came > 0 ? both.kept : here;
  });
  return came;
};

const filesIn = async (store: Store, { runs, values }: Backup): Promise<number> => {
  const own = readFileHeads(await store.get(keys.files));
  const fresh = readFileHeads(values[keys.files]).filter(
    ({ key }) =>
      !own.some((one) => one.key === key) &&
      typeof values[keys.fileText(key)] === 'string' &&
      digestOf(values[keys.fileText(key)]) === key,
  );
  for (const { key } of fresh) await store.put(keys.fileText(key), values[keys.fileText(key)]);
  return listIn(store, { runs, values: { [keys.files]: fresh } }, { key: keys.files, merge: filesMerge });
};

/** Only where nobody has said anything here yet. */
const settingsIn = async (store: Store, { values }: Backup): Promise<number> => {
  const there = readSettings(values[keys.settings]);
  if (!there || (await store.get(keys.settings)) !== undefined) return 0;
  await store.put(keys.settings, there);
  return 1;
};
