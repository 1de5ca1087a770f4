import * as z from 'zod/mini';
import { length, slope } from './roofSchemaParts';

/** Sections of a run of gables with ridges at several heights. */

const bearing = z.strictObject({
  on: z.optional(
    z
      .enum(['pocket', 'wall'])
      .check(
        z.describe(
          'In a pocket of the higher gable wall, or on a wall or post under it that stands before that wall; then the ridge ends at the wall. A pocket unless said.',
        ),
      ),
  ),
  length: z.optional(
    length(
      'sections.*.bearing.length',
      'Of the ridge that bears, along it. A pocket goes through the whole wall unless said; on a wall 3 1/2.',
    ),
  ),
  below: z.optional(
    length(
      'sections.*.bearing.below',
      "How far below the top of its section's plates that stands which carries it. 0 unless said. Where a pocket is over the plates of the higher wall, its post stands on those.",
    ),
  ),
  clearance: z.optional(
    length(
      'sections.*.bearing.clearance',
      'Level, left between the higher wall and the end rafters beside it, for its sheathing. 0 unless said.',
    ),
  ),
});

const section = z.strictObject({
  length: z.optional(
    length('sections.*.length', 'Along its plates. The last one has what is left of the run unless said.'),
  ),
  span: z.optional(length('sections.*.span', 'Of its own, about the same middle line.')),
  slope: z.optional(slope('Of its own.')),
  plateHeight: z.optional(
    length('sections.*.plateHeight', 'Of its plates, over those of sections without this key.'),
  ),
  overhang: z.optional(length('sections.*.overhang', 'Of its own.')),
  seat: z.optional(length('sections.*.seat', 'Of its own.')),
  ridge: z.optional(
    z
      .strictObject({
        thickness: length('sections.*.ridge.thickness', 'Actual, dry.'),
        depth: length('sections.*.ridge.depth', 'Actual, dry.'),
      })
      .check(z.describe('Of its own.')),
  ),
  stepOverhang: z.optional(
    length(
      'sections.*.stepOverhang',
      'How far its ridge runs past its gable, over the lower section beside it. 0 unless said.',
    ),
  ),
  bearing: z.optional(
    bearing.check(z.describe('How its ridge ends where the section beside it is higher. {} for the usual.')),
  ),
});

export const manySections = '2 to 20 sections';

export const sections = z
  .array(section, manySections)
  .check(z.minLength(2, manySections), z.maxLength(20, manySections));
