import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { opened } from '../../src/core/hands/opened';
import { play } from '../../src/core/hands/play';
import type { Mode } from '../../src/core/level/mode';
import type { Action } from '../../src/core/site/action';
import type { Attempt } from '../../src/core/site/attempt';
import { take } from '../../src/core/site/take';
import { catalogues } from '../../src/present/words/messages';
import { levelOf } from '../site/levels';
import { findAct } from './drive';
import { hutScript } from './hutScript';
import { doByEar, orderOf, type Order } from './listener';
import { launchBrowser, openPage } from './support/browser';

/** Whole jobs done by listening: found by role and name, read off what is spoken, typed, and handed over by keyboard. */

const words = catalogues.en;
const seed = 7;

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser(inject('browser'));
});
afterAll(() => browser.close());

/** Acts of the hut up to where its ridge is braced: from there on each act is one of a kind done before. */
const groundAndRidge = 61;

/** The orders of a job one after another, by name; readings have no number in them. */
const ordersOf = (start: Attempt, acts: readonly Action[]): readonly Order[] => {
  let attempt = start;
  return acts.map((action) => {
    const found = findAct(attempt, action);
    if (!found) throw new Error(`no tool offers ${JSON.stringify(action)}`);
    attempt = take(attempt, action);
    return orderOf(words, found);
  });
};

const expertOn = (id: string, mode: Mode): readonly Action[] => {
  const { steps, found } = play(levelOf(id), 'expert', { seed, mode });
  return steps.slice(found?.steps ?? 0).map(({ action }) => action);
};

/** A window just wide enough for the list of places; the side view is the quickest to draw in software. */
const room = { width: 1000, height: 640 };

const inPage = (page: Page): Promise<Attempt> =>
  page.evaluate(() => window.__tt.attempt()) as Promise<Attempt>;

const actsIn = ({ steps, found }: Attempt): readonly Action[] =>
  steps.slice(found?.steps ?? 0).map(({ action }) => action);

const digestIn = (page: Page): Promise<unknown> => page.evaluate(() => window.__tt.digest());

describe.each<[string, Mode, readonly Action[]]>([
  ['pump-house', 'list', expertOn('pump-house', 'list')],
  ['sail-loft', 'list', expertOn('sail-loft', 'list')],
  ['garden-hut', 'own', hutScript(levelOf('garden-hut'), seed).slice(0, groundAndRidge)],
])('%s by ear', (id, mode, acts) => {
  const url = `?lang=en&theme=day&level=${id}&seed=${seed}&mode=${mode}&screen=site`;

  it('comes to the same as the same acts given straight to the site', async () => {
    const { page, errors, close } = await openPage(browser, inject('base') + url);
    await page.setViewportSize(room);
    await page.evaluate(() => window.__tt.show({ view: 'side' }));
    for (const order of ordersOf(opened(levelOf(id), seed, mode), acts)) await doByEar(page, order);
    const heard = await inPage(page);
    const digest = await digestIn(page);
    const over = acts.at(-1)?.type === 'handOver';
    const debrief = page.getByRole('heading', { name: new RegExp(words.ui.debrief.title), level: 1 });
    expect(heard.site.handedOver).toBe(over);
    expect(await debrief.count()).toBe(over ? 1 : 0);
    expect(actsIn(heard)).toEqual(acts);
    await close();
    const fresh = await openPage(browser, inject('base') + url);
    await fresh.page.evaluate((all) => all.forEach((one) => window.__tt.do(one)), acts);
    expect(await digestIn(fresh.page)).toEqual(digest);
    expect([...errors, ...fresh.errors]).toEqual([]);
    await fresh.close();
  }, 1_500_000);
});
