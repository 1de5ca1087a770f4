import { readAttempt } from '../../content/attemptFile';
import { beginRun } from '../../session/session';
import { memoryStore } from '../../session/store';
import type { Desk } from '../desk';

/** Opens the run of a file on the desk, to be looked at only; false when that cannot be. */
export const openReading = (desk: Desk, key: string): boolean => {
  const file = desk.classes.files.value?.get(key);
  const read = file && readAttempt(file.text);
  const level = read?.ok ? desk.levels.find(({ id }) => id === read.value.level.id) : undefined;
  if (!read?.ok || !level) return false;
  const { seed, mode, actions, assignment, learner } = read.value;
  const handed = {
    ...(assignment === undefined ? {} : { assignment }),
    ...(learner === undefined ? {} : { learner }),
  };
  void beginRun(memoryStore(), { level, seed, mode, handed }, actions).then((session) => {
    desk.classes.reading.value = session;
    desk.screen.value = 'reading';
  });
  return true;
};
