import { mkdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Browser } from 'playwright-core';
import { linkTo, walkScreens } from './screens';
import { launchBrowser, openPage, sizes, type SizeName } from './support/browser';
import { builtSite } from './support/builtSite';
import { browserPath } from './support/chromium';
import { contactSheet, type Shot } from './support/contactSheet';
import { misfitsOn } from './support/fits';
import { restingPicture } from './support/resting';

/**
 * `npm run pictures [NAME…]`: every screen, or those named, in both languages by day and by night on three sizes of
 * screen. One sheet a screen goes to assets/pictures/, the plain desk view of the site with it, and what does not fit
 * is printed.
 */

const folder = fileURLToPath(new URL('../../assets/pictures/', import.meta.url));

const conditions = (['en', 'es'] as const).flatMap((lang) =>
  (['day', 'night'] as const).flatMap((theme) =>
    (Object.keys(sizes) as SizeName[]).map((size) => ({ lang, theme, size })),
  ),
);

type Condition = (typeof conditions)[number];
type Sheets = Map<string, Shot[]>;

/** The picture that the README shows. */
const shown = ({ lang, theme, size }: Condition, name: string): boolean =>
  name === 'site' && lang === 'en' && theme === 'day' && size === 'desk';

const walkUnder = async (
  { browser, base, wanted }: { browser: Browser; base: string; wanted: readonly string[] },
  condition: Condition,
  sheets: Sheets,
): Promise<number> => {
  const { lang, theme, size } = condition;
  const label = `${lang} · ${theme} · ${size}`;
  const { page, errors, close } = await openPage(browser, base + linkTo(lang, theme), { size, theme });
  let misfits = 0;
  await walkScreens(page, async ({ name }) => {
    if (wanted.length > 0 && !wanted.includes(name)) return;
    const picture = await restingPicture(page);
    sheets.set(name, [...(sheets.get(name) ?? []), { label, row: size, picture }]);
    if (shown(condition, name)) writeFileSync(`${folder}site.png`, picture);
    for (const { kind, what, why } of await misfitsOn(page)) {
      misfits++;
      console.log(`${name} · ${label}: ${kind}: ${what} (${why})`);
    }
  });
  for (const error of errors) console.log(`${label}: error: ${error}`);
  await close();
  return misfits + errors.length;
};

const main = async (): Promise<void> => {
  mkdirSync(folder, { recursive: true });
  const browser = await launchBrowser(await browserPath());
  const { base, close } = await builtSite();
  const sheets: Sheets = new Map();
  let wrong = 0;
  for (const condition of conditions) {
    wrong += await walkUnder({ browser, base, wanted: process.argv.slice(2) }, condition, sheets);
  }
  for (const [name, shots] of sheets) {
    writeFileSync(`${folder}sheet-${name}.png`, await contactSheet(browser, shots));
  }
  await browser.close();
  await close();
  console.log(`${sheets.size} sheets in assets/pictures/, ${wrong} things that do not fit`);
  process.exitCode = wrong === 0 ? 0 : 1;
};

await main();
