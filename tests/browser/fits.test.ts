import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { launchBrowser } from './support/browser';
import { misfitsOn } from './support/fits';

/** The look for misfits finds what it should and lets the rest be, on pages made for it. */

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser(inject('browser'));
});
afterAll(() => browser.close());

const style = 'body{margin:0;font:16px/1.5 sans-serif} button{width:80px;height:44px;padding:0}';

const found = async (body: string): Promise<readonly string[]> => {
  const page = await browser.newPage({ viewport: { width: 400, height: 300 } });
  await page.setContent(`<!doctype html><style>${style}</style><body>${body}`);
  const misfits = await misfitsOn(page);
  // A page that stands scrolled, where a person can scroll it, is judged alike.
  await page.evaluate(() => {
    const held = getComputedStyle(document.documentElement).overflowY === 'hidden';
    if (!held) scrollTo(0, 10_000);
  });
  expect(await misfitsOn(page)).toEqual(misfits);
  await page.close();
  return misfits.map(({ kind, what }) => `${kind}: ${what}`);
};

describe('the look for misfits', () => {
  it.each([
    [
      'words cut across',
      '<p style="width:60px;overflow:hidden;white-space:nowrap">ridge and rafters</p>',
      'cut text: ridge and rafters',
    ],
    [
      'words cut with dots',
      '<p style="width:60px;overflow:hidden;white-space:nowrap;text-overflow:ellipsis">ridge and rafters</p>',
      'cut text: ridge and rafters',
    ],
    [
      'words cut below',
      '<div style="height:20px;overflow:hidden"><p style="margin:0">one<br>two</p></div>',
      'cut text: two',
    ],
    ['words off the page', '<p style="position:absolute;left:-50px">plate</p>', 'cut text: plate'],
    ['small words', '<p style="font-size:12px">tail</p>', 'small text: tail'],
    [
      'small digits of a fraction',
      '<span class="frac"><b style="font-size:11px">3</b></span>',
      'small text: 3',
    ],
    [
      'words under something',
      '<p>heel</p><div style="position:absolute;inset:0;background:#fff"></div>',
      'covered: heel',
    ],
    [
      'a target out of reach',
      '<button style="position:fixed;left:390px;top:0">a</button>',
      'out of reach: button “a”',
    ],
    [
      'a target below a page that does not scroll',
      '<style>html{overflow:hidden}</style><button style="position:absolute;top:290px">a</button>',
      'out of reach: button “a”',
    ],
    ['a small target', '<button style="width:80px;height:20px">a</button>', 'small target: button “a”'],
    [
      'two targets on one place',
      '<button>a</button><button style="margin-left:-30px">b</button>',
      'overlap: button “a”',
    ],
    [
      'words that run on over a field',
      '<div style="display:flex"><p style="width:20px;margin:0">outside</p><input style="width:60px"></div>',
      'overlap: outside',
    ],
    ['a page that scrolls sideways', '<div style="width:500px">wide</div>', 'sideways: the page'],
  ])('finds %s', async (_, body, misfit) => {
    expect(await found(body)).toContain(misfit);
  });

  it.each([
    ['words and targets with room', '<p>ridge</p><button>a</button> <button>b</button>'],
    ['words that run on over nothing', '<p style="width:20px">outside</p>'],
    ['words for ears only', '<p style="position:absolute;width:1px;height:1px;overflow:hidden">for ears</p>'],
    ['hidden words', '<p style="visibility:hidden;font-size:9px">gone</p>'],
    ['a page to scroll down', '<p>up</p><div style="height:900px"></div><button>a</button><p>down</p>'],
    [
      'a box that only a script could scroll',
      '<div style="height:60px;overflow:hidden"><button>a</button><div style="height:80px"></div></div>',
    ],
    [
      'a list to scroll, its sticky button over it',
      `<div style="height:120px;overflow:auto">${'<button style="display:block">a</button>'.repeat(6)}
       <button style="position:sticky;bottom:0">go</button></div>`,
    ],
    [
      'a question over the page',
      '<p style="font-size:9px">under</p><div aria-modal="true" style="position:fixed;inset:0;background:#fff"><button>a</button></div>',
    ],
    ['digits of a stacked fraction', '<span class="frac"><b style="font-size:12px">3</b></span>'],
    [
      'words that leave a box that does not hold them',
      '<div style="height:20px;overflow:hidden"><p style="position:absolute;top:60px;margin:0">free</p></div>',
    ],
  ])('lets %s be', async (_, body) => {
    expect(await found(body)).toEqual([]);
  });

  it('leaves the page scrolled as it was', async () => {
    const page = await browser.newPage({ viewport: { width: 400, height: 300 } });
    await page.setContent(
      `<style>${style}</style><p>up</p><div style="height:900px"></div><button>a</button>`,
    );
    await page.evaluate(() => scrollTo(0, 120));
    await misfitsOn(page);
    expect(await page.evaluate(() => scrollY)).toBe(120);
    await page.close();
  });
});
