import { roofOf, stationsOf } from '../../level/layout';
import type { Methods } from '../../level/method';
import type { ToolId } from '../../instruments/tool';
import type { FiguredRoof } from '../../roof/figured';
import type { Attempt } from '../../site/attempt';
import type { Action } from '../../site/action';
import type { SiteEvent } from '../../site/event';
import type { JointId, JointKind, MemberId } from '../../site/ids';
import { jointRows } from '../../site/jointRows';
import { observe, type Observation } from '../../site/observe';
import { methodsOf } from '../../site/required';
import { memoryOf, placeKey, type Said } from './memory';

/** An act as the plan gives it: a reading names tool and place, and leaves what is said to whoever reads. */
export type PlannedAction =
  | Exclude<Action, { readonly type: 'read' }>
  | { readonly type: 'read'; readonly tool: ToolId; readonly at: string; readonly from?: string };

/** What the crew sees and remembers: the observation, what it said when, and what it changed since. */
export type View = {
  readonly seen: Observation;
  readonly roof: FiguredRoof;
  readonly stations: readonly number[];
  /** Number of the last station. */
  readonly last: number;
  readonly methods: Methods;
  /** Reads, proves and judges. A crew that does not goes by what an eye sees. */
  readonly careful: boolean;
  /** Takes a rafter that hangs aslant down again before it is tacked. */
  readonly refits: boolean;
  /** The last thing said at a place, and at which step. */
  readonly said: (tool: ToolId, at: string, from?: string) => Said | undefined;
  /** Everything ever said at a place. */
  readonly everSaid: (tool: ToolId, at: string, from?: string) => readonly Said[];
  /** Step of the last event of this kind at this thing; −1 when there was none. `raised A` and `shifted B` are the ridge's ends. */
  readonly lastly: (type: SiteEvent['type'] | 'raised' | 'shifted', thing?: string) => number;
};

/** What a hand brings along: the way of building it has in mind before it is agreed, whether it checks, and whether it refits. */
export type Manner = { readonly wanted?: Methods; readonly careless?: true; readonly refits?: true };

export const viewOf = (attempt: Attempt, { wanted, careless, refits }: Manner = {}): View => {
  const { level, site } = attempt;
  const stations = stationsOf(level);
  const memory = memoryOf(attempt);
  return {
    seen: observe(attempt),
    roof: roofOf(level),
    stations,
    last: stations.length,
    methods: wanted ?? methodsOf(level, site.agreed),
    careful: careless !== true,
    refits: refits === true,
    said: (tool, at, from) => memory.said(placeKey(tool, at, from)),
    everSaid: (tool, at, from) => memory.everSaid(placeKey(tool, at, from)),
    lastly: (type, thing) => memory.lastly(thing === undefined ? type : `${type} ${thing}`),
  };
};

export const stands = ({ seen }: View, member: MemberId): boolean => seen.members[member] !== undefined;

/** Fastened at all, tacked or nailed. */
export const held = ({ seen }: View, joint: JointId): boolean => {
  const so = seen.site.joints[joint];
  return so !== undefined && so.tacks + so.nails > 0;
};

export const home = ({ seen }: View, joint: JointId): boolean => {
  const nails = seen.site.joints[joint]?.nails ?? 0;
  return nails > 0 && nails >= jointRows[joint.slice(0, joint.indexOf(':')) as JointKind].full;
};

/** A number said at a place after the step given; undefined when it is stale or was never said. */
export const freshNumber = (
  view: View,
  { tool, at, from }: { readonly tool: ToolId; readonly at: string; readonly from?: string },
  since: number,
): number | undefined => {
  const said = view.said(tool, at, from);
  return said && said.step > since && typeof said.value === 'number' ? said.value : undefined;
};
