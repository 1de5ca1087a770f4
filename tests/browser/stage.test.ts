import type { Browser, BrowserContext, Page } from 'playwright-core';
import { PNG } from 'pngjs';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import type { Attempt } from '../../src/core/site/attempt';
import { begin, take } from '../../src/core/site/take';
import { levelOf } from '../site/levels';
import { actByPointer, findAct } from './drive';
import { hutScript } from './hutScript';
import { launchBrowser, openPage, ready, sizes } from './support/browser';
import { misfitsOn } from './support/fits';
import { restingPicture } from './support/resting';

/** The drawing where WebGL is missing or taken away, where nobody looks, and where the phone is turned. */

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser(inject('browser'));
});
afterAll(() => browser.close());

const deep = '?lang=en&theme=day&level=garden-hut&seed=7&mode=own&screen=site';
const level = levelOf('garden-hut');
const acts = hutScript(level, 7);

const stepsOf = (page: Page): Promise<number> =>
  page.evaluate(() => (window.__tt.attempt() as Attempt).steps.length);

/** Before the page loads: no canvas of it gets WebGL. */
const withoutWebGL = (): void => {
  const real = Reflect.get(HTMLCanvasElement.prototype, 'getContext') as HTMLCanvasElement['getContext'];
  HTMLCanvasElement.prototype.getContext = function (this: HTMLCanvasElement, kind: string, how: unknown) {
    return /webgl/.test(kind) ? null : real.call(this, kind, how);
  } as HTMLCanvasElement['getContext'];
};

/** WebGL that is there when it is asked about and gone when it is wanted. */
const brokenWebGL = (): void => {
  const real = Reflect.get(HTMLCanvasElement.prototype, 'getContext') as HTMLCanvasElement['getContext'];
  HTMLCanvasElement.prototype.getContext = function (this: HTMLCanvasElement, kind: string, how: unknown) {
    return /webgl/.test(kind) && how !== undefined ? null : real.call(this, kind, how);
  } as HTMLCanvasElement['getContext'];
};

const opened = async (context: BrowserContext, before?: () => void) => {
  const page = await context.newPage();
  const errors: string[] = [];
  page.on('pageerror', (error) => void errors.push(error.message));
  page.on('console', (message) => void (message.type() === 'error' && errors.push(message.text())));
  if (before) await page.addInitScript(before);
  await page.goto(inject('base') + deep);
  await ready(page);
  return { page, errors };
};

const pictureOf = async (page: Page): Promise<PNG> => PNG.sync.read(await restingPicture(page));

/** How far a tone may be off where the two ways of drawing round an edge, of 255; ours. */
const tone = 24;

/** The share of pixels that look different in two pictures. */
const apart = (one: PNG, other: PNG): number => {
  expect([one.width, one.height]).toEqual([other.width, other.height]);
  let different = 0;
  for (let at = 0; at < one.data.length; at += 4)
    if ([0, 1, 2].some((c) => Math.abs(one.data[at + c]! - other.data[at + c]!) > tone)) different += 1;
  return (different * 4) / one.data.length;
};

const sameDrawing = 0.04;

const drawsPlainly = (page: Page): Promise<boolean> =>
  page.evaluate(() => {
    const all = [...document.querySelectorAll<HTMLCanvasElement>('.stage canvas')];
    return all.length === 1 && all[0]!.getContext('2d') !== null;
  });

const usual = (): Promise<BrowserContext> =>
  browser.newContext({ viewport: sizes.desk, reducedMotion: 'reduce' });

describe('where there is no WebGL', () => {
  it.each([
    ['none at all', withoutWebGL],
    ['none when it is wanted', brokenWebGL],
  ])('(%s) the same is drawn, acts work, and nothing is said', async (_, before) => {
    const context = await usual();
    const { page: with3d } = await opened(context);
    const wanted = await pictureOf(with3d);
    expect(await drawsPlainly(with3d)).toBe(false);
    await with3d.close();

    const { page, errors } = await opened(context, before);
    expect(await drawsPlainly(page)).toBe(true);
    expect(apart(await pictureOf(page), wanted)).toBeLessThan(sameDrawing);
    expect(await page.locator('.unkept .paper, .notice').count()).toBe(0);
    await actByPointer(page, findAct(begin(level, 7, 'own'), acts[0]!)!);
    expect(await stepsOf(page)).toBe(1);
    await page.evaluate(() => window.__tt.show({ view: 'side' }));
    expect(apart(await pictureOf(page), wanted)).toBeGreaterThan(sameDrawing);
    expect(errors).toEqual([]);
    await context.close();
  });
});

type Losing = { readonly losing: WEBGL_lose_context };

/** Takes WebGL away from the drawing, as a machine that wakes up does. */
const lose = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const drawing = document.querySelector<HTMLCanvasElement>('.stage canvas');
    const losing = drawing?.getContext('webgl')?.getExtension('WEBGL_lose_context');
    if (!losing) throw new Error('no WebGL to lose');
    Object.assign(window, { losing });
    losing.loseContext();
  });

describe('a drawing that loses WebGL in the middle of a job', () => {
  it('comes back as it was once it is given back', async () => {
    const context = await usual();
    const { page, errors } = await opened(context);
    const before = await pictureOf(page);
    await lose(page);
    await page.waitForTimeout(100);
    await page.evaluate(() => (window as unknown as Losing).losing.restoreContext());
    await expect.poll(async () => apart(await pictureOf(page), before)).toBe(0);
    expect(await drawsPlainly(page)).toBe(false);
    await actByPointer(page, findAct(begin(level, 7, 'own'), acts[0]!)!);
    expect(await stepsOf(page)).toBe(1);
    expect(errors).toEqual([]);
    await context.close();
  });

  it('goes on without it where it never is', async () => {
    const context = await usual();
    const { page, errors } = await opened(context);
    const before = await pictureOf(page);
    await lose(page);
    await expect.poll(() => drawsPlainly(page), { timeout: 30_000 }).toBe(true);
    await expect.poll(async () => apart(await pictureOf(page), before)).toBeLessThan(sameDrawing);
    // It can still be picked on, turned, and drawn anew.
    await page.evaluate(() => window.__tt.show({ corner: 'yard' }));
    await expect.poll(async () => apart(await pictureOf(page), before)).toBeGreaterThan(sameDrawing);
    await actByPointer(page, findAct(begin(level, 7, 'own'), acts[0]!)!);
    expect(await stepsOf(page)).toBe(1);
    expect(errors).toEqual([]);
    await context.close();
  });
});

type Seen = { readonly seen: { frames: number; hidden: boolean } };

describe('while nobody looks', () => {
  it('the engine asks for no frame, and what was done meanwhile is there on return', async () => {
    const context = await usual();
    const { page, errors } = await opened(context, () => {
      const seen = { frames: 0, hidden: false };
      Object.assign(window, { seen });
      Object.defineProperty(Document.prototype, 'hidden', { get: () => seen.hidden });
      const real = window.requestAnimationFrame.bind(window);
      window.requestAnimationFrame = (call) => {
        // Whoever asks from the engine's file keeps its loop going.
        if (/assets\/engine-/.test(new Error().stack ?? '')) seen.frames += 1;
        return real(call);
      };
    });
    const look = (hidden: boolean): Promise<void> =>
      page.evaluate((away) => {
        const { seen } = window as unknown as Seen;
        seen.hidden = away;
        document.dispatchEvent(new Event('visibilitychange'));
      }, hidden);
    const afresh = (): Promise<void> =>
      page.evaluate(() => void ((window as unknown as Seen).seen.frames = 0));
    const frames = (): Promise<number> => page.evaluate(() => (window as unknown as Seen).seen.frames);
    const perform = (from: number, to: number): Promise<void> =>
      page.evaluate((some) => some.forEach((one) => window.__tt.do(one)), acts.slice(from, to));
    const before = await pictureOf(page);
    await look(true);
    await afresh();
    await perform(0, 30);
    await restingPicture(page);
    expect(await frames()).toBe(0);
    await look(false);
    await expect.poll(async () => apart(await pictureOf(page), before)).toBeGreaterThan(0.005);
    expect(await frames()).toBeGreaterThan(0);
    // Awake, each act is drawn; then it sleeps again.
    await afresh();
    await perform(30, 60);
    await restingPicture(page);
    expect(await frames()).toBeGreaterThan(0);
    await afresh();
    await restingPicture(page);
    expect(await frames()).toBe(0);
    expect(errors).toEqual([]);
    await context.close();
  });
});

describe('a phone that is turned in the middle of a job', () => {
  it.each([
    ['phone', 'side'],
    ['side', 'phone'],
  ] as const)('keeps tool, place and reading, and the drawing fits: %s to %s', async (from, to) => {
    const { page, errors, close } = await openPage(browser, inject('base') + deep, { size: from });
    const some = acts.slice(0, 30);
    await page.evaluate((all) => all.forEach((one) => window.__tt.do(one)), some);
    const told = some.reduce(take, begin(level, 7, 'own'));
    const reading = acts.slice(30).find(({ type }) => type === 'read')!;
    const spot = findAct(told, reading)?.spot.id ?? 'tape@board.1.depth';
    await page.evaluate((id) => window.__tt.show({ tool: 'tape', spot: id }), spot);
    const typed = page.locator('.typed');
    await typed.fill('4 3/16');
    const valued = page.locator('.picker [role=spinbutton]');
    expect(await valued.getAttribute('aria-valuenow')).toBe(String(4 + 3 / 16));
    await page.setViewportSize(sizes[to]);
    await restingPicture(page);
    expect(await page.locator('[data-tool=tape]').getAttribute('aria-checked')).toBe('true');
    expect(await page.locator('.spots [aria-selected=true]').getAttribute('data-spot')).toBe(spot);
    expect(await typed.inputValue()).toBe('4 3/16');
    expect(await valued.getAttribute('aria-valuenow')).toBe(String(4 + 3 / 16));
    // The drawing fills its place, no more and no less.
    const [host, canvas] = await page.evaluate(() =>
      ['.stage', '.stage canvas'].map((one) => document.querySelector(one)!.getBoundingClientRect()),
    );
    expect(Math.abs(canvas!.width - host!.width)).toBeLessThan(2);
    expect(Math.abs(canvas!.height - host!.height)).toBeLessThan(2);
    expect(await misfitsOn(page)).toEqual([]);

    await page.setViewportSize(sizes[from]);
    await restingPicture(page);
    expect(await typed.inputValue()).toBe('4 3/16');
    await page.locator('#main-act').click();
    expect(await stepsOf(page)).toBe(some.length + 1);
    const last = await page.evaluate(() => (window.__tt.attempt() as Attempt).steps.at(-1)?.action);
    expect(last).toMatchObject({ type: 'read', said: 4 + 3 / 16 });

    // The last tool of all is far along the strip; in hand it stays in sight.
    await page.evaluate(() => window.__tt.show({ tool: 'trim' }));
    await page.setViewportSize(sizes[to]);
    await restingPicture(page);
    const box = await page.locator('[data-tool=trim]').boundingBox();
    expect(box!.x).toBeGreaterThanOrEqual(0);
    expect(box!.x + box!.width).toBeLessThanOrEqual(sizes[to].width);
    expect(box!.y + box!.height).toBeLessThanOrEqual(sizes[to].height);
    expect(errors).toEqual([]);
    await close();
  });
});
