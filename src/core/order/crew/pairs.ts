import { middleOf, sidesOf } from '../../level/layout';
import { rafterId, type JointId, type RafterId } from '../../site/ids';
import { boardFor } from './boards';
import { held, home, stands, type PlannedAction, type View } from './view';

/** Rafters and pairs as a crew thinks of them: which are the ends, which the middle, what sets one up and nails it home. */

export const endRafters = ({ last, seen }: View): readonly RafterId[] =>
  [1, last].flatMap((n) => sidesOf(seen.level).map((side) => rafterId(side, n)));

/** Once one end rafter is nailed home at both its ends the ridge does not move any more. */
export const pinned = (view: View): boolean =>
  endRafters(view).some((id) => home(view, `ridge:${id}`) && home(view, `heel:${id}`));

/** Rafters to put up, each to its mark and tacked at ridge and heel before the next. */
export const setUp = (view: View, ids: readonly RafterId[]): readonly PlannedAction[] =>
  ids.flatMap((id): readonly PlannedAction[] => {
    const tacks = (['ridge', 'heel'] as const)
      .map((kind): JointId => `${kind}:${id}`)
      .filter((joint) => !held(view, joint))
      .map((joint): PlannedAction => ({ type: 'tack', joint, nails: 2 }));
    const wrong = refitted(view, id);
    if (wrong.length > 0) return wrong;
    if (stands(view, id)) return tacks;
    const board = boardFor(view);
    return board ? [{ type: 'place', member: id, at: 'mark', board }, ...tacks] : [];
  });

/** A cut that the square shows this much out is no matter of drying, inches. Ours: the fault that is looked for is a quarter. */
const steep = 3 / 16;

/** Still in the hand, a rafter whose plumb cut gapes at one end goes to the square, and down again where its cut is wrong. */
const refitted = (view: View, id: RafterId): readonly PlannedAction[] => {
  const board = view.seen.members[id];
  const loose = !held(view, `ridge:${id}`) && !held(view, `heel:${id}`);
  if (!view.refits || !loose || !board || board === 'up' || !view.seen.seenAslant(id)) return [];
  const square = view.said('square', board)?.value;
  if (square === undefined) return [{ type: 'read', tool: 'square', at: board }];
  if (Number(square) < steep) return [];
  if (view.seen.site.judged[board]?.call !== 'swap')
    return [{ type: 'judge', subject: board, call: 'swap', why: 'plumbCutSteep' }];
  const other = boardFor(view);
  return other ? [{ type: 'swap', member: id, board: other, turn: false }] : [];
};

/** What nails a rafter home, as far as there is something to nail into. */
export const nailUp = (
  view: View,
  id: RafterId,
  kinds: readonly ('ridge' | 'heel' | 'heelTie')[],
): readonly PlannedAction[] =>
  kinds
    .map((kind): JointId => `${kind}:${id}`)
    .filter(
      (joint) =>
        !home(view, joint) &&
        (!joint.startsWith('heelTie') || stands(view, `joist.${Number(id.split('.')[2])}`)),
    )
    .map((joint) => ({ type: 'nailOff', joint }));

export const middleStation = ({ seen }: View): number => middleOf(seen.level);
