import { stationsOf } from '../level/layout';
import { sides, ends, type Side } from '../roof/side';
import { tools } from '../instruments/rows';
import type { ToolId } from '../instruments/tool';
import { factsOf } from '../order/fact';
import { checkRules, type CheckRuleId } from '../order/rules';
import type { Attempt } from '../site/attempt';
import { evolve } from '../site/evolve';
import { fastened } from '../site/holding';
import { rafterId, type JointId } from '../site/ids';
import { initialSite } from '../site/initial';
import { finished } from '../site/required';
import { openItems } from '../site/punch';
import { offPlane, shows } from '../site/shows';
import type { Standing } from '../site/standing';
import type { Reading, SiteState } from '../site/state';

/** One thing a check wants read: where, from when, until when, and whether what it shows was put right by then. */
export type Want = {
  readonly rule: CheckRuleId;
  readonly part: string;
  readonly weight: number;
  readonly reads: readonly { readonly tool: ToolId; readonly at: string; readonly from?: string }[];
  /** How many of the reads must be there: all, or a number. */
  readonly enough?: number;
  readonly opens: (standing: Standing) => boolean;
  readonly closes: (standing: Standing) => boolean;
  readonly right: (standing: Standing) => boolean;
};

/** What came of one want: 1 in time and put right, 0.5 wrong decision or misread, 0.25 late, 0 none or stale. */
export type Checked = {
  readonly rule: CheckRuleId;
  readonly part: string;
  readonly weight: number;
  readonly credit: number;
  readonly why: 'well' | 'wrong' | 'late' | 'stale' | 'none';
  readonly step: number | undefined;
};

const credits = { well: 1, wrong: 0.5, late: 0.25, stale: 0, none: 0 } as const;

/** Tells the attempt once and watches every window. */
export const checksOf = (attempt: Attempt): readonly Checked[] => {
  const watches = wantsOf(attempt).map((want) => ({
    want,
    opened: -1,
    closed: -1,
    rightThen: false,
    wasOpen: false,
  }));
  const standing = (site: SiteState): Standing => ({ level: attempt.level, seed: attempt.seed, site });
  let site: SiteState = initialSite;
  let step = 0;
  let lastBefore = site;
  const look = (): void => {
    for (const watch of watches) {
      if (watch.opened < 0 && watch.want.opens(standing(site))) watch.opened = site.told;
      if (watch.opened >= 0 && watch.closed < 0 && watch.want.closes(standing(site))) {
        watch.closed = site.told;
        watch.rightThen = watch.want.right(standing(lastBefore));
      }
    }
  };
  look();
  for (; step < attempt.steps.length; step++) {
    const so = attempt.steps[step];
    if (!so || so.undone || !so.outcome.ok) continue;
    for (const event of so.outcome.events) {
      lastBefore = site;
      site = evolve(site, event);
      if (event.type !== 'spent' && event.type !== 'wasRead') look();
    }
  }
  const stepAt = stepsByTold(attempt);
  return watches
    .filter(({ opened }) => opened >= 0)
    .map((watch) => verdict(watch, { standing: standing(site), stepAt }));
};

type Watch = {
  readonly want: Want;
  readonly opened: number;
  readonly closed: number;
  readonly rightThen: boolean;
};

const verdict = (
  { want, opened, closed, rightThen }: Watch,
  { standing, stepAt }: { readonly standing: Standing; readonly stepAt: (told: number) => number },
): Checked => {
  const { rule, part, weight } = want;
  const hits = want.reads.map((read) => standing.site.readings.filter((reading) => same(reading, read)));
  const until = closed < 0 ? Infinity : closed;
  const inTime = hits.map((list) => list.filter(({ told }) => told >= opened && told < until));
  const needed = want.enough ?? want.reads.length;
  const counted = inTime.filter((list) => list.length > 0);
  const right = closed < 0 ? want.right(standing) : rightThen;
  const honest = counted.filter((list) => list.some(sayIt)).length >= needed;
  const why =
    counted.length >= needed ? (right && honest ? 'well' : 'wrong') : whyNot(hits, { opened, until, needed });
  const share = why === 'none' && want.enough === undefined ? counted.length / needed : 0;
  const step = closed < 0 ? undefined : stepAt(closed);
  return { rule, part, weight, credit: Math.max(credits[why], share * (right ? 1 : 0.5)), why, step };
};

const whyNot = (
  hits: readonly (readonly Reading[])[],
  { opened, until, needed }: { readonly opened: number; readonly until: number; readonly needed: number },
): 'late' | 'stale' | 'none' => {
  const some = (test: (reading: Reading) => boolean): boolean =>
    hits.filter((list) => list.some(test)).length >= needed;
  if (some(({ told }) => told >= opened) && some(({ told }) => told >= until)) return 'late';
  return some(({ told }) => told < opened) ? 'stale' : 'none';
};

const same = (reading: Reading, read: Want['reads'][number]): boolean =>
  reading.tool === read.tool &&
  reading.at === read.at &&
  (read.from === undefined || reading.from === read.from);

/** Said as shown: to the nearest division of the tool, or the same word. */
const sayIt = ({ tool, shown, said }: Reading): boolean =>
  typeof shown === 'number' && typeof said === 'number'
    ? Math.abs(shown - said) <= tools[tool as ToolId].division * 0.75
    : shown === said;

const stepsByTold =
  ({ steps }: Attempt) =>
  (told: number): number => {
    let count = 0;
    for (let i = 0; i < steps.length; i++) {
      const so = steps[i];
      if (so && !so.undone && so.outcome.ok) count += so.outcome.events.length;
      else if (so && !so.undone && !so.outcome.ok && so.outcome.stop) count += 1;
      if (count >= told) return i;
    }
    return steps.length - 1;
  };

/** Every want of every check that applies to this level. C4 needs a ridge that can bend and is not asked for yet. */
export const wantsOf = ({ level }: Pick<Attempt, 'level'>): readonly Want[] => [
  ...wallWants(),
  ...ridgeWants(level),
  ...sides.flatMap((side) => sideWants(level, side)),
  punchWant,
];

const weightOf = (id: CheckRuleId): number => checkRules.find((rule) => rule.id === id)?.weight ?? 0;
const near = (value: number | string | undefined, figure: number): number =>
  typeof value === 'number' ? Math.abs(value - figure) : Infinity;

const start = (): boolean => true;
const ridgeUp = ({ site }: Standing): boolean => site.ridge !== undefined;

const wallWants = (): readonly Want[] => {
  const want = (part: string, reads: Want['reads'], right: Want['right']): Want => ({
    rule: 'C1',
    part,
    weight: weightOf('C1') / 4,
    reads,
    opens: start,
    closes: ridgeUp,
    right,
  });
  const levelSpots = sides
    .flatMap((side) => ['A', 'mid', 'B'].map((at) => `plate.${side}.${at}`))
    .filter((at) => at !== 'plate.street.A');
  return [
    want(
      'width',
      ['A', 'mid', 'B'].map((at) => ({ tool: 'tape', at: `width.${at}` })),
      () => true,
    ),
    want(
      'diagonals',
      ['1', '2'].map((which) => ({ tool: 'tape', at: `diagonal.${which}` })),
      () => true,
    ),
    want(
      'level',
      levelSpots.map((at) => ({ tool: 'waterLevel', at })),
      (standing) => levelSpots.every((at) => near(shows(standing, { tool: 'waterLevel', at }), 0) <= 0.1875),
    ),
    want(
      'straight',
      sides.map((side) => ({ tool: 'string', at: `plate.${side}.mid` })),
      () => true,
    ),
  ];
};

const endJoints = (standing: Standing, kind: 'ridge' | 'heel'): readonly JointId[] => {
  const last = stationsOf(standing.level).length;
  return sides.flatMap((side) => [1, last].map((n) => `${kind}:${rafterId(side, n)}` as const));
};
const endsOnRidge = (standing: Standing): boolean =>
  endJoints(standing, 'ridge').every((joint) => fastened(standing.site, joint));
const anyEndNailed = (standing: Standing): boolean =>
  endJoints(standing, 'heel').some((joint) => finished(standing.site, joint));

const ridgeWants = (level: Attempt['level']): readonly Want[] => {
  const { tolerances, length } = { tolerances: level.tolerances, length: level.plan.length };
  const off = ({ site }: Standing, key: 'high' | 'aside'): number =>
    Math.max(Math.abs(site.ridge?.[key].A ?? 99), Math.abs(site.ridge?.[key].B ?? 99));
  const c2 = { rule: 'C2' as const, weight: weightOf('C2') / 2, opens: endsOnRidge, closes: anyEndNailed };
  const slope = ({ site }: Standing): number =>
    Math.abs((site.ridge?.high.A ?? 99) - (site.ridge?.high.B ?? 0));
  return [
    {
      ...c2,
      part: 'height',
      reads: ends.map((end) => ({ tool: 'tape', at: `ridge.${end}.height` })),
      right: (s) => off(s, 'high') <= tolerances.ridgeHeight + 1 / 16,
    },
    {
      ...c2,
      part: 'centre',
      reads: ends.map((end) => ({ tool: 'tape', at: `ridge.${end}.centre` })),
      right: (s) => off(s, 'aside') <= tolerances.ridgeCentre + 1 / 16,
    },
    {
      rule: 'C3',
      part: 'level',
      weight: weightOf('C3'),
      reads: ends.map((from) => ({ tool: 'level', at: 'ridge', from })),
      opens: (s) => endsOnRidge(s) && factsOf(s)('settled'),
      closes: anyEndNailed,
      right: (s) => slope(s) <= (tolerances.ridgeLevelIn10ft * length) / 120,
    },
  ];
};

const sideWants = (level: Attempt['level'], side: Side): readonly Want[] => {
  const last = stationsOf(level).length;
  const inner = Array.from({ length: last - 2 }, (_, i) => i + 2);
  // Every other rafter is read with care; the ones between are seen along the string, and must be right too.
  const others = inner.filter((n) => n % 2 === 0);
  const plane: readonly Want[] = others.map((n) => ({
    rule: 'C5',
    part: `plane.${side}.${n}`,
    weight: weightOf('C5') / 2 / others.length,
    reads: [{ tool: 'string', at: `plane.${side}.${n}` }],
    opens: (s) =>
      s.site.lines[`string.${side}`] !== undefined &&
      s.site.members[rafterId(side, n)] !== undefined &&
      !finished(s.site, `heel:${rafterId(side, n)}`),
    closes: (s) => finished(s.site, `heel:${rafterId(side, n)}`),
    right: (s) => [n, n + 1].every((k) => Math.abs(offPlane(s, side, k) ?? 0) <= level.tolerances.plane),
  }));
  const fours = inner.filter((n) => n >= 5 && (n - 1) % 4 === 0);
  const layout: readonly Want[] = fours.map((n) => ({
    rule: 'C6',
    part: `layout.${side}.${n}`,
    weight: weightOf('C6') / 2 / fours.length,
    reads: [{ tool: 'tape', at: `layout.${side}.${n}` }],
    opens: (s) => s.site.members[rafterId(side, n)] !== undefined,
    closes: (s) =>
      inner.filter((k) => k > n && k <= n + 4).every((k) => finished(s.site, `heel:${rafterId(side, k)}`)),
    right: (s) =>
      Math.abs((s.site.members[rafterId(side, n)]?.x ?? 99) - (stationsOf(level)[n - 1] ?? 0)) <=
      level.tolerances.layout,
  }));
  return [...plane, ...layout];
};

/** Walked with the punch list after the last nail and before handing over. */
const punchWant: Want = {
  rule: 'C7',
  part: 'punch',
  weight: weightOf('C7'),
  reads: [{ tool: 'eye', at: 'punch' }],
  opens: (standing) => standing.site.ridge !== undefined && openItems(standing).length === 0,
  closes: ({ site }) => site.handedOver,
  right: (standing) => openItems(standing).length === 0,
};
