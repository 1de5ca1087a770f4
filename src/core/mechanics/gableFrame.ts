import { signOf, sides } from '../roof/side';
import type { Vec3 } from '../geometry/vector';
import { poundsAnInch } from '../stock/lumber';
import { leanShare } from './fasteners';
import { pointRow, type Beam, type Node } from './frame';
import type { Framing } from './framing';
import type { Gable, GableRafter } from './gable';
import { axesOf, type Axes } from './beam';
import type { GableParts, RafterParts } from './gableParts';
import { addWall } from './gableWall';
import { addBlocks, addStraps } from './gableBlocks';
import { addHeel, addTop } from './gableJoints';
import { addBraces, addSupports, addTies } from './gableHolds';
import { startGable, type Ends, type Standing } from './gableStart';
import { addPiece } from './rafterPieces';
import { stiffnessOf } from './section';

/** Everything that stands, station by station, so that unknowns that touch stay near each other. */
export const gableFrame = (gable: Gable): GableParts => {
  const standing = gable.stations.map((): GableRafter[] => []);
  for (const side of sides)
    for (const rafter of gable.rafters) if (rafter.side === side) standing[rafter.station]?.push(rafter);
  const { framing, base } = startGable(gable, standing);
  const { plates, ridge, ridgeBeams } = base;
  const rafters = new Map<string, RafterParts>();
  const rows = { street: standing.map(nobody), yard: standing.map(nobody) };
  for (const here of standing) {
    for (const rafter of here) {
      const ends = { rafter, ...(base.ends.get(rafter.name) as Ends) };
      const whole = addWhole(framing, gable, { ends, ridge, plates });
      rafters.set(whole.rafter.name, whole);
      rows[whole.rafter.side][whole.rafter.station] = whole;
    }
  }
  const parts = { ridge, ridgeBeams, plates, rafters, rows };
  addTies(framing, gable, parts);
  addSupports(framing, gable, parts);
  addWall(framing, gable, parts);
  addBraces(framing, gable, parts);
  addBlocks(framing, gable, parts);
  addStraps(framing, gable, parts);
  addLean(framing, gable, { ridge, standing });
  return { frame: framing.done(), ...parts };
};

const nobody = (): RafterParts | undefined => undefined;

type Whole = Pick<RafterParts, 'rafter' | 'heel' | 'top'>;

/** A rafter and its two joints. */
const addWhole = (
  framing: Framing,
  gable: Gable,
  { ends, ridge, plates }: Pick<GableParts, 'ridge' | 'plates'> & { readonly ends: Whole },
): RafterParts => {
  const { rafter, heel, top } = ends;
  const { side, station } = rafter;
  const [above, plate] = [ridge[station] as Node, plates[side][station] as Node];
  const spot = gable.plates[side][station] ?? { up: 0, out: 0 };
  const made = { rafter, spot, nodes: [heel, top, above, plate], rows: gable.rows };
  const added = addPiece(framing, { shape: gable.shape, made }, () => {
    const beam = addRafter(framing, gable, ends);
    const cut = addTop(framing, { gable, parts: ends, ridge: above });
    const foot = addHeel(framing, { gable, parts: ends, plate });
    return { beam, faces: { ...cut, ...foot } };
  });
  return { rafter, heel, top, ...added };
};

/** A rafter with its weight; the tail hangs out beyond the heel. */
const addRafter = (framing: Framing, { shape }: Gable, parts: Whole): Beam => {
  const { rafter, heel, top } = parts;
  const stiffness = stiffnessOf(shape.rafter, rafter.wood ?? shape.rafterWood);
  const g = Math.sqrt(1 + shape.m * shape.m);
  const sign = signOf(rafter.side);
  const unstressed = ownShape(rafter, axesOf(heel.at, top.at));
  const beam = framing.beam(rafter.name, [heel, top], { stiffness, ...(unstressed ? { unstressed } : {}) });
  const weight = poundsAnInch(shape.rafter, shape.rafterWood);
  framing.weigh(beam, weight);
  const tail = shape.overhang + shape.seat / 2;
  const middle: Vec3 = [heel.at[0], heel.at[1] + (sign * tail) / 2, heel.at[2] - (tail * shape.m) / 2];
  framing.load(pointRow(heel, middle, [0, 0, 1]), -weight * tail * g);
  return beam;
};

/** Moves and turns of a rafter's ends when nothing forces it: its length as cut, its twist. Its crown turns neither: its cuts are
 * true to the line of its ends. */
const ownShape = ({ long, twist = 0 }: GableRafter, { along }: Axes): Float64Array | undefined => {
  if (long === 0 && twist === 0) return undefined;
  const free = new Float64Array(12);
  for (let i = 0; i < 3; i++) {
    free[6 + i] = long * (along[i] as number);
    free[9 + i] = twist * (along[i] as number);
  }
  return free;
};

/** Nothing stands quite plumb: a small level push along the ridge, a part of the weight each place carries. */
const addLean = (
  framing: Framing,
  gable: Gable,
  { ridge, standing }: Pick<GableParts, 'ridge'> & { readonly standing: Standing },
): void => {
  const { shape, stations, lean } = gable;
  const g = Math.sqrt(1 + shape.m * shape.m);
  const rafter = poundsAnInch(shape.rafter, shape.rafterWood) * (shape.run + shape.overhang) * g;
  const board = poundsAnInch(shape.ridge, shape.ridgeWood);
  ridge.forEach((node, i) => {
    const before = stations[i - 1] ?? (stations[i] as number);
    const after = stations[i + 1] ?? (stations[i] as number);
    const rafters = standing[i]?.length ?? 0;
    const weight = (board * (after - before)) / 2 + (rafters * rafter) / 2;
    framing.pushOn(pointRow(node, node.at, [1, 0, 0]), lean * leanShare * weight);
  });
};
