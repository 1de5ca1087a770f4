import type { Read } from '../content/complaint';
import { ownJob } from '../content/ownJob';
import type { Level } from '../core/level/level';
import type { JobNews } from './jobWorker';
import type { Par, Tell } from './provedJob';
import type { Store } from './store';

/** Jobs on own roofs, kept as the files they were made of with what a clean run took. */
export type KeptJob = { readonly file: unknown; readonly par: Par };

export const ownJobsKept = 'own jobs';
/** More are not kept: the oldest goes. */
export const mostKept = 12;

export const loadOwnJobs = async (store: Store): Promise<readonly KeptJob[]> => {
  return readOwnJobs(await store.get(ownJobsKept).catch(() => undefined));
};

/** Those that are still jobs. */
export const readOwnJobs = (value: unknown): readonly KeptJob[] => {
  if (!Array.isArray(value)) return [];
  return value.filter(
    (one: unknown): one is KeptJob =>
      typeof one === 'object' && one !== null && levelOf(one as KeptJob) !== undefined,
  );
};

/** First on the list, once: the same roof again is the same job. */
export const keepOwnJob = (store: Store, job: KeptJob): Promise<void> =>
  store.change(ownJobsKept, (kept) => [job, ...without(kept, levelOf(job)?.id)].slice(0, mostKept));

export const dropOwnJob = (store: Store, id: string): Promise<void> =>
  store.change(ownJobsKept, (kept) => without(kept, id));

const without = (kept: unknown, id: string | undefined): readonly KeptJob[] =>
  readOwnJobs(kept).filter((job) => levelOf(job)?.id !== id);

/** Undefined where the file is none any more. Read once for each that is kept. */
export const levelOf = (job: KeptJob): Level | undefined => {
  const known = read.get(job);
  if (known) return known;
  const made = ownJob(job.file, job.par);
  if (made.ok) read.set(job, made.value);
  return made.ok ? made.value : undefined;
};
const read = new WeakMap<KeptJob, Level>();

/** Runs it in a worker. `stop` ends it; nothing is told after that. */
export const tryJob = (
  file: unknown,
  tell: Tell,
): { readonly done: Promise<Read<Par>>; readonly stop: () => void } => {
  const worker = new Worker(new URL('./jobWorker.ts', import.meta.url), { type: 'module' });
  const done = new Promise<Read<Par>>((resolve, reject) => {
    worker.addEventListener('message', ({ data }: MessageEvent<JobNews>) =>
      'done' in data ? resolve(data.done) : tell(data.share),
    );
    worker.addEventListener('error', () => reject(new Error('the worker failed')));
    worker.postMessage(file);
  }).finally(() => worker.terminate());
  return { done, stop: () => worker.terminate() };
};
