import { againstWall, ridgeCarries } from './layout';
import type { Level } from './level';
import { topicsOf, type Methods } from './method';

/** What there is to agree on a level; nothing about ties that a roof on a ridge beam was planned without, nor of a second side at a wall. */
export const topicsOn = (level: Level): readonly (keyof Methods)[] => {
  const { joists, collars } = level.plan;
  const without = { ties: joists === false, upper: collars === false };
  if (againstWall(level)) return topicsOf(level.methods).filter((topic) => !ofPairs.includes(topic));
  return topicsOf(level.methods).filter(
    (topic) => !ridgeCarries(level) || !((topic === 'ties' || topic === 'upper') && without[topic]),
  );
};

const ofPairs: readonly (keyof Methods)[] = ['ties', 'stack', 'upper'];
