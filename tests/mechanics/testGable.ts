import type { Gable, GableBrace, GableRafter, GableTie } from '../../src/core/mechanics/gable';
import { gableFrame } from '../../src/core/mechanics/gableFrame';
import type { GableParts } from '../../src/core/mechanics/gableParts';
import { pointRow, valueOf, type Node } from '../../src/core/mechanics/frame';
import { engineered, sawn } from '../../src/core/stock/wood';
import { settle, type Settled, type SettleOptions } from '../../src/core/mechanics/settle';
import type { Side } from '../../src/core/roof/side';

/** The gable of the figures: 6 in 12, 12 ft run, 2×8 at 24 in on a 1¾ × 11⅞ engineered ridge; walls braced every 8 ft. */

const [m, run, seat, spacing] = [0.5, 144, 3.5, 24];
const rafter = { thickness: 1.5, depth: 7.25 };
const ridge = { thickness: 1.75, depth: 11.875 };

export const bareGable = (length: number): Gable => {
  const inner = Array.from({ length: Math.ceil((length - 3) / spacing) - 1 }, (_, i) => (i + 1) * spacing);
  const stations = [0.75, ...inner, length - 0.75];
  const heightAbovePlate = rafter.depth * Math.sqrt(1 + m * m) - seat * m;
  const topHeight = heightAbovePlate + (run - ridge.thickness / 2) * m;
  const spots = stations.map(() => ({ up: 0, out: 0 }));
  const braces = Array.from({ length: Math.ceil(length / 96) - 1 }, (_, i) => (i + 1) * 96);
  return {
    shape: {
      run,
      m,
      seat,
      overhang: 12,
      heightAbovePlate,
      topHeight,
      rafter,
      ridge,
      rafterWood: sawn,
      ridgeWood: engineered,
    },
    stations,
    ridge: { bow: 0, crown: 0 },
    plates: { street: spots, yard: spots },
    walls: { braces: { street: braces, yard: braces }, corners: ['A', 'B'] },
    rafters: [],
    supports: [],
    ties: [],
    braces: [],
    blocks: [],
    straps: [],
    lean: 1,
  };
};

export type Nails = { readonly nails: number; readonly tacks: number };
export const nailed: Nails = { nails: 3, tacks: 0 };
export const tacked: Nails = { nails: 0, tacks: 2 };

export const rafterOf = (side: Side, station: number, { nails, tacks }: Nails = nailed): GableRafter => {
  const name = `rafter.${side}.${station + 1}`;
  const joint = (kind: string) => ({ joint: `${kind}:${name}`, nails, tacks });
  return { name, side, station, top: joint('ridge'), heel: joint('heel'), long: 0, open: 0, deep: 0 };
};

export const pairOf = (station: number, so: Nails = nailed): readonly GableRafter[] => [
  rafterOf('street', station, so),
  rafterOf('yard', station, so),
];

export const lastOf = ({ stations }: Gable): number => stations.length - 1;
export const middleOf = ({ stations }: Gable): number => Math.floor(stations.length / 2);
export const every = ({ stations }: Gable): readonly number[] => stations.map((_, i) => i);

/** End pairs and every rafter of the street side between them. */
export const oneSide = (gable: Gable, so: Nails = nailed): readonly GableRafter[] => [
  ...pairOf(0, so),
  ...pairOf(lastOf(gable), so),
  ...every(gable)
    .slice(1, -1)
    .map((i) => rafterOf('street', i, so)),
];

export const joistsOf = (gable: Gable): readonly GableTie[] =>
  every(gable).map((station) => ({
    name: `joist.${station + 1}`,
    kind: 'heels',
    station,
    section: rafter,
    height: 3.6,
    nails: 4,
  }));

export const alongBrace = (gable: Gable): GableBrace => ({
  name: 'brace.along.1',
  way: 'along',
  x: gable.stations[middleOf(gable)] as number,
});

/** A finished row of so many pairs at 24 in: nailed, tied, braced along. */
export const wholeGable = (pairs: number): Gable => {
  const gable = bareGable((pairs - 1) * spacing);
  return {
    ...gable,
    rafters: every(gable).flatMap((i) => pairOf(i)),
    ties: joistsOf(gable),
    braces: [alongBrace(gable)],
  };
};

export type Framed = { readonly parts: GableParts; readonly settled: Settled };

export const settledGable = (gable: Gable, options?: SettleOptions): Framed => {
  const parts = gableFrame(gable);
  return { parts, settled: settle(parts.frame, options) };
};

export const moved = (node: Node, { u }: Settled): { x: number; y: number; z: number } => ({
  x: valueOf(pointRow(node, node.at, [1, 0, 0]), u),
  y: valueOf(pointRow(node, node.at, [0, 1, 0]), u),
  z: valueOf(pointRow(node, node.at, [0, 0, 1]), u),
});

/** How the ridge has moved halfway: along, to the yard, up. */
export const midRidge = ({ parts, settled }: Framed): { x: number; y: number; z: number } =>
  moved(parts.ridge[Math.floor(parts.ridge.length / 2)] as Node, settled);

/** How far a face stands off, inches; below 0 it is pressed in. */
export const gapAt = ({ settled }: Framed, joint: string, what: string): number => {
  const link = settled.frame.links.find((one) => one.joint === joint && one.what === what);
  if (!link) throw new Error(`no ${what} at ${joint}`);
  return valueOf(link.row, settled.u) - link.rest;
};

/** The factor on all weights' second-order effect at which a frame falls, to 1 in 1000. */
export const loadFactor = (gable: Gable, most = 20): number => {
  const { frame } = gableFrame(gable);
  let [stands, falls] = [0, most];
  while (falls - stands > stands / 1000 + 1e-3) {
    const factor = (stands + falls) / 2;
    if (settle(frame, { loadFactor: factor, neverSlips: true }).falls) falls = factor;
    else stands = factor;
  }
  return stands;
};
