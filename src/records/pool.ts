import { complaint } from '../content/complaint';
import type { Level } from '../core/level/level';
import type { Outcome, Shelf } from './marked';

/** A file as it was taken in. Its key is the digest of its text. */
export type TakenFile = {
  readonly key: string;
  readonly name: string;
  readonly when: number;
  readonly text: string;
};

/** What goes to a worker: a job to warm up with while it waits, then its shelf, then one file after the other. */
export type ToWorker = { readonly warmUp: Level } | { readonly shelf: Shelf } | { readonly text: string };

export type Marking = {
  /** Resolves with an outcome for each file that was marked, in the order of the files. */
  readonly done: Promise<readonly (Outcome | undefined)[]>;
  readonly stop: () => void;
};

type Work = {
  readonly shelf: Shelf;
  readonly files: readonly TakenFile[];
  /** How many are through. */
  readonly told: (through: number) => void;
};

/** Marks files side by side, a worker to a core. What one worker cannot finish is told as such and stops no other. */
export const markAll = ({ shelf, files, told }: Work, open: () => Worker = openWorker): Marking => {
  const workers = files.slice(0, cores()).map(open);
  const outcomes: (Outcome | undefined)[] = files.map(() => undefined);
  let next = 0;
  let through = 0;
  let stopped = false;
  const one = async (place: number): Promise<void> => {
    let worker = begin(workers[place] as Worker, shelf);
    while (!stopped && next < files.length) {
      const at = next++;
      const { outcome, lost } = await asked(worker, (files[at] as TakenFile).text);
      outcomes[at] = outcome;
      if (stopped) return;
      told(++through);
      if (!lost) continue;
      worker.terminate();
      worker = begin((workers[place] = open()), shelf);
    }
    if (!stopped) putBack(worker);
  };
  let halt: () => void = () => undefined;
  const halted = new Promise<void>((done) => (halt = done));
  const stop = (): void => {
    stopped = true;
    workers.forEach((worker) => worker.terminate());
    halt();
  };
  const done = Promise.race([Promise.all(workers.map((_, place) => one(place))), halted]).then(
    () => outcomes,
  );
  return { done, stop };
};

const cores = (): number => Math.max(1, navigator.hardwareConcurrency || 1);

/** Workers that wait for files: opening one takes longer than marking one. */
const waiting: Worker[] = [];
/** Whether somebody may hand in files soon. */
let wanted = false;

/** Opens workers before there is anything to mark, and has them warm up. Returns how to let those go that wait. */
export const standBy = (level: Level | undefined): (() => void) => {
  wanted = true;
  while (waiting.length < cores()) {
    const worker = freshWorker();
    // One that could not even be loaded would never answer.
    worker.onerror = () => leave(worker);
    if (level) worker.postMessage({ warmUp: level } satisfies ToWorker);
    waiting.push(worker);
  }
  return () => {
    wanted = false;
    waiting.splice(0).forEach((worker) => worker.terminate());
  };
};

const leave = (worker: Worker): void => {
  const at = waiting.indexOf(worker);
  if (at >= 0) waiting.splice(at, 1);
};

/** A worker that is through waits for the next files. */
const putBack = (worker: Worker): void => {
  if (wanted && waiting.length < cores()) waiting.push(worker);
  else worker.terminate();
};

const openWorker = (): Worker => waiting.pop() ?? freshWorker();

const freshWorker = (): Worker =>
  new Worker(new URL('./markWorker.ts', import.meta.url), { type: 'module', name: 'marks' });

const begin = (worker: Worker, shelf: Shelf): Worker => {
  worker.postMessage({ shelf } satisfies ToWorker);
  return worker;
};

/** What came of a file. A worker that failed as a whole may never answer again. */
type Answer = { readonly outcome: Outcome; readonly lost: boolean };

const asked = (worker: Worker, text: string): Promise<Answer> =>
  new Promise((done) => {
    worker.onmessage = ({ data }: MessageEvent<Outcome>) => done({ outcome: data, lost: false });
    worker.onerror = ({ message: said }) => {
      const outcome: Outcome = { ok: false, complaint: complaint('$', ['cannotReplay'], ['ownError', said]) };
      done({ outcome, lost: true });
    };
    worker.postMessage({ text } satisfies ToWorker);
  });
