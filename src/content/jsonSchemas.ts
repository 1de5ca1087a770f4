import * as z from 'zod/mini';
import { levelSchema } from './levelSchema';
import { roofSchema } from './roofSchema';

/** The formats as JSON Schema, for editors that complete and check files while they are typed. By file name. */
export const jsonSchemas = (): Readonly<Record<string, string>> => ({
  'roof.schema.json': textOf(roofSchema, 'A roof: tack-and-true/roof@1'),
  'level.schema.json': textOf(levelWithRoof, 'A level: tack-and-true/level@1'),
});

/** A level file holds its roof in place; the level's own schema leaves it to be read apart. */
const levelWithRoof = z.extend(levelSchema, { roof: roofSchema });

const textOf = (schema: z.ZodMiniType, title: string): string =>
  `${JSON.stringify({ title, ...z.toJSONSchema(schema, { io: 'input' }) }, null, 2)}\n`;
