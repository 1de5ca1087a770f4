import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { groups, fields, styles } from '../../src/content/draft/fields';
import type { Said } from '../../src/content/phrase';
import { ownRoofOf } from '../../src/panels/own/ownRoof';
import { refusalSaid, roofSaid } from '../../src/present/roofs/said';
import { roofCatalogues } from '../../src/present/words/roofMessages';
import { readRoof } from '../../src/content/readRoof';
import { wildRoof } from '../roof/wildRoofs';
import { englishLeft } from './englishLeft';
import { hurried } from '../content/roofAnswers';

/** A number past all measuring stays as it was reckoned. */
const endless = /Infinity/;
const isEnglish = (said: Said): boolean => englishLeft(refusalSaid('es', said)) !== undefined;

describe('what is said of a roof', () => {
  it('has Spanish for what the form can bring about', () => {
    const heard = new Set<string>();
    const hear = (said: Said): void =>
      void (
        (refusalSaid('es', said) === refusalSaid('en', said) || isEnglish(said)) &&
        heard.add(JSON.stringify(said))
      );
    // The same answers each time: what is rarer than these stays in English and is no reason to stop.
    fc.assert(
      fc.property(hurried, (draft) => {
        const { read, heeds } = ownRoofOf(draft);
        if (!read.ok) read.complaints.forEach(({ wrong, accepted }) => [wrong, accepted].forEach(hear));
        heeds.forEach(({ text }) => hear(text));
      }),
      { numRuns: 3000, seed: 1 },
    );
    expect([...heard]).toEqual([]);
  });

  it('has Spanish for whatever else a file can hold', () => {
    const heard = new Set<string>();
    fc.assert(
      fc.property(wildRoof, (file) => {
        const read = readRoof(file);
        if (read.ok) return;
        for (const said of read.complaints.flatMap(({ wrong, accepted }) => [wrong, accepted]))
          if (isEnglish(said) && !endless.test(JSON.stringify(said))) heard.add(JSON.stringify(said));
      }),
      { numRuns: 5000, seed: 1 },
    );
    expect([...heard]).toEqual([]);
  });

  it('shows lengths as they were typed, and in the words of the page', () => {
    expect(roofSaid('en', 'a length such as 24, "5 1/2\\""')).toBe('a length such as 24, 5 1/2"');
    expect(roofSaid('es', 'is 40 in on a plate of 5.5 in')).toBe('es 40 pulg. en una solera de 5.5 pulg.');
    expect(roofSaid('es', 'is 23 mm and cuts the rafter through')).toBe('es 23 mm y corta el cabio entero');
    expect(roofSaid('es', 'never said before')).toBe('never said before');
  });
});

describe('the words of the form', () => {
  it.each(['en', 'es'] as const)('name every style, group, field and option in %s', (lang) => {
    const { own } = roofCatalogues[lang];
    const missing = [
      ...styles.filter((style) => own.styles[style] === undefined),
      ...groups.filter((group) => own.groups[group] === undefined),
      ...fields.filter(({ id }) => own.fields[id] === undefined).map(({ id }) => id),
      ...fields.flatMap((field) =>
        field.kind === 'choice'
          ? Object.keys(field.options)
              .map((option) => `${field.id}.${option}`)
              .filter((key) => own.options[key] === undefined)
          : [],
      ),
    ];
    expect(missing).toEqual([]);
  });
});
