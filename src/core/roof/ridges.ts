import { hair, isOver } from '../units/hair';
import { edgesOf, type Edge } from './edges';
import type { FiguredRidge } from './figured';
import type { RoofForm } from './form';
import type { GablePlan, HipPlan } from './plan';
import type { Side } from './side';
import { topOf, type PlaneGroup } from './planes';
import { halfAcross, skewOf } from './skew';

/** Set so that the lower plane's rafters are flush with its top; it has to be as deep as the longest plumb cut. */
export const figuredRidges = (
  plan: GablePlan | HipPlan,
  { form, groups }: { readonly form: RoofForm; readonly groups: readonly PlaneGroup[] },
): readonly FiguredRidge[] => {
  const edges = edgesOf(form);
  const leastDepth = Math.max(...groups.map(({ cuts }) => cuts.plumbCutLength));
  const onRidge = groups.filter(({ walls }) => walls.includes('street') || walls.includes('yard'));
  return edges
    .filter(({ kind }) => kind === 'ridge')
    .map((edge) => {
      const past = endsInHips(edge) ? 0 : form.past;
      const lineLength = edge.run + past + past;
      const more = endsInHips(edge) ? pastHips(plan, edge, edges) : 0;
      return {
        id: 'ridge',
        count: 1,
        side: 'both' as const,
        lineLength,
        length: lineLength + 2 * more,
        topHeight: Math.min(...onRidge.map(topOf)),
        leastDepth,
        bearsFully: !isOver(leastDepth, plan.ridge.depth),
        ...proudOf(onRidge),
      };
    });
};

/** Tops of unequal slopes come to the ridge at heights of their own: it is set to the lower. */
const proudOf = (groups: readonly PlaneGroup[]): Pick<FiguredRidge, 'proud'> => {
  const [highest, lowest] = [...groups].sort((a, b) => topOf(b) - topOf(a));
  if (!highest || !lowest) return {};
  const by = topOf(highest) - topOf(lowest);
  return by > hair ? { proud: { side: highest.eave.side as Side, by } } : {};
};

const endsInHips = ({ low }: Edge): boolean => low.some(({ what }) => what === 'plane');

/**
 * How far a ridge runs past its theoretical end at the hips: to the outer face of the commons that stand there, or until
 * the whole cheek of a hip against its side bears. Inches.
 */
const pastHips = (plan: GablePlan | HipPlan, { line }: Edge, edges: readonly Edge[]): number => {
  if (plan.kind !== 'hip') return 0;
  if (plan.hipTop === 'betweenCommons') return plan.rafter.thickness / 2;
  const hip = edges.find(({ kind }) => kind === 'hip');
  if (!hip) return 0;
  const skew = skewOf(hip.line.way, line.way);
  return (plan.ridge.thickness / 2) * (skew.cos / skew.sin) + halfAcross(plan.hip.thickness, skew);
};
