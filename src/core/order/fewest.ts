import type { Verdict } from './judged';
import { milestoneName } from './milestones';
import { orderRules } from './rules';

type Pair = readonly [string, string];

/**
 * The fewest steps that would have to move for every broken rule to hold: a least set of steps that touches each pair of
 * (what should have come first, what came too early). Exact: of every pair one or the other must move.
 */
export const fewestToMove = (verdicts: readonly Verdict[]): readonly string[] =>
  leastCover(verdicts.filter(({ lost }) => lost > 0).map(pairOf));

/** Branches on a pair that is not touched yet; a branch that is already longer than the best is dropped. */
const leastCover = (
  pairs: readonly Pair[],
  chosen: readonly string[] = [],
  best = Infinity,
): readonly string[] => {
  const open = pairs.find(([a, b]) => !chosen.includes(a) && !chosen.includes(b));
  if (!open) return chosen;
  if (chosen.length + 1 >= best) return [...chosen, ...pairs.map(([a]) => a)];
  const first = leastCover(pairs, [...chosen, open[0]], best);
  const second = leastCover(pairs, [...chosen, open[1]], Math.min(best, first.length));
  return second.length < first.length ? second : first;
};

const pairOf = ({ rule, instance, fact }: Verdict): Pair => {
  const before = orderRules.find(({ id }) => id === rule)?.before;
  return [before ? milestoneName(before, instance) : rule, fact ?? rule];
};
