import type { Level } from '../../core/level/level';
import { loadLevel } from '../levelFiles';
import type { Job, Told } from './job';
import { played } from './played';

/** A process of its own that plays what it is sent, a handful at a time, and sends back what came of it. */

const levels = new Map<string, Level>();

const levelOf = (path: string): Level => {
  const known = levels.get(path);
  if (known) return known;
  const read = loadLevel(path);
  if (!read.ok) throw new Error(`${path} cannot be read`);
  levels.set(path, read.value);
  return read.value;
};

export type Handful = readonly { readonly job: Job; readonly path: string }[];

process.on('message', (handful: Handful) => {
  const told: readonly Told[] = handful.map(({ job, path }) => played(levelOf(path), job));
  process.send?.(told);
});
