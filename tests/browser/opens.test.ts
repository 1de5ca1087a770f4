import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { launchBrowser, openPage, type SizeName } from './support/browser';

/** The page opens, says what it is, and keeps to itself. */

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser(inject('browser'));
});
afterAll(() => browser.close());

describe('the page', () => {
  it.each<[string, SizeName]>([
    ['en', 'desk'],
    ['es', 'desk'],
    ['en', 'phone'],
    ['es', 'side'],
  ])('opens in %s on a %s without an error', async (lang, size) => {
    const { page, errors, requests, close } = await openPage(browser, `${inject('base')}?lang=${lang}`, {
      size,
    });
    expect(await page.title()).toBe('Tack & True');
    expect(await page.getAttribute('html', 'lang')).toBe(lang);
    expect((await page.locator('#app').innerText()).trim()).not.toBe('');
    expect(errors).toEqual([]);
    expect(requests.filter((url) => !url.startsWith(inject('base')))).toEqual([]);
    await close();
  });

  it('asks nobody for anything once it has loaded', async () => {
    const query = '?lang=en&level=garden-hut&seed=7&screen=site';
    const { page, errors, requests, close } = await openPage(browser, `${inject('base')}${query}`);
    const loaded = requests.length;
    expect(loaded).toBeGreaterThan(0);
    for (const screen of ['start', 'talk', 'site'] as const) {
      await page.evaluate((one) => window.__tt.go(one), screen);
      await page.waitForLoadState('networkidle');
    }
    expect(requests.slice(loaded)).toEqual([]);
    expect(errors).toEqual([]);
    await close();
  });

  it('says in plain words that it needs JavaScript', async () => {
    const context = await browser.newContext({ javaScriptEnabled: false });
    const page = await context.newPage();
    await page.goto(inject('base'));
    expect(await page.locator('noscript').innerText()).toMatch(/JavaScript/);
    await context.close();
  });

  it('notices an error and a request elsewhere, so that their absence means something', async () => {
    const { page, errors, requests, close } = await openPage(browser, inject('base'));
    await page.evaluate(async () => {
      console.error('shown on purpose');
      await fetch('http://127.0.0.1:9/').catch(() => undefined);
    });
    expect(errors).toContain('shown on purpose');
    expect(requests).toContain('http://127.0.0.1:9/');
    await close();
  });
});
