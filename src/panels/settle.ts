import type { ToolId } from '../core/instruments/tool';
import type { Settings } from '../session/settings';

/** How a tool comes to rest on what it shows: what it is off by on the way, inches. Ours, by eye; it ends on the truth. */

export type Settle = {
  /** How long it takes, ms. */
  readonly length: number;
  /** Off by so much at a time, 0…1; exactly nothing at 1. */
  readonly off: (t: number) => number;
};

/** Swings `beats` times about its rest, less and less. */
const swinging = (length: number, widest: number, beats: number): Settle => ({
  length,
  off: (t) => (t >= 1 ? 0 : widest * (1 - t) ** 2 * Math.cos(2 * Math.PI * beats * t)),
});

/** Slides up to its place and stops. */
const sliding = (length: number, from: number): Settle => ({
  length,
  off: (t) => (t >= 1 ? 0 : from * (1 - t) ** 3),
});

const settles: Partial<Readonly<Record<ToolId, Settle>>> = {
  level: swinging(1100, 0.16, 2),
  waterLevel: swinging(1200, 0.35, 2.5),
  bob: swinging(1400, 0.5, 3),
  string: swinging(500, 0.05, 6),
  tape: sliding(600, -3),
  pattern: sliding(450, 0.6),
  rule: sliding(400, 0.3),
};

/** The bob read as it swings is not at rest, and a tape that would run back past its hook starts there. */
export const settleOf = (tool: ToolId): Settle | undefined => settles[tool];

/** Whether nothing is to move, by the setting or else by the device. */
export const isStill = (motion: Settings['motion']): boolean =>
  motion === 'still' || (motion === 'device' && matchMedia('(prefers-reduced-motion: reduce)').matches);
