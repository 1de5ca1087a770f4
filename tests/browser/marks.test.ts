import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { modes } from '../../src/core/level/mode';
import { launchBrowser, openPage } from './support/browser';

/** Crow's feet on the drawing say where the list goes on: with the list, and in no other way of playing. */

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser(inject('browser'));
});
afterAll(() => browser.close());

describe.each(modes)('on the drawing in mode %s', (mode) => {
  it(`there are ${mode === 'list' ? 'marks, on the work' : 'no marks'}`, async () => {
    const query = `?lang=en&theme=day&level=garden-hut&seed=3&mode=${mode}&screen=site`;
    const { page, errors, close } = await openPage(browser, inject('base') + query);
    const feet = page.locator('.crowsFeet g');
    if (mode === 'list') {
      await feet.first().waitFor();
      const stage = await page.locator('.stage').boundingBox();
      for (const foot of await feet.all()) {
        const box = await foot.boundingBox();
        expect(box && stage && box.x > stage.x && box.y > stage.y).toBe(true);
        expect(box && stage && box.x + box.width < stage.x + stage.width).toBe(true);
      }
      expect(await feet.count()).toBeLessThanOrEqual(3);
    } else {
      await page.waitForTimeout(900);
      expect(await feet.count()).toBe(0);
    }
    expect(errors).toEqual([]);
    await close();
  }, 60_000);
});
