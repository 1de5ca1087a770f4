import { sidesOf, stiffRidge } from '../../level/layout';
import { rafterId, type RafterId } from '../../site/ids';
import { middleStation } from './pairs';
import { freshNumber, home, stands, type PlannedAction, type View } from './view';

/** The ridge strung and pushed straight before a pair locks its middle. */

/** A bow that reads this much is pushed out, inches: the division of a string. Ours. */
const worthPushing = 1 / 16;
/** A ridge that comes back after so many readings is left as it is. Ours. */
const enoughReadings = 8;

const at = 'ridge.straight';

/** A ridge so long that it may lie bowed is strung, and a short one that an eye sees bowed. */
export const needsString = (view: View): boolean =>
  view.careful &&
  (view.seen.level.plan.length > stiffRidge || view.everSaid('string', at).length > 0 || looksBowed(view));

/** Seen along its top, in quarters, before a rafter between the end pairs has pushed it anywhere. */
const looksBowed = (view: View): boolean =>
  !view.stations
    .slice(1, -1)
    .some((_, i) => sidesOf(view.seen.level).some((side) => stands(view, rafterId(side, i + 2)))) &&
  Number(view.seen.look({ tool: 'eye', at }) ?? 0) !== 0;

export const straightened = (view: View): readonly PlannedAction[] => {
  if (!needsString(view) || lockIds(view).every((id) => home(view, `ridge:${id}`))) return [];
  const bow = freshNumber(view, { tool: 'string', at }, lastTouched(view));
  if (bow === undefined) return [{ type: 'read', tool: 'string', at }];
  if (Math.abs(bow) < worthPushing || view.everSaid('string', at).length >= enoughReadings) return [];
  return [{ type: 'shift', member: 'ridge', at: 'mid', by: -bow }];
};

const lockIds = (view: View): readonly RafterId[] =>
  sidesOf(view.seen.level).map((side) => rafterId(side, middleStation(view)));

/** When the ridge was last moved, let go of, or leaned on by a rafter in its middle. */
const lastTouched = (view: View): number =>
  Math.max(
    ...(['ridgeMoved', 'ridgePushed', 'ridgeEased'] as const).map((event) => view.lastly(event)),
    ...lockIds(view)
      .filter((id) => stands(view, id))
      .map((id) => view.lastly('tacked', `ridge:${id}`)),
  );
