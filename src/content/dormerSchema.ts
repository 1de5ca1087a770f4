import * as z from 'zod/mini';
import { length, section, slope } from './roofSchemaParts';

/** A dormer in a gable roof, of either kind; `dormerKeys` tells which keys belong to which. */
export const dormer = z.strictObject({
  kind: z
    .enum(['shed', 'gable'])
    .check(
      z.describe(
        'A shed has one plane of a lower slope; a gable has two that meet the main roof in valleys, and its ridge comes to a header.',
      ),
    ),
  side: z.enum(['street', 'yard']).check(z.describe('The side of the main roof it stands in.')),
  at: length('dormers.*.at', 'Its middle, from end A of the main roof.'),
  width: length(
    'dormers.*.width',
    'Between the outsides of its side walls. Of a gable dormer without them: between the corners of its gable, over the middles of the inner trimmers.',
  ),
  front: length(
    'dormers.*.front',
    'Level, from the main reference face in to the face of its front wall or gable; 0 for a wall over the main wall, whose eave it interrupts.',
  ),
  wall: z.optional(
    length(
      'dormers.*.wall',
      "Top of its walls' plates above the top of the main plate on its side. A shed needs it; a gable without it has no side walls, and its planes come down to the main roof at its gable.",
    ),
  ),
  slope: z.optional(
    slope(
      'Of a shed lower than that of the main roof; left out, its rafters run to the main ridge, whatever slope that takes. Of a gable that of the side it stands in unless said.',
    ),
  ),
  overhang: z.optional(
    length('dormers.*.overhang', 'Over its walls. That of the side it stands in unless said.'),
  ),
  seat: z.optional(length('dormers.*.seat', 'On its plates. That of the side it stands in unless said.')),
  rakeOverhang: z.optional(
    length('dormers.*.rakeOverhang', 'Of a gable: how far its ridge runs past its face. 0 unless said.'),
  ),
  ridge: section('dormers.*.ridge', "Of a gable. Of the main ridge's stock unless said."),
  valley: section('dormers.*.valley', "Valley rafters of a gable. Of the main ridge's stock unless said."),
  header: section(
    'dormers.*.header',
    "Headers, of two members each: the thickness of one. Of the main ridge's stock unless said.",
  ),
  studs: z.optional(
    z
      .strictObject({
        spacing: z.optional(length('dormers.*.studs.spacing', 'From the front wall back. 16 unless said.')),
        thickness: z.optional(length('dormers.*.studs.thickness', '1 1/2 unless said.')),
      })
      .check(z.describe('Studs of its side walls, on the trimmers.')),
  ),
});

export const manyDormers = '1 to 20 dormers';
