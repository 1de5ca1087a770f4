import { readFileSync, readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { checkRules, orderRules } from '../../src/core/order/rules';
import { dangers } from '../../src/core/site/dangers/rows';
import { faults } from '../../src/core/faults/rows';
import type { Finding } from '../../src/core/score/score';
import { tellFinding } from '../../src/present/findingWords';
import { classCatalogues, type ClassMessages } from '../../src/present/words/classMessages';
import { roofCatalogues, type RoofMessages } from '../../src/present/words/roofMessages';
import { levelOf } from '../site/levels';
import { fleschKincaid, inflesz } from './readable';

const langs = ['en', 'es'] as const;

/** All that any page says. */
type Messages = RoofMessages & ClassMessages;
const catalogues: Readonly<Record<'en' | 'es', Messages>> = {
  en: { ...roofCatalogues.en, ...classCatalogues.en },
  es: { ...roofCatalogues.es, ...classCatalogues.es },
};

/** All plain sentences of a catalogue, with where they stand. */
const leaves = (from: unknown, path = ''): readonly (readonly [string, string])[] => {
  if (typeof from === 'string') return [[path, from]];
  if (typeof from !== 'object' || from === null) return [];
  return Object.entries(from).flatMap(([key, inner]) => leaves(inner, `${path}.${key}`));
};

/** Whole sentences only: labels of a word or two would make any text look easy. */
const body = (words: Messages): readonly string[] =>
  leaves(words)
    .map(([, text]) => text)
    .filter((text) => /[.!?]$/.test(text));

describe.each(langs)('the catalogue in %s', (lang) => {
  const words = catalogues[lang];

  it('has words for every rule, danger, fault and caution', () => {
    for (const { id } of [...orderRules, ...checkRules]) expect(words.rules[id]?.why, id).toBeTruthy();
    for (const id of ['T1', 'T2', 'S1', 'S2', 'S3', 'S4']) expect(words.rules[id]?.why, id).toBeTruthy();
    for (const { id } of dangers) expect(words.dangers[id], id).toBeTruthy();
    for (const { id } of faults) expect(words.trade.fault[id], id).toBeTruthy();
    for (const level of [levelOf('garden-hut'), levelOf('boathouse')])
      for (const id of level.cautions) expect(words.cautions[id], id).toBeTruthy();
  });

  it('has words for every refusal the site can give', () => {
    const folder = 'src/core/site';
    const codes = readdirSync(folder)
      .filter((file) => file.endsWith('.ts'))
      .flatMap((file) =>
        [...readFileSync(`${folder}/${file}`, 'utf8').matchAll(/refuse\('(\w+)'\)/g)].map(
          ([, code]) => code as string,
        ),
      );
    expect(codes.length).toBeGreaterThan(30);
    for (const code of codes) expect(words.refusals[code], code).toBeTruthy();
  });

  it('tells of a fault that was missed how it shows and everything that finds it', () => {
    for (const { id, shows, finds } of faults) {
      const finding: Finding = { kind: 'eye', code: id, at: 'board.3', minutes: 0, numbers: {} };
      const { why } = tellFinding(words, finding, 'feet');
      for (const sign of shows) expect(why, id).toContain(words.trade.symptom[sign]);
      for (const tool of finds) expect(why, id).toContain(words.trade.finder[tool]);
    }
  });

  it('leaves nothing empty', () => {
    for (const [path, text] of leaves(words)) expect(text.trim(), path).not.toBe('');
  });
});

it('says different things in the two languages', () => {
  const spanish = new Map(leaves(catalogues.es));
  // Figures, end letters and the product's own name are the same word in both.
  const same = leaves(catalogues.en).filter(
    ([path, text]) => spanish.get(path) === text && /[a-z]{4}/.test(text),
  );
  expect(same.map(([path]) => path).filter((path) => path !== '.ui.product')).toEqual([]);
});

it('reads at or under grade six in English', () => {
  expect(fleschKincaid(body(catalogues.en))).toBeLessThanOrEqual(6);
});

it('reads at 65 or more on the INFLESZ scale in Spanish', () => {
  expect(inflesz(body(catalogues.es))).toBeGreaterThanOrEqual(65);
});
