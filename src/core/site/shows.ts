import { tools } from '../instruments/rows';
import type { ToolId } from '../instruments/tool';
import { spread } from '../level/draw';
import { eyeShows, patternShows, squareShows } from './readings/boards';
import { bobShows, levelShows, waterShows } from './readings/level';
import type { Reach, Reader, Shown } from './readings/reach';
import { ruleShows } from './readings/rule';
import { straightedgeShows, stringShows } from './readings/string';
import { poleShows, tapeShows } from './readings/tape';
import type { Standing } from './standing';

/**
 * What the tool shows there, in inches or as the word an eye would use; the learner reads it off the picture and says it.
 * Undefined where this tool cannot show anything. Noise keeps its place: the same reading shows the same again.
 */
export const shows = (standing: Standing, { tool, at, from }: Reach): Shown => {
  const value = readers[tool](standing, at, from);
  if (typeof value !== 'number') return value;
  const noise = spread({ seed: standing.seed, place: `${tool}@${at}`, purpose: 'noise' }, tools[tool].noise);
  return Math.round((value + noise) * 256) / 256;
};

const readers: Readonly<Record<ToolId, Reader>> = {
  eye: eyeShows,
  tape: tapeShows,
  rule: ruleShows,
  level: levelShows,
  waterLevel: waterShows,
  string: stringShows,
  pattern: patternShows,
  square: squareShows,
  bob: bobShows,
  straightedge: straightedgeShows,
  storyPole: poleShows,
};
