import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { roofOf } from '../../src/core/level/layout';
import type { Attempt } from '../../src/core/site/attempt';
import { pose } from '../../src/core/site/posed';
import { schemeOf } from '../../src/present/model/scheme';
import { sheetLay, standsOn } from '../../src/scenes/measured/sheetLay';
import { launchBrowser, openPage } from './support/browser';
import { misfitsOn } from './support/fits';
import { restingPicture } from './support/resting';
import { linkTo } from './screens';
import { levelOf } from '../site/levels';
import { cleanActs, told, usual } from '../order/story';

/** The sheet of three views as it comes out on the screen: its lines read back from the picture. */

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser(inject('browser'));
});
afterAll(() => browser.close());

const hut = levelOf('garden-hut');
const acts = cleanActs(hut, usual);
const upTo = acts.findIndex(({ type }) => type === 'handOver');

/** How dark each pixel of a column is against what lies 5 pixels to both sides of it, 0 to 255. */
const columnOf = (page: Page, picture: Buffer, at: { x: number; from: number; to: number }) =>
  page.evaluate(
    async ({ data, x, from, to }) => {
      const image = new Image();
      image.src = `data:image/png;base64,${data}`;
      await image.decode();
      const canvas = document.createElement('canvas');
      [canvas.width, canvas.height] = [image.width, image.height];
      const ink = canvas.getContext('2d') as CanvasRenderingContext2D;
      ink.drawImage(image, 0, 0);
      const light = (px: number, py: number): number => {
        const [r = 0, g = 0, b = 0] = ink.getImageData(px, py, 1, 1).data;
        return 0.3 * r + 0.6 * g + 0.1 * b;
      };
      return Array.from({ length: Math.floor(to - from) }, (_, i) => {
        const y = Math.round(from) + i;
        const here = Math.min(...[-1, 0, 1].map((dx) => light(Math.round(x) + dx, y)));
        return (light(Math.round(x) - 5, y) + light(Math.round(x) + 5, y)) / 2 - here;
      });
    },
    { data: picture.toString('base64'), ...at },
  );

/** Lengths of the dark runs in a column. */
const runsOf = (column: readonly number[], dark: number): readonly number[] =>
  column
    .map((d) => (d > dark ? 'l' : ' '))
    .join('')
    .split(/ +/)
    .map((run) => run.length)
    .filter((long) => long > 0);

/** The sheet as it has to lie on a page's stage. */
const sheetOn = async (page: Page, attempt: Attempt) => {
  const box = await page.locator('.stage').boundingBox();
  if (!box) throw new Error('no stage');
  const { level, site } = attempt;
  const shown = { level, site, pose: pose(attempt), figured: roofOf(level) };
  const scheme = schemeOf(shown);
  const head = 44;
  const area = { x: 0, y: 0, width: Math.round(box.width), height: Math.round(box.height - head) };
  const zoom = { scale: 1, x: 0, y: 0 };
  const lay = sheetLay({ scheme, overhang: level.plan.overhang, area, ratio: 1, zoom });
  return { lay, x: box.x, y: box.y + head };
};

describe('the sheet of plan, section and side', () => {
  it('rules layout lines long and short, and is moved by buttons and keys', async () => {
    const { page, errors, close } = await openPage(browser, inject('base') + linkTo('en', 'day'));
    await page.evaluate((some) => some.forEach((one) => window.__tt.do(one)), acts.slice(0, upTo));
    await page.evaluate(() => window.__tt.show({ tool: 'draw', spot: 'heel:rafter.yard.4', view: 'sheet' }));
    const picture = await restingPicture(page);
    const attempt = told(hut, acts.slice(0, upTo), { seed: 7 });
    const { lay, x, y } = await sheetOn(page, attempt);
    const { plan, side } = lay.views;
    if (!plan || !side) throw new Error('no views');
    const station = standsOn(lay, 'plan', [24 * 6, 0, 0])?.[0] ?? 0;
    const gap = {
      x: x + station,
      from: y + plan.box.y + plan.box.height + 22,
      to: y + side.box.y - 2,
    };
    const ruled = runsOf(await columnOf(page, picture, gap), 25);
    expect(ruled.some((long) => long >= 11)).toBe(true);
    expect(ruled.filter((long) => long <= 5).length).toBeGreaterThan(0);
    const plain = await page.locator('.zoomKeys button').count();
    await page.getByRole('button', { name: 'Closer' }).click();
    await page.getByRole('button', { name: 'Look lower' }).press('ArrowDown');
    const near = await restingPicture(page);
    expect(near.equals(picture)).toBe(false);
    expect(await page.locator('.zoomKeys button').count()).toBeGreaterThan(plain);
    await page.getByRole('button', { name: 'Whole drawing' }).click();
    expect(runsOf(await columnOf(page, await restingPicture(page), gap), 25)).toEqual(ruled);
    await close();
    expect(errors).toEqual([]);
  });

  it('load path and strip begin closed, are told in words once opened, fit, and are not offered in a check-off', async () => {
    for (const mode of ['own', 'check-off']) {
      const link = linkTo('en', 'day').replace('mode=own', `mode=${mode}`);
      const { page, errors, close } = await openPage(browser, inject('base') + link);
      await page.evaluate((some) => some.forEach((one) => window.__tt.do(one)), acts.slice(0, upTo));
      const buttons = page.locator('.teaching button');
      expect(await buttons.count()).toBe(mode === 'own' ? 2 : 0);
      if (mode === 'own') {
        expect(await page.locator('.loads, .enlarged').count()).toBe(0);
        for (const name of ['Load path', 'Enlarged']) await page.getByRole('button', { name }).click();
        expect(await page.locator('.loads').textContent()).toMatch(
          /Rafter \d+, street side: (push|pull) \d+ lb/,
        );
        expect(await page.locator('.enlarged').textContent()).toMatch(/×\d+, not to scale/);
        await restingPicture(page);
        expect(await misfitsOn(page)).toEqual([]);
        // What is drawn is as large as the room it has.
        const [drawn, room] = await page.evaluate(() =>
          ['.stage canvas', '.stage'].map(
            (one) => document.querySelector(one)?.getBoundingClientRect().height,
          ),
        );
        expect(Math.abs((drawn ?? 0) - (room ?? 0))).toBeLessThan(1);
      }
      await close();
      expect(errors).toEqual([]);
    }
  });
});
