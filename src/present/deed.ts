import type { Step } from '../core/site/attempt';
import { captionFor } from './caption';
import type { Messages } from './words/messages';
import type { Units } from './words/numbers';

/** What was done at a step, as it is told afterwards. What came of it is told by what stands then; here it is the deed itself. */
export const deedText = (words: Messages, { action, outcome }: Step, units: Units): string =>
  captionFor(words, { action, outcome: outcome.ok ? { ok: true, events: [] } : outcome }, units).text;
