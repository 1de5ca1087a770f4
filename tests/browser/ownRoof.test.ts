import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { launchBrowser, openPage, ready, sizes } from './support/browser';
import { misfitsOn } from './support/fits';

/** Tomorrow's roof typed by keys: published figures come out, nothing typed is lost, and the card is there to print. */

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser(inject('browser'));
});
afterAll(() => browser.close());

const open = (more = '', size: 'desk' | 'phone' | 'side' = 'desk') =>
  openPage(browser, `${inject('base')}?lang=en&theme=day&screen=roof${more}`, { size });

/** By what people read beside the field, as somebody does who sees no picture. */
const type = (page: Page, label: string, text: string): Promise<void> =>
  page.getByLabel(label, { exact: true }).fill(text);
const pick = (page: Page, label: string, option: string) =>
  page.getByLabel(label, { exact: true }).selectOption({ label: option });

/** Figures of the sheet as they are read, by member and name. */
const figuresOf = (page: Page): Promise<Record<string, string>> =>
  page.evaluate(() =>
    Object.fromEntries(
      [...document.querySelectorAll('.figured .stick')].flatMap((member) =>
        [...member.querySelectorAll('dl > div')].map((row) => {
          const value = row.querySelector('dd')?.cloneNode(true) as HTMLElement;
          value.querySelectorAll('[aria-hidden="true"], .dim').forEach((one) => one.remove());
          const named = (member.querySelector('h4')?.firstChild?.textContent ?? '').trim();
          return [
            `${named}: ${row.querySelector('dt')?.textContent ?? ''}`,
            (value.textContent ?? '').trim(),
          ];
        }),
      ),
    ),
  );

/** Measures on it do not break, so their spaces are hard ones. */
const cardText = async (page: Page): Promise<string> =>
  ((await page.locator('.cardSheet article').textContent()) ?? '').replace(/\s/g, ' ');

describe('published figures typed in', () => {
  // NAVEDTRA 14044, Builder 3 & 2, vol. 2, p. 2-31: jacks of an 8 in 12 hip at 16 in differ by 19.23 in, told to 1/16.
  // The ridge of a 28 by 64 ft hip is 36 ft, and 3/4 in longer at each end where a common butts it (course deck on hips).
  it('give the difference of jacks and the ridge of a hip', async () => {
    const { page, errors, close } = await open();
    await pick(page, 'What kind of roof is it?', 'Hip');
    await type(page, 'Span, outside to outside of the plates', "28'");
    await type(page, 'Length along the plates', "64'");
    await type(page, 'Slope, rise in 12', '8');
    await type(page, 'Spacing, center to center', '16"');
    const told = async (name: RegExp): Promise<readonly string[]> =>
      Object.entries(await figuresOf(page)).flatMap(([one, text]) => (name.test(one) ? [text] : []));
    await expect.poll(() => told(/Each longer by/)).toContain('19 1/4"');
    await expect.poll(() => told(/^Ridge.*: Length$/)).toEqual(['433 1/2"']);
    await page.locator('#toCard').press('Enter');
    const card = await cardText(page);
    expect(card).toContain('433 1/2"');
    expect(card).toContain('each 19 1/4" longer');
    expect(errors).toEqual([]);
    await close();
  });

  // NAVEDTRA 14044 p. 2-13: 10 in of projection at 8 in 12 is 12.02 in of tail.
  it('give a tail, in millimeters too', async () => {
    const { page, close } = await open();
    await type(page, 'Slope, rise in 12', '8');
    await type(page, 'Overhang, level', '10"');
    const tail = async () => (await figuresOf(page))['Common rafter: Tail'];
    await expect.poll(tail).toBe('12"');
    await type(page, 'Overhang, level', '254');
    await page.getByRole('radio', { name: 'millimeters' }).press('Enter');
    await expect.poll(tail).toBe('305 mm');
    await close();
  });
});

describe('the form', () => {
  it('keeps what was typed over a reload, a change of language and another kind of roof and back', async () => {
    const { page, close } = await open();
    await type(page, 'Span, outside to outside of the plates', '23\' 7-1/2"');
    await type(page, 'Length along the plates', 'twenty');
    await page.reload();
    await ready(page);
    expect(await page.locator('#own-span').inputValue()).toBe('23\' 7-1/2"');
    expect(await page.locator('#own-length').inputValue()).toBe('twenty');
    await page.locator('#language').press('Enter');
    await page.locator('#own-style').selectOption('gambrel');
    await page.locator('#own-style').selectOption('gable');
    expect(await page.locator('#own-span').inputValue()).toBe('23\' 7-1/2"');
    await close();
  });

  it('says beside the field what is wrong and what is accepted, in both languages, and draws on', async () => {
    const { page, close } = await open();
    await type(page, 'Seat cut, level', '9"');
    const said = page.locator('#own-seat-said');
    await expect
      .poll(() => said.textContent())
      .toContain('Is 9 in on a plate of 5.5 in. Accepted: at most 5.5 in.');
    expect(await page.locator('#own-seat').getAttribute('aria-invalid')).toBe('true');
    expect(await page.locator('#toCard').isDisabled()).toBe(true);
    expect(await page.locator('.figured').count()).toBe(1);
    await page.locator('#language').press('Enter');
    await expect.poll(() => said.textContent()).toContain('Es 9 pulg. en una solera de 5.5 pulg.');
    await page.locator('#refusals button').first().press('Enter');
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('own-seat');
    await close();
  });

  it.each(['desk', 'phone', 'side'] as const)('fits a %s, in text twice as large too', async (size) => {
    for (const text of ['100', '150', '200']) {
      const { page, close } = await open(`&text=${text}`, size);
      expect(await misfitsOn(page), text).toEqual([]);
      await close();
    }
  });

  it('shows the roof beside the last question too, on a desk', async () => {
    const { page, close } = await open();
    const last = page.locator('.ownForm select').last();
    for (let i = 0; i < 60 && !(await last.evaluate((one) => one === document.activeElement)); i++)
      await page.keyboard.press('Tab');
    const drawn = await page.locator('#drawn figure').last().boundingBox();
    const field = await last.boundingBox();
    expect(field!.y + field!.height).toBeLessThanOrEqual(sizes.desk.height);
    expect(drawn!.y).toBeGreaterThanOrEqual(0);
    expect(drawn!.y + drawn!.height).toBeLessThanOrEqual(sizes.desk.height);
    await close();
  });
});

describe('a link', () => {
  it('opens the same roof elsewhere, without sending it anywhere', async () => {
    const first = await open();
    await type(first.page, 'Span, outside to outside of the plates', '21\' 3"');
    await first.page.locator('#shareRoof').press('Enter');
    const link = await first.page.locator('#roofLink').inputValue();
    await first.close();
    const second = await openPage(browser, link);
    expect(await second.page.locator('#own-span').inputValue()).toBe('21\' 3"');
    expect(second.requests.filter((address) => address.includes('roof'))).toEqual([]);
    expect(second.requests.every((address) => address.startsWith(inject('base')))).toBe(true);
    expect(second.errors).toEqual([]);
    await second.close();
  });

  it('that was cut is refused with its reason, and the roof in the form stays', async () => {
    const { page, close } = await open();
    await type(page, 'Span, outside to outside of the plates', "19'");
    await page.evaluate(() => (location.hash = '#roof=1.abc.0123456789'));
    expect(await page.locator('.unread').textContent()).toContain('was cut or changed');
    expect(await page.locator('#own-span').inputValue()).toBe("19'");
    await close();
  });
});

describe('a job on the roof', () => {
  it('is tried by the crew, opens its talk, and stands among the jobs after a reload', async () => {
    const { page, errors, close } = await open();
    await type(page, 'Span, outside to outside of the plates', "12'");
    await type(page, 'Length along the plates', "8'");
    await type(page, 'Name for this roof', 'Reed <b>shed</b>');
    await page.locator('#practice').press('Enter');
    await page.waitForFunction(() => document.querySelector('#begin') !== null, undefined, {
      timeout: 60_000,
    });
    expect(await page.locator('h1').textContent()).toContain('Reed <b>shed</b>');
    await page.locator('#begin').press('Enter');
    await page.waitForFunction(() =>
      (window.__tt.attempt() as { level: { id: string } } | undefined)?.level.id.startsWith('own-'),
    );
    await page.goto(inject('base'));
    await ready(page);
    expect(
      await page.evaluate(() => (window.__tt.attempt() as { level: { id: string } } | undefined)?.level.id),
    ).toMatch(/^own-/);
    await page.evaluate(() => window.__tt.go('start'));
    const off = page.locator('[data-off]');
    await off.press('Enter');
    await off.waitFor({ state: 'detached' });
    await page.reload();
    await ready(page);
    await page.evaluate(() => window.__tt.go('start'));
    await page.locator('.jobcard').first().waitFor();
    expect(await off.count()).toBe(0);
    expect(errors).toEqual([]);
    await close();
  }, 120_000);
});

describe('by keyboard, by names and values alone', () => {
  it('a crew lead gets from the start to a card that prints on one page', async () => {
    const { page, close } = await openPage(browser, `${inject('base')}?lang=en&theme=day`);
    await page.getByRole('button', { name: /type in your own/ }).press('Enter');
    await type(page, 'Span, outside to outside of the plates', "22'");
    await page.getByRole('button', { name: 'Set card' }).press('Enter');
    await page.getByRole('radio', { name: 'A4' }).press('Enter');
    await page.evaluate(() => (window.print = () => document.body.setAttribute('data-printed', 'yes')));
    await page.getByRole('button', { name: 'Print the card' }).press('Enter');
    expect(await page.locator('body').getAttribute('data-printed')).toBe('yes');
    const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
    expect(pdf.match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
    expect(pdf).toMatch(/\/MediaBox\s*\[0 0 59[45][.\d]* 84[12][.\d]*\]/);
    await close();
  });
});
