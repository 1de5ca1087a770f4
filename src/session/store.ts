import type { Action } from '../core/site/action';
import type { Mode } from '../core/level/mode';

/** One run as this device keeps it: how it began; its acts are kept one by one as they happen. */
export type RunHead = {
  readonly id: string;
  readonly level: string;
  readonly levelDigest: string;
  readonly rules: number;
  readonly seed: number;
  readonly mode: Mode;
  readonly state: 'open' | 'done';
  /** Rises with every run begun: the newest has the highest. */
  readonly order: number;
  /** Begun from the middle of another run. */
  readonly branch?: true;
  readonly total?: number;
  /** When it was handed over or came down, milliseconds since 1970. */
  readonly ended?: number;
  /** Done and sound; a part of a job also to standard. */
  readonly framed?: boolean;
  readonly pass?: boolean;
};

/** Where runs and settings are kept. Every call may fail: the device may be full, or may refuse. */
export type Store = {
  readonly runs: () => Promise<readonly RunHead[]>;
  readonly putRun: (head: RunHead) => Promise<void>;
  readonly actions: (run: string) => Promise<readonly Action[]>;
  readonly append: (run: string, step: number, action: Action) => Promise<void>;
  readonly get: (key: string) => Promise<unknown>;
  readonly put: (key: string, value: unknown) => Promise<void>;
  readonly erase: () => Promise<void>;
};

/** Keeps nothing past the page: for tests, and for devices that refuse to keep. */
export const memoryStore = (): Store => {
  const heads = new Map<string, RunHead>();
  const steps = new Map<string, Action[]>();
  const values = new Map<string, unknown>();
  return {
    runs: async () => [...heads.values()],
    putRun: async (head) => void heads.set(head.id, head),
    actions: async (run) => steps.get(run) ?? [],
    append: async (run, step, action) => {
      const list = steps.get(run) ?? [];
      list[step] = action;
      steps.set(run, list);
    },
    get: async (key) => values.get(key),
    put: async (key, value) => void values.set(key, value),
    erase: async () => [heads, steps, values].forEach((map) => map.clear()),
  };
};
