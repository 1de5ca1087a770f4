import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import type { Browser, Page } from 'playwright-core';
import { attemptFile, attemptText } from '../../src/content/attemptFile';
import { siteDigest } from '../../src/content/canonical';
import { play } from '../../src/core/hands/play';
import { scoreOf } from '../../src/core/score/scored';
import type { Action } from '../../src/core/site/action';
import type { Attempt } from '../../src/core/site/attempt';
import { begin, take } from '../../src/core/site/take';
import { levelOf } from '../site/levels';
import { actByKeyboard, actByPointer, findAct } from './drive';
import { launch, openIn, openPage } from './page';

/** The whole hut, played in a real browser twice: once by pointer alone, once by keyboard alone. */

const seed = 7;
const level = levelOf('garden-hut');

/** What an expert hand does on this seed, without the notes it makes for itself. */
const script: readonly Action[] = play(level, 'expert', { seed, mode: 'own' }).steps.map(({ action }) =>
  action.type === 'judge' ? { type: 'judge', subject: action.subject, call: action.call } : action,
);

const query = `?lang=en&theme=day&level=garden-hut&seed=${seed}&mode=own&screen=site`;

const inPage = (page: Page): Promise<Attempt> => page.evaluate(() => window.__tt.attempt()) as Promise<Attempt>;

const playAll = async (page: Page, how: typeof actByPointer): Promise<void> => {
  let attempt = begin(level, seed, 'own');
  for (const [i, action] of script.entries()) {
    const found = findAct(attempt, action);
    if (!found) throw new Error(`no tool offers act ${i}: ${JSON.stringify(action)}`);
    await how(page, found);
    attempt = take(attempt, action);
    if (i % 40 === 0) expect((await inPage(page)).steps.map((step) => step.action)).toEqual(attempt.steps.map((step) => step.action));
  }
};

let browser: Browser;
beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser.close());

describe('the garden hut in a browser', () => {
  const bytes: string[] = [];
  it.each([
    ['pointer', actByPointer],
    ['keyboard', actByKeyboard],
  ])('is framed from start to hand-over by %s alone', async (_, how) => {
    const { page, errors, requests } = await openPage(browser, query);
    await playAll(page, how);
    const attempt = await inPage(page);
    const score = scoreOf(attempt);
    bytes.push(attemptText(attemptFile(attempt, score)));
    expect(attempt.site.handedOver).toBe(true);
    expect(score.total).toBeGreaterThan(95);
    await page.waitForSelector('#total');
    expect(await page.textContent('#total')).toBe(String(Math.round(score.total)));
    expect(errors).toEqual([]);
    expect(requests.filter((url) => !url.startsWith('blob:') && !url.startsWith('data:'))).toEqual([]);
    await page.context().close();
  });

  it('comes to the same bytes either way', () => {
    expect(bytes.length).toBe(2);
    expect(bytes[0]).toBe(bytes[1]);
  });

  it('goes on at the same act after the tab is killed', async () => {
    const { page } = await openPage(browser, query);
    const context = page.context();
    for (const action of script.slice(0, 60)) await page.evaluate((one) => window.__tt.do(one), action);
    await page.evaluate(() => window.__tt.settled());
    const before = await page.evaluate(() => window.__tt.digest());
    await page.close();
    const again = await openIn(await context.newPage(), '');
    expect(await again.page.evaluate(() => window.__tt.digest())).toEqual(before);
    const told = script.slice(0, 60).reduce(take, begin(level, seed, 'own'));
    expect((before as { site: string }).site).toBe(siteDigest(told.site));
    expect(inject('base')).toContain('127.0.0.1');
    await context.close();
  });
});
