import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import AxeBuilder from '@axe-core/playwright';
import jsQR from 'jsqr';
import Papa from 'papaparse';
import type { Browser, Page } from 'playwright-core';
import { PNG } from 'pngjs';
import { afterAll, beforeAll, expect, inject, it } from 'vitest';
import { seedFor } from '../../src/content/assignment';
import { attemptFile, attemptText, readAttempt } from '../../src/content/attemptFile';
import { play } from '../../src/core/hands/play';
import { scoreOf } from '../../src/core/score/scored';
import { guarded } from '../../src/records/csv';
import { levelOf } from '../site/levels';
import { launchBrowser, openPage, ready, sizes } from './support/browser';
import { misfitsOn } from './support/fits';

/** By keyboard: jobs are given out, taken on under a code, played, handed in, read, and told of as a class. */

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser(inject('browser'));
});
afterAll(() => browser.close());

const job = 'pump-house';
const level = levelOf(job);

/** Goes on with the keyboard alone to the thing, however many stops are before it. */
const tabTo = async (page: Page, selector: string): Promise<void> => {
  for (let i = 0; i < 120; i++) {
    if (await page.evaluate((one) => document.activeElement?.matches(one) === true, selector)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`no way by keyboard to ${selector}`);
};
const pressed = async (page: Page, selector: string, key = 'Enter'): Promise<void> => {
  await page.waitForSelector(selector);
  await tabTo(page, selector);
  await page.keyboard.press(key);
};

/** The device's own choice of files is not a page: it is answered as soon as the button opens it. */
const picked = async (
  page: Page,
  selector: string,
  files: readonly { readonly name: string; readonly text: string }[],
): Promise<void> => {
  const chooser = page.waitForEvent('filechooser');
  await pressed(page, selector);
  await (
    await chooser
  ).setFiles(
    files.map(({ name, text }) => ({ name, mimeType: 'application/json', buffer: Buffer.from(text) })),
  );
};

const saved = async (page: Page, selector: string): Promise<string> => {
  const coming = page.waitForEvent('download');
  await pressed(page, selector);
  const chunks: Buffer[] = [];
  for await (const chunk of await (await coming).createReadStream()) chunks.push(chunk as Buffer);
  return Buffer.concat(chunks).toString('utf8');
};

const cells = (page: Page): Promise<readonly (readonly string[])[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll('.rowsOf')]
      .at(-1)!
      .querySelectorAll('tbody tr')
      .values()
      .toArray()
      .map((row) => [...row.querySelectorAll('th, td:not(.actOf)')].map((cell) => cell.textContent)),
  );

/** Nothing grave to an independent judge of accessibility. */
const graveOn = async (page: Page): Promise<readonly string[]> => {
  const { violations } = await new AxeBuilder({ page }).analyze();
  return violations
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 90)).join(' | ')}`);
};

/** Also on a phone, upright and on its side. */
const fitsEverywhere = async (page: Page): Promise<void> => {
  for (const size of ['phone', 'side', 'desk'] as const) {
    await page.setViewportSize(sizes[size]);
    expect(await misfitsOn(page), size).toEqual([]);
  }
};

/** A device that passes files on; what it was given is kept on the page. */
const sharing = (): void => {
  Object.assign(navigator, {
    canShare: () => true,
    share: async ({ files }: { readonly files: readonly File[] }) => {
      Object.assign(window, { shared: await Promise.all(files.map((file) => file.text())) });
    },
  });
};

/** The code as a camera sees it. */
const scanned = async (page: Page): Promise<string | undefined> => {
  const { data, width, height } = PNG.sync.read(await page.locator('.scan svg').screenshot());
  return jsQR(new Uint8ClampedArray(data), width, height)?.data;
};

it('goes from jobs to a report on a class', async () => {
  const { page, errors, close } = await openPage(browser, `${inject('base')}?lang=en&theme=day&screen=start`);
  await pressed(page, '#class');
  await pressed(page, `[data-job=${job}]`, 'Space');
  await tabTo(page, '#label');
  await page.keyboard.type('Evening class');
  await pressed(page, '#makeLink');
  await page.waitForSelector('#link');
  const link = await page.inputValue('#link');
  expect(await scanned(page)).toBe(link);
  await fitsEverywhere(page);
  const id = (await page.getAttribute('[data-show]', 'data-show'))!;

  // A learner, on the same device for once. The page goes on from a reload with the assignment it was given.
  await page.goto(link);
  await page.waitForSelector('#code');
  await page.reload();
  await ready(page);
  await pressed(page, `[data-taken="${id}"]`);
  await tabTo(page, '#code');
  await page.keyboard.type('r 7');
  await page.keyboard.press('Enter');
  await expect.poll(() => page.textContent('#code-bad')).toMatch(/no code/);
  await page.keyboard.press('Control+A');
  await page.keyboard.type('r7');
  await page.keyboard.press('Enter');
  await page.waitForSelector('#under');
  await fitsEverywhere(page);
  await pressed(page, `[data-assigned="${job}"]`);
  await pressed(page, '#begin');
  await page.waitForFunction(() => window.__tt.attempt() !== undefined);
  const seed = seedFor({ id }, job, 'R7');
  const honest = play(level, 'expert', { seed, mode: 'own' });
  const acts = honest.steps.slice(honest.found?.steps ?? 0).map(({ action }) => action);
  await page.evaluate((all) => all.forEach((one) => window.__tt.do(one)), acts);
  await page.evaluate(() => window.__tt.settled());
  await page.evaluate(() => window.__tt.go('debrief'));
  await page.evaluate(sharing);
  await pressed(page, '#toAssignment');
  const text = await saved(page, '#saveRuns');
  await pressed(page, '#share');
  await expect.poll(() => page.evaluate(() => Reflect.get(window, 'shared') as unknown)).toEqual([text]);
  const read = readAttempt(text);
  expect(read.ok && read.value).toMatchObject({ assignment: id, learner: 'R7', seed, mode: 'own' });

  // Back at the desk: her file, a classmate's copy of it, one of a weaker hand, one that is cut.
  const weak = play(level, 'skips-checks', { seed: seedFor({ id }, job, 'B2'), mode: 'own' });
  const other = attemptText(attemptFile(weak, scoreOf(weak), { assignment: id, learner: 'B2' }));
  const copied = attemptText(attemptFile(honest, scoreOf(honest), { assignment: id, learner: 'C3' }));
  await pressed(page, '#toJobs');
  await pressed(page, '#class');
  await pressed(page, '#page-results');
  await picked(page, '#takeFiles', [
    { name: 'r7.json', text },
    { name: 'r7 again.json', text },
    { name: 'b2.json', text: other },
    { name: 'c3.json', text: copied },
    { name: '<img src=x onerror=boom()>.json', text: text.slice(0, -9) },
  ]);
  await page.waitForSelector('#came', { timeout: 60_000 });
  expect(await page.textContent('#came')).toBe('4 files read. 1 was here before and counts once.');
  expect(await page.textContent('.wrong')).toBe(
    '<img src=x onerror=boom()>.json: $: is not JSON (a JSON object)',
  );
  await fitsEverywhere(page);
  expect(await graveOn(page)).toEqual([]);
  const rows = await cells(page);
  expect(rows.map(([code, runs]) => [code, runs])).toEqual([
    ['B2', '1 of 1'],
    ['C3', '0 of 1'],
    ['R7', '1 of 1'],
  ]);

  // The file of the table has the rows of the table.
  await pressed(page, '#learnersCsv');
  const shown = await page.inputValue('#exportText');
  const csv = await saved(page, '#saveExport');
  expect(csv.replace(/\r\n/g, '\n')).toBe(shown);
  const { data } = Papa.parse<string[]>(csv.trimEnd());
  expect(data.slice(1, -1)).toEqual(rows.map((row) => row.map(guarded)));

  // One learner, what is thought of them, and the run, only to be looked at.
  await pressed(page, '#learner-R7');
  await fitsEverywhere(page);
  expect(await graveOn(page)).toEqual([]);
  await tabTo(page, '#note');
  await page.keyboard.type('steady hands');
  await pressed(page, '#open-0');
  await page.waitForSelector('.debrief');
  expect(await page.locator('#next-act, .event .back, #again, #save').count()).toBe(0);
  const slider = '.strip input';
  await tabTo(page, slider);
  await page.keyboard.press('Home');
  await expect.poll(() => page.textContent('.caption')).toMatch(/crew-minutes/);
  await pressed(page, '#leave');
  await page.waitForSelector('#toClass');

  // All of it is there again when the page is, told by a fresh replay.
  await page.reload();
  await ready(page);
  await pressed(page, '#class');
  await pressed(page, '#page-results');
  await page.waitForSelector('#report', { timeout: 60_000 });
  expect(await cells(page)).toEqual(rows);
  await pressed(page, '#learner-R7');
  expect(await page.inputValue('#note')).toBe('steady hands');
  expect(errors).toEqual([]);
  await close();
}, 240_000);

it.each([
  ['cut', (link: string) => link.slice(0, -4), /cut or changed/],
  [
    'changed',
    (link: string) => link.replace(/(=1\.\S{5})(.)/, (_all, head, one) => head + (one === 'a' ? 'b' : 'a')),
    /changed/,
  ],
  ['newer', (link: string) => link.replace('=1.', '=2.'), /newer version/],
])('says why a link that is %s cannot be used', async (_what, spoilt, why) => {
  const { page, close } = await openPage(browser, `${inject('base')}?lang=en&screen=class`);
  await page.click(`[data-job=${job}]`);
  await page.click('#makeLink');
  const link = await page.inputValue('#link');
  await page.goto('about:blank');
  await page.goto(spoilt(link));
  await page.waitForSelector('#refused');
  expect(await page.textContent('#refused')).toMatch(why);
  expect(await page.locator('[data-assigned]').count()).toBe(0);
  await close();
});

it('says in Spanish why a link, a run or a backup cannot be used', async () => {
  const spanish = `${inject('base')}?lang=es`;
  const { page, errors, close } = await openPage(browser, `${spanish}#assignment=1.x.0`);
  await page.waitForSelector('#refused');
  expect(await page.textContent('#refused')).toContain(
    'enlace: enlace: está cortado o cambiado (el enlace entero, como se hizo)',
  );
  await page.goto('about:blank');
  await page.goto(`${spanish}&screen=class`);
  await pressed(page, '#page-results');
  await picked(page, '#takeFiles', [{ name: 'carta.json', text: 'no es una obra' }]);
  await page.waitForSelector('#came', { timeout: 60_000 });
  expect(await page.textContent('.wrong')).toBe('carta.json: $: no es JSON (un objeto JSON)');
  await pressed(page, '#page-keep');
  await picked(page, '#loadBackup', [{ name: 'copia.json', text: '[]' }]);
  await expect
    .poll(() => page.textContent('#brought'))
    .toBe('copia.json: $: es [] (un objeto con sus datos)');
  expect(errors).toEqual([]);
  await close();
});

/** Everything a page can keep, but for the files of the site itself. */
const leftOnDevice = async (): Promise<readonly string[]> => {
  const left = [...Object.keys(localStorage), ...Object.keys(sessionStorage)];
  for (const { name = '' } of await indexedDB.databases()) {
    const db = await new Promise<IDBDatabase>((done) => {
      const opening = indexedDB.open(name);
      opening.onsuccess = () => done(opening.result);
    });
    for (const store of db.objectStoreNames) {
      const asked = db.transaction(store).objectStore(store).getAllKeys();
      const found = await new Promise<readonly unknown[]>((done) => {
        asked.onsuccess = () => done(asked.result);
      });
      left.push(...found.map((key) => `${name} ${store} ${JSON.stringify(key)}`));
    }
    db.close();
  }
  return left;
};

it('keeps nothing once all is deleted, which takes two presses, and has it back from a backup', async () => {
  const { page, errors, close } = await openPage(browser, `${inject('base')}?lang=en&screen=class`);
  await page.click(`[data-job=${job}]`);
  await page.click('#makeLink');
  await page.click('#page-keep');
  await page.click('#makeBackup');
  const whole = await page.inputValue('#exportText');
  const backup = await saved(page, '#saveExport');
  expect(backup).toBe(whole);
  expect(await page.evaluate(leftOnDevice)).not.toEqual([]);
  await page.click('#eraseAll');
  await page.click('#page-out');
  await expect.poll(() => page.locator('[data-show]').count()).toBe(1);
  await page.click('#page-keep');
  await page.click('#eraseAll');
  await page.click('#eraseAll');
  await page.click('#page-out');
  await expect.poll(() => page.locator('[data-show]').count()).toBe(0);
  expect(await page.evaluate(leftOnDevice)).toEqual([]);
  await page.click('#page-keep');
  await picked(page, '#loadBackup', [{ name: 'b.json', text: backup }]);
  await expect.poll(() => page.textContent('#brought')).toMatch(/1 thing/);
  await page.click('#page-out');
  await expect.poll(() => page.locator('[data-show]').count()).toBe(1);
  expect(errors).toEqual([]);
  await close();
});

it('takes in a folder, stops when asked to, keeps what was read and goes on from there', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'runs-'));
  const hut = play(levelOf('garden-hut'), 'competent', { seed: 7, mode: 'own' });
  const score = scoreOf(hut);
  const codes = Array.from({ length: 8 }, (_, i) => `L${i}`);
  for (const learner of codes)
    writeFileSync(join(folder, `${learner}.json`), attemptText(attemptFile(hut, score, { learner })));
  writeFileSync(join(folder, 'notes.txt'), 'not a run');
  const { page, errors, close } = await openPage(browser, `${inject('base')}?lang=en&screen=class`);
  await page.click('#page-results');
  await page.setInputFiles('#takeFolderInput', folder);
  await page.click('#stopMarking');
  const said = (await page.textContent('#came')) ?? '';
  expect(said).toMatch(/^Stopped at \d of 8\. The rest was not read\.$/);
  const read = Number(/\d/.exec(said)?.[0]);
  expect(read).toBeLessThan(8);
  await page.setInputFiles('#takeFolderInput', folder);
  await expect.poll(() => page.textContent('#came'), { timeout: 60_000 }).toContain(`${8 - read} file`);
  expect((await cells(page)).map(([code]) => code)).toEqual(codes);
  expect(await page.textContent('#report .caution')).toContain(codes.join(', '));
  expect(errors).toEqual([]);
  await close();
  rmSync(folder, { recursive: true });
});

/** Lets files fall on the desk, as somebody does who drags them there. */
const dropped = (page: Page, files: readonly (readonly [string, string])[]): Promise<void> =>
  page.evaluate((all) => {
    const dataTransfer = new DataTransfer();
    for (const [name, text] of all) dataTransfer.items.add(new File([text], name));
    for (const type of ['dragover', 'drop'])
      document
        .querySelector('.takeIn')
        ?.dispatchEvent(new DragEvent(type, { dataTransfer, bubbles: true, cancelable: true }));
  }, files);

it('takes files that are dropped on it, also while others are played again', async () => {
  const hut = play(levelOf('garden-hut'), 'competent', { seed: 7, mode: 'own' });
  const score = scoreOf(hut);
  const file = (learner: string) =>
    [`${learner}.json`, attemptText(attemptFile(hut, score, { learner }))] as const;
  const { page, errors, close } = await openPage(browser, `${inject('base')}?lang=en&screen=class`);
  await page.click('#page-results');
  await dropped(page, [file('D1'), file('D2'), file('D3')]);
  await page.waitForSelector('#marking');
  await dropped(page, [file('D4'), ['letter.json', 'not a run'], file('D1')]);
  await expect
    .poll(() => page.textContent('#came'), { timeout: 60_000 })
    .toBe('5 files read. 1 was here before and counts once.');
  expect((await cells(page)).map(([code]) => code)).toEqual(['D1', 'D2', 'D3', 'D4']);
  expect(await page.textContent('.wrong')).toContain('letter.json: $: is not JSON');
  expect(errors).toEqual([]);
  await close();
});
