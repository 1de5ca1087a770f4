import type { Page } from 'playwright-core';

/** How far apart two looks are that must be the same, ms, and how many there may be. Ours. */
const between = 300;
const mostLooks = 12;

/** A picture of the page once two looks in a row are the same. */
export const restingPicture = async (page: Page): Promise<Buffer> => {
  let last = await page.screenshot();
  for (let look = 0; look < mostLooks; look++) {
    await page.waitForTimeout(between);
    const next = await page.screenshot();
    if (next.equals(last)) return next;
    last = next;
  }
  throw new Error('the page never comes to rest');
};
