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

type Watched = { -readonly [K in keyof Window]: Window[K] } & { open: boolean; readonly want: Want };

/** Tells the attempt once and notes when each way of each want opened and closed. */
export const windowsOf = (attempt: Attempt, wants: readonly Want[]): ReadonlyMap<Want, readonly Window[]> => {
  const watched = wants.flatMap((want) =>
    want.ways.map((way): Watched => ({
      want,
      way,
      opened: -1,
      closed: -1,
      step: undefined,
      right: false,
      open: false,
    })),
  );
  const at = (site: SiteState): Standing => ({ level: attempt.level, seed: attempt.seed, site });
  let site: SiteState = initialSite;
  for (const one of watched) watch(one, { before: at(site), now: at(site), step: 0 });
  attempt.steps.forEach(({ outcome, undone }, step) => {
    if (!outcome.ok || undone) return;
    for (const event of outcome.events) {
      const before = at(site);
      site = evolve(site, event);
      if (moves(event)) for (const one of watched) watch(one, { before, now: at(site), step });
    }
  });
  for (const one of watched) if (one.closed < 0) one.right = one.want.right(at(site));
  return new Map(wants.map((want) => [want, watched.filter((one) => one.want === want)]));
};

/** Saying, judging and spending move nothing. */
const moves = ({ type }: SiteEvent): boolean =>
  !['wasRead', 'judged', 'spent', 'agreed', 'stood', 'stopped'].includes(type);

const watch = (
  one: Watched,
  { before, now, step }: { readonly before: Standing; readonly now: Standing; readonly step: number },
): void => {
  if (one.closed >= 0) return;
  if (one.way.closes(now)) {
    one.closed = now.site.told;
    one.step = step;
    one.right = one.want.right(before);
    return;
  }
  const open = one.way.opens(now);
  if (open && !one.open) one.opened = now.site.told;
  one.open = open;
};
