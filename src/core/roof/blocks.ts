import { baysOf, differentBays } from './bays';
import type { FiguredBlock } from './figured';
import type { RoofPlan } from './plan';
import { planeOverPlate, type PlaneGroup } from './planes';
import { ventOf } from './vents';

/** One block for each different bay and eave. A bay too tight for its block gets none. */
export const figuredBlocks = (
  plan: RoofPlan,
  { stations, groups }: { readonly stations: readonly number[]; readonly groups: readonly PlaneGroup[] },
): readonly FiguredBlock[] =>
  groups
    .flatMap((group) =>
      differentBays(baysOf(stations, plan))
        .filter(({ block }) => block > 0)
        .map(({ block, count }) => ({
          count: count * group.eaves,
          side: group.side,
          length: block,
          ...standing(plan, group),
          ...ventOf(plan.vents, block),
        })),
    )
    .map((block, i) => ({ id: `block.${i + 1}`, ...block }));

/**
 * How a block meets the roof plane. Plumb, its outer face is over the plate's and its top edge is beveled to the plane;
 * square to the rafters, it leans out from the same edge of the plate and needs no bevel. Height is of the outer face.
 */
const standing = (
  { blockStands }: RoofPlan,
  group: PlaneGroup,
): { readonly height: number; readonly bevel: FiguredBlock['bevel'] } => {
  const { m } = group.eave;
  const plumb = planeOverPlate(group);
  return blockStands === 'plumb'
    ? { height: plumb, bevel: { rise: m, run: 1 } }
    : { height: plumb / Math.sqrt(1 + m * m), bevel: { rise: 0, run: 1 } };
};
