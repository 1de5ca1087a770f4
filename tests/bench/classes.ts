import { readFileSync, writeFileSync } from 'node:fs';
import { cpus, loadavg } from 'node:os';
import type { Page } from 'playwright-core';
import { assignmentText, seedFor } from '../../src/content/assignment';
import { attemptFile, attemptText } from '../../src/content/attemptFile';
import { backupText } from '../../src/content/backupFile';
import { play } from '../../src/core/hands/play';
import { scoreOf } from '../../src/core/score/scored';
import { launchBrowser, ready } from '../browser/support/browser';
import { builtSite } from '../browser/support/builtSite';
import { browserPath } from '../browser/support/chromium';
import { levelOf } from '../site/levels';

/**
 * What the instructor's desk takes to read a class: 40 whole runs of the garden hut picked together, each played again by a
 * worker, until the report stands; picked the moment the page is up, and after its workers have warmed up. Nothing is
 * asserted. Figures go to tests/bench/last.json.
 */

const count = 40;
const assignment = { id: 'bench234', levels: ['garden-hut'], mode: 'own' } as const;
const hands = ['expert', 'competent', 'skips-checks', 'naive-order'] as const;

const files = Array.from({ length: count }, (_, i) => {
  const learner = `L${i + 10}`;
  const seed = seedFor(assignment, 'garden-hut', learner);
  const attempt = play(levelOf('garden-hut'), hands[i % hands.length] ?? 'expert', { seed, mode: 'own' });
  const handed = { assignment: assignment.id, learner };
  const text = attemptText(attemptFile(attempt, scoreOf(attempt), handed));
  return { name: `${learner}.json`, mimeType: 'application/json', buffer: Buffer.from(text) };
});
const given = backupText({ runs: [], values: { 'class given': [assignmentText(assignment)] } });

const browser = await launchBrowser(await browserPath());
const { base, close } = await builtSite();

/** A desk that gave the assignment out, its results page up, in a browser that knows nothing of it yet. */
const openDesk = async (): Promise<Page> => {
  const context = await browser.newContext({ viewport: { width: 1280, height: 800 } });
  const page = await context.newPage();
  await page.goto(`${base}?lang=en&screen=class`);
  await ready(page);
  await page.click('#page-keep');
  await page.setInputFiles('#loadBackupInput', {
    name: 'given.json',
    mimeType: 'application/json',
    buffer: Buffer.from(given),
  });
  await page.waitForFunction(() => (document.getElementById('brought')?.textContent ?? '') !== '');
  await page.click('#page-results');
  return page;
};

/** Seconds until the report stands. */
const taken = async (page: Page): Promise<number> => {
  const begun = performance.now();
  await page.setInputFiles('#takeFilesInput', files);
  // Looked for at every frame: waiting for a selector looks every half second.
  await page.waitForFunction(
    (all) =>
      document.getElementById('came') !== null &&
      document.querySelectorAll('#report tbody tr').length === all,
    count,
    { timeout: 600_000 },
  );
  const seconds = (performance.now() - begun) / 1000;
  await page.context().close();
  return seconds;
};

/** As long as somebody takes to find the files, ms. */
const found = 8000;

const atOnce = await taken(await openDesk());
const desk = await openDesk();
const workers = await desk.evaluate(() => navigator.hardwareConcurrency);
await desk.waitForTimeout(found);
const seconds = await taken(desk);
await browser.close();
await close();

const rounded = (value: number): number => Math.round(value * 100) / 100;
const classOf = {
  machine: `${cpus()[0]?.model ?? 'unknown'}, ${cpus().length} cores`,
  load: rounded(loadavg()[0] ?? NaN),
  runs: count,
  kilobytes: rounded(files.reduce((sum, { buffer }) => sum + buffer.length, 0) / 1000),
  workers,
  secondsAtOnce: rounded(atOnce),
  seconds: rounded(seconds),
  runsASecondAndWorker: rounded(count / seconds / workers),
};
console.log(JSON.stringify(classOf));
const last = new URL('./last.json', import.meta.url);
const before = JSON.parse(readFileSync(last, 'utf8')) as object;
writeFileSync(last, `${JSON.stringify({ ...before, class: classOf }, null, 2)}\n`);
