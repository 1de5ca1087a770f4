import type { SiteEvent } from './event';
import type { Decision, Refusal, RefusalCode } from './attempt';
import type { DangerId } from './dangers/danger';

/** It happens: these events, in order. */
export const happen = (...events: readonly SiteEvent[]): Decision => ({ ok: true, events });

/** It cannot happen, for a physical reason. */
export const refuse = (why: RefusalCode): Refusal => ({ ok: false, why });

/** It would hurt somebody: it is stopped, and the stop stays in the record. */
export const stop = (danger: DangerId): Refusal => ({ ok: false, why: danger, stop: true });
