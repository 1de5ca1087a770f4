import { describe, expect, it } from 'vitest';
import { chanceBroken, chanceKey, waysOf } from '../../src/core/order/chance';
import { chanceRows, chanceRuns, chanceVersion } from '../../src/core/order/chanceRows';
import type { Job } from '../../src/core/order/fact';
import { brokenIn, itemsOf, randomOrder } from '../../src/core/order/orderList';
import type { OrderRuleId } from '../../src/core/order/rules';
import { rulesVersion } from '../../src/core/order/version';
import { orderBeforeFloor } from '../../src/core/score/scored';
import type { Verdict } from '../../src/core/order/judged';
import { levelOf } from '../site/levels';

const jobs: readonly Job[] = (['garden-hut', 'boathouse'] as const).flatMap((id) => {
  const level = levelOf(id);
  const ways = waysOf(level);
  return [ways[0], ways[ways.length - 1]].flatMap((methods) => (methods ? [{ level, methods }] : []));
});
const named = jobs.map((job) => [chanceKey(job), job] as const);

/** Verdicts of one random order, as the judge would give them: kept or broken and left. */
const verdictsOf = (job: Job, seed: number): readonly Verdict[] =>
  [...brokenIn(randomOrder(itemsOf(job), seed), job)].map(([key, broken]) => {
    const [rule = '', instance = ''] = key.split(' ');
    return { rule: rule as OrderRuleId, instance, lost: broken ? 1 : 0, step: undefined, fact: undefined };
  });

describe('chances', () => {
  it('are stored under the rules that are in force, from 20,000 orders a row', () => {
    expect(chanceVersion).toBe(rulesVersion);
    expect(chanceRuns).toBe(20000);
  });

  it.each(['garden-hut', 'boathouse'] as const)('are stored for every way of building the %s', (id) => {
    const level = levelOf(id);
    for (const methods of waysOf(level)) expect(chanceRows).toHaveProperty([chanceKey({ level, methods })]);
  });

  // Five standard errors of a share from 400 orders (not those that were stored): 5 × √(p(1 − p)/400).
  it.each(named)('agree with a fresh sample: %s', (key, job) => {
    const fresh = chanceBroken(job, { runs: 400, seed: 987654 });
    const stored = chanceRows[key] ?? {};
    expect(Object.keys(fresh).sort()).toEqual(Object.keys(stored).sort());
    for (const [rule, p] of Object.entries(stored)) {
      const error = Math.sqrt(Math.max(p * (1 - p), 0.005) / 400);
      expect(Math.abs((fresh[rule] ?? 0) - p), `${rule} of ${key}`).toBeLessThan(5 * error);
    }
  });

  it.each(named)('bring random complete orders to nothing before the floor: %s', (key, job) => {
    const runs = 300;
    let sum = 0;
    for (let run = 0; run < runs; run++)
      sum += orderBeforeFloor(chanceRows[key] ?? {}, verdictsOf(job, 5_000_000 + run)) ?? 0;
    expect(Math.abs(sum / runs)).toBeLessThan(0.05);
  });

  it('come from orders that are complete and that physics allows', () => {
    for (const job of jobs) {
      const items = itemsOf(job);
      const order = randomOrder(items, 42);
      expect([...order].sort()).toEqual(items.map(({ fact }) => fact).sort());
      const at = new Map(order.map((fact, i) => [fact, i]));
      for (const { fact, needs } of items)
        for (const need of needs) expect(at.get(need)).toBeLessThan(at.get(fact) ?? -1);
    }
  });
});
