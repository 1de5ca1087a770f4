import { lerp, type Vec3 } from '../../core/geometry/vector';
import { signOf } from '../../core/roof/side';
import { partsOfJoint, placeOf, type BlockId, type RafterId } from '../../core/site/ids';
import type { Shown } from './scheme';

type Seen = Pick<Shown, 'pose' | 'level' | 'figured'>;

/**
 * Where a joint is seen on the drawing, a little below the top edge of what it fastens. Hands work at its side: for that
 * see `jointPlace` of the crew's places, which other members may hide.
 */
export const jointSeenAt = ({ pose, level, figured }: Seen, joint: string): Vec3 | undefined => {
  const { kind, member } = partsOfJoint(joint);
  if (kind === 'ledger') return onLedger({ pose, level, figured }, placeOf(joint).station ?? 1);
  const rafter = pose.rafters[member as RafterId];
  if (rafter) {
    const sign = signOf(rafter.side);
    if (kind === 'ridge') return [rafter.x.ridge, sign * rafter.top.out, rafter.top.z - 2];
    return [rafter.x.heel, sign * (rafter.heel.out - 2), rafter.heel.z - 1.5];
  }
  const block = pose.blocks[member as BlockId];
  const { station, side } = placeOf(joint);
  if (block) {
    const inBay = joint.endsWith('.far') ? 1 : joint.endsWith('.near') ? 0 : 0.5;
    const near = pose.rafters[`rafter.${block.side}.${block.bay}`];
    const far = pose.rafters[`rafter.${block.side}.${block.bay + 1}`];
    if (!near || !far) return undefined;
    const end = (r: typeof near): Vec3 => [r.x.heel, signOf(r.side) * (r.heel.out - 1), r.heel.z - 2];
    return lerp(end(near), end(far), inBay);
  }
  if (member.startsWith('collar.')) return collarEnd(pose, station ?? 1, side ?? 'street');
  if (/^(joist|rafterTie|crossTie)\./.test(member)) {
    const x = figured.layout.stations[(station ?? 1) - 1] ?? 0;
    return [x, signOf(side ?? 'street') * (level.plan.span / 2 - 2), 3];
  }
  return undefined;
};

/** On the face that its nails go in by. */
const onLedger = ({ pose, level, figured }: Seen, station: number): Vec3 | undefined => {
  const { ridge } = pose;
  if (!ridge) return undefined;
  const { thickness } = level.plan.ridge;
  const x = figured.layout.stations[station - 1] ?? 0;
  const [, y, z] = lerp([0, ridge.A.y, ridge.A.z], [0, ridge.B.y, ridge.B.z], x / level.plan.length);
  return [x, y - thickness / 2, z - 2];
};

const collarEnd = (pose: Shown['pose'], station: number, side: 'street' | 'yard'): Vec3 | undefined => {
  const rafter = pose.rafters[`rafter.${side}.${station}`];
  if (!rafter) return undefined;
  const sign = signOf(side);
  return lerp(
    [rafter.x.heel, sign * rafter.heel.out, rafter.heel.z],
    [rafter.x.ridge, sign * rafter.top.out, rafter.top.z],
    2 / 3,
  );
};
