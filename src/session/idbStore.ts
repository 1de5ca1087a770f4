import { openDB, type IDBPDatabase } from 'idb';
import { readAct, readHead } from '../content/runSchema';
import type { Action } from '../core/site/action';
import { holdOn, type Locks } from './hold';
import type { Store } from './store';

const name = 'tack-and-true';

/** Some browsers never answer when they will not keep anything: after this long they are taken at that, ms. Ours. */
const patience = 4000;

/** Keeps runs in IndexedDB: a head for each, and a journal of acts that is only ever added to. Fails where it may not. */
export const idbStore = async (locks?: Locks): Promise<Store> => {
  const opening = openDB(name, 1, {
    upgrade: (fresh) => {
      fresh.createObjectStore('runs', { keyPath: 'id' });
      fresh.createObjectStore('steps', { keyPath: ['run', 'step'] });
      fresh.createObjectStore('values');
    },
  });
  return storeOn(await answered(opening), locks);
};

const answered = <T>(opening: Promise<T>): Promise<T> => {
  let late: ReturnType<typeof setTimeout> | undefined;
  const silence = new Promise<never>((_, failed) => {
    late = setTimeout(() => failed(new Error('the device does not answer')), patience);
  });
  return Promise.race([opening, silence]).finally(() => clearTimeout(late));
};

const stepsFrom = (run: string, step: number): IDBKeyRange => IDBKeyRange.bound([run, step], [run, Infinity]);

const storeOn = (db: IDBPDatabase, locks: Locks | undefined): Store => ({
  lasts: true,
  runs: async () => ((await db.getAll('runs')) as unknown[]).flatMap((kept) => readHead(kept) ?? []),
  putRun: async (head) => void (await db.put('runs', head)),
  actions: async (run) => inOrder((await db.getAll('steps', stepsFrom(run, 0))) as unknown[]),
  append: (run, step, actions) => appendTo(db, { run, step }, actions),
  get: (key) => db.get('values', key) as Promise<unknown>,
  put: async (key, value) => void (await db.put('values', value, key)),
  change: (key, next) => changeIn(db, key, next),
  hold: holdOn(locks),
  erase: async () => {
    await Promise.all(['runs', 'steps', 'values'].map((store) => db.clear(store)));
  },
});

/** All of them or none. Strict: an act is on the disk before it counts as kept, should the battery go. */
const appendTo = async (
  db: IDBPDatabase,
  { run, step }: { readonly run: string; readonly step: number },
  actions: readonly Action[],
): Promise<void> => {
  const write = db.transaction('steps', 'readwrite', { durability: 'strict' });
  const asked: Promise<unknown>[] = [write.store.delete(stepsFrom(run, step))];
  actions.forEach((action, i) => asked.push(write.store.put({ run, step: step + i, action })));
  await Promise.all([...asked, write.done]);
};

const changeIn = async (db: IDBPDatabase, key: string, next: (kept: unknown) => unknown): Promise<void> => {
  const write = db.transaction('values', 'readwrite');
  const put = async (): Promise<void> => {
    const kept: unknown = await write.store.get(key);
    const value = next(kept);
    if (value !== kept) await write.store.put(value, key);
  };
  await Promise.all([put(), write.done]);
};

/** A journal with a hole is good up to the hole; what cannot be read is a hole. */
const inOrder = (kept: readonly unknown[]): readonly Action[] => {
  const acts: Action[] = [];
  for (const one of kept) {
    const { step, action } = one as { readonly step: unknown; readonly action: unknown };
    const act = step === acts.length ? readAct(action) : undefined;
    if (!act) break;
    acts.push(act);
  }
  return acts;
};
