import { tools } from '../instruments/rows';
import type { PlannedAction, View } from '../order/crew/view';
import type { Action } from '../site/action';

/** A planned act as it is done: a reading is taken off the picture to the tool's own division and said. */
export const said = (view: View, act: PlannedAction): Action | undefined => {
  if (act.type !== 'read') return act;
  const shown = view.seen.look(act);
  if (shown === undefined) return undefined;
  const { division } = tools[act.tool];
  return { ...act, said: typeof shown === 'number' ? Math.round(shown / division) * division + 0 : shown };
};
