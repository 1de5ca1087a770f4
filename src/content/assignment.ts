import * as z from 'zod/mini';
import { murmur3 } from '../core/level/draw';
import { modes, type Mode } from '../core/level/mode';
import { canonicalText, digestOf } from './canonical';
import { complaint, type Read } from './complaint';
import { readJson } from './readJson';
import { newerThan } from './newerThan';
import type { Phrase } from './phrase';
import { readShape } from './shape';

/** What an instructor hands out: which levels, how they are played, and what it is called. */
export type Assignment = {
  readonly id: string;
  /** The class, or what else it is known by. */
  readonly label?: string;
  readonly levels: readonly string[];
  readonly mode: Mode;
  /** `each`, also where it is absent: every learner on a site of their own. `same`: one site for all. */
  readonly seeds?: SeedPolicy;
  /** A day, as `2031-04-30`. */
  readonly due?: string;
  /** Points, 0 to 100; the usual bar where it is absent. */
  readonly passLine?: number;
};

export const seedPolicies = ['each', 'same'] as const;
export type SeedPolicy = (typeof seedPolicies)[number];

const format = 'tack-and-true/assignment@1';
/** Levels of one assignment. */
export const mostLevels = 40;
export const longestLabel = 200;

/** A day of the calendar that there is. */
export const isDay = (text: string): boolean =>
  /^\d{4}-\d\d-\d\d$/.test(text) && new Date(`${text}T00:00:00Z`).toJSON()?.startsWith(text) === true;

const schema = z.strictObject({
  format: z.literal(format),
  id: z.string().check(z.minLength(1), z.maxLength(80)),
  label: z.optional(z.string().check(z.maxLength(longestLabel))),
  levels: z
    .array(z.string().check(z.minLength(1), z.maxLength(80)))
    .check(z.minLength(1), z.maxLength(mostLevels)),
  mode: z.enum(modes),
  seeds: z.optional(z.enum(seedPolicies)),
  due: z.optional(z.string().check(z.refine(isDay, { params: { accepted: ['day'] satisfies Phrase } }))),
  passLine: z.optional(z.number().check(z.gte(0), z.lte(100))),
  /** Over all the rest. Written by hand a file may have none. */
  digest: z.optional(z.string()),
});

/** The text that a link carries: what links have of their own shows that nothing of it was changed. */
export const bareText = (assignment: Assignment): string => canonicalText({ format, ...assignment });

/** The text of an assignment file: the same bytes for the same assignment, with a digest over all the rest. */
export const assignmentText = (assignment: Assignment): string => {
  const rest = { format, ...assignment };
  return canonicalText({ ...rest, digest: digestOf(rest) });
};

/** An assignment file's text, or what is wrong with it. */
export const readAssignment = (text: string): Read<Assignment> => {
  const json = readJson(text);
  if (!json.ok) return json;
  const newer = newerThan(format, json.value);
  if (newer) return newer;
  const shape = readShape(schema, json.value);
  if (!shape.ok) return shape;
  const { digest, ...whole } = shape.value;
  if (digest !== undefined && digestOf(whole) !== digest)
    return { ok: false, complaints: [complaint('digest', ['digestOff'], ['asWritten'])] };
  const { format: _format, ...rest } = whole;
  return { ok: true, value: rest as Assignment };
};

/**
 * The seed a learner plays a level of an assignment on: their own, so a classmate's run does not fit; or one for all,
 * where the assignment says so.
 */
export const seedFor = (
  { id, seeds }: Pick<Assignment, 'id' | 'seeds'>,
  level: string,
  learner: string,
): number => murmur3(latin(`${id}|${level}|${seeds === 'same' ? '' : learner}`), 0);

/** The draw takes characters below 256; any other one is spelled out. */
const latin = (text: string): string =>
  text.replace(/[^\u0000-\u00fe]/g, (c) => `\u00ff${c.charCodeAt(0).toString(16)}`);

/** Characters of a learner's code. */
const codeLength = { least: 2, most: 12 } as const;

/** A learner's code as typed, in capitals; undefined for what is none: 2 to 12 letters and digits, A to Z, 0 to 9. */
export const codeOf = (typed: string): string | undefined => {
  const code = typed.trim().toUpperCase();
  const { least, most } = codeLength;
  return new RegExp(`^[A-Z0-9]{${least},${most}}$`).test(code) ? code : undefined;
};
