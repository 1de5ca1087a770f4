import { longestBoard } from '../stock/boards';
import { spliced, type Pieces } from '../stock/splices';
import type { FiguredRoof } from './figured';
import type { FiguredSplice } from './figuredLists';
import type { RoofPlan } from './plan';

/** Ridges and ledgers as the pieces they are made of. */

type Long = {
  readonly member: string;
  readonly length: number;
  /** Whether rafters bear on its face, as on a ledger's, and not on both sides. */
  readonly onWall: boolean;
};

/**
 * A ridge is spliced where a pair of rafters pinches it, one that carries on its posts, a ledger between rafters, where no
 * hanger sits. Common practice, no source. With several ridges nothing here says where each begins: pieces are alike.
 */
export const splicedMember = (
  plan: RoofPlan,
  roof: FiguredRoof,
  { member, length, onWall }: Long,
): { readonly pieces: readonly Pieces[]; readonly splice?: FiguredSplice } => {
  const own = roof.ridges.find(({ id }) => id === member)?.lies;
  const { joints, marks } = own ? inSection(plan, roof, own.part) : jointsOf(plan, roof, onWall);
  const begins = own?.from ?? (plan.length - length) / 2;
  const places = marks === 'anywhere' ? marks : marks.map((x) => x - begins);
  const pieces = spliced(length, places, longestBoard);
  const isSpliced = pieces.reduce((sum, { count }) => sum + count, 0) > 1;
  return { pieces, ...(isSpliced && { splice: { member, length, joints, pieces } }) };
};

type Joints = {
  readonly joints: FiguredSplice['joints'];
  /** Along the roof from end A, in order. */
  readonly marks: readonly number[] | 'anywhere';
};

/** One of several along one line is spliced on its own section's rafters, or over posts. */
const inSection = (plan: RoofPlan, { layout: { eaves = [] } }: FiguredRoof, part: string): Joints =>
  'posts' in plan && plan.posts
    ? { joints: 'posts', marks: [...plan.posts.at].sort((a, b) => a - b) }
    : { joints: 'rafters', marks: eaves.find((eave) => eave.part === part)?.stations ?? [] };

const jointsOf = (plan: RoofPlan, { ridges, layout: { stations } }: FiguredRoof, onWall: boolean): Joints => {
  if (onWall)
    return { joints: 'bays', marks: stations.slice(1).map((x, i) => (x + (stations[i] as number)) / 2) };
  if (plan.kind === 'gable' && plan.posts)
    return { joints: 'posts', marks: [...plan.posts.at].sort((a, b) => a - b) };
  return ridges.length === 1
    ? { joints: 'rafters', marks: stations }
    : { joints: 'alike', marks: 'anywhere' };
};
