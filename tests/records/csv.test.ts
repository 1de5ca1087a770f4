import fc from 'fast-check';
import Papa from 'papaparse';
import { expect, it } from 'vitest';
import { csvOf, guarded } from '../../src/records/csv';

/** Another reader of tables finds in ours what was put in. */

const cell = fc.oneof(
  fc.string({ unit: 'grapheme' }),
  fc.constantFrom(
    '=1+1',
    '+7',
    '-7.5',
    '−3',
    '@x',
    '\ttab',
    '\rcr',
    'a,b',
    'say "so"',
    'two\r\nlines',
    "'",
    '-x',
  ),
);
const rows = fc.array(fc.array(cell, { minLength: 2, maxLength: 5 }), { minLength: 1, maxLength: 8 });

it('gives every cell back, but for the apostrophe before what a spreadsheet would work out', () => {
  fc.assert(
    fc.property(rows, (table) => {
      const { data, errors } = Papa.parse<string[]>(csvOf(table).slice(0, -2), {
        delimiter: ',',
        newline: '\r\n',
      });
      expect(errors).toEqual([]);
      expect(data).toEqual(table.map((row) => row.map(guarded)));
    }),
  );
});

it('lets no cell begin as a formula does, and changes nothing else', () => {
  fc.assert(
    fc.property(cell, (text) => {
      const safe = guarded(text);
      expect(safe === text || safe === `'${text}`).toBe(true);
      if (!/^-?\d+(\.\d+)?$/.test(text)) expect(safe).not.toMatch(/^[=+\-@\t\r\n]/);
      if (/^[\p{L}\p{N}]/u.test(text)) expect(safe).toBe(text);
    }),
  );
  expect(['=1+1', '+7', '-7.5', '@x'].map(guarded)).toEqual(["'=1+1", "'+7", '-7.5', "'@x"]);
});
