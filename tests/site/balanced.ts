import type { HandName } from '../../src/core/hands/hand';
import { play } from '../../src/core/hands/play';
import type { Level } from '../../src/core/level/level';
import { framed } from '../../src/core/site/framed';
import { begin, take } from '../../src/core/site/take';
import type { Settled } from '../../src/core/mechanics/settle';

/** Upward reactions of a frame against its weights, as a part of the weights. */
export const unbalanced = ({ frame, forces }: Settled): number => {
  let reactions = 0;
  frame.links.forEach(({ ground }, i) => {
    if (ground === 'z') reactions -= forces[i] as number;
  });
  const weights = frame.nodes.reduce((sum, { dofs }) => {
    const up = dofs[2] as number;
    return sum + (up < 0 ? 0 : (frame.weights[up] as number));
  }, 0);
  return (reactions + weights) / weights;
};

/** A whole attempt gone through step by step: how many frames stood in it, and the worst balance of any. */
export const balanceOf = (
  level: Level,
  hand: HandName,
  seed: number,
): { readonly frames: number; readonly worst: number } => {
  let attempt = begin(level, seed, 'own');
  const seen = new Set<Settled>();
  let worst = 0;
  for (const { action } of play(level, hand, { seed, mode: 'own' }).steps) {
    attempt = take(attempt, action);
    const settled = framed(attempt)?.settled;
    if (!settled || settled.falls || seen.has(settled)) continue;
    seen.add(settled);
    worst = Math.max(worst, Math.abs(unbalanced(settled)));
  }
  return { frames: seen.size, worst };
};
