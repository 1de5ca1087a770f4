import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { play } from '../../src/core/hands/play';
import { gaugeBlock } from '../../src/core/instruments/rows';
import { roofOf, stationsOf } from '../../src/core/level/layout';
import type { Action } from '../../src/core/site/action';
import type { Attempt } from '../../src/core/site/attempt';
import { rafterId } from '../../src/core/site/ids';
import { figuredTop } from '../../src/core/site/posed';
import { begin, take } from '../../src/core/site/take';
import { levelOf } from '../site/levels';
import { actByKeyboard, actByPointer, actByTouch, findAct } from './drive';
import { launchBrowser, openPage } from './support/browser';

/** Every instrument, in each way it can be held, is taken up and read by pointer, by touch, and by keyboard. */

const seed = 7;
const level = levelOf('garden-hut');
const [from, to] = [rafterId('street', 1), rafterId('street', stationsOf(level).length)];
const line = { type: 'line', kind: 'string', from, to, off: gaugeBlock } as const;

/** What a crew does until the ridge is up, and three rafters stand under the string of a side. */
const begun = (): readonly Action[] => {
  const all = play(level, 'expert', { seed, mode: 'own', wanted: { stack: 'oneSide' } }).steps;
  const acts: Action[] = [];
  let attempt = begin(level, seed, 'own');
  for (const { action } of all) {
    const { members, lines } = attempt.site;
    const up = [3, 4, 5].every((n) => members[rafterId('street', n)] !== undefined);
    if (up && lines['string.street']) return acts;
    acts.push(action);
    attempt = take(attempt, action);
  }
  throw new Error('no string over three rafters');
};
const strung = begun();

const whole = Math.floor;
const { rafter, span } = level.plan;
const fifth = whole((roofOf(level).layout.stations[4] ?? 0) - rafter.thickness / 2);

const acts: readonly Action[] = [
  { type: 'read', tool: 'tape', at: 'width.mid', from: 'inch', said: span + 1 },
  { type: 'read', tool: 'tape', at: 'board.3.depth', from: 'inch', said: 6.5 },
  { type: 'read', tool: 'tape', at: 'ridge.A.height', from: 'inch', said: whole(figuredTop(level)) + 1.0625 },
  { type: 'read', tool: 'tape', at: 'layout.street.5', from: 'last', said: fifth + 0.25 },
  { type: 'read', tool: 'storyPole', at: 'ridge.B.height', said: -0.125 },
  { type: 'read', tool: 'storyPole', at: 'ridge.B.height', from: 'plumb', said: 0.0625 },
  { type: 'read', tool: 'level', at: 'ridge.short', from: 'B', said: -0.0625 },
  { type: 'read', tool: 'pattern', at: 'board.5', from: 'tail', said: 0.3125 },
  { type: 'read', tool: 'waterLevel', at: 'plate.street.A', said: 0.0625 },
  { type: 'read', tool: 'bob', at: 'ridge.A.plumb', said: -0.25 },
  { type: 'read', tool: 'bob', at: 'ridge.A.plumb', from: 'still', said: 0.125 },
  { type: 'read', tool: 'square', at: 'board.2', said: -0.0625 },
  { type: 'read', tool: 'square', at: 'board.2', from: 'turned', said: 0.0625 },
  { type: 'read', tool: 'straightedge', at: 'plane.street.4', said: -0.1875 },
  { type: 'read', tool: 'eye', at: 'ridge.straight', said: -0.5 },
  { type: 'read', tool: 'eye', at: 'plate.yard.mid', said: 0.25 },
  ...['knot', 'lowGrade', 'otherBatch'].map((said): Action => ({
    type: 'read',
    tool: 'eye',
    at: 'board.4',
    said,
  })),
  line,
  { type: 'takeOut', member: 'string.street' },
  { ...line, off: 0 },
];

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser(inject('browser'));
});
afterAll(() => browser.close());

const inPage = (page: Page): Promise<Attempt> =>
  page.evaluate(() => window.__tt.attempt()) as Promise<Attempt>;

describe('every instrument', () => {
  it.each([
    ['pointer', actByPointer, 'desk'],
    ['touch', actByTouch, 'phone'],
    ['keyboard', actByKeyboard, 'desk'],
  ] as const)(
    'is read by %s alone',
    async (_, how, size) => {
      const query = `?lang=en&theme=day&level=${level.id}&seed=${seed}&mode=own&screen=site`;
      const { page, errors, close } = await openPage(browser, inject('base') + query, { size });
      await page.evaluate((all) => all.forEach((one) => window.__tt.do(one)), strung);
      await page.evaluate(() => window.__tt.show({ view: 'side' }));
      let attempt = strung.reduce(take, begin(level, seed, 'own'));
      for (const action of acts) {
        const found = findAct(attempt, action);
        if (!found) throw new Error(`no tool offers ${JSON.stringify(action)}`);
        await how(page, found);
        attempt = take(attempt, action);
        expect(attempt.steps.at(-1)?.outcome).toMatchObject({ ok: true });
      }
      const done = (await inPage(page)).steps.slice(strung.length).map(({ action }) => action);
      expect(done).toEqual(acts);
      expect(errors).toEqual([]);
      await close();
    },
    240_000,
  );
});
