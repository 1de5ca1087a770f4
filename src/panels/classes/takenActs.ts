import { readAssignment, seedFor, type Assignment } from '../../content/assignment';
import { keptTaken, readGiven, readRemarks, readTaken, type TakenOn } from '../../content/classSchema';
import type { Read } from '../../content/complaint';
import type { Level } from '../../core/level/level';
import { keys } from '../../records/backup';
import { beginRun, reopenRun } from '../../session/session';
import type { RunHead } from '../../session/store';
import { enter, keepDebrief, type Desk } from '../desk';
import { runFile, type Offered } from '../saveFile';
import { noClasses } from './classState';

/** What a learner does with an assignment: opens it, says who they are, plays its jobs, hands in. */

/** Brings back what the device keeps of classes, but for the files: only the desk needs those. */
export const loadClasses = async ({ store, classes }: Desk): Promise<void> => {
  const kept = async (key: string): Promise<unknown> => store.get(key).catch(() => undefined);
  const [taken, given, remarks] = await Promise.all([kept(keys.taken), kept(keys.given), kept(keys.remarks)]);
  classes.taken.value = readTaken(taken);
  classes.given.value = readGiven(given);
  classes.remarks.value = readRemarks(remarks);
};

/** Opens what a fragment carries. False where it carries no assignment. */
export const openLinked = async (desk: Desk, fragment: string): Promise<boolean> => {
  if (!fragment.startsWith('#assignment=')) return false;
  // What unpacks links comes only to who has one.
  const { readLink } = await import('../../content/link');
  const linked = readLink(fragment);
  if (!linked) return false;
  await takeOn(desk, linked.ok ? readAssignment(linked.value.text) : linked);
  return true;
};

/** Takes an assignment on, or says in its place why it cannot be used. */
export const takeOn = async (desk: Desk, read: Read<Assignment>, from?: string): Promise<void> => {
  const { classes } = desk;
  desk.screen.value = 'assigned';
  const [first] = read.ok ? [] : read.complaints;
  classes.refused.value = first && { complaint: first, ...(from === undefined ? {} : { from }) };
  classes.open.value = read.ok ? read.value.id : undefined;
  if (!read.ok) return;
  const before = classes.taken.value.find(({ assignment }) => assignment.id === read.value.id);
  await keepTaken(desk, { ...before, assignment: read.value });
};

const keepTaken = async ({ store, classes }: Desk, one: TakenOn): Promise<void> => {
  const first = (all: readonly TakenOn[]): readonly TakenOn[] => [
    one,
    ...all.filter(({ assignment }) => assignment.id !== one.assignment.id),
  ];
  classes.taken.value = first(classes.taken.value);
  await store.change(keys.taken, (kept) => keptTaken(first(readTaken(kept)))).catch(() => undefined);
};

/** The code under which the learner goes on; without one, it is asked for again. */
export const goUnder = (desk: Desk, { assignment }: TakenOn, learner: string | undefined): Promise<void> =>
  keepTaken(desk, { assignment, ...(learner === undefined ? {} : { learner }) });

export const openTaken = (desk: Desk, id: string): void => {
  desk.classes.refused.value = undefined;
  desk.classes.open.value = id;
  keepDebrief(desk, undefined);
  desk.screen.value = 'assigned';
};

/** To the talk about a job that was assigned: how it is played is settled. */
export const talkAssigned = (desk: Desk, { assignment }: TakenOn, level: Level): void => {
  desk.classes.going.value = assignment.id;
  desk.recall.value = undefined;
  desk.level.value = level;
  desk.screen.value = 'talk';
};

/** The assignment that the talk about a level is held for. */
export const goingOn = (
  { classes }: Desk,
  level: Level,
): (TakenOn & { readonly learner: string }) | undefined => {
  const found = classes.taken.value.find(({ assignment }) => assignment.id === classes.going.value);
  const { learner } = found ?? {};
  return found && learner !== undefined && found.assignment.levels.includes(level.id)
    ? { ...found, learner }
    : undefined;
};

/** Begins the run on the site that the assignment and the code give. */
export const startAssigned = async (desk: Desk, level: Level): Promise<void> => {
  const going = goingOn(desk, level);
  if (!going) return;
  const { assignment, learner } = going;
  const seed = seedFor(assignment, level.id, learner);
  const handed = { assignment: assignment.id, learner };
  await enter(desk, await beginRun(desk.store, { level, seed, mode: assignment.mode, handed }));
};

/** A learner's own runs for an assignment, the first begun first. */
export const runsFor = (heads: readonly RunHead[], { assignment, learner }: TakenOn): readonly RunHead[] =>
  heads
    .filter((head) => head.assignment === assignment.id && head.learner === learner && head.branch !== true)
    .sort((a, b) => a.order - b.order);

/** Files of runs that have ended; one that cannot be told again is left out. */
export const filesOf = async (desk: Desk, heads: readonly RunHead[]): Promise<readonly Offered[]> => {
  const files: Offered[] = [];
  for (const { id, order } of heads) {
    const session = await reopenRun(desk, id).catch(() => undefined);
    if (!session) continue;
    const file = runFile(session);
    files.push({ ...file, name: file.name.replace('.attempt', `-${order}.attempt`) });
  }
  return files;
};

/** Nothing is kept any more: the page shows it so. */
export const forget = ({ classes, draft, own }: Desk): void => {
  draft.value = undefined;
  own.value = [];
  try {
    sessionStorage.clear();
  } catch {
    // Nothing was kept there either.
  }
  const fresh = noClasses();
  classes.taken.value = fresh.taken.value;
  classes.given.value = fresh.given.value;
  classes.files.value = new Map();
  classes.remarks.value = fresh.remarks.value;
  classes.open.value = undefined;
  classes.intake.value = undefined;
  classes.learner.value = undefined;
};
