import { readFileSync, writeFileSync } from 'node:fs';
import { cpus, loadavg } from 'node:os';
import { gzipSync } from 'node:zlib';
import type { Browser, CDPSession, Page } from 'playwright-core';
import type { Plugin } from 'vite';
import { play } from '../../src/core/hands/play';
import type { Action } from '../../src/core/site/action';
import { launchBrowser, ready } from '../browser/support/browser';
import { builtSite } from '../browser/support/builtSite';
import { browserPath } from '../browser/support/chromium';
import { levelOf } from '../site/levels';
import { emptyPage } from './emptyPage';
import { afresh, counting, drawsIn } from './inPage';
import { scriptOfFrames } from './scriptOfFrames';
import { median } from './timing';
import { actsForSixty, sixtyPairs } from './sixtyPairs';

/**
 * The second half of `npm run bench`: what the built site costs in a browser. A line for each figure: value, target,
 * reached or not, and how busy the machine was. Nothing is asserted. Figures go to tests/bench/last.json.
 * `tsx tests/bench/site.ts bytes|start|heap|frame …` measures only those named.
 */

type Figure = {
  readonly name: string;
  readonly value: number;
  readonly unit: string;
  readonly target: number;
  /** Load average of the last minute when it was taken. */
  readonly load: number;
};

const figures: Figure[] = [];
const note = (name: string, value: number, { unit, target }: Pick<Figure, 'unit' | 'target'>): void => {
  const figure = { name, value: Math.round(value * 100) / 100, unit, target, load: loadavg()[0] ?? NaN };
  figures.push(figure);
  keep();
  const reached = figure.value <= target ? 'reached' : 'MISSED';
  console.log(
    `${name}: ${figure.value} ${unit}, wanted at most ${target}: ${reached} (load ${figure.load.toFixed(1)})`,
  );
};

/** At once, so that what was measured is kept whatever comes after. */
const keep = (): void => {
  const file = new URL('./last.json', import.meta.url);
  const last = JSON.parse(readFileSync(file, 'utf8')) as { inBrowser?: { figures: readonly Figure[] } };
  const before = last.inBrowser?.figures ?? [];
  const kept = before.filter(({ name }) => !figures.some((one) => one.name === name));
  const machine = `${cpus()[0]?.model ?? 'unknown'}, ${cpus().length} cores`;
  const inBrowser = { machine, figures: [...kept, ...figures] };
  writeFileSync(file, `${JSON.stringify({ ...last, inBrowser }, null, 2)}\n`);
};

const deep = '?lang=en&theme=day&level=garden-hut&seed=7&mode=own&screen=site';
const desk = { width: 1280, height: 800 };

const perform = (page: Page, acts: readonly Action[]): Promise<void> =>
  page.evaluate((all) => all.forEach((one) => window.__tt.do(one)), acts);

/** The roof of 60 pairs in the place of the first job. */
const longRoof: Plugin = {
  name: 'long-roof',
  enforce: 'pre',
  load: (id) =>
    /garden-hut\.json\?raw$/.test(id) ? `export default ${JSON.stringify(sixtyPairs())}` : undefined,
};

/** For how long a hand moves the picture, ms. */
const movedFor = 10_000;

/** Acts of a job with the most motion in it, one after the other as they are shown. */
const shownActs = 12;

const byHand = async (page: Page, [x, y]: readonly [number, number]): Promise<void> => {
  await page.mouse.move(x, y);
  await page.mouse.down();
  const enough = performance.now() + movedFor;
  for (let i = 0; performance.now() < enough; i++)
    await page.mouse.move(x + 90 * Math.sin(i / 9), y + 50 * Math.cos(i / 11));
  await page.mouse.up();
};

/** Script of a frame while a hand moves the picture and while the crew works, and draws when nothing moves. */
const moving = async (browser: Browser): Promise<void> => {
  const { base, close } = await builtSite([longRoof]);
  const page = await browser.newPage({ viewport: desk, reducedMotion: 'no-preference' });
  await page.addInitScript(counting);
  await page.goto(base + deep);
  await ready(page);
  const acts = actsForSixty(sixtyPairs(), 7);
  await perform(page, acts.slice(0, -shownActs));
  await page.evaluate(() => window.__tt.show({ view: 'overview' }));
  await page.waitForTimeout(4000);
  const box = await page.locator('.stage canvas').first().boundingBox();
  if (!box) throw new Error('no drawing');
  const middle = [box.x + box.width / 2, box.y + box.height / 2] as const;
  await page.mouse.move(...middle);
  await page.mouse.wheel(0, -400);
  await page.waitForTimeout(2000);
  frameNote('moved by hand', await scriptOfFrames(browser, () => byHand(page, middle)));
  await page.waitForTimeout(4000);
  const crew = async (): Promise<void> => {
    for (const act of acts.slice(-shownActs)) {
      await perform(page, [act]);
      await page.waitForTimeout(2500);
    }
  };
  frameNote('while the crew works', await scriptOfFrames(browser, crew));
  await page.waitForTimeout(4000);
  await afresh(page);
  await page.waitForTimeout(5000);
  note('draws a second when nothing moves, 60 pairs', (await drawsIn(page)) / 5, { unit: '', target: 0 });
  await page.context().close();
  await close();
};

const frameNote = (when: string, frames: readonly number[]): void => {
  const longest = Math.max(...frames).toFixed(0);
  console.log(`${frames.length} frames ${when}; most script in one of them ${longest} ms`);
  note(`script of a frame, 60 pairs, ${when}, median`, median(frames), { unit: 'ms', target: 6 });
};

const heapOf = async (cdp: CDPSession): Promise<number> => {
  for (let i = 0; i < 3; i++) await cdp.send('HeapProfiler.collectGarbage');
  return (await cdp.send('Runtime.getHeapUsage')).usedSize / 1e6;
};

/** Five runs of 500 acts one after the other: what is still held after each. */
const heap = async (browser: Browser, base: string): Promise<void> => {
  const all = play(levelOf('garden-hut'), 'expert', { seed: 7, mode: 'own' }).steps.map(
    ({ action }) => action,
  );
  const job = all.filter(({ type }) => type !== 'handOver');
  const looks = job.filter(({ type }) => type === 'read');
  const acts = [...job, ...looks, ...looks, ...looks].slice(0, 500);
  const page = await browser.newPage({ viewport: desk, reducedMotion: 'reduce' });
  const cdp = await page.context().newCDPSession(page);
  await page.goto(base + deep);
  await ready(page);
  const held = [await heapOf(cdp)];
  for (let round = 0; round < 5; round++) {
    await perform(page, acts);
    await page.waitForTimeout(1000);
    await page.evaluate(() => window.__tt.settled());
    await page.evaluate(() => window.__tt.go('talk'));
    await page.click('#begin');
    await page.waitForTimeout(1000);
    held.push(await heapOf(cdp));
  }
  console.log(
    `heap before, and after each of five runs of ${acts.length} acts, MB: ${held.map((one) => one.toFixed(1)).join(' ')}`,
  );
  note('heap grown from the second run to the fifth', (held[5] ?? NaN) - (held[2] ?? NaN), {
    unit: 'MB',
    target: 1,
  });
  await page.context().close();
};

/** As text: what compiles this file names functions with a helper that no page has. */
const looking = `(function look() {
  if (!('__tt' in window)) return requestAnimationFrame(look);
  requestAnimationFrame(() => requestAnimationFrame(() => { window.usable = performance.now(); }));
})();`;

/** From asking for the page until it can be used and two frames were shown, ms; nothing kept from before. */
const firstScreen = async (browser: Browser, url: string, slower: number): Promise<number> => {
  const context = await browser.newContext({ viewport: desk, serviceWorkers: 'block' });
  const page = await context.newPage();
  const cdp = await context.newCDPSession(page);
  if (slower > 1) await cdp.send('Emulation.setCPUThrottlingRate', { rate: slower });
  await page.addInitScript({ content: looking });
  await page.goto(url);
  await page.waitForFunction(() => 'usable' in window, undefined, { timeout: 120_000 });
  const took = await page.evaluate(() => (window as unknown as { usable: number }).usable);
  await context.close();
  return took;
};

const runs = 7;

const starts = async (browser: Browser, base: string): Promise<void> => {
  const empty = await emptyPage();
  for (const slower of [1, 4]) {
    const [ours, theirs]: [number[], number[]] = [[], []];
    for (let i = 0; i < runs; i++) {
      ours.push(await firstScreen(browser, base, slower));
      theirs.push(await firstScreen(browser, empty.base, slower));
    }
    console.log(
      `first screen, CPU ÷${slower}: ours ${median(ours).toFixed(0)} ms, an empty page of the engine ${median(theirs).toFixed(0)} ms`,
    );
    note(`first screen over an empty page of the engine, CPU ÷${slower}`, median(ours) / median(theirs), {
      unit: 'times',
      target: 1.5,
    });
  }
  await empty.close();
};

/** What is asked for before the first screen, zipped, and what a second visit fetches anew. */
const bytes = async (browser: Browser, base: string): Promise<void> => {
  const context = await browser.newContext({ viewport: desk });
  const page = await context.newPage();
  const seen: Promise<{ readonly url: string; readonly size: number }>[] = [];
  let counting = true;
  page.on('response', (response) => {
    if (counting && /(\/|\.html|\.js|\.css|\.woff2)$/.test(response.url().replace(/[?#].*$/, '')))
      seen.push(
        response.body().then((body) => ({
          url: response.url(),
          size: response.url().endsWith('.woff2') ? body.length : gzipSync(body).length,
        })),
      );
  });
  await page.goto(base);
  await page.waitForFunction(() => '__tt' in window);
  counting = false;
  // What comes behind the first screen is no part of the first load.
  const behind = await page.evaluate(() => {
    const stands = performance.getEntriesByName('stands')[0]?.startTime ?? Infinity;
    return performance
      .getEntriesByType('resource')
      .filter(({ startTime }) => startTime > stands)
      .map(({ name }) => name);
  });
  const sizes = (await Promise.all(seen)).filter(({ url }) => !behind.includes(url)).map(({ size }) => size);
  note('first load, zipped', sizes.reduce((sum, one) => sum + one, 0) / 1000, {
    unit: 'kB',
    target: 600,
  });
  await page.waitForFunction(
    () => navigator.serviceWorker.controller !== null || navigator.serviceWorker.ready.then(() => true),
  );
  await page.waitForTimeout(3000);
  let fetched = 0;
  page.on('response', (response) => void (!response.fromServiceWorker() && fetched++));
  await page.reload();
  await ready(page);
  note('files a later load asks the network for', fetched, { unit: '', target: 0 });
  await context.close();
};

const main = async (): Promise<void> => {
  const wanted = process.argv.slice(2);
  const asked = (name: string): boolean => wanted.length === 0 || wanted.includes(name);
  const browser = await launchBrowser(await browserPath());
  const { base, close } = await builtSite();
  if (asked('bytes')) await bytes(browser, base);
  if (asked('start')) await starts(browser, base);
  if (asked('heap')) await heap(browser, base);
  if (asked('frame')) await moving(browser);
  await browser.close();
  await close();
};

await main();
