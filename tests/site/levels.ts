import { readFileSync } from 'node:fs';
import { parseLevel } from '../../src/content/readLevel';
import type { Level } from '../../src/core/level/level';

/** A level of the course by id, parsed as the product parses it. */
export const levelOf = (id: string): Level => {
  const read = parseLevel(readFileSync(`levels/first-gable/${id}.json`, 'utf8'));
  if (!read.ok) throw new Error(read.complaints.map((c) => JSON.stringify(c)).join('\n'));
  return read.value;
};

/** The same level with nothing out of true: every range 0, nothing planted. */
export const trueLevel = (id: 'garden-hut' | 'boathouse' | 'hay-barn'): Level => {
  const level = levelOf(id);
  const ranges = Object.fromEntries(Object.keys(level.asFound.ranges).map((key) => [key, 0]));
  return {
    ...level,
    asFound: { ...level.asFound, planted: [], dried: 0, ranges: ranges as Level['asFound']['ranges'] },
  };
};
