import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { expert } from '../../src/core/hands/expert';
import { diceOf } from '../../src/core/hands/dice';
import { playOut } from '../../src/core/hands/play';
import type { Level } from '../../src/core/level/level';
import { scoreOf } from '../../src/core/score/scored';
import type { Action } from '../../src/core/site/action';
import type { Attempt } from '../../src/core/site/attempt';
import { begin, take } from '../../src/core/site/take';
import { actByTouch, findAct } from './drive';
import { launchBrowser, openPage, ready } from './support/browser';

/** A shed typed into the form, tried by the crew, and framed in the page act by act, by touch on a phone. */

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser(inject('browser'));
});
afterAll(() => browser.close());

/** The crew runs every way of hanging the ledger, on a machine with much else to do. Milliseconds. */
const patient = 240_000;
const seed = 5;
const at = (): string => `${inject('base')}?lang=en&theme=day`;

/** A job of ten rafters on the form's own shed, as the page keeps it. */
const typedIn = async (page: Page): Promise<Level> => {
  await page.locator('#own-style').selectOption('shed');
  await page.locator('#own-span').fill("8'");
  await page.locator('#own-length').fill("8'");
  await page.locator('#practice').click();
  await page.locator('#begin').waitFor({ timeout: patient });
  await page.locator('#begin').click();
  await page.waitForFunction(() => window.__tt.attempt() !== undefined);
  return page.evaluate(() => (window.__tt.attempt() as { level: unknown }).level) as Promise<Level>;
};

/** The page's buttons move things by sixteenths, and nobody has to say why. */
const atThePage = (action: Action): Action => {
  if (action.type === 'judge') return { type: 'judge', subject: action.subject, call: action.call };
  return 'by' in action && typeof action.by === 'number'
    ? { ...action, by: Math.sign(action.by) * Math.max(1, Math.round(Math.abs(action.by) * 16)) * (1 / 16) }
    : action;
};

/** What the expert does, as a person at the page can do it. */
const scriptFor = (level: Level): readonly Action[] => {
  const player = expert.player(diceOf(seed, 'expert'), { hang: 'hand' });
  const run = playOut(
    level,
    (attempt) => {
      const act = player(attempt);
      return act && atThePage(act);
    },
    { seed, mode: 'own' },
  );
  return run.steps.map(({ action }) => action);
};

const inPage = (page: Page): Promise<Attempt> =>
  page.evaluate(() => window.__tt.attempt()) as Promise<Attempt>;

describe('a shed of one’s own in a browser', { timeout: 600_000 }, () => {
  it.each([['touch', actByTouch, 'phone']] as const)(
    'is framed from start to hand-over by %s alone',
    async (_, how, size) => {
      const { page, errors, close } = await openPage(browser, `${at()}&screen=roof`, { size });
      const level = await typedIn(page);
      await page.goto('about:blank');
      await page.goto(`${at()}&level=${level.id}&seed=${seed}&mode=own&screen=site`);
      await ready(page);
      await page.evaluate(() => window.__tt.show({ view: 'side' }));
      let attempt = begin(level, seed, 'own');
      for (const [i, action] of scriptFor(level).entries()) {
        const found = findAct(attempt, action);
        if (!found) throw new Error(`no tool offers act ${i}: ${JSON.stringify(action)}`);
        await how(page, found);
        attempt = take(attempt, action);
        if (i % 40 === 0) expect((await inPage(page)).steps).toHaveLength(i + 1);
      }
      await page.locator('.talkPage').waitFor();
      const done = await inPage(page);
      expect(done.steps.map(({ action }) => JSON.stringify(action))).toEqual(
        attempt.steps.map(({ action }) => JSON.stringify(action)),
      );
      expect(scoreOf(done)).toEqual(scoreOf(attempt));
      expect(scoreOf(done).total).toBeGreaterThan(85);
      expect((await page.locator('.talkPage').textContent()) ?? '').not.toMatch(/\bridge\b|collar/i);
      expect(errors).toEqual([]);
      await close();
    },
  );
});
