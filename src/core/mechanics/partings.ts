import type { Vec3 } from '../geometry/vector';
import { signOf, type Side } from '../roof/side';
import { less, pointRow, turnRow, type Node, type Row } from './frame';
import type { GableShape } from './gable';
import { rafterPoints } from './rafterPoints';

/**
 * How the faces and nails of a rafter's two joints part, by unknowns of the rafter's end (0 to 5) and of what it meets (6
 * to 11). All rafters of a side have them in common, so they are figured once.
 */
export type Partings = {
  readonly plumbTop: Row;
  readonly plumbBottom: Row;
  readonly top: NailRows;
  readonly seatOut: Row;
  readonly seatIn: Row;
  readonly heelCut: Row;
  readonly heel: NailRows;
};

/** Along x, y and z. */
export type NailRows = { readonly slides: readonly Row[]; readonly turns: readonly Row[] };

const ways: readonly Vec3[] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];

/** The rows of one side. */
export const partingsOf = (shape: GableShape, side: Side): Partings => {
  const known = rows.get(shape)?.[side];
  if (known) return known;
  const made = { street: rowsOf(shape, 'street'), yard: rowsOf(shape, 'yard') };
  rows.set(shape, made);
  return made[side];
};
const rows = new WeakMap<GableShape, Readonly<Record<Side, Partings>>>();

/** A row where it belongs: between a rafter's end and what it meets. */
export const between = ({ dofs: slots, coefs }: Row, end: Node, met: Node): Row => {
  const dofs = new Array<number>(slots.length);
  for (let i = 0; i < slots.length; i++) {
    const slot = slots[i] as number;
    dofs[i] = (slot < 6 ? end.dofs[slot] : met.dofs[slot - 6]) as number;
  }
  return { dofs, coefs };
};

const rowsOf = (shape: GableShape, side: Side): Partings => {
  const sign = signOf(side);
  const points = rafterPoints({ shape, stations: [0] }, { side, station: 0 });
  const end = (at: Vec3): Node => ({ name: 'end', at, dofs: [0, 1, 2, 3, 4, 5] });
  const met = (at: Vec3): Node => ({ name: 'met', at, dofs: [6, 7, 8, 9, 10, 11] });
  const [top, heel] = [end(points.top), end(points.heel)];
  const ridge = met([0, 0, shape.topHeight - shape.ridge.depth / 2]);
  const plate = met([0, sign * shape.run, 0]);
  const out: Vec3 = [0, sign, 0];
  const plumb = Math.min(shape.rafter.depth * Math.sqrt(1 + shape.m * shape.m), shape.ridge.depth);
  const onRidge = (point: Vec3, way: Vec3): Row =>
    less(pointRow(top, point, way), pointRow(ridge, point, way));
  const cutEdge = (down: number): Row => onRidge([0, top.at[1], shape.topHeight - down], out);
  const over = (from: number, high: number): Vec3 => [0, sign * (shape.run - from), high];
  const middle = over(shape.seat / 2, 0);
  const onPlate = (point: Vec3, way: Vec3): Row =>
    less(pointRow(heel, point, way), pointRow(plate, plate.at, way));
  const [x, y, z] = ways as readonly [Vec3, Vec3, Vec3];
  return {
    plumbTop: cutEdge(0),
    plumbBottom: cutEdge(plumb),
    top: {
      slides: ways.map((way) => onRidge(top.at, way)),
      turns: ways.map((about) => less(turnRow(top, about), turnRow(ridge, about))),
    },
    seatOut: pointRow(heel, over(0, 0), z),
    seatIn: pointRow(heel, over(shape.seat, 0), z),
    heelCut: onPlate(over(0, (-shape.seat * shape.m) / 2), out),
    heel: {
      slides: [onPlate(middle, x), onPlate(middle, y), pointRow(heel, middle, z)],
      turns: [turnRow(heel, x), turnRow(heel, y), less(turnRow(heel, z), turnRow(plate, z))],
    },
  };
};
