import { chanceKey } from '../order/chance';
import { chanceRows } from '../order/chanceRows';
import { jobOf, judgeOrder, type Verdict } from '../order/judged';
import { orderRules } from '../order/rules';
import { dangerRow } from '../site/dangers/rows';
import { nothingOpen } from '../site/punch';
import { finished, methodsOf, requiredFor } from '../site/required';
import { tailCut } from '../site/tailLong';
import type { Attempt, Step } from '../site/attempt';
import type { SiteState } from '../site/state';
import { checksOf, type Checked } from './checked';
import { eyeOf } from './eye';
import { findingsOf } from './findings';
import { fitOf } from './fit';
import type { Part, Score } from './score';

/** Weights of the parts of a score. Ours, to be tuned with the rules version. */
export const partWeights: Readonly<Record<Part, number>> = {
  order: 0.3,
  checks: 0.25,
  fit: 0.2,
  eye: 0.2,
  economy: 0.05,
};

/** What a Check-off has to reach. Ours. */
export const passLine = { total: 80, order: 0.7, checks: 0.7, fit: 0.7, eye: 0.5, done: 0.98 } as const;

/** Under this share of the checks, speed earns nothing. */
const checksForEconomy = 0.6;

/** Scores an attempt afresh from its acts. The clock never counts, and help costs nothing. */
export const scoreOf = (attempt: Attempt): Score => {
  const verdicts = judgeOrder(attempt);
  const checked = checksOf(attempt);
  const parts = partsOf(attempt, { verdicts, checked });
  const done = doneShare(attempt);
  const cap = capOf(attempt);
  const sound = nothingOpen(attempt);
  const raw = 100 * done * weighted(parts);
  const total = Math.round(Math.min(raw, cap ?? 100) * 100) / 100;
  const score = {
    total,
    parts,
    done,
    sound,
    cap,
    minutes: { used: minutesUsed(attempt), par: parOf(attempt) },
  };
  return { ...score, pass: passes(attempt, score), findings: findingsOf(attempt, { verdicts, checked }) };
};

const partsOf = (
  attempt: Attempt,
  told: { readonly verdicts: readonly Verdict[]; readonly checked: readonly Checked[] },
): Score['parts'] => {
  const order = orderPart(attempt, told.verdicts);
  const checks = checksPart(told.checked);
  const fit = fitOf(attempt);
  const eye = eyeOf(attempt);
  const economy =
    attempt.site.minutes === 0
      ? undefined
      : checks < checksForEconomy
        ? 0
        : Math.min(1, parOf(attempt) / minutesUsed(attempt));
  return {
    ...(order === undefined ? {} : { order }),
    checks,
    ...(fit === undefined ? {} : { fit }),
    ...(eye === undefined ? {} : { eye }),
    ...(economy === undefined ? {} : { economy }),
  };
};

/** 1 less what was lost against what luck would lose; undefined when no rule's later step was done. */
export const orderPart = (attempt: Attempt, verdicts: readonly Verdict[]): number | undefined => {
  const raw = orderBeforeFloor(chanceRows[chanceKey(jobOf(attempt))] ?? {}, verdicts);
  return raw === undefined ? undefined : Math.max(0, raw);
};

/** The plain sum over given rules; each rule's weight is shared by its instances. */
export const orderBeforeFloor = (
  chance: Readonly<Record<string, number>>,
  verdicts: readonly Verdict[],
): number | undefined => {
  let lost = 0;
  let byLuck = 0;
  for (const { id, rework } of orderRules) {
    const own = verdicts.filter(({ rule }) => rule === id);
    if (own.length === 0) continue;
    lost += rework * (own.reduce((sum, v) => sum + v.lost, 0) / own.length);
    byLuck += rework * (chance[id] ?? 0.5);
  }
  return byLuck === 0 ? undefined : 1 - lost / byLuck;
};

const checksPart = (checked: readonly Checked[]): number => {
  const weight = checked.reduce((sum, c) => sum + c.weight, 0);
  return weight === 0 ? 0 : checked.reduce((sum, c) => sum + c.weight * c.credit, 0) / weight;
};

const weighted = (parts: Score['parts']): number => {
  const present = Object.entries(parts) as [Part, number][];
  const weight = present.reduce((sum, [part]) => sum + partWeights[part], 0);
  return weight === 0
    ? 0
    : present.reduce((sum, [part, value]) => sum + partWeights[part] * value, 0) / weight;
};

/** Share of the required members, joints and tails cut that stand finished, without those the learner found so. */
const doneShare = ({ level, site, found }: Attempt): number => {
  const { members, joints, tails } = requiredFor(level, site);
  const there = (at: SiteState): number =>
    members.filter((id) => at.members[id] !== undefined).length +
    joints.filter((joint) => finished(at, joint)).length +
    tails.filter((id) => tailCut(at, id)).length;
  const byCrew = found ? there(found.site) : 0;
  return (there(site) - byCrew) / (members.length + joints.length + tails.length - byCrew);
};

const capOf = ({ site }: Attempt): number | undefined => {
  const caps = [
    ...site.stops.map(({ danger }) => dangerRow(danger)?.cap ?? 49),
    ...(site.down === undefined ? [] : [49]),
  ];
  return caps.length === 0 ? undefined : Math.min(...caps);
};

/** What the work that stands took, without what the crew had spent before the learner came. */
export const ownMinutes = ({
  site,
  found,
}: Pick<Attempt, 'site'> & { readonly found: Attempt['found'] | undefined }): number =>
  site.minutes - (found?.site.minutes ?? 0);

/** Everything spent since the learner came, taken-back work included. */
export const minutesUsed = ({ site, steps, found }: Attempt): number =>
  ownMinutes({ site, found }) +
  steps.filter(({ undone }) => undone).reduce((sum, step) => sum + spentIn(step), 0);

const spentIn = ({ outcome }: Step): number =>
  outcome.ok
    ? outcome.events.reduce((sum, event) => sum + (event.type === 'spent' ? event.minutes : 0), 0)
    : 0;

const parOf = ({ level, site }: Attempt): number => level.par[methodsOf(level, site.agreed).hang] ?? 0;

type Measured = Omit<Score, 'pass' | 'findings'>;

const passes = ({ mode }: Attempt, score: Measured): boolean => mode === 'check-off' && toStandard(score);

/** All that had to be done was done, and nailed. */
export const doneAndSound = ({ done, sound }: Measured): boolean => sound && done >= passLine.done;

/** Good enough to pass, in whatever mode. */
export const toStandard = (score: Measured): boolean => doneAndSound(score) && reachesBars(score);

const reachesBars = ({ total, parts, cap }: Measured): boolean =>
  cap === undefined &&
  total >= passLine.total &&
  (parts.order ?? 1) >= passLine.order &&
  (parts.checks ?? 0) >= passLine.checks &&
  (parts.fit ?? 0) >= passLine.fit &&
  (parts.eye ?? 1) >= passLine.eye;
