import type { Level } from '../../core/level/level';
import { keepOwnJobs, levelOf, loadOwnJobs, mostKept, type KeptJob } from '../../session/ownJobs';
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

/** The same roof again is the same job. */
export const addOwnJob = async (desk: Desk, job: KeptJob): Promise<Level | undefined> => {
  const level = levelOf(job);
  if (!level) return undefined;
  await wordsReady(level);
  const others = (await loadOwnJobs(desk.store)).filter((one) => levelOf(one)?.id !== level.id);
  await keepOwnJobs(desk.store, [job, ...others].slice(0, mostKept)).catch(() => undefined);
  desk.own.value = [level, ...desk.own.value.filter(({ id }) => id !== level.id)].slice(0, mostKept);
  return level;
};

/** Off the list; the runs made on it stay. */
export const removeOwnJob = async (desk: Desk, id: string): Promise<void> => {
  desk.own.value = desk.own.value.filter((level) => level.id !== id);
  const others = (await loadOwnJobs(desk.store)).filter((one) => levelOf(one)?.id !== id);
  await keepOwnJobs(desk.store, others).catch(() => undefined);
};
