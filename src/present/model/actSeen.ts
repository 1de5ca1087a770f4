import type { Action } from '../../core/site/action';
import type { Decision } from '../../core/site/attempt';

/** The act that led to what is shown: which one of its run, what it was, and what came of it. */
export type Act = {
  readonly step: number;
  readonly action: Action;
  readonly outcome: Decision;
};

export type NailTool = 'hammer' | 'nailer' | 'puller';

/** What works on the nails of a joint in an act; undefined where none are driven or drawn. */
export const nailToolIn = ({ outcome }: Act): NailTool | undefined => {
  if (!outcome.ok) return undefined;
  for (const { type } of outcome.events) {
    if (type === 'tacked') return 'hammer';
    if (type === 'nailed') return 'nailer';
    if (type === 'drawn') return 'puller';
  }
  return undefined;
};
