import type { PlannedAction, View } from '../order/crew/view';
import type { Said } from '../order/crew/memory';
import type { ToolId } from '../instruments/tool';

/** What a hand takes for known without having read it, by place, and from which step on. */
export type Assumed = Map<string, Said[]>;

export const keyOf = (tool: ToolId, at: string, from?: string): string => `${tool} ${at} ${from ?? ''}`;

/** The view of somebody who takes for read what was only assumed: whichever came last counts. */
export const believing = (view: View, assumed: Assumed): View => ({
  ...view,
  said: (tool, at, from) => {
    const own = view.said(tool, at, from);
    const taken = assumed.get(keyOf(tool, at, from))?.at(-1);
    return !own || (taken && taken.step > own.step) ? (taken ?? own) : own;
  },
  everSaid: (tool, at, from) => [
    ...view.everSaid(tool, at, from),
    ...(assumed.get(keyOf(tool, at, from)) ?? []),
  ],
});

type Taken = {
  readonly read: Extract<PlannedAction, { type: 'read' }>;
  readonly value: number | string;
  readonly step: number;
};

export const assume = (assumed: Assumed, { read: { tool, at, from }, value, step }: Taken): void => {
  const key = keyOf(tool, at, from);
  assumed.set(key, [...(assumed.get(key) ?? []), { value, step }]);
};
