import type { Level } from '../level/level';
import type { Action, Of } from './action';
import type { Attempt, Decision, Step } from './attempt';
import type { Mode } from '../level/mode';
import { expand } from './carryOn';
import { decide } from './decide';
import { refuse } from './decision';
import type { SiteEvent } from './event';
import { evolve } from './evolve';
import { initialSite } from './initial';
import type { DangerId } from './dangers/danger';
import { isOver, type SiteState } from './state';

/** An attempt is a story: a level, a seed and the acts in order. Everything else is told from them. */

export const begin = (level: Level, seed: number, mode: Mode): Attempt => ({
  level,
  seed,
  mode,
  steps: [],
  site: initialSite,
});

/** What would come of an act, asked for before the deed. */
export const would = (attempt: Attempt, action: Action): Decision => {
  if (action.type === 'undo') return wouldUndo(attempt, action);
  return action.type === 'carryOn' ? carriedOn(attempt, action) : decide(attempt, action);
};

/** The attempt with one more act. A refusal and a stop stay in the record too. */
export const take = (attempt: Attempt, action: Action): Attempt => {
  const outcome = would(attempt, action);
  const step: Step = { action, outcome };
  const steps = [...attempt.steps, step];
  if (action.type === 'undo' && outcome.ok)
    return retold({ ...attempt, steps: markUndone(steps, action.step) }, action.step);
  return { ...attempt, steps, site: after(attempt.site, step) };
};

const after = (site: SiteState, { action, outcome }: Step): SiteState => {
  if (outcome.ok) return outcome.events.reduce(evolve, site);
  if (!outcome.stop) return site;
  return evolve(site, { type: 'stopped', danger: outcome.why as DangerId, action: action.type });
};

/** Practice only, and as long as the run goes on: an own step that happened and was not taken back yet. */
const wouldUndo = ({ mode, steps, site, found: given }: Attempt, { step }: Of<'undo'>): Decision => {
  if (mode === 'check-off') return refuse('noUndoInCheckOff');
  if (isOver(site)) return refuse('over');
  const found = steps[step];
  if (
    step < (given?.steps ?? 0) ||
    !found ||
    found.undone ||
    !found.outcome.ok ||
    found.action.type === 'undo'
  )
    return refuse('nothingToUndo');
  return { ok: true, events: [] };
};

const markUndone = (steps: readonly Step[], at: number): readonly Step[] =>
  steps.map((step, i) => (i === at ? { ...step, undone: true } : step));

/**
 * Told again without what was undone. What came before it stays as it was told; acts after it that no longer fit are
 * refused in the telling. Stops stay.
 */
const retold = (attempt: Attempt, from: number): Attempt => {
  const before = attempt.steps.slice(0, from);
  const start = before.reduce(siteAfter, initialSite);
  return attempt.steps.slice(from).reduce<Attempt>(
    (told, step) => {
      if (silent(step)) return { ...told, steps: [...told.steps, step] };
      const next = { ...step, outcome: would(told, step.action) };
      return { ...told, steps: [...told.steps, next], site: after(told.site, next) };
    },
    { ...attempt, steps: before, site: start },
  );
};

/** The site after a step that was told already. */
export const siteAfter = (site: SiteState, step: Step): SiteState =>
  silent(step) ? site : after(site, step);

/** What was taken back, and the taking back itself, does nothing to the site. */
const silent = ({ undone, action }: Step): boolean => undone === true || action.type === 'undo';

/** The crew does what it was shown, station by station, until something stops it. The first act must go. */
const carriedOn = (attempt: Attempt, action: Of<'carryOn'>): Decision => {
  const acts = expand(attempt.steps, action);
  if (!acts) return refuse('patternDoesNotFit');
  const events: SiteEvent[] = [];
  let site = attempt.site;
  for (const act of acts) {
    const decided = decide({ ...attempt, site }, act);
    if (!decided.ok)
      return events.length > 0 ? { ok: true, events: withStop(events, decided, act) } : decided;
    events.push(...decided.events);
    site = decided.events.reduce(evolve, site);
  }
  return { ok: true, events };
};

const withStop = (
  events: readonly SiteEvent[],
  no: Exclude<Decision, { ok: true }>,
  act: Action,
): readonly SiteEvent[] =>
  no.stop ? [...events, { type: 'stopped', danger: no.why as DangerId, action: act.type }] : events;
