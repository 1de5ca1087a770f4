import { roofOf, stationsOf } from '../../level/layout';
import type { Methods } from '../../level/method';
import type { ToolId } from '../../instruments/tool';
import type { FiguredRoof } from '../../roof/figured';
import { ends } from '../../roof/side';
import type { Attempt, Step } from '../../site/attempt';
import type { Action } from '../../site/action';
import type { SiteEvent } from '../../site/event';
import type { JointId, JointKind, MemberId } from '../../site/ids';
import { jointRows } from '../../site/jointRows';
import { observe, type Observation } from '../../site/observe';
import { methodsOf } from '../../site/required';

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
  /** The last thing said at a place, and at which step. */
  readonly said: (tool: ToolId, at: string, from?: string) => Said | undefined;
  /** Everything ever said at a place. */
  readonly everSaid: (tool: ToolId, at: string) => readonly Said[];
  /** Step of the last event of this kind at this thing; −1 when there was none. `raised A` and `shifted B` are the ridge's ends. */
  readonly lastly: (type: SiteEvent['type'] | 'raised' | 'shifted', thing?: string) => number;
};

export type Said = { readonly value: number | string; readonly step: number };

/** What a hand brings along: the way of building it has in mind before it is agreed, and whether it checks. */
export type Manner = { readonly wanted?: Methods; readonly careless?: true };

export const viewOf = (attempt: Attempt, { wanted, careless }: Manner = {}): View => {
  const { level, site } = attempt;
  const stations = stationsOf(level);
  const memory = remember(attempt);
  return {
    seen: observe(attempt),
    roof: roofOf(level),
    stations,
    last: stations.length,
    methods: wanted ?? methodsOf(level, site.agreed),
    careful: careless !== true,
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
  steps.forEach((step, at) => {
    if (!step.outcome.ok || step.undone) return;
    for (const key of keysOf(step)) memory.events.set(key, at);
    for (const event of step.outcome.events) if (event.type === 'wasRead') hear(memory.said, event, at);
  });
  return memory;
};

const hear = (
  said: Memory['said'],
  { tool, at, from, said: value }: Extract<SiteEvent, { type: 'wasRead' }>,
  step: number,
): void => {
  const key = placeKey(tool, at, from);
  const known = said.get(key);
  if (known) known.push({ value, step });
  else said.set(key, [{ value, step }]);
};

/** What a step changed, under the names it is asked for by. Steps never change, so this is worked out once. */
const keysOf = (step: Step): readonly string[] => {
  const known = keysKnown.get(step);
  if (known) return known;
  const events = step.outcome.ok ? step.outcome.events : [];
  const keys = [...events.flatMap((event) => [event.type, ...thingsOf(event)]), ...endsMoved(step.action)];
  keysKnown.set(step, keys);
  return keys;
};
const keysKnown = new WeakMap<Step, readonly string[]>();

/** Which ends of the ridge an act moved, and how. */
const endsMoved = (action: Action): readonly string[] => {
  if (action.type === 'signal') return ends.map((end) => `raised ${end}`);
  const shifts = action.type === 'shift' && action.member === 'ridge';
  if (action.type !== 'raise' && !shifts) return [];
  const at = action.type === 'raise' ? action.end : action.at;
  const which = at === 'both' ? ends : [at];
  return which.map((end) => `${shifts ? 'shifted' : 'raised'} ${end}`);
};

const thingsOf = (event: SiteEvent): readonly string[] => {
  const thing =
    'member' in event
      ? event.member
      : 'joint' in event
        ? event.joint
        : event.type === 'wallMended'
          ? event.wall
          : event.type === 'lined'
            ? event.line
            : undefined;
  return thing === undefined ? [] : [`${event.type} ${thing}`];
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
