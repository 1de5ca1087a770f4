import { describe, expect, it } from 'vitest';
import { backupText, readBackup } from '../../src/content/backupFile';
import { digestOf } from '../../src/content/canonical';
import { keptGiven, keptTaken, readGiven, readRemarks, readTaken } from '../../src/content/classSchema';
import { backupOf, bringIn, keys } from '../../src/records/backup';
import { beginRun } from '../../src/session/session';
import { memoryStore, type Store } from '../../src/session/store';
import { fileOf } from '../../src/content/draft/roofDraft';
import { sampleOf } from '../../src/content/draft/samples';
import { levelOf } from '../site/levels';

/** What one device keeps comes whole to another, and never twice. */

const level = levelOf('pump-house');
const assignment = { id: 'week3', levels: [level.id], mode: 'own' } as const;

const lived = async (): Promise<Store> => {
  const store = memoryStore();
  const handed = { assignment: 'week3', learner: 'R7' };
  const session = await beginRun(store, { level, seed: 3, mode: 'own', handed });
  session.do({ type: 'handOver' });
  await session.settled();
  await store.put(keys.answers(session.id), { intend: 'a', happened: 'b', next: 'c' });
  await store.put(keys.taken, keptTaken([{ assignment, learner: 'R7' }]));
  await store.put(keys.given, keptGiven([assignment]));
  await store.put(keys.remarks, { 'week3 R7': { rating: 3, note: 'steady' } });
  const own = fileOf(sampleOf('gable'));
  await store.put(keys.ownRoof, sampleOf('gable'));
  await store.put(keys.ownJobs, [{ file: own, par: { posts: 750 } }]);
  const text = '{"a":1}';
  await store.put(keys.files, [{ key: digestOf(text), name: 'r7.json', when: 5 }]);
  await store.put(keys.fileText(digestOf(text)), text);
  return store;
};

const through = async (from: Store) => {
  const read = readBackup(backupText(await backupOf(from)));
  if (!read.ok) throw new Error(JSON.stringify(read.complaints));
  return read.value;
};

describe('a backup', () => {
  it('brings a device that keeps nothing to the same bytes', async () => {
    const from = await lived();
    const to = memoryStore();
    expect(await bringIn(to, await through(from))).toBe(7);
    expect(backupText(await backupOf(to))).toBe(backupText(await backupOf(from)));
  });

  it('brings nothing in twice, and changes nothing of what is there', async () => {
    const store = await lived();
    const before = backupText(await backupOf(store));
    expect(await bringIn(store, await through(store))).toBe(0);
    expect(backupText(await backupOf(store))).toBe(before);
  });

  it('gives a run that comes in a number of its own', async () => {
    const to = memoryStore();
    await beginRun(to, { level, seed: 99, mode: 'own' });
    await bringIn(to, await through(await lived()));
    const heads = await to.runs();
    expect(heads.map(({ id }) => id)).toEqual(['run-1', 'run-2']);
    expect(heads.map(({ seed }) => seed)).toEqual([99, 3]);
    expect(await to.get(keys.answers('run-2'))).toMatchObject({ intend: 'a' });
    expect((await to.actions('run-2')).length).toBe(1);
  });

  it('is refused whole when a character of it is changed', async () => {
    const text = backupText(await backupOf(await lived()));
    for (let at = 0; at < text.length; at += 7) {
      const other = text[at] === '7' ? '8' : '7';
      expect(readBackup(text.slice(0, at) + other + text.slice(at + 1)).ok, `at ${at}`).toBe(false);
    }
  });

  it.each([
    ['a newer version', { format: 'tack-and-true/backup@2' }, 'format'],
    ['a run that is none', { runs: [{ head: {}, actions: [], answers: null }] }, 'runs.0'],
    [
      'answers that are no text',
      { runs: [{ head: {}, actions: [], answers: { next: 1 } }] },
      'runs.0.answers.next',
    ],
  ])('names the place where it has %s', (_what, change, path) => {
    const rest = { format: 'tack-and-true/backup@1', runs: [], values: {}, ...change };
    const read = readBackup(JSON.stringify({ ...rest, digest: digestOf(rest) }));
    expect(read.ok ? [] : read.complaints.map((one) => one.path)).toEqual([path]);
  });
});

describe('what a store kept of classes', () => {
  it.each([undefined, null, 7, 'x', {}, [1, null, { assignment: 5 }], ['{'], { a: { note: 5 } }])(
    'from %j is nothing rather than something wrong',
    (kept) => {
      expect(readTaken(kept)).toEqual([]);
      expect(readGiven(kept)).toEqual([]);
      expect(readRemarks(kept)).toEqual({});
    },
  );
});
