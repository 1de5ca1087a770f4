import * as z from 'zod/mini';
import { modes } from '../core/level/mode';
import type { Action } from '../core/site/action';
import { actionSchema } from './actionSchema';
import { readShape } from './shape';

const text = z.string().check(z.maxLength(200));

const head = z.object({
  id: text,
  level: text,
  levelDigest: text,
  rules: z.int(),
  seed: z.int(),
  mode: z.enum(modes),
  state: z.enum(['open', 'done']),
  /** Rises with every run begun: the newest has the highest. */
  order: z.int(),
  /** Begun from the middle of another run. */
  branch: z.optional(z.literal(true)),
  total: z.optional(z.number()),
  /** When it was handed over or came down, milliseconds since 1970. */
  ended: z.optional(z.number()),
  /** Done and sound; a part of a job also to standard. */
  framed: z.optional(z.boolean()),
  pass: z.optional(z.boolean()),
  /** For which assignment it was made, and under which code. */
  assignment: z.optional(text),
  learner: z.optional(text),
});

/** One run as a device keeps it: how it began; its acts are kept one by one as they happen. */
export type RunHead = Readonly<z.infer<typeof head>>;

/** A head from whatever a device kept; undefined for what no run of ours could be. */
export const readHead = (kept: unknown): RunHead | undefined => {
  const read = readShape(head, kept);
  return read.ok ? read.value : undefined;
};

/** An act from whatever a device kept, or undefined. */
export const readAct = (kept: unknown): Action | undefined => {
  const read = readShape(actionSchema, kept);
  return read.ok ? (read.value as unknown as Action) : undefined;
};
