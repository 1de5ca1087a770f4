import { describe, expect, it } from 'vitest';
import { fields, styles } from '../../src/content/draft/fields';
import { askedOf, planOfDraft, type RoofDraft } from '../../src/content/draft/roofDraft';
import { sampleOf } from '../../src/content/draft/samples';
import { usualOf } from '../../src/content/draft/usual';
import { figure } from '../../src/core/roof/figure';
import { english } from './english';

/** What the form says of an answer that is left out is what the roof then has: saying it changes no figure. */

const typing = (draft: RoofDraft, typed: RoofDraft['typed']): RoofDraft => ({
  ...draft,
  typed: { ...draft.typed, ...typed },
});

const figuresOf = (draft: RoofDraft): unknown => {
  const plan = planOfDraft(draft);
  if (!plan.ok)
    throw new Error(plan.complaints.map(({ path, wrong }) => `${path} ${english(wrong)}`).join('; '));
  return figure(plan.value);
};

/** Answers under which a field is asked, or under which the roof can do without it. */
const under: Readonly<Record<string, RoofDraft['typed']>> = {
  sheathing: { reference: 'sheathing' },
  'dormers.0.slope': { 'dormers.0.kind': 'gable', 'dormers.0.wall': '' },
};

const cases = fields.flatMap(({ id: field }) =>
  styles
    .map((style) => typing(sampleOf(style), { ...under[field], [field]: '' }))
    .filter((draft) => usualOf(draft, field) !== undefined)
    .filter((draft) => askedOf(draft).some(({ id }) => id === field) && planOfDraft(draft).ok)
    .map((draft) => [field, draft.style, draft] as const),
);

describe('an answer that is left out', () => {
  it.each(cases)('of %s on the style %s is the usual one', (field, _style, draft) => {
    const usual = usualOf(draft, field);
    expect(usual).toBeDefined();
    expect(figuresOf(typing(draft, { [field]: usual ?? '' }))).toEqual(figuresOf(draft));
  });

  it('is told of seventeen fields', () => {
    expect(new Set(cases.map(([field]) => field)).size).toBe(17);
  });
});
