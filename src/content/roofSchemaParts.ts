import * as z from 'zod/mini';
import { roofDefaults, roofLimits, type RoofLength } from './roofLimits';

/** A roof file as people write it: lengths are numbers in the file's units, or texts such as `12' 3-7/16"`. */

export const lengthWanted = `a length such as 24, "5 1/2\\"", "12' 3-7/16\\"" or "305 mm"`;

export const length = (path: RoofLength, what: string) => {
  const { min, max } = roofLimits[path];
  return z
    .union([z.number(), z.string()], lengthWanted)
    .check(
      z.describe(`${what} ${min} to ${max} in, as a number in the file's units or a text with its mark.`),
    );
};

const countWanted = 'a whole number, 1 to 100';
const count = (what: string) =>
  z.int(countWanted).check(z.gte(1, countWanted), z.lte(100, countWanted), z.describe(what));

export const every = (what: string, usual: number) => z.optional(count(`${what} ${usual} unless said.`));

/** Kinds that can be figured so far. */
export const roofKinds = ['gable', 'hip', 'shed', 'gambrel', 'stepped'] as const;

/** A part of the slope: only the two together have a meaning, so any measure will do for both. */
const leg = (what: string) =>
  z.union([z.number(), z.string()], 'a number, usually of inches').check(z.describe(what));

export const slope = (what: string) =>
  z.strictObject({ rise: leg(what), run: leg('The level part of the slope, usually 12.') });

export const joists = z.strictObject({
  every: every('1 for a joist at every pair of rafters, 2 for every other pair.', roofDefaults.joistsEvery),
  height: z.optional(length('joists.height', 'Lower edge above the plate; 0 for on the plate.')),
});

export const collars = z.strictObject({
  every: every('1 for a collar at every pair of rafters, 2 for every other pair.', roofDefaults.collarsEvery),
});

/** No code says how far apart lookouts are: common practice, no source. */
export const lookouts = z.strictObject({
  spacing: z.optional(
    length(
      'rake.lookouts.spacing',
      'Middle to middle up the slope, from the top of the tail cut. 24 unless said.',
    ),
  ),
  thickness: z.optional(
    length('rake.lookouts.thickness', 'Square to the roof: what the notch is deep. 1 1/2 unless said.'),
  ),
  width: z.optional(
    length('rake.lookouts.width', 'Along the slope: what the notch is wide. 3 1/2 unless said.'),
  ),
  back: every(
    'Bays they run back inside the gable: 1 to butt against the next rafter, 2 to lie in a notch of that one too and butt against the second.',
    roofDefaults.lookoutsBack,
  ),
});

export const vents = z.discriminatedUnion(
  'shape',
  [
    z.strictObject({
      shape: z.literal('notch'),
      depth: length('vents.depth', 'Down from the top edge of the block.'),
      leave: length('vents.leave', 'Left at full height at each end of the block.'),
    }),
    z.strictObject({
      shape: z.literal('holes'),
      count: count('Holes in a full block.'),
      diameter: length('vents.diameter', 'Of each hole.'),
    }),
  ],
  '{"shape": "notch", …} or {"shape": "holes", …}',
);

export const or = (what: string) => z.describe(what);
export const off = <T extends z.ZodMiniType>(schema: T, wanted: string, what: string) =>
  z.optional(z.union([z.literal(false), schema], wanted).check(or(what)));

type SectionPath =
  'wings.*.ridge' | 'wings.*.valley' | 'dormers.*.ridge' | 'dormers.*.valley' | 'dormers.*.header';

export const section = (path: SectionPath, what: string) =>
  z.optional(
    z
      .strictObject({
        thickness: length(`${path}.thickness`, 'Actual, dry.'),
        depth: length(`${path}.depth`, 'Actual, dry.'),
      })
      .check(z.describe(what)),
  );

export const wing = z.strictObject({
  side: z.enum(['street', 'yard']).check(z.describe('The long wall it stands against.')),
  at: length('wings.*.at', 'Its ridge, from end A of the main roof.'),
  span: length('wings.*.span', 'Level, between the outsides of its plates.'),
  length: length(
    'wings.*.length',
    "Along its plates, from the outside of the main roof's plate to its gable.",
  ),
  slope: z.optional(slope('That of the side it stands against unless said.')),
  overhang: z.optional(length('wings.*.overhang', 'That of the side it stands against unless said.')),
  rakeOverhang: z.optional(
    length('wings.*.rakeOverhang', 'Past its gable. That of the main roof unless said.'),
  ),
  ridge: section('wings.*.ridge', "Of the main ridge's stock unless said."),
  valley: section('wings.*.valley', "Valley rafters. Of the main ridge's stock unless said."),
  framing: z.optional(
    z
      .enum(['longValley', 'suspendedRidge', 'overSheathing'])
      .check(
        z.describe(
          'How valleys end where its ridge comes in lower than the main one: one of them runs on to the main ridge and the other against it, or both end against its own ridge, which runs on and hangs from the main one. Or the wing is framed over the sheathing of a main roof that is whole. A long valley unless said.',
        ),
      ),
  ),
  over: z.optional(
    z
      .strictObject({
        sheathing: z.optional(length('wings.*.over.sheathing', 'On the main rafters. 1/2 unless said.')),
        sleeper: z.optional(
          z.strictObject({
            thickness: length('wings.*.over.sleeper.thickness', 'Of the boards that jacks stand on.'),
            depth: length('wings.*.over.sleeper.depth', 'Their width.'),
          }),
        ),
      })
      .check(z.describe('Of a wing framed over sheathing. 1/2 and 1 1/2 by 9 1/4 unless said.')),
  ),
  longFrom: z.optional(
    z.enum(['A', 'B']).check(z.describe('Which valley is the long one: on the side of end A unless said.')),
  ),
});

export const gablet = z.strictObject({
  back: length(
    'gablet.back',
    "Level, from the end's reference face to the face of the small gable, which is the outside of the commons there.",
  ),
  ends: z.optional(
    z
      .array(z.enum(['A', 'B']), '"A", "B", or both')
      .check(
        z.minLength(1, '"A", "B", or both'),
        z.maxLength(2, '"A", "B", or both'),
        z.describe('Ends that have one. Both unless said.'),
      ),
  ),
  header: z.optional(
    z
      .strictObject({
        thickness: length('gablet.header.thickness', 'Actual, dry.'),
        depth: length('gablet.header.depth', 'Actual, dry.'),
      })
      .check(
        z.describe(
          "Across the outside of the commons there: hips and the end's rafters come to it. Of the ridge's stock unless said.",
        ),
      ),
  ),
  doubled: z.optional(
    z.boolean('true or false').check(z.describe('Two rafters side by side in that pair. One unless said.')),
  ),
});

export const manyWings = '1 to 20 wings';

export const highPlate = z.strictObject({
  width: z.optional(length('highPlate.width', 'That of the low plate unless said.')),
  seat: z.optional(
    length(
      'highPlate.seat',
      'Level cut, from its inner face outward. As much as lies on the low plate unless said.',
    ),
  ),
  overhang: z.optional(
    length(
      'highPlate.overhang',
      "Level, from the reference face of the high wall to the plumb cut of the rafters' upper ends. 0 unless said.",
    ),
  ),
});

export const between = z.strictObject({
  clearance: z.optional(
    length('between.clearance', 'Level, left between each wall and the end rafter beside it. 0 unless said.'),
  ),
});

export const standing = z.strictObject({
  end: z.enum(['A', 'B']).check(z.describe('The end of the new roof it stands at.')),
  heightAbovePlate: length(
    'standing.heightAbovePlate',
    'Plumb, at the outside of its plate: from the plate to the top edge of its rafters.',
  ),
  ridgeTop: z.optional(
    length(
      'standing.ridgeTop',
      'Top of its ridge above the plate, flush with its rafters. Where it is given, the new roof follows the slope that stands.',
    ),
  ),
  ridgeThickness: z.optional(
    length('standing.ridgeThickness', 'Of its ridge. That of the new one unless said.'),
  ),
  lastRafter: length(
    'standing.lastRafter',
    'Centre of its last rafter, behind the joint line. The first new rafter is one spacing from there.',
  ),
  rafterDepth: z.optional(
    length('standing.rafterDepth', 'Of its rafters. That of the new ones unless said.'),
  ),
});

/** What likely goes wrong there; a job to practice on is drawn with more of it. */
export const troubles = ['grown', 'walls', 'bowed', 'dried', 'mixed'] as const;

/** Species groups the span advice knows, No. 2 grade. */
export const woods = ['HF', 'SPF', 'SP', 'DF-L'] as const;

const psf = (max: number, what: string) =>
  z.optional(
    z
      .number(`0 to ${max}`)
      .check(
        z.gte(0, `0 to ${max}`),
        z.lte(max, `0 to ${max}`),
        z.describe(`${what} Pounds a square foot on the level.`),
      ),
  );

export const site = z
  .strictObject({
    machine: z.optional(
      z.boolean('true or false').check(z.describe('Whether one lifts the ridge. None unless said.')),
    ),
    trouble: z.optional(
      z
        .enum(troubles)
        .check(
          z.describe(
            'What likely goes wrong: bays that grow, walls out of true, a bowed ridge, cuts that dried, boards of several batches.',
          ),
        ),
    ),
    wood: z.optional(z.enum(woods).check(z.describe('Species group of the rafters, No. 2 grade.'))),
    live: psf(200, 'Snow or roof live load the plans name.'),
    dead: psf(60, 'Roof covering, sheathing and rafters themselves.'),
  })
  .check(
    z.describe('Nothing that is figured: for advice, and for the job that can be practiced on this roof.'),
  );
