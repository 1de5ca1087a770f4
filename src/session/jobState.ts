import type { RunHead } from './store';

/** How far a learner is with one job. `due`: checked off, and time for another look. */
export type JobState = 'fresh' | 'open' | 'framed' | 'checkedOff' | 'due';

/** Where a job stands, and when that changes by itself. Times in milliseconds since 1970. */
export type JobStanding = {
  readonly state: JobState;
  /** When the next look is due, once checked off. */
  readonly lookAt?: number;
  /** From when on another pass on another site would check the job off, once there is a first one. */
  readonly secondFrom?: number;
};

const hour = 3_600_000;
export const day = 24 * hour;
/** Two passes closer together than this are one day's form. Ours. */
const passesApart = 20 * hour;

/** Days from one look to the next, the last one again and again. Ours. */
export const usualLooks: readonly number[] = [7, 30, 90, 180];

type Ended = RunHead & { readonly ended: number };
type Moment = { readonly now: number; readonly looks: readonly number[] };

/**
 * The standing of a job from its runs on this device. Watched and helped runs, branches, and what came down do not count.
 */
export const jobStanding = (own: readonly RunHead[], { now, looks }: Moment): JobStanding => {
  const ended = own.filter(isEnded).sort((a, b) => a.ended - b.ended);
  const passes = ended.filter(({ pass }) => pass === true);
  const second = passes.findIndex((pass, i) => passes.slice(0, i).some((first) => apart(first, pass)));
  if (second >= 0) {
    const lookAt = nextLook(passes.slice(second), looks);
    return { state: now >= lookAt ? 'due' : 'checkedOff', lookAt };
  }
  const [first] = passes;
  const state = ended.some(counts) ? 'framed' : own.length > 0 ? 'open' : 'fresh';
  return first ? { state, secondFrom: first.ended + passesApart } : { state };
};

const isEnded = (head: RunHead): head is Ended => head.state === 'done' && head.ended !== undefined;

/** Done by the learner alone, from the beginning to a roof that stands. */
const counts = ({ mode, branch, framed }: RunHead): boolean =>
  (mode === 'own' || mode === 'check-off') && branch !== true && framed === true;

const apart = (first: Ended, second: Ended): boolean =>
  first.seed !== second.seed && second.ended - first.ended >= passesApart;

/** A pass on or after the day a look is due moves the next one further off; an earlier one changes nothing. */
const nextLook = ([checkedOff, ...later]: readonly Ended[], looks: readonly number[]): number => {
  const after = (which: number): number =>
    (looks[Math.min(which, looks.length - 1)] ?? usualLooks[0] ?? 7) * day;
  let taken = 0;
  let lookAt = (checkedOff?.ended ?? 0) + after(taken);
  for (const { ended } of later) {
    if (ended < lookAt) continue;
    taken += 1;
    lookAt = ended + after(taken);
  }
  return lookAt;
};

/** Whether a job is come back to after a day or more, with nothing asked about it since. */
export const isReturn = (own: readonly RunHead[], asked: number | undefined, now: number): boolean => {
  const last = Math.max(...own.map(({ ended }) => ended ?? 0));
  return last > 0 && now - Math.max(last, asked ?? 0) >= day;
};

/** A site that no Check-off of a job had before on this device: the one asked for, or the next that is free. */
export const freshSite = (own: readonly RunHead[], asked: number): number => {
  const used = new Set(own.filter(({ mode }) => mode === 'check-off').map(({ seed }) => seed));
  let site = asked;
  while (used.has(site)) site += 1;
  return site;
};
