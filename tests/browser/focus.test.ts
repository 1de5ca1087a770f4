import type { Browser, Page } from 'playwright-core';
import { PNG } from 'pngjs';
import { afterAll, beforeAll, expect, inject, it } from 'vitest';
import { play } from '../../src/core/hands/play';
import { levelOf } from '../site/levels';
import { launchBrowser, openPage } from './support/browser';

/** Whoever goes by Tab always sees where they are: what has the focus looks different, and nothing lies over it. */

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser(inject('browser'));
});
afterAll(() => browser.close());

const acts = play(levelOf('garden-hut'), 'expert', { seed: 7, mode: 'own' }).steps.map(
  ({ action }) => action,
);

/** Room round a thing for its outline, CSS pixels. */
const round = 7;
/** Pixels that have to change for each one along half the outline of a thing: a line of two would be twice that. */
const least = 1;

type Place = { readonly x: number; readonly y: number; readonly width: number; readonly height: number };
type Focused = { readonly name: string; readonly box: Place; readonly covered: string };

/** What has the focus, where it is seen, and what lies over the middle of what is seen; undefined on the page itself. */
const focused = (page: Page, edge: number): Promise<Focused | undefined> =>
  page.evaluate((room) => {
    const here = document.activeElement;
    if (!here || here === document.body) return undefined;
    const { left, top, right, bottom } = here.getBoundingClientRect();
    const [x0, y0] = [Math.max(0, left - room), Math.max(0, top - room)];
    const [x1, y1] = [Math.min(innerWidth, right + room), Math.min(innerHeight, bottom + room)];
    const over = document.elementFromPoint((x0 + x1) / 2, (y0 + y1) / 2);
    const own = over !== null && (here.contains(over) || over.contains(here));
    return {
      name: `${here.tagName}.${here.className} ${here.textContent?.trim().slice(0, 30)}`,
      box: { x: x0, y: y0, width: x1 - x0, height: y1 - y0 },
      covered: own ? '' : `${over?.tagName}.${over?.className}`,
    };
  }, edge);

const shot = async (page: Page, clip: Place): Promise<PNG> => PNG.sync.read(await page.screenshot({ clip }));

const changed = (one: PNG, other: PNG): number => {
  let count = 0;
  for (let i = 0; i < Math.min(one.data.length, other.data.length); i += 4) {
    const by = [0, 1, 2].map((c) => Math.abs((one.data[i + c] ?? 0) - (other.data[i + c] ?? 0)));
    if (Math.max(...by) > 40) count += 1;
  }
  return count;
};

/** Everything Tab comes to, once round, that does not show its focus or is covered while it has it. */
const unseen = async (page: Page): Promise<readonly string[]> => {
  const bad: string[] = [];
  const seen = new Set<string>();
  for (let i = 0; i < 120; i++) {
    await page.keyboard.press('Tab');
    const here = await focused(page, round);
    // The page itself may come first, before anything on it.
    if (!here && seen.size === 0) continue;
    if (!here) break;
    const key = `${here.name} ${JSON.stringify(here.box)}`;
    if (seen.has(key)) break;
    seen.add(key);
    const on = await shot(page, here.box);
    await page.evaluate(() => {
      const had = document.activeElement as HTMLElement;
      Object.assign(window, { had });
      had.blur();
    });
    const off = await shot(page, here.box);
    await page.evaluate(() => (window as unknown as { had: HTMLElement }).had.focus({ preventScroll: true }));
    const differs = changed(on, off) >= least * (here.box.width + here.box.height - 4 * round);
    if (!differs) bad.push(`${here.name}: looks the same`);
    if (here.covered !== '') bad.push(`${here.name}: under ${here.covered}`);
  }
  expect(seen.size).toBeGreaterThan(3);
  return bad;
};

const site = 'level=garden-hut&seed=7&screen=site&mode=list';

it.each<[string, string, number, 'debrief' | undefined]>([
  ['jobs', '', 0, undefined],
  ['tailgate talk', 'level=garden-hut&screen=talk', 0, undefined],
  ['site in the middle', site, 150, undefined],
  ['debrief', site, acts.length, 'debrief'],
])(
  '%s: what has the focus is seen, by day and by night',
  async (_, query, count, screen) => {
    for (const theme of ['day', 'night'] as const) {
      const { page, close } = await openPage(browser, `${inject('base')}?lang=en&theme=${theme}&${query}`, {
        theme,
      });
      await page.evaluate((all) => all.forEach((one) => window.__tt.do(one)), acts.slice(0, count));
      if (screen) await page.evaluate((one) => window.__tt.go(one), screen);
      await page.waitForTimeout(600);
      expect(await unseen(page), theme).toEqual([]);
      await close();
    }
  },
  600_000,
);

it('settings: what has the focus is seen', async () => {
  const { page, close } = await openPage(browser, `${inject('base')}?lang=en&theme=day&${site}`);
  await page.getByRole('button', { name: 'Settings' }).click();
  await page.waitForTimeout(300);
  expect(await unseen(page)).toEqual([]);
  await close();
}, 300_000);
