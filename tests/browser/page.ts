import { chromium, type Browser, type Page } from 'playwright-core';
import { inject } from 'vitest';

/** A page of the built site, with everything that should not happen on it collected. */
export type Opened = { readonly page: Page; readonly errors: string[]; readonly requests: string[] };

export const launch = (): Promise<Browser> => chromium.launch({ executablePath: inject('browser'), args: ['--no-sandbox'], headless: true });

export const openPage = async (browser: Browser, query: string, size = { width: 900, height: 600 }): Promise<Opened> => {
  const context = await browser.newContext({ viewport: size, reducedMotion: 'reduce' });
  return openIn(await context.newPage(), query);
};

/** A page that opens the site as it would in a tab of its own, in whatever context it was made. */
export const openIn = async (page: Page, query: string): Promise<Opened> => {
  const errors: string[] = [];
  const requests: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error') errors.push(message.text());
  });
  page.on('pageerror', (error) => errors.push(error.message));
  await page.goto(`${inject('base')}${query}`);
  await page.waitForFunction(() => '__tt' in window);
  await page.waitForLoadState('networkidle');
  page.on('request', (request) => requests.push(request.url()));
  return { page, errors, requests };
};
