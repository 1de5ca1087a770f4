import { fork, type ChildProcess } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import type { Told } from './job';
import type { Handful } from './worker';

/** Jobs sent to a worker at once: few enough that little is lost when it is stopped. */
const handfulSize = 8;

type Work = { readonly workers: number; readonly onTold: (told: readonly Told[]) => void };

/** Plays everything, a worker process a core, in no set order; each answer is told as it comes. */
export const playAll = (jobs: Handful, { workers, onTold }: Work): Promise<void> => {
  let next = 0;
  const take = (): Handful => jobs.slice(next, (next += handfulSize));
  const one = (): Promise<void> =>
    new Promise((done, failed) => {
      const worker = started();
      const send = (): void => {
        const handful = take();
        if (handful.length > 0) worker.send(handful);
        else {
          worker.off('exit', gone);
          worker.kill();
          done();
        }
      };
      const gone = (code: number | null): void => {
        failed(new Error(`a worker ended with ${code ?? 'no code'}`));
      };
      worker.on('exit', gone);
      worker.on('message', (told: readonly Told[]) => {
        onTold(told);
        send();
      });
      send();
    });
  return Promise.all(Array.from({ length: workers }, one)).then(() => undefined);
};

/** With the loader named, so that it starts alike from the command and from a test. */
const started = (): ChildProcess =>
  fork(fileURLToPath(new URL('worker.ts', import.meta.url)), { execArgv: ['--import', 'tsx'] });
