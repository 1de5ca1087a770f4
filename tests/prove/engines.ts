import { getQuickJS } from 'quickjs-emscripten';
import { launchBrowser } from '../browser/support/browser';
import { browserPath } from '../browser/support/chromium';
import { bundled, encoder, story, type Run } from '../engines/runs';
import { tellRun } from '../engines/story';

/** `npx tsx tests/prove/engines.ts [RUNS]`: so many seeded runs, told by Node, by Chromium and by an engine of another make. */

const wanted = Number(process.argv[2] ?? 300);
const ids = ['garden-hut', 'boathouse', 'hay-barn'] as const;
const hands = ['random', 'skips-checks', 'random', 'naive-order', 'expert'] as const;
const code = await bundled();

const engine = (await getQuickJS()).newContext();
engine.unwrapResult(engine.evalCode(encoder)).dispose();
engine.unwrapResult(engine.evalCode(code)).dispose();
const browser = await launchBrowser(await browserPath());
const page = await browser.newPage();
await page.addScriptTag({ content: code });

const told = { runs: 0, chromium: 0, other: 0, rests: 0 };
for (let i = 0; i < wanted; i++) {
  const [id, hand] = [ids[i % ids.length], hands[Math.floor(i / ids.length) % hands.length]];
  if (!id || !hand) continue;
  const run: Run = { id, hand, seed: 7000 + i };
  const [level, seed, acts] = story(run);
  const call = `tellRun(${JSON.stringify(level)}, ${String(seed)}, ${JSON.stringify(acts)})`;
  const here = tellRun(level, seed, acts);
  const other = engine.unwrapResult(engine.evalCode(call));
  const same = {
    chromium: (await page.evaluate(call)) === here,
    other: engine.getString(other) === here,
  };
  other.dispose();
  told.runs++;
  told.rests += Number(here.split(' ')[2]);
  if (!same.chromium) told.chromium++;
  if (!same.other) told.other++;
  if (!same.chromium || !same.other) console.log(`differs: ${JSON.stringify({ ...run, ...same })}`);
}
await browser.close();
engine.dispose();
console.log(
  JSON.stringify({
    runs: told.runs,
    differ: { chromium: told.chromium, other: told.other },
    rests: told.rests,
  }),
);
process.exitCode = told.runs === wanted && told.chromium + told.other === 0 ? 0 : 1;
