import type { Vec2 } from '../geometry/vector';
import { handsOf, type Edge } from './edges';
import { frameOf, type RoofForm } from './form';
import type { Framing } from './framing';
import {
  eaveOf,
  footFaces,
  heelOf,
  heightAt,
  hipCuts,
  openingAt,
  startOf,
  tillOf,
  turned,
  valleyFaces,
  woodOf,
  type Faced,
} from './hips';
import type { RoofPlan } from './plan';
import { dot2, pointOn, type Plane } from './surface';
import type { Timber } from './timber';
import { levelCut, planeCut, rafterSide, slantFrom, type Cut } from './timberParts';

/** Hips and valleys in their place. */

export const slantTimber = (plan: RoofPlan, framing: Framing, edge: Edge): readonly Timber[] => {
  const { form } = framing;
  const cuts = hipCuts(plan, framing, edge);
  const wood = woodOf(form, edge);
  if (!cuts || !wood) return [];
  const { left, right } = handsOf(edge);
  const over = heightAt(plan, eaveOf(form, left.plane));
  const { base } = startOf(form, edge).plane;
  const g = Math.sqrt(1 + edge.m * edge.m);
  const tail = cuts.tailLength / g;
  const isHip = edge.kind === 'hip';
  const more = tail > 0 && isHip ? wood.thickness : 0;
  const opening = openingAt(form, edge);
  const side = {
    depth: wood.depth,
    over: cuts.heightAbovePlate,
    till: edge.run + (tillOf(edge) ? wood.thickness * edgeSlack(edge) : 0),
    heel: isHip ? 0 : heelOf(edge, wood.thickness),
  };
  const backed = isHip && frameOf(form, left.body).hip?.fit === 'backed';
  return [
    {
      id: `${edge.kind}.${left.plane.id}.${right.plane.id}`,
      origin: edge.from,
      direction: edge.line.way,
      outline: (opening
        ? slantFrom(edge, { ...side, from: -wood.thickness * edgeSlack(edge) })
        : rafterSide({ m: edge.m, seat: cuts.seat, overhang: tail + more }, side)
      ).map(([along, z]) => [along, z + base] as const),
      thickness: wood.thickness,
      cuts: [
        ...(isHip ? tailCuts(form, [left.plane, right.plane]) : []),
        ...(isHip ? topCuts(plan, form, edge) : facesCut(valleyFaces(framing, edge), edge)),
        ...(opening ? facesCut(footFaces(opening, edge), turned(edge)) : []),
        ...(backed ? [planeCut(left.plane, over), planeCut(right.plane, over)] : []),
      ],
    },
  ];
};

/** Enough wood past the line to be cut to a header that the hip comes to however aslant. */
const edgeSlack = ({ planes, line: { way } }: Edge): number =>
  Math.max(...planes.map(({ plane: { up } }) => 1 / Math.abs(dot2(up, way))));

const tailCuts = (form: RoofForm, planes: readonly Plane[]): readonly Cut[] =>
  planes.map((plane) =>
    levelCut([-plane.up[0], -plane.up[1]], eaveOf(form, plane).overhang - dot2(plane.up, plane.foot)),
  );

/** Faces that the top of a hip comes to: those of the two commons, or the ridge's side. */
const topCuts = (plan: RoofPlan, form: RoofForm, edge: Edge): readonly Cut[] => {
  const apex = edge.to;
  const { way } = edge.line;
  const { hip, ridge, header } = frameOf(form, edge.planes[0].body);
  const till = tillOf(edge);
  if (till && header) return [levelCut(till.normal, till.reach - header.thickness)];
  if (hip?.top === 'againstRidge' && ridge) {
    const normal: Vec2 = [0, way[1] > 0 ? 1 : -1];
    return [levelCut(normal, dot2(normal, apex) - ridge.thickness / 2)];
  }
  return edge.planes.map(({ plane: { up } }) => {
    const across: Vec2 = [-up[1], up[0]];
    const normal: Vec2 = dot2(across, way) > 0 ? across : [up[1], -up[0]];
    return levelCut(normal, dot2(normal, apex) - plan.rafter.thickness / 2);
  });
};

const facesCut = (faces: readonly Faced[], edge: Edge): readonly Cut[] =>
  faces.map(({ way, thickness, beyond = 0 }) => {
    const across: Vec2 = [-way[1], way[0]];
    const normal: Vec2 = dot2(across, edge.line.way) > 0 ? across : [way[1], -way[0]];
    return levelCut(
      normal,
      dot2(normal, pointOn({ from: edge.to, way: edge.line.way }, beyond)) - thickness / 2,
    );
  });
