import { describe, expect, it } from 'vitest';
import type { HandName } from '../../src/core/hands/hand';
import { balanceOf } from './balanced';
import { levelOf } from './levels';

/** At every step of whole attempts what carries the frame carries just its weight. A thousand of them: tests/prove/balance.ts. */

describe('every step of an attempt', () => {
  it.each<['garden-hut' | 'boathouse' | 'hay-barn', HandName, number]>([
    ['garden-hut', 'expert', 1],
    ['hay-barn', 'expert', 3],
    ['boathouse', 'nails-first', 4],
  ])('is in balance on the %s by the hand %s', (id, hand, seed) => {
    const { frames, worst } = balanceOf(levelOf(id), hand, seed);
    expect(frames).toBeGreaterThan(20);
    expect(worst).toBeLessThan(1e-9);
  });
});
