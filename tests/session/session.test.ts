import 'fake-indexeddb/auto';
import { openDB } from 'idb';
import { beforeEach, describe, expect, it } from 'vitest';
import { attemptDigest, siteDigest } from '../../src/content/canonical';
import type { Action } from '../../src/core/site/action';
import { idbStore } from '../../src/session/idbStore';
import { beginRun, reopenRun, resumeRun as resumed, stopped } from '../../src/session/session';
import { memoryStore, type RunHead, type Store } from '../../src/session/store';
import { levelOf } from '../site/levels';

/** No other page works on these runs. */
const resumeRun = async (...asked: Parameters<typeof resumed>) => {
  const session = await resumed(...asked);
  if (session === 'elsewhere') throw new Error('held by another page');
  return session;
};

const level = levelOf('garden-hut');
const acts: readonly Action[] = [
  { type: 'brace', kind: 'wall', from: 'street', to: 'ground' },
  { type: 'setTie', kind: 'joist', station: 1 },
  { type: 'carryOn', like: [1, 1], to: 9 },
  { type: 'makeReady', what: 'platform', at: 'site' },
];

describe.each([
  ['memory', async () => memoryStore()],
  ['IndexedDB', idbStore],
])('a run kept in %s', (_, open) => {
  let store: Store;
  beforeEach(async () => {
    store = await open();
    await store.erase();
  });

  it('comes back at the same act with the same digests', async () => {
    const first = await beginRun(store, { level, seed: 4, mode: 'own' });
    acts.forEach((act) => first.do(act));
    first.undo();
    await first.settled();
    const again = await resumeRun(store, [level]);
    expect(again?.attempt.value.steps.length).toBe(5);
    expect(again && attemptDigest(again.attempt.value)).toBe(attemptDigest(first.attempt.value));
    expect(again && siteDigest(again.attempt.value.site)).toBe(siteDigest(first.attempt.value.site));
  });

  it('still says for whom it was made, which a practice branch of it does not', async () => {
    const handed = { assignment: 'week3', learner: 'R7' };
    const run = await beginRun(store, { level, seed: 4, mode: 'own', handed });
    await run.settled();
    expect((await resumeRun(store, [level]))?.handed).toEqual(handed);
    expect((await reopenRun({ store, levels: [level] }, run.id))?.handed).toEqual(handed);
    expect((await beginRun(store, { level, seed: 4, mode: 'own' }, acts)).handed).toEqual({});
  });

  it('is not resumed once it was handed over, nor on a level that has changed', async () => {
    const run = await beginRun(store, { level, seed: 4, mode: 'own' });
    run.do(acts[0] as Action);
    await run.settled();
    expect(await resumeRun(store, [{ ...level, version: 2 }])).toBeUndefined();
    run.do({ type: 'handOver' });
    await run.settled();
    expect(await resumeRun(store, [level])).toBeUndefined();
  });

  it('takes the newest of two open runs', async () => {
    await beginRun(store, { level, seed: 1, mode: 'own' });
    await beginRun(store, { level, seed: 2, mode: 'list' });
    expect((await resumeRun(store, [level]))?.attempt.value.seed).toBe(2);
  });
});

it('a fresh run has a number that no other tab is on', async () => {
  const inner = memoryStore();
  const run = await beginRun(
    { ...inner, hold: async (id) => id !== 'run-1' },
    { level, seed: 1, mode: 'own' },
  );
  expect(run.id).toBe('run-2');
  expect((await inner.runs()).map(({ id, order }) => [id, order])).toEqual([['run-2', 2]]);
});

/** A store that refuses to keep acts for as long as it is full. */
const filling = (): { readonly store: Store; full: boolean } => {
  const inner = memoryStore();
  const device = {
    full: false,
    store: {
      ...inner,
      lasts: true,
      append: (...what: Parameters<Store['append']>) =>
        device.full ? Promise.reject(new Error('QuotaExceededError')) : inner.append(...what),
    },
  };
  return device;
};

describe('a device that is full', () => {
  it('does not stop the run, and is told', async () => {
    const device = filling();
    const run = await beginRun(device.store, { level, seed: 1, mode: 'own' });
    expect(run.keeps.value).toBe(true);
    device.full = true;
    expect(run.do(acts[0] as Action).ok).toBe(true);
    await run.settled();
    expect(run.keeps.value).toBe(false);
    expect(run.attempt.value.steps.length).toBe(1);
  });

  it('gets all that it missed once it has room again', async () => {
    const device = filling();
    device.full = true;
    const run = await beginRun(device.store, { level, seed: 1, mode: 'own' });
    expect(run.keeps.value).toBe(false);
    run.do(acts[0] as Action);
    run.do(acts[1] as Action);
    await run.settled();
    expect(await device.store.runs()).toEqual([]);
    device.full = false;
    run.do(acts[2] as Action);
    await run.settled();
    expect(run.keeps.value).toBe(true);
    expect(await device.store.actions(run.id)).toEqual(acts.slice(0, 3));
    expect((await resumeRun(device.store, [level]))?.attempt.value.steps.length).toBe(3);
  });
});

it('says from the start that a device which keeps nothing keeps nothing', async () => {
  const run = await beginRun(memoryStore(), { level, seed: 1, mode: 'own' });
  expect(run.keeps.value).toBe(false);
  run.do(acts[0] as Action);
  await run.settled();
  expect(run.keeps.value).toBe(false);
});

describe('what is left of a run', () => {
  const put = async (store: string, value: unknown): Promise<void> => {
    const db = await openDB('tack-and-true', 1);
    await db.put(store, value);
    db.close();
  };

  it('in a part of a job goes on after what the crew had done', async () => {
    const part = levelOf('seed-store');
    const store = await idbStore();
    await store.erase();
    const run = await beginRun(store, { level: part, seed: 3, mode: 'own' });
    const before = run.attempt.value.steps.length;
    expect(before).toBeGreaterThan(0);
    run.do({ type: 'stand', who: 'lead', where: 'clear' });
    await run.settled();
    const again = await resumeRun(store, [part]);
    expect(again?.attempt.value.steps.length).toBe(before + 1);
    expect(again && siteDigest(again.attempt.value.site)).toBe(siteDigest(run.attempt.value.site));
  });

  it('is good up to the act that is junk, and goes on from there without the rest', async () => {
    const store = await idbStore();
    await store.erase();
    const run = await beginRun(store, { level, seed: 4, mode: 'own' });
    acts.forEach((act) => run.do(act));
    await run.settled();
    await put('steps', { run: run.id, step: 2, action: { type: 'dance' } });
    const again = await resumeRun(store, [level]);
    expect(again?.attempt.value.steps.length).toBe(2);
    again?.do({ type: 'undo', step: 1 });
    await again?.settled();
    expect(await store.actions(run.id)).toEqual([acts[0], acts[1], { type: 'undo', step: 1 }]);
  });

  it('is passed over where it is no run at all', async () => {
    const store = await idbStore();
    await store.erase();
    await put('runs', { id: 'run-1', order: 'first' });
    await put('runs', { id: 'run-2', level: 7, state: 'open' });
    expect(await store.runs()).toEqual([]);
    expect(await resumeRun(store, [level])).toBeUndefined();
    const fresh = await beginRun(store, { level, seed: 4, mode: 'own' });
    expect((await store.runs()).map(({ id }) => id)).toEqual([fresh.id]);
  });

  it.each([
    ['rules', { rules: 2 }],
    ['changed', { levelDigest: '0' }],
    ['gone', { level: 'old-mill' }],
  ] as const)('cannot go on, and says why: %s', async (why, part) => {
    const store = memoryStore();
    const run = await beginRun(store, { level, seed: 4, mode: 'own' });
    const [head] = await store.runs();
    expect(head && stopped(head, [level])).toBeUndefined();
    await store.putRun({ ...(head as RunHead), ...part });
    const [other] = await store.runs();
    expect(other && stopped(other, [level])).toBe(why);
    expect(await resumeRun(store, [level])).toBeUndefined();
    expect(run.id).toBe(other?.id);
  });
});

it('takes nothing back in a Check-off', async () => {
  const run = await beginRun(memoryStore(), { level, seed: 1, mode: 'check-off' });
  run.do(acts[0] as Action);
  expect(run.undo()).toEqual({ ok: false, why: 'noUndoInCheckOff' });
});
