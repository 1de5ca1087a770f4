import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { play } from '../../src/core/hands/play';
import type { Action } from '../../src/core/site/action';
import { begin, take } from '../../src/core/site/take';
import { levelOf } from '../site/levels';
import { actByKeyboard, actByPointer, actByTouch, findAct } from './drive';
import { launchBrowser, openPage } from './support/browser';

/** What came down stays in sight until the learner goes on to the debrief. */

const seed = 7;
const level = levelOf('garden-hut');

/** Until the ridge lies on its posts, nothing nailed to it yet. */
const begun = (): readonly Action[] => {
  const acts: Action[] = [];
  let attempt = begin(level, seed, 'own');
  for (const { action } of play(level, 'expert', { seed, mode: 'own', wanted: { hang: 'posts' } }).steps) {
    acts.push(action);
    attempt = take(attempt, action);
    if (attempt.site.ridge?.on === 'posts' && !attempt.site.sling) break;
  }
  return acts;
};

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser(inject('browser'));
});
afterAll(() => browser.close());

describe('a ridge whose post is taken out', () => {
  it.each([
    ['pointer', actByPointer, 'desk'],
    ['touch', actByTouch, 'phone'],
    ['keyboard', actByKeyboard, 'desk'],
  ] as const)(
    'comes down by %s, is told and seen on site, and leads on to the debrief',
    async (by, how, size) => {
      const acts = begun();
      const query = `?lang=en&theme=day&level=${level.id}&seed=${seed}&mode=own&screen=site`;
      const { page, errors, close } = await openPage(browser, inject('base') + query, { size });
      await page.evaluate((all) => all.forEach((one) => window.__tt.do(one)), acts);
      const attempt = acts.reduce(take, begin(level, seed, 'own'));
      expect(attempt.site.down).toBeUndefined();
      const found = findAct(attempt, { type: 'takeOut', member: 'post.1' });
      if (!found) throw new Error('no tool takes out a post');
      await how(page, found);
      const way = page.locator('#toDebrief');
      await way.waitFor();
      // The run has ended: nothing is taken back, and no joint is as it was.
      expect(await page.locator('#undo').count()).toBe(0);
      expect(await page.locator('[data-view=joint]').count()).toBe(0);
      expect(await page.locator('main').innerText()).toContain('The frame came down.');
      expect(await page.evaluate(() => document.activeElement?.id)).toBe('toDebrief');
      if (by === 'keyboard') await page.keyboard.press('Enter');
      else await way.click();
      await page.locator('.debrief').waitFor();
      expect(errors).toEqual([]);
      await close();
    },
    120_000,
  );
});
