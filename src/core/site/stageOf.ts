import { againstWall, lastStation, middleOf, middleStations, sidesOf } from '../level/layout';
import type { Level } from '../level/level';
import type { Stage } from '../level/stages';
import { partsOfJoint, placeOf, rafterId, type JointId, type MemberId } from './ids';
import type { SiteState } from './state';

/** What of a site says which stage a thing belongs to. */
export type Built = {
  readonly level: Level;
  readonly site: Pick<SiteState, 'members'>;
};

/** The stage in which a crew puts a member up. */
export const stageOfMember = (built: Built, id: MemberId): Stage => {
  const kind = id.split('.', 2).join('.');
  if (id === 'ridge' || kind.startsWith('post')) return 'ridge';
  if (kind === 'brace.wall' || kind.startsWith('joist') || kind.startsWith('rafterTie')) return 'ground';
  if (kind.startsWith('brace')) return 'hold';
  if (kind.startsWith('block')) return 'stack';
  return kind.startsWith('rafter') ? stageOfRafter(built, placeOf(id).station ?? 1) : 'close';
};

/** The stage in which a joint gets its full count. */
export const stageOfJoint = (built: Built, joint: JointId): Stage => {
  const { kind, member } = partsOfJoint(joint);
  if (kind === 'ledger') return 'hold';
  if (kind === 'ridge' || kind === 'heel') return stageOfRafter(built, placeOf(member).station ?? 1);
  return kind === 'heelTie' || kind.startsWith('block') ? 'stack' : 'close';
};

const stageOfRafter = ({ level, site }: Built, station: number): Stage => {
  if (station === 1 || station === lastStation({ level })) return 'ridge';
  return !againstWall(level) && station === lockOf({ level, site }) ? 'hold' : 'stack';
};

/** The pair that locks the middle: the first of the middle third that stands, else the one a crew would take. */
const lockOf = ({ level, site }: Built): number =>
  middleStations(level).find((n) => sidesOf(level).every((side) => site.members[rafterId(side, n)])) ??
  middleOf(level);
