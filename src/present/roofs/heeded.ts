import { adviceOn, type Advice } from '../../core/advice/advice';
import { numberTwo, type Species } from '../../core/advice/designValues';
import { durations } from '../../core/advice/rafterSpan';
import type { FiguredRoof } from '../../core/roof/figured';
import type { RoofPlan } from '../../core/roof/plan';

/** What the plans say of wood and load; what is left out is not spoken of. Pounds a square foot. */
export type Loads = { readonly wood?: Species; readonly live?: number; readonly dead?: number };

/** Something to heed, not a refusal: where it comes from stands beside it where somebody published it. */
export type Heed = { readonly code: string; readonly text: string; readonly source?: string };

/** The cautions of a roof, then advice where enough of it is known. */
export const heedsOf = (plan: RoofPlan, roof: FiguredRoof, loads: Loads): readonly Heed[] => {
  const all: readonly Heed[] = [
    ...roof.cautions.map(({ code, text }) => ({ code, text })),
    ...advised(plan, roof, loads).map(({ code, text, source }) => ({ code, text, source })),
  ];
  return all.filter(({ text }, i) => all.findIndex((one) => one.text === text) === i);
};

const advised = (plan: RoofPlan, roof: FiguredRoof, { wood, live, dead }: Loads): readonly Advice[] => {
  const [cuts, ridge] = [roof.commonRafters[0], roof.ridges[0]];
  if (plan.kind !== 'gable' || !cuts || !ridge) return [];
  const loads =
    wood === undefined || live === undefined || dead === undefined
      ? undefined
      : {
          ...{ wood: numberTwo(wood, 'from2018'), live, dead, bendsTo: 180 as const },
          duration: durations.snow,
        };
  return adviceOn({ roof: { plan, cuts, topHeight: ridge.topHeight }, ...(loads && { loads }) });
};
