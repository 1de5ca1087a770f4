import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import type { styles } from '../../src/content/draft/fields';
import { catalogues } from '../../src/present/words/messages';
import { launchBrowser, openPage, ready } from './support/browser';

/** From the form of an own roof to a job on it: the crew runs it apart from the page, and it stands among the jobs. */

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser(inject('browser'));
});
afterAll(() => browser.close());

/** The crew runs every way of hanging the ridge, on a machine with much else to do. Milliseconds. */
const patient = 240_000;
const { en } = catalogues;
const played = ['gable', 'posts'] as const satisfies readonly (typeof styles)[number][];

describe('practice on an own roof', { timeout: patient }, () => {
  it.each(played)('of the style %s: tried, talked over, begun, and there again', async (style) => {
    const at = `${inject('base')}?lang=en&theme=day`;
    const { page, errors, close } = await openPage(browser, `${at}&screen=roof`);
    await page.locator('#own-style').selectOption(style);
    await page.locator('#practice').click();
    await page.locator('#begin').waitFor({ timeout: patient });
    const talk = (await page.locator('main, .page').first().textContent()) ?? '';
    expect(talk.includes(en.beam.ridge(3))).toBe(style === 'posts');
    expect(talk.includes(en.trade.method.ties.joistsFirst)).toBe(style !== 'posts');
    expect(talk).not.toContain(en.ui.mode['check-off']);
    await page.locator('#begin').click();
    await page.waitForFunction(() => window.__tt.attempt() !== undefined);
    const id = await page.evaluate(() => (window.__tt.attempt() as { level: { id: string } }).level.id);
    expect(id).toMatch(/^own-/);
    await page.goto(`${at}&level=${id}&screen=talk`);
    await ready(page);
    expect(await page.locator('#begin').count()).toBe(1);
    expect(errors).toEqual([]);
    await close();
  });
});
