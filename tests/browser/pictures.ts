import { mkdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Browser } from 'playwright-core';
import { linkTo, walkScreens, type Asked } from './screens';
import { launchBrowser, moreSizes, openPage, sizes, type AnySize, type SizeName } from './support/browser';
import { builtSite } from './support/builtSite';
import { browserPath } from './support/chromium';
import { contactSheet, type Shot } from './support/contactSheet';
import { lastingMisfits } from './support/fits';
import { restingPicture } from './support/resting';
import { smallPng } from './support/smallPng';

/**
 * `npm run pictures [NAME…]`: every screen, or those named, in both languages by day and by night on three sizes of
 * screen. One sheet a screen goes to assets/pictures/, the pictures of the README with it. On more sizes, and with
 * text twice as large, the screens are only measured. What does not fit is printed. `npm run pictures measured` leaves
 * the pictures out.
 */

const folder = fileURLToPath(new URL('../../assets/pictures/', import.meta.url));

type Condition = Asked & { readonly size: AnySize };

const languages = ['en', 'es'] as const;

/** What the contact sheets show. */
const pictured: readonly Condition[] = languages.flatMap((lang) =>
  (['day', 'night'] as const).flatMap((theme) =>
    (Object.keys(sizes) as SizeName[]).map((size) => ({ lang, theme, size })),
  ),
);

/** What is only measured. */
const measured: readonly Condition[] = languages.flatMap((lang) => [
  ...(Object.keys(moreSizes) as AnySize[]).map((size) => ({ lang, theme: 'day' as const, size })),
  ...(['phone', 'desk'] as const).map((size) => ({
    lang,
    theme: 'day' as const,
    size,
    text: '200' as const,
  })),
]);

type Sheets = Map<string, Shot[]>;

/** The pictures that the README shows, by their files: a screen, on what, and in which light. All in English. */
const shown: Readonly<Record<string, readonly [name: string, size: SizeName, theme: Asked['theme']]>> = {
  site: ['site', 'desk', 'day'],
  joint: ['joint', 'desk', 'day'],
  sheet: ['lines', 'desk', 'day'],
  loads: ['loads', 'desk', 'night'],
  debrief: ['told', 'desk', 'day'],
  phone: ['tape', 'phone', 'day'],
};

const keepShown = ({ lang, theme, size }: Condition, name: string, picture: Buffer): void => {
  for (const [file, [screen, on, light]] of Object.entries(shown))
    if (lang === 'en' && name === screen && size === on && theme === light)
      writeFileSync(`${folder}${file}.png`, smallPng(picture));
};

type Walk = { readonly browser: Browser; readonly base: string; readonly wanted: readonly string[] };

/** Walks all screens under one condition. Sheets, where given, gather the pictures. Returns how much does not fit. */
const walkUnder = async (
  { browser, base, wanted }: Walk,
  condition: Condition,
  sheets?: Sheets,
): Promise<number> => {
  const { lang, theme, size, text = '100' } = condition;
  const label = `${lang} · ${theme} · ${size}${text === '100' ? '' : ` · text ${text} %`}`;
  const { page, errors, close } = await openPage(browser, base + linkTo(lang, theme, text), { size, theme });
  let misfits = 0;
  await walkScreens(page, condition, async ({ name }) => {
    if (wanted.length > 0 && !wanted.includes(name)) return;
    if (sheets) {
      const picture = await restingPicture(page);
      sheets.set(name, [...(sheets.get(name) ?? []), { label, row: size, picture }]);
      keepShown(condition, name, picture);
    }
    for (const { kind, what, why } of await lastingMisfits(page)) {
      misfits++;
      console.log(`${name} · ${label}: ${kind}: ${what} (${why})`);
    }
  });
  for (const error of errors) console.log(`${label}: error: ${error}`);
  await close();
  return misfits + errors.length;
};

const main = async (asked: readonly string[]): Promise<void> => {
  mkdirSync(folder, { recursive: true });
  const browser = await launchBrowser(await browserPath());
  const { base, close } = await builtSite();
  const sheets: Sheets = new Map();
  const walk = { browser, base, wanted: asked.filter((name) => name !== 'measured') };
  let wrong = 0;
  if (!asked.includes('measured'))
    for (const condition of pictured) wrong += await walkUnder(walk, condition, sheets);
  for (const [name, shots] of sheets) {
    writeFileSync(`${folder}sheet-${name}.png`, await contactSheet(browser, shots));
  }
  for (const condition of measured) wrong += await walkUnder(walk, condition);
  await browser.close();
  await close();
  console.log(`${sheets.size} sheets in assets/pictures/, ${wrong} things that do not fit`);
  process.exitCode = wrong === 0 ? 0 : 1;
};

await main(process.argv.slice(2));
