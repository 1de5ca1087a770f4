import * as z from 'zod/mini';

/** A roof file as people write it: lengths are numbers in the file's units, or texts such as `12' 3-7/16"`. */
const length = z.union([z.number(), z.string()]);
const section = z.strictObject({ thickness: length, depth: length });

/** Kinds that can be figured so far. */
export const roofKinds = ['gable'] as const;

export const roofSchema = z.strictObject({
  format: z.literal('tack-and-true/roof@1'),
  units: z.optional(z.enum(['in', 'mm'])),
  kind: z.enum(roofKinds),
  slope: z.strictObject({ rise: z.number(), run: z.number() }),
  span: length,
  length,
  overhang: length,
  rakeOverhang: z.optional(length),
  spacing: length,
  rafter: section,
  ridge: section,
  plate: z.strictObject({ width: length }),
  seat: length,
  reference: z.optional(z.enum(['plate', 'sheathing'])),
  sheathing: z.optional(length),
  blockAllowance: z.optional(length),
  blockStands: z.optional(z.enum(['plumb', 'square'])),
  datum: z.optional(z.enum(['endA', 'endB', 'centre'])),
  joists: z.optional(
    z.union([z.literal(false), z.strictObject({ every: z.optional(z.int()), height: z.optional(length) })]),
  ),
  collars: z.optional(z.union([z.literal(false), z.strictObject({ every: z.optional(z.int()) })])),
});

export type RoofFile = z.infer<typeof roofSchema>;
