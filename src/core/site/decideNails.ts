import { againstWall, lastStation } from '../level/layout';
import { across, type Side } from '../roof/side';
import type { Of } from './action';
import type { Decision } from './attempt';
import { happen, refuse, stop } from './decision';
import { heldByHand } from './decideRidge';
import { partsOfJoint, placeOf, rafterId, type BlockId, type JointId, type RafterId } from './ids';
import { jointRows, reachOf } from './jointRows';
import { uniform } from '../level/draw';
import { blockGap, gapsAt } from './posed';
import type { Standing } from './standing';

/** Acts with nails: tack, nail off, draw. */

export const decideTack = (standing: Standing, { joint, nails }: Of<'tack'>): Decision => {
  const no = reachable(standing, joint, reachOf.tack);
  if (no) return no;
  const so = standing.site.joints[joint];
  if ((so?.nails ?? 0) > 0 || (so?.tacks ?? 0) > 0) return refuse('alreadyNailed');
  if (!(nails >= 1 && nails <= 3 && Number.isInteger(nails))) return refuse('oneToThreeTacks');
  return happen({ type: 'tacked', joint, nails });
};

export const decideNailOff = (standing: Standing, { joint }: Of<'nailOff'>): Decision => {
  const no = reachable(standing, joint, reachOf.nail);
  if (no) return no;
  const { full } = jointRows[partsOfJoint(joint).kind];
  if ((standing.site.joints[joint]?.nails ?? 0) >= full) return refuse('alreadyNailed');
  if (standing.site.ready.gear === undefined) return stop('bumpTrigger');
  return happen({ type: 'nailed', joint, nails: full });
};

/** Undefined when a nail reaches: both sides stand, the faces are near enough, and no hand is in line. */
const reachable = (standing: Standing, joint: JointId, reach: number): Decision | undefined => {
  const { site } = standing;
  const { kind, member } = partsOfJoint(joint);
  if (!(kind in jointRows) || !site.members[member]) return refuse('noSuchJoint');
  if (kind === 'ledger' && !hasStud(standing, joint)) return refuse('noSuchJoint');
  if (kind === 'heelTie' && !tied(standing, member)) return refuse('nothingToNailInto');
  if (kind === 'blockEnd' && joint.endsWith('.far') && !farStands(standing, member))
    return refuse('nothingToNailInto');
  if (apartAt(standing, joint) > reach) return refuse('nothingToNailInto');
  return kind === 'ridge' && handBehind(standing, member as RafterId) ? stop('handBehind') : undefined;
};

/** The wall behind a ledger has a stud at every rafter's place. */
const hasStud = ({ level }: Standing, joint: JointId): boolean => {
  const { station = 0 } = placeOf(joint);
  return againstWall(level) && station >= 1 && station <= lastStation({ level });
};

const tied = ({ site }: Standing, member: string): boolean => {
  const { station } = placeOf(member);
  return (
    site.members[`joist.${station ?? 0}`] !== undefined ||
    site.members[`rafterTie.${station ?? 0}`] !== undefined
  );
};

const farStands = ({ site }: Standing, member: string): boolean => {
  const { side, station } = placeOf(member);
  return (
    side !== undefined && station !== undefined && site.members[rafterId(side, station + 1)] !== undefined
  );
};

/** Nails through the ridge come out where the mate is held by hand. */
const handBehind = ({ site }: Standing, member: RafterId): boolean => {
  const { side, station } = placeOf(member) as { side: Side; station: number };
  return heldByHand(site, rafterId(across(side), station));
};

/** How far apart the faces of a joint stand where the nails go, inches. */
export const apartAt = (standing: Standing, joint: JointId): number => {
  const { kind, member } = partsOfJoint(joint);
  if (kind === 'blockEnd') return joint.endsWith('.far') ? (blockGap(standing, member as BlockId) ?? 0) : 0;
  if (kind !== 'heel' && kind !== 'ridge') return 0;
  const gaps = gapsAt(standing, member as RafterId);
  if (!gaps) return 0;
  return kind === 'heel' ? gaps.seat : Math.min(gaps.plumbTop, gaps.plumbBottom);
};

/** Chance that a nail drawn from a finished joint splits the end it was in. Ours. */
const splitChance = 0.1;

export const decideDraw = ({ site, seed }: Standing, { joint, nails }: Of<'draw'>): Decision => {
  const so = site.joints[joint];
  if (!so || so.tacks + so.nails === 0) return refuse('noNailsThere');
  if (!(nails >= 1 && nails <= so.tacks + so.nails && Number.isInteger(nails))) return refuse('noNailsThere');
  const home = nails > so.tacks;
  const split = home && uniform(seed, joint, `draw.${site.told}`) < splitChance;
  return happen({ type: 'drawn', joint, nails, split });
};
