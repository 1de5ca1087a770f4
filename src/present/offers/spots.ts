import { isOver } from '../../core/site/state';
import type { Attempt } from '../../core/site/attempt';
import { observe, type Observation } from '../../core/site/observe';
import { crewSpots } from './crewSpots';
import { drawSpots, nailSpots, tackSpots } from './nailSpots';
import type { Spot } from './offer';
import { levelSpots, lookSpots, patternSpots, ruleSpots, stringReadings, tapeSpots } from './readingSpots';
import { setSpots } from './setSpots';
import { markSpots, moveSpots, stretchSpots, trimSpots } from './shapeSpots';
import type { Tool } from './toolset';

/** Where a tool can be put to now, in walking order. Pure; told from what a learner can see. */
export const spotsFor = (attempt: Attempt, tool: Tool): readonly Spot[] => {
  if (isOver(attempt.site)) return [];
  const own = known.get(attempt) ?? new Map<Tool, readonly Spot[]>();
  known.set(attempt, own);
  const found = own.get(tool) ?? finders[tool](observe(attempt), attempt);
  own.set(tool, found);
  return found;
};

/** The drawing, the sheet and the tag all ask for the same list: it is made once for each attempt. */
const known = new WeakMap<Attempt, Map<Tool, readonly Spot[]>>();

const finders: Readonly<Record<Tool, (seen: Observation, attempt: Attempt) => readonly Spot[]>> = {
  look: lookSpots,
  tape: tapeSpots,
  level: levelSpots,
  string: (seen) => [...stretchSpots(seen), ...stringReadings(seen)],
  rule: ruleSpots,
  pattern: patternSpots,
  set: setSpots,
  tack: tackSpots,
  nail: nailSpots,
  draw: drawSpots,
  trim: trimSpots,
  mark: markSpots,
  move: moveSpots,
  crew: crewSpots,
};
