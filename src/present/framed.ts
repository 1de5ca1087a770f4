import { againstWall, ridgeCarries, sidesOf, stationsOf, upperStations } from '../core/level/layout';
import type { Level } from '../core/level/level';
import { ends } from '../core/roof/side';
import type { Attempt } from '../core/site/attempt';
import type { SiteEvent } from '../core/site/event';
import { evolve } from '../core/site/evolve';
import { blockId, rafterId } from '../core/site/ids';
import { stayingPosts } from '../core/site/planPosts';
import { begin } from '../core/site/take';

/** The roof as it is meant to be, for the picture on a job's tag: every stick where it was figured, nothing out of true. */
export const framed = (level: Level): Attempt => {
  const ranges = Object.fromEntries(
    Object.keys(level.asFound.ranges).map((key) => [key, 0]),
  ) as Level['asFound']['ranges'];
  const ideal: Level = { ...level, asFound: { ...level.asFound, planted: [], dried: 0, ranges } };
  const start = begin(ideal, 1, 'own');
  return { ...start, site: eventsOf(ideal).reduce(evolve, start.site) };
};

/** The events of a frame in its figured place. */
export const eventsOf = (level: Level): readonly SiteEvent[] => {
  const marks = stationsOf(level);
  const sides = sidesOf(level);
  const on = { A: 0, B: 0 };
  return [
    ...((ridgeCarries(level) || againstWall(level)) && !level.plan.joists
      ? []
      : marks.map((_, i): SiteEvent => ({ type: 'tieSet', member: `joist.${i + 1}` }))),
    ...stayingPosts(level).map((member): SiteEvent => ({ type: 'postSet', member, fixed: 'both', off: 0 })),
    { type: 'madeReady', what: 'platform', at: 'site' },
    { type: 'ridgeLanded', on: 'posts', high: on, aside: on },
    ...sides.flatMap((side) =>
      marks.map((x, i): SiteEvent => ({
        type: 'placed',
        member: rafterId(side, i + 1),
        at: 'mark',
        board: 'board.1',
        x,
      })),
    ),
    ...sides.flatMap((side) =>
      marks.slice(0, -1).map((x, i): SiteEvent => ({
        type: 'placed',
        member: blockId(side, i + 1),
        at: 'drop',
        x: x + level.plan.rafter.thickness / 2,
      })),
    ),
    ...upperStations(level).map((n): SiteEvent => ({
      type: 'placed',
      member: `collar.${n}`,
      at: 'line',
      x: marks[n - 1] ?? 0,
      off: 0,
    })),
    ...(againstWall(level)
      ? []
      : ends.map((end): SiteEvent => ({ type: 'braced', member: `brace.across.${end}` }))),
  ];
};
