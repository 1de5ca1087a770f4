import type { Browser } from 'playwright-core';

/** One picture of a screen and under what conditions it was taken. */
export type Shot = { readonly label: string; readonly row: string; readonly picture: Buffer };

/** Sheets show screens at this share of their size: small enough to keep, large enough to see what is wrong. */
const scale = 0.5;

/** Wide enough for four desk screens and the gaps between them, CSS pixels. */
const sheetWidth = 2640;

const cell = ({ label, picture }: Shot): string =>
  `<figure><img src="data:image/png;base64,${picture.toString('base64')}"><figcaption>${label}</figcaption></figure>`;

const row = (shots: readonly Shot[]): string => `<div>${shots.map(cell).join('')}</div>`;

const style = `
  body { margin: 0; padding: 16px; background: #fff; font: 16px/1.5 sans-serif; width: max-content }
  div { display: flex; gap: 16px; margin-bottom: 16px }
  figure { margin: 0 } img { display: block; zoom: ${scale}; border: 2px solid #999 }`;

/** All pictures of one screen on one sheet, a row for each size. */
export const contactSheet = async (browser: Browser, shots: readonly Shot[]): Promise<Buffer> => {
  const page = await browser.newPage({ viewport: { width: sheetWidth, height: 800 } });
  const rows = [...new Set(shots.map((shot) => shot.row))];
  const body = rows.map((name) => row(shots.filter((shot) => shot.row === name))).join('');
  await page.setContent(`<!doctype html><style>${style}</style><body>${body}`);
  await page.evaluate(() =>
    Promise.all([...document.images].map((image) => image.decode())).then(() => undefined),
  );
  const sheet = await page.locator('body').screenshot();
  await page.close();
  return sheet;
};
