import { readFileSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { readAttempt } from '../../src/content/attemptFile';
import type { Action } from '../../src/core/site/action';
import type { Attempt } from '../../src/core/site/attempt';
import type { RunHead } from '../../src/session/store';
import { levelOf } from '../site/levels';
import { hutScript } from './hutScript';
import { breaking, brokenLevels } from './support/broken';
import { launchBrowser, openPage, ready, sizes } from './support/browser';
import { builtSite } from './support/builtSite';
import { misfitsOn } from './support/fits';

/** What people run into: a slow or broken load, a device that keeps nothing, what an older version left, broken jobs. */

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser(inject('browser'));
});
afterAll(() => browser.close());

const deep = '?lang=en&theme=day&level=garden-hut&seed=7&mode=own&screen=site';
const acts = hutScript(levelOf('garden-hut'), 7);

const stepsOf = (page: Page): Promise<number> =>
  page.evaluate(() => (window.__tt.attempt() as Attempt).steps.length);

describe('while it loads', () => {
  it.each([
    ['en-US', 'light', 'Loading', 'of 4 parts are here', 'rgb(217, 205, 179)'],
    ['es-MX', 'dark', 'Cargando', 'de 4 partes están aquí', 'rgb(34, 31, 27)'],
  ] as const)(
    'the page counts in %s, %s, what has really come',
    async (locale, colorScheme, name, of, deck) => {
      const context = await browser.newContext({ locale, colorScheme, viewport: sizes.phone });
      const page = await context.newPage();
      let letCome = (): void => undefined;
      const held = new Promise<void>((done) => (letCome = done));
      await page.route(/assets\/engine-/, async (route) => {
        await held;
        await route.continue();
      });
      await page.goto(inject('base'), { waitUntil: 'commit' });
      const bar = page.getByRole('progressbar', { name });
      await bar.waitFor();
      const inSight = async (): Promise<number> => (await bar.boundingBox())?.y ?? Infinity;
      expect(await inSight()).toBeLessThan(sizes.phone.height / 2);
      expect(await page.getAttribute('html', 'lang')).toBe(locale.slice(0, 2));
      expect(await page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor)).toBe(
        deck,
      );
      // The style comes; the engine is held, and so is the program that waits for it.
      await expect.poll(() => bar.getAttribute('aria-valuenow')).toBe('1');
      expect(await bar.getAttribute('aria-valuetext')).toBe(`1 ${of}.`);
      expect(await inSight()).toBeLessThan(sizes.phone.height / 2);
      const [whole, come] = await bar.evaluate((line) => [
        line.clientWidth,
        line.firstElementChild?.clientWidth ?? 0,
      ]);
      expect(come! / whole!).toBeCloseTo(1 / 4, 1);
      expect(await misfitsOn(page)).toEqual([]);
      letCome();
      await ready(page);
      expect(await page.locator('#loading').count()).toBe(0);
      expect(await page.locator('.jobcard').count()).toBeGreaterThan(5);
      await context.close();
    },
  );

  it('a part that does not come is said, and loading again helps', async () => {
    const context = await browser.newContext({ locale: 'en-US' });
    const page = await context.newPage();
    await page.route(/assets\/engine-/, (route) => route.abort());
    await page.goto(inject('base'));
    const told = page.getByRole('alert');
    await told.waitFor();
    expect(await told.innerText()).toBe(
      'The page could not start. Check the connection, then load it again.',
    );
    expect(await page.getByRole('progressbar').count()).toBe(0);
    await page.unroute(/assets\/engine-/);
    await page.getByRole('button', { name: 'Load it again' }).click();
    await ready(page);
    expect(await page.locator('.jobcard').count()).toBeGreaterThan(5);
    await context.close();
  });

  it('without JavaScript nothing pretends to load', async () => {
    const context = await browser.newContext({ javaScriptEnabled: false });
    const page = await context.newPage();
    await page.goto(inject('base'));
    expect(await page.locator('#loading').isVisible()).toBe(false);
    expect(await page.getByRole('link', { name: 'load it again' }).isVisible()).toBe(true);
    await context.close();
  });
});

/** A device with no room left, and one that keeps nothing at all. */
const refusing = {
  full: () => {
    const room = { left: false };
    Object.assign(window, { room });
    const real = Reflect.get(IDBObjectStore.prototype, 'put') as IDBObjectStore['put'];
    IDBObjectStore.prototype.put = function (this: IDBObjectStore, ...asked: Parameters<typeof real>) {
      if (!room.left) throw new DOMException('no room', 'QuotaExceededError');
      return real.apply(this, asked);
    };
  },
  refused: () => {
    IDBFactory.prototype.open = () => {
      throw new DOMException('not here', 'SecurityError');
    };
  },
};

describe.each(['full', 'refused'] as const)('a device that is %s', (how) => {
  it.each(['desk', 'phone', 'side'] as const)('says so on a %s, goes on, and gives a file', async (size) => {
    const context = await browser.newContext({ viewport: sizes[size], acceptDownloads: true });
    const page = await context.newPage();
    const errors: string[] = [];
    page.on('pageerror', (error) => void errors.push(error.message));
    page.on('console', (message) => void (message.type() === 'error' && errors.push(message.text())));
    await page.addInitScript(refusing[how]);
    await page.goto(inject('base') + deep);
    await ready(page);
    const told = page.locator('.unkept');
    await told.getByText('This device does not keep the run').waitFor();
    expect(await told.getAttribute('role')).toBe('status');
    const some = acts.slice(0, 5);
    await page.evaluate((all) => all.forEach((one) => window.__tt.do(one)), some);
    expect(await stepsOf(page)).toBe(5);
    expect(await misfitsOn(page)).toEqual([]);
    const coming = page.waitForEvent('download');
    await page.locator('#saveNow').click();
    const read = readAttempt(readFileSync(await (await coming).path(), 'utf8'));
    expect(read.ok && read.value.actions).toEqual(some);
    await page.evaluate(() => window.__tt.go('start'));
    expect(await page.locator('.jobcard').count()).toBeGreaterThan(5);
    expect(errors).toEqual([]);
    await context.close();
  });
});

describe('a device that has room again', () => {
  it('keeps what it missed, and says nothing more', async () => {
    const context = await browser.newContext();
    const page = await context.newPage();
    await page.addInitScript(refusing.full);
    await page.goto(inject('base') + deep);
    await ready(page);
    const perform = (one: Action): Promise<void> =>
      page.evaluate((act) => {
        window.__tt.do(act);
        return window.__tt.settled();
      }, one);
    await perform(acts[0]!);
    expect(await page.locator('#saveNow').count()).toBe(1);
    await page.evaluate(() => ((window as unknown as { room: { left: boolean } }).room.left = true));
    await perform(acts[1]!);
    await expect.poll(() => page.locator('#saveNow').count()).toBe(0);
    const again = await context.newPage();
    await page.close({ runBeforeUnload: false });
    await again.goto(inject('base'));
    await ready(again);
    expect(await stepsOf(again)).toBe(2);
    await context.close();
  });
});

describe('a run that is open in another tab', () => {
  it.each([
    ['en', 'desk', 'This run is open in another tab.'],
    ['es', 'phone', 'Esta obra está abierta en otra pestaña.'],
  ] as const)('is not worked on from two sides, which is said in %s on a %s', async (lang, size, says) => {
    const { page, errors, close } = await openPage(browser, inject('base') + deep, { size });
    await page.evaluate((some) => some.forEach((one) => window.__tt.do(one)), acts.slice(0, 5));
    await page.evaluate(() => window.__tt.settled());
    const other = await page.context().newPage();
    await other.goto(`${inject('base')}?lang=${lang}`);
    await ready(other);
    await other.evaluate(() => window.__tt.go('start'));
    await other.locator('#resume').press('Enter');
    expect(await other.getByRole('alert').innerText()).toContain(says);
    expect(await misfitsOn(other)).toEqual([]);
    expect(await other.evaluate(() => window.__tt.attempt())).toBeUndefined();
    await page.evaluate((act) => window.__tt.do(act), acts[5]!);
    await page.evaluate(() => window.__tt.settled());
    await page.close();
    await other.locator('#resume').press('Enter');
    await other.waitForFunction(() => window.__tt.attempt() !== undefined);
    expect(await stepsOf(other)).toBe(6);
    expect(errors).toEqual([]);
    await close();
  });
});

describe('what should stay', () => {
  it('is asked of the browser once, after the first run that is over', async () => {
    const context = await browser.newContext();
    await context.addInitScript(() => {
      const seen = { asked: 0 };
      Object.assign(window, { seen });
      StorageManager.prototype.persist = () => {
        seen.asked += 1;
        return Promise.resolve(true);
      };
    });
    const asked = (on: Page): Promise<number> =>
      on.evaluate(() => (window as unknown as { seen: { asked: number } }).seen.asked);
    const page = await context.newPage();
    await page.goto(inject('base') + deep);
    await ready(page);
    await page.evaluate((act) => window.__tt.do(act), acts[0]!);
    expect(await asked(page)).toBe(0);
    await page.evaluate(() => window.__tt.do({ type: 'handOver' }));
    await expect.poll(() => asked(page)).toBe(1);
    await page.goto(inject('base') + deep);
    await ready(page);
    await page.evaluate(() => window.__tt.do({ type: 'handOver' }));
    await page.evaluate(() => window.__tt.settled());
    expect(await asked(page)).toBe(0);
    await context.close();
  });
});

/** Puts something where the page keeps its own, then opens the page again. */
const leftBehind = async (page: Page, store: 'runs' | 'values', values: readonly object[]): Promise<void> => {
  await page.evaluate(
    ([into, all]) =>
      new Promise<void>((done, failed) => {
        const open = indexedDB.open('tack-and-true', 1);
        open.onerror = () => failed(new Error('no database'));
        open.onsuccess = () => {
          const write = open.result.transaction(into, 'readwrite').objectStore(into);
          all.forEach((one) => (into === 'runs' ? write.put(one) : write.put(one, 'settings')));
          write.transaction.oncomplete = () => done();
        };
      }),
    [store, values] as const,
  );
  await page.goto(inject('base'));
  await ready(page);
};

describe('what an older version left', () => {
  const left: RunHead = {
    id: 'run-7',
    level: 'garden-hut',
    levelDigest: '0',
    rules: 3,
    seed: 7,
    mode: 'own',
    state: 'open',
    order: 7,
  };

  it.each([
    ['made under other rules', { rules: 2 }, 'en', /Garden hut.*older rules.*kept/],
    ['on a job that has changed', {}, 'es', /Caseta de jardín.*cambió.*guardada/],
    ['on a job that is gone', { level: 'old-mill' }, 'en', /old-mill.*not here/],
  ] as const)('is named and not gone on with: %s', async (_, part, lang, words) => {
    const { page, errors, close } = await openPage(browser, `${inject('base')}?lang=${lang}&screen=start`, {
      size: 'phone',
    });
    await leftBehind(page, 'runs', [{ ...left, ...part }]);
    await page.goto(`${inject('base')}?lang=${lang}`);
    await ready(page);
    expect(await page.locator('#stopped').innerText()).toMatch(words);
    expect(await page.locator('#resume').count()).toBe(0);
    expect(await misfitsOn(page)).toEqual([]);
    // Once another run is begun it is no longer the last.
    await page.goto(inject('base') + deep);
    await ready(page);
    await page.evaluate(() => window.__tt.go('start'));
    expect(await page.locator('#stopped').count()).toBe(0);
    expect(await page.locator('#resume').count()).toBe(1);
    expect(errors).toEqual([]);
    await close();
  });

  it('is passed over where it is junk', async () => {
    const { page, errors, close } = await openPage(browser, `${inject('base')}?lang=en&screen=start`);
    await leftBehind(page, 'values', [{ lang: 'loud', theme: 3 }]);
    await leftBehind(page, 'runs', [
      { id: 'a' },
      { id: 'run-1', level: {}, state: 'open', order: 'last', ended: 'soon' },
      { ...left, order: null },
    ]);
    expect(await page.locator('.jobcard').count()).toBeGreaterThan(5);
    expect(await page.locator('#stopped').count()).toBe(0);
    await page.goto(inject('base') + deep);
    await ready(page);
    expect(await stepsOf(page)).toBe(0);
    expect(errors).toEqual([]);
    await close();
  });
});

describe('jobs that cannot be read', () => {
  it('are named with the line and the reason; the others work', async () => {
    const site = await builtSite([breaking]);
    const { page, errors, close } = await openPage(browser, `${site.base}?lang=en`, { size: 'phone' });
    const told = page.locator('section[role=alert]');
    expect(await told.locator('h2').innerText()).toBe('3 jobs cannot be read. The others work.');
    const lines = await told.locator('li').allInnerTexts();
    expect(lines).toHaveLength(Object.keys(brokenLevels).length);
    for (const file of Object.keys(brokenLevels))
      expect(lines.find((line) => line.includes(file))).toMatch(/, line \d+ .*\(.+\)/);
    expect(await misfitsOn(page)).toEqual([]);
    await page.goto(`${site.base}?lang=es`);
    await ready(page);
    await told.waitFor();
    expect(await told.locator('li').allInnerTexts()).toEqual([
      expect.stringMatching(/pump-house\.json, renglón \d+ no es JSON \(un objeto JSON\)$/),
      expect.stringMatching(/sail-loft\.json, renglón \d+ roof\.span es "wide" \(una medida como 24, /),
      expect.stringMatching(/seed-store\.json, renglón \d+ no es JSON \(un objeto JSON\)$/),
    ]);
    await page.goto(`${site.base}?lang=en`);
    await ready(page);
    expect(await page.locator('.jobcard').count()).toBeGreaterThan(5);
    await page.click('[data-level=garden-hut]');
    await page.locator('#begin').waitFor();
    // A link into one of them says so too.
    await page.goto(`${site.base}?lang=en&level=pump-house&screen=site`);
    await ready(page);
    await page.getByText('This link names a job that is not here').waitFor();
    expect(errors).toEqual([]);
    await close();
    await site.close();
  });
});
