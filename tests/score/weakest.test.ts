import { expect, it } from 'vitest';
import { weakestPart } from '../../src/core/score/weakest';

const norm = {
  order: { mean: 0.6, sd: 0.25 },
  checks: { mean: 0.6, sd: 0.1 },
  fit: { mean: 0.8, sd: 0.1 },
};

it.each([
  // Order fell by 0.2, which is 0.8 of its spread; fit by 0.15, which is one and a half times its own.
  [{ order: 0.4, checks: 0.6, fit: 0.65 }, 'fit'],
  [{ order: 0, checks: 0.5, fit: 0.7 }, 'order'],
  [{ order: 0.6, checks: 0.2, fit: 0.8 }, 'checks'],
  [{ order: 0.9, checks: 0.9, fit: 0.9 }, undefined],
  [{ order: 0.1 }, 'order'],
] as const)('of %o the weakest is %s', (parts, weakest) => {
  expect(weakestPart(parts, norm)).toBe(weakest);
});
