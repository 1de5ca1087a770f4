import type { Vec2, Vec3 } from '../../core/geometry/vector';
import type { BlockPose, Pose, RafterPose } from '../../core/site/pose';
import { placeOf } from '../../core/site/ids';
import { signOf } from '../../core/roof/side';
import { plateAt } from '../../core/site/truePlate';
import { prism } from './prism';
import { rafterSolid } from './rafterShape';
import type { Scheme, Shown } from './scheme';
import type { Solid } from './solid';

/** The ridge, the rafters and the blocks, where they really are. */
export const roofSolids = (shown: Shown, scheme: Scheme): readonly Solid[] => [
  ...ridgeSolids(shown),
  ...Object.entries(shown.pose.rafters).map(([id, rafter]) => rafterOf(shown, scheme, [id, rafter])),
  ...Object.entries(shown.pose.blocks).flatMap(([id, block]) => blockOf(shown, scheme, [id, block])),
];

const ridgeSolids = ({ level, pose }: Shown): readonly Solid[] => {
  const { ridge } = pose;
  if (!ridge) return [];
  const { thickness: t, depth } = level.plan.ridge;
  const outline: readonly Vec2[] = [
    [-t / 2, -depth],
    [t / 2, -depth],
    [t / 2, 0],
    [-t / 2, 0],
  ];
  const place = ([y, z]: Vec2, k: 0 | 1): Vec3 => {
    const end = k === 0 ? ridge.A : ridge.B;
    return [end.x, end.y + y, end.z + z];
  };
  return [prism({ id: 'ridge', role: 'ridge', selectable: true, seed: 7 }, { outline, place })];
};

const rafterOf = (
  { level, site }: Shown,
  scheme: Scheme,
  [id, rafter]: readonly [string, RafterPose],
): Solid =>
  rafterSolid({
    id,
    rafter,
    scheme,
    thickness: level.plan.rafter.thickness,
    overhang: level.plan.overhang,
    seatTrim: site.trims[rafter.board]?.seat ?? 0,
  });

/** Length of a block's end left standing beside the vent notch, and the notch's depth, inches; ours. */
const ventEnd = 3.6;
const ventDepth = 1.1;

/** A block: beveled to the roof plane, with a vent notch in its top edge. Drawn in three lengths under one name. */
const blockOf = (
  { level, pose }: Shown,
  scheme: Scheme,
  [id, block]: readonly [string, BlockPose],
): readonly Solid[] => {
  const { side } = placeOf(id);
  if (!side) return [];
  const sign = signOf(side);
  const lies = { sign, plate: plateAt(pose.plates[side], (block.x0 + block.x1) / 2) };
  const full = blockOutline(scheme, level.plan.rafter.depth);
  const hap = scheme.common.heightAbovePlate;
  const low = Math.min(hap, level.plan.rafter.depth) - ventDepth;
  const notched: readonly Vec2[] = [
    [0, 0],
    [1.5, 0],
    [1.5, low],
    [0, low],
  ];
  const end = Math.min(ventEnd, (block.x1 - block.x0) / 3);
  const part = (outline: readonly Vec2[], from: number, to: number): Solid =>
    prism(
      { id, role: 'block', selectable: true, seed: 300 + block.bay },
      {
        outline,
        place: ([inward, z], k) => [
          k === 0 ? from : to,
          lies.sign * (lies.plate.out - inward),
          lies.plate.z + z,
        ],
        frame: {
          origin: [(block.x0 + block.x1) / 2, sign * lies.plate.out, 2.5],
          along: [1, 0, 0],
          across: [0, 0, 1],
          through: [0, 1, 0],
        },
      },
    );
  return [
    part(full, block.x0, block.x0 + end),
    part(notched, block.x0 + end, block.x1 - end),
    part(full, block.x1 - end, block.x1),
  ];
};

const blockOutline = ({ common, m }: Scheme, stock: number): readonly Vec2[] => {
  const hap = Math.min(common.heightAbovePlate, stock);
  const inside = hap + 1.5 * m;
  const top: readonly Vec2[] =
    inside <= stock
      ? [[1.5, inside]]
      : [
          [1.5, stock],
          [(stock - hap) / m, stock],
        ];
  return [[0, 0], [1.5, 0], ...top, [0, hap]];
};

/** Height of the ridge's lower edge at x, where it is up. */
export const ridgeUnderAt = (pose: Pose, depth: number, x: number): number | undefined => {
  const { ridge } = pose;
  if (!ridge) return undefined;
  const t = (x - ridge.A.x) / (ridge.B.x - ridge.A.x);
  return ridge.A.z + (ridge.B.z - ridge.A.z) * t - depth;
};
