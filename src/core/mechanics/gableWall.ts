import type { Vec3 } from '../geometry/vector';
import { faceStiffness } from './fasteners';
import { pointRow, type Node } from './frame';
import type { Framing } from './framing';
import type { Gable } from './gable';
import { holdOf } from './gableJoints';
import type { GableParts } from './gableParts';

/** A wall behind a ledger: it stops what is pushed against it, and nails hold every way. */

/** A place on the back of a ledger, so far above (+) its middle. */
export const backOf = ({ ridge }: Gable['shape'], { at: [x, , z] }: Node, up = 0): Vec3 => [
  x,
  ridge.thickness / 2,
  z + up,
];

export const addWall = (framing: Framing, gable: Gable, { ridge }: Pick<GableParts, 'ridge'>): void => {
  const { wall, shape } = gable;
  if (!wall) return;
  const half = shape.ridge.depth / 2;
  ridge.forEach((node, i) => {
    for (const [what, up] of [
      ['wallTop', half],
      ['wallBottom', -half],
    ] as const) {
      const row = pointRow(node, backOf(shape, node, up), [0, -1, 0]);
      const stiffness = faceStiffness.plumbCut;
      framing.link({ joint: `wall.${i + 1}`, what, row, stiffness, rest: 0, acts: 'push', ground: 'y' });
    }
  });
  for (const hold of wall) {
    const node = ridge[hold.station];
    if (!node || hold.nails + hold.tacks === 0) continue;
    const { shear, pull, cap } = holdOf(gable, hold);
    const at = backOf(shape, node);
    const { joint } = hold;
    const links = ways.map(({ what, way, ground }, i) =>
      framing.link({
        joint,
        what,
        row: pointRow(node, at, way),
        stiffness: i === 1 ? pull : shear,
        rest: hold.rest?.[i] ?? 0,
        acts: 'both',
        ground,
      }),
    );
    framing.grip({ joint, links, cap });
  }
};

const ways = [
  { what: 'along', way: [1, 0, 0], ground: 'x' },
  { what: 'off', way: [0, 1, 0], ground: 'y' },
  { what: 'up', way: [0, 0, 1], ground: 'z' },
] as const satisfies readonly { readonly what: string; readonly way: Vec3; readonly ground: string }[];
