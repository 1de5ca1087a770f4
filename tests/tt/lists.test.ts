import { describe, expect, it } from 'vitest';
import { acceptedTotals } from '../../src/tt/prove/lists';
import { levelOf } from '../site/levels';

/** Any order a careful crew might build in is worth the same. */
describe.each(['boathouse', 'hay-barn'])('1,000 accepted orders of the %s', (id) => {
  it('come to the same total with all else perfect', () => {
    const totals = acceptedTotals(levelOf(id), 1000);
    expect(totals).toHaveLength(1000);
    expect(Math.max(...totals) - Math.min(...totals)).toBeLessThanOrEqual(1);
    expect(Math.min(...totals)).toBeGreaterThanOrEqual(99);
  });
});
