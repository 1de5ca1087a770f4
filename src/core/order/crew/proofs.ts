import type { Side } from '../../roof/side';
import { rafterId } from '../../site/ids';
import { taped, tapeTo } from './proved';
import { freshNumber, home, type PlannedAction, type View } from './view';

/** Every rafter to the string while its heel can still move; every fourth from the datum, before the next ones are nailed. */
export const provePlane = (view: View, side: Side, n: number): readonly PlannedAction[] => {
  const id = rafterId(side, n);
  if (!view.careful) return [];
  const at = `plane.${side}.${n}`;
  const strung = view.seen.site.lines[`string.${side}`] !== undefined && !home(view, `heel:${id}`);
  const unread = strung && freshNumber(view, { tool: 'string', at }, view.lastly('placed', id)) === undefined;
  const plane: readonly PlannedAction[] = unread ? [{ type: 'read', tool: 'string', at }] : [];
  return n >= 5 && (n - 1) % 4 === 0 ? [...plane, ...proveLayout(view, side, n)] : plane;
};

const proveLayout = (view: View, side: Side, n: number): readonly PlannedAction[] => {
  const id = rafterId(side, n);
  const at = `layout.${side}.${n}`;
  const { plan, tolerances } = view.seen.level;
  const value = taped(view, at, Math.max(view.lastly('placed', id), view.lastly('heelMoved', id)));
  if (value === undefined) return [tapeTo(view, at)];
  const off = value - ((view.stations[n - 1] ?? 0) - plan.rafter.thickness / 2);
  return Math.abs(off) > tolerances.layout && !home(view, `heel:${id}`)
    ? [{ type: 'shift', member: id, at: 'heel', by: -Math.round(off * 64) / 64 }]
    : [];
};
