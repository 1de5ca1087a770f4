import type { PlannedAction } from '../core/order/crew/view';
import type { Finding } from '../core/score/score';
import { partsOfJoint } from '../core/site/ids';
import type { Attempt, Step } from '../core/site/attempt';
import { siteAfter } from '../core/site/take';
import { initialSite } from '../core/site/initial';
import type { SiteState } from '../core/site/state';
import { doneWell } from './doneWell';
import { stepMember } from './stepText';

/** One thing the talk after work is about: what, how often, where in the run, and on which member. */
export type Told = {
  /** The first of its kind, with the crew-minutes of all of them. */
  readonly finding: Finding;
  readonly times: number;
  /** So many acts had been done when it came: going back begins there. Undefined where it lies nowhere in the run. */
  readonly step: number | undefined;
  /** What to look at on the drawing, where it is one thing. */
  readonly member: string | undefined;
};

/** The costliest of a run, the dearest first, and one thing that was done well. */
export type AfterWork = { readonly costly: readonly Told[]; readonly good: Told | undefined };

/** How many costly things are talked about: the rest is in the punch list and in the parts. */
export const mostTold = 3;

/** `findings` as the score has them. What is open after a fall is no news: the fall is told. */
export const afterWork = (attempt: Attempt, findings: readonly Finding[]): AfterWork => {
  const fell = attempt.site.down !== undefined;
  const costly = alike(findings.filter(({ kind }) => kind !== 'good' && !(fell && kind === 'state')))
    .sort((a, b) => danger(b) - danger(a) || minutesOf(b) - minutesOf(a))
    .slice(0, mostTold);
  const good = doneWell(attempt, findings);
  return {
    costly: costly.map((all) => toldOf(attempt, all)),
    good: good && toldOf(attempt, [good]),
  };
};

/** The fall before what a stop costs, and both before what only takes time. */
const danger = ([first]: readonly Finding[]): number =>
  first?.kind !== 'safety' ? 0 : first.code === 'cameDown' ? 2 : 1;

const minutesOf = (all: readonly Finding[]): number => all.reduce((sum, { minutes }) => sum + minutes, 0);

/** The same mistake made again is one thing to talk about. */
const alike = (findings: readonly Finding[]): (readonly Finding[])[] => {
  const groups = new Map<string, Finding[]>();
  for (const finding of findings) {
    const key = `${finding.kind} ${finding.code} ${finding.kind === 'safety' ? (finding.at ?? '') : ''}`;
    groups.set(key, [...(groups.get(key) ?? []), finding]);
  }
  return [...groups.values()];
};

const toldOf = (attempt: Attempt, all: readonly Finding[]): Told => {
  const dated = all
    .map((finding) => ({ finding, step: stepOf(attempt, finding) }))
    .sort((a, b) => (a.step ?? Infinity) - (b.step ?? Infinity));
  const first = dated[0] as (typeof dated)[number];
  return {
    finding: { ...first.finding, minutes: minutesOf(all) },
    times: first.finding.numbers['count'] ?? all.length,
    step: first.step,
    member: memberOf(attempt, first.finding, first.step),
  };
};

/** Where in the run it lies: the score knows for most; for the rest, the deed by which it came to stay. */
const stepOf = (attempt: Attempt, finding: Finding): number | undefined => {
  const own = attempt.found?.steps ?? 0;
  const { kind, step, at = '' } = finding;
  const found =
    step ??
    (kind === 'state'
      ? attempt.steps.length - 1
      : kind === 'eye'
        ? (calledAt(attempt, at) ?? usedAt(attempt, at))
        : kind === 'fit'
          ? lastTouched(attempt, at)
          : undefined);
  return found !== undefined && found >= own ? found : undefined;
};

const done = ({ outcome, undone }: Step): boolean => outcome.ok && undone !== true;

const calledAt = ({ steps }: Attempt, subject: string): number | undefined =>
  index(
    steps.findIndex((step) => done(step) && step.action.type === 'judge' && step.action.subject === subject),
  );

/** A board where it goes up, the ridge and a plate where the ridge does. */
const usedAt = ({ steps }: Attempt, subject: string): number | undefined => {
  let site: SiteState = initialSite;
  const uses = (): boolean =>
    /^board\.\d/.test(subject)
      ? Object.values(site.members).some((placed) => placed?.board === subject)
      : site.ridge !== undefined;
  return index(
    steps.findIndex((step) => {
      site = siteAfter(site, step);
      return uses();
    }),
  );
};

/** The last deed on it: nothing was put right after that. */
const lastTouched = ({ steps }: Attempt, at: string): number | undefined => {
  const thing = memberIn(at);
  const touched = (step: Step): boolean =>
    done(step) && step.action.type !== 'read' && stepMember(step.action as PlannedAction) === thing;
  return index(steps.findLastIndex(touched));
};

const index = (found: number): number | undefined => (found < 0 ? undefined : found);

/** The member in the name of a place, of a joint or of a fact. */
const memberIn = (at: string): string => {
  const bare = at.replace(/^(out|tack|tail):/, '');
  return bare.includes(':') ? partsOfJoint(bare).member : bare;
};

/** What the drawing can show of it: a board is shown where it went up. */
const memberOf = (
  { steps, site }: Attempt,
  { kind, at = '' }: Finding,
  step: number | undefined,
): string | undefined => {
  const action = step === undefined ? undefined : steps[step]?.action;
  const acted = action && kind !== 'state' ? stepMember(action as PlannedAction) : '';
  const named = kind === 'check' || kind === 'safety' || kind === 'good' ? acted : memberIn(at);
  const board = Object.entries(site.members).find(([, placed]) => placed?.board === named)?.[0];
  const id = board ?? named;
  return /^(ridge$|rafter|block|joist|rafterTie|crossTie|collar|strap|post|brace)/.test(id) ? id : undefined;
};

/** A told thing that lies in the run, with what it is called by on the strip, and how many acts make its picture. */
export type Mark = { readonly label: string; readonly told: Told; readonly shows: number };

/** How the good one is called; a sign and a word stand for it. */
export const goodLabel = 'good';

/** The costly ones numbered as they are told, then the good one. */
export const marksOf = ({ steps }: Pick<Attempt, 'steps'>, { costly, good }: AfterWork): readonly Mark[] =>
  [
    ...costly.map((told, i) => ({ label: String(i + 1), told })),
    ...(good ? [{ label: goodLabel, told: good }] : []),
  ].flatMap(({ label, told }): readonly Mark[] =>
    told.step === undefined ? [] : [{ label, told, shows: showsAfter(steps, told.step) }],
  );

/** The picture shows what the deed did; of what was taken out there would be nothing to see. */
const showsAfter = (steps: readonly Step[], step: number): number => {
  const { action, outcome } = steps[step] ?? {};
  const fell = outcome?.ok === true && outcome.events.some(({ type }) => type === 'cameDown');
  return action?.type === 'takeOut' && !fell ? step : step + 1;
};
