import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { bundled, runs, story } from '../engines/runs';
import { tellRun } from '../engines/story';
import { launchBrowser } from './support/browser';

/** The browser tells runs to the same bits as the engine that tests run in. */

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser(inject('browser'));
});
afterAll(() => browser.close());

describe('the browser', () => {
  it('tells ten runs to the same digest', async () => {
    const page = await browser.newPage();
    await page.addScriptTag({ content: await bundled() });
    for (const run of runs) {
      const [level, seed, acts] = story(run);
      const there = await page.evaluate(
        ([a, b, c]) => (globalThis as unknown as { tellRun: typeof tellRun }).tellRun(a, b, c),
        [level, seed, acts] as const,
      );
      expect(there, `${run.hand} on the ${run.id}`).toBe(tellRun(level, seed, acts));
    }
    await page.close();
  });
});
