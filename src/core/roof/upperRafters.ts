import type { UpperRafter } from './figured';
import type { Eave, RoofForm } from './form';
import type { Piece } from './pieces';
import type { RoofPlan } from './plan';
import { shorteningAt } from './planes';
import type { Side } from './side';

/** Main rafters from a dormer's upper header to the ridge. */

type UpperOn = {
  readonly id: string;
  /** Of one length. */
  readonly pieces: readonly Piece[];
  readonly host: Eave;
  /** Level, at the header it stands on. */
  readonly shorteningBottom: number;
};

/** Cut from the lowest point of a header's or a ridge's face; at a ridge the same as its other rafters. */
export const upperRafter = (
  plan: RoofPlan,
  form: RoofForm,
  { id, pieces: [first, ...more], host, shorteningBottom }: UpperOn,
): readonly UpperRafter[] => {
  if (!first) return [];
  const { m, side } = host;
  const g = Math.sqrt(1 + m * m);
  const run = first.to - first.from;
  const shorteningTop = shorteningAt(plan, form, { eave: host, piece: first });
  const bodyLength = (run - shorteningTop - shorteningBottom) * g;
  return [
    {
      id,
      count: 1 + more.length,
      side: side as Side,
      run,
      lineLength: run * g,
      bodyLength,
      stockLength: bodyLength + plan.rafter.depth * m,
      plumbCutLength: plan.rafter.depth * g,
      shorteningTop,
      shorteningBottom,
    },
  ];
};
