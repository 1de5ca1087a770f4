import type { Vec3 } from '../../core/geometry/vector';
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

const within = ({ x0, x1, y0, y1 }: Box, [x, y]: readonly [number, number]): boolean =>
  x >= x0 && x <= x1 && y >= y0 && y <= y1;

/** The floor of sheets or trestle planks, the same as is drawn, and the hole in it until it is covered. */
const floorBox = ({ length, half }: Scheme, joists: boolean): Box => {
  const reach = Math.min(half - 20, 60);
  return joists
    ? { x0: 3.2, x1: length - 3.2, y0: -reach, y1: reach - 8 }
    : { x0: 6, x1: length - 6, y0: -24, y1: 23 };
};

export const surfaceAt = ({ site }: Shown, scheme: Scheme, feet: readonly Vec3[]): Surface | undefined => {
  const { length, half, tieDepth } = scheme;
  const inside: Box = { x0: wallThick, x1: length - wallThick, y0: wallThick - half, y1: half - wallThick };
  const outside: Box = { x0: -4, x1: length + 4, y0: -half - 4, y1: half + 4 };
  const all = (box: Box): boolean => feet.every(([x, y]) => within(box, [x, y]));
  if (feet.every(([x, y]) => !within(outside, [x, y]))) return { kind: 'ground', z: groundLevel };
  const joists = Object.keys(site.members).filter((id) => /^(joist|rafterTie)\./.test(id)).length;
  const floor = floorBox(scheme, 'joist.1' in site.members);
  if (site.ready.platform !== undefined && all(floor)) {
    const mid = length / 2;
    const reach = Math.min(half - 20, 60);
    const hole: Box = { x0: mid + 5, x1: mid + 43, y0: reach - 29, y1: reach };
    const open = site.ready.openings === undefined && 'joist.1' in site.members;
    if (open && feet.some(([x, y]) => within(hole, [x, y]))) return undefined;
    return { kind: 'floor', z: tieDepth + sheetThickness };
  }
  if (!all(inside)) return undefined;
  if (joists >= scheme.stations.length - 1) return { kind: 'plank', z: tieDepth + plankThick };
  return { kind: 'staging', z: stagingLow };
};
