import type { Vec2 } from '../geometry/vector';
import { tailedAt } from './form';
import type { Framing } from './framing';
import { heightOver } from './heightOver';
import {
  facePieces,
  openingHeaders,
  openingsOn,
  overHeader,
  piecesOver,
  piecesUnder,
  studsIn,
  topIn,
  type OpeningOn,
} from './openings';
import { lineAt } from './pieces';
import type { RoofPlan } from './plan';
import { shorteningAt } from './planes';
import { beyond, planeCut, plateThick, rafterSide, slantFrom, type Cut } from './timberParts';
import type { Timber } from './timber';

/** Members of a gable dormer in their places, besides its ridge, valleys, commons and jacks. Side studs are drawn as wide as a trimmer. */
export const openingTimbers = (plan: RoofPlan, framing: Framing): readonly Timber[] =>
  openingsOn(framing.form).flatMap((on) => [
    ...headers(plan, framing, on),
    ...under(plan, framing, on),
    ...over(plan, framing, on),
    ...faces(plan, framing, on),
    ...plates(plan, on),
    ...studs(plan, on),
  ]);

/** What lies over the main rafters' tops. */
const overMain = (plan: RoofPlan, { host }: OpeningOn): Cut =>
  beyond(planeCut(host.plane, heightOver(plan.rafter.depth, host)));

const headers = (plan: RoofPlan, framing: Framing, on: OpeningOn): readonly Timber[] =>
  openingHeaders(plan, framing, on).map(
    ({ id, from, thickness, length, topHeight, section: { depth }, bevel }) => ({
      id,
      origin: placeIn(on, on.opening.plan.at, from + thickness / 2),
      direction: [1, 0],
      outline: [
        [-length / 2, topHeight - depth],
        [length / 2, topHeight - depth],
        [length / 2, topHeight],
        [-length / 2, topHeight],
      ],
      thickness,
      cuts: bevel ? [beyond(overMain(plan, on))] : [],
    }),
  );

const placeIn = ({ host: { plane } }: OpeningOn, x: number, inFrom: number): Vec2 => [
  x,
  plane.foot[1] + plane.up[1] * inFrom,
];

const under = (plan: RoofPlan, framing: Framing, on: OpeningOn): readonly Timber[] =>
  piecesUnder(framing, on).map(({ at }) => {
    const eave = tailedAt(on.host, at);
    return {
      id: `lower.${on.name}.${at}`,
      origin: lineAt(eave, at).from,
      direction: eave.plane.up,
      outline: rafterSide(eave, {
        depth: plan.rafter.depth,
        over: heightOver(plan.rafter.depth, eave),
        till: on.opening.front,
      }).map(([along, z]) => [along, z + eave.plane.base] as const),
      thickness: plan.rafter.thickness,
      cuts: [],
    };
  });

const over = (plan: RoofPlan, framing: Framing, on: OpeningOn): readonly Timber[] =>
  piecesOver(framing, on).map((piece) => ({
    id: `upper.${on.name}.${piece.at}`,
    origin: lineAt(on.host, piece.at).from,
    direction: on.host.plane.up,
    outline: slantFrom(on.host, {
      depth: plan.rafter.depth,
      over: heightOver(plan.rafter.depth, on.host) + on.host.plane.base,
      from: piece.from + overHeader(on),
      till: piece.to - shorteningAt(plan, framing.form, { eave: on.host, piece }),
    }),
    thickness: plan.rafter.thickness,
    cuts: [],
  }));

const faces = (plan: RoofPlan, framing: Framing, on: OpeningOn): readonly Timber[] =>
  facePieces(framing, on).map((piece) => {
    const { eave, at } = piece;
    const spread = (plan.rafter.thickness * on.host.m) / eave.m;
    return {
      id: `face.${on.name}.${eave.side}`,
      origin: lineAt(eave, at).from,
      direction: eave.plane.up,
      outline: slantFrom(eave, {
        depth: plan.rafter.depth,
        over: heightOver(plan.rafter.depth, eave) + eave.plane.base,
        from: piece.from - spread,
        till: piece.to - shorteningAt(plan, framing.form, { eave, piece }),
      }),
      thickness: plan.rafter.thickness,
      cuts: [overMain(plan, on)],
    };
  });

const plates = (plan: RoofPlan, on: OpeningOn): readonly Timber[] => {
  const { front, plates: till } = on.opening;
  if (till === undefined) return [];
  const { width } = plan.plate;
  return on.eaves.map(({ side, plane, clad }) => ({
    id: `plate.${on.name}.${side}`,
    origin: placeIn(on, plane.foot[0] + plane.up[0] * (clad + width / 2), 0),
    direction: on.host.plane.up,
    outline: [
      [front, plane.base - plateThick],
      [till, plane.base - plateThick],
      [till, plane.base],
      [front, plane.base],
    ],
    thickness: width,
    cuts: [overMain(plan, on)],
  }));
};

/** Between the trimmer's top and the plate's underside. */
const studs = (plan: RoofPlan, on: OpeningOn): readonly Timber[] => {
  const { walls } = on.opening.plan;
  if (!walls) return [];
  const top = on.opening.host.base + walls.top - plateThick;
  const low = topIn(on, on.opening.front);
  const half = walls.studs.thickness / 2;
  const [first = 0, , , last = 0] = on.opening.trimmers;
  return [first, last].flatMap((x) =>
    studsIn(plan, on).map((at) => ({
      id: `stud.${on.name}.${x}.${at}`,
      origin: placeIn(on, x, 0),
      direction: on.host.plane.up,
      outline: [
        [at + half, top],
        [at - half, top],
        [at - half, low],
        [at + half, low],
      ] as const,
      thickness: plan.rafter.thickness,
      cuts: [overMain(plan, on)],
    })),
  );
};
