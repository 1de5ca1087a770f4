import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { figure } from '../../../src/core/roof/figure';
import { listsOf } from '../../../src/core/roof/lists';
import { planOfDraft } from '../../../src/content/draft/roofDraft';
import { cardBody } from '../../../src/present/roofs/card';
import { planDrawing } from '../../../src/present/roofs/drawPlan';
import { sectionDrawing } from '../../../src/present/roofs/drawSection';
import { drawingSvg } from '../../../src/present/roofs/drawSvg';
import { roofSheet } from '../../../src/present/roofs/sheet';
import { roofCatalogues } from '../../../src/present/words/roofMessages';
import { hurried } from '../../content/roofAnswers';

/** Whatever hurried people type: where it can be figured, nothing that is shown of it is no number. */

const size = { width: 640, height: 280, figure: 17, word: 14 };
const noNumber = /NaN|Infinity|undefined|null|\[object/;

describe('what is shown of any roof that can be figured', () => {
  it('is made of numbers and words: sheet, drawings and card, in both languages', () => {
    let shown = 0;
    fc.assert(
      fc.property(
        hurried,
        fc.constantFrom('en' as const, 'es' as const),
        fc.constantFrom('feet' as const, 'mm' as const),
        (draft, lang, units) => {
          const read = planOfDraft(draft);
          if (!read.ok) return;
          shown += 1;
          const [plan, roof] = [read.value, figure(read.value)];
          const asked = { plan, roof, lists: listsOf(plan, roof), words: roofCatalogues[lang], units };
          const sheet = roofSheet(asked);
          const drawn = [planDrawing(asked, size), sectionDrawing(asked, size)].map(drawingSvg).join('');
          const card = cardBody({ ...asked, paper: 'letter', carried: { kind: 'file', text: '{}' } });
          expect(JSON.stringify(sheet)).not.toMatch(noNumber);
          expect(drawn).not.toMatch(noNumber);
          expect(card.html).not.toMatch(noNumber);
        },
      ),
      { numRuns: 400 },
    );
    expect(shown).toBeGreaterThan(40);
  });
});
