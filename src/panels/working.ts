import type { Attempt, Decision } from '../core/site/attempt';
import type { Spot } from '../present/offers/offer';
import { spotsFor } from '../present/offers/spots';
import type { Tool } from '../present/offers/toolset';
import type { Desk } from './desk';
import { useSignal } from './useSignal';

/** The tool in hand and where it can be put: one list for the drawing, the sheet and the tag. */
export type Working = {
  readonly tool: Tool;
  readonly spots: readonly Spot[];
  readonly at: number;
  readonly spot: Spot | undefined;
};

export const useWorking = (desk: Desk, attempt: Attempt): Working => {
  const tool = useSignal(desk.tool);
  const chosen = useSignal(desk.spot);
  const spots = spotsFor(attempt, tool);
  const found = spots.findIndex(({ id }) => id === chosen);
  const at = Math.max(0, found);
  return { tool, spots, at, spot: spots[at] };
};

/** After an act the next place in the list is taken up, so that a row of them is one key after another. */
export const follow = (desk: Desk, { tool, spots, at }: Working, decision: Decision): void => {
  const attempt = desk.session.value?.attempt.value;
  if (!decision.ok || !attempt || desk.tool.value !== tool) return;
  const here = spots[at]?.id;
  const now = spotsFor(attempt, tool);
  const still = now.findIndex(({ id }) => id === here);
  if (still >= 0 && here !== undefined && !here.includes('@')) return;
  desk.spot.value = now[still >= 0 ? Math.min(still + 1, now.length - 1) : Math.min(at, now.length - 1)]?.id;
};

/** A member or an open place touched on the drawing takes up its place in the list; touched again, the next one there. */
export const choosePicked = (desk: Desk, picked: string): void => {
  const attempt = desk.session.value?.attempt.value;
  if (!attempt) return;
  const spots = spotsFor(attempt, desk.tool.value);
  const own = spots.filter(({ id, member }) => id === picked || member === picked);
  const now = own.findIndex(({ id }) => id === desk.spot.value);
  const next = own[(now + 1) % Math.max(1, own.length)];
  if (next) desk.spot.value = next.id;
};
