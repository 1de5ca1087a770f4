import type { Level } from '../level/level';
import type { Mode } from '../level/mode';
import type { Action } from './action';
import type { SiteEvent } from './event';
import type { SiteState } from './state';

/** "No" is a value with a reason. `stop` is a danger to a person: nothing happens but the stop itself, which is kept. */
export type Refusal = { readonly ok: false; readonly why: RefusalCode; readonly stop?: boolean };
export type Decision = { readonly ok: true; readonly events: readonly SiteEvent[] } | Refusal;
export type RefusalCode = string;

export type Step = {
  readonly action: Action;
  readonly outcome: Decision;
  /** Taken back in practice: told again without it, but kept, with its minutes, in the record. */
  readonly undone?: boolean;
};

/** One learner's go at one level. Everything else is recomputed from it. */
export type Attempt = {
  readonly level: Level;
  readonly seed: number;
  readonly mode: Mode;
  readonly steps: readonly Step[];
  readonly site: SiteState;
  /** What the crew had done before the learner came: so many of the steps, and the site as it stood then. */
  readonly found?: { readonly steps: number; readonly site: SiteState };
};
