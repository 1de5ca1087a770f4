import * as z from 'zod/mini';
import type { Action } from '../core/site/action';
import type { Attempt } from '../core/site/attempt';
import { modes, type Mode } from '../core/level/mode';
import type { Score } from '../core/score/score';
import { rulesVersion } from '../core/order/version';
import { actionSchema } from './actionSchema';
import { canonicalText, digestOf, levelDigest } from './canonical';
import { complaint, type Read } from './complaint';
import { newerThan } from './newerThan';
import { readJson } from './readJson';
import { readShape } from './shape';

/** A run as it is kept and handed in: the acts, and what is claimed of them. Whoever reads it believes only the acts. */
export type AttemptFile = {
  readonly format: 'tack-and-true/attempt@1';
  readonly level: { readonly id: string; readonly digest: string };
  readonly seed: number;
  readonly mode: Mode;
  readonly assignment?: string;
  readonly learner?: string;
  readonly rules: number;
  readonly actions: readonly Action[];
  readonly claimed: Claim;
  readonly digest: string;
};

export type Claim = Pick<Score, 'total' | 'parts'>;

const format = 'tack-and-true/attempt@1';
const share = z.optional(z.number());

const schema = z.strictObject({
  format: z.literal(format),
  level: z.strictObject({ id: z.string(), digest: z.string() }),
  seed: z.int(),
  mode: z.enum(modes),
  assignment: z.optional(z.string().check(z.maxLength(200))),
  learner: z.optional(z.string().check(z.maxLength(80))),
  rules: z.int(),
  actions: z.array(actionSchema).check(z.maxLength(20_000)),
  claimed: z.strictObject({
    total: z.number(),
    parts: z.strictObject({ order: share, checks: share, fit: share, eye: share, economy: share }),
  }),
  digest: z.string(),
});

export type Handed = { readonly assignment?: string; readonly learner?: string };

/** The file of a run, with its digest over all the rest. */
export const attemptFile = (attempt: Attempt, claimed: Claim, handed: Handed = {}): AttemptFile => {
  const rest = {
    format: format as AttemptFile['format'],
    level: { id: attempt.level.id, digest: levelDigest(attempt.level) },
    seed: attempt.seed,
    mode: attempt.mode,
    ...handed,
    rules: rulesVersion,
    actions: attempt.steps.slice(attempt.found?.steps ?? 0).map(({ action }) => action),
    claimed: { total: claimed.total, parts: claimed.parts },
  };
  return { ...rest, digest: digestOf(rest) };
};

/** Its bytes: canonical JSON, the same for the same run wherever it was played. */
export const attemptText = (file: AttemptFile): string => canonicalText(file);

/** A file's text back to a run, or what is wrong with it. A digest that does not fit is told, not believed. */
export const readAttempt = (text: string): Read<AttemptFile> => {
  const json = readJson(text);
  if (!json.ok) return json;
  const newer = newerThan(format, json.value);
  if (newer) return newer;
  const shape = readShape(schema, json.value);
  if (!shape.ok) return shape;
  const { digest, ...rest } = json.value as AttemptFile;
  if (digestOf(rest) === digest) return { ok: true, value: shape.value as unknown as AttemptFile };
  return {
    ok: false,
    complaints: [complaint('digest', ['digestOff'], ['asWritten'])],
  };
};
