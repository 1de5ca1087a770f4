import { spread } from '../level/draw';
import { postPlaces, ridgeCarries } from '../level/layout';
import type { PostId } from './ids';
import type { Standing } from './standing';
import type { SiteState } from './state';
import type { Level } from '../level/level';

/**
 * Posts of a ridge that carries as a beam. They are the plan's, stand on footings and stay. Of any other ridge posts are
 * props: two, on the floor, taken out at the end.
 */

type Built = { readonly level: Level; readonly site: Pick<SiteState, 'members'> };

export const postId = (n: number): PostId => `post.${n}`;

export const postIds = (level: Level): readonly PostId[] => postPlaces(level).map((_, i) => postId(i + 1));

/** The plan's posts, which are part of the finished roof. None where the ridge is a board. */
export const stayingPosts = (level: Level): readonly PostId[] => (ridgeCarries(level) ? postIds(level) : []);

/** The post nearest an end of the ridge. */
export const endPost = (level: Level, end: 'A' | 'B'): PostId =>
  postId(end === 'A' ? 1 : postPlaces(level).length);

type Head = { readonly x: number; readonly off: number };

/** Those that stand, from A to B, and how far each was cut over (+) or under its figure. */
const heads = ({ level, site }: Built): readonly Head[] =>
  postPlaces(level).flatMap((x, i) => {
    const placed = site.members[postId(i + 1)];
    return placed ? [{ x, off: placed.off ?? 0 }] : [];
  });

/** On the straight line through the first and the last of some heads; 0 where there are none. */
const onLine = (all: readonly Head[], x: number): number => {
  const [first, last] = [all[0], all[all.length - 1]];
  if (!first || !last) return 0;
  return first.x === last.x
    ? first.off
    : first.off + ((last.off - first.off) * (x - first.x)) / (last.x - first.x);
};

/** How far a head between the outer two stands over (+) or under the line from the one to the other. */
export const offLine = (built: Built, x: number): number => {
  const all = heads(built);
  const own = all.find((head) => head.x === x);
  return own ? own.off - onLine(all, x) : 0;
};

/** What a post is cut over its figure that is fitted under a ridge standing so far off the line of its ends there. */
export const fittedOff = (built: Built, x: number, over: number): number => {
  const others = heads(built).filter((head) => head.x !== x);
  const [first, last] = [others[0], others[others.length - 1]];
  const between = first !== undefined && last !== undefined && first.x < x && x < last.x;
  return onLine(others, x) + (between ? over : 0);
};

/** A ridge lies on posts on both sides of its middle without anybody's hand. */
export const balanced = (built: Built): boolean => {
  const xs = heads(built).map(({ x }) => x);
  const middle = built.level.plan.length / 2;
  return xs.length >= 2 && Math.min(...xs) < middle && Math.max(...xs) > middle;
};

/**
 * Where a ridge laid on them stands at its two ends, above (+) its figure: in line with the first and the last. Footings
 * are as level as the plates are; what stands between those two is cut to a line from head to head.
 */
export const laidOn = (standing: Standing): { readonly A: number; readonly B: number } => {
  const { level, seed } = standing;
  const range = level.asFound.ranges.plateHeight;
  const all = heads(standing).map(({ x, off }): Head => ({
    x,
    off: off + spread({ seed, place: postId(postPlaces(level).indexOf(x) + 1), purpose: 'footing' }, range),
  }));
  return { A: onLine(all, 0), B: onLine(all, level.plan.length) };
};
