import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { linkTo, screens, walkScreens } from './screens';
import { launchBrowser, openPage, sizes, type SizeName } from './support/browser';
import { lastingMisfits } from './support/fits';

/** Every screen of a run, on every size of screen: all words can be read, every target can be reached and hit. */

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser(inject('browser'));
});
afterAll(() => browser.close());

/** Spanish says it in more words: where it fits a phone it has room elsewhere, which `npm run pictures` measures. */
const cases: readonly { readonly lang: 'en' | 'es'; readonly size: SizeName }[] = [
  ...(Object.keys(sizes) as SizeName[]).map((size) => ({ lang: 'en' as const, size })),
  { lang: 'es', size: 'phone' },
];

describe('every screen', () => {
  it.each(cases)('fits a $size in $lang', async ({ lang, size }) => {
    const { page, errors, close } = await openPage(browser, inject('base') + linkTo(lang, 'day'), { size });
    const seen: string[] = [];
    const wrong: string[] = [];
    await walkScreens(page, { lang, theme: 'day' }, async ({ name }) => {
      seen.push(name);
      for (const { kind, what, why } of await lastingMisfits(page)) {
        wrong.push(`${name}: ${kind}: ${what} (${why})`);
      }
    });
    expect(seen).toEqual(screens.map(({ name }) => name));
    expect(wrong).toEqual([]);
    expect(errors).toEqual([]);
    await close();
  });
});
