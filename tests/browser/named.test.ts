import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { play } from '../../src/core/hands/play';
import { levelOf } from '../site/levels';
import { launchBrowser, openPage, type SizeName } from './support/browser';

/** Somebody who has never framed touches a part of the roof, with nothing else in mind, and is told what it is. */

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser(inject('browser'));
});
afterAll(() => browser.close());

const acts = play(levelOf('garden-hut'), 'expert', { seed: 7, mode: 'own' })
  .steps.map(({ action }) => action)
  .filter(({ type }) => type !== 'handOver');

const parts = {
  ridge: { en: /^Ridge/, es: /^Cumbrera/ },
  'rafter.street.5': { en: /^Rafter 5/, es: /^Cabio 5/ },
  'block.street.4': { en: /^Block 4/, es: /^Bloque 4/ },
  'collar.3': { en: /^Collar tie 3/, es: /^Tirante alto 3/ },
} as const;

type Place = { readonly x: number; readonly y: number };

const placeOf = (page: Page, id: string): Promise<Place> =>
  page.evaluate((one) => window.__tt.placeOf(one) as Place, id);

/** Where its own wood shows: of the ridge, between two rafters. */
const bare = async (page: Page, id: string): Promise<Place> => {
  if (id !== 'ridge') return placeOf(page, id);
  const [a, b] = [await placeOf(page, 'ridge:rafter.street.4'), await placeOf(page, 'ridge:rafter.street.5')];
  return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
};

const names = async (page: Page, lang: 'en' | 'es', touch: boolean): Promise<void> => {
  for (const [id, name] of Object.entries(parts)) {
    const { x, y } = await bare(page, id);
    await (touch ? page.touchscreen.tap(x, y) : page.mouse.click(x, y));
    await page.waitForSelector('.nameTag');
    expect(await page.textContent('.nameTag')).toMatch(name[lang]);
    expect(await page.getAttribute('.focusMark', 'data-at')).toBe(id);
  }
};

const open = async (size: SizeName, lang: 'en' | 'es') => {
  const opened = await openPage(
    browser,
    `${inject('base')}?lang=${lang}&theme=day&level=garden-hut&seed=7&mode=own&screen=site`,
    { size },
  );
  await opened.page.evaluate((some) => some.forEach((one) => window.__tt.do(one)), acts);
  await opened.page.waitForFunction(() => window.__tt.placeOf('collar.3') !== undefined);
  await opened.page.waitForTimeout(1500);
  return opened;
};

describe('a touched part of the roof', () => {
  it('is named by mouse', async () => {
    const { page, errors, close } = await open('desk', 'en');
    await names(page, 'en', false);
    await page.click('[data-tool="look"]');
    await page.waitForSelector('.nameTag', { state: 'detached' });
    expect(errors).toEqual([]);
    await close();
  });

  it('is named by finger, in Spanish too', async () => {
    const { page, errors, close } = await open('phone', 'es');
    await names(page, 'es', true);
    expect(errors).toEqual([]);
    await close();
  });
});
