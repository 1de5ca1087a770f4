import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { attemptFile, attemptText } from '../../src/content/attemptFile';
import { siteDigest } from '../../src/content/canonical';
import { scoreOf } from '../../src/core/score/scored';
import type { Attempt } from '../../src/core/site/attempt';
import { begin, take } from '../../src/core/site/take';
import { levelOf } from '../site/levels';
import { actByKeyboard, actByPointer, actByTouch, findAct } from './drive';
import { hutScript } from './hutScript';
import { launchBrowser, openPage, ready } from './support/browser';

/** The whole hut, played in a real browser three times: by pointer alone, by touch alone on a phone, by keyboard alone. */

const seed = 7;
const level = levelOf('garden-hut');

const script = hutScript(level, seed);

const query = `?lang=en&theme=day&level=garden-hut&seed=${seed}&mode=own&screen=site`;

/** A window just wide enough for the list of places; the side view is the quickest to draw in software. */
const room = { width: 1000, height: 640 };

const inPage = (page: Page): Promise<Attempt> =>
  page.evaluate(() => window.__tt.attempt()) as Promise<Attempt>;

const actsOf = ({ steps }: Attempt): readonly string[] => steps.map(({ action }) => JSON.stringify(action));

const playAll = async (page: Page, how: typeof actByPointer): Promise<void> => {
  let attempt = begin(level, seed, 'own');
  for (const [i, action] of script.entries()) {
    const found = findAct(attempt, action);
    if (!found) throw new Error(`no tool offers act ${i}: ${JSON.stringify(action)}`);
    await how(page, found);
    attempt = take(attempt, action);
    if (i % 40 === 0) expect(actsOf(await inPage(page))).toHaveLength(i + 1);
  }
};

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser(inject('browser'));
});
afterAll(() => browser.close());

describe('the garden hut in a browser', () => {
  const bytes: string[] = [];
  it.each([
    ['pointer', actByPointer, 'desk'],
    ['touch', actByTouch, 'phone'],
    ['keyboard', actByKeyboard, 'desk'],
  ] as const)(
    'is framed from start to hand-over by %s alone',
    async (_, how, size) => {
      const { page, errors, requests, close } = await openPage(browser, `${inject('base')}${query}`, {
        size,
      });
      if (size === 'desk') await page.setViewportSize(room);
      await page.evaluate(() => window.__tt.show({ view: 'side' }));
      // The first key or touch fetches the sounds. After that nothing is fetched any more.
      const sounds = page.waitForResponse(/\.mp3$/);
      await page.keyboard.press('Shift');
      await sounds;
      const loaded = requests.length;
      await playAll(page, how);
      const attempt = await inPage(page);
      const score = scoreOf(attempt);
      bytes.push(attemptText(attemptFile(attempt, score)));
      expect(attempt.site.handedOver).toBe(true);
      expect(score.done).toBe(1);
      await page.waitForSelector('#total');
      expect(await page.textContent('#total')).toBe(String(Math.round(score.total)));
      expect(errors).toEqual([]);
      expect(requests.slice(loaded)).toEqual([]);
      await close();
    },
    1_500_000,
  );

  it('comes to the same bytes each way', () => {
    expect(bytes).toHaveLength(3);
    expect(new Set(bytes).size).toBe(1);
  });

  it('goes on at the same act after the tab is killed', async () => {
    const { page, close } = await openPage(browser, `${inject('base')}${query}`);
    const some = script.slice(0, 60);
    await page.evaluate((all) => all.forEach((one) => window.__tt.do(one)), some);
    await page.evaluate(() => window.__tt.settled());
    const before = await page.evaluate(() => window.__tt.digest());
    const again = await page.context().newPage();
    await page.close({ runBeforeUnload: false });
    await again.goto(inject('base'));
    await ready(again);
    expect(await again.evaluate(() => window.__tt.digest())).toEqual(before);
    const told = some.reduce(take, begin(level, seed, 'own'));
    expect((before as { site: string }).site).toBe(siteDigest(told.site));
    await close();
  });
});
