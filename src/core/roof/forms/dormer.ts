import { hair } from '../../units/hair';
import { gradient } from '../../units/slope';
import type { DormerShape, Eave, Frame, HostSide, Opening } from '../form';
import { heightOver } from '../heightOver';
import type { GablePlan, ShedDormer } from '../plan';
import type { Body, Plane } from '../surface';
import { cladOf, inward } from './common';

/**
 * A shed dormer: a plane of lower slope over a front wall that stands up through the main roof, back to where the tops of
 * its rafters come to those of the main roof. Two main rafters under each side wall carry it; the first and last of its own
 * lie on the outer ones, the rest come to a header between the inner ones, or to the main ridge.
 */
export const dormerShape = (plan: GablePlan, dormer: ShedDormer, host: HostSide): DormerShape => {
  const { at, width, front } = dormer;
  const { thickness, depth } = plan.rafter;
  const half = width / 2;
  const reach = host.run - front;
  const m = dormer.slope ? gradient(dormer.slope) : slopeToRidge(plan, dormer, host);
  const over = heightOver(depth, { m, seat: dormer.seat });
  const gap = dormer.wall + over - host.over - host.m * front;
  const run = dormer.slope ? gap / (host.m - m) : reach;
  const toRidge = Math.abs(run - reach) < hair;
  const beside = [half - thickness / 2, half - (3 * thickness) / 2] as const;
  return {
    plan: dormer,
    host,
    from: at - half,
    to: at + half,
    trimmers: [at - beside[0], at - beside[1], at + beside[1], at + beside[0]],
    ends: [at - beside[0], at + beside[0]],
    inner: [],
    m,
    run: toRidge ? reach : run,
    gap,
    toRidge,
    shortening: toRidge ? plan.ridge.thickness / 2 : dormer.header.thickness,
  };
};

/**
 * Rise for each inch of run with which the tops come to the main ridge's line. With A the height to climb from the plate
 * and B the level from the inner end of the seat, A = B·m + D·√(1 + m²); NaN where there is none.
 */
export const slopeToRidge = (
  { rafter: { depth } }: Pick<GablePlan, 'rafter'>,
  { wall, front, seat }: Pick<ShedDormer, 'wall' | 'front' | 'seat'>,
  host: HostSide,
): number => {
  const a = host.over + host.m * host.run - wall;
  const b = host.run - front - seat;
  return b > depth
    ? (a * b - depth * Math.sqrt(a * a + b * b - depth * depth)) / (b * b - depth * depth)
    : NaN;
};

/** What a dormer takes of a row of main rafters. */
export type Taken = Pick<DormerShape, 'from' | 'to' | 'trimmers'> & Partial<Pick<Opening, 'covers'>>;

/** Of a row of main rafters, those that stand clear of the trimmers, as far from them as from a flush end rafter, and of its roof. */
const isClear = ({ trimmers, from, to, covers }: Taken, at: number, thickness: number): boolean =>
  trimmers.every((one) => Math.abs(one - at) >= 2 * thickness - hair) &&
  (covers === undefined ||
    (at > from && at < to) ||
    at < covers[0] - thickness / 2 + hair ||
    at > covers[1] + thickness / 2 - hair);

export const innerMarks = (shape: Taken, marks: readonly number[], thickness: number): readonly number[] =>
  marks.filter((at) => at > shape.from && at < shape.to && isClear(shape, at, thickness));

/** The host's row with the trimmers in it. */
export const withTrimmers = (
  marks: readonly number[],
  shapes: readonly Taken[],
  thickness: number,
): readonly number[] =>
  [
    ...marks.filter((at) => shapes.every((shape) => isClear(shape, at, thickness))),
    ...shapes.flatMap(({ trimmers }) => trimmers),
  ].sort((a, b) => a - b);

/** How far short of the main ridge's line a dormer's plane is ended, so that it does not hide the ridge: under a hair, and over what counts as the same place. */
const shortOfRidge = hair / 2;

type Place = { readonly shape: DormerShape; readonly name: string };

export const dormerOf = (
  plan: GablePlan,
  { shape, name }: Place,
): { readonly frame: Frame; readonly eave: Eave } => {
  const { plan: dormer, host, m } = shape;
  const up = inward[dormer.side];
  const along = up[1];
  const plane: Plane = {
    id: name,
    foot: [0, -along * host.run + along * dormer.front],
    up,
    base: host.base + dormer.wall,
    m,
    over: heightOver(plan.rafter.depth, { m, seat: dormer.seat }) - host.over,
  };
  const body: Body = {
    id: name,
    planes: [plane],
    limits: [
      { id: 'side', normal: [-1, 0], reach: -shape.from },
      { id: 'side', normal: [1, 0], reach: shape.to },
      { id: 'ridge', normal: up, reach: -shortOfRidge },
    ],
  };
  const eave: Eave = {
    side: dormer.side,
    plane,
    body,
    run: shape.run,
    m,
    overhang: dormer.overhang,
    seat: dormer.seat,
    clad: cladOf(plan),
    stations: [shape.ends[0], ...shape.inner, shape.ends[1]],
    dormer: shape,
  };
  return { frame: { body, name, span: dormer.width, past: 0, gables: 0 }, eave };
};
