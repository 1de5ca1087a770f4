import fc from 'fast-check';
import { fields, styles, type Field } from '../../src/content/draft/fields';
import { otherStock, type RoofDraft } from '../../src/content/draft/roofDraft';
import { sampleOf } from '../../src/content/draft/samples';

/** Drafts as hurried people leave them: a sample with a few answers changed, some to what cannot be. */

const length = fc.oneof(
  fc.integer({ min: 0, max: 600 }).map((inches) => `${inches}"`),
  fc.integer({ min: 0, max: 40 }).map(String),
  fc.double({ min: 0, max: 60, noNaN: true }).map((value) => value.toFixed(2)),
  fc.constantFrom('x', '', '-1', '1e9', '1000000'),
);
const stock = fc.constantFrom('2×4', '2×6', '2×8', '2×10', '2×12', otherStock, '');

type Answers = Record<string, fc.Arbitrary<string>>;

const answersTo = (field: Field): Answers => {
  if (field.kind === 'choice') return { [field.id]: fc.constantFrom(...Object.keys(field.options)) };
  if (field.kind === 'rise') return { [field.id]: fc.integer({ min: 0, max: 24 }).map(String) };
  if (field.kind !== 'stock') return { [field.id]: length };
  return { [field.id]: stock, [`${field.id}.thickness`]: length, [`${field.id}.depth`]: length };
};

const answers = fields.reduce<Answers>((all, field) => ({ ...all, ...answersTo(field) }), {});

export const hurried: fc.Arbitrary<RoofDraft> = fc
  .tuple(
    fc.constantFrom(...styles),
    fc.constantFrom('in' as const, 'mm' as const),
    fc
      .subarray(Object.keys(answers), { maxLength: 6 })
      .chain((keys) =>
        fc.tuple(...keys.map((key) => (answers[key] ?? length).map((text) => [key, text] as const))),
      ),
  )
  .map(([style, units, changed]) => {
    const sample = sampleOf(style);
    return { ...sample, units, typed: { ...sample.typed, ...Object.fromEntries(changed) } };
  });
