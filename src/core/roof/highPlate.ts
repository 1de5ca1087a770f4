import { hair } from '../units/hair';
import { baysOf, differentBays } from './bays';
import { eaveRows, type EaveRow } from './blocks';
import type { FiguredBlock, FiguredHighPlate } from './figured';
import { frameOf, type Eave, type HighPlate, type RoofForm } from './form';
import type { Framing } from './framing';
import { heightOver } from './heightOver';
import type { RoofPlan } from './plan';
import { ventOf } from './vents';

/** The higher of two walls that carry a shed roof: its plate, and the blocks on it. */

/** Of its top above the low plate: where the plane passes its inner face, less what the rafters stand over it. Inches. */
export const highPlateTop = (
  { rafter: { depth } }: Pick<RoofPlan, 'rafter'>,
  eave: Eave,
  { seat }: HighPlate,
): number =>
  eave.plane.base + heightOver(depth, eave) + eave.run * eave.m - heightOver(depth, { m: eave.m, seat });

type On = { readonly eave: Eave; readonly plate: HighPlate };

export const highPlatesIn = (form: RoofForm): readonly On[] =>
  form.eaves.flatMap((eave) => {
    const { highPlate } = frameOf(form, eave.body);
    return highPlate ? [{ eave, plate: highPlate }] : [];
  });

export const figuredHighPlates = (
  plan: RoofPlan,
  form: RoofForm,
): { readonly highPlates?: readonly FiguredHighPlate[] } => {
  const plates = highPlatesIn(form).map(({ eave, plate }) => ({
    id: 'highPlate',
    count: 1,
    side: 'yard' as const,
    length: plan.length,
    height: highPlateTop(plan, eave, plate),
  }));
  return plates.length > 0 ? { highPlates: plates } : {};
};

/** Plumb ones with their long face over the plate's outer one; square ones on their inner edge, the outer one over that face. */
export const highBlockHeight = (
  { rafter, blockStands }: Pick<RoofPlan, 'rafter' | 'blockStands'>,
  { m }: Eave,
  { seat, width }: HighPlate,
): number => {
  const g = Math.sqrt(1 + m * m);
  const over = heightOver(rafter.depth, { m, seat });
  return blockStands === 'plumb' ? over + width * m : (over + (width - rafter.thickness / g) * m) / g;
};

/** Those on the low plate, and one more for each different bay on the high one. */
export const withHighBlocks = (
  plan: RoofPlan,
  framing: Framing,
  low: readonly FiguredBlock[],
): readonly FiguredBlock[] => [
  ...low,
  ...eaveRows(framing)
    .flatMap((row) => blocksOver(plan, framing.form, row))
    .map((block, i) => ({ id: `block.${low.length + i + 1}`, ...block })),
];

const blocksOver = (
  plan: RoofPlan,
  form: RoofForm,
  { eave, runs }: EaveRow,
): readonly Omit<FiguredBlock, 'id'>[] => {
  const { highPlate } = frameOf(form, eave.body);
  // A square block thicker than its rafters are deep may find no room under the roof.
  if (!highPlate || highBlockHeight(plan, eave, highPlate) <= hair) return [];
  return differentBays(runs.flatMap((run) => baysOf(run, plan)))
    .filter(({ block }) => block > 0)
    .map(({ block, count }) => ({
      count,
      side: 'yard',
      length: block,
      height: highBlockHeight(plan, eave, highPlate),
      bevel: plan.blockStands === 'plumb' ? { rise: eave.m, run: 1 } : { rise: 0, run: 1 },
      ...ventOf(plan.vents, block),
    }));
};
