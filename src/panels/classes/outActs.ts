import { bareText, type Assignment, type SeedPolicy } from '../../content/assignment';
import { keptGiven, readGiven } from '../../content/classSchema';
import { linkOf } from '../../content/link';
import { modesOf, type Level } from '../../core/level/level';
import { modes, type Mode } from '../../core/level/mode';
import { passLine } from '../../core/score/scored';
import { keys } from '../../records/backup';
import type { Desk } from '../desk';

/** An assignment while it is being made. */
export type Draft = {
  readonly levels: readonly string[];
  readonly mode: Mode;
  readonly seeds: SeedPolicy;
  readonly due: string;
  readonly passLine: string;
  readonly label: string;
};

export const freshDraft: Draft = {
  levels: [],
  mode: 'own',
  seeds: 'each',
  due: '',
  passLine: String(passLine.total),
  label: '',
};

/** Ways that all of the jobs can be played in, but for looking on: that shows nothing of a learner. */
export const modesFor = (levels: readonly Level[]): readonly Mode[] =>
  modes.filter((mode) => mode !== 'watch' && levels.every((level) => modesOf(level).includes(mode)));

/** Points as typed; undefined when they are none. */
export const lineTyped = (typed: string): number | undefined => {
  const points = Number(typed.trim().replace(',', '.'));
  return typed.trim() !== '' && points >= 0 && points <= 100 ? points : undefined;
};

/** The assignment of a draft under a name of its own; undefined while something in it is amiss. */
export const assignmentOf = ({
  levels,
  mode,
  seeds,
  due,
  label,
  ...draft
}: Draft): Assignment | undefined => {
  const line = lineTyped(draft.passLine);
  if (levels.length === 0 || line === undefined) return undefined;
  return {
    id: freshId(),
    ...(label.trim() === '' ? {} : { label: label.trim() }),
    levels,
    mode,
    seeds,
    ...(due === '' ? {} : { due }),
    passLine: line,
  };
};

/** Eight letters and digits that nobody mistakes for one another: about a million million names. */
const freshId = (): string =>
  [...crypto.getRandomValues(new Uint8Array(8))].map((byte) => letters[byte % letters.length]).join('');
const letters = 'abcdefghjkmnpqrstuvwxyz23456789';

export const giveOut = async ({ store, classes }: Desk, assignment: Assignment): Promise<void> => {
  classes.given.value = [assignment, ...classes.given.value];
  await store
    .change(keys.given, (kept) => keptGiven([assignment, ...readGiven(kept)]))
    .catch(() => undefined);
};

/** The address that carries an assignment. */
export const linkTo = (assignment: Assignment): string =>
  location.origin + location.pathname + linkOf({ kind: 'assignment', text: bareText(assignment) });
