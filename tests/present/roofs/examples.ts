import { readdirSync, readFileSync } from 'node:fs';
import { readRoof, readRoofText } from '../../../src/content/readRoof';
import { figure } from '../../../src/core/roof/figure';
import { listsOf } from '../../../src/core/roof/lists';
import type { RoofPlan } from '../../../src/core/roof/plan';
import type { CardAsked } from '../../../src/present/roofs/card';
import type { Paper } from '../../../src/present/roofs/cardSizes';
import type { SheetAsked } from '../../../src/present/roofs/sheetShape';
import type { Lang } from '../../../src/present/words/messages';
import { roofCatalogues } from '../../../src/present/words/roofMessages';
import type { Units } from '../../../src/present/words/numbers';
import { sample } from '../../roof/roofs';

const folder = 'levels/examples';

export const exampleNames: readonly string[] = readdirSync(folder)
  .filter((file) => file.endsWith('.json'))
  .map((file) => file.slice(0, -'.json'.length));

export const langs: readonly Lang[] = ['en', 'es'];
export const papers: readonly Paper[] = ['letter', 'a4'];

type In = { readonly lang?: Lang; readonly units?: Units };

export const askedOf = (plan: RoofPlan, { lang = 'en', units = 'feet' }: In = {}): SheetAsked => {
  const roof = figure(plan);
  return { plan, roof, lists: listsOf(plan, roof), words: roofCatalogues[lang], units };
};

export const exampleText = (name: string): string => readFileSync(`${folder}/${name}.json`, 'utf8');

const plans = new Map<string, RoofPlan>();

export const examplePlan = (name: string): RoofPlan => {
  const known = plans.get(name);
  if (known) return known;
  const read = readRoofText(exampleText(name));
  if (!read.ok) throw new Error(`${name}: ${JSON.stringify(read.complaints)}`);
  plans.set(name, read.value);
  return read.value;
};

export const exampleAsked = (name: string, so: In = {}): SheetAsked => askedOf(examplePlan(name), so);

/** The sample gable with some keys changed; those of other kinds need their own. */
export const changedAsked = (changes: object, so: In = {}): SheetAsked => {
  const read = readRoof({ ...sample, ...changes });
  if (!read.ok) throw new Error(JSON.stringify(read.complaints));
  return askedOf(read.value, so);
};

/** With a code that holds a short text. */
export const onCard = (asked: SheetAsked, paper: Paper = 'letter'): CardAsked => ({
  ...asked,
  paper,
  carried: { kind: 'file', text: '{}' },
});
