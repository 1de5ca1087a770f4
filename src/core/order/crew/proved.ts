import { waterStart } from '../../level/planted';
import { freshNumber, type PlannedAction, type View } from './view';

/** Tools as a careful crew trusts them: the tape and the water level are held to what is known first, and their error is left out. */

/** Where the tape is read both ways, by its hook and from its inch mark. */
export const hookProof: PlannedAction = { type: 'read', tool: 'tape', at: 'width.A', from: 'inch' };

/** The two ways may differ by this much for reading's sake alone, inches: half a division. Ours. */
const readAlike = 1 / 32;

/** From its inch mark once the hook was caught, else by the hook. */
const hold = (view: View): 'inch' | undefined => {
  const hooked = view.said('tape', 'width.A')?.value;
  const inch = view.said('tape', 'width.A', 'inch')?.value;
  if (typeof hooked !== 'number' || typeof inch !== 'number') return undefined;
  return Math.abs(hooked - (inch - 1)) > readAlike ? 'inch' : undefined;
};

/** The tape to a place, held as it can be trusted. */
export const tapeTo = (view: View, at: string): PlannedAction => {
  const from = hold(view);
  return { type: 'read', tool: 'tape', at, ...(from === undefined ? {} : { from }) };
};

/** What was taped there since a step, the burnt inch taken off again; undefined when it is stale or was never said. */
export const taped = (view: View, at: string, since = -1): number | undefined => {
  const from = hold(view);
  const value = freshNumber(view, { tool: 'tape', at, ...(from === undefined ? {} : { from }) }, since);
  return value === undefined || from === undefined ? value : value - 1;
};

/** How often a place was taped, either way. */
export const tapings = (view: View, at: string): number =>
  view.everSaid('tape', at).length + view.everSaid('tape', at, 'inch').length;

/** How high a plate reads over the start, since a step: air in the hose lifts both alike. */
export const overStart = (view: View, at: string, since = -1): number | undefined => {
  const start = view.said('waterLevel', waterStart)?.value;
  const value = freshNumber(view, { tool: 'waterLevel', at }, since);
  return value === undefined || typeof start !== 'number' ? undefined : value - start;
};
