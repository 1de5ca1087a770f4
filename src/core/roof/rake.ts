import { hair } from '../units/hair';
import { rafterCuts } from './common';
import type { FiguredLookouts, FiguredRake } from './figuredRake';
import type { Eave } from './form';
import { heightOver } from './heightOver';
import type { Lookouts, Rake, RoofPlan } from './plan';
import type { PlaneGroup } from './planes';
import { ends, type End, type Side } from './side';

/** Rake rafters and the lookouts that hold them: what carries the roof past the gables. */

/** The plan's rake, where it has one. */
export const rakeOf = (plan: RoofPlan): Rake | undefined =>
  plan.kind === 'gable' || plan.kind === 'shed' ? plan.rake : undefined;

/** The plan's lookouts, where it has some. */
export const lookoutsOf = (plan: RoofPlan): Lookouts | undefined => rakeOf(plan)?.lookouts || undefined;

/** Level, from the gable to the inner face of the rake rafter. Inches. */
export const reachOf = (plan: RoofPlan): number => {
  const rake = rakeOf(plan);
  return plan.kind === 'hip' || !rake ? 0 : plan.rakeOverhang - rake.rafter.thickness;
};

/** How far a shed's ledger runs past each gable, to carry rake rafters as a ridge does. Inches. */
export const ledgerPast = (plan: RoofPlan): number =>
  plan.kind === 'shed' && plan.rake ? plan.rakeOverhang : 0;

/** Absent where the plan asks for none. */
export const figuredRakes = (
  plan: RoofPlan,
  groups: readonly PlaneGroup[],
): { readonly rakeRafters?: readonly FiguredRake[]; readonly lookouts?: readonly FiguredLookouts[] } => {
  const rake = rakeOf(plan);
  if (!rake) return {};
  const told = groups.filter(({ count }) => count > 0);
  const { lookouts } = rake;
  return {
    rakeRafters: told.map((group) => rakeRafter(plan, rake, group)),
    ...(lookouts && { lookouts: told.flatMap((group) => rowsOf(plan, lookouts, group)) }),
  };
};

const sideOf = ({ walls }: PlaneGroup): 'both' | Side => (walls.length > 1 ? 'both' : (walls[0] as Side));

const named = (what: string, ...parts: readonly string[]): string =>
  [what, ...parts.filter((part) => part !== 'both' && part !== 'ends')].join('.');

const rakeRafter = (plan: RoofPlan, { rafter }: Rake, group: PlaneGroup): FiguredRake => {
  const cuts = rafterCuts(group.eave, { rafter, shortening: group.cuts.shortening });
  return {
    id: named('rake', plan.kind === 'shed' ? 'both' : sideOf(group)),
    count: 2 * group.walls.length,
    side: sideOf(group),
    section: rafter,
    past: reachOf(plan) + rafter.thickness / 2,
    run: cuts.run,
    rise: cuts.rise,
    lineLength: cuts.lineLength,
    shortening: cuts.shortening,
    bodyLength: cuts.bodyLength,
    tailLength: cuts.tailLength,
    edgeLength: cuts.edgeLength,
    stockLength: cuts.stockLength,
    plumbCutLength: cuts.plumbCutLength,
  };
};

/** Level, from each gable back to the face of the rafter that lookouts butt against there. Inches. */
export const backsOf = (
  { length, rafter }: RoofPlan,
  stations: readonly number[],
  { back }: Pick<Lookouts, 'back'>,
): Readonly<Record<End, number>> => ({
  A: (stations[back] ?? NaN) - rafter.thickness / 2,
  B: length - (stations[stations.length - 1 - back] ?? NaN) - rafter.thickness / 2,
});

/** One entry for both gables, or one for each where the bays beside them differ. */
const rowsOf = (plan: RoofPlan, lookouts: Lookouts, group: PlaneGroup): readonly FiguredLookouts[] => {
  const marks = lookoutMarks(plan, lookouts, { ...group.eave, edgeLength: group.cuts.edgeLength });
  if (marks.length === 0) return [];
  const backs = backsOf(plan, group.eave.stations, lookouts);
  const alike = Math.abs(backs.A - backs.B) < hair;
  const reach = reachOf(plan);
  const side = sideOf(group);
  return (alike ? (['ends'] as const) : ends).map((end) => {
    const many = group.walls.length * (end === 'ends' ? 2 : 1);
    const back = backs[end === 'ends' ? 'A' : end];
    return {
      id: named('lookout', plan.kind === 'shed' ? 'both' : side, end),
      count: many * marks.length,
      side,
      section: { thickness: lookouts.thickness, depth: lookouts.width },
      end,
      spacing: lookouts.spacing,
      length: back + reach,
      reach,
      back,
      notchDepth: lookouts.thickness,
      notchWidth: lookouts.width,
      notchedRafters: many * lookouts.back,
      marks,
      markedFrom: 'tailCut',
    };
  });
};

type Edged = Pick<Eave, 'm' | 'seat' | 'overhang' | 'clad'> & { readonly edgeLength: number };

/**
 * Middles of the lookouts along a rafter's top edge, from its tail cut up: every so far. One that would lie in a block or
 * have its notch over the birdsmouth goes up until it is clear, or is left out where the next one is nearer than half the
 * spacing then; the last leaves its own width of wood under the plumb cut. Ours. Inches.
 */
export const lookoutMarks = (plan: RoofPlan, lookouts: Lookouts, edge: Edged): readonly number[] => {
  const { spacing, thickness, width } = lookouts;
  const [low, high] = heelAlong(plan, lookouts, edge);
  const highest = edge.edgeLength - thickness * edge.m - 1.5 * width;
  const many = Math.max(0, Math.floor((highest + hair) / spacing));
  const all = Array.from({ length: many }, (_, i) => (i + 1) * spacing);
  const below = all.filter((mark) => mark + width / 2 <= low + hair);
  const above = all.filter((mark) => mark - width / 2 >= high - hair);
  const raised = high + width / 2;
  const isNeeded = below.length + above.length < many && raised <= highest + hair;
  const hasRoom = above[0] === undefined || above[0] - raised > spacing / 2 + hair;
  return [...below, ...(isNeeded && hasRoom ? [raised] : []), ...above];
};

/** Stretch of the top edge that blocks and birdsmouth take, down to a lookout's depth; from the tail cut. Inches. */
const heelAlong = (
  { blockStands, rafter }: RoofPlan,
  { thickness }: Lookouts,
  { m, seat, overhang, clad }: Edged,
): readonly [number, number] => {
  const g = Math.sqrt(1 + m * m);
  // Square to the edge from a plumb line's top, one is already past it by depth times slope.
  const plumb = overhang * g - thickness * m;
  // A block that stands square leans out from the plate's edge over the whole height.
  const leaning = overhang * g + (clad - m * heightOver(rafter.depth, { m, seat })) / g;
  const low = blockStands === 'plumb' ? plumb : Math.min(plumb, leaning);
  return [low, (overhang + Math.max(seat, clad + rafter.thickness)) * g];
};
