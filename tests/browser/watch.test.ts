import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import type { Attempt } from '../../src/core/site/attempt';
import { launchBrowser, openPage } from './support/browser';
import { misfitsOn } from './support/fits';

/** The crew goes on only when asked to, a step or a whole job at a time, up to the debrief. */

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser(inject('browser'));
});
afterAll(() => browser.close());

const attemptOn = (page: Page): Promise<Attempt> => page.evaluate(() => window.__tt.attempt() as Attempt);

describe('Watch the crew', () => {
  it.each(['desk', 'phone', 'side'] as const)(
    'shows a part of a job to its end on a %s, by keys alone',
    async (size) => {
      const query = '?lang=es&theme=day&level=pump-house&seed=4&mode=watch&screen=site';
      const { page, errors, close } = await openPage(browser, inject('base') + query, { size });
      const before = (await attemptOn(page)).steps.length;
      await page.waitForTimeout(500);
      expect((await attemptOn(page)).steps.length).toBe(before);
      await page.keyboard.press('Enter');
      expect((await attemptOn(page)).steps.length).toBe(before + 1);
      expect(await misfitsOn(page)).toEqual([]);
      const job = page.locator('#watchJob');
      for (let jobs = 0; jobs < 40 && (await job.count()) > 0; jobs++) {
        await job.focus();
        await page.keyboard.press('Enter');
      }
      const { site, steps } = await attemptOn(page);
      expect(site.handedOver).toBe(true);
      expect(steps.every(({ outcome }) => outcome.ok)).toBe(true);
      expect(await page.locator('#toDebrief, .debrief').count()).toBeGreaterThan(0);
      expect(errors).toEqual([]);
      await close();
    },
    120_000,
  );
});
