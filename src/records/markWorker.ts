import { complaint } from '../content/complaint';
import { markText, type Outcome, type Shelf } from './marked';
import type { ToWorker } from './pool';
import { warmUp } from './warmUp';

/** Marks files away from the page, so that the page stays awake. */

let shelf: Shelf = { levels: [], assignments: [] };
let called = false;

addEventListener('message', ({ data }: MessageEvent<ToWorker>) => {
  if ('warmUp' in data) return warmUp(data.warmUp, () => called);
  called = true;
  if ('shelf' in data) shelf = data.shelf;
  else postMessage(safely(data.text));
});

/** Whatever a file may hold, the next one gets its turn. */
const safely = (text: string): Outcome => {
  try {
    return markText(shelf, text);
  } catch (error) {
    return { ok: false, complaint: complaint('$', ['cannotReplay'], ['ownError', String(error)]) };
  }
};
