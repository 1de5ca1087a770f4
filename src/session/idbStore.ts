import { openDB, type IDBPDatabase } from 'idb';
import type { Action } from '../core/site/action';
import type { RunHead, Store } from './store';

const name = 'tack-and-true';

/** Keeps runs in IndexedDB: a head for each, and a journal of acts that is only ever added to. */
export const idbStore = async (): Promise<Store> => {
  const db = await openDB(name, 1, {
    upgrade: (fresh) => {
      fresh.createObjectStore('runs', { keyPath: 'id' });
      fresh.createObjectStore('steps', { keyPath: ['run', 'step'] });
      fresh.createObjectStore('values');
    },
  });
  return storeOn(db);
};

type Kept = { readonly run: string; readonly step: number; readonly action: Action };

const storeOn = (db: IDBPDatabase): Store => ({
  runs: () => db.getAll('runs') as Promise<RunHead[]>,
  putRun: async (head) => void (await db.put('runs', head)),
  actions: async (run) =>
    inOrder((await db.getAll('steps', IDBKeyRange.bound([run, 0], [run, Infinity]))) as Kept[]),
  append: async (run, step, action) => void (await db.put('steps', { run, step, action } satisfies Kept)),
  get: (key) => db.get('values', key) as Promise<unknown>,
  put: async (key, value) => void (await db.put('values', value, key)),
  erase: async () => {
    await Promise.all(['runs', 'steps', 'values'].map((store) => db.clear(store)));
  },
});

/** A journal with a hole is good up to the hole. */
const inOrder = (kept: readonly Kept[]): readonly Action[] => {
  const hole = kept.findIndex(({ step }, i) => step !== i);
  return (hole < 0 ? kept : kept.slice(0, hole)).map(({ action }) => action);
};
