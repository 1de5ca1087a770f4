import { roofOf, stationsOf } from '../../level/layout';
import type { Methods } from '../../level/method';
import type { ToolId } from '../../instruments/tool';
import type { FiguredRoof } from '../../roof/figured';
import type { Attempt } from '../../site/attempt';
import type { Action } from '../../site/action';
import type { SiteEvent } from '../../site/event';
import type { JointId, MemberId } from '../../site/ids';
import { jointRows } from '../../site/jointRows';
import { partsOfJoint } from '../../site/ids';
import { observe, type Observation } from '../../site/observe';
import { methodsOf } from '../../site/required';

/** An act as the plan gives it: a reading names tool and place, and leaves what is said to whoever reads. */
export type PlannedAction =
  Exclude<Action, { readonly type: 'read' }> | { readonly type: 'read'; readonly tool: ToolId; readonly at: string; readonly from?: string };

/** What the crew sees and remembers: the observation, what it said when, and what it changed since. */
export type View = {
  readonly seen: Observation;
  readonly roof: FiguredRoof;
  readonly stations: readonly number[];
  /** Number of the last station. */
  readonly last: number;
  readonly methods: Methods;
  /** The last thing said at a place, and at which step. */
  readonly said: (tool: ToolId, at: string, from?: string) => Said | undefined;
  /** Everything ever said at a place. */
  readonly everSaid: (tool: ToolId, at: string) => readonly Said[];
  /** Step of the last event of this kind at this thing; −1 when there was none. */
  readonly lastly: (type: SiteEvent['type'], thing?: string) => number;
};

export type Said = { readonly value: number | string; readonly step: number };

/** The view of an attempt; `wanted` is the way of building a hand has in mind before it is agreed. */
export const viewOf = (attempt: Attempt, wanted?: Methods): View => {
  const { level, site } = attempt;
  const stations = stationsOf(level);
  const memory = remember(attempt);
  return {
    seen: observe(attempt),
    roof: roofOf(level),
    stations,
    last: stations.length,
    methods: wanted ?? methodsOf(level, site.agreed),
    said: (tool, at, from) => memory.said.get(placeKey(tool, at, from))?.at(-1),
    everSaid: (tool, at) => memory.said.get(placeKey(tool, at)) ?? [],
    lastly: (type, thing) => memory.events.get(thing === undefined ? type : `${type} ${thing}`) ?? -1,
  };
};

const placeKey = (tool: string, at: string, from?: string): string => `${tool} ${at} ${from ?? ''}`;

type Memory = { readonly said: Map<string, Said[]>; readonly events: Map<string, number> };

/** Only what was done and said is kept, never what a tool truly showed. */
const remember = ({ steps }: Attempt): Memory => {
  const memory: Memory = { said: new Map(), events: new Map() };
  steps.forEach(({ outcome, undone }, step) => {
    if (outcome.ok && !undone) for (const event of outcome.events) note(memory, event, step);
  });
  return memory;
};

const note = ({ said, events }: Memory, event: SiteEvent, step: number): void => {
  events.set(event.type, step);
  for (const thing of thingsOf(event)) events.set(`${event.type} ${thing}`, step);
  if (event.type !== 'wasRead') return;
  const key = placeKey(event.tool, event.at, event.from);
  said.set(key, [...(said.get(key) ?? []), { value: event.said, step }]);
};

const thingsOf = (event: SiteEvent): readonly string[] => {
  if ('member' in event) return [event.member];
  if ('joint' in event) return [event.joint];
  if (event.type === 'wallMended') return [event.wall];
  return event.type === 'lined' ? [event.line] : [];
};

export const stands = ({ seen }: View, member: MemberId): boolean => seen.members[member] !== undefined;

/** Fastened at all, tacked or nailed. */
export const held = ({ seen }: View, joint: JointId): boolean => {
  const so = seen.site.joints[joint];
  return so !== undefined && so.tacks + so.nails > 0;
};

export const home = ({ seen }: View, joint: JointId): boolean =>
  (seen.site.joints[joint]?.nails ?? 0) >= jointRows[partsOfJoint(joint).kind].full;

/** A number said at a place after the step given; undefined when it is stale or was never said. */
export const freshNumber = (
  view: View,
  { tool, at, from }: { readonly tool: ToolId; readonly at: string; readonly from?: string },
  since: number,
): number | undefined => {
  const said = view.said(tool, at, from);
  return said && said.step > since && typeof said.value === 'number' ? said.value : undefined;
};
