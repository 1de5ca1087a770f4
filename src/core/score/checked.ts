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

/** Every want whose window came. Where it was gone before it opened, what should have been looked at was not. */
export const checksOf = (attempt: Attempt): readonly Checked[] => {
  const wants = wantsOf(attempt.level);
  const windows = windowsOf(attempt, wants);
  return wants.flatMap((want): readonly Checked[] => {
    const came = (windows.get(want) ?? []).filter(({ opened, closed }) => opened >= 0 || closed >= 0);
    const told = came.map((window) => verdict(attempt.site.readings, want, window));
    return told.length === 0 ? [] : [told.reduce((best, one) => (one.credit > best.credit ? one : best))];
  });
};

const verdict = (readings: readonly Reading[], { rule, part, weight }: Want, window: Window): Checked => {
  const { way, opened, closed, right, step } = window;
  const until = closed < 0 ? Infinity : closed;
  const hits = way.looks.map((look) => readings.filter((reading) => same(reading, look)));
  const inTime = hits.map((list) =>
    opened < 0 ? [] : list.filter(({ told }) => told >= opened && told < until),
  );
  const read = inTime.filter((list) => list.length > 0).length;
  const honest = inTime.every((list) => list.some(asShown));
  const why = read === way.looks.length ? (right && honest ? 'well' : 'wrong') : whyNot(hits, until);
  // Part of a list read is part of the knowledge, and never more than all of it read and not acted on.
  const share = (read / way.looks.length) * (right ? 1 : 0.5);
  return { rule, part, weight, credit: why === 'well' ? 1 : Math.max(credits[why], share), why, step };
};

const whyNot = (hits: readonly (readonly Reading[])[], until: number): Why => {
  if (hits.every((list) => list.some(({ told }) => told >= until))) return 'late';
  return hits.every((list) => list.length > 0) ? 'stale' : 'none';
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
