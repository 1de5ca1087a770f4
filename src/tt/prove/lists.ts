import type { Level } from '../../core/level/level';
import { uniform } from '../../core/level/draw';
import { chanceKey, waysOf } from '../../core/order/chance';
import { chanceRows } from '../../core/order/chanceRows';
import type { Fact, Job } from '../../core/order/fact';
import type { Verdict } from '../../core/order/judged';
import { brokenIn, itemsOf, keepsRules, randomOrder, type Item } from '../../core/order/orderList';
import type { OrderRuleId } from '../../core/order/rules';
import { partWeights, orderBeforeFloor } from '../../core/score/scored';

/** Proofs on lists of work alone, where no frame is needed. */

/** Totals with all else perfect, of complete orders that are drawn at random among the accepted ones. */
export const acceptedTotals = (level: Level, count: number): readonly number[] => {
  const ways = waysOf(level);
  return Array.from({ length: count }, (_, i) => {
    const job: Job = { level, methods: ways[i % ways.length] ?? (ways[0] as Job['methods']) };
    const order = Math.max(0, scoreOfList(job, acceptedOrder(job, 1 + i)));
    return 100 * (1 - partWeights.order + partWeights.order * order);
  });
};

/** Order before its floor, the mean over so many random complete orders that physics allows, for each way of building. */
export const randomMeans = (level: Level, count: number): readonly number[] =>
  waysOf(level).map((methods) => {
    const job: Job = { level, methods };
    const items = itemsOf(job);
    let sum = 0;
    for (let i = 0; i < count; i++) sum += scoreOfList(job, randomOrder(items, freshSeeds + i));
    return sum / count;
  });

/** Far from the seeds the stored chances came from. */
const freshSeeds = 7_000_000;

const scoreOfList = (job: Job, order: readonly Fact[]): number => {
  const verdicts = [...brokenIn(order, job)].map(([key, broken]): Verdict => {
    const [rule = '', instance = ''] = key.split(' ');
    return { rule: rule as OrderRuleId, instance, lost: broken ? 1 : 0, step: undefined, fact: undefined };
  });
  return orderBeforeFloor(chanceRows[chanceKey(job)] ?? {}, verdicts) ?? 0;
};

/** A complete order: at each step any item that physics and the rules leave open, each as likely. */
const acceptedOrder = (job: Job, seed: number): readonly Fact[] => {
  const done = new Set<Fact>();
  let rest: readonly Item[] = itemsOf(job);
  while (rest.length > 0) {
    const next = nextAccepted(rest, { done, job, seed });
    if (!next) throw new Error(`no accepted order goes on after ${[...done].at(-1) ?? 'the start'}`);
    done.add(next.fact);
    rest = rest.filter((item) => item !== next);
  }
  return [...done];
};

/** Tries what physics leaves open, in any order, until something breaks no rule. */
const nextAccepted = (
  rest: readonly Item[],
  at: { readonly done: ReadonlySet<Fact>; readonly job: Job; readonly seed: number },
): Item | undefined => {
  const open = rest.filter(({ needs }) => needs.every((need) => at.done.has(need)));
  for (let left = open.length; left > 0; left--) {
    const i = Math.floor(uniform(at.seed, `${at.done.size} ${left}`, 'accepted') * left);
    const [item, last] = [open[i] as Item, open[left - 1] as Item];
    if (keepsRules(item.fact, at)) return item;
    open[i] = last;
  }
  return undefined;
};
