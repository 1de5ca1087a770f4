import type { Vec3 } from '../geometry/vector';
import { signOf, type Side } from '../roof/side';
import { blockEnds, strapSteel } from './fasteners';
import { less, pointRow, type Node, type Row } from './frame';
import type { Framing } from './framing';
import type { Gable, GableBlock, GableShape } from './gable';
import { holdOf } from './gableJoints';
import type { GableParts } from './gableParts';

/** What keeps rafters from rolling over at the plate and from parting over the ridge. None has nodes of its own. */

type Parts = Omit<GableParts, 'frame'>;

/**
 * How far a rafter has gone along the ridge from its plate, toward B (+), at the middle of the block's height; the block
 * stands flush with the wall's outer face. It is taken to hold to the plate below the rafter it is nailed to.
 */
export const blockRow = (
  parts: Pick<Parts, 'rows' | 'plates'>,
  shape: GableShape,
  { side, station }: Pick<GableBlock, 'side' | 'station'>,
): Row | undefined => {
  const [rafter, plate] = [parts.rows[side][station], parts.plates[side][station]];
  if (!rafter || !plate) return undefined;
  const known = blockRows.get(rafter.heel) ?? rowBetween(rafter.heel, plate, { shape, side });
  blockRows.set(rafter.heel, known);
  return known;
};
/** Nodes are kept while the same rafters stand. */
const blockRows = new WeakMap<Node, Row>();

const rowBetween = (
  heel: Node,
  plate: Node,
  { shape, side }: { readonly shape: GableShape; readonly side: Side },
): Row => {
  const x = plate.at[0];
  const point: Vec3 = [
    x,
    signOf(side) * (shape.run - shape.rafter.thickness / 2),
    shape.heightAbovePlate / 2,
  ];
  return less(pointRow(heel, point, along), pointRow(plate, [x, point[1], 0], along));
};
const along: Vec3 = [1, 0, 0];

/** Nails of an end, which draw along themselves, and its share of the plate's, one after the other. */
export const addBlocks = (framing: Framing, gable: Gable, parts: Parts): void => {
  for (const block of gable.blocks) {
    const row = blockRow(parts, gable.shape, block);
    if (!row) continue;
    const { name: joint, rest = 0 } = block;
    const [end, plate] = [holdOf(gable, block.end), holdOf(gable, block.plate)];
    const stiffness = 1 / (1 / end.pull + blockEnds / plate.shear);
    const link = framing.link({ joint, what: 'block', row, stiffness, rest, acts: 'both' });
    framing.grip({ joint, links: [link], cap: Math.min(end.cap, plate.cap / blockEnds) });
  }
};

/** How far the tops of a pair have come together (+) across the ridge, at their upper edges. */
export const strapRow = (
  { rows }: Pick<Parts, 'rows'>,
  { topHeight }: GableShape,
  station: number,
): Row | undefined => {
  const [street, yard] = [rows.street[station], rows.yard[station]];
  if (!street || !yard) return undefined;
  const edge = ({ top }: typeof street): Row => pointRow(top, [top.at[0], top.at[1], topHeight], [0, 1, 0]);
  return less(edge(street), edge(yard));
};

/** Nails, steel and nails one after the other. It only pulls: what it feels is told the way that a face feels a push. */
export const addStraps = (framing: Framing, gable: Gable, parts: Parts): void => {
  const { width, thick, free, stiffness: e } = strapSteel;
  for (const { name: joint, station, nails, rest = 0 } of gable.straps) {
    const row = strapRow(parts, gable.shape, station);
    if (!row) continue;
    const side = holdOf(gable, { nails: nails / 2, tacks: 0 });
    const stiffness = 1 / (2 / side.shear + free / (e * width * thick));
    const link = framing.link({ joint, what: 'strap', row, stiffness, rest, acts: 'push', apart: 0 });
    framing.grip({ joint, links: [link], cap: side.cap });
  }
};
