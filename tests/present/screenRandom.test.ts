import { describe, expect, it } from 'vitest';
import { play } from '../../src/core/hands/play';
import { uniform } from '../../src/core/level/draw';
import { scoreOf } from '../../src/core/score/scored';
import type { Attempt } from '../../src/core/site/attempt';
import { isOver } from '../../src/core/site/state';
import { begin, take, would } from '../../src/core/site/take';
import type { Offer, Picked } from '../../src/present/offers/offer';
import { spotsFor } from '../../src/present/offers/spots';
import { toolset } from '../../src/present/offers/toolset';
import { levelOf } from '../site/levels';

/**
 * If a screen told the order, by what it offers or by where, whoever picks at random from a screen would do better than who
 * picks at random among all acts there are.
 */

const level = levelOf('garden-hut');
const runs = 16;
/** As many acts as the random hand does before it may hand over, and more than it ever did. */
const [keepsAt, most] = [300, 3000];

const pickedAt = (offer: Offer, chance: number): Picked => {
  const { picker } = offer;
  if (!picker) return '';
  return picker.kind === 'choice'
    ? (picker.options[Math.floor(chance * picker.options.length)]?.value ?? '')
    : picker.start;
};

/** Each offer of the whole rail as likely as the next, what its picker leaves open as likely as well. */
const byScreen = (seed: number): Attempt => {
  let attempt = begin(level, seed, 'check-off');
  for (let n = 0; n < most && !isOver(attempt.site); n++) {
    const offers = toolset.flatMap(({ tool }) =>
      spotsFor(attempt, tool).flatMap((spot) => spot.offers.filter(({ id }) => id !== 'carryOn')),
    );
    const offer = offers[Math.floor(uniform(seed, `offer ${n}`, 'screen') * offers.length)];
    const act = offer?.act(pickedAt(offer, uniform(seed, `amount ${n}`, 'screen')));
    if (!act || (act.type === 'handOver' && attempt.steps.length < keepsAt)) continue;
    const outcome = would(attempt, act);
    if (outcome.ok || outcome.stop) attempt = take(attempt, act);
  }
  return attempt;
};

const mean = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0) / values.length;
const error = (values: readonly number[]): number =>
  Math.sqrt(mean(values.map((value) => (value - mean(values)) ** 2)) / (values.length - 1));

describe('who picks at random among what the screen leaves open', { timeout: 240_000 }, () => {
  const seeds = Array.from({ length: runs }, (_, i) => i + 1);
  const screen = seeds.map((seed) => scoreOf(byScreen(seed)));
  const random = seeds.map((seed) => scoreOf(play(level, 'random', { seed })));

  it('scores as random does: no better by three standard errors, and never near a pass', () => {
    const [one, other] = [screen, random].map((scores) => scores.map(({ total }) => total));
    if (!one || !other) throw new Error('nothing was played');
    expect(mean(one)).toBeLessThan(mean(other) + 3 * Math.hypot(error(one), error(other)));
    expect(Math.max(...one)).toBeLessThan(25);
    expect(screen.some(({ pass }) => pass)).toBe(false);
  });

  it('gets as little done', () => {
    const [one, other] = [screen, random].map((scores) => scores.map(({ done }) => done));
    if (!one || !other) throw new Error('nothing was played');
    expect(Math.abs(mean(one) - mean(other))).toBeLessThan(
      Math.max(0.1, 3 * Math.hypot(error(one), error(other))),
    );
  });
});
