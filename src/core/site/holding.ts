import { ledgerJoint, placeOf, rafterId, type JointId, type PostId, type RafterId } from './ids';
import { jointRows } from './jointRows';
import { partsOfJoint } from './ids';
import type { Level } from '../level/level';
import type { Standing } from './standing';
import type { SiteState } from './state';
import { againstWall, middleStations, lastStation, ridgeCarries, sidesOf } from '../level/layout';
import { balanced, stayingPosts } from './planPosts';

/** What carries and holds the ridge right now. Geometry and counting; a frame solver will weigh it. */

export const fastened = (site: Pick<SiteState, 'joints'>, joint: JointId): boolean => {
  const so = site.joints[joint];
  return so !== undefined && so.tacks + so.nails > 0;
};

export const nailedInFull = (site: SiteState, joint: JointId): boolean =>
  (site.joints[joint]?.nails ?? 0) >= jointRows[partsOfJoint(joint).kind].full;

type Sort = 'fastened' | 'nailed';

/** All rafters of a station hold at ridge and heel. */
export const pairHolds = ({ level, site }: Built, station: number, sort: Sort): boolean =>
  sidesOf(level).every((side) => rafterHolds(site, rafterId(side, station), sort));

type Built = Pick<Standing, 'level' | 'site'>;

/** A ledger is fastened to the wall at both its ends. */
export const ledgerHolds = (built: Built): boolean =>
  [1, lastStation(built)].every((station) => fastened(built.site, ledgerJoint(station)));

/** Nails of a ledger are home: it does not move any more. */
export const ledgerNailed = ({ site }: Pick<Standing, 'site'>): boolean =>
  Object.entries(site.joints).some(([joint, so]) => joint.startsWith('ledger:') && (so?.nails ?? 0) > 0);

const rafterHolds = (site: SiteState, id: RafterId, sort: Sort): boolean => {
  const holds = sort === 'nailed' ? nailedInFull : fastened;
  return holds(site, `ridge:${id}`) && holds(site, `heel:${id}`);
};

/** Both end pairs hold. */
export const endPairs = (standing: Standing, sort: Sort): boolean =>
  pairHolds(standing, 1, sort) && pairHolds(standing, lastStation(standing), sort);

/** An opposed pair nailed in the middle third of the ridge. */
export const middleLocked = ({ level, site }: Standing): boolean =>
  middleStations(level).some((n) => pairHolds({ level, site }, n, 'nailed'));

/** A rafter that stands beyond the end pairs and the middle third: what a crew stacks. */
export const beyondLock = (level: Level, id: string): boolean => {
  if (!id.startsWith('rafter.')) return false;
  const station = placeOf(id).station ?? 1;
  return ![1, lastStation({ level }), ...middleStations(level)].includes(station);
};

const posts = (site: SiteState): readonly [PostId, string][] =>
  (Object.entries(site.members) as [string, { how?: string }][])
    .filter(([id]) => id.startsWith('post.'))
    .map(([id, { how }]) => [id as PostId, how ?? 'foot']);

export const postCount = (site: SiteState): number => posts(site).length;

/** Each fixed head and foot: all that the plan has, or else two. */
export const postsFixed = ({ site, level }: Standing): boolean =>
  posts(site).filter(([, how]) => how === 'both').length >= Math.max(2, stayingPosts(level).length);

/** Braced both ways: a side brace at each end, and one along the ridge. */
export const bracedBothWays = (site: SiteState): boolean =>
  site.members['brace.across.A'] !== undefined &&
  site.members['brace.across.B'] !== undefined &&
  site.members['brace.along.1'] !== undefined;

/** What must be true before a machine lets go. */
export const held = (standing: Standing): boolean =>
  endPairs(standing, 'nailed') &&
  middleLocked(standing) &&
  postsFixed(standing) &&
  bracedBothWays(standing.site);

/** Something carries the ridge: a machine, hands, two posts, its wall, or a fastened pair at each end. */
export const carried = (standing: Standing): boolean => {
  const { site } = standing;
  if (!site.ridge) return true;
  if (site.ridge.on === 'machine' && site.sling) return true;
  if (site.ridge.on === 'hands') return true;
  const onPosts = ridgeCarries(standing.level) ? balanced(standing) : postCount(site) >= 2;
  return onPosts || (againstWall(standing.level) ? ledgerHolds(standing) : endPairs(standing, 'fastened'));
};

/** A load is in the air: the ridge hangs in the sling. */
export const loadHangs = (site: SiteState): boolean =>
  site.sling !== undefined && site.ridge?.on === 'machine';
