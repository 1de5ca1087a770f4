import type { Level } from '../level/level';
import type { Action } from './action';
import type { SiteEvent } from './event';
import type { SiteState } from './state';

export type Mode = 'watch' | 'list' | 'nudge' | 'own' | 'check-off';

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
};
