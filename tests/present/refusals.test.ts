import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readAssignment } from '../../src/content/assignment';
import { readAttempt } from '../../src/content/attemptFile';
import { readBackup } from '../../src/content/backupFile';
import type { Complaint, Read } from '../../src/content/complaint';
import { linkOf, readLink } from '../../src/content/link';
import { readLevels } from '../../src/content/levelFiles';
import type { Phrase } from '../../src/content/phrase';
import { parseLevel } from '../../src/content/readLevel';
import { classCatalogues } from '../../src/present/words/classMessages';
import { reasonSaid } from '../../src/present/roofs/said';
import { complaintLine, phraseTold, refusalCatalogues } from '../../src/present/words/refusalMessages';
import { refusedLine } from '../../src/panels/classes/refusedLine';
import { englishLeft } from './englishLeft';

/** Each code with what it may be filled with: the compiler asks for all of them. */
const samples: { readonly [Code in Phrase[0]]: Extract<Phrase, readonly [Code, ...unknown[]]> } = {
  missing: ['missing'],
  found: ['found', '7'],
  notAKey: ['notAKey'],
  cannotRead: ['cannotRead'],
  tooLarge: ['tooLarge', 7],
  empty: ['empty'],
  notJson: ['notJson'],
  tooDeep: ['tooDeep'],
  newer: ['newer', '7'],
  digestOff: ['digestOff'],
  noRun: ['noRun'],
  cannotReplay: ['cannotReplay'],
  linkLong: ['linkLong'],
  linkNewer: ['linkNewer'],
  linkShort: ['linkShort'],
  linkChanged: ['linkChanged'],
  linkPacked: ['linkPacked'],
  kindNotPlayed: ['kindNotPlayed', '7'],
  notPlayed: ['notPlayed'],
  oneSided: ['oneSided'],
  untied: ['untied'],
  manyPairs: ['manyPairs', 7],
  notFramed: ['notFramed'],
  noForm: ['noForm'],
  noField: ['noField'],
  ownError: ['ownError', '7'],
  these: ['these', '7'],
  either: ['either', ['string'], '7', ['atMost', 7, 'entries']],
  object: ['object'],
  array: ['array'],
  string: ['string'],
  number: ['number'],
  int: ['int'],
  boolean: ['boolean'],
  nonoptional: ['nonoptional'],
  otherValue: ['otherValue'],
  otherText: ['otherText'],
  textLike: ['textLike', '7'],
  atLeast: ['atLeast', 7, 'characters'],
  atMost: ['atMost', 7, 'entries'],
  moreThan: ['moreThan', 7],
  lessThan: ['lessThan', 7, 'characters'],
  day: ['day'],
  onlyKeys: ['onlyKeys'],
  jsonObject: ['jsonObject'],
  fileAtMost: ['fileAtMost', 7],
  levelsAtMost: ['levelsAtMost', 7],
  attemptFile: ['attemptFile'],
  levelFile: ['levelFile'],
  asWritten: ['asWritten'],
  linkAtMost: ['linkAtMost', 7],
  linkOlder: ['linkOlder'],
  linkWhole: ['linkWhole'],
  plainRoof: ['plainRoof'],
  ledgerLifted: ['ledgerLifted'],
  ledgerWild: ['ledgerWild'],
  postEachSide: ['postEachSide'],
  tied: ['tied'],
  pairsAtMost: ['pairsAtMost', 7],
  framable: ['framable'],
  askedFor: ['askedFor'],
  ofTheForm: ['ofTheForm'],
};
const phrases = Object.entries<Phrase>(samples);

describe('what the gate has to say', () => {
  it.each(['en', 'es'] as const)('has words for every code in %s, and no others', (lang) => {
    expect(Object.keys(refusalCatalogues[lang]).sort()).toEqual(Object.keys(samples).sort());
  });

  it.each(phrases)('is told in both languages with what it is filled with: %s', (_code, phrase) => {
    const [en, es] = [phraseTold('en', phrase), phraseTold('es', phrase)];
    const filled = JSON.stringify(phrase).includes('7');
    for (const told of [en, es]) {
      expect(told).not.toMatch(/^$|undefined|NaN|object Object/);
      expect(told.includes('7')).toBe(filled);
    }
    expect(englishLeft(es)).toBeUndefined();
    if (phrase[0] !== 'these') expect(es).not.toBe(en);
  });

  it('counts one as one in Spanish', () => {
    expect(phraseTold('es', ['atLeast', 1, 'entries'])).toBe('al menos 1 elemento');
    expect(phraseTold('es', ['atLeast', 2, 'characters'])).toBe('al menos 2 letras');
  });
});

const complaintsOf = (read: Read<unknown> | undefined): readonly Complaint[] => {
  if (!read || read.ok) throw new Error('was read');
  return read.complaints;
};
const linesOf = (read: Read<unknown> | undefined): readonly string[] =>
  complaintsOf(read).map((one) => complaintLine('a.json', one, 'es'));

const hut = readFileSync('levels/first-gable/garden-hut.json', 'utf8');
const changed = (change: object): string => JSON.stringify({ ...(JSON.parse(hut) as object), ...change });
const assignment = { format: 'tack-and-true/assignment@1', id: 'a', levels: ['b'], mode: 'own' };

describe('in Spanish', () => {
  it('a text that is no file is refused', () => {
    expect(linesOf(readAttempt(''))).toEqual(['a.json: $: el archivo está vacío (un objeto JSON)']);
    expect(linesOf(readAttempt('{'))).toEqual(['a.json: $: no es JSON (un objeto JSON)']);
    expect(linesOf(readAttempt(' '.repeat(1_000_001)))).toEqual([
      'a.json: $: el archivo pasa de 1 MB (un archivo de a lo más 1 MB)',
    ]);
    expect(linesOf(readBackup('{"__proto__":1}'))).toEqual([
      'a.json: __proto__: no va aquí (solo los datos del formato)',
    ]);
  });

  it('an assignment is refused at every place at once', () => {
    const file = { ...assignment, id: '', levels: [], mode: 'fast', due: '2031-02-30', passLine: 101, x: 1 };
    expect(linesOf(readAssignment(JSON.stringify(file)))).toEqual([
      'a.json: id: es "" (al menos 1 letra)',
      'a.json: levels: es [] (al menos 1 elemento)',
      expect.stringMatching(/^a\.json: mode: es "fast" \("watch", /),
      'a.json: due: es "2031-02-30" (un día como 2031-04-30)',
      'a.json: passLine: es 101 (a lo más 100)',
      'a.json: x: no va aquí (format, id, label, levels, mode, seeds, due, passLine, digest)',
    ]);
  });

  it.each([
    ['newer', { ...assignment, format: 'tack-and-true/assignment@9' }, /hecho por una versión más nueva/],
    ['changed', { ...assignment, digest: '1' }, /digest: no encaja con el resto del archivo/],
  ])('a file that is %s is refused', (_what, file, line) => {
    expect(linesOf(readAssignment(JSON.stringify(file)))[0]).toMatch(line);
  });

  it('a link is called one, and says how it was spoiled', () => {
    const link = linkOf({ kind: 'assignment', text: JSON.stringify(assignment) });
    const [cut] = complaintsOf(readLink(link.slice(0, -1)));
    if (!cut) throw new Error('nothing was said');
    expect(refusedLine(classCatalogues.es, { complaint: cut })).toBe(
      'enlace: enlace: está cortado o cambiado (el enlace entero, como se hizo)',
    );
    expect(refusedLine(classCatalogues.en, { complaint: cut })).toBe(
      'link: link: was cut or changed (the whole link as it was made)',
    );
  });

  it('an act that there is not is refused with those that there are', () => {
    const acts = {
      format: 'tack-and-true/attempt@1',
      actions: [{ type: 'fly' }, { type: 'mark', faces: 3 }],
    };
    const lines = linesOf(readAttempt(JSON.stringify(acts)));
    expect(lines).toContainEqual(expect.stringMatching(/actions\.0\.type: es "fly" \(.+ o .+\)$/));
    expect(lines).toContainEqual('a.json: actions.1.faces: es 3 (1 o 2)');
    expect(lines).toContainEqual('a.json: seed: falta (un número)');
  });

  it('a level is refused in its own words and in those of its roof', () => {
    const roof = (JSON.parse(hut) as { roof: object }).roof;
    const files = {
      'a.json': changed({ id: 'A B' }),
      'b.json': changed({ roof: { ...roof, span: -1 } }),
      'c.json': changed({ roof: { ...roof, wings: [{ side: 'yard', at: 72, span: 60, length: 40 }] } }),
      'd.json': changed({ roof: { ...roof, rafter: undefined } }),
      'e.json': hut.slice(0, 200),
    };
    const reasons = readLevels(files).troubles.map(({ complaint }) => reasonSaid('es', complaint));
    expect(reasons).toEqual([
      'id es "A B" (un texto como /^[a-z][a-z0-9-]{1,40}$/)',
      'roof.span es -1 (de 12 a 12000 pulg.)',
      'roof.wings se puede calcular, pero todavía no practicar (un techo sencillo de dos aguas, o de un agua sobre un larguero, sin este dato)',
      'roof.rafter falta (un objeto con sus datos)',
      'no es JSON (un objeto JSON)',
    ]);
    expect(linesOf(parseLevel(changed({ asFound: null })))).toEqual([
      'a.json: asFound: es null (un objeto con sus datos)',
    ]);
  });
});
