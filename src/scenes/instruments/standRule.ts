import { toX, toY, type Scaled } from '../closeUp/board';
import { drawPlate, drawTicks, type Ruled } from '../closeUp/steel';
import type { Area } from '../overview/fit';
import { nameQuarters } from './quarters';

/** How wide the rule is and how long an inch's tick, inches, and the most of either, CSS pixels. Ours. */
const rule = { wide: 0.55, widest: 92, tick: 0.24, longest: 46 };

/** How wide a standing rule is drawn, inches. */
export const ruleWide = ({ k, ratio }: Scaled): number => Math.min(rule.wide, (rule.widest * ratio) / k);

/** Where its left edge stands, and the lowest reading on it; it goes on upward out of the picture. */
type Stood = { readonly at: number; readonly low: number };

/** A rule stood upright with its quarters named: ticks on its left edge, where the work meets it. */
export const standRule = (view: Scaled, area: Area, { at, low }: Stood): void => {
  const { ink, k, ratio, zero } = view;
  const high = (zero[1] - area.y) / k + 0.1;
  const foot = Math.max(low, (zero[1] - area.y - area.height) / k - 0.1);
  drawPlate(
    ink,
    { x: toX(view, at), y: toY(view, high), width: ruleWide(view) * k, height: (high - foot) * k },
    ratio,
  );
  const ruled: Ruled = {
    view,
    zero: [at, 0],
    way: 'up',
    from: foot,
    to: high,
    tick: Math.min(rule.tick * k, rule.longest * ratio),
    grow: 1,
    numbers: () => '',
  };
  drawTicks(ruled);
  nameQuarters(ruled, { from: area.y, to: area.y + area.height, deep: ruleWide(view) * k });
};
