import type { Vec2 } from '../geometry/vector';
import {
  dormerHeaders,
  dormersOn,
  endShortening,
  frontIn,
  lowerPieces,
  mainTop,
  sideStudsAt,
  upperPieces,
  type DormerOn,
} from './dormers';
import type { Eave } from './form';
import type { Framing } from './framing';
import { heightOver } from './heightOver';
import { lineAt } from './pieces';
import type { RoofPlan } from './plan';
import { shorteningAt } from './planes';
import { planeCut, rafterSide } from './timberParts';
import type { Timber } from './timber';

/** Members of a dormer in their places, besides its commons, blocks and plate. Side studs are drawn as wide as the rafter over them. */
export const dormerTimbers = (plan: RoofPlan, framing: Framing): readonly Timber[] =>
  dormersOn(framing.form).flatMap((on) => [
    ...headers(plan, on),
    ...lowerPieces(framing, on).map(({ at }) =>
      fromPlate(plan, on.host, { at, till: frontIn(on), id: `lower.${on.name}.${at}` }),
    ),
    ...upperPieces(framing, on).map((piece): Timber => {
      const from = piece.from + on.shape.plan.header.thickness;
      const till = piece.to - shorteningAt(plan, framing.form, { eave: on.host, piece });
      const over = heightOver(plan.rafter.depth, on.host) + on.host.plane.base;
      const plumb = plan.rafter.depth * Math.sqrt(1 + on.host.m * on.host.m);
      const top = (u: number): number => over + on.host.m * u;
      return {
        id: `upper.${on.name}.${piece.at}`,
        origin: lineAt(on.host, piece.at).from,
        direction: on.host.plane.up,
        outline: [
          [till, top(till)],
          [till, top(till) - plumb],
          [from, top(from) - plumb],
          [from, top(from)],
        ],
        thickness: plan.rafter.thickness,
        cuts: [],
      };
    }),
    ...on.shape.ends.map((at) => ({
      ...fromPlate(plan, on.eave, { at, till: on.shape.run - endShortening(on), id: `end.${on.name}.${at}` }),
      cuts: [overMain(plan, on.host)],
    })),
    ...studs(plan, on),
  ]);

type Placed = { readonly at: number; readonly till: number; readonly id: string };

const fromPlate = (plan: RoofPlan, eave: Eave, { at, till, id }: Placed): Timber => ({
  id,
  origin: lineAt(eave, at).from,
  direction: eave.plane.up,
  outline: rafterSide(eave, {
    depth: plan.rafter.depth,
    over: heightOver(plan.rafter.depth, eave),
    till,
  }).map(([along, z]) => [along, z + eave.plane.base] as const),
  thickness: plan.rafter.thickness,
  cuts: [],
});

type Cut = Timber['cuts'][number];

const turned = ({ normal, reach }: Cut): Cut => ({
  normal: [-normal[0], -normal[1], -normal[2]],
  reach: -reach,
});

/** What lies over the main rafters' tops. */
const overMain = (plan: RoofPlan, host: Eave): Cut =>
  turned(planeCut(host.plane, heightOver(plan.rafter.depth, host)));

const headers = (plan: RoofPlan, on: DormerOn): readonly Timber[] =>
  dormerHeaders(plan, on).map(({ id, from, thickness, length, topHeight }) => {
    const { depth } = on.shape.plan.header;
    const middle = (on.shape.from + on.shape.to) / 2;
    const start = lineAt(on.host, middle).from;
    const { up } = on.host.plane;
    const origin: Vec2 = [start[0], start[1] + up[1] * (from + thickness / 2)];
    return {
      id,
      origin,
      direction: [1, 0],
      outline: [
        [-length / 2, topHeight - depth],
        [length / 2, topHeight - depth],
        [length / 2, topHeight],
        [-length / 2, topHeight],
      ],
      thickness,
      cuts: [],
    };
  });

/** Between the trimmer's top and the underside of the rafter over it. */
const studs = (plan: RoofPlan, on: DormerOn): readonly Timber[] => {
  const { eave, host, shape } = on;
  const { thickness } = shape.plan.studs;
  const under = heightOver(plan.rafter.depth, eave) - plan.rafter.depth * Math.sqrt(1 + eave.m * eave.m);
  const low = mainTop(on, shape.plan.front);
  const high = mainTop(on, shape.plan.front + shape.run);
  return shape.ends.flatMap((x) =>
    sideStudsAt(plan, on).map((at) => ({
      id: `stud.${on.name}.${x}.${at}`,
      origin: lineAt(eave, x).from,
      direction: eave.plane.up,
      outline: [
        [at + thickness / 2, high],
        [at - thickness / 2, high],
        [at - thickness / 2, low],
        [at + thickness / 2, low],
      ] as const,
      thickness: plan.rafter.thickness,
      cuts: [overMain(plan, host), planeCut(eave.plane, under)],
    })),
  );
};
