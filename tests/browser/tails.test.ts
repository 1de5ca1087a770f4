import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { siteDigest } from '../../src/content/canonical';
import { play } from '../../src/core/hands/play';
import { scoreOf } from '../../src/core/score/scored';
import type { Action } from '../../src/core/site/action';
import { begin, take } from '../../src/core/site/take';
import { catalogues } from '../../src/present/words/messages';
import { levelOf } from '../site/levels';
import { actByKeyboard, actByPointer, actByTouch, findAct } from './drive';
import { launchBrowser, openPage } from './support/browser';

/** The end of the shelter, tails left long: from the first tail line to the debrief, rightly and wrongly. */

const seed = 4;
const level = levelOf('ferry-shelter');
const isLine = (act: Action): boolean => act.type === 'line' && act.kind === 'tail';

const all = play(level, 'expert', {
  seed,
  mode: 'own',
  wanted: { tails: 'snapped', hang: 'posts' },
}).steps.map(({ action }) => action);
const first = all.findIndex(isLine);
const before = all.slice(0, first);
const after = all.slice(first);

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser(inject('browser'));
});
afterAll(() => browser.close());

type How = (page: Page, found: NonNullable<ReturnType<typeof findAct>>) => Promise<void>;

const playEnd = async (page: Page, how: How, acts: readonly Action[]) => {
  await page.evaluate((some) => some.forEach((one) => window.__tt.do(one)), before);
  let attempt = before.reduce(take, begin(level, seed, 'own'));
  for (const action of acts) {
    const found = findAct(attempt, action);
    if (!found) throw new Error(`no tool offers ${JSON.stringify(action)}`);
    await how(page, found);
    attempt = take(attempt, action);
  }
  return attempt;
};

describe('tails left long', () => {
  it.each([
    ['touch', actByTouch, 'phone', 'es'],
    ['keyboard', actByKeyboard, 'desk', 'es'],
  ] as const)(
    'are snapped, cut and handed over by %s',
    async (_, how, size, lang) => {
      const query = `?lang=${lang}&theme=day&level=${level.id}&seed=${seed}&mode=own&screen=site`;
      const { page, errors, close } = await openPage(browser, inject('base') + query, { size });
      const attempt = await playEnd(page, how, after);
      await page.locator('.debrief').waitFor();
      expect(await page.evaluate(() => window.__tt.digest())).toMatchObject({
        site: siteDigest(attempt.site),
      });
      expect(await page.textContent('#total')).toBe(String(Math.round(scoreOf(attempt).total)));
      expect(await page.locator('[data-code=O11]').count()).toBe(0);
      expect(errors).toEqual([]);
      await close();
    },
    240_000,
  );

  it('cut by eye on purpose, cost what the debrief says, with the way back to the moment', async () => {
    const query = `?lang=en&theme=day&level=${level.id}&seed=${seed}&mode=own&screen=site`;
    const { page, errors, close } = await openPage(browser, inject('base') + query);
    await playEnd(
      page,
      actByPointer,
      after.filter((act) => !isLine(act)),
    );
    await page.locator('.debrief').waitFor();
    const { en } = catalogues;
    const told = await page.locator('.debrief').innerText();
    expect(told).toContain(en.rules['O11']?.name);
    expect(told).toContain(en.ui.debrief.orderCost(72));
    expect(told).toContain(en.ui.debrief.sooner(en.tasks.tails));
    await page.locator('[data-code=O11] .back').click();
    await page.locator('.site').waitFor();
    expect(errors).toEqual([]);
    await close();
  }, 240_000);
});
