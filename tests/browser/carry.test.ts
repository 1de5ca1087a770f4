import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { play } from '../../src/core/hands/play';
import type { Action } from '../../src/core/site/action';
import type { Attempt } from '../../src/core/site/attempt';
import { levelOf } from '../site/levels';
import { launchBrowser, openPage, type SizeName } from './support/browser';

/** A tool carried from the rail to its place, by mouse and by finger. */

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser(inject('browser'));
});
afterAll(() => browser.close());

const acts = play(levelOf('garden-hut'), 'expert', { seed: 7, mode: 'own' }).steps.map(
  ({ action }) => action,
);
const joint = 'heel:rafter.street.4';
const tacked = acts.findIndex((action) => action.type === 'tack' && action.joint === joint);

const open = async (size: SizeName) => {
  const opened = await openPage(
    browser,
    `${inject('base')}?lang=en&theme=day&level=garden-hut&seed=7&mode=own&screen=site`,
    { size },
  );
  await opened.page.evaluate((some) => some.forEach((one) => window.__tt.do(one)), acts.slice(0, tacked));
  await opened.page.waitForFunction((id) => window.__tt.placeOf(id) !== undefined, joint);
  return opened;
};

type Place = { readonly x: number; readonly y: number };

const middleOf = async (page: Page, tool: string): Promise<Place> => {
  const found = page.locator(`[data-tool="${tool}"]`);
  await found.scrollIntoViewIfNeeded();
  const box = await found.boundingBox();
  if (!box) throw new Error('no such tool');
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
};

const placeOf = (page: Page, id: string): Promise<Place> =>
  page.evaluate((one) => window.__tt.placeOf(one) as Place, id);

const last = async (page: Page): Promise<Action | undefined> => {
  const { steps } = (await page.evaluate(() => window.__tt.attempt())) as Attempt;
  return steps.length > tacked ? steps[steps.length - 1]?.action : undefined;
};

type Carry = (page: Page, from: Place, to: Place) => Promise<void>;

const byMouse: Carry = async (page, from, to) => {
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move((from.x + to.x) / 2, (from.y + to.y) / 2, { steps: 4 });
  await page.mouse.move(to.x, to.y, { steps: 4 });
  await page.mouse.up();
};

/** Straight out of the strip first, as a finger does that does not mean to slide it. */
const byFinger: Carry = async (page, from, to) => {
  const cdp = await page.context().newCDPSession(page);
  const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', at?: Place) =>
    cdp.send('Input.dispatchTouchEvent', { type, touchPoints: at ? [{ x: at.x, y: at.y }] : [] });
  await touch('touchStart', from);
  for (let i = 1; i <= 5; i++) await touch('touchMove', { x: from.x, y: from.y - 12 * i });
  for (let i = 1; i <= 6; i++)
    await touch('touchMove', {
      x: from.x + ((to.x - from.x) * i) / 6,
      y: from.y - 60 + ((to.y - from.y + 60) * i) / 6,
    });
  await touch('touchEnd');
};

describe.each([
  ['mouse', 'desk', byMouse],
  ['finger', 'phone', byFinger],
] as const)('by %s', (_, size, carry) => {
  it('tacks the joint it is let go at, of two on the same rafter the nearer one', async () => {
    const { page, close } = await open(size);
    await carry(page, await middleOf(page, 'tack'), await placeOf(page, joint));
    expect(await last(page)).toEqual({ type: 'tack', joint, nails: 2 });
    await close();
  });

  it('leaves open what has to be picked, with its place chosen', async () => {
    const { page, close } = await open(size);
    await carry(page, await middleOf(page, 'tape'), await placeOf(page, 'rafter.street.3'));
    expect(await last(page)).toBeUndefined();
    const chosen = await page.getAttribute('[data-tool="tape"]', 'aria-checked');
    expect(chosen).toBe('true');
    await close();
  });

  it('does nothing where nothing stands', async () => {
    const { page, close } = await open(size);
    const view = await page.locator('.stage').boundingBox();
    if (!view) throw new Error('no drawing');
    await carry(page, await middleOf(page, 'nail'), {
      x: view.x + view.width - 8,
      y: view.y + view.height - 60,
    });
    expect(await last(page)).toBeUndefined();
    await close();
  });
});
