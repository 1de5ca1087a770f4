import { ends, signOf, sides, type Side } from '../roof/side';
import type { Vec3 } from '../geometry/vector';
import { poundsAnInch } from '../stock/lumber';
import { sawn } from '../stock/wood';
import { leanShare, plateSection, wall } from './fasteners';
import { pointRow, type Beam, type Node } from './frame';
import { startFraming, type Framing, type Held } from './framing';
import type { Gable, GableRafter } from './gable';
import { axesOf, type Axes } from './beam';
import type { GableParts, RafterParts } from './gableParts';
import { addBlocks, addStraps } from './gableBlocks';
import { addHeel, addTop } from './gableJoints';
import { addBraces, addSupports, addTies } from './gableHolds';
import { addPiece } from './rafterPieces';
import { rafterPoints } from './rafterPoints';
import { stiffnessOf } from './section';

/** Everything that stands, station by station, so that unknowns that touch stay near each other. */
export const gableFrame = (gable: Gable): GableParts => {
  const framing = startFraming();
  const standing = gable.stations.map((): GableRafter[] => []);
  for (const side of sides)
    for (const rafter of gable.rafters) if (rafter.side === side) standing[rafter.station]?.push(rafter);
  const nodes = gable.stations.map((_, i) =>
    stationNodes(framing, gable, { station: i, here: standing[i] ?? [] }),
  );
  const plates = {
    street: nodes.map(({ plates: p }) => p.street),
    yard: nodes.map(({ plates: p }) => p.yard),
  };
  const ridge = nodes.map((n) => n.ridge);
  for (const side of sides) addPlate(framing, { gable, side, nodes: plates[side] });
  const ridgeBeams = addRidge(framing, gable, ridge);
  const rafters = new Map<string, RafterParts>();
  const rows = { street: standing.map(nobody), yard: standing.map(nobody) };
  for (const { rafters: own } of nodes) {
    for (const ends of own) {
      const whole = addWhole(framing, gable, { ends, ridge, plates });
      rafters.set(whole.rafter.name, whole);
      rows[whole.rafter.side][whole.rafter.station] = whole;
    }
  }
  const parts = { ridge, ridgeBeams, plates, rafters, rows };
  addTies(framing, gable, parts);
  addSupports(framing, gable, parts);
  addBraces(framing, gable, parts);
  addBlocks(framing, gable, parts);
  addStraps(framing, gable, parts);
  addLean(framing, gable, nodes);
  return { frame: framing.done(), ...parts };
};

const nobody = (): RafterParts | undefined => undefined;

type Ends = Pick<RafterParts, 'rafter' | 'heel' | 'top'>;

/** A rafter and its two joints. */
const addWhole = (
  framing: Framing,
  gable: Gable,
  { ends, ridge, plates }: Pick<GableParts, 'ridge' | 'plates'> & { readonly ends: Ends },
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

type StationNodes = {
  readonly plates: Readonly<Record<Side, Node>>;
  readonly ridge: Node;
  readonly rafters: readonly Ends[];
};

/**
 * Rafters first, each from its top down to its heel, then what runs through from station to station: only the ridge and the
 * plates reach back to the station before, and the matrix stays low.
 */
const stationNodes = (
  framing: Framing,
  gable: Gable,
  { station, here }: { readonly station: number; readonly here: readonly GableRafter[] },
): StationNodes => {
  const { shape, stations } = gable;
  const x = stations[station] as number;
  const rafters = here.map((rafter): Ends => {
    const points = rafterPoints(gable, rafter);
    const top = framing.node(`top.${rafter.name}`, points.top);
    return { rafter, top, heel: framing.node(`heel.${rafter.name}`, points.heel) };
  });
  const held: readonly Held[] = gable.walls.rigid ? fast : ['z', 'turnX', 'turnY'];
  const plate = (side: Side): Node =>
    framing.node(`plate.${side}.${station + 1}`, [x, signOf(side) * shape.run, 0], held);
  const ridge = framing.node(`ridge.${station + 1}`, [x, 0, shape.topHeight - shape.ridge.depth / 2]);
  return { plates: { street: plate('street'), yard: plate('yard') }, ridge, rafters };
};

const fast: readonly Held[] = ['x', 'y', 'z', 'turnX', 'turnY', 'turnZ'];

const flatPlate = { thickness: plateSection.depth, depth: plateSection.thickness };

/** A plate bends level between stations; studs, braces and corners hold it. */
const addPlate = (
  framing: Framing,
  { gable, side, nodes }: { readonly gable: Gable; readonly side: Side; readonly nodes: readonly Node[] },
): void => {
  const stiffness = stiffnessOf(flatPlate, sawn);
  for (let i = 1; i < nodes.length; i++)
    framing.beam(`plate.${side}`, [nodes[i - 1] as Node, nodes[i] as Node], { stiffness });
  const joint = `wall.${side}`;
  const across = (node: Node, what: string, stiffness: number): void => {
    const row = pointRow(node, node.at, [0, 1, 0]);
    framing.link({ joint, what, row, stiffness, rest: 0, acts: 'both', ground: 'y' });
  };
  for (const node of nodes) across(node, 'studs', wall.studs);
  for (const x of gable.walls.braces[side]) across(nearest(nodes, x), 'brace', wall.brace);
  const [first, last] = [nodes[0] as Node, nodes[nodes.length - 1] as Node];
  for (const end of ends) {
    const by = gable.walls.corners.includes(end) ? wall.corner : wall.looseCorner;
    across(end === 'A' ? first : last, 'corner', by);
  }
  for (const node of [first, last]) {
    const row = pointRow(node, node.at, [1, 0, 0]);
    const stiffness = wall.corner;
    framing.link({ joint, what: 'length', row, stiffness, rest: 0, acts: 'both', ground: 'x' });
  }
};

const nearest = (nodes: readonly Node[], x: number): Node =>
  nodes.reduce((best, node) => (Math.abs(node.at[0] - x) < Math.abs(best.at[0] - x) ? node : best));

/** The ridge bends between stations from the shape it has by itself, bow and crown together. */
const addRidge = (framing: Framing, gable: Gable, nodes: readonly Node[]): readonly Beam[] => {
  const { shape, ridge } = gable;
  const stiffness = stiffnessOf(shape.ridge, shape.ridgeWood);
  const [first, last] = [nodes[0] as Node, nodes[nodes.length - 1] as Node];
  const free = (node: Node): readonly number[] => {
    const t = (node.at[0] - first.at[0]) / (last.at[0] - first.at[0]);
    const [off, slope] = [4 * t * (1 - t), (4 * (1 - 2 * t)) / (last.at[0] - first.at[0])];
    return [0, ridge.bow * off, ridge.crown * off, 0, -ridge.crown * slope, ridge.bow * slope];
  };
  const straight = ridge.bow === 0 && ridge.crown === 0;
  return nodes.slice(1).map((node, i) => {
    const from = nodes[i] as Node;
    const unstressed = straight ? {} : { unstressed: Float64Array.from([...free(from), ...free(node)]) };
    const beam = framing.beam('ridge', [from, node], { stiffness, ...unstressed });
    framing.weigh(beam, poundsAnInch(shape.ridge, shape.ridgeWood));
    return beam;
  });
};

/** A rafter with its weight; the tail hangs out beyond the heel. */
const addRafter = (framing: Framing, { shape }: Gable, parts: Ends): Beam => {
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
const addLean = (framing: Framing, gable: Gable, nodes: readonly StationNodes[]): void => {
  const { shape, stations, lean } = gable;
  const g = Math.sqrt(1 + shape.m * shape.m);
  const rafter = poundsAnInch(shape.rafter, shape.rafterWood) * (shape.run + shape.overhang) * g;
  const board = poundsAnInch(shape.ridge, shape.ridgeWood);
  nodes.forEach(({ ridge, rafters }, i) => {
    const before = stations[i - 1] ?? (stations[i] as number);
    const after = stations[i + 1] ?? (stations[i] as number);
    const weight = (board * (after - before)) / 2 + (rafters.length * rafter) / 2;
    framing.pushOn(pointRow(ridge, ridge.at, [1, 0, 0]), lean * leanShare * weight);
  });
};
