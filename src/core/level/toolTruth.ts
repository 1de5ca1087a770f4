import { uniform } from './draw';
import type { Drawn } from './planted';

/** What is wrong with the tools themselves: each keeps its own error through the job, until somebody catches it. Inches. */

type Range = 'levelBias' | 'tapeHook' | 'waterBias' | 'squareBias';

/** At least half of its range, either way. */
const biasOf = ({ level, seed }: Drawn, tool: string, range: Range): number =>
  (uniform(seed, tool, 'sign') < 0.5 ? -1 : 1) *
  level.asFound.ranges[range] *
  (0.5 + 0.5 * uniform(seed, tool, 'bias'));

/** What the four-foot level shows at its far end when it lies dead level. */
export const levelBias = (drawn: Drawn): number => biasOf(drawn, 'level', 'levelBias');

/** What a hooked tape shows over (+) or under the true length: a bent hook, or one that sticks. */
export const hookBias = (drawn: Drawn): number => biasOf(drawn, 'tape', 'tapeHook');

/** How far the water stands over (+) or under its mark with both ends held together: air in the hose. */
export const waterBias = (drawn: Drawn): number => biasOf(drawn, 'waterLevel', 'waterBias');

/** How far the square's blade leans off at twelve inches. */
export const squareBias = (drawn: Drawn): number => biasOf(drawn, 'square', 'squareBias');

/** How hard a line is pulled that was stretched once and again, pounds. Ours. */
const hardPull = 25;

/** How hard a line pulls: a new one gives and goes slack, and holds once it was pulled again. Pounds. */
export const linePull = ({ level, seed }: Drawn, line: string, stretched: number): number => {
  const slack = level.asFound.ranges.lineSlack * (0.5 + 0.5 * uniform(seed, line, 'slack'));
  return stretched > 1 ? hardPull : hardPull * (1 - slack);
};

/** Weight of a mason's line, pounds an inch: 0.9 lb in 1,000 ft, from memory of what line is sold as. */
const lineWeight = 0.9 / 12_000;

/** How far a line hangs below straight in its middle: w·L²/8T, the parabola of a line that is nearly straight. */
export const lineSag = (length: number, pull: number): number => (lineWeight * length * length) / (8 * pull);
