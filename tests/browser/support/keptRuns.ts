import type { Page } from 'playwright-core';
import type { RunHead } from '../../../src/session/store';

/** Puts heads of runs where the page keeps them; they are seen once the page is opened again. */
export const keepRuns = (page: Page, heads: readonly RunHead[]): Promise<void> =>
  page.evaluate(
    (all) =>
      new Promise<void>((done, failed) => {
        const open = indexedDB.open('tack-and-true', 1);
        open.onerror = () => failed(new Error('no database'));
        open.onsuccess = () => {
          const write = open.result.transaction('runs', 'readwrite');
          all.forEach((head) => write.objectStore('runs').put(head));
          write.oncomplete = () => done();
        };
      }),
    heads,
  );
