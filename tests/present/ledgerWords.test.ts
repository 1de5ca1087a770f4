import { beforeAll, describe, expect, it } from 'vitest';
import { play } from '../../src/core/hands/play';
import { replay } from '../../src/core/hands/opened';
import { shapesOf } from '../../src/core/hands/shapes';
import { roofOf, stationsOf } from '../../src/core/level/layout';
import { boardIds } from '../../src/core/level/planted';
import { tasksOn } from '../../src/core/order/crew/planner';
import { onItsRidge, orderRules } from '../../src/core/order/rules';
import { observe } from '../../src/core/site/observe';
import { pose } from '../../src/core/site/posed';
import { begin, take } from '../../src/core/site/take';
import { framed } from '../../src/present/framed';
import { jointSeenAt } from '../../src/present/model/jointSeen';
import { spotsFor } from '../../src/present/offers/spots';
import { roofSaid } from '../../src/present/roofTold';
import { ledger as en } from '../../src/present/words/en/ledger';
import { ledger as es } from '../../src/present/words/es/ledger';
import { jointName } from '../../src/present/words/names';
import { ledgerCatalogues } from '../../src/present/words/ledgerWords';
import { lacksWords, takeIn, wordsOn } from '../../src/present/words/jobWords';
import { catalogues } from '../../src/present/words/messages';
import { smallShed } from '../site/sheds';
import { levelOf } from '../site/levels';
import { findOffer, shapesOnOffer, shapeText } from './offeredActs';
import { fleschKincaid, inflesz } from './readable';
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

describe.each(langs)('the catalogue in %s', (lang) => {
  const said = (texts: Readonly<Record<string, string>>, codes: readonly string[]): readonly string[] =>
    codes.map((code) => texts[code] ?? code);

  it('has no such word in what a shed can be refused, stopped for, asked or told to do', () => {
    const words = ledgerCatalogues[lang];
    const rules = [
      ...onItsRidge(
        smallShed,
        orderRules.map(({ id }) => id),
      ).filter((id) => !elsewhere.includes(id)),
      ...['C1', 'C2', 'C3', 'C5', 'C6', 'C7', 'T1', 'T2', 'S1', 'S2', 'S3', 'S4'],
    ];
    const texts = [
      ...said(
        words.refusals,
        Object.keys(words.refusals).filter((code) => !elsewhere.includes(code)),
      ),
      ...said(
        words.dangers,
        Object.keys(words.dangers).filter((code) => !elsewhere.includes(code)),
      ),
      ...said(words.cautions, [...smallShed.cautions]),
      ...said(words.tasks, tasksOn(smallShed)),
      ...rules.flatMap((id) => Object.values(words.rules[id] ?? {})),
    ];
    expect(texts.filter((text) => strange[lang].test(text))).toEqual([]);
  });

  it('reads as easily as any other', () => {
    const body = textsIn(lang === 'en' ? en : es).filter((text) => /[.!?]$/.test(text));
    if (lang === 'en') expect(fleschKincaid(body)).toBeLessThanOrEqual(6);
    else expect(inflesz(body)).toBeGreaterThanOrEqual(65);
  });
});

/** What only a roof with pairs, or a machine on the job, can bring up. */
const elsewhere: readonly string[] = ['noLine', 'ridgeLocked', 'onePointHitch', 'letGoTooSoon'];

const textsIn = (from: unknown): readonly string[] =>
  typeof from === 'string'
    ? [from]
    : typeof from === 'object' && from !== null
      ? Object.values(from).flatMap(textsIn)
      : [];

it('is pictured with what it has and no more', () => {
  const built = Object.keys(framed(smallShed).site.members);
  expect(built.filter((id) => !/^(ridge$|rafter\.street|block\.street)/.test(id))).toEqual([]);
  expect(built).toContain('rafter.street.1');
});

describe('a screen on a shed', () => {
  const run = play(smallShed, 'expert', { seed: 2, mode: 'own' });
  const shapes = new Set(shapesOf(smallShed, boardIds(smallShed)).map(shapeText));

  it('offers everything an expert does, and nothing but what a random hand draws from', () => {
    let attempt = begin(smallShed, 2, 'own');
    const missing: string[] = [];
    run.steps.forEach(({ action }, step) => {
      if (!findOffer(attempt, action)) missing.push(shapeText(action));
      attempt = take(attempt, action);
      if (step % 10 === 0) missing.push(...[...shapesOnOffer(attempt)].filter((text) => !shapes.has(text)));
    });
    expect([...new Set(missing)]).toEqual([]);
  }, 60_000);

  it('shows every stud behind the ledger to hammer and nailer, and where it is nailed', () => {
    const up = run.steps.findIndex(({ action }) => action.type === 'place' && action.member === 'ridge');
    const early = replay(
      { level: smallShed, seed: 2, mode: 'own' },
      run.steps.slice(0, up + 1).map(({ action }) => action),
    );
    const behind = stationsOf(smallShed).map((_, i) => `ledger:ridge.${i + 1}`);
    for (const tool of ['tack', 'nail'] as const)
      expect(
        spotsFor(early, tool)
          .map(({ id }) => id)
          .filter((id) => id.startsWith('ledger:')),
      ).toEqual(behind);
    const shown = { level: smallShed, site: early.site, pose: pose(early), figured: roofOf(smallShed) };
    const seen = behind.map((joint) => jointSeenAt(shown, joint)?.[0] ?? -1);
    for (const [i, x] of stationsOf(smallShed).entries()) expect(seen[i]).toBeCloseTo(x, 6);
    expect(jointName(ledgerCatalogues.en, 'ledger:ridge.3')).toBe('Ledger to the stud at rafter 3');
    expect(jointName(ledgerCatalogues.es, 'ledger:ridge.3')).toBe('Larguero con el pie derecho del cabio 3');
    expect(roofSaid(ledgerCatalogues.en, observe(run))).toContain(
      `Nailed at ${behind.length} of ${behind.length} studs.`,
    );
  });
});
