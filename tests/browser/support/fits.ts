import { fileURLToPath } from 'node:url';
import type { Page } from 'playwright-core';
import { build } from 'vite';
import type { Misfit } from './misfit';

const entry = fileURLToPath(new URL('./inPage/misfits.ts', import.meta.url));

/** The part that looks at the page from inside, made into one script once. */
const bundle = async (): Promise<string> => {
  const built = await build({
    configFile: false,
    logLevel: 'error',
    build: { write: false, minify: false, lib: { entry, formats: ['iife'], name: 'looking' } },
  });
  const [first] = Array.isArray(built) ? built : [built];
  if (!first || !('output' in first)) throw new Error('the look from inside was not built');
  return first.output[0].code;
};

let script: Promise<string> | undefined;

/** What on the page now cannot be read, reached or hit. */
export const misfitsOn = async (page: Page): Promise<readonly Misfit[]> => {
  script ??= bundle();
  return page.evaluate<readonly Misfit[]>(`(() => { ${await script}; return looking.misfits(); })()`);
};

/** A layout follows its page a little later: a misfit counts when it stays. Ms. */
const pauses = [0, 200, 400, 800];

/** What of it is still so after a while. */
export const lastingMisfits = async (page: Page): Promise<readonly Misfit[]> => {
  let found: readonly Misfit[] = [];
  for (const pause of pauses) {
    await page.waitForTimeout(pause);
    found = await misfitsOn(page);
    if (found.length === 0) return [];
  }
  return found;
};
