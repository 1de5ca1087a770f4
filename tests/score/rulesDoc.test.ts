import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { ruleIds } from '../../src/core/order/stateRules';
import { rulesText } from './rulesText';

/** However wide a formatter makes the columns. */
const narrow = (text: string): string => text.replace(/ +/g, ' ').replace(/-{3,}/g, '---');

describe('RULES.md', () => {
  const kept = narrow(readFileSync('src/core/score/RULES.md', 'utf8'));

  it('says what the data says', () => {
    expect(kept).toBe(narrow(rulesText()));
  });

  it.each(ruleIds.map((id) => [id]))('names %s', (id) => {
    expect(kept).toContain(`| ${id} |`);
  });
});
