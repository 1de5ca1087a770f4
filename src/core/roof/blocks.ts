import { baysOf, differentBays } from './bays';
import { heightOver } from './heightOver';
import type { FiguredBlock } from './figured';
import type { RoofPlan } from './plan';
import type { Eave, RoofForm } from './form';
import { wallsOf } from './planes';
import { ventOf } from './vents';

/** One block for each different bay and eave. A bay too tight for its block gets none. */
export const figuredBlocks = (plan: RoofPlan, { eaves }: RoofForm): readonly FiguredBlock[] =>
  rowsOf(eaves)
    .flatMap((row) =>
      differentBays(baysOf(row[0].stations, plan))
        .filter(({ block }) => block > 0)
        .map(({ block, count }) => ({
          count: count * row.length,
          side: wallsOf(row.map(({ side }) => side)),
          length: block,
          ...standing(plan, row[0]),
          ...ventOf(plan.vents, block),
        })),
    )
    .map((block, i) => ({ id: `block.${i + 1}`, ...block }));

type EaveRow = readonly [Eave, ...Eave[]];

/** Eaves that are laid out and cut alike. */
const rowsOf = (eaves: readonly Eave[]): readonly EaveRow[] => {
  const rows: [Eave, ...Eave[]][] = [];
  for (const eave of eaves) {
    const same = rows.find(
      ([first]) => first.stations === eave.stations && first.m === eave.m && first.seat === eave.seat,
    );
    if (same) same.push(eave);
    else rows.push([eave]);
  }
  return rows;
};

/**
 * How a block meets the roof plane. Plumb, its outer face is over the plate's and its top edge is beveled to the plane;
 * square to the rafters, it leans out from the same edge of the plate and needs no bevel. Height is of the outer face.
 */
const standing = (
  { blockStands, rafter }: RoofPlan,
  eave: Eave,
): { readonly height: number; readonly bevel: FiguredBlock['bevel'] } => {
  const { m } = eave;
  const plumb = heightOver(rafter.depth, eave) + eave.clad * m;
  return blockStands === 'plumb'
    ? { height: plumb, bevel: { rise: m, run: 1 } }
    : { height: plumb / Math.sqrt(1 + m * m), bevel: { rise: 0, run: 1 } };
};
