import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import type { Action } from '../../src/core/site/action';
import { spriteTable } from '../../src/audio/spriteTable';
import { begin } from '../../src/core/site/take';
import { soundNames } from '../../src/present/sounds';
import { levelOf } from '../site/levels';
import { actByPointer, findAct } from './drive';
import { launchBrowser, openPage } from './support/browser';

/** Sound in a real browser: when it is fetched, what is asked for, what is remembered, and that none is needed. */

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser(inject('browser'));
});
afterAll(() => browser.close());

const site = (lang = 'en'): string =>
  `${inject('base')}?lang=${lang}&theme=day&level=garden-hut&seed=7&mode=own&screen=site`;

const tie = (station: number): Action => ({ type: 'setTie', kind: 'joist', station });

const act = (page: Page, action: Action): Promise<unknown> =>
  page.evaluate((one) => void window.__tt.do(one), action);

const heard = (page: Page): Promise<readonly (readonly string[])[]> =>
  page.evaluate(() => window.__tt.heard());

const ofSound = (url: string): boolean => /\.mp3$|howler/.test(url);

declare global {
  interface Window {
    /** The library's own, as it puts itself there. */
    Howler?: {
      readonly ctx: AudioContext;
      readonly masterGain: GainNode;
      readonly _howls: readonly { readonly state: () => string }[];
    };
    /** The highest sample that came out since somebody began to listen. */
    loudest?: number;
  }
}

/** Run in the page: keeps the highest sample from now on, told from beside the page, which may be busy drawing. */
const listenIn = async (interrupt: boolean): Promise<void> => {
  const library = window.Howler;
  if (!library) throw new Error('nothing plays');
  const name = `loudest${interrupt ? 2 : 1}`;
  const code = `registerProcessor('${name}', class extends AudioWorkletProcessor {
    most = 0;
    process([input]) {
      const now = Math.max(0, ...(input[0] ?? []).map(Math.abs));
      if (now > this.most) this.port.postMessage((this.most = now));
      return true;
    }
  })`;
  const address = URL.createObjectURL(new Blob([code], { type: 'text/javascript' }));
  await library.ctx.audioWorklet.addModule(address);
  const node = new AudioWorkletNode(library.ctx, name);
  window.loudest = 0;
  node.port.onmessage = ({ data }) => {
    window.loudest = Math.max(window.loudest ?? 0, Number(data));
  };
  library.masterGain.connect(node);
  if (interrupt) await library.ctx.suspend();
};

/** Touches the page where nothing is to be hit. */
const touch = async (page: Page): Promise<void> => {
  await page.mouse.click(2, 2);
  await page.waitForLoadState('networkidle');
};

/** Sets the first tie as a person would, by pointer. */
const setTie = async (page: Page): Promise<void> => {
  const found = findAct(begin(levelOf('garden-hut'), 7, 'own'), tie(1));
  if (!found) throw new Error('no tool offers the tie');
  await actByPointer(page, found);
};

/** What stands in brackets in the caption. */
const heardCaptions = (page: Page): Promise<readonly string[]> =>
  page.locator('.caption .heard').allInnerTexts();

const press = (page: Page, label: RegExp): Promise<void> => page.getByRole('button', { name: label }).click();

describe('sound', () => {
  it('is not fetched before the first touch, and once after it', async () => {
    const { page, errors, requests, close } = await openPage(browser, site());
    await act(page, tie(1));
    await page.waitForLoadState('networkidle');
    expect(requests.filter(ofSound)).toEqual([]);
    expect(await heard(page)).toEqual([]);
    const fetched = page.waitForResponse(/\.mp3$/);
    await touch(page);
    await fetched;
    await act(page, tie(2));
    await touch(page);
    await act(page, tie(3));
    expect(await heard(page)).toEqual([['rafter'], ['rafter']]);
    expect(requests.filter((url) => url.endsWith('.mp3'))).toHaveLength(1);
    expect(requests.filter((url) => !url.startsWith(inject('base')))).toEqual([]);
    expect(errors).toEqual([]);
    await close();
  });

  it('comes out of the page, also once the system has interrupted it', async () => {
    const { page, errors, close } = await openPage(browser, site());
    const fetched = page.waitForResponse(/\.mp3$/);
    await touch(page);
    await fetched;
    await page.waitForFunction(() => window.Howler?._howls[0]?.state() === 'loaded');
    for (const interrupted of [false, true]) {
      await page.evaluate(listenIn, interrupted);
      await act(page, tie(interrupted ? 2 : 1));
      await page.waitForFunction(() => (window.loudest ?? 0) > 0.01);
    }
    expect(errors).toEqual([]);
    await close();
  });

  it('can be read by the browser, each sound where the table has it', async () => {
    const { page, close } = await openPage(browser, site());
    const fetched = page.waitForResponse(/\.mp3$/);
    await touch(page);
    const url = (await fetched).url();
    const peaks = await page.evaluate(
      async ({ from, table }) => {
        const bytes = await (await fetch(from)).arrayBuffer();
        const audio = await new OfflineAudioContext(1, 1, 24_000).decodeAudioData(bytes);
        const all = audio.getChannelData(0);
        const loudest = (start: number, long: number): number =>
          all
            .subarray(start * audio.sampleRate, (start + long) * audio.sampleRate)
            .reduce((most, value) => Math.max(most, Math.abs(value)), 0);
        return table.map(([at, long]) => ({
          inside: loudest(at / 1000, long / 1000 + 0.06),
          before: loudest(at / 1000 - 0.035, 0.03),
        }));
      },
      { from: url, table: soundNames.map((name): readonly [number, number] => spriteTable[name]) },
    );
    for (const [i, { inside, before }] of peaks.entries()) {
      expect(inside, soundNames[i]).toBeLessThan(1);
      expect(before, soundNames[i]).toBeLessThan(0.1 * inside);
    }
    await close();
  });

  it.each([
    ['en', '[board lands]'],
    ['es', '[cae una tabla]'],
  ])('has its words in the caption, in %s', async (lang, said) => {
    const { page, close } = await openPage(browser, site(lang));
    await setTie(page);
    expect(await heard(page)).toEqual([['rafter']]);
    expect(await heardCaptions(page)).toEqual([said]);
    await close();
  });

  it('is off when it was put off, also after a reload; then nothing is fetched, and captions stay', async () => {
    const { page, errors, requests, close } = await openPage(browser, site());
    await page.keyboard.press('Tab');
    await page.waitForLoadState('networkidle');
    await press(page, /Settings/);
    await page.getByRole('radiogroup', { name: 'Sound' }).getByRole('radio', { name: 'off' }).click();
    await page.waitForTimeout(200);
    const before = requests.filter(ofSound).length;
    await page.goto(site());
    await page.waitForFunction(() => '__tt' in window);
    await setTie(page);
    expect(await heard(page)).toEqual([]);
    expect(await heardCaptions(page)).toEqual(['[board lands]']);
    expect(requests.filter(ofSound)).toHaveLength(before);
    expect(errors).toEqual([]);
    await close();
  });

  it('keeps its volumes, set by keys alone', async () => {
    const { page, errors, close } = await openPage(browser, site());
    await press(page, /Settings/);
    const work = page.getByRole('slider', { name: 'Work' });
    await work.focus();
    await page.keyboard.press('ArrowLeft');
    await page.keyboard.press('ArrowLeft');
    await page.getByRole('slider', { name: 'Machine' }).focus();
    await page.keyboard.press('Home');
    expect(await heard(page)).toEqual([['hammer'], ['hammer'], ['lift']]);
    await page.goto(site());
    await page.waitForFunction(() => '__tt' in window);
    await press(page, /Settings/);
    expect(await work.inputValue()).toBe('50');
    expect(await work.getAttribute('aria-valuetext')).toBe('50 %');
    expect(await page.getByRole('slider', { name: 'Machine' }).getAttribute('aria-valuetext')).toBe('silent');
    expect(errors).toEqual([]);
    await close();
  });

  it('is not missed where there is none', async () => {
    const { page, errors, close } = await openPage(browser, site());
    await page.evaluate(() => {
      Object.assign(window, { AudioContext: undefined, webkitAudioContext: undefined, Audio: undefined });
    });
    await touch(page);
    await act(page, tie(1));
    await page.waitForTimeout(300);
    expect(await page.locator('.caption').count()).toBe(1);
    expect(errors).toEqual([]);
    await close();
  });
});
