import { tools } from '../instruments/rows';
import type { ToolId } from '../instruments/tool';
import type { CheckRuleId } from '../order/rules';
import type { Attempt } from '../site/attempt';
import type { Reading } from '../site/state';
import type { Look, Want } from './checks/want';
import { wantsOf } from './checks/wants';
import { windowsOf, type Window } from './checks/windows';

/** What came of one want: 1 in time and put right, 0.5 wrong decision or misread, 0.25 late, 0 none or stale. */
export type Checked = {
  readonly rule: CheckRuleId;
  readonly part: string;
  readonly weight: number;
  readonly credit: number;
  readonly why: Why;
  readonly step: number | undefined;
};

export type Why = 'well' | 'wrong' | 'late' | 'stale' | 'none';

const credits = { well: 1, wrong: 0.5, late: 0.25, stale: 0, none: 0 } as const;

/**
 * Every want whose window came, but for what the crew had looked at well before the learner came. Where it was gone before it
 * opened, what should have been looked at was not.
 */
export const checksOf = (attempt: Attempt): readonly Checked[] => {
  const told = checksKnown.get(attempt) ?? checksAnew(attempt);
  checksKnown.set(attempt, told);
  return told;
};
const checksKnown = new WeakMap<Attempt, readonly Checked[]>();

const checksAnew = (attempt: Attempt): readonly Checked[] => {
  const known = lookedAtByCrew(attempt);
  const wants = wantsOf(attempt.level).filter(({ part }) => !known.has(part));
  const windows = windowsOf(attempt, wants);
  return wants.flatMap((want): readonly Checked[] => {
    const came = (windows.get(want) ?? []).filter(({ opened, closed }) => opened >= 0 || closed >= 0);
    const told = came.map((window) => verdict(attempt.site.readings, want, window));
    return told.length === 0 ? [] : [told.reduce((best, one) => (one.credit > best.credit ? one : best))];
  });
};

const lookedAtByCrew = ({ found, ...attempt }: Attempt): ReadonlySet<string> => {
  if (!found) return new Set();
  const before = checksOf({ ...attempt, steps: attempt.steps.slice(0, found.steps), site: found.site });
  return new Set(before.filter(({ credit }) => credit === 1).map(({ part }) => part));
};

/** Each look earns for itself, and the check is their mean; what is said of it is the worst of them. */
const verdict = (readings: readonly Reading[], { rule, part, weight }: Want, window: Window): Checked => {
  const whys = window.way.looks.map((look) =>
    whyOf(
      readings.filter((reading) => same(reading, look)),
      window,
    ),
  );
  const credit = whys.reduce((sum, why) => sum + credits[why], 0) / whys.length;
  const why = whys.reduce(
    (worst, one) => (ranked.indexOf(one) > ranked.indexOf(worst) ? one : worst),
    'well' as Why,
  );
  return { rule, part, weight, credit, why, step: window.step };
};

const ranked: readonly Why[] = ['well', 'wrong', 'late', 'stale', 'none'];

const whyOf = (readings: readonly Reading[], { opened, closed, right }: Window): Why => {
  const until = closed < 0 ? Infinity : closed;
  const inTime = readings.filter(({ told }) => opened >= 0 && told >= opened && told < until);
  if (inTime.length > 0) return right && inTime.some(asShown) ? 'well' : 'wrong';
  if (readings.some(({ told }) => told >= until)) return 'late';
  return readings.length > 0 ? 'stale' : 'none';
};

const same = (reading: Reading, look: Look): boolean =>
  reading.tool === look.tool &&
  reading.at === look.at &&
  (look.from === undefined || reading.from === look.from);

/** Said as shown: to the nearest division of the tool, or the same word. */
const asShown = ({ tool, shown, said }: Reading): boolean =>
  typeof shown === 'number' && typeof said === 'number'
    ? Math.abs(shown - said) <= tools[tool as ToolId].division * 0.75
    : shown === said;
