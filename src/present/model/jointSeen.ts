import { lerp, type Vec3 } from '../../core/geometry/vector';
import { signOf } from '../../core/roof/side';
import { partsOfJoint, placeOf, type BlockId, type RafterId } from '../../core/site/ids';
import type { Shown } from './scheme';

/**
 * Where a joint is seen on the drawing, a little below the top edge of what it fastens. Hands work at its side: for that
 * see `jointPlace` of the crew's places, which other members may hide.
 */
export const jointSeenAt = ({ pose, level, figured }: Framing, joint: string): Vec3 | undefined => {
  const { kind, member } = partsOfJoint(joint);
  const rafter = pose.rafters[member as RafterId];
  if (rafter) {
    const sign = signOf(rafter.side);
    if (kind === 'ridge') return [rafter.x.ridge, sign * rafter.top.out, rafter.top.z - 2];
    return [rafter.x.heel, sign * (rafter.heel.out - 2), rafter.heel.z - 1.5];
  }
  const block = pose.blocks[member as BlockId];
  const { station, side } = placeOf(joint);
  if (kind === 'ledger') return studSeen({ pose, level, figured }, station ?? 1);
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

type Framing = Pick<Shown, 'pose' | 'level' | 'figured'>;

/** On the face of a ledger, before the stud behind a rafter's place. */
const studSeen = ({ pose: { ridge }, level, figured }: Framing, station: number): Vec3 | undefined => {
  if (!ridge) return undefined;
  const { thickness, depth } = level.plan.ridge;
  const x = figured.layout.stations[station - 1] ?? 0;
  const along = (x - ridge.A.x) / (ridge.B.x - ridge.A.x);
  const top = ridge.A.z + along * (ridge.B.z - ridge.A.z);
  return [x, ridge.A.y - thickness / 2, top - depth / 2];
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
