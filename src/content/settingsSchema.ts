import * as z from 'zod/mini';
import { readShape } from './shape';

const schema = z.strictObject({
  lang: z.enum(['en', 'es']),
  theme: z.enum(['day', 'night']),
  units: z.enum(['feet', 'decimal', 'mm']),
  hand: z.enum(['left', 'right']),
  text: z.enum(['100', '150', '200']),
  keys: z.boolean(),
});

/** How somebody likes to work. Kept on the device, never asked for twice. */
export type Settings = z.infer<typeof schema>;

/** Settings from whatever was kept; undefined when it cannot be used. */
export const readSettings = (kept: unknown): Settings | undefined => {
  const read = readShape(schema, kept);
  return read.ok ? read.value : undefined;
};
