import { isOver } from '../units/hair';
import { hasPlane, type Edge } from './edges';
import type { FiguredBreak, FiguredGussets, FiguredPurlin, FiguredRoof } from './figured';
import { bearsAt } from './form';
import type { Framing } from './framing';
import { miterOf } from './miter';
import type { RoofPlan } from './plan';
import { topOf, wallsOf, type RoofPlane } from './planes';

/** Where two planes of one side meet: steep below, flatter above. */

/** A break of the roof with the planes on both sides of it. */
export type BreakAt = { readonly edge: Edge; readonly lower: RoofPlane; readonly upper: RoofPlane };

export const breaksOn = ({ edges }: Framing, planes: readonly RoofPlane[]): readonly BreakAt[] =>
  edges
    .filter(({ kind }) => kind === 'break')
    .flatMap((edge) => {
      const [a, b] = planes.filter(({ eave }) => hasPlane(edge, eave.plane));
      if (!a || !b) return [];
      return [a.atBreak ? { edge, lower: a, upper: b } : { edge, lower: b, upper: a }];
    });

/** Breaks, and the purlins or gussets that hold them. Both sides are alike and told once. */
export const figuredBreaks = (
  plan: RoofPlan,
  framing: Framing,
  planes: readonly RoofPlane[],
): Pick<FiguredRoof, 'breaks' | 'purlins' | 'gussets'> => {
  const all = breaksOn(framing, planes);
  const [first] = all;
  if (!first) return {};
  const standing = { count: all.length, side: wallsOf(all.map(({ lower }) => lower.eave.side)) };
  const breaks = [{ id: 'break', ...standing, ...breakOf(plan, first) }];
  const purlin = purlinOf(first);
  if (purlin) return { breaks, purlins: [{ id: 'purlin', ...standing, ...purlin }] };
  return { breaks, gussets: gussetsOf(plan, first, all.length) };
};

const breakOf = (
  { rafter }: RoofPlan,
  { edge, lower, upper }: BreakAt,
): Omit<FiguredBreak, 'id' | 'count' | 'side'> => {
  const told = { run: lower.eave.run, height: topOf(lower), length: edge.run };
  if (upper.eave.stands?.purlin)
    return {
      ...told,
      joint: 'plumb',
      jointLength: upper.cuts.heightAbovePlate,
      lowerCut: { rise: lower.eave.m, run: 1 },
      upperCut: { rise: upper.eave.m, run: 1 },
    };
  const { half, length } = miterOf({ steep: lower.eave.m, flat: upper.eave.m, depth: rafter.depth });
  return { ...told, joint: 'miter', jointLength: length, lowerCut: half, upperCut: half };
};

/** It has to be as deep as the part of the lower rafters' cut that reaches below the upper rafters. */
const purlinOf = ({
  edge,
  lower,
  upper,
}: BreakAt): Omit<FiguredPurlin, 'id' | 'count' | 'side'> | undefined => {
  const { stands } = upper.eave;
  if (!stands?.purlin) return undefined;
  const leastDepth = lower.cuts.plumbCutLength - upper.cuts.heightAbovePlate;
  return {
    section: stands.purlin,
    length: edge.run,
    topHeight: bearsAt(upper.eave),
    leastDepth,
    bearsFully: !isOver(leastDepth, stands.purlin.depth),
  };
};

/** On both faces of each joint; the end pairs have none on the outside, where the gable is sheathed. */
const gussetsOf = (plan: RoofPlan, { lower, upper }: BreakAt, sides: number): readonly FiguredGussets[] => {
  if (plan.kind !== 'gambrel' || plan.breakOn.what !== 'gussets') return [];
  const { thickness, reach } = plan.breakOn;
  const { depth } = plan.rafter;
  const { half } = miterOf({ steep: lower.eave.m, flat: upper.eave.m, depth });
  const size = Math.sqrt(half.rise * half.rise + half.run * half.run);
  const [sin, cos] = [half.rise / size, half.run / size];
  return [
    {
      id: 'gusset',
      count: sides * (2 * lower.count - 2),
      side: 'both',
      thickness,
      reach,
      length: 2 * reach * cos,
      width: reach * sin + depth * cos,
      bend: half,
    },
  ];
};
