import type { Browser, Page } from 'playwright-core';
import { PNG } from 'pngjs';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { play } from '../../src/core/hands/play';
import { levelAt, levelLength } from '../../src/core/instruments/rows';
import type { Attempt } from '../../src/core/site/attempt';
import { shows } from '../../src/core/site/shows';
import { begin, take } from '../../src/core/site/take';
import { bubbleOff } from '../../src/present/bubble';
import type { ReadAt } from '../../src/present/offers/offer';
import { spotsFor } from '../../src/present/offers/spots';
import { toolset, type Tool } from '../../src/present/offers/toolset';
import { levelOf } from '../site/levels';
import { launchBrowser, ready } from './support/browser';
import { restingPicture } from './support/resting';
import { offScale, scaleSeen, type Looked } from './support/scaleSeen';
import { thingRead, vialSeen, type ReadOff } from './support/thingsRead';

/**
 * What is on the screen is read as an eye reads it: ticks and what lies at them are found in the pixels, and have to say
 * what the solved frame says. How the drawing got there plays no part.
 */

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser(inject('browser'));
});
afterAll(() => browser.close());

const level = levelOf('garden-hut');

/** A roof by a crew that is right four times in five, up to the last look at it: gaps and errors to be read everywhere. */
const roofBy = (seed: number): Attempt => {
  let attempt = begin(level, seed, 'own');
  for (const { action } of play(level, 'competent', { seed, mode: 'own' }).steps) {
    if (action.type === 'handOver') break;
    attempt = take(attempt, action);
  }
  return attempt;
};

type Reading = {
  readonly hand: Tool;
  readonly spot: string;
  /** Set where the tool can be held in several ways. */
  readonly offer: string | undefined;
  readonly at: ReadAt;
  readonly shown: number;
};

/** Under this there is no gap that light could be seen through, inches. */
const leastGap = 0.03;
const needsGap: readonly string[] = ['rule', 'level', 'straightedge'];

const isRead = ({ tool, at, from }: ReadAt): boolean => {
  if (tool === 'bob') return from === 'still';
  // The first mark lies at the end, under the hook.
  if (tool === 'tape' && at.startsWith('layout')) return !at.endsWith('.1');
  return tool in thingRead;
};

/** Readings of a site: for each tool, however it is held, the few that are furthest from nothing. */
const readingsOf = (attempt: Attempt, each: number): readonly Reading[] => {
  const all = toolset.flatMap(({ tool: hand }) =>
    spotsFor(attempt, hand).flatMap(({ id, offers, reading }) =>
      offers.flatMap((offer): readonly Reading[] => {
        const at = offer.reading ?? reading;
        const shown = at && isRead(at) ? shows(attempt, at) : undefined;
        if (!at || typeof shown !== 'number') return [];
        if (needsGap.includes(at.tool) && Math.abs(shown) < leastGap) return [];
        return [{ hand, spot: id, offer: offers.length > 1 ? offer.id : undefined, at, shown }];
      }),
    ),
  );
  const kinds = [...new Set(all.map(({ at }) => `${at.tool} ${at.from ?? ''}`))];
  return kinds.flatMap((kind) =>
    all
      .filter(({ at }) => `${at.tool} ${at.from ?? ''}` === kind)
      .sort((a, b) => Math.abs(b.shown) - Math.abs(a.shown))
      .slice(0, each),
  );
};

const pictureOf = async (page: Page, { hand, spot, offer }: Reading): Promise<PNG> => {
  await page.evaluate((what) => window.__tt.show(what), { tool: hand, spot });
  if (offer !== undefined) await page.locator(`.act > .choice [data-value="${offer}"]`).click();
  const url = await page.evaluate(
    () =>
      new Promise<string>((done) =>
        requestAnimationFrame(() =>
          setTimeout(() => done(document.querySelector<HTMLCanvasElement>('#seen-there')!.toDataURL())),
        ),
      ),
  );
  return PNG.sync.read(Buffer.from(url.slice(url.indexOf(',') + 1), 'base64'));
};

/** A reading may lie so far from its truth, device pixels. */
const tolerance = 1;
/** A sixteenth on the screen, CSS pixels, at least. */
const sixteenth = 12;
/** How far the step of a few ticks can be told from pixels, CSS pixels. */
const stray = 0.1;

/** What is wrong with one picture, in words. */
const wrongIn = (png: PNG, ratio: number, { at, shown }: Reading): readonly string[] => {
  const { tool, at: place, from } = at;
  const says = `${tool} ${from ?? ''} at ${place}, ${shown}`;
  const looked: Looked = { png, way: ['tape', 'rule', 'bob'].includes(tool) ? 'across' : 'up', ratio };
  const scale = scaleSeen(looked);
  if (!scale) return [`${says}: no scale`];
  const found = thingRead[tool as ReadOff](looked, scale);
  const gap = ['level', 'straightedge'].includes(tool) ? Math.abs(shown) : shown;
  const wrong: string[] = [];
  const off = offScale(scale, found, gap);
  if (!(Math.abs(off) <= tolerance))
    wrong.push(`${says}: off by ${off.toFixed(2)} of ${scale.pitch.toFixed(2)}`);
  if (Math.abs(scale.pitch) < (sixteenth - stray) * ratio)
    wrong.push(`${says}: a sixteenth is ${scale.pitch}`);
  if (tool === 'level') {
    const vial = vialSeen(png, ratio);
    const want = bubbleOff(shown, levelAt.get(place) ?? levelLength) * vial.apart;
    const strays = vial.bubble - vial.lines - want;
    if (!(Math.abs(strays) <= tolerance)) wrong.push(`${says}: bubble off by ${strays.toFixed(2)}`);
  }
  return wrong;
};

const opened = async (
  seed: number,
  { theme, ratio, width, height }: { theme: 'day' | 'night'; ratio: number; width: number; height: number },
) => {
  const context = await browser.newContext({
    viewport: { width, height },
    deviceScaleFactor: ratio,
    reducedMotion: 'reduce',
  });
  const page = await context.newPage();
  const attempt = roofBy(seed);
  await page.goto(
    `${inject('base')}?lang=en&theme=${theme}&level=${level.id}&seed=${seed}&mode=own&screen=site`,
  );
  await ready(page);
  const acts = attempt.steps.map(({ action }) => action);
  await page.evaluate((all) => all.forEach((one) => window.__tt.do(one)), acts);
  return { page, attempt, close: () => context.close() };
};

describe('pictures of instruments', () => {
  it.each([
    { seed: 7, theme: 'day', ratio: 1, width: 1280, height: 800 },
    { seed: 8, theme: 'night', ratio: 1, width: 844, height: 390 },
    { seed: 11, theme: 'day', ratio: 2, width: 390, height: 844 },
    { seed: 23, theme: 'night', ratio: 2, width: 844, height: 390 },
  ] as const)('say what is so: site $seed by $theme, $width by $height, ratio $ratio', async (where) => {
    const { page, attempt, close } = await opened(where.seed, where);
    const readings = readingsOf(attempt, 2);
    expect([...new Set(readings.map(({ at }) => at.tool))].length).toBeGreaterThanOrEqual(6);
    const wrong: string[] = [];
    for (const reading of readings)
      wrong.push(...wrongIn(await pictureOf(page, reading), where.ratio, reading));
    expect(wrong).toEqual([]);
    await close();
  });
});

const screens = [
  { width: 1280, height: 800 },
  { width: 390, height: 844 },
  { width: 844, height: 390 },
  { width: 360, height: 640 },
  { width: 1920, height: 1080 },
];

describe('the lens of a close-up', () => {
  it.each([1, 2])('shows a sixteenth that can be judged on every screen: ratio %i', async (ratio) => {
    const { page, attempt, close } = await opened(7, { theme: 'day', ratio, ...screens[1]! });
    const reading = readingsOf(attempt, 1).find(({ at }) => at.at.startsWith('blockEnd'));
    if (!reading) throw new Error('no gap at a block');
    const { hand: tool, spot } = reading;
    await page.evaluate((what) => window.__tt.show(what), { tool, spot, view: 'joint' as const });
    for (const screen of ratio === 1 ? screens : screens.slice(1, 4)) {
      await page.setViewportSize(screen);
      await restingPicture(page);
      const png = PNG.sync.read(await page.locator('.stage').screenshot());
      // The rule beside the glass has ticks of less than six pixels so close.
      const scale = scaleSeen({ png, way: 'across', ratio }, { ticks: 3, long: 6 });
      const where = `${screen.width} by ${screen.height}`;
      expect.soft(scale?.pitch ?? 0, where).toBeGreaterThanOrEqual((sixteenth - stray) * ratio);
    }
    await close();
  });
});
