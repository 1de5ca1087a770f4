import type { Browser, Page } from 'playwright-core';
import { PNG } from 'pngjs';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { play } from '../../src/core/hands/play';
import type { Action } from '../../src/core/site/action';
import { levelOf } from '../site/levels';
import { launchBrowser, ready } from './support/browser';
import { restingPicture } from './support/resting';

/** What happens is seen to happen, and ends exactly as it is shown to whoever asked that nothing moves. */

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser(inject('browser'));
});
afterAll(() => browser.close());

const acts = play(levelOf('garden-hut'), 'expert', { seed: 7, mode: 'own' }).steps.map(
  ({ action }) => action,
);
const first = (test: (action: Action) => boolean): number => acts.findIndex(test);

const open = async (motion: 'reduce' | 'no-preference', done: number): Promise<Page> => {
  const context = await browser.newContext({
    viewport: { width: 1280, height: 800 },
    reducedMotion: motion,
    colorScheme: 'light',
  });
  const page = await context.newPage();
  await page.goto(`${inject('base')}?lang=en&theme=day&level=garden-hut&seed=7&mode=own&screen=site`);
  await ready(page);
  await page.evaluate((some) => some.forEach((one) => window.__tt.do(one)), acts.slice(0, done));
  await restingPicture(page);
  return page;
};

const act = (page: Page, action: Action): Promise<unknown> =>
  page.evaluate((one) => window.__tt.do(one), action);

/** Pictures the stage was handed from the act to its rest: more than a redraw asks for where something moves. */
const framesOf = async (page: Page, action: Action): Promise<number> => {
  await page.evaluate(() => {
    const kept = window as unknown as { draws: number };
    kept.draws = 0;
    const bind = WebGL2RenderingContext.prototype.drawElements;
    const bind1 = WebGLRenderingContext.prototype.drawElements;
    WebGL2RenderingContext.prototype.drawElements = function (...given) {
      kept.draws++;
      bind.apply(this, given);
    };
    WebGLRenderingContext.prototype.drawElements = function (...given) {
      kept.draws++;
      bind1.apply(this, given);
    };
  });
  await act(page, action);
  await restingPicture(page);
  return page.evaluate(() => (window as unknown as { draws: number }).draws);
};

const drawingOn = async (page: Page): Promise<Buffer> =>
  PNG.sync.read(await page.locator('.stage').screenshot()).data;

/** On a busy machine two looks may be alike before anything has begun to move: the end is waited for. */
const restsAs = async (moving: Page, still: Page): Promise<void> => {
  await restingPicture(still);
  const rest = await drawingOn(still);
  const ends = async (): Promise<boolean> => (await drawingOn(moving)).equals(rest);
  await expect.poll(ends, { timeout: 30_000, interval: 500 }).toBe(true);
};

const shown: readonly (readonly [string, number])[] = [
  [
    'a rafter set',
    first(({ type, ...rest }) => type === 'place' && 'member' in rest && rest.member === 'rafter.street.5'),
  ],
  ['a joint tacked', first((action) => action.type === 'tack' && action.joint === 'heel:rafter.street.1')],
  ['a string stretched', first((action) => action.type === 'line' && action.kind === 'string')],
];

describe.each(shown)('%s', (_, at) => {
  it('moves, and ends as it does for those who want nothing to move', async () => {
    const action = acts[at] as Action;
    const moving = await open('no-preference', at);
    const still = await open('reduce', at);
    const [many, few] = [await framesOf(moving, action), await framesOf(still, action)];
    expect(many).toBeGreaterThan(few);
    await restsAs(moving, still);
    await moving.context().close();
    await still.context().close();
  });
});

it('keeps nobody waiting: a second act in the middle of the first one counts at once', async () => {
  const at = shown[0]?.[1] ?? 0;
  const page = await open('no-preference', at);
  await page.evaluate((some) => some.forEach((one) => window.__tt.do(one)), acts.slice(at, at + 2));
  const steps = await page.evaluate(
    () => (window.__tt.attempt() as { steps: readonly unknown[] }).steps.length,
  );
  expect(steps).toBe(at + 2);
  const still = await open('reduce', at + 2);
  await restsAs(page, still);
  await page.context().close();
  await still.context().close();
});
