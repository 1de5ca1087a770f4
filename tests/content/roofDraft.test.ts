import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { canonicalText } from '../../src/content/canonical';
import { fields, styles } from '../../src/content/draft/fields';
import {
  askedOf,
  draftOf,
  fieldAt,
  fileOf,
  planOfDraft,
  type RoofDraft,
} from '../../src/content/draft/roofDraft';
import { restyled, sampleOf } from '../../src/content/draft/samples';
import { linkOf, readLink } from '../../src/content/link';
import { readRoofText } from '../../src/content/readRoof';
import { figure } from '../../src/core/roof/figure';

const folder = 'levels/examples';
const examples = readdirSync(folder).map((name) => ({
  name,
  text: readFileSync(`${folder}/${name}`, 'utf8'),
}));

const withTyped = (draft: RoofDraft, typed: RoofDraft['typed']): RoofDraft => ({
  ...draft,
  typed: { ...draft.typed, ...typed },
});

describe('the form of every style', () => {
  it.each(styles)('begins with a %s roof that can be figured', (style) => {
    const read = planOfDraft(sampleOf(style));
    expect(read.ok ? [] : read.complaints).toEqual([]);
  });

  it.each(styles)('of %s comes back from its file and from a link as it was', (style) => {
    const draft = sampleOf(style);
    const text = canonicalText(fileOf(draft));
    const linked = readLink(linkOf({ kind: 'roof', text }));
    expect(linked?.ok && linked.value.text).toBe(text);
    const back = draftOf(JSON.parse(text));
    if (!back.ok) throw new Error(JSON.stringify(back.complaints));
    expect(back.value.style).toBe(style);
    expect(canonicalText(fileOf(back.value))).toBe(text);
  });

  it('puts a complaint beside the field it is about', () => {
    for (const style of styles) {
      for (const field of askedOf(sampleOf(style)).filter(({ kind }) => kind === 'length')) {
        const read = planOfDraft(withTyped(sampleOf(style), { [field.id]: 'twelve' }));
        const places = read.ok ? [] : read.complaints.map(({ path }) => fieldAt(sampleOf(style), path)?.id);
        expect([style, ...places]).toContain(field.id);
      }
    }
  });
});

describe('what is typed', () => {
  const lengths = fc.oneof(
    fc
      .tuple(
        fc.integer({ min: 10, max: 40 }),
        fc.integer({ min: 0, max: 11 }),
        fc.integer({ min: 1, max: 15 }),
      )
      .map(([ft, inches, x]) => `${ft}' ${inches}-${x}/16"`),
    fc.integer({ min: 3000, max: 12000 }).map((mm) => `${mm} mm`),
    fc.integer({ min: 120, max: 480 }).map(String),
  );

  it('keeps every number over a file, a link and a change of units and back', () => {
    fc.assert(
      fc.property(fc.constantFrom(...styles), lengths, lengths, (style, span, length) => {
        const draft = withTyped(sampleOf(style), { span, length });
        const there: RoofDraft = { ...draft, units: 'mm' };
        expect(canonicalText(fileOf({ ...there, units: 'in' }))).toBe(canonicalText(fileOf(draft)));
        expect(there.typed).toEqual(draft.typed);
        const back = draftOf(fileOf(draft));
        if (back.ok) expect([back.value.typed['span'], back.value.typed['length']]).toEqual([span, length]);
      }),
      { numRuns: 200 },
    );
  });

  it('may be anything at all: one sentence a place, and nothing that is no number', () => {
    const text = fc.oneof(
      fc.string({ maxLength: 60 }),
      fc.constantFrom(
        '',
        '0',
        '-1',
        "24'",
        'NaN',
        'Infinity',
        '1e308',
        '1/0',
        '<script>',
        '__proto__',
        '5 5/4',
        '∞',
        '٣',
        "1'".repeat(30),
      ),
      lengths,
    );
    const ids = fields.flatMap((field) =>
      field.kind === 'stock' ? [field.id, `${field.id}.thickness`, `${field.id}.depth`] : [field.id],
    );
    const changes = fc.dictionary(fc.constantFrom(...ids), text, { maxKeys: 6 });
    fc.assert(
      fc.property(
        fc.constantFrom(...styles),
        fc.constantFrom('in' as const, 'mm' as const),
        changes,
        (style, units, typed) => {
          const draft = { ...withTyped(sampleOf(style), typed), units };
          const read = planOfDraft(draft);
          if (!read.ok) {
            for (const { path, wrong, accepted } of read.complaints)
              expect([path, wrong, accepted].every((said) => said.length > 0)).toBe(true);
            expect(read.complaints.length).toBeGreaterThan(0);
            return;
          }
          expect(
            JSON.stringify(figure(read.value), (_, value: unknown) =>
              typeof value === 'number' && !Number.isFinite(value) ? 'NONE' : value,
            ),
          ).not.toContain('NONE');
        },
      ),
      { numRuns: 2000 },
    );
  });

  it('stays when another style is looked at and left again', () => {
    for (const style of styles) {
      const typed = withTyped(sampleOf('gable'), { span: '23\' 7"' });
      expect(restyled(restyled(typed, style), 'gable').typed['span']).toBe('23\' 7"');
      expect(canonicalText(fileOf(restyled(restyled(typed, style), 'gable')))).toBe(
        canonicalText(fileOf(typed)),
      );
    }
  });
});

describe('a file from elsewhere', () => {
  it.each(examples)('$name opens in the form or says which key has no field', ({ text }) => {
    const plan = readRoofText(text);
    const draft = draftOf(JSON.parse(text));
    if (!plan.ok) throw new Error('an example that cannot be read');
    if (!draft.ok) {
      expect(draft.complaints).toHaveLength(1);
      expect(Object.keys(JSON.parse(text) as object)).toContain(draft.complaints[0]?.path.split('.')[0]);
      return;
    }
    expect(planOfDraft(draft.value)).toEqual(plan);
  });

  it('opens for most of the examples', () => {
    const opened = examples.filter(({ text }) => draftOf(JSON.parse(text)).ok);
    expect(opened.length).toBeGreaterThanOrEqual(14);
  });
});
