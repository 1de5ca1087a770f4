import type { Page } from 'playwright-core';
import { bareText } from '../../src/content/assignment';
import { canonicalText } from '../../src/content/canonical';
import type { Style } from '../../src/content/draft/fields';
import { fileOf, type RoofDraft } from '../../src/content/draft/roofDraft';
import { sampleOf } from '../../src/content/draft/samples';
import { linkOf } from '../../src/content/link';
import { play } from '../../src/core/hands/play';
import type { Hold } from '../../src/core/instruments/tool';
import type { Action } from '../../src/core/site/action';
import type { Tool } from '../../src/present/offers/toolset';
import type { StageView } from '../../src/present/stagePort';
import { day } from '../../src/session/jobState';
import type { RunHead } from '../../src/session/store';
import { levelOf } from '../site/levels';
import { keepRuns } from './support/keptRuns';
import { ready } from './support/browser';

/** The screens a person meets, in the order one run meets them, and how to get to each. */

/** One screen. What is not named stays as the screen before it left it. */
export type Screen = {
  readonly name: string;
  /** Which of the product's screens. */
  readonly go?: 'start' | 'talk' | 'site' | 'debrief' | 'proof' | 'class';
  /** The run is played on through the first act that this matches. */
  readonly through?: (action: Action) => boolean;
  readonly show?: { readonly tool?: Tool; readonly spot?: string; readonly view?: StageView };
  /** A button pressed once all else is as it should be. What it opened is closed by Escape before the next screen. */
  readonly press?: string;
  /** The button stays pressed until it is pressed again. */
  readonly toggles?: true;
  /** Buttons that are there only for who comes by keyboard, pressed one after the other. */
  readonly keyed?: readonly string[];
  /** The page is opened anew on this. */
  readonly open?: Opens;
};

type Opens = {
  readonly query: string;
  /** Runs that it finds kept. */
  readonly left?: readonly RunHead[];
  /** The device has no room: it keeps nothing more. */
  readonly full?: true;
  /** Whose run is played on it; the expert's otherwise. */
  readonly hand?: Hand;
};

const job = 'garden-hut';

/** One draw of the site whose faults make the screens worth looking at. */
const seed = 7;

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

/** Runs of another day: a job that is due for another look, and one left open under older rules. */
const pastRun = (order: number): RunHead => ({
  id: `run-${order}`,
  level: 'boathouse',
  levelDigest: '0',
  rules: 3,
  seed: order,
  mode: 'check-off',
  state: 'done',
  order,
  framed: true,
  pass: true,
  ended: Date.now() - (42 - 2 * order) * day,
});
const { ended: _ended, ...leftOpen } = pastRun(99);
const another: readonly RunHead[] = [
  pastRun(1),
  pastRun(2),
  { ...leftOpen, rules: 2, mode: 'own', state: 'open' },
];

/** An assignment as its link carries it. */
const handedOut = linkOf({
  kind: 'assignment',
  text: bareText({
    id: 'm4kzqp7t',
    label: 'Evening class',
    levels: [job, 'boathouse'],
    mode: 'check-off',
    due: '2031-04-30',
    passLine: 75,
  }),
});

/** A roof as its link carries it. */
const roofLink = (style: Style, typed: RoofDraft['typed'] = {}): string => {
  const draft = sampleOf(style);
  return linkOf({
    kind: 'roof',
    text: canonicalText(fileOf({ ...draft, typed: { ...draft.typed, ...typed } })),
  });
};

/** The table of screens. */
export const screens: readonly Screen[] = [
  { name: 'start', go: 'start' },
  { name: 'words', press: 'header .btn:nth-last-of-type(3)' },
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
  { name: 'loads', press: '[data-teach="loads"]', toggles: true },
  { name: 'enlarged', press: '[data-teach="strip"]', toggles: true },
  { name: 'roofWords', keyed: ['.roofWords > .btn', '.roofWords .bay'] },
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
  { name: 'classHelp', go: 'class', press: '#page-help' },
  { name: 'classKeep', press: '#page-keep' },
  { name: 'classResults', press: '#page-results' },
  { name: 'classOut', press: '#page-out' },
  { name: 'assigned', open: { query: handedOut } },
  { name: 'ownRoof', open: { query: '&screen=roof' } },
  { name: 'ownLink', open: { query: roofLink('dormer', { seat: '9"', spacing: 'two feet' }) } },
  { name: 'ownHip', open: { query: roofLink('hip') } },
  { name: 'ownCard', press: '#toCard' },
  {
    name: 'told',
    open: { query: `&level=${job}&mode=own&screen=site`, hand: 'naive-order' },
    through: ({ type }) => type === 'handOver',
    go: 'debrief',
  },
  { name: 'event', press: '.event:nth-of-type(2) button.name, .event button.name' },
  {
    name: 'unkept',
    open: { query: `&level=${job}&mode=own&screen=site`, full: true },
    through: ({ type }) => type === 'read',
  },
  { name: 'watch', open: { query: `&level=${job}&mode=watch&screen=site` }, press: '#watchNext' },
  { name: 'notices', open: { query: '&level=old-mill', left: another } },
  { name: 'recall', press: '[data-level=boathouse]' },
];

/** What a page is opened with: the language, the light, and how large the text is, per cent. */
export type Asked = {
  readonly lang: 'en' | 'es';
  readonly theme: 'day' | 'night';
  readonly text?: '100' | '200';
};

const queryOf = ({ lang, theme, text = '100' }: Asked): string =>
  `?lang=${lang}&theme=${theme}&text=${text}&seed=${seed}`;

/** What the link to the first screen asks for. */
export const linkTo = (lang: Asked['lang'], theme: Asked['theme'], text: Asked['text'] = '100'): string =>
  `${queryOf({ lang, theme, text })}&level=${job}&mode=own&screen=site`;

type Hand = Parameters<typeof play>[1];
const actsBy = (hand: Hand): readonly Action[] =>
  play(levelOf(job), hand, { seed, mode: 'own' }).steps.map(({ action }) => action);

const known = new Map<Hand, readonly Action[]>();
const acts = (hand: Hand): readonly Action[] => {
  const found = known.get(hand) ?? actsBy(hand);
  known.set(hand, found);
  return found;
};

/** How far a walk has come: whose run it is, and how many of its acts are done. */
type Way = { readonly hand: Hand; readonly done: number };

/** The acts that take a run from one number of steps through the act a screen waits for. */
const actsFor = ({ hand, done }: Way, { through }: Screen): readonly Action[] => {
  if (!through) return [];
  const last = acts(hand).findIndex((action, i) => i >= done && through(action));
  if (last < 0) throw new Error('the run never comes to this screen');
  return acts(hand).slice(done, last + 1);
};

/** Presses a button and lets the page take it up, its effects too, so that a key pressed next is not lost. */
const pressed = async (page: Page, button: string): Promise<void> => {
  await page.locator(button).first().click();
  await page.evaluate(
    () =>
      new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(done, 50)))),
  );
};

/** Opens the page anew, on what another day left on the device. */
const opened = async (page: Page, asked: Asked, { query, left, full }: Opens): Promise<void> => {
  if (left) await keepRuns(page, left);
  await page.goto(new URL(queryOf(asked) + query, page.url()).href);
  await ready(page);
  if (full)
    await page.evaluate(() => {
      IDBObjectStore.prototype.put = () => {
        throw new DOMException('no room', 'QuotaExceededError');
      };
    });
};

/** Shows one screen, once the run has come to it. */
const reached = async (page: Page, { go, show, keyed = [], press }: Screen): Promise<void> => {
  if (go) await page.evaluate((name) => window.__tt.go(name), go);
  if (show) await page.evaluate((what) => window.__tt.show(what), show);
  for (const button of keyed) await page.locator(button).first().press('Enter');
  if (press) await pressed(page, press);
};

/** Goes through all screens, most of them of one run, and stops at each. */
export const walkScreens = async (
  page: Page,
  asked: Asked,
  at: (screen: Screen) => Promise<void>,
): Promise<void> => {
  let way: Way = { hand: 'expert', done: 0 };
  for (const screen of screens) {
    if (screen.open) {
      await opened(page, asked, screen.open);
      way = { hand: screen.open.hand ?? 'expert', done: 0 };
    }
    const next = actsFor(way, screen);
    way = { ...way, done: way.done + next.length };
    await page.evaluate((some) => some.forEach((one) => window.__tt.do(one)), next);
    await reached(page, screen);
    await at(screen);
    if (screen.toggles && screen.press) await pressed(page, screen.press);
    else if (screen.press || screen.keyed) await page.keyboard.press('Escape');
  }
};
