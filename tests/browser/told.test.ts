import AxeBuilder from '@axe-core/playwright';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { play } from '../../src/core/hands/play';
import type { Action } from '../../src/core/site/action';
import { catalogues } from '../../src/present/words/messages';
import { levelOf } from '../site/levels';
import { launchBrowser, openPage } from './support/browser';

/** What is told by itself, once and as loud as it has to be; another language in the middle of an act; keys that are off. */

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser(inject('browser'));
});
afterAll(() => browser.close());

const { en, es } = catalogues;
const hut = (query = ''): Promise<Awaited<ReturnType<typeof openPage>>> =>
  openPage(
    browser,
    `${inject('base')}?lang=en&theme=day&level=garden-hut&seed=7&mode=own&screen=site${query}`,
  );

/** Keeps what live regions come to say, as a screen reader would speak it. */
const listenIn = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const told: [string, string][] = [];
    Object.assign(window, { told });
    for (const region of document.querySelectorAll('.caption [aria-live]'))
      new MutationObserver((changes) => {
        const text = region.textContent?.trim() ?? '';
        if (text !== '' && changes.length > 0) told.push([region.getAttribute('aria-live') ?? '', text]);
      }).observe(region, { childList: true, subtree: true, characterData: true });
  });
const told = (page: Page): Promise<readonly (readonly [string, string])[]> =>
  page.evaluate(() => (window as unknown as { told: [string, string][] }).told);

/** Until the ridge lies on its posts, nothing nailed to it yet. */
const ridgeOnPosts = (): readonly Action[] => {
  const { steps } = play(levelOf('garden-hut'), 'expert', {
    seed: 7,
    mode: 'own',
    wanted: { hang: 'posts' },
  });
  const up = steps.findIndex(({ action }) => action.type === 'place' && action.member === 'ridge');
  return steps.slice(0, up + 1).map(({ action }) => action);
};

/** Does the act of a place by keyboard. */
const actAt = async (page: Page, tool: string, spot: string): Promise<void> => {
  await page.evaluate((what) => window.__tt.show(what), { tool, spot } as Parameters<
    typeof window.__tt.show
  >[0]);
  await page.getByRole('listbox').focus();
  await page.keyboard.press('Enter');
};

describe('what is told by itself', () => {
  it('is a consequence politely and a danger at once, each once, and told again when it happens again', async () => {
    const { page, close } = await hut();
    await listenIn(page);
    await actAt(page, 'set', 'brace.wall.street');
    expect(await told(page)).toEqual([['polite', expect.stringContaining(en.ui.caption.you)]]);
    // The same refusal, twice.
    for (let i = 0; i < 2; i++) {
      await page.evaluate(() => window.__tt.show({ tool: 'set', spot: 'ridge' }));
      await page.getByRole('listbox').focus();
      await page.keyboard.press('Enter');
    }
    const again = (await told(page)).slice(1);
    expect(again).toHaveLength(2);
    expect(again[0]).toEqual(again[1]);
    expect(again[0]?.[0]).toBe('polite');
    await page.evaluate(() => window.__tt.show({ tool: 'crew', spot: 'stand.lead' }));
    await page.getByRole('radio', { name: en.trade.spot.plate, exact: true }).focus();
    await page.keyboard.press('Space');
    await page.keyboard.press('Enter');
    const danger = en.dangers['topPlate'] ?? '';
    const stops = (await told(page)).slice(3);
    expect(stops).toHaveLength(1);
    expect(stops[0]?.[0]).toBe('assertive');
    expect(stops[0]?.[1]).toContain(`${en.ui.caption.lead} ${danger}`);
    expect(await page.getByRole('alert').textContent()).toContain(danger);
    await close();
  }, 60_000);

  it('is a fall at once', async () => {
    const { page, close } = await hut();
    await page.evaluate((all) => all.forEach((one) => window.__tt.do(one)), ridgeOnPosts());
    await listenIn(page);
    await actAt(page, 'set', 'post.1');
    const heard = await told(page);
    expect(heard).toEqual([['assertive', expect.stringContaining(en.ui.site.down)]]);
    await close();
  }, 60_000);
});

describe('another language in the middle of an act', () => {
  it('changes all words and loses nothing', async () => {
    const { page, errors, close } = await hut();
    await page.evaluate(() => window.__tt.show({ tool: 'level', spot: 'waterLevel@plate.yard.mid' }));
    await page.getByRole('textbox').focus();
    await page.keyboard.type('-3/8');
    const region = page.locator('.roofWords');
    await region.getByRole('button', { name: en.spoken.roof.open }).focus();
    await page.keyboard.press('Enter');
    await region.getByRole('button', { name: en.spoken.roof.bay(2), exact: true }).focus();
    await page.keyboard.press('Enter');
    const before = await page.evaluate(() => window.__tt.digest());
    await page.getByRole('button', { name: 'Español' }).focus();
    await page.keyboard.press('Enter');
    await expect.poll(() => page.evaluate(() => document.documentElement.lang)).toBe('es');
    const { trade } = es;
    expect(await page.getByRole('radio', { name: trade.tool.level, exact: true }).isChecked()).toBe(true);
    expect(await page.getByRole('option', { selected: true }).getAttribute('data-spot')).toBe(
      'waterLevel@plate.yard.mid',
    );
    expect(await page.getByRole('textbox').inputValue()).toBe('-3/8');
    expect(await page.getByRole('spinbutton').getAttribute('aria-valuenow')).toBe('-0.375');
    expect(await page.getByRole('img', { name: /manguera|agua/ }).count()).toBe(1);
    await region.getByRole('button', { name: es.spoken.roof.bay(2), exact: true }).waitFor();
    const rafter = trade.member.rafter(2, trade.side.yard);
    expect(await region.getByRole('button', { name: rafter }).count()).toBe(1);
    expect(await page.evaluate(() => window.__tt.digest())).toEqual(before);
    const left = await page.evaluate(() => document.body.innerText);
    for (const word of [en.ui.site.settings, en.ui.site.goal, en.spoken.roof.title, en.ui.site.readings])
      expect(left).not.toContain(word);
    expect(errors).toEqual([]);
    await close();
  }, 60_000);
});

describe('single-key shortcuts', () => {
  it('do nothing once they are off, and say so in the help; arrows and Enter go on', async () => {
    const { page, close } = await hut();
    const tool = (name: string) => page.getByRole('radio', { name, exact: true });
    await page.getByRole('listbox').focus();
    await page.keyboard.press('t');
    expect(await tool(en.trade.tool.tack).isChecked()).toBe(true);
    await page.getByRole('button', { name: en.ui.site.settings }).click();
    const keys = page.getByRole('radiogroup', { name: en.ui.settings.keys });
    await keys.getByRole('radio', { name: en.ui.settings.off, exact: true }).click();
    await page.keyboard.press('Escape');
    await page.keyboard.press('c');
    expect(await tool(en.trade.tool.tack).isChecked()).toBe(true);
    expect(await tool(en.trade.tool.tack).getAttribute('aria-keyshortcuts')).toBeNull();
    const help = page.getByRole('region', { name: en.spoken.help.title });
    expect(await help.textContent()).toContain(en.spoken.help.noLetters);
    await tool(en.trade.tool.tack).focus();
    await page.keyboard.press('ArrowDown');
    expect(await tool(en.trade.tool.nail).isChecked()).toBe(true);
    await close();
  }, 60_000);
});

describe('an independent judge of accessibility', () => {
  it.each(['day', 'night'])(
    'finds nothing grave in the roof in words and on the drawing, by %s',
    async (theme) => {
      const { page, close } = await hut(`&theme=${theme}`);
      const grave = async (): Promise<readonly string[]> =>
        (await new AxeBuilder({ page }).analyze()).violations
          .filter(({ impact }) => impact === 'serious' || impact === 'critical')
          .map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 90)).join(' | ')}`);
      await page.getByRole('application').focus();
      await page.keyboard.press('ArrowDown');
      expect(await grave()).toEqual([]);
      const region = page.getByRole('region', { name: en.spoken.roof.title });
      await region.getByRole('button', { name: en.spoken.roof.open }).focus();
      await page.keyboard.press('Enter');
      await page.keyboard.press('Tab');
      await page.keyboard.press('Enter');
      await page.keyboard.press('Tab');
      expect(await grave()).toEqual([]);
      await close();
    },
    60_000,
  );
});
