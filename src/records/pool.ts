import { complaint } from '../content/complaint';
import type { Outcome, Shelf } from './marked';

/** A file as it was taken in. Its key is the digest of its text. */
export type TakenFile = {
  readonly key: string;
  readonly name: string;
  readonly when: number;
  readonly text: string;
};

/** What goes to a worker: first its shelf, then one file after the other. */
export type ToWorker = { readonly shelf: Shelf } | { readonly text: string };

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
  const one = async (worker: Worker): Promise<void> => {
    worker.postMessage({ shelf } satisfies ToWorker);
    while (!stopped && next < files.length) {
      const at = next++;
      const { text } = files[at] as TakenFile;
      outcomes[at] = await asked(worker, { text });
      if (!stopped) told(++through);
    }
    worker.terminate();
  };
  let halt: () => void = () => undefined;
  const halted = new Promise<void>((done) => (halt = done));
  const stop = (): void => {
    stopped = true;
    workers.forEach((worker) => worker.terminate());
    halt();
  };
  const done = Promise.race([Promise.all(workers.map(one)), halted]).then(() => outcomes);
  return { done, stop };
};

const cores = (): number => Math.max(1, navigator.hardwareConcurrency || 1);

/** Workers that wait for files: opening one takes longer than marking one. */
const waiting: Worker[] = [];

/** Opens workers before there is anything to mark. Returns how to let those go that nobody needed. */
export const standBy = (): (() => void) => {
  while (waiting.length < cores()) waiting.push(freshWorker());
  return () => waiting.splice(0).forEach((worker) => worker.terminate());
};

const openWorker = (): Worker => waiting.pop() ?? freshWorker();

const freshWorker = (): Worker =>
  new Worker(new URL('./markWorker.ts', import.meta.url), { type: 'module', name: 'marks' });

const asked = (worker: Worker, message: ToWorker): Promise<Outcome> =>
  new Promise((done) => {
    worker.onmessage = ({ data }: MessageEvent<Outcome>) => done(data);
    worker.onerror = ({ message: said }) =>
      done({ ok: false, complaint: complaint('$', ['cannotReplay'], said) });
    worker.postMessage(message);
  });
