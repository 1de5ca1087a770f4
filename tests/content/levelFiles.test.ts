import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { lineOf } from '../../src/content/jsonPlace';
import { readLevels, type Trouble } from '../../src/content/levelFiles';
import { reasonSaid } from '../../src/present/roofs/said';

const file = 'levels/first-gable/garden-hut.json';
const sound = readFileSync(file, 'utf8');
const lines = sound.split('\n');

const reasonsOf = (troubles: readonly Trouble[]): readonly string[] =>
  troubles.map(({ complaint }) => reasonSaid('en', complaint));

/** The line, from 1, on which a key first stands. */
const lineWith = (key: string): number => lines.findIndex((line) => line.includes(`"${key}"`)) + 1;

describe('the line a complaint speaks of', () => {
  it('is the one of its key, or of the nearest thing around it', () => {
    expect(lineOf(sound, 'roof.span')).toBe(lineWith('span'));
    expect(lineOf(sound, 'roof.rafter.depth')).toBe(lineWith('rafter'));
    expect(lineOf(sound, 'roof.nothing')).toBe(lineWith('roof'));
    expect(lineOf(sound, 'briefing.1.es')).toBeGreaterThan(lineOf(sound, 'briefing.0.es'));
    expect(lineOf(sound, 'briefing.1.es')).toBeLessThan(lineWith('roof'));
    expect(lineOf(sound, '$')).toBe(1);
  });

  it('is where the text stops being JSON', () => {
    expect(lineOf('{\n "a": 1\n "b": 2\n}', '$')).toBe(3);
    expect(lineOf('{\n "a": [1, 2,\n ],\n "b": 2\n}', '$')).toBe(3);
    expect(lineOf('{\n "a": "open\n}', '$')).toBe(2);
    expect(lineOf('{"a": 1}\n\nmore', '$')).toBe(3);
    expect(lineOf('', '$')).toBe(1);
  });

  it('is the last one of a text that was cut short', () => {
    for (let cut = 1; cut < sound.trimEnd().length; cut += 37) {
      const part = sound.slice(0, cut);
      expect(lineOf(part, '$')).toBe(part.split('\n').length);
    }
  });
});

describe('level files', () => {
  const broken = {
    'cut.json': sound.slice(0, sound.length / 2),
    'comma.json': sound.replace('"id":', '"version" "id":'),
    'span.json': sound.replace(/("span": )[^,]+/, '$1-3'),
    'key.json': sound.replace('"id":', '"color": "blue",\n  "id":'),
  };

  it('are each told with the place and the reason, and the others are there', () => {
    const { levels, troubles } = readLevels({ ...broken, 'sound.json': sound });
    expect(levels.map(({ id }) => id)).toEqual(['garden-hut']);
    expect(troubles.map((one) => one.file)).toEqual(Object.keys(broken));
    const [cut, comma, span, key] = troubles;
    const reasons = reasonsOf(troubles);
    expect(cut?.line).toBe(broken['cut.json'].trimEnd().split('\n').length);
    expect(comma?.line).toBe(lineWith('id'));
    expect(span?.line).toBe(lineWith('span'));
    expect(reasons[2]).toContain('span');
    expect(key?.line).toBe(lineWith('id'));
    expect(reasons[3]).toContain('color');
    for (const reason of reasons) expect(reason).toMatch(/^[^\n]+\(.+\)$/);
  });

  it.each([
    ['wings', [{ side: 'yard', at: 72, span: 60, length: 40 }]],
    ['yard', { plateHeight: 1 }],
    ['rake', {}],
  ])('whose roof has %s, which the site knows nothing of, are refused', (key, value) => {
    const level = JSON.parse(sound) as { roof: object };
    const file = { ...level, roof: { ...level.roof, rakeOverhang: 12, [key]: value } };
    const { levels, troubles } = readLevels({ 'more.json': JSON.stringify(file, null, 2) });
    expect(levels).toEqual([]);
    expect(reasonsOf(troubles)[0]).toMatch(new RegExp(`${key}.*figured but not played yet`));
  });

  it.each([
    ['a post on each side of its middle', [10, 180], true],
    ['one post', [10], false],
    ['posts on one side of its middle only', [10, 60], false],
    ['a second post under its very middle', [10, 96], false],
  ])('whose ridge has %s are read where it would lie on them', (_, at, played) => {
    const level = JSON.parse(sound) as { roof: object };
    const file = { ...level, roof: { ...level.roof, posts: { at, below: 96 } } };
    const { levels, troubles } = readLevels({ 'beam.json': JSON.stringify(file, null, 2) });
    expect(levels.length).toBe(played ? 1 : 0);
    expect(reasonsOf(troubles).map((reason) => /posts\.at.*side of its middle/.test(reason))).toEqual(
      played ? [] : [true],
    );
  });
});
