import { sidesOf, stationsOf, upperStations } from '../core/level/layout';
import type { Level } from '../core/level/level';
import { ownMinutes } from '../core/score/scored';
import type { Side } from '../core/roof/side';
import type { Attempt } from '../core/site/attempt';
import { blockId, rafterId } from '../core/site/ids';
import { initialSite } from '../core/site/initial';
import { siteAfter } from '../core/site/take';
import type { SiteState } from '../core/site/state';

/** What stands at a moment worth looking at again: each can be seen on the roof. */
export type Stands =
  | 'walls'
  | 'joists'
  | 'platform'
  | 'ridge'
  | 'pairs'
  | Side
  | 'bothSides'
  | 'blocks'
  | 'collars'
  | 'straps'
  | 'handedOver'
  | 'down';

/** One state of the roof: after so many acts, at so many crew-minutes, and what it is known by. */
export type Shot = { readonly steps: number; readonly minutes: number; readonly stands: Stands };

/** A place on the strip to stop at, `at` shots from its left end; `site` is undefined where only telling it again gives it. */
export type Frame = Shot & { readonly at: number; readonly site: SiteState | undefined };

/** The most states shown in a strip besides the roof as it was found: more would be too small to read. */
const mostShots = 8;
/** Two states that differ by fewer sticks than this look the same in a small picture. Ours. */
const leastChange = 3;
/** A ridge or a platform changes the picture as much as so many sticks. Ours. */
const large = 9;

/** The roof as it was found, the moments at which it became something else to look at, and always the last one. */
export const stripOf = (attempt: Attempt): readonly Shot[] => {
  let moments = reached(attempt);
  const last = moments.length - 1;
  moments = moments.filter((now, i) => {
    const next = moments[i + 1];
    return i === 0 || i >= last - 1 || next === undefined || change(now.site, next.site) >= leastChange;
  });
  while (moments.length > mostShots + 1) moments = withoutLeast(moments);
  return moments.map(({ steps, site, stands }) => ({
    steps,
    minutes: ownMinutes({ site, found: attempt.found }),
    stands,
  }));
};

type Moment = { readonly steps: number; readonly site: SiteState; readonly stands: Stands };

/** Each state at its first time; of those that one act reached the furthest on. */
const reached = ({ level, steps, found: given }: Attempt): readonly Moment[] => {
  const open = new Map(stages(level));
  let site: SiteState = given?.site ?? initialSite;
  const begun = given?.steps ?? 0;
  const [before] = [...open]
    .filter(([, holds]) => holds(site))
    .map(([stands]) => stands)
    .slice(-1);
  let known: Stands = before ?? 'walls';
  const found: Moment[] = steps.length > begun ? [{ steps: begun, site, stands: known }] : [];
  steps.forEach((step, i) => {
    if (i < begun) return;
    site = siteAfter(site, step);
    const met = [...open].filter(([, holds]) => holds(site)).map(([stands]) => stands);
    for (const stands of met) open.delete(stands);
    known = met[met.length - 1] ?? known;
    if (met.length > 0 && i < steps.length - 1) found.push({ steps: i + 1, site, stands: known });
  });
  const end = site.down === undefined ? known : 'down';
  return [...found, { steps: steps.length, site, stands: end }];
};

type Holds = (site: SiteState) => boolean;

/** In the order in which they count where one act reaches two. */
const stages = (level: Level): readonly (readonly [Stands, Holds])[] => {
  const all = stationsOf(level).map((_, i) => i + 1);
  const upper = upperStations(level);
  const sides = sidesOf(level);
  const inPlace =
    (ids: readonly string[]): Holds =>
    ({ members }) =>
      ids.length > 0 && ids.every((id) => id in members);
  const rafters = (side: Side, at = all) => at.map((n) => rafterId(side, n));
  return [
    ['joists', inPlace(all.map((n) => `joist.${n}`))],
    ['platform', ({ ready }) => ready.platform !== undefined],
    ['ridge', ({ ridge }) => ridge !== undefined],
    ['pairs', inPlace(sides.flatMap((side) => rafters(side, [1, all.length])))],
    ...sides.map((side) => [side, inPlace(rafters(side))] as const),
    ...(sides.length > 1 ? [['bothSides', inPlace(sides.flatMap((side) => rafters(side)))] as const] : []),
    ['blocks', inPlace(sides.flatMap((side) => all.slice(0, -1).map((n) => blockId(side, n))))],
    ['collars', inPlace(upper.map((n) => `collar.${n}`))],
    ['straps', inPlace(upper.map((n) => `strap.${n}`))],
    ['handedOver', ({ handedOver }) => handedOver],
  ];
};

/** How much of the picture two states do not share, in sticks. */
const change = (a: SiteState, b: SiteState): number => {
  const only = (one: SiteState, other: SiteState): number =>
    Object.keys(one.members).filter((id) => !(id in other.members)).length;
  const ridge = (a.ridge === undefined) === (b.ridge === undefined) ? 0 : large;
  const platform = (a.ready.platform === undefined) === (b.ready.platform === undefined) ? 0 : large;
  return only(a, b) + only(b, a) + ridge + platform;
};

/** Without the moment that looks most like the one before it; the first and the last stay. */
const withoutLeast = (moments: readonly Moment[]): readonly Moment[] => {
  const changes = moments.map(({ site }, i) => {
    const before = moments[i - 1];
    return before === undefined || i === moments.length - 1 ? Infinity : change(before.site, site);
  });
  const least = changes.indexOf(Math.min(...changes));
  return moments.filter((_, i) => i !== least);
};

/** What can be seen to change from across the yard, as one word. */
const looks = ({ members, ridge, ready, lines, down }: SiteState): string =>
  [
    Object.keys(members).length,
    ridge?.on ?? '',
    ready.platform ?? '',
    Object.keys(lines).join(' '),
    down ?? '',
  ].join('|');

/**
 * Every place where the strip stops: its shots, whatever changed the look of the roof between them, and the moments in
 * `also` (numbers of acts). Told once from the events, nothing decided anew: as cheap as reading the run.
 */
export const framesOf = (attempt: Attempt, also: readonly number[] = []): readonly Frame[] => {
  const shots = stripOf(attempt);
  const { steps, found } = attempt;
  const begun = found?.steps ?? 0;
  const asked = new Set([...also, ...shots.map((shot) => shot.steps)]);
  const later = takenBackLater(attempt);
  let site: SiteState = found?.site ?? initialSite;
  let seen = looks(site);
  const kept: { steps: number; site: SiteState; exact: boolean }[] = [];
  for (let n = begun; n <= steps.length; n++) {
    const step = steps[n - 1];
    if (n > begun && step) site = siteAfter(site, step);
    const exact = !later(n);
    const now = looks(site);
    if (asked.has(n) || (exact && now !== seen)) kept.push({ steps: n, site, exact });
    if (exact) seen = now;
  }
  return kept.map(({ exact, ...frame }, i) => ({
    steps: frame.steps,
    site: exact ? frame.site : undefined,
    minutes: ownMinutes({ site: frame.site, found }),
    stands: [...shots].reverse().find((shot) => shot.steps <= frame.steps)?.stands ?? 'walls',
    at: placeAmong(kept, shots, i),
  }));
};

/** Whether something done by then was taken back only after it: the roof stood with it, and the events have forgotten. */
const takenBackLater =
  ({ steps }: Attempt) =>
  (n: number): boolean =>
    steps.some(({ action, outcome }, i) => action.type === 'undo' && outcome.ok && i >= n && action.step < n);

/** Shots lie one apart; what is between two of them is spread evenly. */
const placeAmong = (
  frames: readonly { readonly steps: number }[],
  shots: readonly Shot[],
  i: number,
): number => {
  const here = frames[i]?.steps ?? 0;
  const left = shots.findLastIndex(({ steps }) => steps <= here);
  const from = frames.findIndex(({ steps }) => steps === shots[left]?.steps);
  const to = frames.findIndex(({ steps }) => steps === shots[left + 1]?.steps);
  return to < 0 ? left : left + (i - from) / (to - from);
};
