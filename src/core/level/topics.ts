import { ridgeCarries } from './layout';
import type { Level } from './level';
import { topicsOf, type Methods } from './method';

/** What there is to agree on a level; nothing about ties that a roof on a ridge beam was planned without. */
export const topicsOn = (level: Level): readonly (keyof Methods)[] => {
  const { joists, collars } = level.plan;
  const without = { ties: joists === false, upper: collars === false };
  return topicsOf(level.methods).filter(
    (topic) => !ridgeCarries(level) || !((topic === 'ties' || topic === 'upper') && without[topic]),
  );
};
