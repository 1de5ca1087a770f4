import { describe, expect, it } from 'vitest';
import { roofSheet } from '../../../src/present/roofs/sheet';
import type { RoofSheet, SheetRow } from '../../../src/present/roofs/sheetShape';
import { changedAsked, exampleAsked, exampleNames, langs } from './examples';

const rowOf = (sheet: RoofSheet, id: string): SheetRow => {
  const row = sheet.parts.flatMap(({ rows }) => rows).find((one) => one.id === id);
  if (!row) throw new Error(`no ${id}`);
  return row;
};
const textOf = (row: SheetRow, key: string): string | undefined =>
  row.figures.find((one) => one.key === key)?.text;

describe('a sheet', () => {
  const sheet = roofSheet(exampleAsked('gable'));

  it('goes in the order of the work', () => {
    expect(sheet.parts.map(({ key }) => key)).toEqual([
      'layout',
      'ridge',
      'rafters',
      'blocks',
      'ties',
      'gables',
      'stock',
      'weights',
      'nails',
    ]);
    expect(rowOf(sheet, 'common').figures.map(({ key }) => key)).toEqual([
      'plumbCut',
      'body',
      'seat',
      'heel',
      'tail',
      'edge',
      'overPlate',
      'stock',
    ]);
  });

  it('keeps figures exact and rounds their texts', () => {
    const body = rowOf(sheet, 'common').figures.find(({ key }) => key === 'body');
    expect(body).toMatchObject({ text: '160 3/16"', feet: `13' 4 3/16"` });
    expect(body?.inches).toBeCloseTo(160.15836888842244, 12);
    const mm = roofSheet(exampleAsked('gable', { units: 'mm' }));
    expect(textOf(rowOf(mm, 'common'), 'body')).toBe('4068 mm');
    expect(rowOf(mm, 'common').figures.find(({ key }) => key === 'body')?.inches).toBe(body?.inches);
  });

  it('has the ridge by its top, and its underside over plates and joists', () => {
    const ridge = rowOf(sheet, 'ridge');
    expect(['ridgeTop', 'ridgeUnder', 'ridgeOverJoists'].map((key) => textOf(ridge, key))).toEqual([
      '78"',
      '68 3/4"',
      '61 1/2"',
    ]);
    expect(textOf(rowOf(roofSheet(exampleAsked('gable-on-posts')), 'ridge'), 'ridgeOverFloor')).toBeDefined();
  });
});

describe('layout marks', () => {
  const marks = (changes: object): readonly number[] =>
    rowOf(roofSheet(changedAsked(changes)), 'layout').figures[0]?.list ?? [];

  it('are near edges as a tape hooked at the datum reads them', () => {
    expect(marks({}).slice(0, 3)).toEqual([0, 23.25, 47.25]);
    expect(marks({}).at(-1)).toBe(310.5);
    expect(marks({ length: 300, datum: 'endB' }).slice(0, 3)).toEqual([0, 23.25, 47.25]);
    expect(marks({ datum: 'endB' })).toEqual(marks({}));
  });

  it('are told of a wing from its gable and of end walls from the street corner', () => {
    const wing = rowOf(roofSheet(exampleAsked('gable-wing')), 'layout.wing');
    expect(wing.figures[0]?.list?.slice(0, 2)).toEqual([0, 23.25]);
    const ends = rowOf(roofSheet(exampleAsked('hip')), 'layout.ends');
    // The middle rafter of a 24 ft end stands with its near edge half a thickness short of 12 ft.
    expect(ends.figures[0]?.list).toContain(143.25);
  });

  it('say where the ridge begins', () => {
    const notes = (name: string) =>
      roofSheet(exampleAsked(name))
        .parts.find(({ key }) => key === 'layout')
        ?.notes.join(' ');
    expect(notes('gable')).toContain('Mark the ridge alike.');
    expect(notes('gable-rake')).toContain('On the ridge add 16"');
    // 12 ft to the ridge's end, less 3/4 in for the common that butts against it.
    expect(notes('hip')).toContain('On the ridge take off 143 1/4"');
  });
});

describe('nail counts', () => {
  const nails = roofSheet(exampleAsked('gable')).parts.find(({ key }) => key === 'nails');
  const told = (name: string) =>
    nails?.rows.filter((row) => row.name === name).map((row) => row.figures[0]?.text);

  it('come with their source, or send to the plans', () => {
    for (const row of nails?.rows ?? [])
      expect(row.notes.join(), row.name).toMatch(/IBC 2018|NAVEDTRA 14044/);
    // The heel-joint table was not read: no count of it is told.
    expect(told('Joist to rafter, at the heel')).toEqual(['Ask the plans.']);
    expect(told('Block to plate')).toEqual(['3 × 8d common, toenailed']);
  });
});

describe.each(exampleNames)('%s', (name) => {
  it.each(langs)('has a name and a text for every figure (%s)', (lang) => {
    const sheet = roofSheet(exampleAsked(name, { lang }));
    for (const { rows, title } of sheet.parts) {
      expect(title).not.toBe('');
      for (const row of rows)
        for (const { text, name: figure } of row.figures) {
          expect(figure, row.id).not.toBe('');
          expect(text, row.id).not.toMatch(/NaN|undefined|^$/);
        }
    }
  });

  it('has every member of the figured roof', () => {
    const asked = exampleAsked(name);
    const ids = new Set(roofSheet(asked).parts.flatMap(({ rows }) => rows.map(({ id }) => id)));
    const { roof } = asked;
    const members = [
      ...roof.commonRafters,
      ...roof.ridges,
      ...roof.blocks,
      ...roof.ties,
      ...(roof.hips ?? []),
      ...(roof.valleys ?? []),
      ...(roof.jacks ?? []),
      ...(roof.sleepers ?? []),
      ...(roof.ledgers ?? []),
      ...(roof.headers ?? []),
      ...(roof.highPlates ?? []),
      ...(roof.posts ?? []),
      ...(roof.gableStuds ?? []),
      ...(roof.rakeRafters ?? []),
      ...(roof.lookouts ?? []),
      ...(roof.breaks ?? []),
      ...(roof.purlins ?? []),
      ...(roof.gussets ?? []),
      ...(roof.dormers ?? []).flatMap((one) => [
        one,
        one.trimmers,
        ...one.headers,
        ...one.lowerRafters,
        ...one.upperRafters,
        ...one.endRafters,
        ...one.sideStuds,
      ]),
    ];
    for (const { id } of members) expect(ids, id).toContain(id);
  });
});
