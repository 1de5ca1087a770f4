import type { Action } from '../../src/core/site/action';
import type { PlannedAction } from '../../src/core/order/crew/view';
import type { Attempt } from '../../src/core/site/attempt';
import type { Offer, Picked } from '../../src/present/offers/offer';
import { spotsFor } from '../../src/present/offers/spots';
import { toolset, type Tool } from '../../src/present/offers/toolset';

/** Finds where in the rail an act stands: the tool, the place and the offer that bring about exactly this act. */
export type Found = {
  readonly tool: Tool;
  readonly spot: string;
  readonly offer: Offer;
  readonly picked: Picked;
};

export const findOffer = (attempt: Attempt, action: Action): Found | undefined => {
  const text = plain(action);
  for (const { tool } of toolset)
    for (const spot of spotsFor(attempt, tool))
      for (const offer of spot.offers)
        for (const picked of picksOf(offer, action))
          if (plain(offer.act(picked)) === text) return { tool, spot: spot.id, offer, picked };
  return undefined;
};

/** Everything that could have been picked to get this act: the options, or the length the act names. */
const picksOf = ({ picker }: Offer, action: Action): readonly Picked[] => {
  if (!picker) return [''];
  if (picker.kind === 'choice') return picker.options.map(({ value }) => value);
  const lengths = ['said', 'by', 'height', 'off'].flatMap((key) => {
    const value = (action as unknown as Record<string, unknown>)[key];
    return typeof value === 'number' ? [value, Math.abs(value)] : [];
  });
  return picker.kind === 'length' ? lengths.filter((by) => by >= picker.from && by <= picker.to) : lengths;
};

/**
 * What makes two acts the same deed: a call's reason is a note beside it, the ridge has but one board, and a line goes
 * to the sixteenth a tape gives.
 */
const plain = (action: Action): string => {
  const { why: _why, ...all } = action as Action & { readonly why?: string };
  const { board, ...rest } = all as typeof all & { readonly board?: string };
  const deed = board === undefined || board === 'board.ridge' ? rest : all;
  const off = 'off' in deed ? { off: Math.round(Number(deed.off) * 16) / 16 } : {};
  return JSON.stringify(Object.entries({ ...deed, ...off }).sort(([a], [b]) => (a < b ? -1 : 1)));
};

/** An act without what its picker leaves open: amounts, what is said, which board, and how many nails beyond one. */
export const shapeText = (action: Action | PlannedAction): string => {
  const open = ['said', 'by', 'why', 'board'];
  const kept = Object.entries(action).filter(([key]) => !open.includes(key));
  const coarse = kept.map(([key, value]) => {
    if (key === 'height') return [key, value !== 0];
    if (key === 'nails' && action.type === 'draw') return [key, value !== 1];
    return [key, value];
  });
  return JSON.stringify(coarse.sort(([a], [b]) => (String(a) < String(b) ? -1 : 1)));
};

/** Everything on offer now, so told; handing on and taking back are no acts of their own. */
export const shapesOnOffer = (attempt: Attempt): ReadonlySet<string> => {
  const texts = toolset.flatMap(({ tool }) =>
    spotsFor(attempt, tool).flatMap(({ offers }) =>
      offers
        .filter(({ id }) => id !== 'carryOn')
        .flatMap((offer) => startPicks(offer).map((picked) => shapeText(offer.act(picked)))),
    ),
  );
  return new Set(texts);
};

const startPicks = ({ picker }: Offer): readonly Picked[] => {
  if (!picker) return [''];
  return picker.kind === 'choice' ? picker.options.map(({ value }) => value) : [picker.start];
};
