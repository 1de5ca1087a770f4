import { describe, expect, it } from 'vitest';
import { lumber, nominalOf, weightOf } from '../../src/core/stock/lumber';

describe('lumber', () => {
  // A published table of softwood dimensions, dry wood at 35 lb per cubic foot, pounds per foot (read). It cuts 2.005 to 2.00.
  it.each([
    ['2×4', 1.28],
    ['2×6', 2.0],
    ['2×8', 2.64],
    ['2×10', 3.37],
    ['2×12', 4.1],
  ])('%s weighs %f lb a foot', (nominal, pounds) => {
    const row = lumber.find((r) => r.nominal === nominal);
    if (!row) throw new Error(nominal);
    const found = weightOf({ ...row, length: 12 });
    expect(found).toBeGreaterThan(pounds - 0.005);
    expect(found).toBeLessThan(pounds + 0.01);
  });

  it('is called by its yard name where it has one', () => {
    expect(nominalOf({ thickness: 1.5, depth: 7.25 })).toBe('2×8');
    expect(nominalOf({ thickness: 1.75, depth: 11.875 })).toBe('1.75×11.875');
  });
});
