import * as z from 'zod/mini';
import { murmur3 } from '../core/level/draw';
import { modes, type Mode } from '../core/level/mode';
import type { Read } from './complaint';
import { readJson } from './readJson';
import { readShape } from './shape';

/** What an instructor hands out: which levels, how they are played, and what it is called. */
export type Assignment = {
  readonly id: string;
  readonly label?: string;
  readonly levels: readonly string[];
  readonly mode: Mode;
};

const schema = z.strictObject({
  format: z.literal('tack-and-true/assignment@1'),
  id: z.string().check(z.minLength(1), z.maxLength(80)),
  label: z.optional(z.string().check(z.maxLength(200))),
  levels: z.array(z.string().check(z.minLength(1), z.maxLength(80))).check(z.minLength(1), z.maxLength(40)),
  mode: z.enum(modes),
});

/** An assignment file's text, or what is wrong with it. */
export const readAssignment = (text: string): Read<Assignment> => {
  const json = readJson(text);
  if (!json.ok) return json;
  const shape = readShape(schema, json.value);
  if (!shape.ok) return shape;
  const { format: _format, label, ...rest } = shape.value;
  return { ok: true, value: { ...rest, ...(label === undefined ? {} : { label }) } };
};

/** The seed a learner plays a level of an assignment on: their own, so a classmate's run does not fit. */
export const seedFor = ({ id }: Pick<Assignment, 'id'>, level: string, learner: string): number =>
  murmur3(latin(`${id}|${level}|${learner}`), 0);

/** The draw takes characters below 256; any other one is spelled out. */
const latin = (text: string): string =>
  text.replace(/[^\u0000-\u00fe]/g, (c) => `\u00ff${c.charCodeAt(0).toString(16)}`);
