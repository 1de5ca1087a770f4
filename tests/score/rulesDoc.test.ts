import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { ruleIds } from '../../src/core/order/rules';
import { rulesText } from './rulesText';

describe('RULES.md', () => {
  const kept = readFileSync('src/core/score/RULES.md', 'utf8');

  it('says what the data says', () => {
    expect(kept).toBe(rulesText());
  });

  it.each(ruleIds.map((id) => [id]))('names %s', (id) => {
    expect(kept).toMatch(new RegExp(`\\| ${id} \\|`));
  });
});
