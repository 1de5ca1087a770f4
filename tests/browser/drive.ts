import type { Page } from 'playwright-core';
import type { Action } from '../../src/core/site/action';
import type { Attempt } from '../../src/core/site/attempt';
import type { Offer, Picked, Spot } from '../../src/present/offers/offer';
import { spotsFor } from '../../src/present/offers/spots';
import { toolset, type Tool } from '../../src/present/offers/toolset';

/** Works the site as a person would: by pointer alone, or by keyboard alone. */

/** Where an act is found in the tools: tool, place, offer, and what has to be picked. */
export type Found = {
  readonly tool: Tool;
  readonly key: string;
  readonly spot: Spot;
  readonly index: number;
  readonly offer: Offer;
  readonly pick: Picked;
};

/** Looks an act up among everything the tools offer; undefined when no tool offers it. */
export const findAct = (attempt: Attempt, action: Action): Found | undefined => {
  const wanted = JSON.stringify(sorted(action));
  for (const { tool, key } of toolset) {
    for (const [index, spot] of spotsFor(attempt, tool).entries()) {
      for (const offer of spot.offers) {
        const pick = picksOf(offer, action).find((one) => JSON.stringify(sorted(offer.act(one))) === wanted);
        if (pick !== undefined) return { tool, key, spot, index, offer, pick };
      }
    }
  }
  return undefined;
};

const sorted = (action: Action): Action =>
  Object.fromEntries(Object.entries(action).sort(([a], [b]) => (a < b ? -1 : 1))) as Action;

const picksOf = ({ picker }: Offer, action: Action): readonly Picked[] => {
  if (!picker) return [''];
  if (picker.kind === 'choice') return picker.options.map(({ value }) => value);
  const numbers = Object.values(action).filter((value): value is number => typeof value === 'number');
  const [least, most] = picker.kind === 'length' ? [picker.from, picker.to] : [-Infinity, Infinity];
  return numbers.flatMap((value) => [value, -value]).filter((value) => value >= least && value <= most);
};

/** What is on the buttons that change a number. A coarse reading has no sixteenths. */
const strides = [
  [1, '+1'],
  [-1, '−1'],
  [1 / 4, '+¼'],
  [-1 / 4, '−¼'],
  [1 / 16, '+1⁄16'],
  [-1 / 16, '−1⁄16'],
] as const;

const startOf = ({ picker }: Offer): number => (picker && picker.kind !== 'choice' ? picker.start : 0);

/** One press of what a selector finds. */
type Press = (selector: string) => Promise<void>;

const actBy = async (press: Press, { tool, spot, offer, pick }: Found, open?: string): Promise<void> => {
  await press(`[data-tool="${tool}"]`);
  if (open !== undefined) await press(open);
  await press(`[data-spot="${spot.id}"]`);
  if (spot.offers.length > 1) await press(`.act > .choice [data-value="${offer.id}"]`);
  if (offer.picker?.kind === 'choice') await press(`.picker [data-value="${pick}"]`);
  else if (offer.picker) {
    let left = Math.round((Number(pick) - startOf(offer)) * 16);
    for (const [by, button] of strides) {
      while (left !== 0 && Math.sign(by) === Math.sign(left) && Math.abs(left) >= Math.abs(by) * 16) {
        await press(`.picker .steps .btn:text-is("${button}")`);
        left -= by * 16;
      }
    }
  }
  await press('#main-act');
};

export const actByPointer = (page: Page, found: Found): Promise<void> =>
  actBy((selector) => page.click(selector), found);

/** On a phone, where one place is shown and the list opens at a touch. */
export const actByTouch = (page: Page, found: Found): Promise<void> =>
  actBy((selector) => page.tap(selector), found, '.stepper .here');

const keyStrides = [
  [1, 'PageUp'],
  [-1, 'PageDown'],
  [1 / 4, 'ArrowUp'],
  [-1 / 4, 'ArrowDown'],
  [1 / 16, 'ArrowRight'],
  [-1 / 16, 'ArrowLeft'],
] as const;

export const actByKeyboard = async (page: Page, { key, index, spot, offer, pick }: Found): Promise<void> => {
  const press = (name: string): Promise<void> => page.keyboard.press(name);
  await press(key);
  await page.waitForFunction(() => document.activeElement?.classList.contains('spots'));
  const here = await page.getAttribute('.spots', 'aria-activedescendant');
  const by = index - Number(here?.replace('spot-', ''));
  for (let i = 0; i < Math.abs(by); i++) await press(by > 0 ? 'ArrowDown' : 'ArrowUp');
  if (spot.offers.length > 1) {
    await press('Tab');
    const at = spot.offers.indexOf(offer);
    for (let i = 0; i < at; i++) await press('ArrowRight');
  }
  if (offer.picker) {
    await press('Tab');
    if (offer.picker.kind === 'choice') {
      const at = offer.picker.options.findIndex(({ value }) => value === pick);
      for (let i = 0; i < at; i++) await press('ArrowDown');
    } else {
      let left = Math.round((Number(pick) - startOf(offer)) * 16);
      for (const [by, name] of keyStrides) {
        while (left !== 0 && Math.sign(by) === Math.sign(left) && Math.abs(left) >= Math.abs(by) * 16) {
          await press(name);
          left -= by * 16;
        }
      }
    }
  }
  await press('Enter');
};
