import { figuredBlocks } from './blocks';
import { cautionsOf } from './cautions';
import { edgesOf } from './edges';
import type { CommonRafter, FiguredRoof, Layout } from './figured';
import { expand, type RoofForm } from './form';
import { hipCautions } from './hipCautions';
import { figuredHips } from './hips';
import { figuredJacks, jacksOf } from './jacks';
import { piecesOf, type Piece } from './pieces';
import type { RoofPlan } from './plan';
import { commonsOf, grouped, topOf, wallsOf, type PlaneGroup, type RoofPlane } from './planes';
import { isOver } from '../units/hair';
import { rakeCautions } from './rakeCautions';
import { figuredRakes, ledgerPast } from './rake';
import { figuredRidges } from './ridges';
import { figuredStuds } from './studs';
import { figuredTies } from './ties';

/** Figures a roof: every length, cut, height and mark the crew needs, in inches, unrounded. The plan is already checked. */
export const figure = (plan: RoofPlan): FiguredRoof => {
  const form = expand(plan);
  const pieces = piecesOf(form);
  const planes = commonsOf(form, pieces, plan);
  const groups = grouped(planes);
  const ridges = plan.kind === 'shed' ? [] : figuredRidges(plan, { form, groups });
  const topHeight = ridges[0]?.topHeight ?? 0;
  const slants = slanting(plan, form, { pieces, groups });
  return {
    commonRafters: groups.filter(({ count }) => count > 0).map((group) => common(group, groups.length === 1)),
    ridges,
    ...ledgersOf(plan, groups),
    layout: layoutOf(plan, form),
    blocks: figuredBlocks(plan, form),
    ties: tiesOf(plan, planes, topHeight),
    ...postsOf(plan, topHeight),
    ...(plan.kind !== 'hip' && plan.gableStuds && { gableStuds: figuredStuds(plan, planes) }),
    ...figuredRakes(plan, groups),
    ...slants,
    cautions: [
      ...groups.flatMap((group) => cautionsOf({ plan, ...group, topHeight })),
      ...rakeCautions(plan, groups),
      ...slants.cautions,
    ],
  };
};

const tiesOf = (plan: RoofPlan, planes: readonly RoofPlane[], topHeight: number): FiguredRoof['ties'] => {
  if (plan.kind === 'shed') return [];
  const across = planes.filter(({ eave }) => eave.side === 'street' || eave.side === 'yard');
  return figuredTies(plan, { planes: across, topHeight, pairs: across[0]?.count ?? 0 });
};

/** A ledger runs from one flush end rafter to the other. */
const ledgersOf = (plan: RoofPlan, groups: readonly PlaneGroup[]): Pick<FiguredRoof, 'ledgers'> => {
  const [group] = groups;
  if (plan.kind !== 'shed' || !group) return {};
  const leastDepth = group.cuts.plumbCutLength;
  return {
    ledgers: [
      {
        id: 'ledger',
        count: 1,
        side: 'yard',
        length: plan.length + 2 * ledgerPast(plan),
        topHeight: topOf(group),
        leastDepth,
        bearsFully: !isOver(leastDepth, plan.ledger.depth),
      },
    ],
  };
};

const postsOf = (plan: RoofPlan, topHeight: number): Pick<FiguredRoof, 'posts'> => {
  if (plan.kind !== 'gable' || !plan.posts) return {};
  const { at, below } = plan.posts;
  const length = topHeight - plan.ridge.depth + below;
  return { posts: [{ id: 'post', count: at.length, side: 'both', length, at }] };
};

const common = ({ side, count, cuts }: PlaneGroup, alone: boolean): CommonRafter => ({
  id: alone ? 'common' : `common.${side}`,
  count,
  side,
  ...cuts,
});

/** Stations of the first eave, and of those that are laid out otherwise. */
const layoutOf = ({ spacing, datum }: RoofPlan, { eaves }: RoofForm): Layout => {
  const [first] = eaves;
  const stations = first?.stations ?? [];
  const others = eaves.filter((eave) => eave.stations !== stations);
  const lists = [...new Set(others.map((eave) => eave.stations))];
  if (lists.length === 0) return { spacing, datum, stations };
  const told = lists.map((list) => ({
    side: wallsOf(others.filter((eave) => eave.stations === list).map(({ side }) => side)),
    stations: list,
  }));
  return { spacing, datum, stations, eaves: told };
};

type Slanting = Pick<FiguredRoof, 'hips' | 'jacks'> & { readonly cautions: FiguredRoof['cautions'] };

const slanting = (
  plan: RoofPlan,
  form: RoofForm,
  { pieces, groups }: { readonly pieces: readonly Piece[]; readonly groups: readonly PlaneGroup[] },
): Slanting => {
  if (plan.kind !== 'hip') return { cautions: [] };
  const edges = edgesOf(form);
  const hips = figuredHips(plan, form, edges);
  const plumbCutLength = Math.max(...groups.map(({ cuts }) => cuts.plumbCutLength));
  return {
    hips,
    jacks: figuredJacks(plan, jacksOf(plan, pieces, edges)),
    cautions: hipCautions(plan, { hips, edges, form, plumbCutLength }),
  };
};
