import { readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { parseArgs } from 'node:util';
import { linkOf } from '../content/link';
import { readRoofText } from '../content/readRoof';
import { figure } from '../core/roof/figure';
import { listsOf } from '../core/roof/lists';
import type { CardAsked } from '../present/roofs/card';
import { cardPage, type Fonts } from '../present/roofs/cardPage';
import { papers, type Paper } from '../present/roofs/cardSizes';
import type { Lang } from '../present/words/messages';
import { roofCatalogues } from '../present/words/roofMessages';
import { readFile, refuseInput } from './readFile';
import type { Verb } from './verbs';

const usage = 'card ROOF.json --lang en|es --paper letter|a4 --out FILE.html [--base URL] [--units feet|mm]';

/** `card`: the set card of a roof as one HTML page that needs nothing beside itself; the browser prints it. */
export const cardVerb: Verb = (args) => {
  const asked = askedFrom(args);
  if (typeof asked === 'string') {
    process.stderr.write(`tt card: ${asked} (${usage})\n`);
    return 2;
  }
  const { file, lang, paper, units, out, base } = asked;
  const text = readFile(file);
  if (!text.ok) return refuseInput(file, text.complaints);
  const plan = readRoofText(text.value);
  if (!plan.ok) return refuseInput(file, plan.complaints);
  const roof = figure(plan.value);
  // Line breaks and indents would only make the code on the card denser.
  const packed = JSON.stringify(JSON.parse(text.value));
  const page = cardPage(
    {
      plan: plan.value,
      roof,
      lists: listsOf(plan.value, roof),
      words: roofCatalogues[lang],
      units,
      paper,
      ...saidIn(packed),
      carried:
        base === undefined
          ? { kind: 'file', text: packed }
          : { kind: 'link', text: `${base}${linkOf({ kind: 'roof', text: packed })}` },
    },
    fontsHere(),
  );
  writeFileSync(out, page);
  return 0;
};

/** What a roof file says besides what is figured. */
const saidIn = (packed: string): Pick<CardAsked, 'name' | 'machine'> => {
  const { name = '', site } = JSON.parse(packed) as {
    readonly name?: string;
    readonly site?: { readonly machine?: boolean };
  };
  return {
    ...(name.trim() !== '' && { name: name.trim() }),
    ...(site?.machine !== undefined && { machine: site.machine }),
  };
};

type Asked = {
  readonly file: string;
  readonly lang: Lang;
  readonly paper: Paper;
  readonly units: 'feet' | 'mm';
  readonly out: string;
  readonly base: string | undefined;
};

/** Or what is wrong. */
const askedFrom = (args: readonly string[]): Asked | string => {
  const option = { type: 'string' } as const;
  const { values, positionals } = parseArgs({
    args: [...args],
    allowPositionals: true,
    options: { lang: option, paper: option, out: option, base: option, units: option },
  });
  const { lang, paper, out, base, units = 'feet' } = values;
  const [file, ...more] = positionals;
  if (file === undefined || more.length > 0) return 'give one roof file';
  if (lang !== 'en' && lang !== 'es') return '--lang: is not en or es';
  if (paper === undefined || !Object.hasOwn(papers, paper)) return '--paper: is not letter or a4';
  if (units !== 'feet' && units !== 'mm') return '--units: is not feet or mm';
  if (out === undefined) return '--out: is missing';
  return { file, lang, paper: paper as Paper, units, out, base };
};

/** From their packages, where those are installed. */
const fontsHere = (): Fonts | undefined => {
  const { resolve } = createRequire(import.meta.url);
  const data = (path: string): string => readFileSync(resolve(path)).toString('base64');
  try {
    return {
      word: data('@fontsource-variable/public-sans/files/public-sans-latin-wght-normal.woff2'),
      narrow: data('@fontsource/barlow-condensed/files/barlow-condensed-latin-600-normal.woff2'),
    };
  } catch {
    return undefined;
  }
};
