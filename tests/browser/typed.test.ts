import fc from 'fast-check';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, it } from 'vitest';
import { styles } from '../../src/content/draft/fields';
import { launchBrowser, openPage } from './support/browser';

/**
 * Anything at all put into the fields of tomorrow's roof on the page itself. Nothing crashes, no figure is no number, and what
 * cannot be is refused in sentences. TYPED=2000 asks for that many entries.
 */

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser(inject('browser'));
});
afterAll(() => browser.close());

const measure = fc.oneof(
  fc.integer({ min: -9, max: 600 }).map((inches) => `${inches}"`),
  fc
    .tuple(fc.nat({ max: 50 }), fc.nat({ max: 14 }), fc.nat({ max: 17 }), fc.nat({ max: 17 }))
    .map(([feet, inches, over, under]) => `${feet}' ${inches}-${over}/${under}"`),
  fc.integer({ min: 0, max: 20_000 }).map((mm) => `${mm} mm`),
  fc.double({ min: -5, max: 60 }).map(String),
);
const hostile = fc.constantFrom(
  '',
  ' ',
  '12',
  '0',
  '-0',
  'NaN',
  'Infinity',
  '1e309',
  '9'.repeat(120),
  '1/0"',
  'twelve',
  '12 furlongs',
  '__proto__',
  'constructor',
  '<img src=x onerror="window.boom=1">',
  '";window.boom=1//',
  '=1+1',
  '\u202e"21',
  '\u0000',
  '🪚🪵',
  '１２',
  '12’ 6½”',
  '10, 20',
  "10' 20' ; <b>",
);
const entry = fc.record({
  field: fc.nat(),
  text: fc.oneof(
    { weight: 5, arbitrary: measure },
    { weight: 3, arbitrary: hostile },
    fc.string({ maxLength: 30 }),
  ),
  // Now and then another kind of roof. Most answers are taken back after, or soon nothing could be figured any more.
  kept: fc.oneof({ weight: 9, arbitrary: fc.constant(false) }, fc.constant(true)),
  style: fc.oneof({ weight: 9, arbitrary: fc.constant('') }, fc.constantFrom(...styles)),
});
type Entry = {
  readonly field: number;
  readonly text: string;
  readonly style: string;
  readonly kept: boolean;
};

type Came = { readonly refused: boolean; readonly faults: readonly string[] };

/** Puts entries in as a keyboard does, one after the other, and reads the page after each. */
const putIn = (page: Page, entries: readonly Entry[]): Promise<readonly Came[]> =>
  page.evaluate(async (all) => {
    const drawn = () => new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
    const put = (into: HTMLInputElement | HTMLSelectElement, text: string): void => {
      into.value = text;
      into.dispatchEvent(
        new Event(into instanceof HTMLSelectElement ? 'change' : 'input', { bubbles: true }),
      );
    };
    const came: { refused: boolean; faults: string[] }[] = [];
    for (const { field, text, style, kept } of all) {
      if (style !== '') put(document.querySelector('#own-style') as HTMLSelectElement, style);
      await drawn();
      const open = [...document.querySelectorAll<HTMLInputElement | HTMLSelectElement>('.ownForm [name]')];
      const into = open[field % open.length] as HTMLInputElement | HTMLSelectElement;
      const choices = into instanceof HTMLSelectElement ? [...into.options] : [];
      const before = into.value;
      put(into, choices.length > 0 ? (choices[text.length % choices.length]?.value ?? '') : text);
      await drawn();
      const faults: string[] = [];
      const page = document.querySelector('main') ?? document.body;
      // A word that was typed is quoted back.
      const said = page.innerText;
      const odd = /\bNaN\b|Infinity|undefined|\[object/.exec(said.replace(/"(?:NaN|Infinity)"/g, ''));
      if (odd)
        faults.push(`${into.name}=${text}: reads ${said.slice(Math.max(0, odd.index - 40), odd.index + 40)}`);
      const drawings = [...page.querySelectorAll('svg *')].flatMap((one) => [...one.attributes]);
      const bad = drawings.find(({ value }) => /NaN|Infinity|undefined/.test(value));
      if (bad) faults.push(`${into.name}=${text}: draws ${bad.name}="${bad.value.slice(0, 60)}"`);
      if (Reflect.get(window, 'boom') !== undefined || page.querySelector('img[src=x]'))
        faults.push(`${text}: ran`);
      const wrong = [...page.querySelectorAll('.saidOf .wrong')].map((one) => one.textContent ?? '');
      for (const sentence of wrong)
        if (!/^\S.*[.”]$/.test(sentence)) faults.push(`${into.name}=${text}: ${sentence}`);
      const refused = document.querySelector<HTMLButtonElement>('#toCard')?.disabled === true;
      if (refused && document.querySelector('#refusals')?.textContent === '')
        faults.push(`${text}: refused without a word`);
      if (refused !== (document.querySelector('#refusals button, #refusals li') !== null))
        faults.push(`${into.name}=${text}: refused ${String(refused)}, and said otherwise`);
      came.push({ refused, faults });
      if (!kept || refused) put(into, before);
    }
    return came;
  }, entries as Entry[]);

it('is figured or refused in sentences', async () => {
  const count = Number(process.env['TYPED'] ?? 150);
  const { page, errors, close } = await openPage(browser, `${inject('base')}?lang=en&theme=day&screen=roof`);
  await page.waitForSelector('#own-span');
  const came = await putIn(page, fc.sample(entry, { numRuns: count, seed: 7 }));
  expect(came.flatMap(({ faults }) => faults)).toEqual([]);
  expect(errors).toEqual([]);
  const refused = came.filter((one) => one.refused).length;
  if (process.env['TYPED']) console.log({ count, refused });
  expect(refused).toBeGreaterThan(0);
  expect(refused).toBeLessThan(count);
  await close();
}, 900_000);
