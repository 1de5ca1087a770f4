import { clearBays, differentBays } from './bays';
import { cautionsOf } from './cautions';
import { rafterCuts, type RafterCuts } from './common';
import type { CommonRafter, FiguredBlock, FiguredRidge, FiguredRoof } from './figured';
import { expand, type Eave, type RoofForm } from './form';
import type { RoofPlan } from './plan';
import { stations } from './stations';
import { figuredTies } from './ties';

/** Figures a roof: every length, cut, height and mark the crew needs, in inches, unrounded. The plan is already checked. */
export const figure = (plan: RoofPlan): FiguredRoof => {
  const form = expand(plan);
  const eave = form.eaves[0] as Eave;
  const cuts = rafterCuts(eave, plan);
  const topHeight = cuts.heightAbovePlate + (eave.run - cuts.shortening) * eave.m;
  const marks = stations({
    length: form.length,
    spacing: plan.spacing,
    thickness: plan.rafter.thickness,
    datum: plan.datum,
  });
  return {
    commonRafters: [common(cuts, form.eaves.length * marks.length)],
    ridges: [ridge({ plan, form, cuts, topHeight })],
    layout: { spacing: plan.spacing, datum: plan.datum, stations: marks },
    blocks: blocks(plan, { marks, eave }),
    ties: figuredTies(plan, { cuts, topHeight, m: eave.m, pairs: marks.length }),
    cautions: cautionsOf({ plan, eave, cuts, topHeight }),
  };
};

const common = (cuts: RafterCuts, count: number): CommonRafter => ({
  id: 'common',
  count,
  side: 'both',
  ...cuts,
});

type Top = {
  readonly plan: RoofPlan;
  readonly form: RoofForm;
  readonly cuts: RafterCuts;
  readonly topHeight: number;
};

const ridge = ({ plan, form, cuts, topHeight }: Top): FiguredRidge => {
  const length = form.ridge.to - form.ridge.from;
  return {
    id: 'ridge',
    count: 1,
    side: 'both',
    lineLength: length,
    length,
    topHeight,
    leastDepth: cuts.plumbCutLength,
    bearsFully: plan.ridge.depth >= cuts.plumbCutLength,
  };
};

/** One block for each different bay, both eaves counted. A bay too tight for its block gets none. */
const blocks = (
  plan: RoofPlan,
  { marks, eave }: { readonly marks: readonly number[]; readonly eave: Eave },
): readonly FiguredBlock[] =>
  differentBays(clearBays(marks, plan.rafter.thickness))
    .map(({ clear, count }) => ({ length: clear - plan.blockAllowance, count: 2 * count }))
    .filter(({ length }) => length > 0)
    .map(({ length, count }, i) => ({
      id: `block.${i + 1}`,
      count,
      side: 'both',
      length,
      bevel: { rise: plan.blockStands === 'plumb' ? eave.m : 0, run: 1 },
    }));
