import { beforeAll, describe, expect, it } from 'vitest';
import { play } from '../../src/core/hands/play';
import { ledgerCatalogues } from '../../src/present/words/ledgerWords';
import { lacksWords, takeIn, wordsOn } from '../../src/present/words/jobWords';
import { catalogues } from '../../src/present/words/messages';
import { smallShed } from '../site/sheds';
import { levelOf } from '../site/levels';
import { saidInRun } from './saidInRun';

/** A roof of one side at a wall speaks of its ledger and of nothing it has not. */

const langs = ['en', 'es'] as const;
const strange = {
  en: /\bridge\b|\bpairs?\b|\bcollars?\b|\byard\b|\bstreet\b|\bjoists?\b/i,
  es: /cumbrera|\bpar(es)?\b|tirante|patio|\bcalle\b|vigueta/i,
} as const;

/** The plain catalogue, before anything was loaded. */
const before = lacksWords(smallShed) && langs.map((lang) => wordsOn(lang, levelOf('garden-hut')));

beforeAll(() => takeIn(ledgerCatalogues));

describe.each(['expert', 'ladder-0', 'random'] as const)('a run of the %s hand on a shed', (hand) => {
  const run = play(smallShed, hand, { seed: 1, mode: 'own' });

  it.each(langs)('is told in %s without a word of a ridge, of pairs, of ties or of another side', (lang) => {
    const said = [...saidInRun(wordsOn(lang, smallShed), run)];
    expect(said.length).toBeGreaterThan(200);
    expect(said.filter((text) => strange[lang].test(text))).toEqual([]);
  });
});

it('has its words once they are taken in, and leaves those of other jobs as they were', () => {
  expect(lacksWords(smallShed)).toBe(false);
  expect(before).toEqual([catalogues.en, catalogues.es]);
  for (const lang of langs) {
    expect(wordsOn(lang, levelOf('garden-hut'))).toBe(catalogues[lang]);
    expect(wordsOn(lang, undefined)).toBe(catalogues[lang]);
    expect(wordsOn(lang, smallShed)).toBe(ledgerCatalogues[lang]);
  }
});
