import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { play } from '../../src/core/hands/play';
import type { Attempt } from '../../src/core/site/attempt';
import { catalogues } from '../../src/present/words/messages';
import { memberName } from '../../src/present/words/names';
import { levelOf } from '../site/levels';
import { restingPicture } from './support/resting';
import { launchBrowser, openPage, type Opened } from './support/browser';

/** The drawing held by the keyboard: arrows reach all that stands, a ring says where, Enter picks, Escape leaves. */

const words = catalogues.en;
const acts = play(levelOf('garden-hut'), 'expert', { seed: 7, mode: 'own' }).steps.map(
  ({ action }) => action,
);

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser(inject('browser'));
});
afterAll(() => browser.close());

const halfDone = async (query = '', count = 190): Promise<Opened> => {
  const url = `?lang=en&theme=day&level=garden-hut&seed=7&mode=own&screen=site${query}`;
  const open = await openPage(browser, inject('base') + url);
  await open.page.setViewportSize({ width: 1000, height: 640 });
  await open.page.evaluate((all) => all.forEach((one) => window.__tt.do(one)), acts.slice(0, count));
  await open.page.evaluate(() => window.__tt.show({ tool: 'tape' }));
  await open.page.waitForFunction(() => document.querySelector('.drawing canvas') !== null);
  return open;
};

const drawing = (page: Page) => page.getByRole('application');
/** What the drawing tells of the member it is on. */
const heard = async (page: Page): Promise<string> =>
  (await page.locator('.stage').getByRole('status').textContent()) ?? '';

describe('by arrow keys on the drawing', () => {
  it('every member that stands is reached and named', async () => {
    const { page, errors, close } = await halfDone();
    const attempt = (await page.evaluate(() => window.__tt.attempt())) as Attempt;
    const names = Object.keys(attempt.site.members).map((id) => memberName(words, id));
    const told = new Set<string>();
    const hear = async (): Promise<string> => {
      const [name = ''] = (await heard(page)).split(':');
      told.add(name);
      return name;
    };
    const press = async (key: string): Promise<string> => {
      await page.keyboard.press(key);
      return hear();
    };
    const toTheEnd = async (key: string): Promise<void> => {
      for (let before = await hear(), now = await press(key); now !== before; now = await press(key))
        before = now;
    };
    await drawing(page).focus();
    await toTheEnd('ArrowLeft');
    for (let before = '', now = await hear(); now !== before; now = await press('ArrowRight')) {
      await toTheEnd('ArrowUp');
      await toTheEnd('ArrowDown');
      before = await hear();
    }
    expect(names.filter((name) => !told.has(name))).toEqual([]);
    expect(errors).toEqual([]);
    await close();
  }, 300_000);

  it('right is right on the drawing, from the street and from the yard', async () => {
    const { page, close } = await halfDone();
    for (const corner of ['street', 'yard'] as const) {
      await page.evaluate((at) => window.__tt.show({ corner: at, spot: 'tape@layout.street.5' }), corner);
      await restingPicture(page);
      await page.getByRole('listbox').focus();
      await drawing(page).focus();
      const ring = page.locator('.focusMark circle').first();
      const before = (await ring.boundingBox())?.x ?? 0;
      await page.keyboard.press('ArrowRight');
      await expect.poll(async () => (await ring.boundingBox())?.x ?? 0).toBeGreaterThan(before);
    }
    await close();
  }, 120_000);

  it('Enter picks as a touch does, and says so where the tool has no business; Escape leaves to the list', async () => {
    const { page, close } = await halfDone();
    await page.evaluate(() => window.__tt.show({ spot: 'tape@layout.street.5' }));
    await page.getByRole('listbox').focus();
    await drawing(page).focus();
    await page.keyboard.press('ArrowLeft');
    await page.keyboard.press('ArrowLeft');
    expect(await heard(page)).toContain(words.trade.member.rafter(3, words.trade.side.street));
    await page.keyboard.press('Enter');
    const chosen = page.getByRole('option', { selected: true });
    expect(await chosen.getAttribute('data-spot')).toBe('tape@layout.street.3');
    await page.evaluate(() => window.__tt.show({ tool: 'pattern' }));
    await drawing(page).focus();
    await page.keyboard.press('Enter');
    expect(await heard(page)).toContain(words.trade.tool.nail);
    await page.keyboard.press('Escape');
    await page.waitForFunction(() => document.activeElement?.getAttribute('role') === 'listbox');
    await close();
  }, 120_000);

  it.each(['day', 'night'])(
    'a ring marks the member of the list and of the words too, by %s',
    async (theme) => {
      const { page, close } = await halfDone(`&theme=${theme}`);
      await page.evaluate(() => window.__tt.show({ spot: 'tape@layout.street.5' }));
      const ring = page.locator('.focusMark');
      await page.getByRole('listbox').focus();
      await ring.waitFor();
      expect(await ring.getAttribute('data-at')).toBe('rafter.street.5');
      const region = page.getByRole('region', { name: words.spoken.roof.title });
      await region.getByRole('button', { name: words.spoken.roof.open }).focus();
      await page.keyboard.press('Enter');
      expect(await region.getByRole('button').count()).toBe(11);
      await region.getByRole('button', { name: words.spoken.roof.bay(3), exact: true }).focus();
      await page.keyboard.press('Enter');
      const rafter = region.getByRole('button', { name: words.trade.member.rafter(3, 'yard') });
      await rafter.focus();
      expect(await ring.getAttribute('data-at')).toBe('rafter.yard.3');
      await page.keyboard.press('Enter');
      await page.waitForFunction(() => document.activeElement?.getAttribute('role') === 'listbox');
      expect(await page.getByRole('option', { selected: true }).getAttribute('data-spot')).toContain(
        'yard.3',
      );
      const colors = await ring.evaluate((svg) =>
        [...svg.querySelectorAll('circle')].map((circle) => getComputedStyle(circle).stroke),
      );
      expect(contrast(colors[0] ?? '', colors[1] ?? '')).toBeGreaterThanOrEqual(3);
      await close();
    },
    120_000,
  );
});

/** WCAG 2.2 contrast of two colors as a style gives them. The ring lies on its casing, so that what is under both does not count. */
const contrast = (one: string, other: string): number => {
  const [a, b] = [lightOf(one), lightOf(other)];
  return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
};

const lightOf = (color: string): number => {
  const [r = 0, g = 0, b = 0] = (color.match(/[\d.]+/g) ?? []).map((part) => {
    const share = Number(part) / 255;
    return share <= 0.03928 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
};
