import type { Page } from 'playwright-core';
import { play } from '../../src/core/hands/play';
import type { Hold } from '../../src/core/instruments/tool';
import type { Action } from '../../src/core/site/action';
import type { Tool } from '../../src/present/offers/toolset';
import type { StageView } from '../../src/present/stagePort';
import { levelOf } from '../site/levels';

/** The screens a person meets, in the order one run meets them, and how to get to each. */

/** One screen. What is not named stays as the screen before it left it. */
export type Screen = {
  readonly name: string;
  /** Which of the product's screens. */
  readonly go?: 'start' | 'talk' | 'site' | 'debrief' | 'proof';
  /** The run is played on through the first act that this matches. */
  readonly through?: (action: Action) => boolean;
  readonly show?: { readonly tool?: Tool; readonly spot?: string; readonly view?: StageView };
  /** A button pressed once all else is as it should be, and how to be rid of what it opened. */
  readonly press?: string;
};

const readAt =
  (at: string) =>
  (action: Action): boolean =>
    action.type === 'read' && action.at === at;

const tackedAt =
  (joint: string) =>
  (action: Action): boolean =>
    action.type === 'tack' && action.joint === joint;

/** The button that takes a tool up in another way. */
const hold = (from: Hold): string => `.act > .choice [data-value="read.${from}"]`;

/** The table of screens. */
export const screens: readonly Screen[] = [
  { name: 'start', go: 'start' },
  { name: 'talk', go: 'talk' },
  { name: 'crew', go: 'site' },
  {
    name: 'pattern',
    through: readAt('board.1'),
    show: { tool: 'pattern', spot: 'pattern@board.1' },
  },
  { name: 'square', show: { tool: 'pattern', spot: 'square@board.1' } },
  { name: 'together', show: { tool: 'level', spot: 'waterLevel@plate.street.A' } },
  { name: 'depth', show: { tool: 'tape', spot: 'tape@board.1.depth' }, press: hold('inch') },
  {
    name: 'tape',
    through: readAt('ridge.A.height'),
    show: { tool: 'tape', spot: 'tape@ridge.A.height' },
  },
  { name: 'pole', show: { tool: 'tape', spot: 'storyPole@ridge.A.height' } },
  { name: 'bob', show: { tool: 'level', spot: 'bob@ridge.A.plumb' } },
  { name: 'sight', show: { tool: 'look', spot: 'eye@ridge.straight' } },
  {
    name: 'joint',
    through: tackedAt('heel:rafter.street.1'),
    show: { tool: 'rule', spot: 'rule@heel:rafter.street.1', view: 'joint' },
  },
  {
    name: 'site',
    through: tackedAt('ridge:rafter.street.4'),
    show: { tool: 'tack', spot: 'heel:rafter.street.4', view: 'overview' },
  },
  { name: 'section', show: { tool: 'set', spot: 'block.street.4', view: 'section' } },
  { name: 'side', show: { view: 'side' } },
  { name: 'lines', show: { view: 'sheet' } },
  {
    name: 'straightedge',
    through: tackedAt('ridge:rafter.street.8'),
    show: { tool: 'string', spot: 'straightedge@plane.street.4', view: 'overview' },
  },
  { name: 'added', show: { tool: 'tape', spot: 'tape@layout.street.5' }, press: hold('last') },
  { name: 'settings', show: { view: 'overview' }, press: 'header .btn:nth-last-of-type(2)' },
  { name: 'debrief', through: ({ type }) => type === 'handOver', go: 'debrief' },
  { name: 'proof', go: 'proof' },
];

const job = 'garden-hut';

/** One draw of the site whose faults make the screens worth looking at. */
const seed = 7;

/** What the link to the first screen asks for. */
export const linkTo = (lang: 'en' | 'es', theme: 'day' | 'night'): string =>
  `?lang=${lang}&theme=${theme}&level=${job}&seed=${seed}&mode=own&screen=site`;

const expertActs = (): readonly Action[] =>
  play(levelOf(job), 'expert', { seed, mode: 'own' }).steps.map(({ action }) => action);

let known: readonly Action[] | undefined;
const acts = (): readonly Action[] => (known ??= expertActs());

/** The acts that take a run from one number of steps through the act a screen waits for. */
const actsFor = (done: number, { through }: Screen): readonly Action[] => {
  if (!through) return [];
  const last = acts().findIndex((action, i) => i >= done && through(action));
  if (last < 0) throw new Error('the run never comes to this screen');
  return acts().slice(done, last + 1);
};

/** Presses a button and lets the page take it up, so that a key pressed next is not lost. */
const pressed = async (page: Page, button: string): Promise<void> => {
  await page.click(button);
  await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
};

/** Goes through all screens of one run, and stops at each. */
export const walkScreens = async (page: Page, at: (screen: Screen) => Promise<void>): Promise<void> => {
  let done = 0;
  for (const screen of screens) {
    const next = actsFor(done, screen);
    done += next.length;
    await page.evaluate((some) => some.forEach((one) => window.__tt.do(one)), next);
    if (screen.go) await page.evaluate((name) => window.__tt.go(name), screen.go);
    if (screen.show) await page.evaluate((what) => window.__tt.show(what), screen.show);
    if (screen.press) await pressed(page, screen.press);
    await at(screen);
    if (screen.press) await page.keyboard.press('Escape');
  }
};
