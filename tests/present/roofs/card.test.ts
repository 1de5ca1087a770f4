import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readRoof } from '../../../src/content/readRoof';
import { cardBody } from '../../../src/present/roofs/card';
import { cardPage } from '../../../src/present/roofs/cardPage';
import { fitted, type Block } from '../../../src/present/roofs/cardFit';
import { roofCatalogues } from '../../../src/present/words/roofMessages';
import { wildRoof } from '../../roof/wildRoofs';
import { askedOf, changedAsked, exampleAsked, exampleNames, langs, onCard, papers } from './examples';

/** What is to be read on a card, in one line. */
const textOf = (html: string): string =>
  html
    .replace(/aria-label="([^"]*)"[^>]*>/g, '> $1 ')
    .replace(/<[^>]*>/g, ' ')
    .replace(/&quot;/g, '"')
    .replace(/\u00a0|\s+/g, ' ');

const card = (changes: object): string => textOf(cardBody(onCard(changedAsked(changes))).html);

/** Published rows, as whoever reads a card finds them. NAV is NAVEDTRA 14044, Builder 3 & 2, vol. 2, ch. 2. */
describe('published figures on a card', () => {
  // Depth of a plumb cut, d/cos: 8.106 for a 2×8 at 6 in 12, 10.253 at 12 in 12 (geometry of IRC R802.3).
  it.each([
    [6, '8 1/8"'],
    [12, '10 1/4"'],
  ])('the plumb cut of a 2×8 at %d in 12', (rise, text) => {
    expect(card({ slope: { rise, run: 12 }, ridge: { thickness: 1.5, depth: 11.25 } })).toContain(
      `plumb cut ${text}`,
    );
  });

  // NAV p. 2-12, example 1 (read): 111 1/8 in for 7 in 12 over 16 ft; half a ridge of 1 1/2 in comes off level (p. 2-13).
  it('W1: the body at 7 in 12 over 16 ft', () => {
    expect(card({ slope: { rise: 7, run: 12 }, span: `16'` })).toContain('body 110 1/4"');
  });

  // NAV p. 2-13 (formula read): a projection of 10 in at 8 in 12 makes a tail of 12.02 in.
  it('W4: the tail at 8 in 12 for 10 in', () => {
    expect(card({ slope: { rise: 8, run: 12 }, seat: 2, overhang: 10 })).toContain('tail 12"');
  });

  // NAV p. 2-19 (read): studs 24 in apart under 6 in 12 differ by 12 in.
  it('W21: gable studs', () => {
    expect(card({ gableStuds: { spacing: 24 }, length: 144 })).toContain('each longer by 12"');
  });

  // NAV p. 2-31 (read): jacks 16 in apart at 8 in 12 differ by 19.23 in. P. 2-33 (read): cheek at 12 and 14.42, 39.77°.
  it('W15, W17: hip jacks', () => {
    const text = card({ kind: 'hip', length: `30'`, slope: { rise: 8, run: 12 }, spacing: 16, seat: 2.5 });
    expect(text).toContain('each 19 1/4" longer');
    expect(text).toContain('cheek 39.8°, saw 45.0°');
  });

  // A course deck on hip ridges (read): 28 by 64 ft has a ridge of 36 ft, 3/4 in more at each end where a common butts.
  it('W23, W24: the ridge of a hip roof', () => {
    expect(card({ kind: 'hip', span: `28'`, length: `64'` })).toContain('433 1/2" long');
  });

  // The roof that the drawings of this project show.
  it('the Net shed', () => {
    const text = card({
      slope: { rise: 9, run: 12 },
      span: `12'`,
      length: `16'`,
      overhang: 12,
      rafter: { thickness: 1.5, depth: 5.5 },
      ridge: { thickness: 1.5, depth: 7.25 },
      plate: { width: 3.5 },
      seat: '2 1/4"',
    });
    for (const figure of [
      'whole top edge 104 1/16"',
      'body 89 1/16"',
      'tail 15"',
      'plumb cut 6 7/8"',
      'seat 2 1/4"',
      'heel 1 11/16"',
      '5 3/16" above plate',
      'Ridge 58 5/8"',
      'underside 51 3/8"',
      'Block 22 7/16"',
      '4 at 21 11/16"',
      '0" · 23 1/4" · 47 1/4" · 71 1/4" · 95 1/4" · 119 1/4" · 143 1/4" · 167 1/4" · 190 1/2"',
    ])
      expect(text).toContain(figure);
  });
});

describe.each(exampleNames)('the card of %s', (name) => {
  it.each(langs)('fits as measured, and says what is elsewhere (%s)', (lang) => {
    const words = roofCatalogues[lang];
    for (const paper of papers)
      for (const units of ['feet', 'mm'] as const) {
        const made = cardBody(onCard(exampleAsked(name, { lang, units }), paper));
        expect(made.fits, `${paper} ${units}`).toBe(true);
        const text = textOf(made.html);
        for (const what of made.left) expect(text).toContain(what);
        expect(text).toContain(words.cautions['localCode']);
        expect(text).not.toMatch(/NaN|undefined/);
      }
  });

  it('tells the first thing there is to mind', () => {
    const asked = exampleAsked(name);
    const made = textOf(cardBody(onCard(asked, 'a4')).html);
    if (asked.roof.cautions.length > 0)
      expect(made).toContain(asked.roof.cautions[0]?.text.split(' ').slice(0, 3).join(' '));
  });
});

describe('a part of a card that gives way', () => {
  const block = (key: string, heights: readonly number[]): Block => ({
    key,
    variants: heights.map((height) => ({ html: key, height, ...(height === 0 && { left: key }) })) as never,
  });
  const blocks = [block('a', [50, 20]), block('b', [40, 30, 0])];
  const ease = ['a', 'b', 'b'];

  it('gives way no more than it has to', () => {
    const heights = (room: number) =>
      fitted(blocks, { room, gap: 0, ease }).blocks.map(({ height }) => height);
    expect(heights(90)).toEqual([50, 40]);
    expect(heights(60)).toEqual([20, 40]);
    expect(heights(50)).toEqual([20, 30]);
  });

  it('comes back where a later one left more room than was needed', () => {
    const { blocks: left, left: said } = fitted([block('a', [50, 20]), block('b', [60, 0])], {
      room: 55,
      gap: 0,
      ease: ['a', 'b'],
    });
    expect(left.map(({ height }) => height)).toEqual([50, 0]);
    expect(said).toEqual(['b']);
  });

  it('says so when nothing helps', () => {
    expect(fitted(blocks, { room: 10, gap: 0, ease }).fits).toBe(false);
  });
});

it('never makes markup of what it is given', () => {
  const asked = changedAsked({});
  const evil = `"'><script>alert(1)</script>`;
  const page = cardPage({
    ...onCard(asked),
    roof: {
      ...asked.roof,
      commonRafters: asked.roof.commonRafters.map((one) => ({ ...one, side: evil as never })),
      cautions: [{ code: evil, at: evil, text: evil }],
    },
    carried: { kind: 'link', text: evil },
  });
  expect(page).toContain('&lt;script&gt;');
  expect(page).not.toContain('<script');
});

it('leaves out a code that no phone could read', () => {
  const made = cardBody({ ...onCard(changedAsked({})), carried: { kind: 'file', text: 'x'.repeat(4000) } });
  expect(made.html).not.toContain('class="code"');
  expect(textOf(made.html)).toContain(roofCatalogues.en.roofs.card.noScan);
});

it('is made of any roof that can be figured', () => {
  let made = 0;
  fc.assert(
    fc.property(wildRoof, (file) => {
      const read = readRoof(file);
      // Those of thousands of rafters are figured elsewhere: here they would take the time of all the rest.
      if (!read.ok || read.value.length > 200 * read.value.spacing) return;
      made += 1;
      expect(cardBody(onCard(askedOf(read.value))).html).not.toMatch(/NaN|undefined|Infinity/);
    }),
    { numRuns: 300 },
  );
  expect(made).toBeGreaterThan(0);
});

describe('what a crew says of its roof besides its sizes', () => {
  const made = (more: object): string => textOf(cardBody({ ...onCard(exampleAsked('gable')), ...more }).html);

  it('stands at the head by its name, which never becomes markup', () => {
    const { html } = cardBody({ ...onCard(exampleAsked('gable')), name: '<b>Reed</b> shed' });
    expect(html).toContain('&lt;b&gt;Reed&lt;/b&gt;');
    expect(html).not.toContain('<b>Reed');
  });

  it('has nothing let go where no machine lifts', () => {
    const { noReturn } = roofCatalogues.en.roofs;
    expect(made({ machine: true })).toContain(noReturn.letGo);
    expect(made({ machine: false })).not.toContain(noReturn.letGo);
    expect(made({ machine: false })).toContain(noReturn.ridgeUp);
  });
});
