import type { RafterPose } from '../../core/site/pose';
import { againstWall } from '../../core/level/layout';
import { across } from '../../core/roof/side';
import { schemeOf, type Shown } from '../../present/model/scheme';
import { edgesOfRafter } from '../../present/model/rafterShape';
import type { Point } from '../ink/pencil';
import type { Piece } from './board';
import type { JointScene } from './jointScene';
import { ledgerEnd, studBehind } from './ledgerScene';
import { nailsOf } from './nails';

type Asked = {
  readonly shown: Shown;
  readonly rafter: RafterPose;
  readonly joint: string;
  readonly atTop: boolean;
};

/** How much of a rafter shows, level, and how much depth shows upward, inches; ours. */
const reach = 20;
const topBand = 0.3;

/** A plumb cut on the ridge, seen along the ridge: u level from the ridge face, w plumb from the ridge's top. */
export const ridgeScene = ({ shown, rafter, joint, atTop }: Asked): JointScene => {
  const { ridge } = shown.level.plan;
  const { thickness: t, depth } = ridge;
  const wall = againstWall(shown.level);
  const scheme = schemeOf(shown);
  const plumb = scheme.common.plumbCutLength;
  const mate = shown.pose.rafters[`rafter.${across(rafter.side)}.${rafter.station}`];
  const own = rafterPieces(rafter, plumb, { way: 1, from: 0 });
  const other = mate ? rafterPieces(mate, plumb, { way: -1, from: -t }) : [];
  const { gaps } = rafter;
  const nails = nailsOf(shown.site.joints[`ridge:${joint}` as 'ridge:rafter.yard.1']);
  // Nobody gets behind a ledger to nail through it.
  const through = mate || wall ? 0 : 2;
  const rest = nails.slice(through);
  return {
    pieces: [...(wall ? [studBehind(ridge)] : []), ridgeTop(t), ledgerEnd(ridge), ...other, ...own],
    light: [
      wedge(rafter, plumb, depth),
      ...(mate ? [wedge(mate, plumb, depth).map(([u, w]): Point => [-t - u, w])] : []),
    ],
    sideNails: nails.slice(0, through).map((state, i) => ({
      face: -t,
      w: [-1.75, -5.05][i] ?? -3,
      proud: state === 'proud' ? 0.24 : 0,
      length: 3.3,
    })),
    heads: rest.map((state, i) => ({
      at: [gaps.plumbTop + 0.72 + 0.12 * i, -3.45 + (i % 2 === 0 ? -1 : 1) * Math.ceil(i / 2) * 1.9] as Point,
      proud: state === 'proud',
    })),
    rule: atTop
      ? { zero: [0, -rafter.gaps.plumbTop * edgesOfRafter(rafter, plumb).m], way: 'right' }
      : { zero: [0, -(plumb + gaps.plumbBottom * edgesOfRafter(rafter, plumb).m)], way: 'right' },
    marks: [],
    spot: atTop ? [0.17, -0.05] : [0.17, -(plumb + gaps.plumbBottom * edgesOfRafter(rafter, plumb).m) + 0.05],
    extent: [wall ? -t - 4.5 : mate ? -t - 6 : -t - 1.2, 9, -depth - 1.8, 1.3],
  };
};

/** The ridge's top edge, going away from you. */
const ridgeTop = (t: number): Piece => ({
  outline: [
    [-t, 0],
    [-t, 0.68],
    [0, 0.68],
    [0, 0],
  ],
  seed: 24,
  grain: [0, 1],
  light: 0.96,
});

const rafterPieces = (
  rafter: RafterPose,
  plumb: number,
  { way, from }: { readonly way: 1 | -1; readonly from: number },
): readonly Piece[] => {
  const { m } = edgesOfRafter(rafter, plumb);
  const g = Math.sqrt(1 + m * m);
  const { plumbTop, plumbBottom } = rafter.gaps;
  const flip = ([u, w]: Point): Point => [from + way * u, w];
  const low = plumb + plumbBottom * m;
  const body: readonly Point[] = [
    [plumbTop, -plumbTop * m],
    [plumbBottom, -low],
    [reach, -low - (reach - plumbBottom) * m],
    [reach, -reach * m],
  ];
  const band: readonly Point[] = [
    [plumbTop, -plumbTop * m],
    [plumbTop, -plumbTop * m + topBand],
    [reach, -reach * m + topBand],
    [reach, -reach * m],
  ];
  const seed = 26 + rafter.station * 3 + (way < 0 ? 40 : 0);
  const grain: Point = [way / g, -m / g];
  return [
    { outline: band.map(flip), seed: seed + 1, grain, light: 0.72 },
    { outline: body.map(flip), seed, grain, light: way > 0 ? 0.78 : 0.7 },
  ];
};

/** The opening between the ridge's face and the cut. */
const wedge = (rafter: RafterPose, plumb: number, depth: number): readonly Point[] => {
  const { plumbTop, plumbBottom } = rafter.gaps;
  const { m } = edgesOfRafter(rafter, plumb);
  const low = -Math.min(depth, plumb + plumbBottom * m);
  return [
    [0, -plumbTop * m],
    [plumbTop, -plumbTop * m],
    [plumbBottom, low],
    [0, low],
  ];
};
