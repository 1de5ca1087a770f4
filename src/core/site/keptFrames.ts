import type { Level } from '../level/level';
import { fastened } from './holding';
import { blockEndsOf, partsOfJoint, type BlockId, type JointId, type MemberId } from './ids';
import type { Standing } from './standing';
import type { Nailing, Placed, SiteState } from './state';

/** Frames that were solved: found again by the site, by the parts of it that count, or by what these parts say. */

/** What a site's frame was kept under. */
type Known = { readonly standing: Standing; readonly key: string };

/** Solves each frame once while it is kept: asking before the deed, doing it and scoring it cost one solution. */
export const keptFrames = <T>({ solve, linksIn }: Solver<T>): ((standing: Standing) => T) => {
  const bySite = new WeakMap<SiteState, Known>();
  const byJoints = new WeakMap<SiteState['joints'], Known>();
  const frames = new Map<string, T>();
  let links = 0;
  const keyOf = (standing: Standing): string => {
    const { site } = standing;
    const [near, alike] = [bySite.get(site), byJoints.get(site.joints)];
    if (near && sameRoof(near.standing, standing)) return near.key;
    const same = alike && sameRoof(alike.standing, standing) && sameParts(alike.standing.site, site);
    const known = same ? alike : { standing, key: makeUpOf(standing) };
    bySite.set(site, known);
    byJoints.set(site.joints, known);
    return known.key;
  };
  const fresh = (key: string, standing: Standing): T => {
    const frame = solve(standing);
    frames.set(key, frame);
    links += linksIn(frame);
    for (const [oldest, its] of frames) {
      if (links <= mostLinks || oldest === key) break;
      links -= linksIn(its);
      frames.delete(oldest);
    }
    return frame;
  };
  return (standing) => {
    const key = keyOf(standing);
    return frames.get(key) ?? fresh(key, standing);
  };
};

type Solver<T> = { readonly solve: (standing: Standing) => T; readonly linksIn: (frame: T) => number };

/** So many links of frames are kept and the oldest given up first: about what one whole run of a small roof makes. */
const mostLinks = 60_000;

const sameRoof = (a: Standing, b: Standing): boolean => a.level === b.level && a.seed === b.seed;

const sameParts = (a: SiteState, b: SiteState): boolean =>
  a.members === b.members &&
  a.joints === b.joints &&
  a.rests === b.rests &&
  a.ridge === b.ridge &&
  a.mends === b.mends &&
  a.trims === b.trims &&
  a.splits === b.splits &&
  (a.sling === undefined) === (b.sling === undefined);

const levels = new WeakMap<Level, number>();
let levelsSeen = 0;

/** All that a frame is made of, in words: two sites that say the same stand the same. */
const makeUpOf = ({ level, seed, site }: Standing): string => {
  const known = levels.get(level) ?? ++levelsSeen;
  levels.set(level, known);
  const { members, joints, rests, ridge, mends, trims, sling, splits } = site;
  const other = JSON.stringify([ridge, mends, trims, sling !== undefined, splits]);
  return [`${known}|${seed}`, standsIn(members), holdsIn(joints), toldOf(rests), other].join('|');
};

/** Looked up by the part itself: an act leaves most parts of a site as they were. Joined, not added up: sums keep their parts. */
const written = <T extends object>(write: (part: T) => string): ((part: T) => string) => {
  const known = new WeakMap<T, string>();
  return (part) => {
    const before = known.get(part);
    if (before !== undefined) return before;
    const fresh = write(part);
    known.set(part, fresh);
    return fresh;
  };
};

const standsIn = written((members: SiteState['members']) => {
  const said: string[] = [];
  for (const id in members) {
    if (idle(id)) continue;
    const { board, how, off } = members[id as MemberId] as Placed;
    said.push(`${id} ${board} ${how} ${off}`);
  }
  return said.join('|');
});

/** A block or strap does nothing before it is nailed. */
const idle = (id: string): boolean => id.startsWith('block.') || id.startsWith('strap.');

const holdsIn = written((joints: SiteState['joints']) => {
  const said: string[] = [];
  for (const joint in joints) {
    const { nails, tacks } = joints[joint as JointId] as Nailing;
    if (counts(joints, joint)) said.push(joint, `${nails} ${tacks}`);
  }
  return said.join('|');
});

/** An end of a block holds nothing until the block is nailed to the plate, and the plate's nails nothing without an end. */
const counts = (joints: SiteState['joints'], joint: string): boolean => {
  if (!joint.startsWith('block')) return true;
  const { kind, member } = partsOfJoint(joint);
  if (kind === 'blockEnd') return fastened({ joints }, `blockPlate:${member as BlockId}`);
  return blockEndsOf(member as BlockId).some((end) => fastened({ joints }, end));
};

const toldOf = written((rests: SiteState['rests']) => {
  const said: string[] = [];
  for (const name in rests) said.push(name, numbersIn(rests[name] as readonly number[]));
  return said.join('|');
});

const numbersIn = written((rest: readonly number[]) => rest.join(' '));
