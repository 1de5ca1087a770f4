import type { Attempt } from '../../site/attempt';
import type { SiteEvent } from '../../site/event';
import { evolve } from '../../site/evolve';
import { initialSite } from '../../site/initial';
import type { Standing } from '../../site/standing';
import type { SiteState } from '../../site/state';
import type { Want, Way } from './want';

/** When one way of a check could be gone: event numbers, −1 where that never came. */
export type Window = {
  readonly way: Way;
  /** The last time it opened before it closed: what was read earlier was of another state of things. */
  readonly opened: number;
  readonly closed: number;
  /** Step in which it closed. */
  readonly step: number | undefined;
  /** Whether what the check is about was right just before it closed, or at the end. */
  readonly right: boolean;
};

type Watch = Window & { readonly want: Want; readonly open: boolean };
type Moment = { readonly before: Standing; readonly now: Standing; readonly step: number };

/** Tells the attempt once and notes when each way of each want opened and closed. */
export const windowsOf = (attempt: Attempt, wants: readonly Want[]): ReadonlyMap<Want, readonly Window[]> => {
  const at = (site: SiteState): Standing => ({ level: attempt.level, seed: attempt.seed, site });
  let site: SiteState = initialSite;
  const start: Moment = { before: at(site), now: at(site), step: 0 };
  const watches = wants.flatMap((want) => want.ways.map((way) => watched(unopened(want, way), start)));
  attempt.steps.forEach(({ outcome, undone }, step) => {
    if (!outcome.ok || undone) return;
    for (const event of outcome.events) {
      const before = at(site);
      site = evolve(site, event);
      const now = at(site);
      if (!moves(event)) continue;
      for (let i = 0; i < watches.length; i++)
        watches[i] = watched(watches[i] as Watch, { before, now, step });
    }
  });
  const end = at(site);
  const ended = watches.map((watch) =>
    watch.closed < 0 ? { ...watch, right: watch.want.right(end) } : watch,
  );
  return new Map(wants.map((want) => [want, ended.filter((watch) => watch.want === want)]));
};

const unopened = (want: Want, way: Way): Watch => ({
  want,
  way,
  opened: -1,
  closed: -1,
  step: undefined,
  right: false,
  open: false,
});

/** Saying, judging and spending move nothing. */
const moves = ({ type }: SiteEvent): boolean => !still.has(type);
const still: ReadonlySet<SiteEvent['type']> = new Set<SiteEvent['type']>([
  'wasRead',
  'judged',
  'spent',
  'agreed',
  'stood',
  'stopped',
]);

/** What a watch knows a moment later; once closed it stays so. */
const watched = (watch: Watch, { before, now, step }: Moment): Watch => {
  if (watch.closed >= 0) return watch;
  if (watch.way.closes(now))
    return { ...watch, closed: now.site.told, step, right: watch.want.right(before) };
  const open = watch.way.opens(now);
  if (open === watch.open) return watch;
  return { ...watch, open, opened: open ? now.site.told : watch.opened };
};
