import type { Level } from '../../core/level/level';
import { dropOwnJob, keepOwnJob, levelOf, loadOwnJobs, mostKept, type KeptJob } from '../../session/ownJobs';
import type { Desk } from '../desk';
import { wordsReady } from '../wordsReady';

/** The jobs on own roofs that stand on the start page, newest first. */

export const loadOwn = async (desk: Desk): Promise<void> => {
  const jobs = await loadOwnJobs(desk.store);
  const levels = await Promise.all(jobs.flatMap((job) => levelOf(job) ?? []).map(told));
  desk.own.value = levels.flat();
};

/** A job is only here once there are words for it. */
const told = (level: Level): Promise<readonly Level[]> =>
  wordsReady(level).then(
    () => [level],
    () => [],
  );

export const addOwnJob = async (desk: Desk, job: KeptJob): Promise<Level | undefined> => {
  const level = levelOf(job);
  if (!level) return undefined;
  await wordsReady(level);
  await keepOwnJob(desk.store, job).catch(() => undefined);
  desk.own.value = [level, ...desk.own.value.filter(({ id }) => id !== level.id)].slice(0, mostKept);
  return level;
};

/** Off the list, once the device has it so; the runs made on it stay. */
export const removeOwnJob = async (desk: Desk, id: string): Promise<void> => {
  await dropOwnJob(desk.store, id).catch(() => undefined);
  desk.own.value = desk.own.value.filter((level) => level.id !== id);
};
