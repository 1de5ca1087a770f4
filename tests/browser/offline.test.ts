import { cpSync, mkdtempSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import type { Attempt } from '../../src/core/site/attempt';
import { serveFolder } from '../../src/tt/serve/siteServer';
import { levelOf } from '../site/levels';
import { begin, take } from '../../src/core/site/take';
import { actByPointer, findAct } from './drive';
import { hutScript } from './hutScript';
import { launchBrowser, openPage, ready } from './support/browser';
import { builtSite } from './support/builtSite';

/** The site without a network: once opened it opens again, works, and keeps; a new version waits for its turn. */

let browser: Browser;
let site: Awaited<ReturnType<typeof builtSite>>;
beforeAll(async () => {
  browser = await launchBrowser(inject('browser'));
  site = await builtSite();
});
afterAll(async () => {
  await browser.close();
  await site.close();
});

const level = levelOf('garden-hut');
const deep = '?lang=en&theme=day&level=garden-hut&seed=7&mode=own&screen=site';

const kept = (page: Page): Promise<unknown> =>
  page.evaluate(() => navigator.serviceWorker.ready.then(({ active }) => active?.scriptURL));

const inPage = (page: Page): Promise<Attempt> =>
  page.evaluate(() => window.__tt.attempt()) as Promise<Attempt>;

/** A copy of the built site served on its own, so that its server can be stopped and its files changed. */
const servedCopy = async () => {
  const folder = mkdtempSync(join(tmpdir(), 'tack-and-true-copy-'));
  cpSync(site.folder, folder, { recursive: true });
  const served = await serveFolder(folder, 0);
  return { ...served, folder, clear: () => rmSync(folder, { recursive: true }) };
};

describe('the built site', () => {
  it('is served with kinds that browsers take for a worker and a manifest', async () => {
    const kindOf = async (path: string): Promise<string | null> => {
      const reply = await fetch(site.base + path);
      expect(reply.status, path).toBe(200);
      return reply.headers.get('content-type');
    };
    expect(await kindOf('offline.js')).toMatch(/^text\/javascript/);
    const page = await (await fetch(site.base)).text();
    const manifest = /<link rel="manifest" href="\.\/([^"]+)"/.exec(page)?.[1] ?? '';
    expect(await kindOf(manifest)).toMatch(/^application\/manifest\+json/);
    const said = (await (await fetch(site.base + manifest)).json()) as Manifest;
    expect(said.name).toBe('Tack & True');
    expect(said.icons.length).toBeGreaterThan(2);
    for (const { src, type } of said.icons) expect(await kindOf(src)).toBe(type);
    for (const address of [said.start_url, said.scope, ...said.icons.map(({ src }) => src)])
      expect(address).toMatch(/^\.\//);
  });
});

type Manifest = {
  readonly name: string;
  readonly start_url: string;
  readonly scope: string;
  readonly icons: readonly { readonly src: string; readonly type: string }[];
};

describe('without a network', () => {
  it('opens the jobs and a link into one, works, and still has the run kept before', async () => {
    const { base, close: stop, clear } = await servedCopy();
    const { page, errors, requests, close } = await openPage(browser, base + deep);
    const script = hutScript(level, 7);
    await page.evaluate((acts) => acts.forEach((act) => window.__tt.do(act)), script.slice(0, 12));
    await page.evaluate(() => window.__tt.settled());
    const before = await page.evaluate(() => window.__tt.digest());
    expect(await kept(page)).toBe(`${base}offline.js`);
    await stop();
    await expect(fetch(base)).rejects.toThrow();

    // The run that was open comes back by itself, and goes on.
    await page.goto(base);
    await ready(page);
    expect(await page.evaluate(() => window.__tt.digest())).toEqual(before);
    const told = script.slice(0, 12).reduce(take, begin(level, 7, 'own'));
    const act = script[12]!;
    await actByPointer(page, findAct(told, act)!);
    expect((await inPage(page)).steps).toHaveLength(13);
    expect((await inPage(page)).steps[12]).toMatchObject({ action: act, outcome: { ok: true } });

    await page.goto(`${base}?lang=es&screen=start`);
    await ready(page);
    expect(await page.locator('.jobcard').count()).toBeGreaterThan(5);
    expect(await page.locator('#resume').count()).toBe(1);

    await page.goto(base + deep);
    await ready(page);
    expect((await inPage(page)).steps).toHaveLength(0);
    const first = script[0]!;
    await actByPointer(page, findAct(begin(level, 7, 'own'), first)!);
    expect((await inPage(page)).steps[0]).toMatchObject({ action: first, outcome: { ok: true } });
    const faces = await page.evaluate(() =>
      [...document.fonts].filter(({ status }) => status !== 'loaded').map(({ family }) => family),
    );
    expect(faces).toEqual([]);

    expect(errors).toEqual([]);
    expect(requests.filter((url) => !url.startsWith(base))).toEqual([]);
    await close();
    clear();
  });
});

describe('a new version', () => {
  it('waits while a page of the old one is open, and is there at the next start', async () => {
    const { base, folder, close: stop, clear } = await servedCopy();
    const { page, close } = await openPage(browser, base + deep);
    await kept(page);
    await page.reload();
    await ready(page);
    const script = hutScript(level, 7);
    await page.evaluate((act) => window.__tt.do(act), script[0]!);

    // The same site with another title, as its maker would put it there.
    const edit = (file: string, change: (text: string) => string): void => {
      const path = join(folder, file);
      const text = readFileSync(path, 'utf8');
      expect(change(text)).not.toBe(text);
      // In one stroke: the browser may be asking for it right now.
      writeFileSync(`${path}.new`, change(text));
      renameSync(`${path}.new`, path);
    };
    edit('index.html', (text) => text.replace('<html lang="en">', '<html lang="en" data-version="next">'));
    edit('offline.js', (text) =>
      text.replace(/(?<=url:"index\.html",revision:")[^"]+/, (digest) => 'n'.repeat(digest.length)),
    );
    const waits = page.evaluate(async () => {
      const found = await navigator.serviceWorker.getRegistration();
      await found?.update();
      const waiting = (): boolean => found?.waiting !== null && found?.installing === null;
      while (!waiting()) await new Promise((done) => setTimeout(done, 50));
      return waiting();
    });
    expect(await waits).toBe(true);
    expect((await inPage(page)).steps).toHaveLength(1);
    await page.reload();
    await ready(page);
    expect(await page.getAttribute('html', 'data-version')).toBeNull();

    const next = await page.context().newPage();
    await page.close();
    await expect
      .poll(async () => {
        await next.goto(`${base}?screen=start`);
        await ready(next);
        const version = await next.getAttribute('html', 'data-version');
        await next.goto('about:blank');
        return version;
      })
      .toBe('next');
    await close();
    await stop();
    clear();
  });
});

describe('keeping itself', () => {
  it('begins only after something was drawn, and not where it cannot be', async () => {
    const context = await browser.newContext();
    const page = await context.newPage();
    await page.addInitScript(() => {
      const seen: number[] = [];
      Object.assign(window, { seen });
      // On a plain canvas what is drawn can be read back.
      const real = Reflect.get(HTMLCanvasElement.prototype, 'getContext') as HTMLCanvasElement['getContext'];
      HTMLCanvasElement.prototype.getContext = function (
        this: HTMLCanvasElement,
        kind: string,
        how: unknown,
      ) {
        return /webgl/.test(kind) ? null : real.call(this, kind, how);
      } as HTMLCanvasElement['getContext'];
      const tones = (canvas: HTMLCanvasElement | null): number => {
        const read = canvas?.getContext('2d')?.getImageData(0, 0, canvas.width, canvas.height);
        return new Set(read && new Uint32Array(read.data.buffer)).size;
      };
      const register = navigator.serviceWorker.register.bind(navigator.serviceWorker);
      navigator.serviceWorker.register = (...asked) => {
        seen.push(tones(document.querySelector('.stage canvas')));
        return register(...asked);
      };
    });
    await page.goto(site.base + deep);
    const seen = (): Promise<readonly number[]> =>
      page.evaluate(() => (window as unknown as { readonly seen: readonly number[] }).seen);
    await expect.poll(async () => (await seen()).length, { timeout: 20_000 }).toBe(1);
    // A bare ground has one tone.
    expect((await seen())[0]).toBeGreaterThan(1000);
    await context.close();

    const without = await browser.newContext();
    const plain = await without.newPage();
    const errors: string[] = [];
    plain.on('pageerror', (error) => void errors.push(error.message));
    await plain.addInitScript(() => {
      delete (Navigator.prototype as unknown as Record<string, unknown>)['serviceWorker'];
    });
    await plain.goto(site.base + deep);
    await ready(plain);
    expect(await plain.evaluate(() => 'serviceWorker' in navigator)).toBe(false);
    expect(errors).toEqual([]);
    await without.close();
  });
});
