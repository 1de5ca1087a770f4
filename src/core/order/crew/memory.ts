import type { Attempt, Step } from '../../site/attempt';
import type { Action } from '../../site/action';
import type { SiteEvent } from '../../site/event';
import { ends } from '../../roof/side';

/** What a crew remembers of its run: what it said where, and in which step it last changed a thing. Never the truth. */
export type Memory = {
  /** The last thing said at a place, and at which step. */
  readonly said: (place: string) => Said | undefined;
  readonly everSaid: (place: string) => readonly Said[];
  /** Step of the last change under a key; −1 when there was none. */
  readonly lastly: (key: string) => number;
};

export type Said = { readonly value: number | string; readonly step: number };

export const placeKey = (tool: string, at: string, from?: string): string => `${tool} ${at} ${from ?? ''}`;

/** Step numbers and sayings under their keys, rising. It may know more steps than one memory asks for. */
type Index = {
  readonly steps: Step[];
  readonly changes: Map<string, number[]>;
  readonly said: Map<string, Said[]>;
};

export const memoryOf = ({ steps }: Attempt): Memory => {
  const { changes, said } = indexOf(steps);
  const known = steps.length;
  return {
    said: (place) => said.get(place)?.findLast(({ step }) => step < known),
    everSaid: (place) => (said.get(place) ?? []).filter(({ step }) => step < known),
    lastly: (key) => changes.get(key)?.findLast((step) => step < known) ?? -1,
  };
};

/** One index grows along with a run; a run that turned off elsewhere starts another. */
const indexOf = (steps: readonly Step[]): Index => {
  const first = steps[0];
  const old = first && indexes.get(first);
  const index =
    old && startsAlike(old.steps, steps) ? old : { steps: [], changes: new Map(), said: new Map() };
  for (let at = index.steps.length; at < steps.length; at++) learn(index, steps[at] as Step, at);
  if (first) indexes.set(first, index);
  return index;
};
const indexes = new WeakMap<Step, Index>();

const startsAlike = (a: readonly Step[], b: readonly Step[]): boolean => {
  for (let i = Math.min(a.length, b.length) - 1; i >= 0; i--) if (a[i] !== b[i]) return false;
  return true;
};

const learn = ({ steps, changes, said }: Index, step: Step, at: number): void => {
  steps.push(step);
  if (!step.outcome.ok || step.undone) return;
  for (const key of endsMoved(step.action)) push(changes, key, at);
  for (const event of step.outcome.events) {
    push(changes, event.type, at);
    const thing = thingOf(event);
    if (thing !== undefined) push(changes, `${event.type} ${thing}`, at);
    if (event.type === 'wasRead')
      push(said, placeKey(event.tool, event.at, event.from), { value: event.said, step: at });
  }
};

const push = <T>(lists: Map<string, T[]>, key: string, value: T): void => {
  const list = lists.get(key);
  if (list) list.push(value);
  else lists.set(key, [value]);
};

/** Which ends of the ridge an act moved, and how: `raised A`, `shifted B`. */
const endsMoved = (action: Action): readonly string[] => {
  if (action.type === 'signal') return ends.map((end) => `raised ${end}`);
  const shifts = action.type === 'shift' && action.member === 'ridge';
  if (action.type !== 'raise' && !shifts) return [];
  const at = action.type === 'raise' ? action.end : action.at;
  const which = at === 'both' ? ends : [at];
  return which.map((end) => `${shifts ? 'shifted' : 'raised'} ${end}`);
};

const thingOf = (event: SiteEvent): string | undefined => {
  if ('member' in event) return event.member;
  if ('joint' in event) return event.joint;
  if (event.type === 'wallMended') return event.wall;
  return event.type === 'lined' ? event.line : undefined;
};
