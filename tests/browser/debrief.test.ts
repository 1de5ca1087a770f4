import AxeBuilder from '@axe-core/playwright';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { siteDigest } from '../../src/content/canonical';
import { play } from '../../src/core/hands/play';
import { replay } from '../../src/core/hands/opened';
import { scoreOf } from '../../src/core/score/scored';
import { afterWork, marksOf } from '../../src/present/afterWork';
import { framesOf } from '../../src/present/strip';
import { levelOf } from '../site/levels';
import { launchBrowser, openPage, type Opened, type SizeName } from './support/browser';
import { misfitsOn } from './support/fits';

/** The talk after work: slid along by keys, pointer and touch; a moment chosen, gone back to and played on from. */

const level = levelOf('garden-hut');
const start = { level, seed: 7, mode: 'own' as const };
const attempt = play(level, 'naive-order', start);
const acts = attempt.steps.map(({ action }) => action);
const marks = marksOf(attempt, afterWork(attempt, scoreOf(attempt).findings));
const frames = framesOf(
  attempt,
  marks.map(({ shows }) => shows),
);

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser(inject('browser'));
});
afterAll(() => browser.close());

const debrief = async (size: SizeName, more = 'lang=en&theme=day'): Promise<Opened> => {
  const query = `?${more}&level=${level.id}&seed=${start.seed}&mode=own&screen=site`;
  const opened = await openPage(browser, inject('base') + query, { size });
  await opened.page.evaluate((all) => all.forEach((one) => window.__tt.do(one)), acts);
  await opened.page.evaluate(() => window.__tt.settled());
  await opened.page.evaluate(() => window.__tt.go('debrief'));
  await opened.page.locator('canvas.standing[data-steps]').waitFor();
  return opened;
};

/** Waits until the large picture is of the state after so many acts. */
const shows = (page: Page, steps: number | undefined): Promise<void> =>
  page.locator(`canvas.standing[data-steps="${steps}"]`).waitFor();

const said = (page: Page): Promise<string | null> => page.getAttribute('#slide', 'aria-valuetext');

describe('the strip', () => {
  it('is slid along by keys: stop by stop, told in words, drawn where one rests', async () => {
    const { page, errors, close } = await debrief('desk');
    await page.focus('#slide');
    await page.keyboard.press('Home');
    await shows(page, frames[0]?.steps);
    const told = [await said(page)];
    for (const frame of frames.slice(1, 4)) {
      await page.keyboard.press('ArrowRight');
      told.push(await said(page));
      await shows(page, frame.steps);
    }
    expect(new Set(told).size).toBe(told.length);
    expect(told.every((one) => /^[\d.]+ crew-minutes?\. \w/.test(one ?? ''))).toBe(true);
    await page.keyboard.press('ArrowLeft');
    await shows(page, frames[2]?.steps);
    await page.keyboard.press('End');
    await shows(page, attempt.steps.length);
    expect(await page.innerText('#next-act')).toBe('Run it again on a new site');
    expect(errors).toEqual([]);
    await close();
  });

  it('is slid along by pointer, and by touch', async () => {
    for (const size of ['desk', 'phone'] as const) {
      const { page, errors, close } = await debrief(size);
      const box = await page.locator('#slide').boundingBox();
      if (!box) throw new Error('no slider');
      const y = box.y + box.height / 2;
      const at = (share: number): number => box.x + box.width * share;
      if (size === 'phone') {
        await page.touchscreen.tap(at(0.3), y);
        const third = await said(page);
        await page.touchscreen.tap(at(0.02), y);
        expect(await said(page)).not.toBe(third);
        await shows(page, frames[0]?.steps);
      } else {
        const value = Number(await page.inputValue('#slide'));
        const max = Number(await page.getAttribute('#slide', 'max'));
        const shots = max / 1000 + 1;
        await page.mouse.move(at((value / 1000 + 0.5) / shots), y);
        await page.mouse.down();
        await page.mouse.move(at(0.5), y, { steps: 8 });
        await page.mouse.move(at(0.001), y, { steps: 8 });
        await page.mouse.up();
        await shows(page, frames[0]?.steps);
      }
      expect(errors).toEqual([]);
      await close();
    }
  });
});

describe('a told moment', () => {
  it.each([
    ['pointer', 'desk'],
    ['touch', 'phone'],
    ['keyboard', 'desk'],
  ] as const)('is chosen by %s, gone back to, and played on from', async (by, size) => {
    const { page, errors, close } = await debrief(size);
    const mark = marks[1];
    if (!mark || mark.told.step === undefined) throw new Error('nothing to go back to');
    const press = async (selector: string): Promise<void> => {
      const button = page.locator(selector);
      if (by === 'touch') return button.tap();
      if (by === 'pointer') return button.click();
      await button.focus();
      await page.keyboard.press('Enter');
    };
    await press(`.event:nth-of-type(2) .name`);
    await shows(page, mark.shows);
    expect(await page.getAttribute(`.pin[data-mark="${mark.label}"]`, 'aria-pressed')).toBe('true');
    expect(
      await page.locator('.standing').evaluate((one) => one.getBoundingClientRect().bottom),
    ).toBeGreaterThan(0);
    await press('#next-act');
    await page.locator('.site').waitFor();
    const begun = replay(start, acts.slice(0, mark.told.step));
    const now = await page.evaluate(() => window.__tt.digest() as { site: string; steps: number });
    expect(now).toMatchObject({ site: siteDigest(begun.site), steps: mark.told.step });
    const on = await page.evaluate(
      (act) => window.__tt.do(act),
      acts[mark.told.step] as (typeof acts)[number],
    );
    expect(on).toMatchObject({ ok: true });
    expect(errors).toEqual([]);
    await close();
  });
});

describe('the three questions', () => {
  it('keep their answers with the run, and the debrief is found again where it was left', async () => {
    const { page, errors, close } = await debrief('desk');
    await page.fill('#intend', 'Prove the ends, then nail.');
    await page.fill('#next', 'Brace first.');
    // A browser writes what is kept a moment after it was typed.
    await page.waitForTimeout(1500);
    await page.goto(`${inject('base')}?lang=es`);
    await page.locator('#intend').waitFor();
    await expect.poll(() => page.inputValue('#intend')).toBe('Prove the ends, then nail.');
    await expect.poll(() => page.inputValue('#next')).toBe('Brace first.');
    await page.click('#leave');
    await page.click('#lastDebrief');
    await expect.poll(() => page.inputValue('#next')).toBe('Brace first.');
    await page.click('#leave');
    await page.goto(`${inject('base')}?lang=es`);
    await page.locator('.jobs').waitFor();
    expect(errors).toEqual([]);
    await close();
  });
});

describe('on any page', () => {
  it.each([
    [1280, 800, '100'],
    [390, 844, '100'],
    [844, 390, '100'],
    [360, 640, '100'],
    [320, 640, '100'],
    [390, 844, '200'],
    [1280, 800, '200'],
  ])(
    'of %i by %i with text at %s nothing is cut, and axe has nothing grave to say',
    async (width, height, text) => {
      const { page, errors, close } = await debrief(
        width > 700 ? 'desk' : 'phone',
        `lang=es&theme=night&text=${text}`,
      );
      await page.setViewportSize({ width, height });
      await page.waitForTimeout(300);
      expect(await misfitsOn(page)).toEqual([]);
      expect(await page.locator('.btn.main').count()).toBe(1);
      const { violations } = await new AxeBuilder({ page }).analyze();
      const grave = violations.filter(({ impact }) => impact === 'serious' || impact === 'critical');
      expect(
        grave.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 90)).join(' | ')}`),
      ).toEqual([]);
      expect(errors).toEqual([]);
      await close();
    },
  );

  it('of paper it is one page or two, by day', async () => {
    const { page, close } = await debrief('desk', 'lang=en&theme=night');
    for (const format of ['Letter', 'A4']) {
      const pages = (await page.pdf({ format })).toString('latin1').match(/\/Type\s*\/Page\b/g) ?? [];
      expect(pages.length).toBeGreaterThan(0);
      expect(pages.length).toBeLessThanOrEqual(2);
    }
    await page.emulateMedia({ media: 'print' });
    await page.locator('.paperPicture').first().waitFor();
    expect(await page.locator('.paperPicture').count()).toBe(marks.length);
    expect(await page.locator('.btn:visible').count()).toBe(0);
    await close();
  });
});
