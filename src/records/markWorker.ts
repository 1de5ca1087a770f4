import { complaint } from '../content/complaint';
import { markText, type Outcome, type Shelf } from './marked';
import type { ToWorker } from './pool';

/** Marks files away from the page, so that the page stays awake. */

let shelf: Shelf = { levels: [], assignments: [] };

addEventListener('message', ({ data }: MessageEvent<ToWorker>) => {
  if ('shelf' in data) shelf = data.shelf;
  else postMessage(safely(data.text));
});

/** Whatever a file may hold, the next one gets its turn. */
const safely = (text: string): Outcome => {
  try {
    return markText(shelf, text);
  } catch (error) {
    return { ok: false, complaint: complaint('$', ['cannotReplay'], String(error)) };
  }
};
