import { createRequire } from 'node:module';
import { readFileSync } from 'node:fs';
import jsqr from 'jsqr';
import type { Browser, Page } from 'playwright-core';
import { PNG } from 'pngjs';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { linkOf, readLink } from '../../src/content/link';
import { readRoofText } from '../../src/content/readRoof';
import { cardPage } from '../../src/present/roofs/cardPage';
import type { CardAsked } from '../../src/present/roofs/card';
import {
  exampleAsked,
  exampleNames,
  examplePlan,
  exampleText,
  langs,
  papers,
} from '../present/roofs/examples';
import { launchBrowser } from './support/browser';
import { pdfReader } from './support/pdfPages';

/** Set cards as a browser lays them out and prints them: every example, in both languages, on both papers. */

const { resolve } = createRequire(import.meta.url);
const font = (path: string): string => readFileSync(resolve(path)).toString('base64');
const fonts = {
  word: font('@fontsource-variable/public-sans/files/public-sans-latin-wght-normal.woff2'),
  narrow: font('@fontsource/barlow-condensed/files/barlow-condensed-latin-600-normal.woff2'),
};

let browser: Browser;
let page: Page;
let pageSizes: Awaited<ReturnType<typeof pdfReader>>;
beforeAll(async () => {
  browser = await launchBrowser(inject('browser'));
  page = await browser.newPage({ viewport: { width: 900, height: 1200 }, deviceScaleFactor: 4 });
  pageSizes = await pdfReader(browser);
});
afterAll(() => browser.close());

const packed = (name: string): string => JSON.stringify(JSON.parse(exampleText(name)));

const asked = (
  name: string,
  so: Pick<CardAsked, 'paper'> & { lang: 'en' | 'es' },
  base?: string,
): CardAsked => ({
  ...exampleAsked(name, so),
  paper: so.paper,
  carried:
    base === undefined
      ? { kind: 'file', text: packed(name) }
      : { kind: 'link', text: `${base}${linkOf({ kind: 'roof', text: packed(name) })}` },
});

const shown = async (card: CardAsked, ownFaces = false): Promise<void> => {
  await page.setContent(cardPage(card, ownFaces ? undefined : fonts));
  await page.evaluate('document.fonts.ready.then(() => undefined)');
};

/** What is cut off, too small or too thin, in words. Sizes in points. */
const faults = (): Promise<readonly string[]> =>
  page.evaluate(`(() => {
    const point = 96 / 72;
    const card = document.querySelector('.set-card');
    const edge = card.getBoundingClientRect();
    const out = [];
    if (card.scrollHeight > card.clientHeight + 1) out.push('too tall by ' + (card.scrollHeight - card.clientHeight));
    if (card.scrollWidth > card.clientWidth + 1) out.push('too wide by ' + (card.scrollWidth - card.clientWidth));
    const walk = document.createTreeWalker(card, NodeFilter.SHOW_TEXT);
    while (walk.nextNode()) {
      const node = walk.currentNode;
      const text = node.textContent.trim();
      if (text === '') continue;
      const size = parseFloat(getComputedStyle(node.parentElement).fontSize) / (node.parentElement.ownerSVGElement ? 1 : point);
      const isFigure = /\\d"|\\d°|\\d\\/\\d|mm\\b/.test(text) && !node.parentElement.closest('.plain');
      if (size < (isFigure ? 14 : 11) - 0.01) out.push(text + ' at ' + size);
      const range = document.createRange();
      range.selectNodeContents(node);
      for (const box of range.getClientRects())
        if (box.right > edge.right - 20 || box.left < edge.left + 20 || box.bottom > edge.bottom - 20) out.push(text + ' at the edge');
    }
    for (const svg of card.querySelectorAll('svg.drawing')) {
      const scale = svg.getBoundingClientRect().width / svg.viewBox.baseVal.width / point;
      if (scale < 0.995) out.push('drawing at ' + scale);
      for (const line of svg.querySelectorAll('line, polyline, polygon'))
        if (parseFloat(getComputedStyle(line).strokeWidth) * scale < 0.99) out.push('thin line');
    }
    for (const one of card.querySelectorAll('*')) {
      const style = getComputedStyle(one);
      for (const side of ['Top', 'Left', 'Bottom', 'Right']) {
        const wide = parseFloat(style['border' + side + 'Width']);
        if (wide > 0 && wide < point - 0.35) out.push('thin border on ' + one.className);
      }
    }
    const parts = [...card.children].map((one) => one.getBoundingClientRect());
    parts.slice(1).forEach((box, i) => { if (box.top < parts[i].bottom - 0.5) out.push('part ' + i + ' runs into the next'); });
    return out;
  })()`);

describe('a set card is one page with nothing cut off and nothing too small to read', () => {
  it.each(exampleNames)('%s', async (name) => {
    for (const lang of langs)
      for (const paper of papers) {
        await shown(asked(name, { lang, paper }, 'https://roofs.example/'));
        expect(await faults(), `${lang} ${paper}`).toEqual([]);
        const size = paper === 'letter' ? [612, 792] : [595, 842];
        const pdf = await page.pdf({ preferCSSPageSize: true, printBackground: true });
        expect(await pageSizes(pdf), `${lang} ${paper}`).toEqual([size]);
      }
  });

  it('finds what is wrong with a card that is too full', async () => {
    await shown(asked('gable', { lang: 'en', paper: 'letter' }));
    await page.evaluate(
      `document.querySelector('.order').insertAdjacentHTML('beforeend', '<p style="font-size:9pt">9 1/2"</p>'.repeat(20))`,
    );
    const found = await faults();
    expect(found.join('\n')).toMatch(/too tall/);
    expect(found.join('\n')).toMatch(/9 1\/2" at 9/);
  });

  it.each(['gable', 'hip-unequal', 'gable-wing'])('%s, in the machine’s own faces', async (name) => {
    for (const paper of papers) {
      await shown(asked(name, { lang: 'es', paper }), true);
      const pdf = await page.pdf({ preferCSSPageSize: true });
      expect(await pageSizes(pdf)).toHaveLength(1);
    }
  });
});

describe('the code on a card', () => {
  const read = async (): Promise<string> => {
    const shot = PNG.sync.read(await page.locator('.code').screenshot({ scale: 'device' }));
    return jsqr(new Uint8ClampedArray(shot.data), shot.width, shot.height)?.data ?? '';
  };

  it.each(exampleNames)('%s: is read back as the roof', async (name) => {
    await shown(asked(name, { lang: 'en', paper: 'letter' }));
    const roof = readRoofText(await read());
    expect(roof.ok && roof.value).toEqual(examplePlan(name));
    await shown(asked(name, { lang: 'es', paper: 'a4' }, 'https://roofs.example/app/'));
    const link = await read();
    expect(link.startsWith('https://roofs.example/app/#roof=')).toBe(true);
    const linked = readLink(link.slice(link.indexOf('#')));
    expect(linked?.ok && linked.value).toEqual({ kind: 'roof', text: packed(name) });
  });
});
