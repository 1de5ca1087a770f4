import type { Vec2 } from '../geometry/vector';
import { gradient } from '../units/slope';
import { hair } from '../units/hair';
import { heightOver } from './heightOver';
import { handsOf, leftOf, type Edge } from './edges';
import type { Cheek, FiguredHip, Turn } from './figured';
import type { Eave, RoofForm } from './form';
import type { HipPlan } from './plan';
import { wallsOf } from './planes';
import type { Wall } from './side';
import { cheekOf, halfAcross, skewOf, type Skew } from './skew';
import { dot2, type Plane } from './surface';

/** Hips: from a plate's corner to the ridge's end, their backs along the line where two planes meet. */

/** All that one hip's cuts come to. */
export type HipCuts = Omit<FiguredHip, 'id' | 'count' | 'side'>;

/** Height of the planes over the plate at the reference face: the same for all that meet over a hip. */
export const heightAtHips = ({ rafter, seat, slope }: Pick<HipPlan, 'rafter' | 'seat' | 'slope'>): number =>
  heightOver(rafter.depth, { m: gradient(slope), seat });

export const hipCuts = (plan: HipPlan, form: RoofForm, edge: Edge): HipCuts => {
  const { run, m } = edge;
  const g = Math.sqrt(1 + m * m);
  const { left, right } = handsOf(edge);
  const { shortening, cheeks } =
    plan.hipTop === 'betweenCommons' ? betweenCommons(plan, edge) : againstRidge(plan, edge);
  const drop = Math.max(
    ...[left, right].map(({ plane }) => fallAcross(plane, edge) * (plan.hip.thickness / 2)),
  );
  const heightAbovePlate = heightAtHips(plan) - (plan.hipFit === 'dropped' ? drop : 0);
  return {
    run,
    lineLength: run * g,
    bodyLength: (run - shortening) * g,
    tailLength: Math.min(...tailReaches(form, edge)) * g,
    heightAbovePlate,
    seat: Math.max(0, (plan.hip.depth * g - heightAbovePlate) / m),
    slope: { rise: m, run: 1 },
    cheeks,
    shorteningTop: shortening,
    shorteningBottom: 0,
    backing: [backing(left.plane, edge), backing(right.plane, edge)],
    drop,
  };
};

/** How much a plane falls for each inch level and square to the hip, away from it. */
const fallAcross = ({ m, up }: Plane, edge: Edge): number => m * Math.abs(dot2(up, leftOf(edge)));

/** Of a side's bevel, square to the hip: its slope along the hip times the cotangent of its angle with that eave. */
const backing = ({ up }: Plane, { m, line }: Edge): Turn => {
  const { cos, sin } = skewOf(line.way, up);
  return { rise: m * sin, run: Math.sqrt(1 + m * m) * cos };
};

type Top = { readonly shortening: number; readonly cheeks: readonly Cheek[] };

/** Into the corner of the commons at the ridge's end: a cheek against each. The middle ends where the first face is met. */
const betweenCommons = ({ rafter }: HipPlan, edge: Edge): Top => {
  const { left, right } = handsOf(edge);
  const against = ({ up }: Plane): Skew => skewOf(edge.line.way, up);
  const sides = [
    { side: 'left', skew: against(left.plane) },
    { side: 'right', skew: against(right.plane) },
  ] as const;
  return {
    shortening: Math.max(...sides.map(({ skew }) => halfAcross(rafter.thickness, skew))),
    cheeks: sides.map(({ side, skew }) => cheekOf({ end: 'top', side }, skew, edge.m)),
  };
};

/** Against the side of the ridge: one cheek, on the side that looks at it. */
const againstRidge = ({ ridge }: HipPlan, edge: Edge): Top => {
  const along: Vec2 = [1, 0];
  const skew = skewOf(edge.line.way, along);
  const across: Vec2 = [0, edge.line.way[1] > 0 ? 1 : -1];
  const side = dot2(across, leftOf(edge)) > 0 ? 'left' : 'right';
  return {
    shortening: halfAcross(ridge.thickness, skew),
    cheeks: [cheekOf({ end: 'top', side }, skew, edge.m)],
  };
};

/** Level along the hip, from the plate's corner to the tail lines of both sides. Inches. */
export const tailReaches = ({ eaves }: RoofForm, { planes, line }: Edge): readonly number[] =>
  planes.map(({ plane }) => {
    const eave = eaves.find((one) => one.plane === plane) as Eave;
    return eave.overhang / dot2(plane.up, line.way);
  });

/** Hips with the same numbers told together. */
export const figuredHips = (plan: HipPlan, form: RoofForm, edges: readonly Edge[]): readonly FiguredHip[] => {
  const groups: { readonly cuts: HipCuts; readonly walls: Wall[]; count: number }[] = [];
  for (const edge of edges.filter(({ kind }) => kind === 'hip')) {
    const cuts = hipCuts(plan, form, edge);
    const walls = edge.planes.map(({ plane }) => plane.id as Wall);
    const same = groups.find((group) => isSame(group.cuts, cuts));
    if (same) {
      same.count += 1;
      same.walls.push(...walls);
    } else groups.push({ cuts, walls: [...walls], count: 1 });
  }
  const alone = groups.length === 1;
  return groups.map(({ cuts, walls, count }, i) => ({
    id: alone ? 'hip' : `hip.${i + 1}`,
    count,
    side: wallsOf(walls),
    ...cuts,
  }));
};

const close = (a: number, b: number): boolean => Math.abs(a - b) < hair;
const sameTurn = (a: Turn, b: Turn): boolean => close(a.rise * b.run, b.rise * a.run);

const isSame = (a: HipCuts, b: HipCuts): boolean =>
  close(a.run, b.run) &&
  close(a.bodyLength, b.bodyLength) &&
  close(a.tailLength, b.tailLength) &&
  sameTurn(a.backing[0], b.backing[0]) &&
  sameTurn(a.backing[1], b.backing[1]) &&
  a.cheeks.length === b.cheeks.length &&
  a.cheeks.every(
    (cheek, i) => cheek.side === b.cheeks[i]?.side && sameTurn(cheek.cheekAngle, b.cheeks[i].cheekAngle),
  );
