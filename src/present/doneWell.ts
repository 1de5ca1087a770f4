import { factOf } from '../core/order/fact';
import { jobOf, judgeOrder } from '../core/order/judged';
import { orderRules } from '../core/order/rules';
import { wantsOf } from '../core/score/checks/wants';
import type { Finding } from '../core/score/score';
import type { Attempt, Step } from '../core/site/attempt';

/** What was done well: a check made in time, else the dearest order rule that was kept wherever it applied. */
export const doneWell = (attempt: Attempt, findings: readonly Finding[]): Finding | undefined => {
  const check = findings.find(({ kind, code }) => kind === 'good' && code.startsWith('C'));
  return check ? dated(attempt, check) : keptRule(attempt);
};

/** At the last look it was made by. */
const dated = ({ level, steps }: Attempt, check: Finding): Finding => {
  const { code, step = steps.length } = check;
  const looks = wantsOf(level)
    .filter(({ rule }) => rule === code)
    .flatMap(({ ways }) => ways.flatMap((way) => way.looks));
  const looked = (one: Step): boolean => {
    const { action } = one;
    return (
      action.type === 'read' &&
      stands(one) &&
      looks.some(({ tool, at }) => tool === action.tool && at === action.at)
    );
  };
  const last = steps.slice(0, step).findLastIndex(looked);
  return last < 0 ? check : { ...check, step: last };
};

const stands = ({ outcome, undone }: Step): boolean => outcome.ok && undone !== true;

/** At the deed that had to wait, and did. */
const keptRule = (attempt: Attempt): Finding | undefined => {
  const verdicts = judgeOrder(attempt);
  const kept = orderRules
    .filter(({ id }) => {
      const own = verdicts.filter(({ rule }) => rule === id);
      return own.length > 0 && own.every(({ lost }) => lost === 0);
    })
    .sort((a, b) => b.rework - a.rework)[0];
  if (!kept) return undefined;
  const job = jobOf(attempt);
  const waited = (step: Step): boolean =>
    stands(step) &&
    step.outcome.ok &&
    step.outcome.events.some((event) => {
      const fact = factOf(event);
      return fact !== undefined && kept.after(fact, job) !== undefined;
    });
  const own = attempt.found?.steps ?? 0;
  const step = attempt.steps.findIndex((one, i) => i >= own && waited(one));
  return { code: kept.id, kind: 'good', minutes: 0, numbers: {}, ...(step < 0 ? {} : { step }) };
};
