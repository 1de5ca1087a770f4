import { isOver } from '../units/hair';
import { figuredBlocks } from './blocks';
import { cautionsOf } from './cautions';
import type { CommonRafter, FiguredRidge, FiguredRoof } from './figured';
import { expand, type RoofForm } from './form';
import type { RoofPlan } from './plan';
import { grouped, planesOf, topOf, type PlaneGroup } from './planes';
import { stations } from './stations';
import { figuredTies } from './ties';

/** Figures a roof: every length, cut, height and mark the crew needs, in inches, unrounded. The plan is already checked. */
export const figure = (plan: RoofPlan): FiguredRoof => {
  const form = expand(plan);
  const planes = planesOf(form, plan);
  const groups = grouped(planes);
  const marks = stations({
    length: form.length,
    spacing: plan.spacing,
    thickness: plan.rafter.thickness,
    datum: plan.datum,
  });
  const ridge = figuredRidge(plan, { form, groups });
  return {
    commonRafters: groups.map((group) => common(group, { pairs: marks.length, alone: groups.length === 1 })),
    ridges: [ridge],
    layout: { spacing: plan.spacing, datum: plan.datum, stations: marks },
    blocks: figuredBlocks(plan, { stations: marks, groups }),
    ties: figuredTies(plan, { planes, topHeight: ridge.topHeight, pairs: marks.length }),
    cautions: groups.flatMap((group) => cautionsOf({ plan, ...group, topHeight: ridge.topHeight })),
  };
};

const common = (
  { side, eaves, cuts }: PlaneGroup,
  { pairs, alone }: { readonly pairs: number; readonly alone: boolean },
): CommonRafter => ({ id: alone ? 'common' : `common.${side}`, count: eaves * pairs, side, ...cuts });

/** Set so that the lower plane's rafters are flush with its top; it has to be as deep as the longest plumb cut. */
const figuredRidge = (
  plan: RoofPlan,
  { form, groups }: { readonly form: RoofForm; readonly groups: readonly PlaneGroup[] },
): FiguredRidge => {
  const length = form.ridge.to - form.ridge.from;
  const leastDepth = Math.max(...groups.map(({ cuts }) => cuts.plumbCutLength));
  return {
    id: 'ridge',
    count: 1,
    side: 'both',
    lineLength: length,
    length,
    topHeight: Math.min(...groups.map(topOf)),
    leastDepth,
    bearsFully: !isOver(leastDepth, plan.ridge.depth),
  };
};
