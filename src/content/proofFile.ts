import * as z from 'zod/mini';
import type { Proof } from '../core/score/proof';
import { readJson } from './readJson';
import { readShape } from './shape';

const line = z.strictObject({
  target: z.string(),
  level: z.string(),
  value: z.number(),
  wanted: z.string(),
  n: z.number(),
  reached: z.boolean(),
});

const schema = z.strictObject({
  rules: z.number(),
  runs: z.number(),
  levels: z.array(
    z.strictObject({
      level: z.string(),
      errorOfOneRun: z.nullable(z.number()),
      competent: z.partialRecord(
        z.enum(['order', 'checks', 'fit', 'eye', 'economy']),
        z.strictObject({ mean: z.number(), sd: z.number() }),
      ),
      lowered: z.array(z.unknown()),
    }),
  ),
  lines: z.array(line),
});

/** A proof from its file's text; undefined when it cannot be used. */
export const readProof = (text: string): Proof | undefined => {
  const json = readJson(text);
  const read = json.ok ? readShape(schema, json.value) : json;
  return read.ok ? read.value : undefined;
};
