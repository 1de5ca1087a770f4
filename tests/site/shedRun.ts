import { readFileSync } from 'node:fs';
import { play } from '../../src/core/hands/play';
import type { Attempt } from '../../src/core/site/attempt';
import { begin, take } from '../../src/core/site/take';
import { jobOn } from './beams';

/** A shed on a ledger, as somebody would type it, and the expert's run on it. */

const file = JSON.parse(readFileSync('levels/examples/shed.json', 'utf8')) as Readonly<
  Record<string, unknown>
>;

export const shedJob = jobOn(file);

export const shedDone: Attempt = play(shedJob, 'expert', { seed: 1, mode: 'own' });

/** The same run after its first acts. */
export const shedAfter = (acts: number): Attempt =>
  shedDone.steps
    .slice(0, acts)
    .reduce((attempt, { action }) => take(attempt, action), begin(shedJob, 1, 'own'));
