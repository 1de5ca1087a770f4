import type { RunHead } from '../content/runSchema';
import type { Action } from '../core/site/action';

export type { RunHead };

/** Where runs and settings are kept. Every call may fail: the device may be full, or may refuse. */
export type Store = {
  /** False where nothing outlives the page. */
  readonly lasts: boolean;
  readonly runs: () => Promise<readonly RunHead[]>;
  readonly putRun: (head: RunHead) => Promise<void>;
  /** The acts of a run up to the first that is missing or cannot be read. */
  readonly actions: (run: string) => Promise<readonly Action[]>;
  /** Keeps acts of a run, the first of them at `step`, counted from 0. Nothing after them stays. */
  readonly append: (run: string, step: number, actions: readonly Action[]) => Promise<void>;
  readonly get: (key: string) => Promise<unknown>;
  readonly put: (key: string, value: unknown) => Promise<void>;
  /** Puts what `next` makes of what is kept. Nothing comes between, not even another tab: no list loses anything. */
  readonly change: (key: string, next: (kept: unknown) => unknown) => Promise<void>;
  /** Takes a run for this page, in place of the one it had; false while another page works on it. */
  readonly hold: (run: string) => Promise<boolean>;
  readonly erase: () => Promise<void>;
};

/** Keeps nothing past the page: for tests, and for devices that refuse to keep. */
export const memoryStore = (): Store => {
  const heads = new Map<string, RunHead>();
  const steps = new Map<string, readonly Action[]>();
  const values = new Map<string, unknown>();
  return {
    lasts: false,
    runs: async () => [...heads.values()],
    putRun: async (head) => void heads.set(head.id, head),
    actions: async (run) => steps.get(run) ?? [],
    append: async (run, step, actions) =>
      void steps.set(run, [...(steps.get(run) ?? []).slice(0, step), ...actions]),
    get: async (key) => values.get(key),
    put: async (key, value) => void values.set(key, value),
    change: async (key, next) => void values.set(key, next(values.get(key))),
    hold: async () => true,
    erase: async () => [heads, steps, values].forEach((map) => map.clear()),
  };
};
