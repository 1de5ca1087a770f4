import { ends, signOf, sides, type Side } from '../roof/side';
import { poundsAnInch } from '../stock/lumber';
import { sawn } from '../stock/wood';
import { plateSection, wall } from './fasteners';
import { pointRow, type Beam, type Node } from './frame';
import { startFraming, type Framing, type Held, type Nodes, type Piece } from './framing';
import type { Gable, GableRafter, GableShape } from './gable';
import type { GableParts, RafterParts } from './gableParts';
import { rafterPoints } from './rafterPoints';
import { stiffnessOf } from './section';

/** What rafters stand between: every node of a gable, its plates and its ridge. */

/** Rafters by station. */
export type Standing = readonly (readonly GableRafter[])[];

export type Ends = Pick<RafterParts, 'heel' | 'top'>;

export type Base = Pick<GableParts, 'plates' | 'ridge' | 'ridgeBeams'> & {
  /** Of each rafter, by its name. */
  readonly ends: ReadonlyMap<string, Ends>;
};

type Kept = {
  readonly gable: Gable;
  readonly names: string;
  readonly nodes: Nodes;
  readonly piece: Piece;
  readonly base: Base;
};

/** A gable with nothing fastened yet: that of last time where the same rafters stand between the same walls. */
export const startGable = (
  gable: Gable,
  standing: Standing,
): { readonly framing: Framing; readonly base: Base } => {
  const names = standing.map((here) => here.map(({ name }) => name).join(' ')).join('|');
  const last = lasts.get(gable.shape);
  if (last && last.names === names && isSame(last.gable, gable)) {
    const framing = startFraming(last.nodes);
    framing.again(last.piece);
    return { framing, base: last.base };
  }
  const framing = startFraming();
  const { piece, told } = framing.noted(() => baseOf(framing, gable, standing));
  lasts.set(gable.shape, { gable, names, nodes: framing.nodes(), piece, base: told });
  return { framing, base: told };
};
const lasts = new WeakMap<GableShape, Kept>();

const isSame = (a: Gable, b: Gable): boolean =>
  a.ridge.bow === b.ridge.bow &&
  a.ridge.crown === b.ridge.crown &&
  a.walls.rigid === b.walls.rigid &&
  alike(a.stations, b.stations) &&
  alike(a.walls.corners, b.walls.corners) &&
  sides.every((side) => alike(a.walls.braces[side], b.walls.braces[side]));

const alike = <T>(a: readonly T[], b: readonly T[]): boolean =>
  a === b || (a.length === b.length && a.every((one, i) => one === b[i]));

const baseOf = (framing: Framing, gable: Gable, standing: Standing): Base => {
  const nodes = gable.stations.map((_, i) =>
    stationNodes(framing, gable, { station: i, here: standing[i] ?? [] }),
  );
  const plates = {
    street: nodes.flatMap(({ plates: p }) => p.street ?? []),
    yard: nodes.flatMap(({ plates: p }) => p.yard ?? []),
  };
  const ridge = nodes.map((n) => n.ridge);
  for (const side of builtIn(gable)) addPlate(framing, { gable, side, nodes: plates[side] });
  const ridgeBeams = addRidge(framing, gable, ridge);
  return { plates, ridge, ridgeBeams, ends: new Map(nodes.flatMap(({ rafters }) => rafters)) };
};

type StationNodes = {
  readonly plates: Readonly<Partial<Record<Side, Node>>>;
  readonly ridge: Node;
  readonly rafters: readonly (readonly [string, Ends])[];
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
  const rafters = here.map((rafter): readonly [string, Ends] => {
    const points = rafterPoints(gable, rafter);
    const top = framing.node(`top.${rafter.name}`, points.top);
    return [rafter.name, { top, heel: framing.node(`heel.${rafter.name}`, points.heel) }];
  });
  const held: readonly Held[] = gable.walls.rigid ? fast : ['z', 'turnX', 'turnY'];
  const plate = (side: Side): Node =>
    framing.node(`plate.${side}.${station + 1}`, [x, signOf(side) * shape.run, 0], held);
  const ridge = framing.node(`ridge.${station + 1}`, [x, 0, shape.topHeight - shape.ridge.depth / 2]);
  return { plates: Object.fromEntries(builtIn(gable).map((side) => [side, plate(side)])), ridge, rafters };
};

const builtIn = ({ plates }: Gable): readonly Side[] => sides.filter((side) => plates[side].length > 0);

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
