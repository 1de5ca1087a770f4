import { describe, expect, it } from 'vitest';
import { orderRules } from '../../src/core/order/rules';
import { fewestToMove } from '../../src/core/order/fewest';
import { orderCost } from '../../src/present/orderCost';
import { catalogues } from '../../src/present/words/messages';
import { cleanActs, putOff, slipsOf, told, type } from '../order/story';
import { trueLevel } from '../site/levels';

const hut = trueLevel('garden-hut');
const clean = cleanActs(hut);
const slips = new Map(slipsOf(clean));
const { en, es } = catalogues;

describe('what the order cost', () => {
  it('is nothing to tell of a clean run', () => {
    expect(orderCost(en, told(hut, clean))).toBeUndefined();
  });

  // Walls braced late, 40, and the row braced along late, 40: two jobs to do sooner, or the things before them later.
  it('is the sum of what was broken, with the fewest things to move by name', () => {
    const acts = putOff(
      slips.get('O1') ?? [],
      type('brace', /along/),
      type('tack', /heel:rafter\.street\.2"/),
    );
    expect(orderCost(en, told(hut, acts))).toEqual({
      minutes: 80,
      sooner: [en.tasks.braceWalls, en.tasks.braceRidge],
      later: [],
    });
    expect(orderCost(es, told(hut, acts))?.sooner).toEqual([es.tasks.braceWalls, es.tasks.braceRidge]);
  });

  it('has a name for whatever any rule asks for first', () => {
    for (const { id, before } of orderRules) {
      const broken = { rule: id, instance: 'street', lost: 1 as const, step: 1, fact: 'ridge' };
      const [move = ''] = fewestToMove([broken]);
      expect(move.split('.')[0]).toBe(before);
    }
    for (const [, acts] of slips) {
      const cost = orderCost(en, told(hut, acts));
      expect([...(cost?.sooner ?? []), ...(cost?.later ?? [])]).toHaveLength(1);
      expect(Object.values(en.tasks)).toContain(cost?.sooner[0]);
    }
  });
});
