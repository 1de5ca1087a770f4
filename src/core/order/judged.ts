import { evolve } from '../site/evolve';
import { initialSite } from '../site/initial';
import { methodsOf } from '../site/required';
import type { Attempt } from '../site/attempt';
import type { Mode } from '../level/mode';
import type { SiteEvent } from '../site/event';
import type { SiteState } from '../site/state';
import { factOf, factsOf, type Fact, type Facts, type Job } from './fact';
import { reached } from './milestones';
import { orderRules, type OrderRule, type OrderRuleId } from './rules';

/** How one given rule fared: kept, broken and left, or broken and mended. */
export type Verdict = {
  readonly rule: OrderRuleId;
  readonly instance: string;
  /** Share of the rule's weight that is lost: 0 kept, 1 broken and left, 0.7 mended after a prompt, 0.4 unprompted. */
  readonly lost: 0 | 0.4 | 0.7 | 1;
  /** The step that came too early. */
  readonly step: number | undefined;
  readonly fact: Fact | undefined;
  /** The step at which the lead said so, in the modes that prompt. */
  readonly prompted?: number;
};

type Open = {
  readonly rule: OrderRule;
  readonly instance: string;
  readonly broken: { readonly step: number; readonly facts: readonly Fact[] } | undefined;
  readonly mended: boolean;
  readonly prompted: number | undefined;
};

/** What was given up when a rule was broken and then put right. */
const lostWhen = { left: 1, prompted: 0.7, unprompted: 0.4 } as const;

/** Modes in which the lead says something at the next check or point of no return. */
const prompting: readonly Mode[] = ['list', 'nudge'];

/** What cannot be taken back without drawn nails, or at all. */
const noWayBack: readonly SiteEvent['type'][] = ['nailed', 'unhooked', 'takenOut'];

export const jobOf = ({ level, site }: Pick<Attempt, 'level' | 'site'>): Job => ({
  level,
  methods: methodsOf(level, site.agreed),
});

/** Every order rule whose later step the learner did, told from the events of the attempt as it stands. */
export const judgeOrder = (attempt: Attempt): readonly Verdict[] => {
  const job = jobOf(attempt);
  const rules = orderRules.filter((rule) => rule.applies(job));
  const open = new Map<string, Open>();
  const own = attempt.found?.steps ?? 0;
  let site: SiteState = initialSite;
  attempt.steps.forEach(({ action, outcome, undone }, step) => {
    if (!outcome.ok || undone) return;
    for (const event of outcome.events) {
      const fact = factOf(event);
      if (fact !== undefined && step >= own)
        judgeFact({ rules, open, job: { ...job, facts: factsOf({ ...attempt, site }) } }, { fact, step });
      site = evolve(site, event);
      noteTakenBack(open, { event, facts: factsOf({ ...attempt, site }) });
    }
    const pause = action.type === 'read' || outcome.events.some(({ type }) => noWayBack.includes(type));
    if (pause && prompting.includes(attempt.mode)) promptOne(open, step);
  });
  return [...open.values()].map(verdictOf);
};

/** One prompt at a time, the costliest first, and each mistake once. What was broken this very step waits. */
const promptOne = (open: Map<string, Open>, step: number): void => {
  const [first] = [...open]
    .filter(([, so]) => so.broken && so.broken.step < step && !so.mended && so.prompted === undefined)
    .sort(([, a], [, b]) => b.rule.rework - a.rule.rework);
  if (first) open.set(first[0], { ...first[1], prompted: step });
};

type Bench = {
  readonly rules: readonly OrderRule[];
  readonly open: Map<string, Open>;
  readonly job: Job & { readonly facts: Facts };
};

const judgeFact = (
  { rules, open, job }: Bench,
  { fact, step }: { readonly fact: Fact; readonly step: number },
): void => {
  for (const rule of rules) {
    const instance = rule.after(fact, job);
    if (instance === undefined) continue;
    const key = `${rule.id} ${instance}`;
    const so = open.get(key) ?? { rule, instance, broken: undefined, mended: false, prompted: undefined };
    open.set(
      key,
      reached(rule.before, job.facts, { job, instance })
        ? so
        : {
            ...so,
            broken: { step: so.broken?.step ?? step, facts: [...(so.broken?.facts ?? []), fact] },
            mended: false,
          },
    );
  }
};

/** A broken rule is mended once every deed that came too early has been taken back. Redone in order, it stays mended. */
const noteTakenBack = (
  open: Map<string, Open>,
  { event, facts }: { readonly event: SiteEvent; readonly facts: Facts },
): void => {
  if (event.type !== 'drawn' && event.type !== 'takenOut') return;
  for (const [key, so] of open) {
    if (so.broken && !so.mended && so.broken.facts.every((fact) => !facts(fact)))
      open.set(key, { ...so, mended: true });
  }
};

const verdictOf = ({ rule, instance, broken, mended, prompted }: Open): Verdict => {
  const mendedAs = prompted === undefined ? lostWhen.unprompted : lostWhen.prompted;
  return {
    rule: rule.id,
    instance,
    lost: broken === undefined ? 0 : mended ? mendedAs : lostWhen.left,
    step: broken?.step,
    fact: broken?.facts[0],
    ...(prompted === undefined ? {} : { prompted }),
  };
};

/** What the lead said and what still stands as it was, latest last. */
export const promptsOf = (attempt: Attempt): readonly Verdict[] => {
  const known = saidIn.get(attempt);
  if (known || !prompting.includes(attempt.mode)) return known ?? [];
  const said = judgeOrder(attempt)
    .filter(({ prompted, lost }) => prompted !== undefined && lost === lostWhen.left)
    .sort((a, b) => (a.prompted ?? 0) - (b.prompted ?? 0));
  saidIn.set(attempt, said);
  return said;
};
/** Asked for by more than one view at every act, and told from the whole run each time. */
const saidIn = new WeakMap<Attempt, readonly Verdict[]>();
