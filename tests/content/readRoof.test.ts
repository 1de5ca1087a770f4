import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readRoof, readRoofText } from '../../src/content/readRoof';
import { roofKinds } from '../../src/content/roofSchemaParts';
import { sample } from '../roof/roofs';
import { complaintLine } from '../../src/present/words/refusalMessages';

/** What is wrong, as the command line prints it; nothing when the roof can be figured. */
const linesOf = (value: unknown, base = ''): readonly string[] => {
  const read = readRoof(value, base);
  return read.ok ? [] : read.complaints.map((c) => complaintLine('roof.json', c));
};
const lines = (changes: Readonly<Record<string, unknown>>): readonly string[] =>
  linesOf({ ...sample, ...changes });
const textLines = (text: string): readonly string[] => {
  const read = readRoofText(text);
  return read.ok ? [] : read.complaints.map((c) => complaintLine('roof.json', c));
};
const without = (key: string): unknown =>
  Object.fromEntries(Object.entries(sample).filter(([name]) => name !== key));

/** The sample's lengths in millimetres with some changed. */
const metric = (changes: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> => ({
  span: 7315.2,
  overhang: 355.6,
  spacing: 609.6,
  rafter: { thickness: 38.1, depth: 184.15 },
  ridge: { thickness: 38.1, depth: 234.95 },
  plate: { width: 139.7 },
  seat: 88.9,
  ...changes,
});

const like = `(a length such as 24, "5 1/2\\"", "12' 3-7/16\\"" or "305 mm")`;

describe('a roof that can be figured', () => {
  it('gets the usual values where it says nothing', () => {
    const read = readRoof(sample);
    expect(read).toMatchObject({
      ok: true,
      value: {
        reference: 'plate',
        sheathing: 0.5,
        rakeOverhang: 0,
        blockAllowance: 1 / 16,
        blockStands: 'plumb',
        datum: 'endA',
        joists: { every: 1, height: 0 },
        collars: { every: 2 },
      },
    });
    expect(read.ok && read.value).not.toHaveProperty('vents');
  });

  it.each([
    [
      { joists: {}, collars: {} },
      { joists: { every: 1, height: 0 }, collars: { every: 2 } },
    ],
    [
      { joists: false, collars: false },
      { joists: false, collars: false },
    ],
    [{ joists: { every: 2, height: `1'` }, collars: { every: 1 } }, { joists: { every: 2, height: 12 } }],
    [{ units: 'in', span: `7.3152 m` }, { span: 288 }],
    [{ vents: { shape: 'notch', depth: 1, leave: '3 1/2"' } }, { vents: { shape: 'notch', leave: 3.5 } }],
  ])('%j', (changes, plan) => {
    const read = readRoof({ ...sample, ...changes });
    expect(read).toMatchObject({ ok: true, value: plan });
  });

  it('turns millimetres into inches once, and leaves the slope and texts with a mark alone', () => {
    const mm = {
      ...sample,
      units: 'mm',
      span: 7315.2,
      length: '7924.8',
      overhang: `14"`,
      spacing: 609.6,
      rafter: { thickness: 38.1, depth: 184.15 },
      ridge: { thickness: 38.1, depth: 234.95 },
      plate: { width: 139.7 },
      seat: 88.9,
    };
    const read = readRoof(mm);
    expect(read.ok && read.value.slope).toEqual({ rise: 6, run: 12 });
    expect(read.ok && read.value.span).toBeCloseTo(288, 9);
    expect(read.ok && read.value.length).toBeCloseTo(312, 9);
    expect(read.ok && read.value.overhang).toBe(14);
    expect(read.ok && read.value.rafter.depth).toBeCloseTo(7.25, 9);
    // What is left out has the same size in either units.
    expect(read.ok && read.value.blockAllowance).toBe(1 / 16);
  });

  it.each([
    { length: 12 },
    { length: 2_000_000 },
    { units: 'mm', ...metric({ length: 50_800_000 }) },
    { spacing: 6 },
    { spacing: 96 },
    { slope: { rise: 1, run: 12 } },
    { slope: { rise: 36, run: 12 }, seat: 2 },
    { slope: { rise: 500, run: 1000 } },
    { overhang: 0 },
    { seat: 5.5 },
    { blockAllowance: 0 },
  ])('at its limit: %j', (changes) => {
    expect(lines(changes)).toEqual([]);
  });
});

const kinds = roofKinds.map((kind) => JSON.stringify(kind)).join(', ');

describe('a roof that is refused', () => {
  it.each([
    'format',
    'kind',
    'slope',
    'span',
    'length',
    'overhang',
    'spacing',
    'rafter',
    'ridge',
    'plate',
    'seat',
  ])('misses %s', (key) => {
    const found = linesOf(without(key));
    expect(found).toHaveLength(1);
    expect(found[0]).toMatch(new RegExp(`^roof.json: ${key}: is missing \\(.+\\)$`));
  });

  it.each([
    [{ span: -288 }, 'span: is -288 (12 to 12000 in)'],
    [{ span: 0 }, 'span: is 0 (12 to 12000 in)'],
    [{ span: 1e308 }, 'span: is 1e+308 (12 to 12000 in)'],
    [{ length: 11.99 }, 'length: is 11.99 (12 to 2000000 in)'],
    [{ length: 2_000_000.1 }, 'length: is 2000000.1 (12 to 2000000 in)'],
    [{ length: `11"` }, 'length: is "11\\"" (12 to 2000000 in)'],
    [{ spacing: 5.9 }, 'spacing: is 5.9 (6 to 96 in)'],
    [{ spacing: 97 }, 'spacing: is 97 (6 to 96 in)'],
    [{ overhang: -1 }, 'overhang: is -1 (0 to 240 in)'],
    [{ seat: 'wide' }, `seat: is "wide" ${like}`],
    [{ seat: '-3' }, `seat: is "-3" ${like}`],
    [{ seat: null }, `seat: is null ${like}`],
    [{ seat: true }, `seat: is true ${like}`],
    [{ seat: NaN }, `seat: is NaN ${like}`],
    [{ seat: Infinity }, `seat: is Infinity ${like}`],
    [{ seat: [3.5] }, `seat: is [3.5] ${like}`],
    [{ rafter: 7.25 }, 'rafter: is 7.25 (an object)'],
    [{ rafter: { thickness: 1.5 } }, `rafter.depth: is missing ${like}`],
    [{ rafter: { thickness: 0, depth: 7.25 } }, 'rafter.thickness: is 0 (0.25 to 96 in)'],
    [
      { ridge: { thickness: 1.5, depth: 9.25, wood: 'fir' } },
      'ridge.wood: is not a key here (thickness, depth)',
    ],
    [{ joists: { every: 1, heigth: 2 } }, 'joists.heigth: is not a key here (every, height)'],
    [{ slope: 0.5 }, 'slope: is 0.5 (an object)'],
    [{ slope: { rise: 6 } }, 'slope.run: is missing (a number, usually of inches)'],
    [{ slope: { rise: 0.9, run: 12 } }, 'slope.rise: is 0.9 in 12 (a slope of 1 to 36 in 12)'],
    [{ slope: { rise: 36.1, run: 12 } }, 'slope.rise: is 36.1 in 12 (a slope of 1 to 36 in 12)'],
    [{ slope: { rise: -6, run: -12 } }, 'slope.run: is -12 (more than 0, usually 12)'],
    [{ slope: { rise: 6, run: 0 } }, 'slope.run: is 0 (more than 0, usually 12)'],
    [{ slope: { rise: 1e308, run: 1e-308 } }, 'slope.rise: is 1e+308 in 1e-308 (a slope of 1 to 36 in 12)'],
    [{ slope: { rise: 'steep', run: 12 } }, `slope.rise: is "steep" ${like}`],
    [{ joists: true }, 'joists: is true (false, or {"every", "height"})'],
    [{ joists: { every: 1.5 } }, 'joists.every: is 1.5 (a whole number, 1 to 100)'],
    [{ joists: { every: 0 } }, 'joists.every: is 0 (a whole number, 1 to 100)'],
    [{ collars: { every: 101 } }, 'collars.every: is 101 (a whole number, 1 to 100)'],
    [{ datum: 'middle' }, 'datum: is "middle" ("endA", "endB", "centre", "ridgeEnd")'],
    [{ reference: 'fascia' }, 'reference: is "fascia" ("plate", "sheathing")'],
    [{ blockStands: 'up' }, 'blockStands: is "up" ("plumb", "square")'],
    [{ units: 'cm' }, 'units: is "cm" ("in", "mm")'],
    [{ format: 'tack-and-true/roof@2' }, 'format: is "tack-and-true/roof@2" ("tack-and-true/roof@1")'],
    [{ kind: 'mansard', hip: {}, span: -1 }, `kind: is "mansard", which cannot be figured yet (${kinds})`],
    [{ kind: 7 }, `kind: is 7 (${kinds})`],
    [{ vents: { shape: 'slot' } }, 'vents.shape: is "slot" ({"shape": "notch", …} or {"shape": "holes", …})'],
    [{ vents: false }, 'vents: is false ({"shape": "notch", …} or {"shape": "holes", …})'],
    [{ vents: { shape: 'notch', depth: 1 } }, `vents.leave: is missing ${like}`],
    [{ vents: { shape: 'notch', depth: -1, leave: 3 } }, 'vents.depth: is -1 (0 to 12 in)'],
    [{ vents: { shape: 'holes', count: 0, diameter: 2 } }, 'vents.count: is 0 (a whole number, 1 to 100)'],
    [
      { vents: { shape: 'holes', count: 2, diameter: 2, depth: 1 } },
      'vents.depth: is not a key here (shape, depth, leave, count, diameter)',
    ],
    [{ collars: { every: '2' } }, 'collars.every: is "2" (a whole number, 1 to 100)'],
  ])('%j', (changes, line) => {
    expect(lines(changes)).toEqual([`roof.json: ${line}`]);
  });

  it('names every key that is not one, and what would be', () => {
    const found = lines({ colour: 'red', spn: 288 });
    expect(found).toHaveLength(2);
    expect(found[0]).toMatch(/^roof.json: colour: is not a key here \(format, kind, units, slope, span, /);
  });

  it('tells everything wrong with shape and sizes at once, in the units of the file', () => {
    const found = lines({ units: 'mm', ...metric({ spacing: 24, seat: 'x', eaves: 1, plate: {} }) });
    expect(found.map((line) => line.split(': ').slice(1, 3).join(': '))).toEqual([
      'plate.width: is missing (a length such as 24, "5 1/2\\"", "12\' 3-7/16\\"" or "305 mm")',
      expect.stringContaining('eaves: is not a key here'),
      'spacing: is 24 (152.4 to 2438.4 mm)',
      'seat: is "x" (a length such as 24, "5 1/2\\"", "12\' 3-7/16\\"" or "305 mm")',
    ]);
  });

  it('puts the place of a roof inside another file before every path', () => {
    expect(linesOf({ ...sample, seat: 0 }, 'roof')).toEqual(['roof.json: roof.seat: is 0 (0.25 to 96 in)']);
    expect(linesOf(7, 'roof')).toEqual(['roof.json: roof: is 7 (an object)']);
  });
});

describe('sizes that do not go together', () => {
  it.each([
    [{ seat: 5.6 }, 'seat: is 5.6 in on a plate of 5.5 in (at most 5.5 in)'],
    [{ reference: 'sheathing', seat: 6.1 }, 'seat: is 6.1 in on a plate of 5.5 in (at most 6 in)'],
    [
      { reference: 'sheathing', seat: 0.5 },
      'seat: is 0.5 in and does not reach the plate behind the sheathing (more than 0.5 in)',
    ],
    [
      { rafter: { thickness: 1.5, depth: 2 }, seat: 5 },
      'seat: is 5 in and cuts the rafter through (less than 4.472 in; 1.118 in keeps the notch to a quarter of the depth)',
    ],
    [
      { span: 12, plate: { width: 6 }, seat: 5.5 },
      'span: is 12 in and leaves no rafter between its seat and its top (more than 12.5 in)',
    ],
    [
      { joists: { height: 78 } },
      'joists.height: is at or over the top of the ridge (less than 77.981 in, and in the lower third of it)',
    ],
    [
      { length: 12, rafter: { thickness: 6.5, depth: 7.25 } },
      'length: is 12 in, too short for two rafters (at least 13 in)',
    ],
    [
      { spacing: 6, rafter: { thickness: 6, depth: 7.25 } },
      'spacing: is 6 in, no wider than a rafter (more than 6 in)',
    ],
    [
      { spacing: 12, blockAllowance: 10.5 },
      'blockAllowance: is 10.5 in and leaves no block in its bay (less than 10.5 in)',
    ],
    [
      { vents: { shape: 'notch', depth: 6.4, leave: 1 } },
      "vents.depth: is 6.4 in (less than the block's 6.356 in)",
    ],
    [
      { vents: { shape: 'notch', depth: 1, leave: 11.22 } },
      "vents.leave: is 11.22 in (less than half the block's 22.438 in)",
    ],
    [
      { vents: { shape: 'holes', count: 1, diameter: 5 } },
      'vents.diameter: is 5 in (at most 4.356 in in a block 6.356 in high)',
    ],
    [
      { vents: { shape: 'holes', count: 8, diameter: 2 } },
      'vents.count: is 8 (at most 7 in a block of 22.438 in)',
    ],
  ])('%j', (changes, line) => {
    expect(lines(changes)).toEqual([`roof.json: ${line}`]);
  });

  it('tells them in the units of the file', () => {
    expect(lines({ units: 'mm', ...metric({ length: 5000, seat: 150 }) })).toEqual([
      'roof.json: seat: is 150 mm on a plate of 139.7 mm (at most 139.7 mm)',
    ]);
  });
});

describe('a file that is no roof at all', () => {
  it.each([
    ['', '$: the file is empty (a JSON object)'],
    [' \n', '$: the file is empty (a JSON object)'],
    ['{', '$: is not JSON (a JSON object)'],
    ['{"span": NaN}', '$: is not JSON (a JSON object)'],
    ['span: 288', '$: is not JSON (a JSON object)'],
    ['[]', '$: is [] (an object)'],
    ['null', '$: is null (an object)'],
    ['"roof"', '$: is "roof" (an object)'],
    ['{"__proto__": {"kind": "gable"}}', '__proto__: is not a key here (only the keys of the format)'],
    ['{"rafter": {"constructor": 1}}', 'rafter.constructor: is not a key here (only the keys of the format)'],
    ['['.repeat(100_000) + ']'.repeat(100_000), '$: is nested too deep (at most 32 levels)'],
    [`"${'x'.repeat(1_000_000)}"`, '$: the file is over 1 MB (a file of at most 1 MB)'],
  ])('%.30s', (text, line) => {
    expect(textLines(text)).toEqual([`roof.json: ${line}`]);
  });

  it('may begin with the mark some editors leave', () => {
    expect(textLines(`\uFEFF${JSON.stringify(sample)}`)).toEqual([]);
  });

  it('counts bytes, not letters', () => {
    expect(textLines(`"${'é'.repeat(500_001)}"`)).toEqual([
      'roof.json: $: the file is over 1 MB (a file of at most 1 MB)',
    ]);
  });

  it('gets one line a problem whatever its keys hold', () => {
    const found = lines({ 'a\nb\u001b[31m': 1, '\u0085': 2 });
    expect(found).toHaveLength(2);
    for (const line of found) expect(line).toMatch(/^[^\p{Cc}]+$/u);
    expect(lines({ '': 1 })[0]).toMatch(/^roof.json: "": is not a key here/);
  });

  it('is never the end of us', () => {
    fc.assert(
      fc.property(fc.json(), (text) => {
        for (const line of textLines(text)) expect(line).toMatch(/^roof\.json: .+: .+ \(.+\)$/);
      }),
    );
    const keys = Object.keys(sample) as (keyof typeof sample)[];
    fc.assert(
      fc.property(fc.constantFrom(...keys), fc.jsonValue(), (key, value) => {
        for (const line of lines({ [key]: value })) expect(line).toMatch(/^roof\.json: .+: .+ \(.+\)$/);
      }),
      { numRuns: 500 },
    );
  });
});
