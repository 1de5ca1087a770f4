import AxeBuilder from '@axe-core/playwright';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { bareText } from '../../src/content/assignment';
import { linkOf } from '../../src/content/link';
import { play } from '../../src/core/hands/play';
import { levelOf } from '../site/levels';
import { launchBrowser, openPage } from './support/browser';

/** Every screen, by an independent judge of accessibility: nothing serious, nothing critical. */

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser(inject('browser'));
});
afterAll(() => browser.close());

const acts = play(levelOf('garden-hut'), 'expert', { seed: 7, mode: 'own' }).steps.map(
  ({ action }) => action,
);
const site = 'level=garden-hut&seed=7&screen=site&mode=list';

const handedOut = linkOf({
  kind: 'assignment',
  text: bareText({ id: 'm4kzqp7t', label: 'Evening class', levels: ['garden-hut'], mode: 'own' }),
});

describe.each(['day', 'night'] as const)('by %s', (theme) => {
  it.each<[string, string, number, 'start' | 'talk' | 'site' | 'debrief' | undefined]>([
    ['jobs', '', 0, undefined],
    ['tailgate talk', 'level=garden-hut&screen=talk', 0, undefined],
    ['talk before a part of a job', 'level=sail-loft&screen=talk', 0, undefined],
    ['what the score is worth', 'screen=proof', 0, undefined],
    ['the instructor’s desk', 'screen=class', 0, undefined],
    ['an assignment', handedOut, 0, undefined],
    ['the crew watched', 'level=garden-hut&seed=7&screen=site&mode=watch', 0, undefined],
    ['site at the start', site, 0, undefined],
    ['site in the middle', site, 150, undefined],
    ['debrief', site, acts.length, 'debrief'],
  ])('%s', async (_, query, count, screen) => {
    const { page, close } = await openPage(browser, `${inject('base')}?lang=es&theme=${theme}&${query}`, {
      theme,
    });
    await page.evaluate((all) => all.forEach((one) => window.__tt.do(one)), acts.slice(0, count));
    if (screen) await page.evaluate((one) => window.__tt.go(one), screen);
    await page.waitForTimeout(300);
    const { violations } = await new AxeBuilder({ page }).analyze();
    const grave = violations.filter(({ impact }) => impact === 'serious' || impact === 'critical');
    expect(
      grave.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 90)).join(' | ')}`),
    ).toEqual([]);
    await close();
  });
});
