import type { Verdict } from './judged';
import { orderRules } from './rules';

/**
 * The fewest steps that would have to move for every broken rule to hold: a least set of steps that touches each pair of
 * (what should have come first, what came too early). Small enough to try all sets.
 */
export const fewestToMove = (verdicts: readonly Verdict[]): readonly string[] => {
  const pairs = verdicts.filter(({ lost }) => lost > 0).map(pairOf);
  const steps = [...new Set(pairs.flat())];
  for (let size = 0; size <= steps.length; size++) {
    const found = chosen(steps, size).find((set) =>
      pairs.every(([a, b]) => set.includes(a) || set.includes(b)),
    );
    if (found) return found;
  }
  return steps;
};

const pairOf = ({ rule, instance, fact }: Verdict): readonly [string, string] => {
  const before = orderRules.find(({ id }) => id === rule)?.before ?? rule;
  return [before === 'strung' ? `strung.${instance}` : before, fact ?? rule];
};

const chosen = (steps: readonly string[], size: number): readonly (readonly string[])[] => {
  if (size === 0) return [[]];
  return steps.flatMap((step, i) => chosen(steps.slice(i + 1), size - 1).map((rest) => [step, ...rest]));
};
