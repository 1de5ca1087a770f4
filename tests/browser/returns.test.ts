import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { day } from '../../src/session/jobState';
import type { RunHead } from '../../src/session/store';
import { keepRuns } from './support/keptRuns';
import { launchBrowser, openPage, ready } from './support/browser';
import { misfitsOn } from './support/fits';

/** Who comes back after days finds how each job stands, and is asked for its order before the talk. */

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser(inject('browser'));
});
afterAll(() => browser.close());

const headOf = (order: number, part: Partial<RunHead>): RunHead => ({
  id: `run-${order}`,
  level: 'boathouse',
  levelDigest: '0',
  rules: 3,
  seed: order,
  mode: 'check-off',
  state: 'done',
  order,
  framed: true,
  pass: true,
  ended: 0,
  ...part,
});

/** Put where the page keeps its runs, then seen by opening the page again. */
const keptOn = async (page: Page, heads: readonly RunHead[]): Promise<void> => {
  await keepRuns(page, heads);
  await page.reload();
  await ready(page);
};

const tagOf = (page: Page, level: string): Promise<string> =>
  page.locator(`.jobcard:has([data-level=${level}])`).innerText();

describe.each(['desk', 'phone', 'side'] as const)('a return on a %s', (size) => {
  it('shows where each job stands and asks for five of its jobs in order', async () => {
    const query = '?lang=en&theme=day&screen=start';
    const { page, errors, close } = await openPage(browser, inject('base') + query, { size });
    const now = Date.now();
    await keptOn(page, [
      headOf(1, { ended: now - 40 * day }),
      headOf(2, { ended: now - 38 * day }),
      headOf(3, { level: 'hay-barn', ended: now - 4 * day }),
      headOf(4, { level: 'hay-barn', ended: now - 2 * day }),
      headOf(5, { level: 'harbor-office', ended: now - day / 24 }),
      headOf(6, { level: 'garden-hut', mode: 'list', ended: now - 3 * day, pass: false }),
    ]);
    expect(await tagOf(page, 'boathouse')).toContain('due for another look');
    expect(await tagOf(page, 'hay-barn')).toMatch(/checked off[^]*Have another look on/);
    expect(await tagOf(page, 'harbor-office')).toMatch(/framed[^]*The next one counts from/);
    expect(await tagOf(page, 'garden-hut')).toContain('under way');
    expect(await tagOf(page, 'sail-loft')).toContain('not yet');
    expect(await misfitsOn(page)).toEqual([]);

    await page.click('[data-level=boathouse]');
    const five = page.locator('.five button');
    await five.first().waitFor();
    expect(await five.count()).toBe(5);
    // As they are shown they are out of order; the other way round they may be right or not.
    for (let i = 0; i < 5; i++) await five.nth(i).press('Enter');
    await page.locator('#recallCheck').press('Enter');
    expect(await misfitsOn(page)).toEqual([]);
    const forth = await page.locator('.recall [role=status]').innerText();
    expect(forth.length).toBeGreaterThan(10);
    if (forth.startsWith('“')) {
      await page.click('#recallAgain');
      for (let i = 4; i >= 0; i--) await five.nth(i).click();
      await page.click('#recallCheck');
    }
    await page.click('#recallOn');
    expect(await page.locator('.recall').count()).toBe(0);

    // Asked once a day, and of nobody who has only just begun.
    await page.reload();
    await ready(page);
    await page.click('[data-level=boathouse]');
    await page.locator('#begin').waitFor();
    expect(await page.locator('.recall').count()).toBe(0);
    expect(errors).toEqual([]);
    await close();
  }, 120_000);
});
