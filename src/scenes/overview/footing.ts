import { groundLevel } from '../../present/model/sawhorses';
import { sheetThickness, type Scheme, type Shown } from '../../present/model/scheme';

/** What there is to stand on. Inches. */

/** `plank`: laid over joists where sheets end. `staging`: planks inside the walls where nothing spans them yet. */
export type Surface = { readonly kind: 'ground' | 'floor' | 'plank' | 'staging'; readonly z: number };

/** Planks are 2-inch lumber. */
export const plankThick = 1.5;
/** Staging inside the walls stands so far below the plates, inches; ours: as deep as the drawing shows. */
const stagingLow = -24;
/** Nobody's boot is nearer to a wall's outer face than this when inside. */
const wallThick = 7;

type Box = { readonly x0: number; readonly x1: number; readonly y0: number; readonly y1: number };

/** A foot's place, x and y. */
type Flat = readonly [number, number];

const within = ({ x0, x1, y0, y1 }: Box, [x, y]: Flat): boolean => x >= x0 && x <= x1 && y >= y0 && y <= y1;

/** The floor of sheets or trestle planks, the same as is drawn, and the hole in it until it is covered. */
const floorBox = ({ length, half, lane }: Scheme, joists: boolean): Box => {
  const reach = Math.min(half - 20, 60);
  return joists
    ? { x0: 3.2, x1: length - 3.2, y0: -reach, y1: reach - 8 }
    : { x0: 6, x1: length - 6, y0: lane - 24, y1: lane + 23 };
};

/** What carries boots and knees together: asked for the site once, then place by place. */
export type Footing = (feet: readonly Flat[]) => Surface | undefined;

export const footingOf = ({ site }: Shown, scheme: Scheme): Footing => {
  const { length, half, yard, tieDepth } = scheme;
  const inside: Box = { x0: wallThick, x1: length - wallThick, y0: wallThick - half, y1: yard - wallThick };
  const outside: Box = { x0: -4, x1: length + 4, y0: -half - 4, y1: yard + 4 };
  const onJoists = 'joist.1' in site.members;
  const joists = Object.keys(site.members).filter((id) => /^(joist|rafterTie)\./.test(id)).length;
  const floor = site.ready.platform === undefined ? undefined : floorBox(scheme, onJoists);
  const hole = onJoists && site.ready.openings === undefined ? holeBox(scheme) : undefined;
  const ground: Surface = { kind: 'ground', z: groundLevel };
  const sheets: Surface = { kind: 'floor', z: tieDepth + sheetThickness };
  const planks: Surface =
    joists >= scheme.stations.length - 1
      ? { kind: 'plank', z: tieDepth + plankThick }
      : { kind: 'staging', z: stagingLow };
  return (feet) => {
    const all = (box: Box): boolean => feet.every((foot) => within(box, foot));
    if (!feet.some((foot) => within(outside, foot))) return ground;
    const overHole = hole !== undefined && feet.some((foot) => within(hole, foot));
    if (floor && all(floor)) return overHole ? undefined : sheets;
    return all(inside) && !overHole ? planks : undefined;
  };
};

/** The opening that is left in the floor until it is covered, with a boot's room round it. */
const holeBox = ({ length, half }: Scheme): Box => {
  const reach = Math.min(half - 20, 60);
  return { x0: length / 2 + 5, x1: length / 2 + 43, y0: reach - 29, y1: reach };
};
