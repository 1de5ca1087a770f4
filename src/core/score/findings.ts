import { fewestToMove } from '../order/fewest';
import type { Verdict } from '../order/judged';
import { orderRules } from '../order/rules';
import { dangerRow } from '../site/dangers/rows';
import { openItems } from '../site/punch';
import type { Attempt } from '../site/attempt';
import type { Checked } from './checked';
import { lookedAt } from './eye';
import { measuredOn, quality } from './fit';
import type { Finding } from './score';

/** What is told afterwards: codes, places and numbers, the costliest first. At least one thing done well where there is one. */
export const findingsOf = (
  attempt: Attempt,
  told: { readonly verdicts: readonly Verdict[]; readonly checked: readonly Checked[] },
): readonly Finding[] =>
  [
    ...safetyFindings(attempt),
    ...orderFindings(told.verdicts),
    ...checkFindings(told.checked),
    ...eyeFindings(attempt),
    ...fitFindings(attempt),
    ...stateFindings(attempt),
    ...goodFindings(told),
  ].sort((a, b) => rank(a) - rank(b) || b.minutes - a.minutes);

const ranks: Readonly<Record<Finding['kind'], number>> = {
  safety: 0,
  order: 1,
  state: 2,
  check: 2,
  eye: 2,
  fit: 2,
  good: 3,
};
const rank = ({ kind }: Finding): number => ranks[kind];

const safetyFindings = ({ steps, site }: Attempt): readonly Finding[] => {
  const stops = steps.flatMap(({ outcome, undone }, step): readonly Finding[] => {
    if (undone) return [];
    const danger =
      !outcome.ok && outcome.stop
        ? outcome.why
        : outcome.ok
          ? outcome.events.find((e) => e.type === 'stopped')?.danger
          : undefined;
    const row = danger === undefined ? undefined : dangerRow(danger as 'topPlate');
    return row
      ? [{ code: row.rule, kind: 'safety', at: row.id, step, minutes: 0, numbers: { cap: row.cap } }]
      : [];
  });
  return site.down === undefined
    ? stops
    : [
        ...stops,
        {
          code: 'cameDown',
          kind: 'safety',
          at: site.down,
          step: steps.length - 1,
          minutes: 0,
          numbers: { cap: 49 },
        },
      ];
};

const orderFindings = (verdicts: readonly Verdict[]): readonly Finding[] => {
  const moves = fewestToMove(verdicts).length;
  return verdicts
    .filter(({ lost }) => lost > 0)
    .map(({ rule, lost, step, instance, fact }) => {
      const row = orderRules.find(({ id }) => id === rule);
      return {
        code: rule,
        kind: 'order' as const,
        at: fact ?? instance,
        ...(step === undefined ? {} : { step }),
        minutes: Math.round((row?.rework ?? 0) * lost),
        numbers: { lost, moves },
        ...(row?.shows === 'frame' ? { costOnly: true } : {}),
      };
    });
};

/** Crew-minutes a check that was not made is reckoned at, a point of its weight. Ours. */
const minutesPerPoint = 2;

const checkFindings = (checked: readonly Checked[]): readonly Finding[] => {
  const rules = [...new Set(checked.map(({ rule }) => rule))];
  return rules.flatMap((code): readonly Finding[] => {
    const own = checked.filter(({ rule }) => rule === code);
    const missed = own.reduce((sum, c) => sum + c.weight * (1 - c.credit), 0);
    const worst = own.reduce((a, b) => (b.weight * (1 - b.credit) > a.weight * (1 - a.credit) ? b : a));
    if (missed < 0.05) return [];
    const step = worst.step;
    return [
      {
        code,
        kind: 'check',
        at: `${worst.why}:${worst.part}`,
        ...(step === undefined ? {} : { step }),
        minutes: Math.round(missed * minutesPerPoint),
        numbers: { credit: worst.credit, missed },
      },
    ];
  });
};

const eyeFindings = (attempt: Attempt): readonly Finding[] =>
  lookedAt(attempt).flatMap(({ subject, fault, call, right }): readonly Finding[] => {
    if (fault && !right)
      return [{ code: fault.fault, kind: 'eye', at: subject, minutes: 6, numbers: { by: fault.by } }];
    if (!fault && call !== undefined && call !== 'sound')
      return [{ code: 'falseAlarm', kind: 'eye', at: subject, minutes: 2, numbers: {} }];
    return [];
  });

/** Only what is past its tolerance is worth telling. */
const fitFindings = (attempt: Attempt): readonly Finding[] =>
  measuredOn(attempt)
    .filter((measured) => quality(measured) < 0.8)
    .map((measured) => ({
      code: `fit.${measured.feature}`,
      kind: 'fit',
      at: measured.at,
      minutes: Math.round(3 * (1 - quality(measured))),
      numbers: { off: measured.off, allowed: measured.allowed },
    }));

const stateFindings = (attempt: Attempt): readonly Finding[] => {
  const open = openItems(attempt);
  const tacks = open.filter(({ what }) => what === 'tacks');
  const rest = open.filter(({ what }) => what !== 'tacks');
  const count = (code: 'T1' | 'T2', items: typeof open, each: number): readonly Finding[] =>
    items.length === 0
      ? []
      : [
          {
            code,
            kind: 'state',
            at: items[0]?.at ?? '',
            minutes: items.length * each,
            numbers: { count: items.length },
          },
        ];
  return [...count('T1', tacks, 1), ...count('T2', rest, 4)];
};

const goodFindings = ({
  verdicts,
  checked,
}: {
  readonly verdicts: readonly Verdict[];
  readonly checked: readonly Checked[];
}): readonly Finding[] => {
  const rules = [...new Set(checked.map(({ rule }) => rule))].filter((code) =>
    checked.filter(({ rule }) => rule === code).every(({ credit }) => credit === 1),
  );
  const best = rules[0];
  const weightOf = (code: string): number =>
    checked.filter(({ rule }) => rule === code).reduce((sum, c) => sum + c.weight, 0);
  if (best) {
    const code = rules.reduce((a, b) => (weightOf(b) > weightOf(a) ? b : a), best);
    const step = checked.find(({ rule }) => rule === code)?.step;
    return [{ code, kind: 'good', ...(step === undefined ? {} : { step }), minutes: 0, numbers: {} }];
  }
  const kept = verdicts.find(({ lost }) => lost === 0);
  return kept ? [{ code: kept.rule, kind: 'good', minutes: 0, numbers: {} }] : [];
};
