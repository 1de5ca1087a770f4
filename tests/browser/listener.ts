import type { Locator, Page } from 'playwright-core';
import type { Offer } from '../../src/present/offers/offer';
import { catalogues, type Messages } from '../../src/present/words/messages';
import { labelText, spotName } from '../../src/present/words/spotNames';
import type { Found } from './drive';

/**
 * Somebody who works by listening: knows what things are called, goes to what a screen reader names, and uses keys. What a
 * tool shows is heard and typed; no number of a reading is known beforehand.
 */

/** One act by its names alone: tool, place, how, and what is chosen or how much. */
export type Order = {
  readonly tool: string;
  readonly place: string;
  readonly how?: string;
  readonly choose?: string;
  readonly amount?: string;
  readonly reads: boolean;
};

/** What somebody would be told to do, in the words of the site. */
export const orderOf = (words: Messages, { tool, spot, offer, pick }: Found): Order => {
  const { picker } = offer;
  const reads = offer.reading !== undefined;
  return {
    tool: words.trade.tool[tool],
    place: spotName(words, spot),
    ...(spot.offers.length > 1 ? { how: labelText(words, offer.label) } : {}),
    ...(picker?.kind === 'choice' && !reads ? { choose: chosen(words, picker, String(pick)) } : {}),
    ...(picker?.kind === 'length' ? { amount: String(Number(pick)) } : {}),
    reads,
  };
};

const chosen = (
  words: Messages,
  picker: Extract<Offer['picker'], { kind: 'choice' }>,
  pick: string,
): string => labelText(words, picker.options.find(({ value }) => value === pick)?.label ?? []);

const en = catalogues.en;

/** Goes to a thing by role and name, as a list of elements or of radio buttons lets a listener do. */
const goTo = async (found: Locator): Promise<void> => {
  await found.focus();
};

export const doByEar = async (page: Page, order: Order): Promise<void> => {
  const tools = page.getByRole('radiogroup', { name: en.ui.site.tools, exact: true });
  await goTo(tools.getByRole('radio', { name: order.tool, exact: true }));
  await page.keyboard.press('Space');
  await findPlace(page, order.place);
  if (order.how !== undefined) {
    const ways = page.getByRole('radiogroup', { name: en.ui.site.acts, exact: true });
    await goTo(ways.getByRole('radio', { name: order.how, exact: true }));
    await page.keyboard.press('Space');
  }
  if (order.choose !== undefined) await choose(page, order.choose);
  if (order.amount !== undefined) await type(page, order.amount);
  if (order.reads) await listen(page);
  await page.keyboard.press('Enter');
};

/** Steps through the list of places by arrow keys until the one that is meant is the chosen one. */
const findPlace = async (page: Page, place: string): Promise<void> => {
  const list = page.getByRole('listbox', { name: en.ui.site.spots, exact: true });
  await goTo(list);
  const heard = (await list.ariaSnapshot()).split('\n').slice(1);
  const names = heard.map((line) => /option "(.*)"/.exec(line)?.[1]?.replace(/\\"/g, '"') ?? line);
  const to = names.findIndex((name) => name === place || name.startsWith(`${place} `));
  if (to < 0) throw new Error(`no place called ${place} among ${names.join(' | ')}`);
  const here = heard.findIndex((line) => line.includes('[selected]'));
  const last = names.length - 1;
  const [from, key] = nearest(to, [
    [here, undefined],
    [0, 'Home'],
    [last, 'End'],
  ]);
  if (key !== undefined) await page.keyboard.press(key);
  for (let i = from; i < to; i++) await page.keyboard.press('ArrowDown');
  for (let i = from; i > to; i--) await page.keyboard.press('ArrowUp');
};

type Way = readonly [number, string | undefined];

const nearest = (to: number, ways: readonly [Way, ...Way[]]): Way =>
  ways.reduce((best, way) => (Math.abs(to - way[0]) < Math.abs(to - best[0]) ? way : best));

const choose = async (page: Page, name: string): Promise<void> => {
  await goTo(page.getByRole('radio', { name, exact: true }));
  await page.keyboard.press('Space');
};

const type = async (page: Page, length: string): Promise<void> => {
  const field = page.getByRole('textbox', { name: new RegExp(`, ${en.ui.act.inches}$`) });
  await goTo(field);
  await page.keyboard.press('Control+A');
  await page.keyboard.type(length);
};

/** Hears what the picture shows and says it: a length is typed, a word is chosen. On the round with the list all is heard to be there. */
const listen = async (page: Page): Promise<void> => {
  const picture = page.getByRole('img', { name: /\. / });
  if ((await picture.count()) === 0) return type(page, '0');
  const heard = (await picture.getAttribute('aria-label')) ?? '';
  const board = faultHeard(heard);
  return board === undefined ? type(page, readingHeard(heard)) : choose(page, en.trade.seen[board]);
};

/** Which fault of a board is heard, or none; undefined where no board is told of. */
const faultHeard = (heard: string): keyof typeof en.trade.seen | undefined => {
  if (!/The stamp says/.test(heard)) return undefined;
  if (/hangs low/.test(heard)) return 'crownDown';
  if (/leans against/.test(heard)) return 'twist';
  if (/dark crack/.test(heard)) return 'split';
  if (/round knot/.test(heard)) return 'knot';
  if (/No\. 3/.test(heard)) return 'lowGrade';
  return /grayer/.test(heard) ? 'otherBatch' : 'clean';
};

const dens: Readonly<Record<string, number>> = { hal: 2, qua: 4, eig: 8, six: 16 };

/** "58 and 5 eighths" in sixteenths. */
const sixteenthsOf = (spoken: string): number => {
  const [, whole = '0', num = '0', den = 'six'] =
    /^(?:(\d+)(?: and |$))?(?:(\d+) (hal|qua|eig|six)\w*)?$/.exec(spoken.trim()) ?? [];
  return Number(whole) * 16 + (Number(num) * 16) / (dens[den] ?? 16);
};

const less =
  /below the mark|under the zero|stops short|top of the cut|toward end A|stands under|under the mark|minus side/;

/** The nearest line of a scale that was told, signed by the way it was told to lie: `-0.1875`. Halfway goes up. */
export const readingHeard = (heard: string): string => {
  const [, ticks] = /stands (\d+) ticks? off/.exec(heard) ?? [];
  const length = '(?:\\d+ and )?\\d+(?: (?:half|halves|quarters?|eighths?|sixteenths?))?';
  const [, on] = new RegExp(`right on (${length})`).exec(heard) ?? [];
  const [, near] = new RegExp(`, (?:nearer|a hair over|a hair under) (${length})`).exec(heard) ?? [];
  const [, high] = new RegExp(`halfway from ${length} to (${length})`).exec(heard) ?? [];
  const told = on ?? near ?? high;
  const size = ticks === undefined ? (told === undefined ? 0 : sixteenthsOf(told)) : Number(ticks) * 4;
  return `${size > 0 && less.test(heard) ? '-' : ''}${size / 16}`;
};
