import * as z from 'zod/mini';
import { assignmentText, readAssignment, type Assignment } from './assignment';
import { readShape } from './shape';

/** An assignment that a learner was given, and the code it is done under; no code while none was typed. */
export type TakenOn = { readonly assignment: Assignment; readonly learner?: string };

/** What an instructor makes of a learner: one rating for all, 1 to 4, and a note. */
export type Remark = { readonly rating?: number; readonly note: string };

/** A file of a run that a desk keeps; its text is kept beside it. */
export type FileHead = { readonly key: string; readonly name: string; readonly when: number };

const line = z.string().check(z.maxLength(400));
/** Characters of a note. */
export const longestNote = 2000;

const takenOn = z.strictObject({ assignment: z.string(), learner: z.optional(line) });
const remark = z.strictObject({
  rating: z.optional(z.int().check(z.gte(1), z.lte(4))),
  note: z.string().check(z.maxLength(longestNote)),
});
const fileHead = z.strictObject({ key: line, name: line, when: z.number() });

/** Assignments go through their own gate again whenever they are read. */
export const keptTaken = (all: readonly TakenOn[]): unknown =>
  all.map(({ assignment, ...rest }) => ({ assignment: assignmentText(assignment), ...rest }));

export const readTaken = (kept: unknown): readonly TakenOn[] =>
  each(takenOn, kept).flatMap(({ assignment, learner }) => {
    const read = readAssignment(assignment);
    return read.ok ? [{ assignment: read.value, ...(learner === undefined ? {} : { learner }) }] : [];
  });

export const keptGiven = (all: readonly Assignment[]): unknown => all.map(assignmentText);

export const readGiven = (kept: unknown): readonly Assignment[] =>
  each(z.string(), kept).flatMap((text) => {
    const read = readAssignment(text);
    return read.ok ? [read.value] : [];
  });

export const readFileHeads = (kept: unknown): readonly FileHead[] => each(fileHead, kept);

export const readRemarks = (kept: unknown): Readonly<Record<string, Remark>> => {
  const read = readShape(z.record(line, remark), kept);
  return read.ok ? (read.value as Record<string, Remark>) : {};
};

/** Those of a list that can be used. */
const each = <T>(schema: z.ZodMiniType<T>, kept: unknown): readonly T[] =>
  Array.isArray(kept)
    ? kept.flatMap((one) => {
        const read = readShape(schema, one);
        return read.ok ? [read.value] : [];
      })
    : [];
