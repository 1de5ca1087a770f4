import { ends } from '../roof/side';
import { uniform } from '../level/draw';
import { againstWall, ridgeCarries, sidesOf } from '../level/layout';
import { before, within } from '../level/stages';
import { ledgerJoint, rafterId } from '../site/ids';
import { stayingPosts } from '../site/planPosts';
import type { Fact, Job } from './fact';
import { places, stageOfFact } from './fact';
import { reached } from './milestones';
import { orderRules, type OrderRule } from './rules';

/**
 * The work as a list of facts with what physics wants first, and nothing more: what may be done in any order that can be
 * built. Random complete orders of it say how often each rule is broken by luck alone.
 */
export type Item = { readonly fact: Fact; readonly needs: readonly Fact[] };

export const itemsOf = (job: Job): readonly Item[] => {
  const range = job.level.stages;
  const all = allItems(job);
  if (!range) return all;
  const own = all.filter(({ fact }) => within(range, stageOfFact(job.level, fact)));
  const facts = new Set(own.map(({ fact }) => fact));
  return own.map(({ fact, needs }) => ({ fact, needs: needs.filter((need) => facts.has(need)) }));
};

/** What the crew did before the learner came. */
const foundDone = (job: Job): readonly Fact[] => {
  const range = job.level.stages;
  if (!range) return [];
  return allItems(job)
    .map(({ fact }) => fact)
    .filter((fact) => before(range, stageOfFact(job.level, fact)));
};

const allItems = (job: Job): readonly Item[] => [
  ...groundItems(job),
  ...ridgeItems(job),
  ...rafterItems(job),
  ...topItems(job),
  ...tailItems(job),
];

const item = (fact: Fact, ...needs: readonly Fact[]): Item => ({ fact, needs });

const groundItems = ({ level, methods }: Job): readonly Item[] => [
  ...[...sidesOf(level), ...ends].map((wall) => item(`brace.wall.${wall}`)),
  ...(tied(level) ? places(level).all.map((n) => item(`joist.${n}`)) : []),
  ...[...sidesOf(level).map((side) => `mark:plate.${side}`), 'mark:ridge'].map((fact) => item(fact)),
  ...['platform', 'ladder', 'openings', 'anchor', 'gear'].map((what) => item(`ready:${what}`)),
  ...(methods.ridgeLength === 'cut' ? [item('ridgeLength')] : []),
];

/** Pairs on a ridge that carries need no ties, and have those that the plan gives them. */
const tied = (level: Job['level']): boolean =>
  !againstWall(level) && (!ridgeCarries(level) || level.plan.joists !== false);

const ridgeItems = ({ level, methods }: Job): readonly Item[] => {
  if (ridgeCarries(level)) return beamItems(level);
  const posts = methods.hang === 'posts';
  return [
    ...(posts ? [item('post.1', 'ready:platform'), item('post.2', 'ready:platform')] : []),
    item('ridge', ...(posts ? ['post.1', 'post.2'] : ['ready:platform'])),
    ...(againstWall(level) ? ledgerItems(level) : braceItems),
  ];
};

const braceItems = ['brace.along.1', ...ends.map((end) => `brace.across.${end}`)].map((fact) =>
  item(fact, 'ridge'),
);

/** Tacked to the wall where it can still move, then nailed at every stud. */
const ledgerItems = (level: Job['level']): readonly Item[] =>
  places(level).all.flatMap((n) => [
    item(`tack:${ledgerJoint(n)}`, 'ridge'),
    item(ledgerJoint(n), `tack:${ledgerJoint(n)}`, 'settled', 'ready:gear'),
  ]);

/** It lies on its outer two posts; what stands between them may come after it. */
const beamItems = (level: Job['level']): readonly Item[] => {
  const posts = stayingPosts(level);
  const ends = [posts[0], posts[posts.length - 1]].filter((post) => post !== undefined);
  return [
    ...posts.flatMap((post) => [item(post), item(`fixed:${post}`, post)]),
    item('ridge', 'ready:platform', ...ends),
    ...braceItems,
  ];
};

/** End pairs are tacked, the height settled while it can still move, then nailed; all else hangs on what it is nailed to. */
const rafterItems = ({ level }: Job): readonly Item[] => {
  const { all, last } = places(level);
  const sides = sidesOf(level);
  const endIds = sides.flatMap((side) => [rafterId(side, 1), rafterId(side, last)]);
  return [
    item('settled', 'ridge'),
    ...sides.flatMap((side) => [
      item(`string.${side}`, rafterId(side, 1), rafterId(side, last)),
      ...(againstWall(level) ? [] : [item(`chalk.${side}`, rafterId(side, 1), rafterId(side, last))]),
    ]),
    ...sides.flatMap((side) =>
      all.flatMap((n) =>
        oneRafter(rafterId(side, n), {
          station: n,
          end: endIds.includes(rafterId(side, n)),
          ties: tied(level),
        }),
      ),
    ),
    ...sides.flatMap((side) => all.slice(0, -1).map((n) => item(`block.${side}.${n}`, rafterId(side, n)))),
  ];
};

const oneRafter = (
  id: ReturnType<typeof rafterId>,
  { station, end, ties }: { readonly station: number; readonly end: boolean; readonly ties: boolean },
): readonly Item[] => {
  const first = end ? ['settled'] : [];
  return [
    item(id, 'ridge'),
    item(`tack:ridge:${id}`, id),
    item(`tack:heel:${id}`, id),
    item(`ridge:${id}`, `tack:ridge:${id}`, 'ready:gear', ...first),
    item(`heel:${id}`, `tack:heel:${id}`, 'ready:gear', ...first),
    ...(ties ? [item(`heelTie:${id}`, id, `joist.${station}`, 'ready:gear')] : []),
  ];
};

const tailItems = ({ level, methods }: Job): readonly Item[] => {
  if (methods.tails === 'first') return [];
  const { all, last } = places(level);
  return sidesOf(level).flatMap((side) => [
    item(`tail.${side}`, rafterId(side, 1), rafterId(side, last)),
    ...all.map((n) => item(`tail:${rafterId(side, n)}`, rafterId(side, n), 'ready:ladder')),
  ]);
};

const topItems = ({ level, methods }: Job): readonly Item[] => {
  const { upper } = places(level);
  const tops = upper.flatMap((n) => {
    const rafters = sidesOf(level).map((side) => rafterId(side, n));
    if (methods.upper === 'straps')
      return [item(`strap.${n}`, ...rafters), item(`strap:strap.${n}`, `strap.${n}`, 'ready:gear')];
    return [
      item(`collar.${n}`, ...rafters),
      ...sidesOf(level).map((side) => item(`collarEnd:collar.${n}.${side}`, `collar.${n}`, 'ready:gear')),
    ];
  });
  const { last } = places(level);
  const carries = againstWall(level)
    ? [1, last].map((n) => `tack:${ledgerJoint(n)}`)
    : sidesOf(level).flatMap((side) =>
        [1, last].flatMap((n) => [`tack:ridge:${rafterId(side, n)}`, `tack:heel:${rafterId(side, n)}`]),
      );
  if (!ridgeCarries(level)) return [...tops, ...propItems(methods.hang, carries)];
  return methods.hang === 'machine' ? [...tops, item('unhooked', 'ridge')] : tops;
};

/** What carries the ridge comes away once pairs at both ends are fastened; before that it would come down. */
const propItems = (hang: Job['methods']['hang'], carries: readonly Fact[]): readonly Item[] => {
  if (hang === 'machine') return [item('unhooked', 'ridge', ...carries)];
  return hang === 'posts'
    ? ['post.1', 'post.2'].map((post) => item(`out:${post}`, post, 'ridge', ...carries))
    : [];
};

/** A complete order that physics allows, each open item as likely as the next at every step. */
export const randomOrder = (items: readonly Item[], seed: number): readonly Fact[] => {
  const waits = new Map(items.map(({ fact, needs }) => [fact, needs.length]));
  const frees = new Map<Fact, Fact[]>();
  for (const { fact, needs } of items)
    for (const need of needs) frees.set(need, [...(frees.get(need) ?? []), fact]);
  const open = items.filter(({ needs }) => needs.length === 0).map(({ fact }) => fact);
  const order: Fact[] = [];
  while (open.length > 0) {
    const at = Math.floor(uniform(seed, `${order.length}`, 'order') * open.length);
    const fact = open[at] as Fact;
    open[at] = open[open.length - 1] as Fact;
    open.pop();
    order.push(fact);
    for (const next of frees.get(fact) ?? []) {
      const left = (waits.get(next) ?? 0) - 1;
      waits.set(next, left);
      if (left === 0) open.push(next);
    }
  }
  return order;
};

/** Which instances of which rules an order of facts breaks. Instances are told apart as the site tells them. */
export const brokenIn = (order: readonly Fact[], job: Job): ReadonlyMap<string, boolean> => {
  const done = new Set<Fact>(foundDone(job));
  const rules = orderRules.filter((rule) => rule.applies(job));
  const seen = new Map<string, boolean>();
  for (const fact of order) {
    for (const rule of rules) {
      const instance = rule.after(fact, job);
      if (instance === undefined) continue;
      const key = `${rule.id} ${instance}`;
      if (seen.get(key) !== true) seen.set(key, !soBefore(rule, { instance, done, job }));
    }
    done.add(fact);
  }
  return seen;
};

const soBefore = (
  rule: OrderRule,
  { instance, done, job }: { readonly instance: string; readonly done: ReadonlySet<Fact>; readonly job: Job },
): boolean => reached(rule.before, (fact) => done.has(fact), { job, instance });

/** Whether doing a thing now breaks no rule. */
export const keepsRules = (
  fact: Fact,
  { done, job }: { readonly done: ReadonlySet<Fact>; readonly job: Job },
): boolean =>
  orderRules
    .filter((rule) => rule.applies(job))
    .every((rule) => {
      const instance = rule.after(fact, job);
      return instance === undefined || soBefore(rule, { instance, done, job });
    });
