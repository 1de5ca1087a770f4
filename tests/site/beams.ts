import { readFileSync } from 'node:fs';
import { ownJob } from '../../src/content/ownJob';
import type { Level } from '../../src/core/level/level';

/** Roofs on a ridge beam, as somebody would type them, and the jobs made of them. */

export const beamFile = JSON.parse(readFileSync('levels/examples/gable-on-posts.json', 'utf8')) as Readonly<
  Record<string, unknown>
>;

/** Small enough for many runs: 16 by 20 ft, a post at each gable and one between. */
export const smallBeam = {
  ...beamFile,
  slope: { rise: 6, run: 12 },
  span: "16'",
  length: "20'",
  rafter: { thickness: 1.5, depth: 5.5 },
  ridge: { thickness: 3.5, depth: 9.25 },
  posts: { at: [1.75, "10'", 238.25], below: 97 },
};

const par = { machine: 500, posts: 500 };

export const jobOn = (file: unknown): Level => {
  const job = ownJob(file, par);
  if (!job.ok) throw new Error(JSON.stringify(job.complaints));
  return job.value;
};

/** The same with nothing out of true: every range 0, nothing planted. */
export const trueJobOn = (file: unknown): Level => {
  const level = jobOn(file);
  const ranges = Object.fromEntries(Object.keys(level.asFound.ranges).map((key) => [key, 0]));
  return {
    ...level,
    asFound: { ...level.asFound, planted: [], dried: 0, ranges: ranges as Level['asFound']['ranges'] },
  };
};
