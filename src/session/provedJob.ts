import { complaint, type Read } from '../content/complaint';
import { ownJob } from '../content/ownJob';
import { play } from '../core/hands/play';
import type { Level } from '../core/level/level';
import { scoreOf, toStandard } from '../core/score/scored';

/** A job is offered on an own roof only when the expert hand has framed it: each way of hanging the ridge that it passes stays. */

export type Par = Level['par'];

/** How far it is, 0 to 1. */
export type Tell = (share: number) => void;

/** The seed that the crew tries it on. */
const triedOn = 1;

export const parOf = (file: unknown, tell: Tell): Read<Par> => {
  const job = ownJob(file);
  if (!job.ok) return job;
  const ways = job.value.methods.hang;
  const tried = ways.map((hang, i) => {
    tell(i / ways.length);
    return [hang, cleanMinutes(job.value, hang)] as const;
  });
  tell(1);
  const par = Object.fromEntries(tried.filter(([, minutes]) => minutes !== undefined)) as Par;
  if (Object.keys(par).length > 0) return { ok: true, value: par };
  return {
    ok: false,
    complaints: [complaint('$', ['notFramed'], ['framable'])],
  };
};

type Hang = keyof Par;

/** Minutes that the expert took, where the run passes by the same measure that a learner's does. */
const cleanMinutes = (level: Level, hang: Hang): number | undefined => {
  const attempt = play(level, 'expert', { seed: triedOn, mode: 'own', wanted: { hang } });
  const minutes = Math.round(attempt.site.minutes);
  const judged = { ...attempt, level: { ...level, par: { [hang]: minutes } } };
  return attempt.site.handedOver && toStandard(scoreOf(judged)) ? minutes : undefined;
};
