import 'fake-indexeddb/auto';
import { beforeEach, describe, expect, it } from 'vitest';
import { attemptDigest, siteDigest } from '../../src/content/canonical';
import type { Action } from '../../src/core/site/action';
import { idbStore } from '../../src/session/idbStore';
import { beginRun, resumeRun } from '../../src/session/session';
import { memoryStore, type Store } from '../../src/session/store';
import { levelOf } from '../site/levels';

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

it('goes on when the device refuses to keep, and says so', async () => {
  const full: Store = { ...memoryStore(), append: () => Promise.reject(new Error('QuotaExceededError')) };
  const run = await beginRun(full, { level, seed: 1, mode: 'own' });
  expect(run.do(acts[0] as Action).ok).toBe(true);
  await run.settled();
  expect(run.keeps.value).toBe(false);
  expect(run.attempt.value.steps.length).toBe(1);
});

it('takes nothing back in a Check-off', async () => {
  const run = await beginRun(memoryStore(), { level, seed: 1, mode: 'check-off' });
  run.do(acts[0] as Action);
  expect(run.undo()).toEqual({ ok: false, why: 'noUndoInCheckOff' });
});
